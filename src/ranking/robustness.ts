import { columns, millionths, weightingCount, weightingsOf } from './weightings.ts';

/** What is worth how much: a row a machine, a column a criterion in the buyer's order, 0 to 1, unknown as 0. */
export type ValueTable = readonly (readonly number[])[];

/** How often a machine comes first, and among the first three, over the weightings that agree with the order. */
export interface Shares {
  first: number;
  topThree: number;
}

/** One place is cut into so many parts, so that up to sixteen that tie for it share it in whole numbers. */
const partsOfAPlace = 720_720;

const inColumns = (values: ValueTable) => Array.from({ length: columns }, (_, column) =>
  Float64Array.from(values, (row) => Math.round((row[column] ?? 0) * millionths)));

/**
 * Acceptability of each machine over every weighting that agrees with the buyer's order. Machines equal in a
 * weighting, to the last of its millionths of millionths, share the places they take together.
 *
 * @param ranked  how many of the columns, from the first, the buyer ranked
 * @see Lahdelma and Salminen 2001, SMAA-2
 */
export function sharesOf(values: ValueTable, ranked: number): Shares[] {
  const machines = values.length;
  const weightings = weightingsOf(ranked, (values[0]?.length ?? ranked) - ranked);
  const [a, b, c, d, e, f] = inColumns(values) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  const scores = new Float64Array(machines);
  const leaders = new Int32Array(machines);
  const first = new Float64Array(machines);
  const topThree = new Float64Array(machines);
  for (let row = 0; row < weightings.length; row += columns) {
    const [wa, wb, wc, wd, we, wf] = [weightings[row]!, weightings[row + 1]!, weightings[row + 2]!, weightings[row + 3]!, weightings[row + 4]!, weightings[row + 5]!];
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
    const placesAtThird = 3 - (found - atThird);
    for (let index = 0; index < found; index++) {
      const machine = leaders[index]!;
      if (scores[machine] === best) first[machine]! += partsOfAPlace / atBest;
      topThree[machine]! += scores[machine]! > third ? partsOfAPlace : (placesAtThird * partsOfAPlace) / atThird;
    }
  }
  const whole = weightingCount * partsOfAPlace;
  return values.map((_, machine) => ({ first: first[machine]! / whole, topThree: topThree[machine]! / whole }));
}
