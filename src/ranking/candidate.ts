import type { Dealer, Implement, Machine, Unit } from '../catalogue/catalogue.ts';
import type { RuleBook } from '../trade/book.ts';
import type { Quantity } from '../units/quantity.ts';

/** What a reckoning goes by besides the buyer's needs. */
export interface World {
  book: RuleBook;
  dealer: Dealer;
  implements: readonly Implement[];
  /** The whole line-up, also where only some of it is ranked: a unit may be of another generation than the row it is listed in. */
  machines: readonly Machine[];
  /** The buyer's own implements, where enough of them is known. */
  owned: readonly Partial<Implement>[];
  /** Height above sea level where the buyer works [m], if he said it. */
  altitude?: Quantity<'length'>;
  /** Year of the catalogue's `asOf`: ages count from it. */
  asOfYear: number;
}

/** What is judged: one unit on the lot, or a machine as any unit of it might be. */
export interface Candidate {
  machine: Machine;
  unit?: Unit;
}

type Fitting = Pick<NonNullable<Machine['midPto']>, 'availability' | 'years' | 'mass' | 'price' | 'labourHours'>;
type FittedItem = keyof NonNullable<Unit['fitted']>;

/** Whether a candidate has a thing, can be given it, never will, or nobody knows. */
export type Have = 'has' | 'can-add' | 'never' | 'unknown';

const yearsOf = ({ machine, unit }: Candidate, asOfYear: number): readonly [number, number] =>
  unit?.year === undefined ? [machine.years.from, machine.years.to ?? asOfYear] : [unit.year, unit.year];

/**
 * Whether a candidate falls in a window of years. A unit whose year is of another kind than the window's,
 * or of no kind anybody gave, and stands on its edge, may lie on either side of it: unknown, until its
 * serial number settles it.
 */
export function inYears(
  candidate: Candidate, window: Fitting['years'], asOfYear: number,
): 'inside' | 'outside' | 'unknown' {
  if (!window) return 'inside';
  const { from = -Infinity, to = Infinity } = window;
  const [first, last] = yearsOf(candidate, asOfYear);
  const { unit, machine } = candidate;
  if (unit?.year === undefined) {
    if (first >= from && last <= to) return 'inside';
    if (last < from || first > to) return 'outside';
    return unit ? 'unknown' : 'inside';
  }
  const exact = unit.yearKind === machine.years.meant || unit.yearKind === 'serial';
  const nearEdge = Math.abs(first - from) <= 1 || Math.abs(first - to) <= 1;
  if (!exact && nearEdge) return 'unknown';
  return first >= from && first <= to ? 'inside' : 'outside';
}

/** How a candidate stands to a thing of its machine, by what is fitted and how the thing can be had. */
export function have(candidate: Candidate, item: FittedItem, fitting: Fitting | undefined, asOfYear: number): Have {
  const fitted = candidate.unit?.fitted?.[item];
  if (fitted === true) return 'has';
  if (!fitting || fitting.availability === 'unknown') return 'unknown';
  const window = inYears(candidate, fitting.years, asOfYear);
  if (fitting.availability === 'none' || window === 'outside') return 'never';
  if (window === 'unknown') return 'unknown';
  switch (fitting.availability) {
    case 'fitted':
      if (fitted !== false) return 'has';
      // It came with the machine and is gone: it can be had again where the dealer names a price for it.
      return fitting.price ? 'can-add' : 'unknown';
    case 'option':
      if (!candidate.unit) return 'can-add';
      return fitted === false ? 'never' : 'unknown';
    default:
      return 'can-add';
  }
}

/** The tyres a candidate may stand on: a unit's own, or any its machine can have. */
export const tyresOf = ({ machine: { tyres = [] }, unit }: Candidate) =>
  tyres.filter(({ type }) => unit?.tyres?.type === undefined || type === unit.tyres.type);

/** Of the tyres it may stand on, those that are narrowest: a machine not yet chosen passes if it does on them. */
export const narrowestTyres = (candidate: Candidate) => [...tyresOf(candidate)].sort((a, b) => a.widthOverRear - b.widthOverRear)[0];
