import { millionths, sharedParts } from '../units/whole-parts.ts';
import { columns, weightingCount, weightingsOf } from './weightings.ts';

/** What is worth how much: a row a machine, a column a criterion in the buyer's order, 0 to 1, unknown as 0. */
export type ValueTable = readonly (readonly number[])[];

/** How often a machine comes first, and among the first three, over the weightings that agree with the order. */
export interface Shares {
  first: number;
  topThree: number;
}

type Six = readonly [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

const inColumns = (values: ValueTable) => Array.from({ length: columns }, (_, column) =>
  Float64Array.from(values, (row) => Math.round((row[column] ?? 0) * millionths))) as unknown as Six;

/**
 * Acceptability of each machine over every weighting that agrees with the buyer's order. Machines equal in a
 * weighting, to the last of its millionths of millionths, share the places they take together.
 *
 * @param ranked  how many of the columns, from the first, the buyer ranked
 * @see Lahdelma and Salminen 2001, SMAA-2
 */
export function sharesOf(values: ValueTable, ranked: number): Shares[] {
  const machines = values.length;
  const weights = weightingsOf(ranked, (values[0]?.length ?? ranked) - ranked) as unknown as Six;
  const [a, b, c, d, e, f] = inColumns(values);
  const scores = new Float64Array(machines);
  const leaders = new Int32Array(machines);
  const first = new Float64Array(machines);
  const topThree = new Float64Array(machines);
  for (let point = 0; point < weightingCount; point++) {
    const wa = weights[0][point]!, wb = weights[1][point]!, wc = weights[2][point]!, wd = weights[3][point]!, we = weights[4][point]!, wf = weights[5][point]!;
    let best = -1, second = -1, third = -1;
    for (let machine = 0; machine < machines; machine++) {
      const score = wa * a[machine]! + wb * b[machine]! + wc * c[machine]! + wd * d[machine]! + we * e[machine]! + wf * f[machine]!;
      scores[machine] = score;
      if (score <= third) continue;
      if (score <= second) third = score;
      else {
        third = second;
        if (score <= best) second = score;
        else {
          second = best;
          best = score;
        }
      }
    }
    let found = 0, atBest = 0, atThird = 0;
    for (let machine = 0; machine < machines; machine++) {
      const score = scores[machine]!;
      if (score < third) continue;
      leaders[found] = machine;
      found += 1;
      if (score === best) atBest += 1;
      if (score === third) atThird += 1;
    }
    // As many of the three places as are taken by scores equal to the third.
    const placesAtThird = 1 + (second === third ? 1 : 0) + (best === third ? 1 : 0);
    for (let index = 0; index < found; index++) {
      const machine = leaders[index]!;
      if (scores[machine] === best) first[machine]! += sharedParts / atBest;
      topThree[machine]! += scores[machine]! > third ? sharedParts : (placesAtThird * sharedParts) / atThird;
    }
  }
  const whole = weightingCount * sharedParts;
  return values.map((_, machine) => ({ first: first[machine]! / whole, topThree: topThree[machine]! / whole }));
}
