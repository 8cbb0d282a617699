import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atan, cubeRoot, power, root, tan } from '../../src/units/transcendental.ts';

const functions = [
  { name: 'tan', ours: tan, theirs: Math.tan, least: -1.5, most: 1.5 },
  { name: 'atan', ours: atan, theirs: Math.atan, least: -1e6, most: 1e6 },
  { name: 'cubeRoot', ours: cubeRoot, theirs: Math.cbrt, least: -1e9, most: 1e9 },
  { name: 'power of 2', ours: (exponent: number) => power(2, exponent + 0.5), theirs: (exponent: number) => 2 ** (exponent + 0.5), least: -0.4, most: 0.4 },
];

test.each(functions)('$name keeps twelve digits, and those are right', ({ ours, theirs, least, most }) => {
  fc.assert(fc.property(fc.double({ min: least, max: most, noNaN: true }), (input) => {
    const result = ours(input), exact = theirs(input);
    return result === Number(result.toPrecision(12)) && Math.abs(result - exact) <= 1e-11 * Math.abs(exact);
  }));
});

/** Digits from mathematical tables: π/4, 1/√3, ∛2, √10. */
test.each([
  ['atan 1', atan(1), 0.785398163397],
  ['tan 30°', tan(Math.PI / 6), 0.57735026919],
  ['cube root of 2', cubeRoot(2), 1.25992104989],
  ['cube root of 27', cubeRoot(27), 3],
  ['atan 0', atan(0), 0],
  ['the root of 10', power(10, 0.5), 3.16227766017],
  ['one by the root of 10', power(10, -0.5), 0.316227766017],
  ['2 to the tenth power', power(2, 10), 1024],
  ['2 to minus two', power(2, -2), 0.25],
  ['1.5 squared', power(1.5, 2), 2.25],
  ['anything to the power of 0', power(1.07, 0), 1],
])('%s has the digits every engine gives', (_name, result, expected) => expect(result).toBe(expected));

test('a whole power is what multiplying again and again gives', () => {
  fc.assert(fc.property(fc.double({ min: 0.5, max: 1.5, noNaN: true }), fc.integer({ min: 0, max: 400 }), (base, exponent) => {
    const again = Array.from({ length: exponent }).reduce<number>((product) => product * base, 1);
    const near = (one: number, other: number) => Math.abs(one - other) <= 1e-12 * Math.abs(other);
    return near(power(base, exponent), again) && near(power(base, -exponent), 1 / again);
  }));
});

test('a power that is not whole lies between the whole ones beside it', () => {
  fc.assert(fc.property(fc.double({ min: 1.001, max: 2, noNaN: true }), fc.integer({ min: -40, max: 40 }), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (base, whole, part) => {
    const between = power(base, whole + part);
    return power(base, whole) < between && between < power(base, whole + 1);
  }));
});

test('a whole number of halvings is exact', () => expect([power(2, -3), power(2, 3), power(2, 52)]).toEqual([0.125, 8, 4503599627370496]));

test.each([[0.25, 2, 0.5], [0.125, 3, 0.5], [0.0081, 4, 0.3], [0.00032, 5, 0.2], [1, 5, 1], [0.7, 1, 0.7]])('%f has the %i. root %f', (value, degree, expected) =>
  expect(root(value, degree)).toBeCloseTo(expected, 15));

test('a root to the power of its degree is the number again, for small ones too', () => {
  fc.assert(fc.property(fc.double({ min: 1e-9, max: 1, noNaN: true }), fc.integer({ min: 1, max: 8 }), (value, degree) =>
    Math.abs(power(root(value, degree), degree) / value - 1) < 1e-14));
});
