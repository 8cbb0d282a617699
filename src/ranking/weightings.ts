import { middleOf, sobolCells, sobolCount } from '../units/sobol.ts';
import { root } from '../units/transcendental.ts';
import { millionths } from '../units/whole-parts.ts';

/** How many weightings are tried. */
export const weightingCount = sobolCount;
/** Columns of every table here, whether used or zero, so that the loop over the machines is unrolled. */
export const columns = sobolCells.length;

/** Roots of all that a coordinate can be, by degree: a table is made once and serves every order. */
const roots = new Map<number, Float64Array>();

function rootsOf(degree: number): Float64Array {
  const table = roots.get(degree) ?? Float64Array.from({ length: sobolCount }, (_, cell) => root(middleOf(cell), degree));
  roots.set(degree, table);
  return table;
}

/** A point of the simplex, even over it for points even over the cube: pieces broken off a stick, each as likely as any. */
function breakStick(pieces: Float64Array, point: number): void {
  const last = pieces.length - 1;
  let rest = 1;
  for (let piece = 0; piece < last; piece++) {
    const kept = rest * rootsOf(last - piece)[sobolCells[piece]![point]!]!;
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

function sampled(ranked: number, unranked: number): readonly Float64Array[] {
  const table = Array.from({ length: columns }, () => new Float64Array(weightingCount));
  const weights = new Float64Array(ranked + unranked);
  for (let point = 0; point < weightingCount; point++) {
    breakStick(weights, point);
    if (ranked > 0) letFall(weights);
    if (ranked > 0 && unranked > 1) deal(weights, ranked, middleOf(sobolCells[weights.length - 1]![point]!));
    toWholeMillionths(weights);
    for (let rank = 0; rank < weights.length; rank++) table[rank]![point] = weights[rank]!;
  }
  return table;
}

const known = new Map<string, readonly Float64Array[]>();

/**
 * Weightings spread evenly over all that agree with an order: ≥ 0, adding up to one, falling along the
 * ranked criteria, and those not ranked at most as much as the last ranked, in any order among themselves. A
 * column a criterion, the ranked ones first, in whole millionths. The same for all who rank as many, so kept.
 *
 * Sobol's points are mapped onto the simplex, that onto its part of falling weights (an affine map, so even
 * stays even), and the unranked dealt out by one coordinate more.
 *
 * @see Tervonen and Lahdelma 2007, Implementing stochastic multicriteria acceptability analysis
 */
export function weightingsOf(ranked: number, unranked: number): readonly Float64Array[] {
  if (ranked + unranked > columns) throw new RangeError(`at most ${columns} criteria`);
  const key = `${ranked}/${unranked}`;
  const table = known.get(key) ?? sampled(ranked, unranked);
  known.set(key, table);
  return table;
}
