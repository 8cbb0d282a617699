import type { Answers } from '../answers/answers.ts';
import type { Criterion } from '../answers/schema.ts';
import type { Catalogue, Machine, Unit } from '../catalogue/catalogue.ts';
import { needsOf } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import { ruleBook } from '../trade/book.ts';
import { byCodeUnit, toMillionth } from '../units/compare.ts';
import type { World } from './candidate.ts';
import { choose, evaluate, prepare, settle, type Chosen, type Evaluation, type Standing } from './evaluate.ts';
import { isMoneyNeed } from './judge.ts';
import { coefficientsOf, keptShare } from './kept-value.ts';
import { unitsOf } from './lot.ts';
import { applyingCriteria, between, priceAnchors, valuesOf, type Value } from './values.ts';
import { weightsOf, type Weights } from './weights.ts';
import { yearlyHours } from './yearly-hours.ts';

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
  /** The best of its units on the lot, as many as are told. */
  units: readonly { unit: Unit; weighed: Weighed }[];
  /** How many there are. */
  count: number;
  /** One of each kind of unit, units alike in all but price, year and hours being one kind. */
  groups: readonly Evaluation[];
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

interface Found {
  unit: Unit;
  chosen: Chosen;
  score: number;
}

const compareFound = (a: Found, b: Found) =>
  order.indexOf(a.chosen.standing) - order.indexOf(b.chosen.standing) || b.score - a.score
  || (a.chosen.low === b.chosen.low ? 0 : a.chosen.low - b.chosen.low) || byCodeUnit(a.unit.id, b.unit.id);

/**
 * Scores units alike in all but price, year and hours: what is the same of them is valued once a way of
 * making them serve. Gives the very score that weighing each by itself would.
 */
function scorerOf(answers: Answers, applying: readonly Criterion[], weights: Weights, world: World) {
  const { book, asOfYear } = world;
  const [bestPrice, worstPrice] = priceAnchors(answers, world);
  const [bestKept, worstKept] = [book.value('value.resale.best'), book.value('value.resale.worst')];
  const years = answers.budget?.keepYears ?? book.value('keep.years');
  const c = coefficientsOf(world);
  const parts = applying.map((criterion) => ({ criterion, weight: weights[criterion]! }));
  return () => {
    const fixed = new Map<Chosen['made'], { values: Partial<Record<Criterion, Value>>; perYear: number }>();
    const fixedOf = (chosen: Chosen) => {
      const known = fixed.get(chosen.made);
      if (known) return known;
      const evaluation = settle(chosen, chosen.made.build.unit, [], world);
      const values = valuesOf(evaluation, applying.filter((each) => each !== 'price' && each !== 'resale'), answers, world);
      const found = { values, perYear: yearlyHours(answers, evaluation.judged, book) };
      fixed.set(chosen.made, found);
      return found;
    };
    return (chosen: Chosen, { year, hours }: Unit): number => {
      const { values, perYear } = fixedOf(chosen);
      let score = 0;
      for (const { criterion, weight } of parts) {
        if (criterion === 'price') score += weight * (chosen.low === Infinity ? 0 : between(chosen.low, bestPrice, worstPrice));
        else if (criterion === 'resale') {
          score += weight * (year === undefined || hours === undefined ? 0
            : between(keptShare(Math.max(0, asOfYear - year), hours, years, perYear, c), bestKept, worstKept));
        } else score += weight * (values[criterion]?.value ?? 0);
      }
      return toMillionth(score);
    };
  };
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
 *
 * @param lot  the catalogue whose units are on the lot, where only some of its machines are ranked
 */
export function rank(catalogue: Catalogue, answers: Answers, only?: (need: Need) => boolean, lot = catalogue): Ranking {
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

  const money = needs.filter(isMoneyNeed);
  const scorer = scorerOf(answers, applying, weights, world);
  const told = world.book.value('lot.told');

  const placed = catalogue.machines.map((machine): Placed => {
    const inGeneral = weigh(evaluate({ machine }, needs, world));
    const found: Found[] = [];
    const groups = unitsOf(lot, machine).map((alike) => {
      const prepared = prepare({ machine, unit: alike[0]! }, needs, world);
      const score = scorer();
      for (const unit of alike) {
        const chosen = choose(prepared, unit.price?.value, money, world);
        const each = { unit, chosen, score: score(chosen, unit) };
        // Only those are kept that may be told, and the best that isn't held for someone else.
        if (found.length < told) found.push(each);
        else if (compareFound(each, found.at(-1)!) < 0) found[found.length - 1] = each;
        else continue;
        for (let at = found.length - 1; at > 0 && compareFound(found[at]!, found[at - 1]!) < 0; at--) {
          [found[at - 1], found[at]] = [found[at]!, found[at - 1]!];
        }
      }
      return settle(choose(prepared, alike[0]!.price?.value, money, world), alike[0], money, world);
    });
    const units = found.map(({ unit, chosen }) => ({ unit, weighed: weigh(settle(chosen, unit, money, world)) }));
    // A unit held for someone else is shown, but can't be bought today.
    const first = units.find(({ unit }) => unit.status !== 'held')?.weighed;
    const best = first && order.indexOf(first.standing) <= order.indexOf(inGeneral.standing) ? first : inGeneral;
    const count = unitsOf(lot, machine).reduce((sum, alike) => sum + alike.length, 0);
    return { machine, standing: best.standing, best, inGeneral, units, count, groups };
  }).sort((a, b) => byWorth(a.best, b.best) || byCodeUnit(a.machine.id, b.machine.id));

  const failing = new Map(needs.map(({ id }) => [
    id,
    placed.filter(({ inGeneral }) => inGeneral.judged.some(({ need, verdict }) => need.id === id && verdict.outcome === 'failed')).length / placed.length,
  ]));
  const of = (standing: Standing) => placed.filter((each) => each.standing === standing);
  return { world, needs, weights, standing: of('stands'), toAsk: of('ask'), ruledOut: of('ruled-out'), failing };
}
