/** The least change of a bound that brings a machine back, checked by a buyer who really makes it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withAnswer } from '../../src/answers/at.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { boundOf } from '../../src/ranking/relax.ts';
import { needsOf } from '../../src/needs/all.ts';
import { answersOf } from '../../src/answers/answers.ts';
import { ruleBook } from '../../src/trade/book.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, catalogueWithGaps, runs } from '../support/arbitraries.ts';
import { catalogueForTests, inches, lb, lineUp, soundUnit, usd, withLoader, withUnits } from '../support/catalogue-for-tests.ts';
import { mustDo, saying, standing, verdicts } from '../support/reckon.ts';

const relaxedIn = ({ changes }: Shortlist) => changes.filter(({ relaxed }) => relaxed !== undefined);
const relaxed = (answers: AnswersDocument, catalogue = lineUp()) => relaxedIn(shortlist(catalogue, answers));

const inch = 0.0254;
const pound = 0.45359237;

test('a gate is widened to what the narrowest machine needs that it kept out, to the millimetre above', () => {
  // The narrowest of those too wide is 58 in over its tyres, and wants 3 in on each side.
  const found = relaxed(saying({ land: { gate: inches(60) } }));
  const [change] = found;
  const widths = lineUp().machines.map(({ tyres }) => tyres![0]!.widthOverRear!.value + 6).filter((width) => width > 60).sort((a, b) => a - b);
  expect(found).toHaveLength(1);
  expect(change).toMatchObject({ need: 'land.gate', relaxed: { is: 'at-most', unit: 'm', to: Math.ceil(widths[0]! * inch * 1000) / 1000 } });
  expect(change!.relaxed!.from).toBeCloseTo(60 * inch, 9);
  expect(change!.stands.length).toBeGreaterThan(0);
});

test('a load is lightened to what a loader takes up, to the hundred grams below', () => {
  const pallets = mustDo({ task: 'lift-pallets', weight: lb(2000) });
  const only = { ...lineUp(), machines: lineUp().machines.filter(({ id }) => id === 'large-economy') };
  const because = shortlist(only, pallets).ruledOut[0]!.because.find(({ need }) => need === 'lift-pallets.weight')!;
  const [change] = relaxed(pallets, only);
  expect(change).toMatchObject({ need: 'lift-pallets.weight', stands: ['large-economy'], relaxed: { is: 'at-least', unit: 'kg' } });
  expect(change!.relaxed!.to).toBeCloseTo(Math.floor(because.has! * 10) / 10, 6);
});

test('a bale weighed lighter is also smaller: the load is found where its own centre lies', () => {
  const bales = mustDo({ task: 'lift-bales', weight: lb(1500) });
  const only = { ...lineUp(), machines: lineUp().machines.filter(({ id }) => id === 'large-economy') };
  const because = shortlist(only, bales).ruledOut[0]!.because.find(({ need }) => need === 'lift-bales.weight')!;
  const [change] = relaxed(bales, only);
  expect(change!.need).toBe('lift-bales.weight');
  expect(change!.relaxed!.to).toBeGreaterThan(because.has!);
});

test('a firm limit is raised to the cheapest package it kept out, and no further', () => {
  const firm = saying({ budget: { limit: usd(8000), firm: true } });
  const found = relaxed(firm);
  const packages = shortlist(lineUp(), saying({ budget: { limit: usd(8000) } })).shortlist.map((entry) => entry.package.price!.low);
  expect(found[0]).toMatchObject({ need: 'budget.limit', relaxed: { from: 8000, to: Math.ceil(Math.min(...packages)), unit: 'money' } });
});

test('a bound that would have to be moved more than twice over is not told as relaxed', () => {
  expect(relaxed(saying({ budget: { limit: usd(100), firm: true } }))).toEqual([]);
  expect(standing(lineUp(), saying({ budget: { limit: usd(100), firm: true } })), 'control: it rules out').toEqual([]);
});

test('a unit brings its machine back, but not one held for someone else', () => {
  const firm = saying({ budget: { limit: usd(10_000), firm: true } });
  const priced = (status: 'available' | 'held') => withUnits(lineUp(), soundUnit('cheap', 'large-economy', { price: usd(10_500), status }));
  expect(relaxed(firm, priced('available'))[0]).toMatchObject({ stands: ['large-economy'], relaxed: { to: 10_500 } });
  expect(relaxed(firm, priced('held'))[0]?.relaxed?.to).not.toBe(10_500);
});

test('what comes back to stand is told before what would come back only to be asked about', () => {
  const high = mustDo({ task: 'lift-pallets', height: inches(114) });
  const nearest = withLoader(lineUp(), 'large-deluxe', () => ({ availability: 'unknown', fullHeight: inches(113) }));
  expect(relaxed(high)[0]!.relaxed!.to).toBeCloseTo(2.844, 6);
  expect(relaxed(high, nearest)[0]).toMatchObject({ stands: ['large-economy'] });
});

test('what comes back cheaper says what it saves', () => {
  const tall = mustDo({ task: 'lift-pallets', height: inches(105) });
  const result = shortlist(lineUp(), tall);
  const first = result.shortlist[0]!.package.price!.low;
  const [change] = relaxedIn(result);
  const found = shortlist(lineUp(), moved(tall, 'tasks.lift-pallets.height', change!.relaxed!));
  const back = found.shortlist.filter(({ machine }) => change!.stands.includes(machine)).map((entry) => entry.package.price!.low);
  expect(change!.saves).toBe(Math.min(...back) < first ? first - Math.min(...back) : undefined);
  expect(result.changes.some(({ saves }) => saves !== undefined), 'control: something is saved').toBe(true);
});

const length = (min: number, max: number) => fc.integer({ min, max });
const units = { m: 'm', kg: 'kg', s: 'min', money: 'USD' } as const;

/** The answers of a buyer who moves a bound, in the unit he would type. */
function moved(answers: AnswersDocument, at: string, { to, unit }: { to: number; unit: string }): AnswersDocument {
  const own = units[unit as keyof typeof units];
  if (unit === 'money') return withAnswer(answers, at, to);
  return withAnswer(answers, at, { value: unit === 's' ? to / 60 : to, unit: own });
}

/** Where the bound of a need stands in the answers. */
const pathOf = (answers: AnswersDocument, catalogue: CatalogueDocument, id: string) =>
  boundOf(needsOf(answersOf(answers), ruleBook(catalogue.rules)).find((need) => need.id === id)!)!.at;

const steps = { m: 0.001, kg: 0.1, s: 60, money: 1 };

/** Buyers of whom each asks for something that rules out. */
const bounded = fc.record({
  gate: length(44, 80), door: length(60, 100), limit: fc.integer({ min: 8000, max: 40_000 }), weight: fc.integer({ min: 300, max: 2600 }),
  height: length(70, 120), depth: length(50, 120), hours: fc.integer({ min: 1, max: 4 }), which: fc.subarray(['gate', 'door', 'limit', 'bales', 'pallets', 'dig', 'mow'], { minLength: 1, maxLength: 3 }),
}).map(({ which, ...it }): AnswersDocument => {
  const asks = (what: string) => which.includes(what);
  return {
    ...mustDo(
      ...(asks('bales') ? [{ task: 'lift-bales' as const, weight: lb(it.weight) }] : []),
      ...(asks('pallets') ? [{ task: 'lift-pallets' as const, weight: lb(it.weight), height: inches(it.height) }] : []),
      ...(asks('dig') ? [{ task: 'dig' as const, depth: inches(it.depth) }] : []),
      ...(asks('mow') ? [{ task: 'mow-lawn' as const, hours: { value: it.hours, unit: 'h' as const } }] : []),
    ),
    land: { slope: 'flat', overhead: 'open', mown: { value: 4, unit: 'acre' }, ...(asks('gate') && { gate: inches(it.gate) }) },
    ...(asks('door') && { storage: { kind: 'shed' as const, doorHeight: inches(it.door) } }),
    ...(asks('limit') && { budget: { limit: usd(it.limit), firm: true } }),
  };
});

test('who moves a bound as told gets those machines back, and a hair less brings none of them', () => {
  let checked = 0;
  fc.assert(fc.property(catalogueWithGaps, bounded, (catalogue, answers) => {
    for (const { need, relaxed: change, stands, asks } of relaxed(answers, catalogue)) {
      const at = pathOf(answers, catalogue, need!);
      const found = verdicts(shortlist(catalogue, moved(answers, at, change!)));
      const before = verdicts(shortlist(catalogue, answers));
      expect(stands.map((id) => found[id]), need).toEqual(stands.map(() => 'stands'));
      expect(asks.map((id) => found[id]), need).toEqual(asks.map(() => 'ask'));
      const less = change!.to + (change!.is === 'at-most' ? -1 : 1) * steps[change!.unit as keyof typeof steps];
      const short = verdicts(shortlist(catalogue, moved(answers, at, { to: less, unit: change!.unit })));
      const wanted = stands.length > 0 ? ['stands'] : ['stands', 'ask'];
      expect(Object.keys(short).filter((id) => before[id] === 'ruled-out' && wanted.includes(short[id]!)), need).toEqual([]);
      checked += 1;
    }
  }), { ...runs(30), interruptAfterTimeLimit: aMinute });
  expect(checked).toBeGreaterThan(20);
}, 2 * aMinute);

test('no bound of a safety gate is ever moved', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    const result = shortlist(catalogueForTests(), answers);
    const safety = new Set(result.needs.flatMap(({ id, safety: is }) => (is ? [id] : [])));
    const given = result.waysOut.flatMap(({ give }) => give);
    expect([...relaxedIn(result), ...given].filter(({ need }) => need && safety.has(need))).toEqual([]);
  }), runs(60));
}, aMinute);

test('control: pounds and kilograms meet at the same bound', () => {
  const kilograms = mustDo({ task: 'lift-pallets', weight: { value: 2000 * pound, unit: 'kg' } });
  expect(relaxed(kilograms)).toEqual(relaxed(mustDo({ task: 'lift-pallets', weight: lb(2000) })));
});
