import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countedOf, fewest } from '../../src/demand/counted.ts';
import { bestOf, canTryAll, coverageOf, picksOf } from '../../src/demand/cover.ts';
import { Draw } from '../../src/demand/draw.ts';
import type { Outcome } from '../../src/demand/outcome.ts';
import { reportOf, type Told } from '../../src/demand/report.ts';
import { shareWithin } from '../../src/demand/share.ts';
import { count, emptyTally } from '../../src/demand/tally.ts';
import { aMinute, runs } from '../support/arbitraries.ts';

const ids = ['rill', 'cobble', 'tansy', 'crag', '__proto__', 'constructor'];
const anOutcome = fc.oneof(
  fc.constantFrom(...ids).map((first): Outcome => ({ served: 'stands', first, lacked: [], would: [] })),
  fc.record({ served: fc.constantFrom<'ask' | 'none'>('ask', 'none'), lacked: fc.subarray(['bales.lift', 'budget']), would: fc.subarray(ids).map((each) => [...each].sort()) }),
);
const tallyOf = (outcomes: readonly Outcome[]) => {
  const tally = emptyTally();
  for (const outcome of outcomes) count(tally, outcome);
  return tally;
};
const unserved = (outcomes: readonly Outcome[]) => outcomes.filter(({ served }) => served === 'none');
const servedBy = (outcomes: readonly Outcome[], machines: readonly string[]) => unserved(outcomes).filter(({ would }) => would.some((each) => machines.includes(each))).length;
function subsets(of: number): string[][] {
  const all: string[][] = [[]];
  for (const id of ids) all.push(...all.map((each) => [...each, id]));
  return all.filter(({ length }) => length === of);
}

test('who said the same counts as often as it was said', () => {
  fc.assert(fc.property(fc.array(fc.tuple(anOutcome, fc.integer({ min: 1, max: 9 })), { maxLength: 40 }), (outcomes) => {
    const whole = emptyTally();
    for (const [outcome, many] of outcomes) count(whole, outcome, many);
    expect(whole).toEqual(tallyOf(outcomes.flatMap(([outcome, many]) => Array.from({ length: many }, () => outcome))));
  }), runs(200));
}, aMinute);

test('the machine to bring in is the one that serves the most, and each next one the most of those left', () => {
  fc.assert(fc.property(fc.array(anOutcome, { maxLength: 80 }), (outcomes) => {
    const tally = tallyOf(outcomes);
    const [first] = picksOf(tally, 1);
    expect(first?.more ?? 0).toBe(Math.max(...subsets(1).map((each) => servedBy(outcomes, each))));
    for (const { machine, serves } of coverageOf(tally)) expect(serves).toBe(servedBy(outcomes, [machine]));
  }), runs(200));
}, aMinute);

test('several serve at least 1 − 1/e of what the best so many would (Nemhauser, Wolsey and Fisher 1978)', () => {
  fc.assert(fc.property(fc.array(anOutcome, { maxLength: 80 }), fc.integer({ min: 2, max: 4 }), (outcomes, most) => {
    const picks = picksOf(tallyOf(outcomes), most);
    const total = picks.reduce((sum, { more }) => sum + more, 0);
    expect(total).toBe(servedBy(outcomes, picks.map(({ machine }) => machine)));
    expect(total).toBeGreaterThanOrEqual((1 - 1 / Math.E) * Math.max(...subsets(most).map((each) => servedBy(outcomes, each))));
  }), runs(200));
}, aMinute);

test('what so many could serve at the most is what the best of all subsets does', () => {
  fc.assert(fc.property(fc.array(anOutcome, { maxLength: 80 }), fc.integer({ min: 2, max: 4 }), (outcomes, most) => {
    const tally = tallyOf(outcomes);
    const together = Math.min(most, coverageOf(tally).length);
    const best = bestOf(tally, together);
    if (together < 2) expect(best).toBeUndefined();
    else expect(best!.serves).toBe(Math.max(...subsets(together).map((each) => servedBy(outcomes, each))));
    if (best) expect(servedBy(outcomes, best.machines)).toBe(best.serves);
  }), runs(200));
}, aMinute);

test('where the first pick misleads, the best of all is found, and the report tells it', () => {
  // The greedy choice takes the middle one, which both others together make superfluous (Nemhauser, Wolsey and Fisher 1978).
  const outcomes = ([[10, ['cobble']], [10, ['rill']], [9, ['cobble', 'tansy']], [9, ['rill', 'tansy']], [1, ['crag', 'tansy']], [1, ['tansy']]] as const)
    .flatMap(([many, would]) => Array.from({ length: many }, (): Outcome => ({ served: 'none', lacked: [], would })));
  const tally = tallyOf(outcomes);
  expect(picksOf(tally, 2).map(({ machine, more }) => [machine, more])).toEqual([['tansy', 20], ['cobble', 10]]);
  expect(bestOf(tally, 2)).toEqual({ machines: ['cobble', 'rill'], serves: 38 });
  expect(reportOf(countedOf(tally, 2), { seen: 40, unreadable: 0 }).best).toEqual({ machines: ['cobble', 'rill'], told: { count: 38, share: 38 / 40 }, isBring: false });
});

test('all are tried where they are few, and not where they are many', () => {
  const chosen = (of: number, together: number): number => (together === 0 || together === of ? 1 : chosen(of - 1, together - 1) + chosen(of - 1, together));
  for (const [of, together] of [[12, 3], [20, 4], [20, 5], [30, 3], [40, 3], [5, 5], [62, 2]] as const) expect(canTryAll(of, together)).toBe(chosen(of, together) <= 5_000);
  expect(canTryAll(63, 2)).toBe(false);
});

// From memory: R, prop.test(15, 25, correct = FALSE), 95 percent confidence interval 0.4074 to 0.7660.
test('the interval of a share is that of R', () => {
  const { low, high } = shareWithin(15, 25);
  expect(low).toBeCloseTo(0.4074, 4);
  expect(high).toBeCloseTo(0.766, 4);
});

test('all are kept in their order where they are not too many, and each is as likely drawn where they are', () => {
  const few = new Draw<number>(10);
  for (let each = 0; each < 7; each += 1) few.offer(() => each);
  expect(few.drawn).toEqual([0, 1, 2, 3, 4, 5, 6]);

  const [most, of, draws] = [10, 50, 4_000];
  const times = Array.from({ length: of }, () => 0);
  for (let seed = 0; seed < draws; seed += 1) {
    const draw = new Draw<number>(most, seed);
    for (let each = 0; each < of; each += 1) draw.offer(() => each);
    expect(draw.drawn).toHaveLength(most);
    for (const each of draw.drawn) times[each]! += 1;
  }
  const expected = (draws * most) / of;
  const chiSquare = times.reduce((sum, each) => sum + (each - expected) ** 2 / expected, 0);
  // NIST/SEMATECH e-Handbook, section 1.3.6.7.4: the upper 0.1 % of chi-square with 49 degrees of freedom is 85.35; drawing without putting back lies below that.
  expect(chiSquare).toBeLessThan(85.35);
});

test('a count that might tell of somebody is never told', () => {
  const outcomes: Outcome[] = [
    ...Array.from({ length: fewest - 1 }, (): Outcome => ({ served: 'none', lacked: ['bales.lift'], would: ['crag'] })),
    ...Array.from({ length: 40 }, (): Outcome => ({ served: 'stands', first: 'rill', lacked: [], would: [] })),
    { served: 'stands', first: 'cobble', lacked: [], would: [] },
  ];
  const report = reportOf(countedOf(tallyOf(outcomes), 3), { seen: outcomes.length, unreadable: 0 });
  expect(report.unserved).toEqual({ few: true });
  expect(report.lacked).toEqual([{ id: 'bales.lift', told: { few: true } }]);
  expect(report.first).toEqual([{ id: 'rill', told: { keptBack: true } }, { id: 'cobble', told: { few: true } }]);
  expect(report.bring).toEqual([]);
});

test('nor can it be worked out: of whatever adds up to something told either two are untold, or one that is none or many', () => {
  const some = fc.integer({ min: 0, max: 12 });
  const known = (each: Told) => ('count' in each ? each.count : undefined);
  /** What is left of a whole once what is told of its parts is taken off. */
  const left = (whole: number | undefined, parts: readonly Told[]) => {
    const untold = parts.filter((each) => known(each) === undefined);
    return whole === undefined || untold.length !== 1 ? 0 : whole - parts.reduce((sum, each) => sum + (known(each) ?? 0), 0);
  };
  fc.assert(fc.property(fc.array(some, { maxLength: 4 }), some, some, some, (firsts, ask, coverable, beyond) => {
    const stands = firsts.reduce((sum, each) => sum + each, 0);
    const none = coverable + beyond;
    const counted = stands + ask + none;
    fc.pre(counted >= fewest);
    const report = reportOf({
      counted, served: { stands, ask, none }, beyond, first: firsts.filter((each) => each > 0).map((many, place) => [`m${place}`, many] as const), lacked: [], would: [], picks: [],
    }, { seen: counted, unreadable: 0 });
    const first = report.first.map(({ told }) => told);
    const isOpen = (many: number) => many > 0 && many < fewest;
    expect(isOpen(left(counted, [report.served, report.toAsk, report.unserved]))).toBe(false);
    expect(isOpen(left(known(report.served), first))).toBe(false);
    expect(isOpen(left(counted, [...first, report.toAsk, report.unserved]))).toBe(false);
    if (known(report.unserved) !== undefined && known(report.beyond) !== undefined) expect(isOpen(none - beyond)).toBe(false);
  }));
});

test('what was drawn of many says within what it is right', () => {
  const tally = tallyOf(Array.from({ length: 400 }, (_, index): Outcome => (index < 100 ? { served: 'none', lacked: [], would: ['crag'] } : { served: 'stands', first: 'rill', lacked: [], would: [] })));
  expect(reportOf(countedOf(tally, 1), { seen: 400, unreadable: 0 }).unserved).toEqual({ count: 100, share: 0.25 });
  const { unserved: drawn } = reportOf(countedOf(tally, 1), { seen: 1_000_000, unreadable: 0 });
  expect(drawn).toMatchObject({ count: 100, share: 0.25, within: { low: expect.closeTo(0.21, 2), high: expect.closeTo(0.295, 2) } });
});
