import { expect, test } from 'vitest';
import { checkAnswers, readAnswers } from '../../src/answers/read-answers.ts';

const format = 'acre-to-axle/answers/1';
const dig = { task: 'dig', depth: { value: 6, unit: 'ft' } };
const said = (parts: object) => ({ format, ...parts });

test('an answers document may say nothing at all', () => {
  expect(readAnswers({ format })).toEqual({ value: { format }, faults: [], unknownKeys: [], unknownTasks: [] });
});

test('an unknown task is kept aside, and the known ones are read', () => {
  const { value, faults, unknownTasks } = readAnswers(said({ tasks: [{ task: 'shear-sheep', flock: 30 }, dig] }));
  expect([value?.tasks, faults, unknownTasks]).toEqual([[dig], [], ['shear-sheep']]);
});

test('control: with known tasks nothing is kept aside', () => {
  expect(readAnswers(said({ tasks: [dig] })).unknownTasks).toEqual([]);
});

test('two unknown tasks of one name are both kept', () => {
  expect(readAnswers(said({ tasks: [{ task: 'shear-sheep' }, { task: 'shear-sheep' }] })).unknownTasks).toEqual(['shear-sheep', 'shear-sheep']);
});

test('an unknown task does not hide what is wrong with another, nor where', () => {
  const { faults } = readAnswers(said({ tasks: [{ task: 'shear-sheep' }, { task: 'dig', must: 'yes' }] }));
  expect(faults.map(({ place }) => place)).toEqual(['tasks[1].must']);
});

test.each([
  [{ tasks: [{ task: 'mow-lwn' }] }, 'tasks[0].task', 'mow-lawn'],
  [{ tasks: [dig, { task: 'mow-lawn', hurs: 2 }] }, 'tasks[1].hurs', 'hours'],
  [{ land: { slope: 'stepe' } }, 'land.slope', 'steep'],
  [{ land: { slpe: 'steep' } }, 'land.slpe', 'slope'],
  [{ land: { overhead: 'opn' } }, 'land.overhead', 'open'],
  [{ priorities: ['price', 'confort'] }, 'priorities[1]', 'comfort'],
  [{ comfort: { must: ['cab', 'tiltWeel'] } }, 'comfort.must[1]', 'tiltWheel'],
  [{ land: { gate: { value: 7, unit: 'feet' } } }, 'land.gate.unit', 'ft'],
])('a check of %j faults %s and names "%s"', (parts, place, nearest) => {
  expect(checkAnswers(said(parts)).map((fault) => [fault.place, fault.nearest])).toEqual([[place, nearest]]);
});

test.each([
  [{ tasks: [dig] }],
  [{ land: { slope: 'steep', overhead: 'open' } }],
  [{ land: { slope: { value: 20, unit: 'percent' }, overhead: { value: 8, unit: 'ft' } } }],
  [{ land: { slope: { value: 12, unit: 'deg' } } }],
  [{ haul: { delivery: '12345' } }],
  [{ haul: { delivery: { value: 30, unit: 'mi' } } }],
  [{ priorities: ['price', 'comfort'], 'x-campaign': 'spring' }],
])('control: a check of %j finds nothing', (parts) => expect(checkAnswers(said(parts))).toEqual([]));

test('a reader goes on past an unknown key that a check faults', () => {
  const { value, faults, unknownKeys } = readAnswers(said({ land: { slope: 'flat', colour: 'red' } }));
  expect([value?.land, faults, unknownKeys.map(({ place }) => place)]).toEqual([{ slope: 'flat' }, [], ['land.colour']]);
});

test.each([[null], [3], ['text'], [[]], [{}], [{ format, tasks: 'dig' }], [{ format, tasks: [null, 3, [], {}] }]])('%j gives faults and no value, and nothing is thrown', (document) => {
  const { value, faults } = readAnswers(document);
  expect(value).toBeUndefined();
  expect(faults.length).toBeGreaterThan(0);
});

test('a task named twice is a fault, in a check and in a reading, and once is none', () => {
  const twice = { format: 'acre-to-axle/answers/1', tasks: [{ task: 'dig' }, { task: 'mow-lawn' }, { task: 'dig', must: true }] };
  for (const faults of [checkAnswers(twice), readAnswers(twice).faults]) {
    expect(faults.map(({ place, read }) => [place, read])).toEqual([['tasks[2].task', '"dig"']]);
  }
  expect(checkAnswers({ ...twice, tasks: twice.tasks.slice(0, 2) })).toEqual([]);
});
