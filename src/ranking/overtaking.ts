import { millionths } from '../units/whole-parts.ts';
import type { ValueTable } from './robustness.ts';
import { toWholeMillionths } from './weightings.ts';

type Vector = readonly number[];
/** normal · weights ≥ bound */
interface Bound {
  normal: Vector;
  bound: number;
}

/** The lead that counts as coming first, a hundredth of a point of 100: some of it is left once all is rounded to millionths. */
export const lead = 100 / millionths;
/** Slack below nought by less than this is rounding. */
const tolerance = 1 / (millionths * millionths);

const dot = (a: Vector, b: Vector) => a.reduce((sum, each, index) => sum + each * b[index]!, 0);
const plus = (a: Vector, b: Vector, times: number) => a.map((each, index) => each + times * b[index]!);

/** Moves along it keep the sum of the weights. */
function levelled(normal: Vector): Vector {
  const mean = dot(normal, normal.map(() => 1)) / normal.length;
  return normal.map((each) => each - mean);
}

/** The factors by which independent vectors come nearest to a target: by elimination in their normal equations. */
function factorsOf(vectors: readonly Vector[], target: Vector): number[] {
  const rows = vectors.map((vector) => [...vectors.map((other) => dot(vector, other)), dot(vector, target)]);
  const size = rows.length;
  for (let pivot = 0; pivot < size; pivot++) {
    for (let row = pivot + 1; row < size; row++) rows[row] = plus(rows[row]!, rows[pivot]!, -rows[row]![pivot]! / rows[pivot]![pivot]!) as number[];
  }
  const factors: number[] = Array.from({ length: size }, () => 0);
  for (let row = size - 1; row >= 0; row--) factors[row] = (rows[row]![size]! - dot(rows[row]!.slice(0, size), factors)) / rows[row]![row]!;
  return factors;
}

/**
 * The point nearest to another that keeps all bounds, the sum of its coordinates unchanged; undefined where
 * no point does. Exact but for rounding, in a finite number of steps.
 *
 * @see Goldfarb and Idnani 1983, A numerically stable dual method for solving strictly convex quadratic programs
 */
export function nearestWithin(from: Vector, bounds: readonly Bound[]): Vector | undefined {
  const normals = bounds.map(({ normal }) => levelled(normal));
  let point = from;
  let active: { index: number; pull: number }[] = [];
  const slackOf = (index: number) => dot(bounds[index]!.normal, point) - bounds[index]!.bound;
  // Each round settles a bound; many more rounds than bounds would be rounding going in circles.
  for (let round = 0; round < 100 * bounds.length; round++) {
    const slacks = bounds.map((_, index) => slackOf(index));
    const worst = slacks.indexOf(Math.min(...slacks));
    if (slacks[worst]! >= -tolerance) return point;
    let pull = 0;
    for (;;) {
      const normal = normals[worst]!;
      const factors = factorsOf(active.map(({ index }) => normals[index]!), normal);
      const way = active.reduce((rest, { index }, place) => plus(rest, normals[index]!, -factors[place]!), normal);
      const release = active.map((each, place) => (factors[place]! > tolerance ? each.pull / factors[place]! : Infinity));
      const soonest = Math.min(Infinity, ...release);
      const reach = dot(way, way) > tolerance ? -slackOf(worst) / dot(way, normal) : Infinity;
      const step = Math.min(soonest, reach);
      if (step === Infinity) return undefined;
      if (reach !== Infinity) point = plus(point, way, step);
      active = active.map((each, place) => ({ ...each, pull: each.pull - step * factors[place]! }));
      pull += step;
      if (step === reach) break;
      active = active.filter((_, place) => place !== release.indexOf(soonest));
    }
    active = [...active, { index: worst, pull }];
  }
  return undefined;
}

const unit = (size: number, plusAt: number, minusAt = -1): Vector =>
  Array.from({ length: size }, (_, index) => (index === plusAt ? 1 : index === minusAt ? -1 : 0));

/** What it means to agree with an order: none below nought, falling along the ranked, the rest at most as the last of those. */
export function boundsOfOrder(ranked: number, size: number): Bound[] {
  const above = Array.from({ length: size }, (_, index) => (index < ranked ? index - 1 : ranked - 1));
  return above.flatMap((before, index) => [
    ...(before >= 0 ? [{ normal: unit(size, before, index), bound: 0 }] : []),
    ...(index >= ranked || index === size - 1 ? [{ normal: unit(size, index), bound: 0 }] : []),
  ]);
}

/**
 * The weighting nearest to a central one (by the sum of the squares of the differences) that agrees with the
 * order and puts a machine ahead of all others by the lead; those worth the same by every criterion go along
 * with it. Undefined where no weighting does: then it is never first but by a tie, however one weighs.
 *
 * @returns whole millionths, which add up to one
 */
export function overtakingWeights(values: ValueTable, machine: number, central: Vector, ranked: number): number[] | undefined {
  const own = values[machine]!;
  const others = values.filter((row) => row.some((value, column) => value !== own[column]));
  const found = nearestWithin(central, [
    ...boundsOfOrder(ranked, central.length),
    ...others.map((row) => ({ normal: plus(own, row, -1), bound: lead })),
  ]);
  if (!found) return undefined;
  // What rounding left a hair above the weight before it, or below nought, is put back.
  const kept = new Float64Array(found.length);
  for (const [index, weight] of found.entries()) kept[index] = Math.max(0, Math.min(weight, kept[Math.min(index, ranked) - 1] ?? 1));
  toWholeMillionths(kept);
  return [...kept];
}
