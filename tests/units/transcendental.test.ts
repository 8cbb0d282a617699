import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atan, cubeRoot, tan } from '../../src/units/transcendental.ts';

const functions = [
  { name: 'tan', ours: tan, theirs: Math.tan, least: -1.5, most: 1.5 },
  { name: 'atan', ours: atan, theirs: Math.atan, least: -1e6, most: 1e6 },
  { name: 'cubeRoot', ours: cubeRoot, theirs: Math.cbrt, least: -1e9, most: 1e9 },
];

test.each(functions)('$name keeps twelve digits, and those are right', ({ ours, theirs, least, most }) => {
  fc.assert(fc.property(fc.double({ min: least, max: most, noNaN: true }), (input) => {
    const result = ours(input), exact = theirs(input);
    return result === Number(result.toPrecision(12)) && Math.abs(result - exact) <= 1e-11 * Math.abs(exact);
  }));
});

/** Digits from mathematical tables: π/4, 1/√3, ∛2. */
test.each([
  ['atan 1', atan(1), 0.785398163397],
  ['tan 30°', tan(Math.PI / 6), 0.57735026919],
  ['cube root of 2', cubeRoot(2), 1.25992104989],
  ['cube root of 27', cubeRoot(27), 3],
  ['atan 0', atan(0), 0],
])('%s has the digits every engine gives', (_name, result, expected) => expect(result).toBe(expected));
