/** Bounds are compared here and nowhere else, so that 78 in, 6.5 ft and 1.9812 m give one verdict. */
const relativeTolerance = 1e-9;

/** Is `has` at least `wants`, but for rounding in the conversion of units? */
export const atLeast = (has: number, wants: number) =>
  // Of what has no end the tolerance hasn't either, and would forgive anything.
  has >= wants || (Number.isFinite(has) && has >= wants - relativeTolerance * Math.max(Math.abs(has), Math.abs(wants)));

/** Is `has` at most `wants`, but for rounding in the conversion of units? */
export const atMost = (has: number, wants: number) => atLeast(wants, has);

/** Scores are rounded to a millionth before anything is ordered by them. */
export const toMillionth = (value: number) => Math.round(value * 1e6) / 1e6;

/** Orders ids and keys by code unit, the same in every locale. */
export const byCodeUnit = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
