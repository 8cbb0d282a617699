import { taskOf, type Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import { tan } from '../units/transcendental.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Need, NotCleared } from './need.ts';
import { steepest } from './slope.ts';

interface Towed {
  task: 'tow-wagon' | 'make-hay';
  must: boolean;
  mass: Quantity<'mass'> | undefined;
  braked: boolean;
  from: readonly string[];
}

function towedBy(answers: Answers, book: RuleBook): Towed[] {
  const wagon = taskOf(answers, 'tow-wagon');
  const hay = taskOf(answers, 'make-hay');
  return [
    // Brakes that a small tractor would have to work itself are not counted on.
    ...(wagon ? [{
      task: wagon.task, must: wagon.must === true, mass: wagon.weight, braked: wagon.brakes === 'inertia',
      from: ['tasks.tow-wagon.weight', 'tasks.tow-wagon.brakes'],
    }] : []),
    // A baler is towed and has no brakes of its own.
    ...(hay ? [{ task: hay.task, must: hay.must === true, mass: book.value('hay.baler-mass') as Quantity<'mass'>, braked: false, from: ['tasks'] }] : []),
  ];
}

/**
 * What is towed hangs from the drawbar and nowhere else, weighs no more than the tractor can hold and stop,
 * and is pulled up the steepest ground without lifting the front axle.
 */
export function needsOfTowing(answers: Answers, book: RuleBook): Need[] {
  const slope = steepest(answers, book);
  const ground = answers.land?.ground ?? 'firm';
  return towedBy(answers, book).flatMap(({ task, must, mass: towed, braked, from }): Need[] => {
    const base = { task, must, safety: true, working: [] } as const;
    return [
      { ...base, id: `${task}.drawbar`, capability: 'drawbar', from: ['tasks'] },
      ...(task === 'make-hay' ? [{ ...base, id: 'make-hay.baler', capability: 'pto.power', power: 'hay.baler-power', safety: false, from: ['tasks'], rule: 'hay.baler-power' } as const] : []),
      ...(towed === undefined ? [] : [{
        ...base, id: `${task}.towed-mass`, capability: 'tow.mass', towed, braked, from, rule: braked ? 'tow.ratio.braked' : 'tow.ratio.unbraked',
      } as const]),
      // Of ground nobody measured no pull can be reckoned: that no slope is cleared is said at the head.
      ...(towed === undefined || slope === undefined || slope === 'unbounded' ? [] : [{
        ...base, id: `${task}.tow-pull`, capability: 'tow.pull', towed, grade: tan(slope), ground, from: [...from, 'land.slope', 'land.ground'], rule: 'tow.rolling',
      } as const]),
    ];
  });
}

/** A wagon nobody weighed is cleared behind no machine. */
export const notClearedByTowing = (answers: Answers): NotCleared[] => {
  const wagon = taskOf(answers, 'tow-wagon');
  return wagon && wagon.weight === undefined ? [{ id: 'wagon.unsaid', tasks: ['tow-wagon'], from: ['tasks.tow-wagon.weight'] }] : [];
};
