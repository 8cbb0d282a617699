import { root } from '../units/transcendental.ts';

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

/** Sobol's points by dimension: the cell each lies in. It is taken to be in its middle, so never at 0 nor 1. */
const cells = directions.map((numbers) => {
  const ofPoints = new Uint16Array(weightingCount);
  for (let point = 1; point < weightingCount; point++) ofPoints[point] = ofPoints[point & (point - 1)]! ^ numbers[31 - Math.clz32(point & -point)]!;
  return ofPoints;
});
const middleOf = (cell: number) => (cell + 0.5) / weightingCount;

/** Roots of all that a coordinate can be, by degree: a table is made once and serves every order. */
const roots = new Map<number, Float64Array>();

function rootsOf(degree: number): Float64Array {
  const table = roots.get(degree) ?? Float64Array.from({ length: weightingCount }, (_, cell) => root(middleOf(cell), degree));
  roots.set(degree, table);
  return table;
}

/** A point of the simplex, even over it for points even over the cube: pieces broken off a stick, each as likely as any. */
function breakStick(pieces: Float64Array, point: number): void {
  const last = pieces.length - 1;
  let rest = 1;
  for (let piece = 0; piece < last; piece++) {
    const kept = rest * rootsOf(last - piece)[cells[piece]![point]!]!;
    pieces[piece] = rest - kept;
    rest = kept;
  }
  pieces[last] = rest;
}

/** Maps the simplex onto its part of falling coordinates: each piece is shared by all up to its rank. */
function letFall(pieces: Float64Array): void {
  let sum = 0;
  for (let rank = pieces.length - 1; rank >= 0; rank--) {
    sum += pieces[rank]! / (rank + 1);
    pieces[rank] = sum;
  }
}

/** Deals out the weights from a rank on in one of all their orders, each of which has as large a part of the shares. */
function deal(weights: Float64Array, from: number, share: number): void {
  let rest = share;
  for (let rank = from; rank < weights.length; rank++) {
    const scaled = rest * (weights.length - rank);
    const place = Math.floor(scaled);
    rest = scaled - place;
    const dealt = weights[rank + place]!;
    weights[rank + place] = weights[rank]!;
    weights[rank] = dealt;
  }
}

/** Rounds to whole millionths that still add up to one and fall where the weights do: what is left over goes to the first. */
export function toWholeMillionths(weights: Float64Array): void {
  let left = millionths;
  for (let rank = 0; rank < weights.length; rank++) {
    weights[rank] = Math.floor(weights[rank]! * millionths);
    left -= weights[rank]!;
  }
  weights[0]! += left;
}

function sampled(ranked: number, unranked: number): Float64Array {
  const table = new Float64Array(weightingCount * columns);
  const weights = new Float64Array(ranked + unranked);
  for (let point = 0; point < weightingCount; point++) {
    breakStick(weights, point);
    if (ranked > 0) letFall(weights);
    if (ranked > 0 && unranked > 1) deal(weights, ranked, middleOf(cells[weights.length - 1]![point]!));
    toWholeMillionths(weights);
    table.set(weights, point * columns);
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
