import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { mended } from '../../src/catalogue/mend.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { usable, type Usable } from '../../src/widget/usable.ts';

const read = (file: string): unknown => JSON.parse(readFileSync(new URL(`../../demo/${file}`, import.meta.url), 'utf8'));
const demo = read('catalogue.json') as CatalogueDocument;
const units = demo.units!;
const buyers = ['first-acre', 'hay-and-barn', 'steep-and-careful'].map((name) => read(`answers/${name}.json`) as AnswersDocument);

const verdicts = ['stands', 'ask', 'ruled-out'] as const;

/** Where a unit stands: how it is judged, and how high its machine comes; smaller is better. A unit that isn't told of stands nowhere. */
function standOf(unit: string, { shortlist: standing, askDealer, ruledOut }: Shortlist) {
  const entries = [...standing, ...askDealer, ...ruledOut];
  const place = entries.findIndex((entry) => entry.units.some((each) => each.unit === unit));
  const told = entries[place]?.units.find((each) => each.unit === unit);
  return told && { verdict: verdicts.indexOf(told.verdict), score: told.score };
}

const before = buyers.map((buyer) => shortlist(demo, buyer));
const figures = ['year', 'hours', 'price'] as const;
/** What a cell of a careless list may come to once it is JSON. */
const bad = ['', 'n/a', '#REF!', '1,500', '½', null, -5, Infinity, true, [], {}, { value: '' }, { value: null, currency: 'USD' }, { value: 0, currency: 'USD' }, { value: -1, currency: 'USD' }, { value: 5, currency: 'XXX' }];

describe('a bad figure of a unit', () => {
  test('becomes unknown: at best its unit is one to ask about, and among those that stand it scores no higher', () => {
    fc.assert(fc.property(fc.nat(units.length - 1), fc.constantFrom(...figures), fc.constantFrom(...bad), fc.nat(buyers.length - 1), (index, figure, value, of) => {
      fc.pre(!(figure === 'hours' && value === 0));
      const altered = { ...demo, units: units.map((unit, at) => (at === index ? { ...unit, [figure]: value } : unit)) };
      const { value: document } = usable(altered) as Usable;
      expect(document.units![index]).not.toHaveProperty(figure);
      expect(document.units).toHaveLength(units.length);
      const [then, now] = [before[of]!, shortlist(document, buyers[of]!)].map((each) => standOf(units[index]!.id, each));
      if (!then || !now) return;
      // What would be ruled out by the figure may be asked about without it, below all that stand.
      expect(now.verdict).toBeGreaterThanOrEqual(Math.min(then.verdict, verdicts.indexOf('ask')));
      // A score places a unit only among those that stand.
      if (now.verdict === verdicts.indexOf('stands')) expect(now.score).toBeLessThanOrEqual(then.score + 1e-6);
    }), { numRuns: Number(process.env.RUNS ?? 60) });
  }, 60_000);
});

test.each(['status', 'rops', 'seatBelt', 'recallOpen', 'fitted', 'machine', 'id'])('a unit whose %s can’t be read is left out, for it might hide what speaks against it', (key) => {
  const altered = { ...demo, units: units.map((unit, at) => (at === 3 ? { ...unit, [key]: 'perhaps so' } : unit)) };
  const { value, setAside } = usable(altered) as Usable;
  expect(value.units).toEqual(units.filter((_, at) => at !== 3));
  expect(setAside.join()).toMatch(/units\[3\]/);
});

test('a way to the dealer that isn’t one is left out, and the others stay', () => {
  const { value, setAside } = usable({ ...demo, dealer: { ...demo.dealer, url: 'javascript:alert(1)', phone: '' } }) as Usable;
  const { url, phone, ...dealer } = demo.dealer;
  expect(value.dealer).toEqual(dealer);
  expect([url, phone]).not.toContain(undefined);
  expect(setAside).toHaveLength(2);
});

test('of two units with one id the first is kept', () => {
  const { value } = usable({ ...demo, units: [...units, { ...units[0]!, price: { value: 1, currency: 'USD' } }] }) as Usable;
  expect(value.units).toEqual(units);
});

test('what is wrong in the line-up itself isn’t mended', () => {
  expect(mended(demo, [{ place: 'machines[0].mass', read: '-5', expected: 'more' }])).toBeUndefined();
  expect(usable({ ...demo, machines: [{ ...demo.machines[0]!, mass: { value: -5, unit: 'lb' } }] })).toMatchObject({ code: 'catalogue.faulty' });
});

test('a blank cell is unknown and never zero: a price of nothing isn’t one', () => {
  const { value } = usable({ ...demo, units: [{ ...units[0]!, price: { value: 0, currency: 'USD' } }] }) as Usable;
  expect(value.units![0]).not.toHaveProperty('price');
});

test('a document nested deeper than any catalogue is refused, and nothing is thrown', () => {
  const deep = JSON.parse(`${'{"a":'.repeat(20_000)}1${'}'.repeat(20_000)}`) as object;
  expect(usable({ ...demo, 'x-deep': deep })).toHaveProperty('code', 'catalogue.faulty');
});

test('keys that belong to every object are keys like any other', () => {
  const text = JSON.stringify(demo).replace('{', '{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},');
  const outcome = usable(JSON.parse(text)) as Usable;
  expect(outcome.value.machines).toHaveLength(demo.machines.length);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  const { rules, ...rest } = demo;
  expect(usable({ ...rest, rules: { ...rules, constructor: 5 } })).toHaveProperty('code', 'catalogue.faulty');
});
