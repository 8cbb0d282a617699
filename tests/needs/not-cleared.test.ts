import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument, TaskDocument } from '../../src/answers/schema.ts';
import { notCleared } from '../../src/needs/all.ts';
import { ruleBook } from '../../src/trade/book.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { degrees, feet, lineUp } from '../support/catalogue-for-tests.ts';
import { saying, standing } from '../support/reckon.ts';

const tasks: TaskDocument[] = [{ task: 'mow-lawn', must: true }, { task: 'lift-pallets' }, { task: 'dig' }];
const all = ['mow-lawn', 'lift-pallets', 'dig'];
const onGround = (slope: NonNullable<AnswersDocument['land']>['slope']) => saying({ tasks, land: { slope } });
const open = (answers: AnswersDocument) => notCleared(answersOf(answers), ruleBook()).map((each) => [each.id, each.tasks]);

test('nothing is left open where slope, drivers and overhead are said', () => expect(open(onGround('flat'))).toEqual([]));

test('whoever says nothing of them has nothing cleared', () => {
  expect(open({ format: 'acre-to-axle/answers/1', tasks })).toEqual([['slope.unsaid', all], ['drivers.unsaid', all], ['overhead.unsaid', all]]);
});

const { land, drivers } = saying();
test.each<[string, Omit<Partial<AnswersDocument>, 'format'>, string]>([
  ['the slope', { land: { overhead: 'open' }, drivers }, 'slope.unsaid'],
  ['what hangs overhead', { land: { slope: 'flat' }, drivers }, 'overhead.unsaid'],
  ['who drives', { land }, 'drivers.unsaid'],
  ['how experienced he is', { land, drivers: { under18: false } }, 'drivers.unsaid'],
  ['whether he is of age', { land, drivers: { least: 'some' } }, 'drivers.unsaid'],
])('left unsaid, %s heads the result, and the shortlist still stands', (_what, said, id) => {
  const answers: AnswersDocument = { format: 'acre-to-axle/answers/1', ...said, tasks: [{ task: 'mow-lawn', deck: 'belly', must: true }] };
  const result = shortlist(lineUp(), answers);
  expect(result.notCleared.map((each) => each.id)).toEqual([id]);
  expect(result.shortlist.map(({ machine }) => machine).sort()).toEqual(standing(lineUp(), { ...answers, land, drivers }).sort());
  expect(result.shortlist).not.toEqual([]);
});

test('steep without a figure leaves every task open until it is measured', () => {
  expect(open(onGround('steep'))).toEqual([['slope.steep-unsaid', all]]);
});

// Common practice, no source: no mowing and no loader work beyond 15 degrees.
test.each([
  [degrees(15), []],
  [{ value: 26.794, unit: 'percent' as const }, []],
  [degrees(15.1), [['slope.over-limit', ['mow-lawn', 'lift-pallets']]]],
  [{ value: 27.2, unit: 'percent' as const }, [['slope.over-limit', ['mow-lawn', 'lift-pallets']]]],
])('on ground of $value $unit mowing and loader work: %j left open', (slope, expected) => {
  expect(open(onGround(slope))).toEqual(expected);
});

test('over the limit nothing clears them: no machine, no priority, no task called a must', () => {
  const heavy = { ...onGround(degrees(18)), budget: { limit: { value: 90_000, currency: 'USD' } }, priorities: ['headroom' as const] };
  expect(shortlist(lineUp(), heavy).notCleared.map(({ id }) => id)).toEqual(['slope.over-limit']);
});

test('digging alone on such ground is left to the comparison of machines', () => {
  expect(open(saying({ tasks: [{ task: 'dig' }], land: { slope: degrees(18) } }))).toEqual([]);
});

test('a branch that is measured is no longer open', () => {
  expect(open(saying({ land: { overhead: feet(9) } }))).toEqual([]);
});
