import { expect, test } from 'vitest';
import { kindOfUnit, siUnitOf, toSi, type Unit } from '../../src/units/quantity.ts';
import { si, written } from '../support/quantities.ts';
import { calls } from './calls.ts';
import { cases } from './cases.ts';
import type { Given } from './given.ts';
import type { WorkedCase } from './worked-case.ts';

/** What the code gives for a case, in the unit its expectation is written in. */
function resultOf({ formula, given, expect: expected }: WorkedCase) {
  const inputs = Object.fromEntries(Object.entries(given).map(([name, text]) => [name, si(text)])) as unknown as Given;
  const outcome = calls[formula](inputs);
  const amount = typeof outcome === 'number' ? outcome : outcome.result.value;
  const { unit } = written(expected);
  return { outcome, inUnit: unit === 'ratio' ? amount : amount / toSi({ value: 1, unit: unit as Unit }) };
}

const off = (each: WorkedCase) => Math.abs(resultOf(each).inUnit - written(each.expect).value);

test.each(cases)('$formula: $name', (each) => {
  expect(off(each), `gives ${resultOf(each).inUnit}, expected ${each.expect} (${each.source})`).toBeLessThanOrEqual(each.within);
});

test.each(cases)('control, $formula: a figure off by a hundredth would be noticed: $name', (each) => {
  const { value, unit } = written(each.expect);
  const wrong = value + value / 100 + 2 * each.within;
  expect(off({ ...each, expect: unit === 'ratio' ? wrong : `${wrong} ${unit}` })).toBeGreaterThan(each.within);
});

test.each(cases.filter(({ formula }) => formula !== 'units'))('$formula says its unit and every input: $name', (each) => {
  const { outcome } = resultOf(each);
  if (typeof outcome === 'number') return;
  const { unit } = written(each.expect);
  expect(outcome.result.unit).toBe(unit === 'ratio' ? 'ratio' : siUnitOf(kindOfUnit(unit)!));
  expect(Object.values(outcome.inputs).filter(({ value }) => !Number.isFinite(value))).toEqual([]);
});

test.each(Object.keys(calls))('%s has a worked example', (formula) => {
  expect(cases.some((each) => each.formula === formula)).toBe(true);
});

test('every case says where its figure comes from, and no two are the same', () => {
  expect(cases.filter(({ source }) => source.length < 3)).toEqual([]);
  const names = cases.map(({ formula, name }) => `${formula}: ${name}`);
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
});
