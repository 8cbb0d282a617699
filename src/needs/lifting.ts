import { taskOf, type Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import { baleSize } from '../trade/formulas/bale-size.ts';
import type { Working } from '../trade/working.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Holder, Need } from './need.ts';

interface Lift {
  task: 'lift-bales' | 'lift-pallets';
  holder: Holder;
  must: boolean;
  weight: Quantity<'mass'> | undefined;
  height: Quantity<'length'> | undefined;
  loadAhead: (weight: Quantity<'mass'>) => { value: Quantity<'length'>; working: Working[] };
}

/** A load on the loader wants lift at its centre, height, and a rear axle that stays on the ground. */
function needsOfLift({ task, holder, must, weight, height, loadAhead }: Lift): Need[] {
  const needs: Need[] = [];
  if (weight !== undefined) {
    const { value, working } = loadAhead(weight);
    const lift = { holder, load: weight, loadAhead: value, task, from: [`tasks.${task}.weight`], working };
    needs.push(
      { ...lift, id: `${task}.weight`, capability: 'loader.lift', must, safety: false, rule: 'loader.margin' },
      { ...lift, id: `${task}.rear-axle`, capability: 'loader.rear-axle', must: true, safety: true, rule: 'loader.rear-share' },
    );
  }
  if (height !== undefined) {
    needs.push({
      id: `${task}.height`, capability: 'loader.height', atLeast: height, must, safety: false,
      task, from: [`tasks.${task}.height`], working: [],
    });
  }
  return needs;
}

/** Round bales ride on a spear: their centre lies half a bale ahead of its face. */
export function needsOfBales(answers: Answers, book: RuleBook): Need[] {
  const task = taskOf(answers, 'lift-bales');
  if (!task) return [];
  return needsOfLift({
    task: 'lift-bales', holder: 'bale-spear', must: task.must === true, weight: task.weight, height: task.height,
    loadAhead: (weight) => {
      const size = baleSize(weight, book.value('bale.density') as Quantity<'density'>);
      return { value: (book.value('spear.face') + size.result.value / 2) as Quantity<'length'>, working: [size] };
    },
  });
}

/** Pallets ride on forks: their centre lies 24 in ahead of the fork face. */
export function needsOfPallets(answers: Answers, book: RuleBook): Need[] {
  const task = taskOf(answers, 'lift-pallets');
  if (!task) return [];
  return needsOfLift({
    task: 'lift-pallets', holder: 'pallet-forks', must: task.must === true, weight: task.weight, height: task.height,
    loadAhead: () => ({
      value: (book.value('forks.face') + book.value('forks.load-centre')) as Quantity<'length'>, working: [],
    }),
  });
}
