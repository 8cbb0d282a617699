import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atLeast, atMost, byCodeUnit, toMillionth } from '../../src/units/compare.ts';
import { quantity } from '../../src/units/quantity.ts';

const sameHeight = [quantity('length', 78, 'in'), quantity('length', 6.5, 'ft'), quantity('length', 1.9812, 'm')];
const pairs = sameHeight.flatMap((a) => sameHeight.map((b) => [a, b] as const));
const amount = fc.double({ min: 1e-6, max: 1e9, noNaN: true });

test.each(pairs)('78 in, 6.5 ft and 1.9812 m agree both ways: %s and %s', (a, b) => {
  expect([atLeast(a, b), atMost(a, b)]).toEqual([true, true]);
});

test('a part in a million short is short', () => {
  fc.assert(fc.property(amount, (wants) => {
    const has = wants * (1 - 1e-6);
    return !atLeast(has, wants) && atMost(has, wants) && atLeast(wants, has) && !atMost(wants, has);
  }));
});

test('what is greater is at least, whatever the size', () => {
  fc.assert(fc.property(amount, fc.double({ min: 1, max: 10, noNaN: true }), (wants, times) => atLeast(wants * times, wants)));
});

test.each([
  ['nothing is at least nothing', atLeast(0, 0), true],
  ['nothing is not at least something', atLeast(0, 1e-300), false],
  ['a load below zero is not at least nothing', atLeast(-1, 0), false],
  ['a bound without end is not met by any amount', atLeast(5, Infinity), false],
  ['what falls short without end meets no bound', atLeast(-Infinity, 5), false],
  ['no bound is below one without end', atMost(5, -Infinity), false],
  ['what has no end meets any bound', atLeast(Infinity, 5), true],
  ['what has no end meets a bound without end', atLeast(Infinity, Infinity), true],
  ['any amount is within a bound without end', atMost(5, Infinity), true],
])('%s', (_name, verdict, expected) => expect(verdict).toBe(expected));

test('ids order by code unit, capitals first, in no language', () => {
  expect(['b', 'ä', 'a', 'B', 'a'].sort(byCodeUnit)).toEqual(['B', 'a', 'a', 'b', 'ä']);
});

test('of two ids one comes first, and of one and the same none', () => {
  expect([byCodeUnit('a', 'b'), byCodeUnit('b', 'a'), byCodeUnit('a', 'a')]).toEqual([-1, 1, 0]);
});

test.each([
  [0.1234564, 0.123456],
  [0.1234566, 0.123457],
  [0.1 + 0.2, 0.3],
  [1, 1],
])('a score of %s is taken as %s', (score, rounded) => expect(toMillionth(score)).toBe(rounded));
