import fc from 'fast-check';
import { expect, test } from 'vitest';
import { criteria, type AnswersDocument, type Criterion } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { feet, inches, lb, lineUp, soundUnit, usd, withLoader, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { saying } from '../support/reckon.ts';

/** What a criterion is worth for a machine that stands. */
function worth(criterion: Criterion, answers: AnswersDocument, catalogue: CatalogueDocument = lineUp(), machine = 'mid-deluxe') {
  const entry = shortlist(catalogue, answers).shortlist.find((each) => each.machine === machine);
  if (!entry) throw new Error(`${machine} doesn’t stand`);
  return entry.contributions[criterion];
}

const limit = saying({ budget: { limit: usd(30_000) } });
const at = (price: number) => withUnits(lineUp(), soundUnit('the-unit', 'mid-deluxe', { price: usd(price) }));

test.each([[12_000, 1], [15_000, 1], [24_000, 0.5], [33_000, 0], [40_000, 0]])('against a limit of 30,000 a price of %i earns %d', (price, value) => {
  expect(worth('price', limit, at(price))).toMatchObject({ value, figure: price, anchors: [15_000, 33_000] });
});

test('without a limit a price is read between 8,000 and 60,000', () => {
  expect(worth('price', saying(), at(34_000))).toMatchObject({ value: 0.5, anchors: [8000, 60_000] });
});

test('a limit in another currency is no yardstick for the price', () => {
  expect(worth('price', saying({ budget: { limit: { value: 30_000, currency: 'CAD' } } }), at(34_000))).toMatchObject({ anchors: [8000, 60_000] });
});

const lawn = (acres: number, hours?: number) => saying({
  land: { mown: { value: acres, unit: 'acre' }, obstacles: 'some' }, tasks: [{ task: 'mow-lawn', deck: 'belly', ...(hours && { hours: { value: hours, unit: 'h' } }) }],
});

// 2 acres under 72 in: 4 mph × 6 ft × 0.92 × 0.8 / 8.25 = 2.141 acres an hour; 2 / 2.141 × 1.1 = 1.0276 h.
test('mowing time earns all at half the hours a buyer gives, nothing at one and a half', () => {
  expect(worth('time', lawn(2, 1.0276), lineUp(), 'small-standard')!.value).toBeCloseTo(0.5, 3);
  expect(worth('time', lawn(2, 3), lineUp(), 'small-standard')!.value).toBe(1);
  expect(worth('time', lawn(2, 0.6), lineUp(), 'small-standard')!.value).toBe(0);
});

test('a machine that can’t have the mower earns nothing for time', () => {
  expect(worth('time', lawn(2), lineUp(), 'mid-economy')).toMatchObject({ value: 0 });
});

const pallet = (weight: number) => saying({ tasks: [{ task: 'lift-pallets', weight: lb(weight) }] });
const rated = (times: number) => withLoader(lineUp(), 'mid-deluxe', ({ ratings }) => ({ ratings: ratings.map((each) => ({ ...each, load: lb(each.load.value * times) })) }));

test('strength to spare saturates at half as much again', () => {
  const values = [1, 1.5, 2, 3].map((times) => worth('headroom', pallet(600), rated(times))!.value!);
  expect(values[0]).toBeGreaterThan(0);
  expect(values[0]).toBeLessThan(1);
  expect(values.slice(1)).toEqual([1, 1, 1]);
});

test('half as strong as wished earns nothing, a near miss a little less than a near hit, and the hardest job counts', () => {
  expect(worth('headroom', pallet(5000))!.value).toBe(0);
  expect(worth('headroom', pallet(2500))!.value).toBeLessThan(worth('headroom', pallet(100))!.value!);
  const both = saying({ tasks: [{ task: 'lift-pallets', weight: lb(100) }, { task: 'carry-implement', weight: lb(2450), distance: { value: 610, unit: 'mm' } }] });
  expect(worth('headroom', both)!.value).toBeLessThan(worth('headroom', pallet(100))!.value!);
});

test('on a lawn a lighter machine fits better, and a surplus of mass counts against it', () => {
  const fit = (mass: number) => worth('fit', saying({ tasks: [{ task: 'mow-lawn', deck: 'belly' }] }), withMachine(lineUp(), 'mid-deluxe', () => ({ mass: lb(mass), grossMass: lb(12_000) })))!.value!;
  expect(fit(1500)).toBeGreaterThan(fit(2900));
  expect(fit(2900)).toBeGreaterThan(fit(3600));
  expect([fit(500), fit(6000)]).toEqual([1, 0]);
});

test('in a narrow passage room on each side earns, among obstacles a small circle', () => {
  const gate = (width: number) => worth('fit', saying({ land: { gate: inches(width) } }))!.value!;
  expect([gate(96), gate(81)]).toEqual([1, 0.5]);
  const turn = (radius: number) => worth('fit', saying({ land: { obstacles: 'many' } }), withMachine(lineUp(), 'mid-deluxe', () => ({ turningRadius: feet(radius) })))!.value!;
  expect([turn(7), turn(9.5), turn(12)].map((value) => Math.round(value * 1e6) / 1e6)).toEqual([1, 0.5, 0]);
});

test('comfort is the share of the wishes met, or of the plain comforts where none is wished for', () => {
  const wishes = saying({ comfort: { cruise: true, tiltWheel: true, cab: 'heat-and-air' } });
  expect(worth('comfort', wishes)!.value).toBe(1);
  expect(worth('comfort', wishes, lineUp(), 'small-deluxe')!.value).toBeCloseTo(2 / 3, 6);
  expect(worth('comfort', saying())!.value).toBe(1);
  expect(worth('comfort', saying(), lineUp(), 'mid-economy')!.value).toBe(0);
});

test('fewer years and hours ahead keep more of the price', () => {
  const kept = (keepYears: number, hoursPerYear: number) => worth('resale', saying({ budget: { keepYears, hoursPerYear } }))!.figure!;
  expect(kept(2, 100)).toBeGreaterThan(kept(10, 100));
  expect(kept(5, 50)).toBeGreaterThan(kept(5, 300));
});

test.each<[Criterion, CatalogueDocument, AnswersDocument, string]>([
  ['price', withMachine(lineUp(), 'mid-deluxe', () => ({ typicalPrices: undefined })), saying(), 'price'],
  ['resale', withMachine(lineUp(), 'mid-deluxe', () => ({ typicalPrices: undefined })), saying(), 'typicalPrices'],
  ['headroom', withLoader(lineUp(), 'mid-deluxe', () => ({ ratings: [] })), pallet(300), 'loaders.ratings'],
  ['fit', withMachine(lineUp(), 'mid-deluxe', () => ({ turningRadius: undefined })), saying({ land: { obstacles: 'many' } }), 'turningRadius'],
  ['comfort', withMachine(lineUp(), 'mid-deluxe', () => ({ cruise: undefined })), saying(), 'cruise'],
])('what %s can’t be read from is said to be missing, and earns nothing for it', (criterion, catalogue, answers, missing) => {
  const read = (from: CatalogueDocument) => {
    const { shortlist: stands, askDealer } = shortlist(from, answers);
    return [...stands, ...askDealer].find(({ machine }) => machine === 'mid-deluxe')!.contributions[criterion]!;
  };
  expect(read(catalogue).missing).toContain(missing);
  expect(read(catalogue).points).toBeLessThan(read(lineUp()).points);
});

test('of whatever answers and figures: values lie between nothing and all, and the points add up to the score', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const { shortlist: stands, askDealer } = shortlist(catalogue, answers);
    for (const { contributions, score, machine } of [...stands, ...askDealer]) {
      const parts = Object.values(contributions);
      for (const { value = 0, weight, points, anchors } of parts) {
        expect(value, machine).toBeGreaterThanOrEqual(0);
        expect(value, machine).toBeLessThanOrEqual(1);
        expect(points).toBeCloseTo(weight * value, 5);
        if (anchors) expect(anchors[0]).not.toBe(anchors[1]);
      }
      expect(parts.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 5);
      expect(parts.reduce((sum, { points }) => sum + points, 0)).toBeCloseTo(score, 5);
      expect(Object.keys(contributions).every((criterion) => (criteria as readonly string[]).includes(criterion))).toBe(true);
    }
  }), runs(80));
}, aMinute);
