import { power } from '../units/transcendental.ts';

/** How many weightings are tried; a power of two, over which Sobol's points are spread most evenly. */
export const weightingCount = 1024;
/** Columns of every table here, whether used or zero, so that the loop over the machines is unrolled. */
export const columns = 6;
/** Weights and values are counted in millionths: sums of whole numbers are exact, in whatever order they are added. */
export const millionths = 1e6;

const bits = 10;
/** Primitive polynomials and first direction numbers of Sobol's sequence, by Joe and Kuo 2008; the first dimension has none. */
const polynomials = [
  { degree: 1, inner: 0, first: [1] },
  { degree: 2, inner: 1, first: [1, 3] },
  { degree: 3, inner: 1, first: [1, 3, 1] },
  { degree: 3, inner: 2, first: [1, 1, 1] },
  { degree: 4, inner: 1, first: [1, 1, 3, 3] },
] as const;

const directions: readonly number[][] = [
  Array.from({ length: bits }, (_, bit) => 1 << (bits - 1 - bit)),
  ...polynomials.map(({ degree, inner, first }) => {
    const numbers: number[] = [];
    for (let bit = 0; bit < bits; bit++) {
      const given = first[bit];
      if (given !== undefined) {
        numbers.push(given << (bits - 1 - bit));
        continue;
      }
      let number = numbers[bit - degree]! ^ (numbers[bit - degree]! >> degree);
      for (let back = 1; back < degree; back++) if ((inner >> (degree - 1 - back)) & 1) number ^= numbers[bit - back]!;
      numbers.push(number);
    }
    return numbers;
  }),
];

/** One coordinate of Sobol's point, in the middle of its cell and so between 0 and 1. */
function coordinate(point: number, dimension: number): number {
  let cell = 0;
  for (let bit = 0; bit < bits; bit++) if ((point >> bit) & 1) cell ^= directions[dimension]![bit]!;
  return (cell + 0.5) / weightingCount;
}

/** A point of the simplex, even over it for points even over the cube: sticks broken off, each as likely as all that are left. */
function brokenSticks(point: number, pieces: number): number[] {
  const sticks: number[] = [];
  let rest = 1;
  for (let piece = 0; piece < pieces - 1; piece++) {
    const kept = rest * power(coordinate(point, piece), 1 / (pieces - 1 - piece));
    sticks.push(rest - kept);
    rest = kept;
  }
  return [...sticks, rest];
}

/** The map of the simplex onto its part of falling coordinates: each stick is shared by all up to its rank. */
function falling(sticks: readonly number[]): number[] {
  let sum = 0;
  return sticks.map((stick, index) => stick / (index + 1)).reverse().map((share) => (sum += share)).reverse();
}

/** The items in the order that a share of all their orders stands for. */
function permuted(items: readonly number[], share: number): number[] {
  const left = [...items];
  let rest = share;
  return items.map(() => {
    const scaled = rest * left.length;
    const place = Math.min(left.length - 1, Math.floor(scaled));
    rest = scaled - place;
    return left.splice(place, 1)[0]!;
  });
}

/** Whole millionths that still add up to one and fall where the weights do: what rounding leaves over goes to the first. */
export function inMillionths(weights: readonly number[]): number[] {
  const whole = weights.map((weight) => Math.floor(weight * millionths));
  const left = millionths - whole.reduce((sum, weight) => sum + weight, 0);
  return whole.map((weight, index) => (index === 0 ? weight + left : weight));
}

function sampled(ranked: number, unranked: number): Float64Array {
  const count = ranked + unranked;
  const table = new Float64Array(weightingCount * columns);
  for (let point = 0; point < weightingCount; point++) {
    const sticks = brokenSticks(point, count);
    const byRank = ranked === 0 ? sticks : falling(sticks);
    const weights = ranked === 0 || unranked < 2
      ? byRank
      : [...byRank.slice(0, ranked), ...permuted(byRank.slice(ranked), coordinate(point, count - 1))];
    table.set(inMillionths(weights), point * columns);
  }
  return table;
}

const known = new Map<string, Float64Array>();

/**
 * Weightings spread evenly over all that agree with an order: ≥ 0, adding up to one, falling along the
 * ranked criteria, and those not ranked at most as much as the last ranked, in any order among themselves. A
 * row of whole millionths a weighting, the ranked ones first. The same for all who rank as many, so kept.
 *
 * Sobol's points are mapped onto the simplex, that onto its part of falling weights (an affine map, so even
 * stays even), and the unranked dealt out by one coordinate more.
 *
 * @see Tervonen and Lahdelma 2007, Implementing stochastic multicriteria acceptability analysis
 */
export function weightingsOf(ranked: number, unranked: number): Float64Array {
  if (ranked + unranked > columns) throw new RangeError(`at most ${columns} criteria`);
  const key = `${ranked}/${unranked}`;
  const table = known.get(key) ?? sampled(ranked, unranked);
  known.set(key, table);
  return table;
}
