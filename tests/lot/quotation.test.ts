/** The delivered price: exact to the cent, and silent on what nobody knows. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { digitsOf, toCoin } from '../../src/lot/quotation/money.ts';
import { quotation, type Quoted } from '../../src/lot/quotation/quotation.ts';
import { sayQuotation } from '../../src/lot/quotation/say.ts';
import { en } from '../../src/lot/words/en.ts';
import { metres } from './metres.ts';
import { saying } from '../support/reckon.ts';
import { soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { before, candidateIn, dealing, lifting, machineIn } from './buyers.ts';
import { voiceOf } from './voice.ts';

const quote = (document: CatalogueDocument = dealing(), answers: AnswersDocument = lifting(300), more: Partial<Quoted> = {}, unit = 'by-the-gate') => {
  const { evaluationOf, world, catalogue } = before(document, answers);
  return quotation({ evaluation: evaluationOf(candidateIn(catalogue, unit)), world, asOf: document.asOf, delivered: true, distance: metres('10 mi'), ...more });
};
const amounts = ({ lines }: ReturnType<typeof quote>) => lines.map(({ kind, amount }) => [kind, amount?.low]);

test('line by line, by hand', () => {
  const quoted = quote();
  expect(amounts(quoted)).toEqual([
    ['machine', 20_700], ['addition', 720], // forks, three dollars a pound
    ['delivery', 37.5], ['fees', 245], // ten miles at 3.75
    ['tax', 1231.65], // 5.75 % of 21,420
  ]);
  expect(quoted.total).toEqual({ low: 22_934.15, high: 22_934.15 });
  expect(quoted.without).toEqual([]);
});

test('what is fitted later costs its part and its hours at the dealer’s rate', () => {
  const mowing = saying({ land: { mown: { value: 2, unit: 'acre' }, obstacles: 'some' }, tasks: [{ task: 'mow-lawn', deck: 'belly', must: true }] });
  const unit = soundUnit('u', 'mid-deluxe', { fitted: { loader: true, midPto: false } });
  const { lines } = quote(withUnits(dealing(), unit), mowing, {}, 'u');
  expect(lines.filter(({ addition }) => addition?.what === 'mid-pto').map(({ kind, amount, labour }) => [kind, amount?.low, labour])).toEqual([
    ['addition', 1250, undefined], ['fitting', 400, { hours: 4, rate: 100 }],
  ]);
  const { labourRate: _gone, ...dealer } = dealing().dealer;
  const unrated = quote({ ...withUnits(dealing(), unit), dealer }, mowing, {}, 'u');
  expect(unrated.without.map(({ kind, unsaid }) => [kind, unsaid])).toContainEqual(['fitting', 'no-rate']);
});

describe('delivery', () => {
  const delivery = (distance: string | undefined, dealer: Partial<CatalogueDocument['dealer']> = {}) =>
    quote(dealing(dealer), lifting(300), distance === undefined ? { distance: undefined } as never : { distance: metres(distance) }).lines.find(({ kind }) => kind === 'delivery')!;

  test.each([['85 mi', 318.75], ['0 mi', 0]])('over %s costs %d', (distance, cost) => expect(delivery(distance).amount?.low).toBe(cost));
  test('beyond the dealer’s round, over nobody knows how far, or without a rate it is asked for', () => {
    expect(delivery('86 mi')).toMatchObject({ unsaid: 'too-far' });
    expect(delivery(undefined)).toEqual({ kind: 'delivery', unsaid: 'no-distance' });
    expect(delivery('10 mi', { delivery: undefined } as never)).toMatchObject({ unsaid: 'no-rate' });
  });
  test('within what he delivers free it costs nothing, beyond it the whole way', () => {
    const free = { ...dealing().dealer.delivery!, freeWithin: { value: 20, unit: 'mi' as const } };
    expect(delivery('20 mi', { delivery: free })).toMatchObject({ amount: { low: 0 }, free: true });
    expect(delivery('21 mi', { delivery: free }).amount?.low).toBe(78.75);
  });
  test('whoever fetches it has no such line', () => expect(quote(dealing(), lifting(300), { delivered: false }).lines.map(({ kind }) => kind)).not.toContain('delivery'));
});

// Common practice, no source: places differ in whether fitting, implements, delivery and fees are taxed; the dealer knows his.
describe('tax is on what the dealer says', () => {
  const taxOf = (quoted: ReturnType<typeof quote>) => quoted.lines.find(({ kind }) => kind === 'tax')!;

  test.each([
    ['unsaid: all but delivery and fees', undefined, 21_420, 1231.65], // 20,700 + 720
    ['the machine alone', ['machine'], 20_700, 1190.25],
    ['implements alone', ['implements'], 720, 41.4],
    ['delivery too', ['machine', 'fitting', 'implements', 'delivery'], 21_457.5, 1233.81], // 1,233.80625
    ['all of it', ['machine', 'fitting', 'implements', 'delivery', 'fees'], 21_702.5, 1247.89], // 1,247.89375
  ] as const)('%s', (_, taxed, on, tax) => {
    const line = taxOf(quote(dealing(taxed && { taxed: [...taxed] })));
    expect([line.tax!.on.low, line.amount]).toEqual([on, { low: tax, high: tax }]);
  });

  test('a part is taxed with the machine, its fitting as the dealer says', () => {
    const mowing = saying({ land: { mown: { value: 2, unit: 'acre' }, obstacles: 'some' }, tasks: [{ task: 'mow-lawn', deck: 'belly', must: true }] });
    const unit = soundUnit('u', 'mid-deluxe', { fitted: { loader: true, midPto: false, deck: true }, deck: 'mid-deluxe-deck-60' });
    const parts = (taxed: CatalogueDocument['dealer']['taxed']) => taxOf(quote(withUnits(dealing(taxed && { taxed }), unit), mowing, {}, 'u')).tax!;
    expect(parts(undefined).parts).toEqual([{ of: 'machine', on: { low: 21_250, high: 21_250 } }, { of: 'fitting', on: { low: 400, high: 400 } }]); // 20,000 + 1,250
    expect([parts(['machine']).on.low, parts(['machine']).free]).toEqual([21_250, ['fitting', 'delivery', 'fees']]);
  });

  test('each part is told with its amount, and what isn’t taxed', () => {
    const said = sayQuotation(quote(), { voice: voiceOf(dealing()), lot: en }).lines.find(({ name }) => name.startsWith('Tax'))!;
    expect(said).toEqual({
      name: 'Tax, 5.75% of the machine with its parts and implements', amount: '$1,231.65',
      notes: ['Taxed: the machine with its parts $20,700.00 and implements $720.00; $21,420.00 in all.', 'Not taxed: delivery and fees.'],
    });
  });

  test('a limit that is to include tax and delivery reckons them the same way', () => {
    const limited = lifting(300, { haul: { delivery: { value: 10, unit: 'mi' } }, budget: { limit: usd(60_000), firm: true, includes: ['implements', 'delivery', 'tax'] } });
    const low = (taxed?: CatalogueDocument['dealer']['taxed']) => {
      const { evaluationOf, catalogue } = before(dealing(taxed && { taxed }), limited);
      return evaluationOf(candidateIn(catalogue, 'by-the-gate')).price!.low;
    };
    expect(low()).toBeCloseTo(22_689.15, 9); // 21,420 × 1.0575 + 37.50
    expect(low(['machine'])).toBeCloseTo(22_647.75, 9); // 20,700 × 1.0575 + 720 + 37.50
    expect(low(['machine', 'implements', 'delivery'])).toBeCloseTo(22_691.306_25, 9); // 21,457.50 × 1.0575
  });
});

test('what nobody knows stays a line to ask about, and the total says that it leaves it out', () => {
  const { taxShare: _gone, ...dealer } = dealing().dealer;
  const quoted = quote({ ...dealing(), dealer }, lifting(300), { tradeIn: { kind: 'an old mower', owed: usd(300) as never } });
  expect(quoted.without.map(({ kind, unsaid }) => [kind, unsaid])).toEqual([['tax', 'no-tax'], ['trade-in', 'seen-first']]);
  expect(quoted.lines.find(({ kind }) => kind === 'trade-in')).not.toHaveProperty('amount');
  expect(quoted.total!.low).toBe(20_700 + 720 + 37.5 + 245);
  const said = sayQuotation(quoted, { voice: voiceOf(dealing()), lot: en });
  expect(said.total.notes).toEqual(['The total leaves out: Tax and In exchange.']);
  expect(said.noOffer).toMatch(/no offer/);
  expect(said.lines.at(-1)!.notes).toEqual(['The dealer must see it first. No value is in this sum.', 'You still owe $300.00 on it.']);
});

test('without the price of the machine there is no total and no loan', () => {
  const quoted = quote(withUnits(dealing(), soundUnit('u', 'mid-deluxe', { price: undefined } as never)), lifting(300), {}, 'u');
  expect(quoted.lines[0]).toEqual({ kind: 'machine', unsaid: 'no-price' });
  expect([quoted.total, quoted.loans]).toEqual([undefined, undefined]);
});

test('a machine without a unit is told as a range, low and high adding up each', () => {
  const { evaluationOf, world, catalogue } = before(withUnits(dealing()), lifting(300));
  const { lines, total } = quotation({ evaluation: evaluationOf({ machine: machineIn(catalogue, 'mid-economy') }), world, asOf: '2026-05-31' });
  expect(lines[0]!.amount).toEqual({ low: 13_000, high: 20_500 });
  for (const end of ['low', 'high'] as const) expect(Math.round(total![end] * 100)).toBe(lines.reduce((sum, { amount }) => sum + Math.round((amount?.[end] ?? 0) * 100), 0));
});

test('the lines add up to the total, to the cent, whatever the prices and shares', () => {
  const cents = fc.integer({ min: 1, max: 9_999_999 }).map((each) => usd(each / 100));
  fc.assert(fc.property(cents, cents, fc.integer({ min: 0, max: 200_000 }), cents, fc.integer({ min: 0, max: 1000 }), (price, fees, tax, rate, miles) => {
    const document = withUnits(dealing({ fees, taxShare: tax / 1e6, delivery: { perDistance: rate, per: { value: 1, unit: 'mi' } } }), soundUnit('u', 'mid-economy', { price }));
    const { lines, total } = quote(document, lifting(300), { distance: metres(`${miles} mi`) }, 'u');
    expect(lines.reduce((sum, { amount }) => sum + BigInt(Math.round((amount?.low ?? 0) * 100)), 0n)).toBe(BigInt(Math.round(total!.low * 100)));
    for (const { amount } of lines) if (amount) expect(Number(amount.low.toFixed(2))).toBe(amount.low);
  }), { numRuns: 60 });
});

describe('instalments', () => {
  test('are told with deposit, number, rate and all they come to, or not at all', () => {
    const { loans, total } = quote();
    const [loan] = loans!;
    expect(loan).toMatchObject({ deposit: 2293.42, months: 60, instalment: 407.74 }); // 20,640.74 × 0.00575 / (1 − 1.00575^−60)
    expect(loan!.deposit + loan!.financed).toBeCloseTo(total!.low, 9);
    expect(loan!.total).toBe(26_757.82);
    expect(loan!.rate).toBeCloseTo(0.069, 8);
    const [said] = sayQuotation(quote(), { voice: voiceOf(dealing()), lot: en }).loans!.says;
    // 12 CFR 1026.24(d)(2): the down payment, the terms of repayment, and the rate by the words "annual percentage rate" or APR.
    for (const told of ['$2,293.42 down', '60', '$407.74 a month', '6.90% APR']) expect(said!.replaceAll('\u00a0', ' ')).toContain(told);
  });

  test('by the example of 12 CFR 1026, appendix J (c)(1): 5,000 repaid by 24 payments of 230 is 9.69 %', () => {
    // The terms of such a loan are what its payments make them: 0.096857 a year.
    const unit = soundUnit('u', 'mid-economy', { price: usd(5000) });
    const plain = { fees: undefined, taxShare: 0, delivery: undefined } as never;
    const { loans } = quote(withUnits(dealing(plain), unit), saying(), { delivered: false, finance: [{ annualRate: 0.0968571, months: 24, depositShare: 0 }] }, 'u');
    expect(loans![0]).toMatchObject({ deposit: 0, financed: 5000, months: 24, instalment: 230, total: 5520 });
    expect(loans![0]!.rate).toBeCloseTo(0.0969, 4);
  });

  test('outside the United States only where the dealer has his own words for them', () => {
    const abroad = JSON.parse(JSON.stringify(dealing()).replaceAll('"USD"', '"CAD"')) as CatalogueDocument;
    expect(quote(abroad).loans).toBeUndefined();
    expect(quote({ ...abroad, dealer: { ...abroad.dealer, terms: { en: { guidance: 'Guidance.', finance: 'Credit by the bank.' } } } }).loans).toHaveLength(1);
  });
});

// ISO 4217: a yen has no smaller coin, a dollar has cents, a Kuwaiti dinar has thousandths.
test.each([['USD', 2], ['JPY', 0], ['KWD', 3]])('%s has %i digits behind the mark', (currency, digits) => expect(digitsOf(currency)).toBe(digits));
test.each([[1.005, 2, 1.01], [2.675, 2, 2.68], [1231.649_999, 2, 1231.65], [0.5, 0, 1], [10.0005, 3, 10.001]])('%d to %i digits is %d', (amount, digits, coin) => expect(toCoin(amount, digits)).toBe(coin));

test('control: a part that costs more moves the total', () => {
  const dearer = quote(withMachine(dealing(), 'mid-economy', () => ({})), lifting(300), { distance: metres('11 mi') });
  expect(dearer.total!.low - quote().total!.low).toBeCloseTo(3.75, 9);
});
