import { Matrix, QrDecomposition } from 'ml-matrix';

/** Where Huber's weights begin to fall, in standard deviations: 95 % as good as least squares where nothing is out of line. */
const tuning = 1.345;
/** Median of the absolute deviations of a normal distribution, in its standard deviations. */
const normalMad = 0.6745;
/** Rounds after which it stands, and the change below which it does before. */
const rounds = 100;
const settled = 1e-10;
/** Below this share of its length a regressor is made of those before it. */
const hardly = 1e-9;

/** A line through data, each row of which counts less the further it lies from the rest. */
export interface RobustFit {
  /** By regressor, in the order given. */
  coefficients: readonly number[];
  residuals: readonly number[];
  /** Spread of the residuals: their median absolute deviation over 0.6745. */
  scale: number;
}

/** Middle of some numbers, the mean of the two middle ones where they are even. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

function leastSquares(rows: readonly (readonly number[])[], response: readonly number[], weights: readonly number[]): number[] | undefined {
  const roots = weights.map(Math.sqrt);
  const weighted = new Matrix(rows.map((row, index) => row.map((value) => value * roots[index]!)));
  const decomposition = new QrDecomposition(weighted);
  const own = decomposition.upperTriangularMatrix.diagonal();
  if (own.some((length, at) => !(Math.abs(length) > hardly * weighted.getColumnVector(at).norm()))) return undefined;
  return decomposition.solve(Matrix.columnVector(response.map((value, index) => value * roots[index]!))).to1DArray();
}

/**
 * Linear regression by Huber's M-estimator, reweighted until it settles.
 *
 * @param rows      regressors of each observation, a 1 among them for a constant; more rows than regressors
 * @param response  of each observation
 * @returns undefined where the regressors don't tell apart what each of them does
 * @see P. J. Huber, Robust Statistics, 1981, section 7.8; W. N. Venables and B. D. Ripley, Modern Applied
 *   Statistics with S, 2002, section 6.5: psi of Huber, k = 1.345, scale by the median absolute deviation
 */
export function robustFit(rows: readonly (readonly number[])[], response: readonly number[]): RobustFit | undefined {
  let weights: number[] = rows.map(() => 1);
  let found: RobustFit | undefined;
  for (let round = 0; round < rounds; round++) {
    const coefficients = leastSquares(rows, response, weights);
    if (!coefficients) return undefined;
    const residuals = rows.map((row, index) => response[index]! - row.reduce((sum, value, at) => sum + value * coefficients[at]!, 0));
    const scale = medianOf(residuals.map(Math.abs)) / normalMad;
    const moved = found ? Math.max(...coefficients.map((each, at) => Math.abs(each - found!.coefficients[at]!))) : Infinity;
    found = { coefficients, residuals, scale };
    if (moved < settled || scale === 0) return found;
    weights = residuals.map((residual) => Math.min(1, (tuning * scale) / Math.max(Math.abs(residual), Number.MIN_VALUE)));
  }
  return found;
}
