/** Asking prices in context: the regression against printed results, and what is said of a dealer's own prices. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { UnitDocument } from '../../src/catalogue/schema.ts';
import { askingContext, type AskingContext } from '../../src/lot/asking/context.ts';
import { medianOf, robustFit } from '../../src/lot/asking/robust-regression.ts';
import { sayAsking } from '../../src/lot/asking/say.ts';
import { shownToBuyers } from '../../src/lot/shows.ts';
import { en } from '../../src/lot/words/en.ts';
import { sequence } from '../../src/units/sequence.ts';
import { catalogueForTests, lineUp, soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { voiceOf } from './voice.ts';

/** Brownlee's stack loss data (1965), from memory: air flow, water temperature, acid concentration, stack loss. */
const stackLoss = [
  [80, 27, 89, 42], [80, 27, 88, 37], [75, 25, 90, 37], [62, 24, 87, 28], [62, 22, 87, 18], [62, 23, 87, 18], [62, 24, 93, 19],
  [62, 24, 93, 20], [58, 23, 87, 15], [58, 18, 80, 14], [58, 18, 89, 14], [58, 17, 88, 13], [58, 18, 82, 11], [58, 19, 93, 12],
  [50, 18, 89, 8], [50, 18, 86, 7], [50, 19, 72, 8], [50, 19, 79, 8], [50, 20, 80, 9], [56, 20, 82, 15], [70, 20, 91, 15],
] as const;

describe('the regression', () => {
  // The manual of statsmodels 0.15, "Robust Linear Models", prints Huber's estimate with scale by the median absolute deviation.
  test('gives what a manual prints for the stack loss data', () => {
    // It stops reweighting a little sooner, so the last of its digits are its own.
    const fit = robustFit(stackLoss.map(([air, water, acid]) => [1, air, water, acid]), stackLoss.map(([, , , loss]) => loss))!;
    [-41.026498, 0.829384, 0.926066, -0.127847].forEach((printed, at) => expect(fit.coefficients[at]).toBeCloseTo(printed, 4));
    // R's MASS::rlm prints a residual standard error of 2.441 for the same, from memory.
    expect(fit.scale).toBeCloseTo(2.441, 2);
  });

  test('finds an exact line again, whatever one price in five does', () => {
    fc.assert(fc.property(fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 })), fc.integer({ min: 1, max: 1e6 }), ([a, b, c], seed) => {
      const chance = sequence(seed);
      const rows = Array.from({ length: 30 }, () => [1, Math.floor(chance() * 20), Math.floor(chance() * 50)]);
      const fit = robustFit(rows, rows.map(([, x, y], index) => a + b * x! + c * y! + (index < 6 ? 5000 * (index % 2 === 0 ? 1 : -1) : 0)))!;
      [a, b, c].forEach((meant, at) => expect(Math.abs(fit.coefficients[at]! - meant)).toBeLessThan(0.05));
    }), { numRuns: 50 });
  });

  test('says nothing where regressors don’t tell apart what each does', () => {
    expect(robustFit([[1, 2, 4], [1, 3, 6], [1, 5, 10], [1, 7, 14]], [1, 2, 3, 4])).toBeUndefined();
  });

  test.each([[[3, 1, 2], 2], [[4, 1, 3, 2], 2.5], [[7], 7]])('the middle of %j is %d', (values, middle) => expect(medianOf(values)).toBe(middle));
});

/** Units whose prices fall by 6 % a year and 2 % a hundred hours from 30,000, each a little off. */
function lotOf(count: number, machine = 'mid-deluxe'): UnitDocument[] {
  const chance = sequence(7);
  return Array.from({ length: count }, (_, index) => {
    const [age, hours] = [1 + Math.floor(chance() * 14), Math.floor(chance() * 2000)];
    const price = 30_000 * 0.94 ** age * 0.98 ** (hours / 100) * (0.95 + 0.1 * chance());
    return soundUnit(`u${index}`, machine, { year: 2026 - age, hours, price: usd(Math.round(price)), ...(index % 3 === 0 && { status: 'sold' as const }) });
  });
}
const at = (price: number, more: Partial<UnitDocument> = {}) => soundUnit('own', 'mid-deluxe', { year: 2018, hours: 800, price: usd(price), ...more });
/** 30,000 × 0.94^8 × 0.98^8 */
const trend = 30_000 * 0.94 ** 8 * 0.98 ** 8;
const contextOf = (price: number, count = 40, more: Partial<UnitDocument> = {}) => {
  const catalogue = catalogueOf(withUnits(lineUp(), ...lotOf(count), at(price, more)));
  return askingContext(catalogue, catalogue.units!.find(({ id }) => id === 'own')!);
};

describe('an asking price', () => {
  test('is set beside the others of its machine, its own left out', () => {
    const context = contextOf(15_000) as AskingContext;
    expect(context).toMatchObject({ pool: 'machine', count: 40, sold: 14, lies: 'within', currency: 'USD' });
    expect(context.trend / trend).toBeCloseTo(1, 1);
    expect(context.byYear).toBeCloseTo(-0.06, 2);
    expect(context.byHundredHours).toBeCloseTo(-0.02, 2);
    expect((contextOf(60_000) as AskingContext).trend).toBe(context.trend);
  });

  test('lies below, within or above the range of most', () => {
    expect([9000, Math.round(trend), 25_000].map((price) => (contextOf(price) as AskingContext).lies)).toEqual(['below', 'within', 'above']);
  });

  test('the range holds about four in five of prices made the same way, and is the same each time', () => {
    const { low, high } = contextOf(15_000, 60) as AskingContext;
    expect(contextOf(15_000, 60)).toEqual(contextOf(15_000, 60));
    // Each is up to 5 % off, evenly: four fifths lie within 4 % of the trend.
    expect(low / trend).toBeGreaterThan(0.92);
    expect(low / trend).toBeLessThan(0.99);
    expect(high / trend).toBeGreaterThan(1.01);
    expect(high / trend).toBeLessThan(1.08);
  });

  test('one absurd price among them hardly moves it', () => {
    const units = lotOf(40).map((unit, index) => (index === 5 ? { ...unit, price: usd(900_000) } : unit));
    const catalogue = catalogueOf(withUnits(lineUp(), ...units, at(15_000)));
    const moved = askingContext(catalogue, catalogue.units!.find(({ id }) => id === 'own')!) as AskingContext;
    expect(Math.abs(moved.trend / (contextOf(15_000) as AskingContext).trend - 1)).toBeLessThan(0.02);
  });

  test('under 15 nothing is said, at 15 it is; a dealer may want more', () => {
    expect(contextOf(15_000, 14)).toEqual({ why: 'too-few', count: 14, least: 15 });
    expect(contextOf(15_000, 15)).toMatchObject({ count: 15 });
    const strict = catalogueOf({ ...withUnits(lineUp(), ...lotOf(15), at(15_000)), rules: { 'lot.asking.units-least': 20 } });
    expect(askingContext(strict, strict.units!.at(-1)!)).toMatchObject({ why: 'too-few', least: 20 });
  });

  test('where its machine has too few, those of its frame serve, as shares of their new prices', () => {
    const document = withUnits(lineUp(), ...lotOf(10), ...lotOf(10, 'mid-economy').map((unit) => ({ ...unit, id: `e${unit.id}` })), at(15_000));
    const catalogue = catalogueOf(document);
    expect(askingContext(catalogue, catalogue.units!.at(-1)!)).toMatchObject({ pool: 'frame', count: 20 });
    const unlisted = catalogueOf(withMachine(document, 'mid-deluxe', () => ({ listPrice: undefined })));
    expect(askingContext(unlisted, unlisted.units!.at(-1)!), 'without its new price there are no shares').toMatchObject({ why: 'too-few', count: 10 });
  });

  test('what is missing of the unit is named', () => {
    expect(contextOf(15_000, 40, { year: undefined, hours: undefined } as never)).toEqual({ why: 'unit', missing: ['year', 'hours'] });
  });

  test('units all alike in age say nothing of age', () => {
    const catalogue = catalogueOf(withUnits(lineUp(), ...lotOf(20).map((unit) => ({ ...unit, year: 2020 })), at(15_000)));
    expect(askingContext(catalogue, catalogue.units!.at(-1)!)).toEqual({ why: 'alike', count: 20 });
  });
});

test('in words it is never without saying that it is no valuation', () => {
  const speaking = { voice: voiceOf(catalogueForTests()), lot: en };
  for (const context of [contextOf(15_000), contextOf(15_000, 3), contextOf(15_000, 40, { year: undefined } as never)]) {
    expect(sayAsking(context, speaking).at(-1)).toMatch(/no valuation/);
  }
  expect(sayAsking(contextOf(25_000), speaking)[0]).toMatch(/^\$25,000 is above where about 80% of such asking prices would lie/);
});

test('buyers see none of it unless the dealer switched it on', () => {
  expect(shownToBuyers({}, 'askingContext')).toBe(false);
  expect(shownToBuyers({ shows: { owningComparison: true } }, 'askingContext')).toBe(false);
  expect(shownToBuyers({ shows: { owningComparison: true } }, 'owningComparison')).toBe(true);
});
