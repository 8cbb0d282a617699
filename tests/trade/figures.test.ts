import { expect, test } from 'vitest';
import { figureIds, figureRules, ruleIds, rules } from '../../src/trade/book.ts';
import { formulaRules } from '../../src/trade/figures/formulas.ts';
import { plainUnits, type FigureRule, type Source } from '../../src/trade/record.ts';
import { kindOfUnit } from '../../src/units/quantity.ts';
import { sources } from '../support/sources.ts';

const figures = figureIds.map((id) => ({ id, ...(figureRules[id] as FigureRule) }));
const isNamed = (source: Source) =>
  source.basis === 'common-practice' || (source.basis === 'derived' ? source.from : source.title).length > 5;

test('the rule book holds at least forty records', () => expect(ruleIds.length).toBeGreaterThanOrEqual(40));

test.each(ruleIds)('%s is a dotted id in small letters', (id) => expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)+$/));

test('no id is both a figure and a formula: the one would hide the other', () => {
  expect(figureIds.filter((id) => id in formulaRules)).toEqual([]);
});

test.each(ruleIds)('%s says what it is and where it comes from', (id) => {
  expect(rules[id].statement.length).toBeGreaterThan(10);
  expect(isNamed(rules[id].source)).toBe(true);
});

test.each(figures)('$id has its value within its bounds', ({ value, valid: [least, most] }) => {
  expect(least).toBeLessThanOrEqual(value);
  expect(value).toBeLessThanOrEqual(most);
});

test.each(figures)('$id has a unit of ours', ({ unit }) => {
  expect((plainUnits as readonly string[]).includes(unit) || kindOfUnit(unit) !== undefined).toBe(true);
});

test.each(figures)('$id says which way is safer if it is a safety floor, and only then', ({ kind, safer }) => {
  expect(safer !== undefined).toBe(kind === 'safety-floor');
});

test.each(figures.filter(({ safer }) => safer))('$id leaves no room on the unsafe side', ({ safer, value, valid: [least, most] }) => {
  expect(safer === 'more' ? least : most).toBe(value);
});

test.each(figures.filter(({ kind }) => kind === 'published-figure'))('$id, a published figure, names what it was published in', ({ source }) => {
  expect(source.basis).not.toBe('common-practice');
});

test('no theme repeats the id of another, which would hide it', () => {
  const written = sources(['trade']).filter(({ file }) => file.startsWith('trade/figures/') && !file.includes('formulas'))
    .flatMap(({ text }) => text.match(/^ {2}'[^']+': \{/gm) ?? []);
  expect(written).toHaveLength(figureIds.length);
});

const formulaFiles = sources(['trade']).filter(({ file }) => file.startsWith('trade/formulas/'));
/** These two give a bare figure and only point to their rule; any other names it in its working. */
const withoutWorking = ['weights.rank-order-centroid', 'slope.from-percent'];
const timesNamed = (id: string) => formulaFiles.flatMap(({ text }) =>
  withoutWorking.includes(id)
    ? text.match(/@see rule `[^`]+`/g)?.filter((named) => named.includes(`\`${id}\``)) ?? []
    : text.match(/formula: '[^']+'(?: \| '[^']+')*/g)?.filter((named) => named.includes(`'${id}'`)) ?? []).length;

test.each(Object.keys(formulaRules))('%s is worked out by exactly one function', (id) => expect(timesNamed(id)).toBe(1));

test('control: a formula nobody works out would be found', () => expect(timesNamed('mow.by-moonlight')).toBe(0));

test('every figure of the rule book is read by something, and none is kept for show', () => {
  const rooms = sources().filter(({ file }) => !file.startsWith('trade/figures/') && !file.includes('/words/') && !file.includes('/uses')).map(({ text }) => text).join('\n');
  // A figure chosen by a word of the answers is read by a template: `mow.efficiency.${obstacles}`.
  const read = (id: string) => rooms.includes(`'${id}'`) || rooms.includes(`\`${id.slice(0, id.lastIndexOf('.'))}.\${`);
  expect(figureIds.filter((id) => !read(id))).toEqual([]);
  expect(read('mow.nothing'), 'control').toBe(false);
});
