import type { Answers } from '../answers/answers.ts';
import type { ComfortWish, Need } from './need.ts';

/** Each wish for comfort weighs; those the buyer called a must rule out. */
export function needsOfComfort(answers: Answers): Need[] {
  const comfort = answers.comfort ?? {};
  const { cab, drive } = comfort;
  const wish = (name: ComfortWish) => ({
    id: `comfort.${name}`, must: comfort.must?.includes(name) ?? false, safety: false, from: [`comfort.${name}`], working: [],
  });
  const fitting = (name: ComfortWish, wanted: boolean): Need[] =>
    wanted ? [{ ...wish(name), capability: 'fitting', wish: name }] : [];
  return [
    ...(cab === 'heat' || cab === 'heat-and-air'
      ? [{ ...wish('cab'), capability: 'cab', heat: true, airConditioning: cab === 'heat-and-air' } as const] : []),
    ...(drive === 'pedal' ? [{ ...wish('drive'), capability: 'transmission', kinds: ['hydrostatic'] } as const] : []),
    ...(drive === 'shuttle' ? [{ ...wish('drive'), capability: 'transmission', kinds: ['power-reverser'] } as const] : []),
    ...fitting('smoothSeat', comfort.smoothSeat === true),
    ...fitting('tiltWheel', comfort.tiltWheel === true),
    ...fitting('cruise', comfort.cruise === true),
    ...fitting('loaderOff', comfort.loaderOff === 'often'),
    ...fitting('levelLift', comfort.levelLift === true),
    ...fitting('mowerLiftAlone', comfort.mowerLiftAlone === true),
    ...fitting('exhaust', comfort.exhaust === 'no-filter'),
  ];
}
