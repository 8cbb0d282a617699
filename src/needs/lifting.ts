import { taskOf, type Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import { baleSize } from '../trade/formulas/bale-size.ts';
import type { Working } from '../trade/working.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Holder, Lift, Need } from './need.ts';

interface Lifting {
  task: 'lift-bales' | 'lift-pallets';
  holder: Holder;
  must: boolean;
  weight: Quantity<'mass'> | undefined;
  height: Quantity<'length'> | undefined;
  loadAhead: (weight: Quantity<'mass'>) => { value: Quantity<'length'>; working: Working[] };
}

/** A load on the loader wants lift at its centre, height, and a rear axle that stays on the ground. */
function needsOfOne({ task, holder, must, weight, height, loadAhead }: Lifting): Need[] {
  const needs: Need[] = [];
  if (weight === undefined && height === undefined) {
    // Of a load nobody described the job still wants a loader, whatever it lifts.
    needs.push({ id: `${task}.loader`, capability: 'loader.any', must, safety: false, task, from: [`tasks.${task}.weight`], working: [] });
  }
  if (weight !== undefined) {
    const { value, working } = loadAhead(weight);
    const lift = { holder, load: weight, loadAhead: value, task, from: [`tasks.${task}.weight`], working };
    needs.push(
      { ...lift, id: `${task}.weight`, capability: 'loader.lift', must, safety: false, rule: 'loader.margin' },
      { ...lift, id: `${task}.rear-axle`, capability: 'loader.rear-axle', must, safety: true, rule: 'loader.rear-share' },
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
function baleLift(answers: Answers, book: RuleBook): Lifting | undefined {
  const task = taskOf(answers, 'lift-bales');
  return task && {
    task: 'lift-bales', holder: 'bale-spear', must: task.must === true, weight: task.weight, height: task.height,
    loadAhead: (weight) => {
      const size = baleSize(weight, book.value('bale.density') as Quantity<'density'>);
      return { value: (book.value('spear.face') + size.result.value / 2) as Quantity<'length'>, working: [size] };
    },
  };
}

/** Pallets ride on forks: their centre lies 24 in ahead of the fork face. */
function palletLift(answers: Answers, book: RuleBook): Lifting | undefined {
  const task = taskOf(answers, 'lift-pallets');
  return task && {
    task: 'lift-pallets', holder: 'pallet-forks', must: task.must === true, weight: task.weight, height: task.height,
    loadAhead: () => ({
      value: (book.value('forks.face') + book.value('forks.load-centre')) as Quantity<'length'>, working: [],
    }),
  };
}

const liftings = (answers: Answers, book: RuleBook) =>
  [baleLift(answers, book), palletLift(answers, book)].flatMap((lifting) => lifting ?? []);

/** Each load to be lifted, with what it asks of loader and rear axle. */
export const needsOfLifting = (answers: Answers, book: RuleBook): Need[] => liftings(answers, book).flatMap(needsOfOne);

/** The heaviest load of the buyer's loader tasks, or undefined where he gave no weight. */
export const heaviestLift = (answers: Answers, book: RuleBook): Lift | undefined =>
  liftings(answers, book)
    .flatMap(({ weight, holder, loadAhead }) => (weight === undefined ? [] : [{ holder, load: weight, loadAhead: loadAhead(weight).value }]))
    .sort((a, b) => b.load - a.load)[0];
