import { criteria, type Criterion } from '../answers/names.ts';
import type { Machine } from '../catalogue/catalogue.ts';
import { rank, type Placed, type Ranking } from '../ranking/rank.ts';
import { stillAsked, type Proof } from './case.ts';

/** So many places, from the first, must stay as they are. */
const places = 7;

/** Every order of some of the criteria, none among them. */
const ordersOf = (all: readonly Criterion[]): Criterion[][] =>
  [[], ...all.flatMap((first) => ordersOf(all.filter((each) => each !== first)).map((rest) => [first, ...rest]))];

const placed = (all: readonly Placed[]) => all.slice(0, places).map(({ machine, best }) => [machine.id, best.build.unit?.id]);
const firstOf = ({ standing, toAsk }: Ranking) => JSON.stringify([placed(standing), placed(toAsk)]);

/**
 * Where all else is known, every order of what matters is tried: what a machine is worth is settled, so that
 * there are only so many. The first places and the unit each is bought as must come out the same.
 */
export const sameOrder: Proof = function* sameOrder(of) {
  if (stillAsked(of, 'priorities').length > 0) return undefined;
  const { catalogue, answers, world } = of;
  const inPlay: Machine[] = [];
  for (const machine of catalogue.machines) {
    // One after the other, so that none takes long; what was judged is remembered.
    if (rank({ ...catalogue, machines: [machine] }, answers, undefined, world).ruledOut.length === 0) inPlay.push(machine);
    yield;
  }
  if (inPlay.length === 0) return undefined;
  // Weights rule nothing out and bring nothing back.
  const some = { ...catalogue, machines: inPlay };
  const without = rank(some, answers, undefined, world);
  const first = firstOf(without);
  // A criterion that doesn't apply is left out of an order, which is then one of these.
  const applying = criteria.filter((criterion) => without.weights[criterion] !== undefined);
  for (const priorities of ordersOf(applying)) {
    yield;
    if (firstOf(rank(some, { ...answers, priorities }, undefined, world)) !== first) return undefined;
  }
  return without.standing.slice(0, places).map(({ machine }) => machine.id);
};
