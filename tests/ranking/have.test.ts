import { expect, test } from 'vitest';
import type { Machine } from '../../src/catalogue/catalogue.ts';
import { availabilities } from '../../src/catalogue/schema.ts';
import { have, inYears, type Candidate, type Have } from '../../src/ranking/candidate.ts';

const asOfYear = 2026;
const machine = { id: 'a', years: { from: 2014, meant: 'model' } } as Machine;
const unit = (more: object): Candidate => ({ machine, unit: { id: 'u', machine: 'a', ...more } });
type Availability = (typeof availabilities)[number];

/** In general; and of a unit that has it, hasn't it, or of which nobody said. */
const table: Record<Availability, readonly [Have, Have, Have, Have]> = {
  fitted: ['has', 'has', 'unknown', 'has'],
  option: ['can-add', 'has', 'never', 'unknown'],
  'field-kit': ['can-add', 'has', 'can-add', 'can-add'],
  aftermarket: ['can-add', 'has', 'can-add', 'can-add'],
  none: ['never', 'has', 'never', 'never'],
  unknown: ['unknown', 'has', 'unknown', 'unknown'],
};

test.each(availabilities)('how a machine and its units can have what is %s', (availability) => {
  const of = (candidate: Candidate) => have(candidate, 'midPto', { availability }, asOfYear);
  expect([of({ machine }), of(unit({ fitted: { midPto: true } })), of(unit({ fitted: { midPto: false } })), of(unit({}))]).toEqual(table[availability]);
});

test('what came with a machine and is gone can be had again where it has a price', () => {
  const price = { value: 900, currency: 'USD' };
  expect(have(unit({ fitted: { midPto: false } }), 'midPto', { availability: 'fitted', price }, asOfYear)).toBe('can-add');
});

test('of what a catalogue doesn’t speak nobody knows', () => {
  expect(have({ machine }, 'midPto', undefined, asOfYear)).toBe('unknown');
});

test.each([
  ['before the window', { year: 2016 }, 'outside'],
  ['in its first year', { year: 2018, yearKind: 'model' }, 'inside'],
  ['in its last year', { year: 2021, yearKind: 'model' }, 'inside'],
  ['after the window', { year: 2022, yearKind: 'model' }, 'outside'],
  ['in the year before it began, by its serial number', { year: 2017, yearKind: 'serial' }, 'outside'],
  ['in its first year, by its serial number', { year: 2018, yearKind: 'serial' }, 'inside'],
  ['sold a year before it began', { year: 2017, yearKind: 'sale' }, 'unknown'],
  ['sold a year after it ended', { year: 2022, yearKind: 'sale' }, 'unknown'],
  ['sold well inside it', { year: 2020, yearKind: 'build' }, 'unknown'],
  ['in its first year, of which nobody said what year that is', { year: 2018 }, 'unknown'],
  ['of no known year', {}, 'unknown'],
] as const)('a unit %s', (_what, said, expected) => {
  expect(inYears(unit(said), { from: 2018, to: 2021 }, asOfYear)).toBe(expected);
});

test('a sale in the middle of a long window lies inside it', () => {
  expect(inYears(unit({ year: 2020, yearKind: 'sale' }), { from: 2016, to: 2024 }, asOfYear)).toBe('inside');
});

test.each([
  ['began inside the line', { from: 2018 }, 'inside'],
  ['spans the line', { from: 2010, to: 2030 }, 'inside'],
  ['ended before the line began', { to: 2013 }, 'outside'],
  ['is still to come', { from: 2027 }, 'outside'],
] as const)('a machine in general, where the window %s', (_what, window, expected) => {
  expect(inYears({ machine }, window, asOfYear)).toBe(expected);
});
