/**
 * What owning is reckoned to cost, beside what is printed elsewhere: Iowa State University Extension, Ag Decision Maker
 * A3-29 (PM 710), "Estimating Farm Machinery Costs". Its tables 1a and 3 as transcribed by a reader, second-hand; of the
 * column at 400 hours the years 10, 12 and 15 stand the same with another who read the edition of March 2026. The example is that of the method restated in a
 * growers' magazine, "How much will that tractor cost?", parts 1 and 2.
 */
import { describe, expect, test } from 'vitest';
import type { MachineDocument } from '../../src/catalogue/schema.ts';
import { sideOf, type OwningSide } from '../../src/lot/owning/side.ts';
import { ruleBook } from '../../src/trade/book.ts';
import { remainingShare } from '../../src/trade/formulas/remaining-value.ts';
import { repairs } from '../../src/trade/formulas/repairs.ts';
import { hp, lineUp, soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { before, candidateIn } from './buyers.ts';

const book = ruleBook();
const coefficients = [book.value('resale.c1'), book.value('resale.c2'), book.value('resale.c3')] as const;

/** Table 1a, tractors of 30 to 79 hp: percent of the new list price left at 1 to 20 years, by hours a year. */
const left = {
  200: [65, 59, 54, 51, 48, 45, 42, 40, 38, 36, 35, 33, 32, 30, 29, 28, 26, 25, 24, 23],
  400: [60, 54, 49, 46, 43, 40, 38, 36, 34, 32, 31, 29, 28, 27, 25, 24, 23, 22, 21, 20],
  600: [56, 50, 46, 43, 40, 37, 35, 33, 31, 30, 28, 27, 25, 24, 23, 22, 21, 20, 19, 18],
} as const;
/** Table 3, tractors of two driven wheels: percent of the new list price that repairs have come to after 1,000 to 10,000 hours. */
const repaired = [1, 3, 6, 11, 18, 25, 34, 45, 57, 70] as const;
/** Whole percents are printed, and their coefficients are ours cut to three figures. */
const printed = 0.0065;

test.each(Object.entries(left))('what is left of a tractor run %s hours a year is what is printed, from the first year to the twentieth', (hours, shares) => {
  const apart = shares.map((share, index) => Math.abs(remainingShare(index + 1, Number(hours), coefficients) - share / 100));
  expect(shares).toHaveLength(20);
  expect(Math.max(...apart)).toBeLessThan(printed);
});

test('repairs add up to what is printed, from 1,000 hours to 10,000', () => {
  const shares = repaired.map((_, index) => repairs(1, 0, (index + 1) * 1000, book.value('own.repair.rf1'), book.value('own.repair.rf2')).result.value);
  shares.forEach((share, index) => expect(Math.abs(share - repaired[index]! / 100), `${index + 1},000 h`).toBeLessThan(printed));
});

/** One unit of 2026's lot through the whole of it. */
function cost(unit: Parameters<typeof soundUnit>[2], machine: Partial<MachineDocument>, use: { years: number; hoursPerYear: number }, rules = {}) {
  const document = { ...withMachine(withUnits(lineUp(), soundUnit('u', 'mid-deluxe', unit)), 'mid-deluxe', () => machine), rules };
  const { evaluationOf, world, catalogue } = before(document);
  return sideOf(evaluationOf(candidateIn(catalogue, 'u')), use, world) as OwningSide;
}

test.each([[1, 4], [5, 5], [3, 7], [8, 12]])('a unit %d years old, kept %d years at 400 hours, keeps of its price what the table says of both ages', (age, years) => {
  const { parts } = cost({ year: 2026 - age, hours: 400 * age, price: usd(20_000) }, {}, { years, hoursPerYear: 400 });
  const [now, later] = [left[400][age - 1]!, left[400][age + years - 1]!];
  const kept = 1 - (parts.depreciation! * years) / 20_000;
  // Both percents are rounded to a whole one.
  expect(Math.abs(kept - later / now)).toBeLessThan((later / now) * (0.65 / later + 0.65 / now));
});

test('a dealer’s own factors for what is left and for repairs take the place of the standard’s', () => {
  const use = { years: 7, hoursPerYear: 100 };
  const [plain, dearer] = [{}, { 'own.repair.rf1': 0.014, 'resale.c2': 0.05 }].map((rules) => cost({}, {}, use, rules).parts);
  expect(dearer!.repairs).toBeCloseTo(2 * plain!.repairs!, 9);
  // (0.981 − 0.05√13 − 0.0058√(1,100/13))² / (0.981 − 0.05√6 − 0.0058√(400/6))² = 0.84889 of 20,000
  const root = (age: number, hours: number) => (0.981 - 0.05 * Math.sqrt(age) - 0.0058 * Math.sqrt(hours / age)) ** 2;
  expect(dearer!.depreciation).toBeCloseTo((20_000 * (1 - root(13, 1100) / root(6, 400))) / 7, 6);
});

describe('the example that is printed', () => {
  // 105 hp at the PTO, diesel, $80,000 new and bought for $75,000, 400 hours a year for 15 years, fuel at $3.40 a gallon.
  const { parts, hoursPerYear } = cost(
    { year: 2026, hours: 0, price: usd(75_000) }, { engine: { ptoPower: hp(105), fuel: 'diesel' }, listPrice: { price: usd(80_000), year: 2026 } },
    { years: 15, hoursPerYear: 400 }, { 'own.fuel-price': 3.4, 'own.wage': 13.5 },
  );
  const perHour = (part: keyof typeof parts) => parts[part]! / hoursPerYear;

  test.each([
    ['fuel', 15.71, 0.005], // 4.62 gallons an hour
    ['lubricants', 2.36, 0.005], // 15 % of it
    ['repairs', 3.33, 0.04], // a quarter of $80,000 over 6,000 hours; the formula behind the table makes it 25.2 %
    // University of Illinois, farmdoc, "Machinery cost estimates: tractors": $13.50 an hour by 1.1.
    ['labour', 14.85, 0.005],
  ] as const)('%s: $%d an hour', (part, amount, within) => expect(Math.abs(perHour(part) - amount)).toBeLessThan(within));
});

describe('the ownership of its other example, $130,000 paid and 15 years of 400 hours at 8 %', () => {
  const { parts, years } = cost({ year: 2026, hours: 0, price: usd(130_000) }, {}, { years: 15, hoursPerYear: 400 }, { 'own.interest': 0.08 });
  // That one is of 180 hp, of which other shares are left: the end value is our own, the arithmetic from there on is as printed.
  const end = 130_000 - parts.depreciation! * years;

  test('loss of value with interest is capital recovery: 0.116830 a year of what is lost, 0.08 of what is left', () =>
    expect(Math.abs(parts.depreciation! + parts.interest! - (0.116_830 * (130_000 - end) + 0.08 * end))).toBeLessThan(0.1));
  test('housing, insurance and tax are 1 % of the middle of both', () => expect(parts.housing).toBeCloseTo((130_000 + end) / 200, 6));
});
