/** What would come back without a need or a task, checked by a buyer who really drops it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, catalogueWithGaps, runs } from '../support/arbitraries.ts';
import { inches, lb, lineUp, usd, withMachine } from '../support/catalogue-for-tests.ts';
import { dropping, withoutTask } from '../support/dropping.ts';
import { mustDo, saying, standing, verdicts } from '../support/reckon.ts';

/** What comes back without a need or a task; what a relaxed bound brings is tested with the bounds. */
const changes = (answers: AnswersDocument, catalogue = lineUp()) => shortlist(catalogue, answers).changes.filter(({ relaxed }) => !relaxed);

test('a single gate that rules out is named, with all that comes back', () => {
  const narrow = saying({ land: { gate: inches(66) } });
  expect(changes(narrow)).toMatchObject([{
    need: 'land.gate', asks: [], stands: expect.arrayContaining(['mid-economy', 'mid-deluxe', 'wide-mid-standard', 'large-economy', 'large-deluxe']),
  }]);
});

test('what would come back only to be asked about is told apart', () => {
  const nameless = withMachine(lineUp(), 'mid-deluxe', () => ({ rops: undefined }));
  const [change] = changes(saying({ land: { gate: inches(66) } }), nameless);
  expect(change).toMatchObject({ need: 'land.gate', asks: ['mid-deluxe'] });
  expect(change!.stands).not.toContain('mid-deluxe');
});

test('where nothing is ruled out nothing would change it', () => expect(changes(saying())).toEqual([]));

test('two gates that rule out alike: neither alone brings back, the task of both does', () => {
  const high = mustDo({ task: 'lift-bales', weight: lb(1500), height: inches(125) });
  const found = changes(high);
  expect(standing(lineUp(), high)).toEqual([]);
  expect(found.find(({ task }) => task === 'lift-bales')!.stands).toHaveLength(9);
  expect(found.filter(({ need }) => need !== undefined)).toEqual([]);
});

test('a safety gate is never offered by itself', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    const result = shortlist(lineUp(), answers);
    const safety = result.needs.flatMap(({ id, safety: is }) => (is ? [id] : []));
    expect(result.changes.filter(({ need }) => need && safety.includes(need))).toEqual([]);
  }), runs(40));
}, aMinute);

test('who drops a need that is named really gets those machines back', () => {
  let checked = 0;
  fc.assert(fc.property(catalogueWithGaps, anyAnswers, (catalogue, answers) => {
    for (const { need, stands, asks } of changes(answers, catalogue)) {
      if (!need) continue;
      const fewer = dropping(answers, need);
      expect(fewer, need).toBeDefined();
      const found = verdicts(shortlist(catalogue, fewer!));
      expect(stands.filter((id) => found[id] !== 'stands'), need).toEqual([]);
      expect(asks.filter((id) => found[id] === 'ruled-out'), need).toEqual([]);
      checked += 1;
    }
  }), { ...runs(60), interruptAfterTimeLimit: aMinute / 2 });
  expect(checked).toBeGreaterThan(2);
}, aMinute);

test('who drops a task that is named really gets those machines back, and no others', () => {
  let checked = 0;
  fc.assert(fc.property(catalogueWithGaps, anyAnswers, fc.integer({ min: 300, max: 1500 }), (catalogue, said, weight) => {
    const answers: AnswersDocument = { ...withoutTask(said, 'lift-bales') };
    answers.tasks = [...answers.tasks!, { task: 'lift-bales', must: true, weight: lb(weight), height: inches(80) }];
    const before = verdicts(shortlist(catalogue, answers));
    for (const { task, stands, asks } of changes(answers, catalogue)) {
      if (!task) continue;
      const found = verdicts(shortlist(catalogue, withoutTask(answers, task)));
      const back = (verdict: string) => Object.keys(found).filter((id) => before[id] === 'ruled-out' && found[id] === verdict).sort();
      expect({ task, stands: [...stands].sort(), asks: [...asks].sort() }).toEqual({ task, stands: back('stands'), asks: back('ask') });
      checked += 1;
    }
  }), { ...runs(60), interruptAfterTimeLimit: aMinute / 2 });
  expect(checked).toBeGreaterThan(2);
}, aMinute);

test('two driven wheels come back without the loader work that asks for four', () => {
  const two = withMachine(lineUp(), 'mid-deluxe', () => ({ drivenWheels: 2 }));
  const sloping = { ...mustDo({ task: 'lift-pallets', weight: lb(300) }), land: { slope: 'rolling' as const, overhead: 'open' as const } };
  expect(standing(two, withoutTask(sloping, 'lift-pallets')), 'control: it does come back').toContain('mid-deluxe');
  expect(changes(sloping, two).find(({ task }) => task === 'lift-pallets')?.stands).toContain('mid-deluxe');
});

test('what a firm limit holds back comes back without it', () => {
  const firm = saying({ budget: { limit: usd(20_000), firm: true } });
  const [change] = changes(firm);
  expect(change).toMatchObject({ need: 'budget.limit', stands: expect.arrayContaining(['mid-deluxe', 'wide-mid-standard', 'large-economy', 'large-deluxe']) });
});
