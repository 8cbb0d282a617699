import type { Answers } from '../answers/answers.ts';
import type { Criterion } from '../answers/schema.ts';
import type { Catalogue, Machine, Unit } from '../catalogue/catalogue.ts';
import { needsOf } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import { ruleBook } from '../trade/book.ts';
import { byCodeUnit, toMillionth } from '../units/compare.ts';
import { unitsOnLot, type World } from './candidate.ts';
import { evaluate, type Evaluation, type Standing } from './evaluate.ts';
import { applyingCriteria, valuesOf, type Value } from './values.ts';
import { weightsOf, type Weights } from './weights.ts';

/** A candidate weighed: its values by criterion and the score they add up to. */
export interface Weighed extends Evaluation {
  values: Partial<Record<Criterion, Value>>;
  /** 0 to 1, rounded to a millionth before anything is ordered by it. */
  score: number;
}

/** A machine with what it could be at best, and each of its units on the lot. */
export interface Placed {
  machine: Machine;
  standing: Standing;
  /** What speaks for the machine: its best unit, where none could be found that stands better. */
  best: Weighed;
  inGeneral: Weighed;
  units: readonly { unit: Unit; weighed: Weighed }[];
}

export interface Ranking {
  world: World;
  needs: readonly Need[];
  weights: Weights;
  /** Machines that stand, best first. */
  standing: readonly Placed[];
  /** Machines with a gate unknown and none failed: below all that stand. */
  toAsk: readonly Placed[];
  ruledOut: readonly Placed[];
  /** For each need the share of the machines that fail it: how much it decides. */
  failing: ReadonlyMap<string, number>;
}

const order: readonly Standing[] = ['stands', 'ask', 'ruled-out'];
const lowest = ({ price }: Evaluation) => price?.low ?? Infinity;

function byWorth(a: Weighed, b: Weighed): number {
  return order.indexOf(a.standing) - order.indexOf(b.standing)
    || b.score - a.score
    || (lowest(a) === lowest(b) ? 0 : lowest(a) - lowest(b));
}

/** What a reckoning goes by, from the catalogue and the buyer's own implements. */
export const worldOf = (catalogue: Catalogue, answers: Answers): World => ({
  book: ruleBook(catalogue.rules),
  dealer: catalogue.dealer,
  implements: catalogue.implements ?? [],
  owned: answers.owned ?? [],
  ...(answers.land?.altitude !== undefined && { altitude: answers.land.altitude }),
  asOfYear: Number(catalogue.asOf.split('-')[0]),
});

/**
 * Judges and weighs every machine and unit of a catalogue. A machine stands if a unit of it could be
 * bought that does; with none on the lot that does, it goes by its typical price.
 */
export function rank(catalogue: Catalogue, answers: Answers, only?: (need: Need) => boolean): Ranking {
  const world = worldOf(catalogue, answers);
  const all = needsOf(answers, world.book);
  const needs = only ? all.filter(only) : all;
  const applying = applyingCriteria(answers, all);
  const weights = weightsOf(answers.priorities ?? [], applying);

  const weigh = (evaluation: Evaluation): Weighed => {
    const values = valuesOf(evaluation, applying, answers, world);
    const score = applying.reduce((sum, criterion) => sum + weights[criterion]! * (values[criterion]?.value ?? 0), 0);
    return { ...evaluation, values, score: toMillionth(score) };
  };

  const placed = catalogue.machines.map((machine): Placed => {
    const inGeneral = weigh(evaluate({ machine }, needs, world));
    const units = unitsOnLot(catalogue, machine)
      .map((unit) => ({ unit, weighed: weigh(evaluate({ machine, unit }, needs, world)) }))
      .sort((a, b) => byWorth(a.weighed, b.weighed) || byCodeUnit(a.unit.id, b.unit.id));
    // A unit held for someone else is shown, but can't be bought today.
    const first = units.find(({ unit }) => unit.status !== 'held')?.weighed;
    const best = first && order.indexOf(first.standing) <= order.indexOf(inGeneral.standing) ? first : inGeneral;
    return { machine, standing: best.standing, best, inGeneral, units };
  }).sort((a, b) => byWorth(a.best, b.best) || byCodeUnit(a.machine.id, b.machine.id));

  const failing = new Map(needs.map(({ id }) => [
    id,
    placed.filter(({ inGeneral }) => inGeneral.judged.some(({ need, verdict }) => need.id === id && verdict.outcome === 'failed')).length / placed.length,
  ]));
  const of = (standing: Standing) => placed.filter((each) => each.standing === standing);
  return { world, needs, weights, standing: of('stands'), toAsk: of('ask'), ruledOut: of('ruled-out'), failing };
}
