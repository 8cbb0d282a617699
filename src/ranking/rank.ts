import type { Answers } from '../answers/answers.ts';
import type { Criterion } from '../answers/schema.ts';
import type { Catalogue, Machine, Unit } from '../catalogue/catalogue.ts';
import { needsOf } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import { ruleBook } from '../trade/book.ts';
import { toMillionth } from '../units/compare.ts';
import { askedOf, type Asked } from './asked.ts';
import type { World } from './candidate.ts';
import { choose, evaluate, prepare, settle, type Chosen, type Evaluation, type Way } from './evaluate.ts';
import { coefficientsOf, keptShare } from './kept-value.ts';
import { unitsOf } from './lot.ts';
import { byPlace, keepFirst, standsAsWell, type Place, type Standing } from './order.ts';
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
}

export interface Ranking {
  world: World;
  /** Whose machines are ranked. */
  catalogue: Catalogue;
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

const placeOf = ({ machine, best: { standing, score, price } }: Placed): Place =>
  ({ id: machine.id, standing, score, low: price?.low ?? Infinity });

interface Found extends Place {
  unit: Unit;
  chosen: Chosen;
}

/** Weighs evaluations by what the buyer said. */
function scaleOf(answers: Answers, applying: readonly Criterion[], weights: Weights, world: World) {
  const { book, asOfYear } = world;
  const [bestPrice, worstPrice] = priceAnchors(answers, world);
  const [bestKept, worstKept] = [book.value('value.resale.best'), book.value('value.resale.worst')];
  const years = answers.budget?.keepYears ?? book.value('keep.years');
  const c = coefficientsOf(world);
  const parts = applying.map((criterion) => ({ criterion, weight: weights[criterion]! }));
  const ofTheWay = applying.filter((criterion) => criterion !== 'price' && criterion !== 'resale');
  return {
    weigh(evaluation: Evaluation): Weighed {
      const values = valuesOf(evaluation, applying, answers, world);
      const score = parts.reduce((sum, { criterion, weight }) => sum + weight * (values[criterion]?.value ?? 0), 0);
      return { ...evaluation, values, score: toMillionth(score) };
    },
    /** What is the same of all units alike that are made to serve in one way. */
    fixedOf(evaluation: Evaluation): Fixed {
      return { values: valuesOf(evaluation, ofTheWay, answers, world), perYear: yearlyHours(answers, evaluation.judged, book) };
    },
    /** The very score that weighing a unit by itself gives. */
    scoreOf({ values, perYear }: Fixed, low: number, { year, hours }: Unit): number {
      const kept = () => (year === undefined || hours === undefined ? 0
        : between(keptShare(Math.max(0, asOfYear - year), hours, years, perYear, c), bestKept, worstKept));
      let score = 0;
      for (const { criterion, weight } of parts) {
        score += weight * (criterion === 'price' ? (low === Infinity ? 0 : between(low, bestPrice, worstPrice))
          : criterion === 'resale' ? kept() : (values[criterion]?.value ?? 0));
      }
      return toMillionth(score);
    },
  };
}

interface Fixed {
  values: Partial<Record<Criterion, Value>>;
  perYear: number;
}

type Scale = ReturnType<typeof scaleOf>;

/** The first of a machine's units on the lot, as many as are told, and the first that is free to buy. */
function firstUnits(machine: Machine, { catalogue, asked, scale }: { catalogue: Catalogue; asked: Asked; scale: Scale }) {
  const told = asked.world.book.value('lot.told');
  const first: Found[] = [];
  const free: Found[] = [];
  for (const alike of unitsOf(catalogue, machine)) {
    const prepared = prepare({ machine, unit: alike[0]! }, asked);
    const fixed = new Map<Way, Fixed>();
    for (const unit of alike) {
      const chosen = choose(prepared, unit.price?.value, asked);
      const { way, standing, low } = chosen;
      const same = (chosen.asOthers ? undefined : fixed.get(way)) ?? scale.fixedOf(settle(chosen, { unit }, asked));
      fixed.set(way, same);
      const each: Found = { id: unit.id, standing, low, score: scale.scoreOf(same, low, unit), unit, chosen };
      keepFirst(first, each, told, byPlace);
      // One held for someone else is shown, but can't be bought today.
      if (unit.status !== 'held') keepFirst(free, each, 1, byPlace);
    }
  }
  // Where those told are all held, the best that is free stands in for the last of them.
  const units = free[0] && !first.includes(free[0]) ? [...first.slice(0, -1), free[0]] : first;
  return { units, free: free[0] };
}

interface Known {
  buyer: string;
  world: World;
}

const worlds = new WeakMap<Catalogue, Known>();

/**
 * What a reckoning goes by, from the catalogue and the buyer's own implements; the same again for one who
 * said the same, so that what was judged for his answers so far is remembered.
 */
export function worldOf(catalogue: Catalogue, { owned = [], land }: Answers): World {
  const buyer = JSON.stringify([owned, land?.altitude]);
  const known = worlds.get(catalogue);
  if (known?.buyer === buyer) return known.world;
  const world: World = {
    book: ruleBook(catalogue.rules),
    dealer: catalogue.dealer,
    implements: catalogue.implements ?? [],
    machines: catalogue.machines,
    owned,
    ...(land?.altitude !== undefined && { altitude: land.altitude }),
    asOfYear: Number(catalogue.asOf.split('-')[0]),
  };
  worlds.set(catalogue, { buyer, world });
  return world;
}

/**
 * Judges and weighs every machine and unit of a catalogue. A machine stands if a unit of it could be
 * bought that does; with none on the lot that does, it goes by its typical price.
 *
 * @param only  which of the needs are asked for at all
 * @param world  what another ranking went by, where catalogue and buyer are the same: what was judged then is remembered
 */
export function rank(catalogue: Catalogue, answers: Answers, only: (need: Need) => boolean = () => true, world = worldOf(catalogue, answers)): Ranking {
  const all = needsOf(answers, world.book);
  const needs = all.filter(only);
  const asked = askedOf(needs, world);
  const applying = applyingCriteria(answers, all);
  const weights = weightsOf(answers.priorities ?? [], applying);
  const scale = scaleOf(answers, applying, weights, world);

  const placed = catalogue.machines.map((machine): Placed => {
    const inGeneral = scale.weigh(evaluate({ machine }, needs, world));
    const { units: found, free } = firstUnits(machine, { catalogue, asked, scale });
    const units = found.map(({ unit, chosen }) => ({ unit, weighed: scale.weigh(settle(chosen, { unit }, asked)) }));
    const first = units.find(({ unit }) => unit === free?.unit)?.weighed;
    const best = first && standsAsWell(first.standing, inGeneral.standing) ? first : inGeneral;
    return { machine, standing: best.standing, best, inGeneral, units };
  }).sort((a, b) => byPlace(placeOf(a), placeOf(b)));

  const failing = new Map(needs.map(({ id }) => [
    id,
    placed.filter(({ inGeneral }) => inGeneral.judged.some(({ need, verdict }) => need.id === id && verdict.outcome === 'failed')).length / placed.length,
  ]));
  const of = (standing: Standing) => placed.filter((each) => each.standing === standing);
  return { world, catalogue, needs, weights, standing: of('stands'), toAsk: of('ask'), ruledOut: of('ruled-out'), failing };
}
