import fc from 'fast-check';
import { expect, test } from 'vitest';
import { criteria, type Criterion } from '../../src/answers/schema.ts';
import { weightsOf } from '../../src/ranking/weights.ts';
import { runs } from '../support/arbitraries.ts';

const anyOrder = fc.shuffledSubarray([...criteria]);
const anyApplying = fc.subarray([...criteria], { minLength: 1 });
const sum = (weights: ReturnType<typeof weightsOf>) => Object.values(weights).reduce((total, weight) => total + weight, 0);

// Centroids of three ranks: 11/18, 5/18 and 2/18; of four 25/48, 13/48, 7/48 and 3/48.
test('three ranked criteria weigh as the centroid of their order', () => {
  const weights = weightsOf(['comfort', 'price', 'fit'], ['price', 'fit', 'comfort']);
  expect(weights.comfort).toBeCloseTo(11 / 18, 12);
  expect(weights.price).toBeCloseTo(5 / 18, 12);
  expect(weights.fit).toBeCloseTo(2 / 18, 12);
});

test('what the buyer didn’t rank shares what those ranks would weigh', () => {
  const weights = weightsOf(['price'], ['price', 'headroom', 'comfort', 'resale']);
  expect(weights.price).toBeCloseTo(25 / 48, 12);
  for (const unranked of ['headroom', 'comfort', 'resale'] as const) expect(weights[unranked]).toBeCloseTo(23 / 48 / 3, 12);
});

test('who ranks nothing weighs all alike', () => {
  expect(Object.values(weightsOf([], [...criteria])).map((weight) => Math.round(weight * 6e6) / 1e6)).toEqual(criteria.map(() => 1));
});

test('a criterion that can’t tell machines apart has no weight, ranked or not', () => {
  expect(weightsOf(['time', 'price'], ['price', 'comfort'])).toEqual(weightsOf(['price'], ['price', 'comfort']));
  expect(weightsOf(['time', 'price'], ['price', 'comfort'])).not.toHaveProperty('time');
});

test('a criterion named twice counts where it was named first', () => {
  expect(weightsOf(['price', 'fit', 'price'], [...criteria])).toEqual(weightsOf(['price', 'fit'], [...criteria]));
});

test('whatever the order: the weights add up to one, fall with rank, and no unranked one is above a ranked one', () => {
  fc.assert(fc.property(anyOrder, anyApplying, (order, applying) => {
    const weights = weightsOf(order, applying);
    const of = (criterion: Criterion) => weights[criterion]!;
    expect(Object.keys(weights).sort()).toEqual([...applying].sort());
    expect(sum(weights)).toBeCloseTo(1, 9);
    const ranked = order.filter((criterion) => applying.includes(criterion));
    const unranked = applying.filter((criterion) => !ranked.includes(criterion));
    ranked.slice(1).forEach((criterion, index) => expect(of(criterion)).toBeLessThan(of(ranked[index]!)));
    for (const last of ranked.slice(-1)) for (const other of unranked) expect(of(other)).toBeLessThan(of(last));
    expect(new Set(unranked.map(of)).size).toBeLessThanOrEqual(1);
  }), runs(300));
});
