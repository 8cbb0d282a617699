import { taskOf, type Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

/** What tyres and weight do to the ground: ruts where it is wet, marks on a lawn. Nothing of it rules out. */
export function needsOfGround(answers: Answers): Need[] {
  const ground = answers.land?.ground;
  const lawn = taskOf(answers, 'mow-lawn') !== undefined;
  const bears = ground === 'soft' || ground === 'wet' ? ground : lawn ? 'turf' : undefined;
  const from = ground === undefined ? ['tasks'] : ['land.ground'];
  const wish = { must: false, safety: false, working: [] } as const;
  return bears === undefined ? [] : [
    { ...wish, id: 'land.tyres', capability: 'tyres', ground, lawn, from },
    { ...wish, id: 'land.pressure', capability: 'ground-pressure', bears, from, rule: `ground.pressure.${bears}` },
  ];
}
