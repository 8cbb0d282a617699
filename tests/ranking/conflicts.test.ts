/** Which needs conflict, and every way out, against trying every choice of needs there is. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { rank } from '../../src/ranking/rank.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, runs } from '../support/arbitraries.ts';
import { catalogueForTests, feet, inches, lb, lineUp, soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { mustDo, saying } from '../support/reckon.ts';
import { withoutTask } from '../support/dropping.ts';

const conflicts = (answers: AnswersDocument, catalogue = lineUp()) => shortlist(catalogue, answers).conflicts;
const ways = (answers: AnswersDocument, catalogue = lineUp()) => shortlist(catalogue, answers).waysOut;

test('where something stands nothing conflicts and there is no way out to look for', () => {
  expect(conflicts(saying({ land: { gate: inches(66) } }))).toEqual({ sets: [], complete: true });
  expect(ways(saying({ land: { gate: inches(66) } }))).toEqual([]);
});

test('a gate too narrow for all is a conflict by itself, and widening it is the way out', () => {
  const narrow = saying({ land: { gate: inches(40) } });
  expect(conflicts(narrow)).toEqual({ sets: [['land.gate']], complete: true });
  expect(ways(narrow)).toMatchObject([{ give: [{ need: 'land.gate', relaxed: { is: 'at-most', unit: 'm' } }] }]);
});

test('a load that wants a large machine and a gate that lets only a small one through: together, not each', () => {
  const both = { ...mustDo({ task: 'lift-pallets', height: inches(108) }), land: { slope: 'flat' as const, overhead: 'open' as const, gate: inches(60) } };
  expect(conflicts(both)).toEqual({ sets: [['lift-pallets.height', 'land.gate']], complete: true });
  const given = ways(both).map(({ give }) => give.map(({ need }) => need));
  expect(given).toHaveLength(2);
  expect(given).toEqual(expect.arrayContaining([['lift-pallets.height'], ['land.gate']]));
});

test('the way out that moves its bound by less comes first', () => {
  const both = { ...mustDo({ task: 'lift-pallets', height: inches(108) }), land: { slope: 'flat' as const, overhead: 'open' as const, gate: inches(83) } };
  const given = ways(both).map(({ give: [first] }) => first!);
  expect(given.map(({ need }) => need)).toEqual(['land.gate', 'lift-pallets.height']);
  const shares = given.map(({ relaxed }) => Math.abs(relaxed!.to - relaxed!.from) / relaxed!.from);
  expect(shares[0]).toBeLessThan(shares[1]!);
});

test('a job that is rare may be hired out; how rare one is that nobody said is a question; a common one is not', () => {
  const deep = (perYear?: number) => ways(mustDo({ task: 'dig', depth: feet(30), ...(perYear !== undefined && { perYear }) }))[0]!.give;
  expect(deep(1)).toEqual([{ need: 'dig.backhoe', hire: 'rare' }]);
  expect(deep()).toEqual([{ need: 'dig.backhoe', hire: 'unsaid' }]);
  expect(deep(20)).toEqual([{ need: 'dig.backhoe' }]);
});

test('what fails by its safety goes only with its task', () => {
  const wagon = mustDo({ task: 'tow-wagon', weight: lb(60_000), brakes: 'none' });
  expect(conflicts(wagon).sets).toContainEqual(['tow-wagon.towed-mass']);
  expect(ways(wagon)).toMatchObject([{ give: [{ task: 'tow-wagon', hire: 'unsaid' }] }]);
});

test('safety of every machine can’t be given up at all', () => {
  const unsafe = { ...lineUp(), machines: lineUp().machines.map((machine) => ({ ...machine, rops: { kind: 'none' as const, certified: false } })) };
  expect(conflicts(saying(), unsafe)).toEqual({ sets: [['operator.rops']], complete: true });
  expect(ways(saying(), unsafe)).toEqual([]);
});

test('a cab asked for helps a machine under a low branch: that is no conflict', () => {
  // The cab of the line-up is 2 in lower than its roll bar.
  const low = (more: Partial<AnswersDocument>) => ({ ...saying(more), land: { slope: 'flat' as const, overhead: inches(101), gate: inches(30) } });
  const only: CatalogueDocument = { ...lineUp(), machines: lineUp().machines.filter(({ id }) => id === 'mid-deluxe') };
  const cab = low({ comfort: { cab: 'heat', must: ['cab'] } });
  const set = conflicts(cab, withMachine(only, 'mid-deluxe', () => ({ height: { ropsUp: inches(110), ropsFolded: inches(80), cab: inches(80) } })));
  expect(set.sets).toEqual([['land.gate']]);
});

test('a unit on the lot may meet what its machine in general doesn’t', () => {
  const firm = saying({ budget: { limit: usd(9000), firm: true } });
  expect(conflicts(firm).sets).toEqual([['budget.limit']]);
  expect(conflicts(firm, withUnits(lineUp(), soundUnit('bargain', 'small-standard', { price: usd(8500) }))).sets).toEqual([]);
});

const choice = fc.constantFrom;
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

/** Buyers who ask for much: most of them find nothing. */
const asking = fc.record({
  gate: maybe(choice(44, 58, 64)), door: maybe(choice(60, 70, 78)), limit: maybe(choice(9000, 14_000, 22_000)),
  lift: maybe(choice(500, 1400, 2600)), height: maybe(choice(95, 108, 130)), dig: maybe(choice(60, 95, 120)),
  cab: fc.boolean(), belly: fc.boolean(), payload: maybe(choice(2500, 4000)),
}).map(({ gate, door, limit, lift, height, dig, cab, belly, payload }): AnswersDocument => {
  const land = { slope: 'flat' as const, overhead: 'open' as const, ...(gate !== undefined && { gate: inches(gate) }) };
  return {
    ...mustDo(
      ...(lift !== undefined || height !== undefined ? [{ task: 'lift-pallets' as const, ...(lift !== undefined && { weight: lb(lift) }), ...(height !== undefined && { height: inches(height) }) }] : []),
      ...(dig !== undefined ? [{ task: 'dig' as const, depth: inches(dig) }] : []),
      ...(belly ? [{ task: 'mow-lawn' as const, deck: 'belly' as const }] : []),
    ),
    land,
    ...(door !== undefined && { storage: { kind: 'shed' as const, doorHeight: inches(door) } }),
    ...(limit !== undefined && { budget: { limit: usd(limit), firm: true } }),
    ...(cab && { comfort: { cab: 'heat' as const, must: ['cab' as const] } }),
    ...(payload !== undefined && { haul: { how: 'own-trailer' as const, trailer: { gross: lb(payload + 1500), empty: lb(1500) } } }),
  };
});

/** Trying every choice takes its time. */
const atLength = (numRuns: number) => ({ ...runs(numRuns), interruptAfterTimeLimit: aMinute });

const within = (part: readonly string[], whole: readonly string[]) => part.every((each) => whole.includes(each));

/** Every largest set of needs that something meets, found by asking for each choice of them there is. */
function metBy(document: CatalogueDocument, said: AnswersDocument, ids: readonly string[]): string[][] {
  const [catalogue, answers] = [catalogueOf(document), answersOf(said)];
  const met: string[][] = [];
  const choices = Array.from({ length: 2 ** ids.length }, (_each, bits) => ids.filter((_id, index) => (Math.floor(bits / 2 ** index)) % 2 === 1))
    .sort((a, b) => b.length - a.length);
  for (const kept of choices) {
    if (met.some((whole) => within(kept, whole))) continue;
    const found = rank(catalogue, answers, ({ id, must }) => !must || !ids.includes(id) || kept.includes(id));
    if (found.standing.length + found.toAsk.length > 0) met.push(kept);
  }
  return met;
}

const few = (all: CatalogueDocument, ...ids: string[]): CatalogueDocument => ({ ...all, machines: all.machines.filter(({ id }) => ids.includes(id)) });
/** Needs every machine of the line-up meets: leaving them out spares most of the choices. */
const everyones = ['operator.rops', 'operator.seat-belt', 'operator.exhaust', 'operator.recall'];

test('the conflicts told are all there are: no choice of needs says otherwise', () => {
  let checked = 0;
  fc.assert(fc.property(asking, (answers) => {
    const catalogue = few(lineUp(), 'subcompact-deluxe', 'mid-deluxe');
    const result = shortlist(catalogue, answers);
    const ids = result.needs.filter(({ id, must }) => must && !everyones.includes(id)).map(({ id }) => id);
    if (result.shortlist.length + result.askDealer.length > 0 || ids.length > 8) return;
    const met = metBy(catalogue, answers, ids);
    const isMet = (some: readonly string[]) => met.some((whole) => within(some, whole));
    const { sets, complete } = result.conflicts;
    expect(complete).toBe(true);
    for (const set of sets) {
      expect(isMet(set), `${set.join(' ')} is not met`).toBe(false);
      for (const id of set) expect(isMet(set.filter((each) => each !== id)), `${set.join(' ')} without ${id} is met`).toBe(true);
    }
    // Whatever isn't met holds one of the sets: so none is missing.
    const missing = Array.from({ length: 2 ** ids.length }, (_each, bits) => ids.filter((_id, index) => (Math.floor(bits / 2 ** index)) % 2 === 1))
      .filter((some) => !isMet(some) && !sets.some((set) => within(set, some)));
    expect(missing).toEqual([]);
    checked += 1;
  }), atLength(60));
  expect(checked).toBeGreaterThan(5);
}, 2 * aMinute);

test('each way out really brings back what it says, gives up no safety by itself, and gives up nothing in vain', () => {
  let checked = 0;
  fc.assert(fc.property(asking, (answers) => {
    const document = catalogueForTests();
    const result = shortlist(document, answers);
    const safety = new Set(result.needs.flatMap(({ id, safety: is }) => (is ? [id] : [])));
    const found = (gone: readonly { need?: string | undefined; task?: string | undefined }[]) => {
      const left = gone.reduce((all, { task }) => (task ? withoutTask(all, task as never) : all), answers);
      const ranking = rank(catalogueOf(document), answersOf(left), ({ id }) => !gone.some(({ need }) => need === id));
      return [...ranking.standing, ...ranking.toAsk].map(({ machine }) => machine.id);
    };
    for (const { give, stands, asks } of result.waysOut) {
      expect(give.filter(({ need }) => need && safety.has(need))).toEqual([]);
      expect(found(give)).toEqual(expect.arrayContaining([...stands, ...asks]));
      for (const each of give) expect(found(give.filter((other) => other !== each))).toEqual([]);
      checked += 1;
    }
  }), atLength(25));
  expect(checked).toBeGreaterThan(5);
}, 2 * aMinute);

test('the order of machines in a catalogue changes neither conflicts nor ways out', () => {
  const both = { ...mustDo({ task: 'lift-pallets', weight: lb(2600), height: inches(130) }), land: { slope: 'flat' as const, overhead: 'open' as const, gate: inches(50) } };
  const turned = { ...lineUp(), machines: [...lineUp().machines].reverse() };
  expect(conflicts(both, turned)).toEqual(conflicts(both));
  expect(ways(both, turned)).toEqual(ways(both));
});
