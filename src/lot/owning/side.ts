import type { OwningPart } from '../../ranking/owning.ts';
import { owningOver, type Otherwise, type Owning, type Use } from '../../ranking/owning.ts';
import type { World } from '../../ranking/candidate.ts';
import type { Evaluation } from '../../ranking/evaluate.ts';
import type { Loan, LoanTerms } from '../../ranking/price.ts';
import type { Spec } from '../../ranking/verdict.ts';
import type { FigureId } from '../../trade/book.ts';
import { costPerHour } from '../../trade/formulas/owning-costs.ts';
import { isRefusal, type Working } from '../../trade/working.ts';
import { loanPartOf } from './loan-part.ts';

/** Why a cost may turn out otherwise than reckoned. */
export const causes = ['price', 'resale', 'repairs', 'fuel'] as const;
export type Cause = (typeof causes)[number];

/** What a year may come to by one cause alone, in the dealer's currency. */
export interface Spread {
  cause: Cause;
  low: number;
  high: number;
  /** The figures it was reckoned by. */
  rules: readonly FigureId[];
}

export type SidePart = OwningPart | 'loan';

/** What one of the two costs to own and run, with what it may come to and why. */
export interface OwningSide {
  years: number;
  hoursPerYear: number;
  perYear: number;
  perHour: number;
  parts: Readonly<Partial<Record<SidePart, number>>>;
  /** With all that may turn out well, and all that may turn out badly, in the dealer's currency a year. */
  range: { low: number; high: number };
  spreads: readonly Spread[];
  /** The loan in it, with all that is told of one. */
  loan?: Loan;
  workings: readonly Working[];
}

interface Ends { low: Otherwise; high: Otherwise; rules: readonly FigureId[] }

function endsOf({ price }: Evaluation, { book }: World): Readonly<Record<Cause, Ends>> {
  const fuel = book.value('own.fuel.spread');
  const resale = book.value('resale.spread');
  return {
    // A unit has one price; of a machine only what such a one typically costs is known.
    price: price && price.low < price.high ? { low: { price: 'low' }, high: { price: 'high' }, rules: [] } : { low: {}, high: {}, rules: [] },
    resale: { low: { endValue: 1 + resale }, high: { endValue: 1 - resale }, rules: ['resale.spread'] },
    repairs: { low: { repairs: book.value('own.repair.least') }, high: { repairs: book.value('own.repair.most') }, rules: ['own.repair.least', 'own.repair.most'] },
    fuel: { low: { fuel: 1 - fuel }, high: { fuel: 1 + fuel }, rules: ['own.fuel.spread'] },
  };
}

type Reckoned = { owning: Owning; loan: ReturnType<typeof loanPartOf>; perYear: number };

function reckoned(evaluation: Evaluation, use: Use, world: World, terms: LoanTerms | undefined, otherwise: Otherwise): Reckoned | readonly Spec[] {
  const owning = owningOver(evaluation, use, world, otherwise);
  if (!('parts' in owning)) return owning;
  const { low, high } = evaluation.price!;
  const paid = otherwise.price === undefined ? (low + high) / 2 : otherwise.price === 'low' ? low : high;
  const loan = terms && loanPartOf(paid, terms, owning.years, world.book);
  return { owning, loan, perYear: owning.perYear + (loan?.perYear ?? 0) };
}

/** What a candidate costs a year in all, or undefined where figures are missing: what {@link sideOf} tells at length. */
export function perYearOf(evaluation: Evaluation, use: Use, world: World, terms?: LoanTerms): number | undefined {
  const at = reckoned(evaluation, use, world, terms, {});
  return 'perYear' in at ? at.perYear : undefined;
}

/** What a candidate costs to own and run over a use, with ranges and their reasons; or the figures that are missing. */
export function sideOf(evaluation: Evaluation, use: Use, world: World, terms?: LoanTerms): OwningSide | readonly Spec[] {
  const point = reckoned(evaluation, use, world, terms, {});
  if (!('owning' in point)) return point;
  const ends = endsOf(evaluation, world);
  const perYear = (otherwise: Otherwise) => (reckoned(evaluation, use, world, terms, otherwise) as Reckoned).perYear;
  const spreads = causes.flatMap((cause): Spread[] => {
    const { low, high, rules } = ends[cause];
    return Object.keys(low).length === 0 ? [] : [{ cause, low: perYear(low), high: perYear(high), rules }];
  });
  const all = (end: 'low' | 'high') => perYear(Object.assign({}, ...causes.map((cause) => ends[cause][end])) as Otherwise);
  const { owning, loan } = point;
  const hour = costPerHour(point.perYear, owning.hoursPerYear);
  return {
    years: owning.years, hoursPerYear: owning.hoursPerYear, perYear: point.perYear, perHour: isRefusal(hour) ? owning.perHour : hour.result.value,
    parts: { ...owning.parts, ...(loan && { loan: loan.perYear }) },
    range: { low: all('low'), high: all('high') },
    spreads, ...(loan && { loan: loan.loan }),
    workings: [...owning.workings, ...(loan && !isRefusal(hour) ? [...loan.workings, hour] : [])],
  };
}
