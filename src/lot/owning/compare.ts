import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Answers } from '../../answers/answers.ts';
import type { Candidate } from '../../ranking/candidate.ts';
import { mayTellLoans, type LoanTerms, type PackagePrice } from '../../ranking/price.ts';
import type { Spec } from '../../ranking/verdict.ts';
import { yearlyHours } from '../../ranking/yearly-hours.ts';
import { figureIds, type FigureId } from '../../trade/book.ts';
import { byCodeUnit } from '../../units/compare.ts';
import { considered } from '../considered.ts';
import { hoursOfChart, type OwningChart } from './chart.ts';
import { crossingsOf, type Crossings } from './crossing.ts';
import { financeFor } from './finance.ts';
import { dropsOutOf, type DropsOut } from './drops-out.ts';
import { perYearOf, sideOf, type OwningSide } from './side.ts';

export interface CompareOwning {
  catalogue: Catalogue;
  answers: Answers;
  /** The two ways, or more: a machine or a unit each. */
  candidates: readonly Candidate[];
  /** The buyer's own, where the answers don't say them. */
  years?: number;
  hoursPerYear?: number;
  /** How it is paid: by the dealer's terms, which are left out where he may not tell of any, or at once; absent, as the answers say. */
  finance?: LoanTerms | 'own-money';
}

/** Two that are set beside each other, by their places among the candidates. */
export interface Pair {
  a: number;
  b: number;
  crossing: Crossings;
  dropsOut: readonly DropsOut[];
  /** Whether their ranges overlap: then the assumptions leave open which of them costs less. */
  open: boolean;
}

export interface ComparedSide {
  machine: string;
  /** A unit of it, with its own year and hours as far as they are known. */
  unit?: string;
  year?: number;
  hours?: number;
  /** Of the package, in the dealer's currency, and how many additions come on top whose price must be asked. */
  price?: { low: number; high: number };
  unpriced: number;
  cost: OwningSide | { missing: readonly Spec[] };
}

export interface OwningComparison {
  currency: string;
  years: number;
  hoursPerYear: number;
  /** The terms it was reckoned with; `ask` where the buyer borrows and no terms may be told of; absent where he pays with his own money. */
  finance?: LoanTerms | 'ask';
  /** In the order of the candidates: its costs, or the figures that are missing. */
  sides: readonly ComparedSide[];
  /** Places of the candidates whose costs are known, the one that costs least a year first. */
  order: readonly number[];
  pairs: readonly Pair[];
  chart?: OwningChart;
  /** Figures that are this dealer's own and not the rule book's. */
  dealers: readonly FigureId[];
}

/** What a package costs as far as its own price is a range. */
const middleOf = ({ low, high }: PackagePrice) => (low + high) / 2;

const readHere: readonly string[] = ['own', 'resale', 'keep', 'lot', 'mow'];

/**
 * The old deluxe against the new economy: what each costs to own and run over the buyer's own years and hours,
 * where they change places, and which of his demands would part them. A comparison under assumptions,
 * never a valuation.
 */
export function compareOwning({ catalogue, answers, candidates, years, hoursPerYear, finance }: CompareOwning): OwningComparison {
  const { world, evaluationOf } = considered(catalogue, answers);
  const { book, dealer } = world;
  const evaluations = candidates.map(evaluationOf);
  const use = {
    years: Math.max(1, years ?? answers.budget?.keepYears ?? book.value('keep.years')),
    // Nothing can be spread over no hours.
    hoursPerYear: hoursPerYear || (evaluations[0] ? yearlyHours(answers, evaluations[0].judged, book) : book.value('keep.hours-per-year')),
  };
  const chosen = finance === 'own-money' ? undefined
    : finance === undefined ? financeFor(answers, dealer, evaluations.flatMap(({ price }) => (price ? [middleOf(price)] : [])))
      : mayTellLoans(dealer) ? finance : 'ask';
  const terms = chosen === 'ask' ? undefined : chosen;
  const sides = evaluations.map((evaluation): ComparedSide => {
    const { build: { machine, unit }, price } = evaluation;
    const cost = sideOf(evaluation, use, world, terms);
    return {
      machine: machine.id, ...(unit && { unit: unit.id }), ...(unit?.year !== undefined && { year: unit.year }), ...(unit?.hours !== undefined && { hours: unit.hours }),
      ...(price && { price: { low: price.low, high: price.high } }), unpriced: price?.unpriced.length ?? 0,
      cost: 'parts' in cost ? cost : { missing: cost },
    };
  });
  const known = sides.flatMap(({ cost }, index) => ('parts' in cost ? [{ index, cost }] : []));
  const [from, to] = [book.value('lot.compare.hours-least'), book.value('lot.compare.hours-most')];
  const costOf = (index: number) => (hours: number) => perYearOf(evaluations[index]!, { ...use, hoursPerYear: hours }, world, terms)!;
  const pairs = known.flatMap(({ index: a, cost: costA }, place) => known.slice(place + 1).map(({ index: b, cost: costB }): Pair => ({
    a, b, crossing: crossingsOf(costOf(a), costOf(b), from, to), dropsOut: dropsOutOf(evaluations[a]!, evaluations[b]!),
    open: costA.range.low <= costB.range.high && costB.range.low <= costA.range.high,
  })));
  const crossings = pairs.flatMap(({ crossing }) => crossing.crossings.map((each) => each.hoursPerYear));
  const chart = (): OwningChart => ({
    own: use.hoursPerYear, crossings,
    series: known.map(({ index }) => hoursOfChart(from, to, use.hoursPerYear, crossings).map((hours) => {
      const { perYear, range } = sideOf(evaluations[index]!, { ...use, hoursPerYear: hours }, world, terms) as OwningSide;
      return { hoursPerYear: hours, perYear, ...range };
    })),
  });
  return {
    currency: dealer.currency, ...use, ...(chosen && { finance: chosen }), sides,
    order: [...known].sort((x, y) => x.cost.perYear - y.cost.perYear || byCodeUnit(sides[x.index]!.machine, sides[y.index]!.machine)).map(({ index }) => index),
    pairs, ...(known.length > 0 && { chart: chart() }),
    dealers: figureIds.filter((id) => readHere.includes(id.split('.')[0]!) && book.isDealers(id)),
  };
}
