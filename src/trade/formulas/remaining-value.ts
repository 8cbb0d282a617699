import { term, type Working } from '../working.ts';

/** The sum of {@link remainingValue} alone, for a lot with very many units. */
export function remainingShare(age: number, hoursPerYear: number, c: readonly [number, number, number]): number {
  const root = Math.max(0, c[0] - c[1] * Math.sqrt(age) - c[2] * Math.sqrt(hoursPerYear));
  return root * root;
}

/**
 * Share of the list price a tractor still brings: RV = (C1 − C2·√n − C3·√h)².
 *
 * @param age           n, years since new, ≥ 0
 * @param hoursPerYear  h, average over its life, ≥ 0
 * @param c             the three coefficients for its power
 * @returns share, 0 to 1 [ratio], with its working
 * @see rule `resale.remaining`: ASABE D497.7 clause 6; fitted to auctions of farm tractors, so a compact
 *   one may hold its value differently
 */
export function remainingValue(age: number, hoursPerYear: number, c: readonly [number, number, number]): Working {
  return {
    formula: 'resale.remaining',
    inputs: {
      age: term('years', age), hoursPerYear: term('per-year', hoursPerYear),
      c1: term('ratio', c[0]), c2: term('ratio', c[1]), c3: term('ratio', c[2]),
    },
    result: term('ratio', remainingShare(age, hoursPerYear, c)),
  };
}
