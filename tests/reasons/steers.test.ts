import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import { withAnswers } from '../../src/answers/at.ts';
import { questionOf } from '../../src/answers/questions.ts';
import { readAnswers } from '../../src/answers/read-answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { rank, type Placed } from '../../src/ranking/rank.ts';
import { movesBetween } from '../../src/reasons/moves.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { sideBySide } from '../../src/reasons/side-by-side.ts';
import { steerIds, steerTo, type SteerId } from '../../src/reasons/steers.ts';
import { aMinute, anyAnswers, runs } from '../support/arbitraries.ts';
import { catalogueForTests, lb, lineUp } from '../support/catalogue-for-tests.ts';
import { saying } from '../support/reckon.ts';

/** What a steer makes of an order: which comes first before it and after it, and by which answer. */
function steered(to: SteerId, answers: AnswersDocument, document: CatalogueDocument = lineUp()) {
  const catalogue = catalogueOf(document);
  const ranking = rank(catalogue, answersOf(answers));
  const steer = steerTo(to, answers, ranking, catalogue, 'us');
  if (!steer) return undefined;
  const changed = withAnswers(answers, steer.values);
  return { steer, changed, before: ranking.standing[0]!, after: rank(catalogue, answersOf(changed)).standing[0]! };
}

const widthOf = ({ machine }: Placed) => Math.min(...(machine.tyres ?? []).map(({ widthOverRear }) => widthOverRear));

test.each(steerIds)('steering for %s changes the answer to one question, leaves a document without faults, and brings what it says', (to) => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    const found = steered(to, answers, catalogueForTests());
    if (!found) return;
    const { steer: { question, values }, changed, before, after } = found;
    const fields = questionOf(question).fields.map(({ at }) => at);
    expect(Object.keys(values).filter((at) => !fields.includes(at))).toEqual([]);
    const { faults } = readAnswers(changed);
    expect(faults).toEqual([]);
    if (to === 'cheaper') expect(after.best.price!.low).toBeLessThan(before.best.price!.low);
    else expect(after.machine.id).not.toBe(before.machine.id);
  }), runs(60));
}, aMinute);

test('the gentlest change is taken: a bound is moved only where another order brings nothing cheaper', () => {
  const used = new Set<string>();
  fc.assert(fc.property(anyAnswers, (answers) => {
    const found = steered('cheaper', answers, catalogueForTests());
    if (found) used.add(found.steer.question);
    if (found?.steer.question !== 'budget') return;
    const others = (answers.priorities ?? []).filter((each) => each !== 'price');
    const [reordered] = rank(catalogueOf(catalogueForTests()), answersOf({ ...answers, priorities: ['price', ...others] })).standing;
    expect(reordered!.best.price!.low).toBeGreaterThanOrEqual(found.before.best.price!.low);
  }), runs(60));
  expect([...used].sort(), 'control: both are met').toEqual(['budget', 'priorities']);
}, aMinute);

test('where another order makes nothing smaller, a gate is asked for that the first machine doesn’t pass', () => {
  const byBound = steered('smaller', saying({ priorities: ['headroom'], tasks: [{ task: 'lift-pallets', weight: lb(300), must: true }] }))!;
  expect(byBound.steer.question).toBe('gate');
  expect(widthOf(byBound.after)).toBeLessThan(widthOf(byBound.before));
});

test('a heavier load is asked for in the unit it was given in, no heavier than some machine lifts', () => {
  // Of a light load all have more to spare than counts: the order moves nothing, a heavier load does.
  const found = steered('more-lift', saying({ priorities: ['headroom', 'price'], tasks: [{ task: 'lift-pallets', weight: { value: 100, unit: 'kg' }, must: true }] }))!;
  const weight = found.steer.values['tasks.lift-pallets.weight'] as { value: number; unit: string };
  expect(weight.unit).toBe('kg');
  const lift = (placed: Placed) => placed.best.judged.find(({ need }) => need.id === 'lift-pallets.weight')!.verdict.has!;
  expect(weight.value).toBeGreaterThan(lift(found.before));
  expect(weight.value).toBeLessThanOrEqual(lift(found.after));
});

test('where no machine is cheaper, none is promised', () => {
  const alone = { ...lineUp(), machines: lineUp().machines.slice(0, 1) };
  for (const to of steerIds) expect(steered(to, saying(), alone)).toBeUndefined();
});

test('what moved is told with where it stood and stands: nothing between two that are the same, and each way back', () => {
  fc.assert(fc.property(anyAnswers, anyAnswers, (one, other) => {
    const [before, after] = [shortlist(catalogueForTests(), one), shortlist(catalogueForTests(), other)];
    expect(movesBetween(before, before)).toEqual([]);
    const back = movesBetween(after, before).map(({ machine, from, to }) => ({ machine, from: to, to: from }));
    const byId = (moves: typeof back) => [...moves].sort((a, b) => a.machine.localeCompare(b.machine));
    expect(byId(movesBetween(before, after))).toEqual(byId(back));
  }), runs(30));
}, aMinute);

test('side by side, each row has a cell a machine in the order asked for, and no angle', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    const ranking = rank(catalogueOf(catalogueForTests()), answersOf(answers));
    const ids = [...ranking.standing, ...ranking.toAsk].slice(0, 3).map(({ machine }) => machine.id).reverse();
    for (const { cells } of sideBySide(ranking, ids)) {
      expect(cells.length).toBe(ids.length);
      expect(cells.map(({ figure }) => figure?.unit)).not.toContain('rad');
    }
  }), runs(60));
}, aMinute);

test('side by side, the figures are those of the catalogue, the price that of the shortlist', () => {
  const [answers, document] = [saying(), lineUp()];
  const [first, second] = shortlist(document, answers).shortlist;
  const ranking = rank(catalogueOf(document), answersOf(answers));
  const rows = sideBySide(ranking, [first!.machine, second!.machine]);
  const cells = (id: string) => rows.find((row) => row.kind === 'fact' && row.id === id)!.cells;
  expect(cells('package').map(({ figure }) => figure?.value)).toEqual([first, second].map((entry) => entry!.package.price?.low));
  const power = [first, second].map((entry) => document.machines.find(({ id }) => id === entry!.machine)!.engine!.ptoPower!);
  // NIST SP 811: a mechanical horsepower is 745.6999 W.
  expect(cells('pto').map(({ figure }) => figure!.value / 745.6999)).toEqual(power.map(({ value }) => expect.closeTo(value, 4) as number));
});
