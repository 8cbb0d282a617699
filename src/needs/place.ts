import type { Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

const gate = { must: true, safety: false, working: [] } as const;

/** A gate that is too narrow, and a door that is too low, rule out: no wish changes their size. */
export function needsOfPlace(answers: Answers): Need[] {
  const { doorWidth, doorHeight, depth, kind } = answers.storage ?? {};
  const inside = kind !== 'outdoors';
  const passage = answers.land?.gate;
  return [
    ...(passage === undefined ? [] : [{
      ...gate, id: 'land.gate', capability: 'width', passage: 'gate', atMost: passage, from: ['land.gate'], rule: 'place.side-clearance',
    } as const]),
    ...(doorWidth === undefined || !inside ? [] : [{
      ...gate, id: 'storage.door-width', capability: 'width', passage: 'door', atMost: doorWidth, from: ['storage.doorWidth'], rule: 'place.side-clearance',
    } as const]),
    ...(doorHeight === undefined || !inside ? [] : [{
      ...gate, id: 'storage.door-height', capability: 'height.stored', atMost: doorHeight, from: ['storage.doorHeight'], rule: 'place.height-clearance',
    } as const]),
    ...(depth === undefined || !inside ? [] : [{
      ...gate, id: 'storage.depth', capability: 'length', atMost: depth, from: ['storage.depth'], rule: 'place.depth-clearance',
    } as const]),
  ];
}
