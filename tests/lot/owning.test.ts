/** The old deluxe against the new economy. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chartSvg, roundUp } from '../../src/lot/owning/chart-svg.ts';
import { tableOf } from '../../src/lot/owning/chart.ts';
import { compareOwning } from '../../src/lot/owning/compare.ts';
import { crossingsOf } from '../../src/lot/owning/crossing.ts';
import { loanPartOf } from '../../src/lot/owning/loan-part.ts';
import { chartWordsOf, sayComparison } from '../../src/lot/owning/say.ts';
import { perYearOf, sideOf, type OwningSide } from '../../src/lot/owning/side.ts';
import { en } from '../../src/lot/words/en.ts';
import { ruleBook } from '../../src/trade/book.ts';
import type { UnitDocument } from '../../src/catalogue/schema.ts';
import { catalogueForTests, lineUp, soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { saying } from '../support/reckon.ts';
import { before, candidateIn, dealing, lifting, machineIn } from './buyers.ts';
import { voiceOf } from './voice.ts';

const oldAndNew = (document = catalogueForTests(), answers = saying(), more: Partial<Parameters<typeof compareOwning>[0]> = {}) => {
  const { catalogue, answers: read } = before(document, answers);
  const candidates = [candidateIn(catalogue, 'old-faithful'), candidateIn(catalogue, 'by-the-gate')];
  return compareOwning({ catalogue, answers: read, candidates, years: 7, hoursPerYear: 100, ...more });
};
const sidesOf = ({ sides }: ReturnType<typeof oldAndNew>) => sides.map(({ cost }) => cost as OwningSide);

test('a mid of 2020 with 400 hours for 20,000 costs what was reckoned by hand', () => {
  const { evaluationOf, world, catalogue } = before(withUnits(lineUp(), soundUnit('u', 'mid-deluxe')));
  const side = sideOf(evaluationOf(candidateIn(catalogue, 'u')), { years: 7, hoursPerYear: 100 }, world) as OwningSide;
  // The parts are reckoned in tests/ranking/owning.test.ts: 845.05 + 1,238.49 + 170.42 + 42.84 + 492.80 + 73.92.
  expect(side.perYear).toBeCloseTo(2863.52, 2);
  const of = (cause: string) => side.spreads.find((each) => each.cause === cause)!;
  expect(of('repairs').low).toBeCloseTo(2863.52 - 42.84 / 2, 2);
  expect(of('repairs').high).toBeCloseTo(2863.52 + 42.84, 2);
  expect(of('fuel').high).toBeCloseTo(2863.52 + 0.35 * (492.8 + 73.92), 2); // oil goes with fuel
  // 14,084.66 × 0.85: capital 0.18555322 × (20,000 − 11,971.96) + 0.07 × 11,971.96, housing 1 % of the mean
  expect(of('resale').high).toBeCloseTo(0.18555322 * (20_000 - 11_971.96) + 0.07 * 11_971.96 + 0.005 * (20_000 + 11_971.96) + 42.84 + 492.8 + 73.92, 1);
});

test('a price and hours of one’s own, and the dealer’s own figures, count', () => {
  const plain = sidesOf(oldAndNew());
  expect(sidesOf(oldAndNew({ ...catalogueForTests(), rules: { 'own.fuel-price': 7 } }))[0]!.parts.fuel).toBeCloseTo(2 * plain[0]!.parts.fuel!, 6);
  expect(oldAndNew({ ...catalogueForTests(), rules: { 'own.fuel-price': 7 } }).dealers).toEqual(['own.fuel-price']);
  expect(oldAndNew().dealers).toEqual([]);
});

test('of a machine without a unit its typical prices make a range too', () => {
  const { evaluationOf, world, catalogue } = before(lineUp());
  const of = (unit?: UnitDocument) => sideOf(evaluationOf({ machine: machineIn(catalogue, 'mid-deluxe'), ...(unit && { unit: unit as never }) }), { years: 7, hoursPerYear: 100 }, world) as OwningSide;
  const price = of().spreads.find(({ cause }) => cause === 'price')!;
  expect(price.low).toBeLessThan(of().perYear);
  expect(price.high).toBeGreaterThan(of().perYear);
  const own = before(withUnits(lineUp(), soundUnit('u', 'mid-deluxe')));
  const unit = sideOf(own.evaluationOf(candidateIn(own.catalogue, 'u')), { years: 7, hoursPerYear: 100 }, own.world) as OwningSide;
  expect(unit.spreads.map(({ cause }) => cause)).toEqual(['resale', 'repairs', 'fuel']);
});

describe('whatever the years, hours, price and age', () => {
  const anyUse = fc.record({ years: fc.integer({ min: 1, max: 25 }), hoursPerYear: fc.integer({ min: 1, max: 1500 }) });
  const anyUnit = fc.record({ year: fc.integer({ min: 2008, max: 2026 }), hours: fc.integer({ min: 0, max: 6000 }), price: fc.integer({ min: 3000, max: 60_000 }).map(usd) });
  const sideFor = (unit: Partial<UnitDocument>) => {
    const { evaluationOf, world, catalogue } = before(withUnits(lineUp(), soundUnit('u', 'mid-deluxe', unit)));
    const evaluation = evaluationOf(candidateIn(catalogue, 'u'));
    return (use: { years: number; hoursPerYear: number }) => sideOf(evaluation, use, world) as OwningSide;
  };

  test('the ranges hold what was reckoned, each cause within all of them', () => {
    fc.assert(fc.property(anyUnit, anyUse, (unit, use) => {
      const { perYear, range, spreads } = sideFor(unit)(use);
      expect(range.low).toBeLessThanOrEqual(perYear);
      expect(range.high).toBeGreaterThanOrEqual(perYear);
      for (const { low, high } of spreads) {
        expect(low).toBeLessThanOrEqual(perYear + 1e-6);
        expect(high).toBeGreaterThanOrEqual(perYear - 1e-6);
        expect(range.low).toBeLessThanOrEqual(low + 1e-6);
        expect(range.high).toBeGreaterThanOrEqual(high - 1e-6);
      }
    }), { numRuns: 60 });
  });

  test('more hours never make a year cheaper', () => {
    fc.assert(fc.property(anyUnit, anyUse, fc.integer({ min: 1, max: 500 }), (unit, use, more) => {
      const side = sideFor(unit);
      expect(side({ ...use, hoursPerYear: use.hoursPerYear + more }).perYear).toBeGreaterThanOrEqual(side(use).perYear);
    }), { numRuns: 60 });
  });

  test('the parts add up to the year, with a loan too', () => {
    fc.assert(fc.property(anyUnit, anyUse, (unit, use) => {
      const { evaluationOf, world, catalogue } = before(withUnits(lineUp(), soundUnit('u', 'mid-deluxe', unit)));
      const side = sideOf(evaluationOf(candidateIn(catalogue, 'u')), use, world, { annualRate: 0.09, months: 60, depositShare: 0.1 }) as OwningSide;
      expect(Object.values(side.parts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(side.perYear, 6);
    }), { numRuns: 40 });
  });
});

describe('where they change places', () => {
  test('the order by cost turns exactly there', () => {
    const { evaluationOf, world, catalogue } = before(catalogueForTests());
    const [a, b] = ['old-faithful', 'by-the-gate'].map((unit) => evaluationOf(candidateIn(catalogue, unit)));
    const apart = (hoursPerYear: number) => perYearOf(a!, { years: 7, hoursPerYear }, world)! - perYearOf(b!, { years: 7, hoursPerYear }, world)!;
    const [{ crossing }] = oldAndNew().pairs as [ReturnType<typeof oldAndNew>['pairs'][number]];
    expect(crossing.crossings).toHaveLength(1);
    const { hoursPerYear, below, above } = crossing.crossings[0]!;
    expect(Math.abs(apart(hoursPerYear))).toBeLessThan(1e-6);
    expect([below, above]).toEqual(['a', 'b']);
    expect(apart(hoursPerYear - 0.01)).toBeLessThan(0);
    expect(apart(hoursPerYear + 0.01)).toBeGreaterThan(0);
  });

  test('of two straight lines it is where they meet, or nowhere', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 40 }), (fixedA, hourA, fixedB, hourB) => {
      const found = crossingsOf((hours) => fixedA + hourA * hours, (hours) => fixedB + hourB * hours, 10, 600);
      const meet = (fixedB - fixedA) / (hourA - hourB);
      // At the very ends either answer is right.
      if (Math.abs(meet - 10) < 1e-6 || Math.abs(meet - 600) < 1e-6) return;
      if (hourA !== hourB && meet > 10 && meet < 600) {
        expect(found.crossings).toHaveLength(1);
        expect(found.crossings[0]!.hoursPerYear).toBeCloseTo(meet, 6);
        expect(found.crossings[0]!.below).toBe(hourA > hourB ? 'a' : 'b');
      } else {
        expect(found.crossings).toEqual([]);
        expect(found.throughout).toBe(fixedA === fixedB && hourA === hourB ? 'same' : fixedA + hourA * 300 < fixedB + hourB * 300 ? 'a' : 'b');
      }
    }), { numRuns: 300 });
  });

  test('two changes are both found', () => {
    const { crossings } = crossingsOf((hours) => (hours - 100) * (hours - 400), () => 0, 10, 600);
    expect(crossings.map(({ hoursPerYear }) => Math.round(hoursPerYear))).toEqual([100, 400]);
  });

  test('where one costs less at any hours that is said, and there is no crossing', () => {
    const cheap = withUnits(catalogueForTests(), ...catalogueForTests().units!.map((unit) => (unit.id === 'by-the-gate' ? { ...unit, price: usd(5000) } : unit)));
    expect(oldAndNew(cheap).pairs[0]!.crossing).toMatchObject({ crossings: [], throughout: 'b' });
  });
});

describe('where a demand parts them', () => {
  test('above what the lesser loader lifts it drops out', () => {
    const [{ dropsOut }] = oldAndNew(catalogueForTests(), lifting(300)).pairs as [ReturnType<typeof oldAndNew>['pairs'][number]];
    const lift = dropsOut.find(({ capability }) => capability === 'loader.lift')!;
    expect(lift).toMatchObject({ side: 'b', is: 'at-least', unit: 'kg', today: false });
    const at = (weight: number) => before(catalogueForTests(), lifting(weight));
    const outcome = (weight: number) => {
      const { evaluationOf, catalogue } = at(weight);
      return evaluationOf(candidateIn(catalogue, 'by-the-gate')).judged.find(({ need }) => need.capability === 'loader.lift')!.verdict.outcome;
    };
    const pounds = lift.at / 0.45359237;
    expect([outcome(pounds - 1), outcome(pounds + 1)]).toEqual(['met', 'failed']);
    expect(lift.otherAt).toBeGreaterThan(lift.at);
  });

  test('where it does so already that is said, and of prices it is silent', () => {
    const { pairs } = oldAndNew(catalogueForTests(), lifting(700, { budget: { limit: usd(30_000), firm: true } }));
    expect(pairs[0]!.dropsOut.filter(({ today }) => today).map(({ capability, side }) => [capability, side])).toEqual([['loader.lift', 'b']]);
    expect(pairs[0]!.dropsOut.map(({ capability }) => capability)).not.toContain('price');
  });
});

describe('a loan', () => {
  const book = ruleBook();
  const cost = (annualRate: number, years = 7) => loanPartOf(20_000, { annualRate, months: 60, depositShare: 0.1 }, years, book)!.perYear;

  test('at the rate of one’s own money costs nothing more, above it more, below it less', () => {
    expect(cost(book.value('own.interest'))).toBeCloseTo(0, 6);
    expect(cost(book.value('own.interest'), 3), 'repaid early').toBeCloseTo(0, 6);
    expect(cost(0.09)).toBeGreaterThan(0);
    expect(cost(0)).toBeLessThan(0);
  });

  // 18,000 over 60 months without interest is 300 a month, worth 300 × 50.50199 = 15,150.60 at 7 %; −2,849.40 × 0.18555322
  test('without interest, by hand', () => expect(cost(0)).toBeCloseTo(-528.72, 1));

  test('is left out where the dealer may not tell of one', () => {
    const finance = { annualRate: 0.069, months: 60, depositShare: 0.1 };
    expect(oldAndNew(dealing(), saying(), { finance }).finance).toEqual(finance);
    const pounds = (value: unknown): unknown => JSON.parse(JSON.stringify(value).replaceAll('"USD"', '"GBP"'));
    expect(oldAndNew(pounds(dealing()) as ReturnType<typeof dealing>, saying(), { finance }).finance).toBe('ask');
  });
});

describe('whoever said that he pays by the month', () => {
  const terms = [
    { annualRate: 0.0815, months: 84, depositShare: 0.1 }, { annualRate: 0.0649, months: 36, depositShare: 0.2 }, { annualRate: 0.069, months: 60, depositShare: 0.1 },
  ];
  const borrowing = (monthly?: number) => saying({ budget: { pay: 'loan', ...(monthly !== undefined && { monthly: usd(monthly) }) } });
  const monthsOf = (answers: ReturnType<typeof saying>, dealer = dealing({ finance: terms })) => {
    const { finance } = oldAndNew(dealer, answers);
    return typeof finance === 'object' ? finance.months : finance;
  };

  // 21,900 is the dearer of the two: 80 % over 36 months at 6.49 % is 536.89, 90 % over 60 at 6.9 % is 389.36, over 84 at 8.15 % is 308.82.
  test.each([[undefined, 36], [540, 36], [530, 60], [390, 60], [389, 84], [100, 84]])('with at most %s a month the loan runs over %d months', (monthly, months) =>
    expect(monthsOf(borrowing(monthly))).toBe(months));

  test('with his own money, or unsaid, nothing is borrowed; with no terms the dealer is asked', () => {
    expect([saying(), saying({ budget: { pay: 'cash' } })].map((answers) => monthsOf(answers))).toEqual([undefined, undefined]);
    expect(monthsOf(borrowing(), dealing({ finance: undefined } as never))).toBe('ask');
    expect(oldAndNew(dealing(), borrowing(), { finance: 'own-money' }).finance).toBeUndefined();
  });

  test('the loan is in the year, told apart and with its terms', () => {
    const comparison = oldAndNew(dealing(), borrowing());
    const [, financed] = sidesOf(comparison);
    const [, own] = sidesOf(oldAndNew(dealing()));
    // 18,630 over 60 months at 6.9 %: 368.02 a month, worth 18,585.77 at 7 %; (18,585.77 − 18,630) × 0.18555322
    expect(financed!.parts.loan).toBeCloseTo(-8.21, 1);
    expect(financed!.perYear).toBeCloseTo(own!.perYear + financed!.parts.loan!, 9);
    expect(financed!.loan).toMatchObject({ deposit: 2070, financed: 18_630, months: 60 });
    const { sides, assumptions } = sayComparison(comparison, { voice: voiceOf(dealing()), lot: en });
    const told = sides[1]!.says.join(' ').replaceAll('\u00a0', ' ');
    // 12 CFR 1026.24(d)(2): the down payment, the terms of repayment, and the rate as APR; 2,070 + 60 × 368.02 − 20,700 is interest.
    for (const each of ['$2,070.00 down', '60', '$368.02 a month', '6.90% APR', '$24,151.20', '$3,451.20 is interest']) expect(told).toContain(each);
    expect(assumptions).toContain(en.owning.financed);
  });

  test('by the same terms the dearer of two pays more for its loan, as their prices are', () => {
    const [old, young] = sidesOf(oldAndNew(dealing({ finance: [{ annualRate: 0.09, months: 60, depositShare: 0.1 }] }), borrowing()));
    expect(old!.parts.loan! / young!.parts.loan!).toBeCloseTo(21_900 / 20_700, 9);
    expect(old!.parts.loan).toBeGreaterThan(0);
  });

  test('where he must ask, it is said', () => {
    const said = sayComparison(oldAndNew(dealing({ finance: undefined } as never), borrowing()), { voice: voiceOf(dealing()), lot: en });
    expect(said.assumptions).toContain(en.owning.askFinance);
    expect(said.sides.flatMap(({ says }) => says).join(' ')).not.toMatch(/APR|down/);
  });
});

test('what is missing is named, and the other is told all the same', () => {
  const { listPrice: _gone, ...rest } = catalogueForTests().machines.find(({ id }) => id === 'mid-economy')!;
  const without = withMachine(catalogueForTests(), 'mid-economy', () => ({ ...rest, listPrice: undefined }));
  const { sides, pairs, order } = oldAndNew(without);
  expect(sides[1]!.cost).toEqual({ missing: ['listPrice'] });
  expect([pairs, order]).toEqual([[], [0]]);
});

describe('in words and as a picture', () => {
  const comparison = oldAndNew(catalogueForTests(), lifting(700));
  const speaking = { voice: voiceOf(catalogueForTests()), lot: en };

  test('it says that one costs less under these assumptions, from where on, and what parts them', () => {
    const said = sayComparison(comparison, speaking);
    expect(said.pairs[0]!.join(' ')).toMatch(/mid economy of 2023 .* costs less under these assumptions .* Under about 39.hours a year, mid deluxe costs less; over that, mid economy/);
    expect(said.pairs[0]!.at(-1)).toMatch(/goes only to 477.lb, and you ask for 700.lb/);
    expect(said.noValuation).toMatch(/no valuation/);
  });

  test('the table says all the chart shows, the buyer’s own hours and the change among them', () => {
    const rows = tableOf(comparison.chart!);
    const hours = rows.map(({ hoursPerYear }) => hoursPerYear);
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
    expect(hours).toContain(100);
    expect(hours).toContain(comparison.pairs[0]!.crossing.crossings[0]!.hoursPerYear);
    for (const { costs, hoursPerYear } of rows) for (const { perYear, perHour } of costs) expect(perHour * hoursPerYear).toBeCloseTo(perYear, 6);
  });

  test('the picture is well-formed, within its sheet, and harmless whatever a machine is called', () => {
    const named = withMachine(catalogueForTests(), 'mid-deluxe', () => ({ name: '<script>"&\u0007' }));
    const svg = chartSvg(comparison.chart!, { words: chartWordsOf(oldAndNew(named), { voice: voiceOf(named), lot: en }), prefix: 'c', width: 320, standalone: true });
    expect(svg).not.toMatch(/<script|NaN|undefined/);
    expect(svg).not.toContain('\u0007');
    expect(svg).toContain('&lt;script&gt;');
    const width = Number(/ width="([\d.]+)"/.exec(svg)![1]);
    const xs = [...svg.matchAll(/ d="M([\d.]+) /g)].map(([, x]) => Number(x));
    expect(xs.length).toBeGreaterThan(10);
    expect(Math.max(...xs)).toBeLessThanOrEqual(width);
    expect(chartSvg(comparison.chart!, { words: chartWordsOf(comparison, speaking), prefix: 'c', width: 320 })).toBe(chartSvg(comparison.chart!, { words: chartWordsOf(comparison, speaking), prefix: 'c', width: 320 }));
  });

  test.each([[1, 1], [11, 20], [210, 250], [260, 500], [1000, 1000], [1001, 2000], [7600, 10_000]])('%i is rounded up to %i', (amount, round) => expect(roundUp(amount)).toBe(round));
});
