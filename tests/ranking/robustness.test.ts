import fc from 'fast-check';
import { expect, test } from 'vitest';
import { criteria } from '../../src/answers/schema.ts';
import { boundsOfOrder, lead, nearestWithin, overtakingWeights } from '../../src/ranking/overtaking.ts';
import { sharesOf, type ValueTable } from '../../src/ranking/robustness.ts';
import { columns, weightingCount, weightingsOf } from '../../src/ranking/weightings.ts';
import { ranksOf, weightsOf } from '../../src/ranking/weights.ts';
import { millionths } from '../../src/units/whole-parts.ts';
import { runs } from '../support/arbitraries.ts';

/** Of 1,024 weightings a share is off by at most this: one in two hundred for up to three criteria, one in fifty for six. */
const few = 1 / 200, many = 1 / 50;

const rowsOf = (ranked: number, unranked: number) => {
  const table = weightingsOf(ranked, unranked);
  return Array.from({ length: weightingCount }, (_, row) => table.slice(0, ranked + unranked).map((column) => column[row]! / millionths));
};
const firstShares = (values: ValueTable, ranked: number) => sharesOf(values, ranked).map(({ first }) => first);
const total = (list: readonly number[]) => list.reduce((sum, each) => sum + each, 0);
const scoreOf = (values: readonly number[], weights: readonly number[]) => total(values.map((value, column) => value * weights[column]!));

function within(shares: readonly number[], exact: readonly number[], error: number) {
  expect(shares).toHaveLength(exact.length);
  for (const [index, share] of shares.entries()) expect(Math.abs(share - exact[index]!), `share ${index}: ${share}`).toBeLessThanOrEqual(error);
}

/** Every way to rank some of up to six criteria, by how many are ranked and how many are not. */
const everySplit = Array.from({ length: columns }, (_, index) => index + 1).flatMap((count) =>
  Array.from({ length: count + 1 }, (_, ranked) => [ranked, count - ranked] as const));

test('there is a column for each criterion there is', () => expect(criteria.length).toBeLessThanOrEqual(columns));

test.each(everySplit)('with %i criteria ranked and %i not, every weighting agrees with the order and adds up to one', (ranked, unranked) => {
  const rows = rowsOf(ranked, unranked);
  expect(rows).toHaveLength(1024);
  const disagreeing = rows.filter((weights) => {
    const last = ranked > 0 ? weights[ranked - 1]! : 1;
    return Math.round(total(weights) * millionths) !== millionths || weights.some((weight) => weight < 0)
      || weights.slice(1, ranked).some((weight, index) => weight > weights[index]!) || weights.slice(ranked).some((weight) => weight > last);
  });
  expect(disagreeing).toEqual([]);
});

// Barron and Barrett 1996: the mean of all weightings that agree with an order is the rank-order centroid.
test.each(everySplit)('with %i ranked and %i not, their mean is the rank-order centroid within 1/250', (ranked, unranked) => {
  const rows = rowsOf(ranked, unranked);
  const names = criteria.slice(0, ranked + unranked);
  const central = weightsOf(names.slice(0, ranked), names);
  within(names.map((_, column) => total(rows.map((weights) => weights[column]!)) / rows.length), names.map((name) => central[name]!), 1 / 250);
});

test('all weightings differ, but where there is only one', () => {
  for (const [ranked, unranked] of everySplit) {
    expect(new Set(rowsOf(ranked, unranked).map((weights) => weights.join())).size).toBe(ranked + unranked === 1 ? 1 : weightingCount);
  }
});

// With two criteria a weighting is a point of a line: w, 1 − w. The one machine leads where w · a > (1 − w) · b.
test.each([
  ['not ranked, mirror images', [[1, 0], [0, 1]], 0, [1 / 2, 1 / 2]],
  ['not ranked: the first leads from w = 1/3', [[1, 0], [0, 0.5]], 0, [2 / 3, 1 / 3]],
  ['ranked, w from 1/2: the second leads up to w = 0.6', [[1, 0.4], [0.6, 1]], 2, [0.8, 0.2]],
  ['one of two ranked is both ranked', [[1, 0.4], [0.6, 1]], 1, [0.8, 0.2]],
  ['three machines: up to 1/4, up to 3/4, beyond', [[0, 1], [0.75, 0.75], [1, 0]], 0, [0.25, 0.5, 0.25]],
])('two criteria, %s: by length', (_name, values, ranked, exact) => within(firstShares(values, ranked), exact, few));

/*
 * With three criteria it is a point of a triangle. Of the whole one each corner is nearest to a third; a machine
 * with ½ everywhere leads a + b + c in no weighting but where none is above ½: the middle triangle, a quarter.
 * With w1 ≥ w2 ≥ w3 the corners are (1,0,0), (½,½,0) and (⅓,⅓,⅓): w1 > ½ cuts off the triangle of the first two
 * corners and of where w1 = ½ meets the edge to the third, a quarter of the way: (½,¼,¼). That is at 3/4 of the
 * edge of w1 from 1 to ⅓, so the triangle has 3/4 of the area.
 */
test.each([
  ['each best at one thing', [[1, 0, 0], [0, 1, 0], [0, 0, 1]], 0, [1 / 3, 1 / 3, 1 / 3]],
  ['a middling one among them', [[1, 0, 0], [0, 1, 0], [0, 0, 1], [0.5, 0.5, 0.5]], 0, [1 / 4, 1 / 4, 1 / 4, 1 / 4]],
  ['in order, best at the first thing against middling', [[1, 0, 0], [0.5, 0.5, 0.5]], 3, [3 / 4, 1 / 4]],
  ['in order, best at one thing each', [[1, 0, 0], [0, 1, 0], [0, 0, 1]], 3, [1, 0, 0]],
  // 2·w1 > 1 as above against the rest together; only the first ranked: w1 ≥ w2, w1 ≥ w3 is a third of the whole, with 1/4 of it all beyond ½.
  ['the first thing ranked alone, against middling', [[1, 0, 0], [0.5, 0.5, 0.5]], 1, [3 / 4, 1 / 4]],
  // w2 against w3 where only the first is ranked: no more said of the one than of the other.
  ['of two things not ranked', [[0, 1, 0], [0, 0, 1]], 1, [1 / 2, 1 / 2]],
])('three criteria, %s: by area', (_name, values, ranked, exact) => within(firstShares(values, ranked), exact, few));

test('six criteria not ranked, best at one thing each: a sixth each', () => {
  const best = Array.from({ length: 6 }, (_, one) => Array.from({ length: 6 }, (_each, column) => (column === one ? 1 : 0)));
  within(firstShares(best, 0), best.map(() => 1 / 6), many);
});

// A weight of n broken sticks is above t with probability (1 − t)^(n − 1).
test.each([2, 3, 4, 5, 6])('of %i criteria not ranked, one weighs more than t as often as (1 − t)^(n − 1)', (count) => {
  for (const limit of [0.1, 0.25, 0.5]) {
    const values = [Array.from({ length: count }, (_, column) => (column === 0 ? 1 : 0)), Array.from({ length: count }, () => limit)];
    within(firstShares(values, 0).slice(0, 1), [(1 - limit) ** (count - 1)], many);
  }
});

test('ties share: twins halve the first place, and four of a kind the first three', () => {
  expect(sharesOf([[0.5, 0.5], [0.5, 0.5], [0.1, 0.2]], 2)).toEqual([{ first: 0.5, topThree: 1 }, { first: 0.5, topThree: 1 }, { first: 0, topThree: 1 }]);
  expect(sharesOf([[0.4], [0.4], [0.4], [0.4], [0.9]], 1).map(({ topThree }) => topThree)).toEqual([0.5, 0.5, 0.5, 0.5, 1]);
});

const value = fc.oneof(fc.constantFrom(0, 0.5, 1), fc.integer({ min: 0, max: millionths }).map((each) => each / millionths));
/** Machines with values by a few criteria, and how many of those are ranked. */
const anyCase = fc.integer({ min: 2, max: 6 }).chain((count) => fc.record({
  values: fc.array(fc.array(value, { minLength: count, maxLength: count }), { minLength: 2, maxLength: 7 }),
  ranked: fc.integer({ min: 0, max: count }),
}));

test('the shares of first places add up to one, those of the first three to as many as there can be', () => {
  fc.assert(fc.property(anyCase, ({ values, ranked }) => {
    const shares = sharesOf(values, ranked);
    expect(total(shares.map(({ first }) => first))).toBeCloseTo(1, 12);
    expect(total(shares.map(({ topThree }) => topThree))).toBeCloseTo(Math.min(3, values.length), 12);
    for (const { first, topThree } of shares) expect(first).toBeLessThanOrEqual(topThree);
  }), runs(60));
});

test('a machine that another beats by every criterion never comes first', () => {
  fc.assert(fc.property(anyCase, fc.nat({ max: 6 }), ({ values, ranked }, index) => {
    const beaten = values[index % values.length]!.map((each) => Math.max(0, each - 0.01));
    const beating = beaten.map((each) => each + 0.005);
    const all = [...values, beating, beaten];
    expect(firstShares(all, ranked).at(-1)).toBe(0);
    expect(overtakingWeights(all, all.length - 1, beaten.map(() => 1 / beaten.length), 0)).toBeUndefined();
  }), runs(60));
});

test('machines in another order have the same shares, in that order', () => {
  fc.assert(fc.property(anyCase, fc.nat(100), ({ values, ranked }, by) => {
    const turned = values.map((_, index) => (index + by) % values.length);
    expect(sharesOf(turned.map((index) => values[index]!), ranked)).toEqual(turned.map((index) => sharesOf(values, ranked)[index]!));
  }), runs(40));
});

test('what others there are doesn’t change which of two is ahead: with more machines nobody is first more often', () => {
  fc.assert(fc.property(anyCase, ({ values, ranked }) => {
    const fewer = sharesOf(values.slice(0, -1), ranked), all = sharesOf(values, ranked);
    for (const [index, { first, topThree }] of fewer.entries()) {
      expect(all[index]!.first).toBeLessThanOrEqual(first);
      expect(all[index]!.topThree).toBeLessThanOrEqual(topThree);
    }
    // One that is never ahead of any takes nothing from those above it.
    const worst = values.map((row) => row.map((each) => (each + 0.1) / 2));
    expect(firstShares([...worst, worst[0]!.map(() => 0)], ranked).slice(0, -1)).toEqual(firstShares(worst, ranked));
  }), runs(40));
});

test('the same twice, to the last bit', () => {
  fc.assert(fc.property(anyCase, ({ values, ranked }) => {
    expect(JSON.stringify(sharesOf(values, ranked))).toBe(JSON.stringify(sharesOf(structuredClone(values), ranked)));
  }), runs(20));
});

test('the order of the criteria nobody ranked matters little', () => {
  fc.assert(fc.property(anyCase, ({ values, ranked }) => {
    const turned = values.map((row) => [...row.slice(0, ranked), ...row.slice(ranked).reverse()]);
    within(firstShares(turned, ranked), firstShares(values, ranked), 2 * many);
  }), runs(40));
});

/** The buyer's central weights in the order of the columns. */
function centralOf(ranked: number, count: number): number[] {
  const names = criteria.slice(0, count);
  const weights = weightsOf(names.slice(0, ranked), names);
  const { ranked: first, rest } = ranksOf(names.slice(0, ranked), names);
  return [...first, ...rest].map((name) => weights[name]!);
}

// Two criteria, one above the other: w from 1/2, in the middle 3/4. The second leads up to w = 0.6, which is nearest.
test('of two criteria the nearest weighting that turns the order is where the two meet', () => {
  const [first, second] = overtakingWeights([[1, 0.4], [0.6, 1]], 1, centralOf(2, 2), 2)!;
  expect(first! / millionths).toBeCloseTo(0.6, 3);
  expect(first! + second!).toBe(millionths);
  // By less than the lead it isn't ahead yet.
  expect(first! / millionths).toBeLessThan(0.6);
});

// Not ranked, from ⅓ each: the second wants w2 ≥ w1 + ⅓·lead…: nearest is straight along (−1, 1, 0).
test('of three criteria it is the foot of the perpendicular', () => {
  const [a, b, c] = overtakingWeights([[0.6, 0, 0.3], [0, 0.3, 0.3]], 1, [1 / 3, 1 / 3, 1 / 3], 0)!.map((weight) => weight / millionths);
  // 0.3·w2 = 0.6·w1: the normal (−0.6, 0.3, 0) without its mean is (−0.5, 0.4, 0.1); slack −0.1 by 0.42·… of it.
  const along = 0.1 / (0.6 * 0.5 + 0.3 * 0.4);
  expect(a).toBeCloseTo(1 / 3 - 0.5 * along, 3);
  expect(b).toBeCloseTo(1 / 3 + 0.4 * along, 3);
  expect(c).toBeCloseTo(1 / 3 + 0.1 * along, 3);
});

test('who is first already needs no other weighting, and who is tied with a twin goes along with it', () => {
  const central = centralOf(1, 3);
  const near = overtakingWeights([[0.9, 0.5, 0.5], [0.9, 0.5, 0.5], [0.1, 0.1, 0.6]], 1, central, 1)!;
  within(near.map((weight) => weight / millionths), central, 1e-5);
});

test('the weighting that puts a machine first agrees with the order, does put it first, and none of the sample is nearer', () => {
  let found = 0, none = 0;
  fc.assert(fc.property(anyCase, ({ values, ranked }) => {
    const count = values[0]!.length;
    const central = centralOf(ranked, count);
    const weights = overtakingWeights(values, 1, central, ranked)?.map((weight) => weight / millionths);
    const distance = (from: readonly number[]) => Math.sqrt(total(from.map((weight, column) => (weight - central[column]!) ** 2)));
    const others = values.filter((row) => row.join() !== values[1]!.join());
    const ahead = (from: readonly number[], by: number) => others.every((row) => scoreOf(values[1]!, from) - scoreOf(row, from) >= by);
    // In the sample weights are rounded too, so that a lead must be clear to count against what was found.
    const sampledAhead = rowsOf(ranked, count - ranked).filter((each) => ahead(each, 2 * lead));
    if (!weights) {
      none += 1;
      expect(sampledAhead).toEqual([]);
      return;
    }
    found += 1;
    expect(Math.round(total(weights) * millionths)).toBe(millionths);
    for (const { normal, bound } of boundsOfOrder(ranked, count)) expect(scoreOf(normal, weights)).toBeGreaterThanOrEqual(bound - 1e-12);
    expect(ahead(weights, lead / 4)).toBe(true);
    for (const each of sampledAhead) expect(distance(weights)).toBeLessThanOrEqual(distance(each) + 1e-5);
  }), runs(150));
  expect([found > 40, none > 20]).toEqual([true, true]);
});

test('bounds that contradict each other are found out', () => {
  expect(nearestWithin([0.5, 0.5], [{ normal: [1, 0], bound: 0.8 }, { normal: [0, 1], bound: 0.3 }])).toBeUndefined();
  expect(nearestWithin([0.5, 0.5], [{ normal: [1, 0], bound: 0.8 }, { normal: [0, 1], bound: 0.1 }])!.map((each) => Math.round(each * 1e9) / 1e9)).toEqual([0.8, 0.2]);
});

/** The same by another way: Dykstra's projections onto one bound after the other, until they settle. */
function projected(from: readonly number[], bounds: readonly { normal: readonly number[]; bound: number }[]): number[] {
  const level = bounds.map(({ normal }) => normal.map((each) => each - total(normal) / normal.length));
  const corrections = bounds.map(() => from.map(() => 0));
  let point = [...from];
  for (let round = 0; round < 4000; round++) {
    for (const [index, { normal, bound }] of bounds.entries()) {
      const before = point.map((each, axis) => each + corrections[index]![axis]!);
      const short = Math.max(0, bound - scoreOf(normal, before)) / scoreOf(level[index]!, level[index]!);
      point = before.map((each, axis) => each + short * level[index]![axis]!);
      corrections[index] = before.map((each, axis) => each - point[axis]!);
    }
  }
  return point;
}

test('the nearest point is the one that projecting again and again comes to', () => {
  const side = fc.integer({ min: -8, max: 8 });
  const anyBounds = fc.integer({ min: 3, max: 5 }).chain((size) => fc.record({
    from: fc.array(side, { minLength: size, maxLength: size }),
    within: fc.array(side, { minLength: size - 1, maxLength: size - 1 }),
    normals: fc.array(fc.array(side, { minLength: size, maxLength: size }), { minLength: 2, maxLength: 8 }),
  }));
  fc.assert(fc.property(anyBounds, ({ from, within, normals }) => {
    // Bounds that a point of the same sum keeps, so that there is one to be found.
    const kept = [...within, total(from) - total(within)];
    const bounds = normals.filter((normal) => new Set(normal).size > 1).map((normal) => ({ normal, bound: scoreOf(normal, kept) - 1 }));
    const found = nearestWithin(from, bounds)!;
    for (const { normal, bound } of bounds) expect(scoreOf(normal, found)).toBeGreaterThanOrEqual(bound - 1e-8);
    expect(total(found)).toBeCloseTo(total(from), 8);
    const other = projected(from, bounds);
    const far = (point: readonly number[]) => Math.sqrt(total(point.map((each, axis) => (each - from[axis]!) ** 2)));
    expect(far(found)).toBeLessThanOrEqual(far(other) + 1e-3);
  }), runs(60));
});
