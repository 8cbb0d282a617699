import fc from 'fast-check';
import { PaymentDueTime, pmt, pv, rate as rateOf } from 'financial';
import { expect, test } from 'vitest';
import { ruleBook, type FigureId, type FormulaId } from '../../src/trade/book.ts';
import { moneyFormulas } from '../../src/trade/figures/formulas-of-money.ts';
import { capitalRecovery } from '../../src/trade/formulas/capital-recovery.ts';
import { fuelCost, fuelUse, lubricants } from '../../src/trade/formulas/fuel.ts';
import { annualPercentageRate, instalment, loanExtra, principalFor } from '../../src/trade/formulas/instalments.ts';
import { noiseTime } from '../../src/trade/formulas/noise.ts';
import { costPerHour, depreciation, housing, labourCost, spreadOf, sumOfCosts, valueKept } from '../../src/trade/formulas/owning-costs.ts';
import { repairs } from '../../src/trade/formulas/repairs.ts';
import { dailyExposure, timeToExposure } from '../../src/trade/formulas/vibration.ts';
import { cite, isRefusal, type Refusal, type Working } from '../../src/trade/working.ts';
import { quantity } from '../../src/units/quantity.ts';
import { isSum, reckon, sumOfText } from '../support/formula-reader.ts';
import { asSi, si } from '../support/quantities.ts';
import { workingsOfMoney } from '../worked/calls/money-and-operator.ts';
import { moneyAndOperator as cases } from '../worked/cases/money-and-operator.ts';
import { known, type Given } from '../worked/given.ts';

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map(asSi);
const holds = <T>(arbitrary: fc.Arbitrary<T>, property: (value: T) => boolean) => fc.assert(fc.property(arbitrary, property), { numRuns: 300 });
const value = (outcome: Working | Refusal) => known<Working>(outcome).result.value;
const isAbout = (a: number, b: number, within = 1e-9) => Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b), 1);
const book = ruleBook();

const workings = cases.map((each) => {
  const given = Object.fromEntries(Object.entries(each.given).map(([name, text]) => [name, si(text!)])) as unknown as Given;
  const formula = each.formula as keyof typeof moneyFormulas;
  return { name: each.name, formula, working: workingsOfMoney[formula](given) as Working };
});

/** Without interest the text divides nothing by nothing, and its statement says what holds instead. */
const hasInterest = ({ working, formula }: (typeof workings)[number]) =>
  [working.inputs.annualRate, ...(formula === 'loan.apr' ? [working.result] : [])].every((rate) => rate?.value !== 0);

test.each(workings.filter(hasInterest))('$formula can be reckoned again from its text and its inputs: $name', ({ formula, working }) => {
  // The text of the rate says what it must fulfil: the instalments are worth what was financed.
  const [more, meant] = formula === 'loan.apr' ? [{ apr: working.result }, working.inputs.financed!.value] : [{}, working.result.value];
  const sum = sumOfText(moneyFormulas[formula].formula, { ...working.inputs, ...more });
  expect(isSum(sum), sum).toBe(true);
  expect(isAbout(reckon(sum), meant, formula === 'loan.apr' ? 1e-8 : 1e-9), `${sum} gives ${reckon(sum)}, not ${meant}`).toBe(true);
});

test('control: a text with another sum, or with a name that is no input, would be found', () => {
  const { working } = workings.find(({ formula }) => formula === 'own.housing-cost')!;
  const other = sumOfText('housing = share × (price − end value) / 2', working.inputs);
  expect([isSum(other), isAbout(reckon(other), working.result.value)]).toEqual([true, false]);
  expect(isSum(sumOfText('housing = share × (price + value at the end) / 2', working.inputs))).toBe(false);
});

test.each(workings)('$formula gives numbers throughout: $name', ({ working }) => {
  expect([working.result, ...Object.values(working.inputs)].filter((term) => !Number.isFinite(term.value))).toEqual([]);
});

const loans = fc.record({ principal: from(100, 100_000), annualRate: from(0.0001, 0.4), months: fc.integer({ min: 1, max: 240 }) });

test('an instalment is what a library of finance makes of it', () => {
  holds(loans, ({ principal, annualRate, months }) =>
    isAbout(value(instalment(principal, annualRate, months)), -pmt(annualRate / 12, months, principal)));
});

test('the loan an instalment repays is what a library of finance makes of it', () => {
  holds(loans, ({ principal: monthly, annualRate, months }) =>
    isAbout(value(principalFor(monthly, annualRate, months)), -pv(annualRate / 12, months, monthly)));
});

test('the rate of a loan is what a library of finance makes of it', () => {
  holds(fc.record({ principal: from(100, 100_000), annualRate: from(0.01, 0.4), months: fc.integer({ min: 6, max: 120 }) }), ({ principal, annualRate, months }) => {
    const monthly = value(instalment(principal, annualRate, months));
    const theirs = 12 * rateOf(months, -monthly, principal, 0, PaymentDueTime.End, annualRate / 13, 1e-13, 1000);
    return Math.abs(value(annualPercentageRate(principal, monthly, months)) - theirs) < 1e-8;
  });
});

test('a yearly cost of capital is the instalment, year by year, of what is lost, and interest on the rest', () => {
  holds(fc.record({ price: from(1000, 100_000), kept: from(0, 1), rate: from(0.001, 0.3), years: fc.integer({ min: 1, max: 30 }) }), ({ price, kept, rate, years }) =>
    isAbout(value(capitalRecovery(price, price * kept, rate, years)), -pmt(rate, years, price, -price * kept)));
});

test('the rate is found again that the instalment was made with', () => {
  holds(loans, ({ principal, annualRate, months }) =>
    Math.abs(value(annualPercentageRate(principal, value(instalment(principal, annualRate, months)), months)) - annualRate) < 1e-9);
});

test('the loan is found again that the instalment was made for', () => {
  holds(fc.record({ principal: from(0, 100_000), annualRate: fc.oneof(fc.constant(0), from(0, 1e-9), from(0, 0.5)), months: fc.integer({ min: 1, max: 600 }) }),
    ({ principal, annualRate, months }) => isAbout(value(principalFor(value(instalment(principal, annualRate, months)), annualRate, months)), principal));
});

test('all instalments come to no less than the loan, and to more the higher the rate', () => {
  holds(fc.record({ loan: loans, more: from(0.001, 0.1) }), ({ loan: { principal, annualRate, months }, more }) => {
    const all = value(instalment(principal, annualRate, months)) * months;
    return all > principal && value(instalment(principal, annualRate + more, months)) * months > all;
  });
});

test('the lowest rates run into none without a jump', () => {
  expect([1e-15, 1e-12, 1e-9].map((annualRate) => value(instalment(6000, annualRate, 60)))).toEqual([1e-15, 1e-12, 1e-9].map(() => expect.closeTo(100, 6)));
});

test('a tenth down and 400 a month buy 22,498.90', () => expect(value(principalFor(400, 0.069, 60)) / 0.9).toBeCloseTo(22_498.9, 2));

test.each([
  ['a negative amount', -1, 0.06, 60], ['no amount one can say', Number.NaN, 0.06, 60], ['an amount without end', Infinity, 0.06, 60],
  ['a negative rate', 1000, -0.01, 60], ['no rate one can say', 1000, Number.NaN, 60], ['a rate without end', 1000, Infinity, 60],
  ['no months', 1000, 0.06, 0], ['half a month', 1000, 0.06, 12.5], ['months that lie back', 1000, 0.06, -12], ['no months one can say', 1000, 0.06, Number.NaN],
  ['months without end', 1000, 0.06, Infinity],
])('a loan with %s is refused', (_what, amount, annualRate, months) => {
  expect([instalment(amount, annualRate, months), principalFor(amount, annualRate, months)].map(isRefusal)).toEqual([true, true]);
});
test('control: a loan of nothing, a loan without interest and one of a month are not', () => {
  expect([instalment(0, 0.06, 60), instalment(1000, 0, 60), instalment(1000, 0.06, 1)].map(isRefusal)).toEqual([false, false, false]);
});

test.each([
  ['are less than was financed', 1000, 99, 10], ['are none', 1000, 0, 10], ['go the other way', 1000, -200, 10], ['nobody can say', 1000, Number.NaN, 10],
  ['have no end', 1000, Infinity, 10], ['repay nothing', 0, 100, 10], ['repay less than nothing', -1000, 100, 10], ['repay no one knows what', Number.NaN, 100, 10],
  ['never come', 1000, 100, 0], ['come half', 1000, 100, 10.5], ['outgrow all numbers', 1e-300, 1e300, 10],
])('there is no rate where the instalments %s', (_what, financed, monthly, months) => expect(isRefusal(annualPercentageRate(financed, monthly, months))).toBe(true));
test('control: where they just repay it, the rate is 0', () => {
  expect(value(annualPercentageRate(1000, 100, 10))).toBe(0);
  expect(value(annualPercentageRate(1000, 1000 / 3, 3))).toBeLessThan(1e-9);
});

test('a rate that is very high is found as well', () => expect(value(annualPercentageRate(100, 1100, 1))).toBeCloseTo(120, 8));

test.each([0, -1, Number.NaN])('a cost of %d hours is refused', (hours) => expect(isRefusal(costPerHour(100, hours))).toBe(true));
test('control: a cost of half an hour is not', () => expect(value(costPerHour(100, 0.5))).toBe(200));

test('capital costs at least the loss of value, and more the dearer the money is', () => {
  holds(fc.record({ price: from(1000, 100_000), kept: from(0, 0.95), rate: from(0, 0.2), more: from(0.001, 0.1), years: from(0.5, 30) }), ({ price, kept, rate, more, years }) => {
    const at = (interest: number) => value(capitalRecovery(price, price * kept, interest, years));
    return at(rate) * (1 + 1e-9) >= value(depreciation(price, price * kept, years)) && at(rate + more) > at(rate);
  });
});

test('a part of a year lies between the whole years beside it', () => {
  const at = (years: number) => value(capitalRecovery(20_000, 8000, 0.07, years));
  expect([at(2) > at(2.5), at(2.5) > at(3)]).toEqual([true, true]);
});

test('the lowest rates run into the loss alone without a jump, in whole years and in parts of them', () => {
  holds(fc.record({ rate: from(0, 1e-3), years: fc.oneof(from(0.5, 30), fc.integer({ min: 1, max: 30 })) }), ({ rate, years }) => {
    const [firstTerms, cost] = [1000 / years + 500 * rate * (1 + 1 / years), value(capitalRecovery(1000, 0, rate, years))];
    return Math.abs(cost - firstTerms) <= 1000 / years * (rate * (years + 1)) ** 2 + 1e-4;
  });
  expect(value(capitalRecovery(1000, 0, 1e-18, 4))).toBe(250);
});

test('repairs add up over the years, and later hours cost more', () => {
  holds(fc.record({ list: from(1000, 100_000), start: from(0, 5000), first: from(1, 3000), more: from(1, 3000) }), ({ list, start, first, more }) => {
    const between = (a: number, b: number) => value(repairs(list, a, b, book.value('own.repair.rf1'), book.value('own.repair.rf2')));
    const [middle, end] = [start + first, start + first + more];
    return isAbout(between(start, middle) + between(middle, end), between(start, end), 1e-9)
      && between(middle, middle + first) > between(start, middle);
  });
});

test('an hour of a diesel of 24 hp, fuel and oil, as the rule book has it', () => {
  const use = fuelUse(quantity('power', 24, 'hp'), asSi(book.value('own.fuel.diesel')));
  const fuel = value(fuelCost(asSi(value(use)), book.value('own.fuel-price')));
  // 24 × 0.044 × 3.50 = 3.696; × 0.15 = 0.5544
  expect(fuel).toBeCloseTo(3.696, 9);
  expect(value(lubricants(fuel, book.value('own.lubricant')))).toBeCloseTo(0.5544, 9);
});

test('exposure and the time to it undo each other', () => {
  holds(fc.record({ acceleration: from(0.05, 3), limit: from(0.1, 2) }), ({ acceleration, limit }) =>
    isAbout(value(dailyExposure(acceleration, asSi(value(timeToExposure(acceleration, limit))))), limit));
});

test.each([0, -0.5, Number.NaN])('there is no time at an acceleration of %d', (acceleration) => expect(isRefusal(timeToExposure(asSi(acceleration), asSi(0.5)))).toBe(true));
test('control: a day that is not spent on it shakes nobody', () => expect(value(dailyExposure(asSi(0.8), asSi(0)))).toBe(0));

test('each step of the exchange halves the time, by either authority', () => {
  holds(fc.record({ level: from(60, 130), by: fc.constantFrom(['noise.action', 'noise.exchange'] as const, ['noise.osha-limit', 'noise.osha-exchange'] as const) }), ({ level, by: [action, exchange] }) => {
    const at = (sound: number) => value(noiseTime(sound, book.value(action), book.value(exchange)));
    return isAbout(at(level), 2 * at(level + book.value(exchange)), 1e-10);
  });
});

test.each([['noise.action', 'noise.exchange'], ['noise.osha-limit', 'noise.osha-exchange']] as const)('at %s it is the whole day', (action, exchange) => {
  expect(value(noiseTime(book.value(action), book.value(action), book.value(exchange)))).toBe(book.value('noise.day'));
});

test('what must not be exceeded lies above what is to be acted on', () => {
  expect(book.value('vibration.limit')).toBeGreaterThan(book.value('vibration.action'));
  expect(book.value('noise.osha-limit')).toBeGreaterThan(book.value('noise.action'));
});

const rules = {
  annualRate: 'own.interest', rate: 'own.interest', share: 'own.housing', factor: 'mow.labour', rf1: 'own.repair.rf1', rf2: 'own.repair.rf2',
  perEnergy: 'own.fuel.diesel', price: 'own.fuel-price', limit: 'vibration.action', action: 'noise.action', exchange: 'noise.exchange',
  hours: 'keep.hours-per-year', time: 'operator.day-hours',
} as const;
test.each<[FormulaId, Working]>([
  ['loan.instalment', cite(known<Working>(instalment(1, 0.1, 1)), rules)],
  ['loan.principal', cite(known<Working>(principalFor(1, 0.1, 1)), rules)],
  ['loan.apr', cite(known<Working>(annualPercentageRate(1, 1, 1)), rules)],
  ['own.capital-recovery', cite(capitalRecovery(2, 1, 0.1, 1), rules)],
  ['own.depreciation', cite(depreciation(2, 1, 1), rules)],
  ['resale.amount', cite(valueKept(1, 1), rules)],
  ['own.housing-cost', cite(housing(1, 1, 1), rules)],
  ['own.per-hour', cite(known<Working>(costPerHour(1, 1)), rules)],
  ['own.sum', cite(sumOfCosts({ share: 1, fuel: 2 }), rules)],
  ['own.spread', spreadOf(1, 1)],
  ['own.loan', cite(loanExtra(1, 0, 0.1, 1, 1), rules)],
  ['own.labour', cite(labourCost(1, 1), rules)],
  ['own.repairs', cite(repairs(1, 1, 2, 1, 2), rules)],
  ['own.fuel', cite(fuelUse(asSi(1), asSi(1)), rules)],
  ['own.fuel-cost', cite(fuelCost(asSi(1), 1), rules)],
  ['own.lubricants', cite(lubricants(1, 1), rules)],
  ['vibration.daily', cite(dailyExposure(asSi(1), asSi(1)), rules)],
  ['vibration.time-to', cite(known<Working>(timeToExposure(asSi(1), asSi(1))), rules)],
  ['noise.time', cite(noiseTime(90, 85, 3), rules)],
])('%s says which of its inputs are the rule book\'s, and of no other', (formula, working) => {
  expect(working.formula).toBe(formula);
  const cited = Object.fromEntries(Object.entries(working.inputs).map(([name, { rule }]) => [name, rule]));
  const meant: Record<string, FigureId> = { ...rules, day: formula === 'noise.time' ? 'noise.day' : 'vibration.day' };
  expect(cited).toEqual(Object.fromEntries(Object.keys(working.inputs).map((name) => [name, meant[name]])));
});

test.each<[FigureId, Working]>([['vibration.day', dailyExposure(asSi(1), asSi(1))], ['noise.day', noiseTime(90, 85, 3)]])(
  '%s is cited without being asked', (id, { inputs }) => expect(inputs.day).toEqual({ value: book.value(id), unit: 's', rule: id }));
