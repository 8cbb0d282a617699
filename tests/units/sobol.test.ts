import { expect, test } from 'vitest';
import { middleOf, sobolCells, sobolCount } from '../../src/units/sobol.ts';

/**
 * The first points behind the origin in five dimensions, by the direction numbers of Joe and Kuo (new-joe-kuo-6),
 * as the test `test_more_known_values` of TensorFlow's sobol_ops_test.py (read) prints them.
 */
const printed = [
  [0.5, 0.5, 0.5, 0.5, 0.5], [0.75, 0.25, 0.25, 0.25, 0.75], [0.25, 0.75, 0.75, 0.75, 0.25],
  [0.375, 0.375, 0.625, 0.875, 0.375], [0.875, 0.875, 0.125, 0.375, 0.875], [0.625, 0.125, 0.875, 0.625, 0.625],
  [0.125, 0.625, 0.375, 0.125, 0.125], [0.1875, 0.3125, 0.9375, 0.4375, 0.5625], [0.6875, 0.8125, 0.4375, 0.9375, 0.0625],
  [0.9375, 0.0625, 0.6875, 0.1875, 0.3125], [0.4375, 0.5625, 0.1875, 0.6875, 0.8125], [0.3125, 0.1875, 0.3125, 0.5625, 0.9375],
  [0.8125, 0.6875, 0.8125, 0.0625, 0.4375], [0.5625, 0.4375, 0.0625, 0.8125, 0.1875], [0.0625, 0.9375, 0.5625, 0.3125, 0.6875],
  [0.09375, 0.46875, 0.46875, 0.65625, 0.28125], [0.59375, 0.96875, 0.96875, 0.15625, 0.78125], [0.84375, 0.21875, 0.21875, 0.90625, 0.53125],
  [0.34375, 0.71875, 0.71875, 0.40625, 0.03125], [0.46875, 0.09375, 0.84375, 0.28125, 0.15625], [0.96875, 0.59375, 0.34375, 0.78125, 0.65625],
  [0.71875, 0.34375, 0.59375, 0.03125, 0.90625], [0.21875, 0.84375, 0.09375, 0.53125, 0.40625], [0.15625, 0.15625, 0.53125, 0.84375, 0.84375],
  [0.65625, 0.65625, 0.03125, 0.34375, 0.34375], [0.90625, 0.40625, 0.78125, 0.59375, 0.09375], [0.40625, 0.90625, 0.28125, 0.09375, 0.59375],
  [0.28125, 0.28125, 0.15625, 0.21875, 0.71875], [0.78125, 0.78125, 0.65625, 0.71875, 0.21875], [0.53125, 0.03125, 0.40625, 0.46875, 0.46875],
  [0.03125, 0.53125, 0.90625, 0.96875, 0.96875],
];
/** The sixth dimension of its first seven points, as the tests of two other readers of that table print it (read in extracts that name no file). */
const sixth = [0.5, 0.75, 0.25, 0.125, 0.625, 0.875, 0.375];

/** Printed in the order of Gray's code, in which neighbours differ by one direction number; ours come in plain order. */
const at = (dimension: number, printedAt: number) => sobolCells[dimension]![printedAt ^ (printedAt >> 1)]! / sobolCount;

test.each(printed.map((point, index) => [index + 1, point] as const))('point %i is the one that is printed', (index, point) => {
  expect(point.map((_, dimension) => at(dimension, index))).toEqual(point);
});

test('the sixth dimension begins as that of the published table', () => {
  expect(sixth.map((_, index) => at(5, index + 1))).toEqual(sixth);
});

test('the first point is the origin, in every dimension', () => {
  expect(sobolCells.map(([first]) => first)).toEqual(sobolCells.map(() => 0));
  expect(sobolCells).toHaveLength(6);
});

const powers = Array.from({ length: Math.log2(sobolCount) + 1 }, (_, k) => k);
const upTo = (count: number) => Array.from({ length: count }, (_, index) => index);
const everyDimension = upTo(sobolCells.length);
/** Which of 2^k equal parts of a side a cell lies in. */
const partOf = (cell: number, k: number) => Math.floor((cell * 2 ** k) / sobolCount);

/** Whether of the first 2^k points one lies in each of the 2^k boxes, 2^a by 2^(k − a) of them. */
const fills = (one: ArrayLike<number>, other: ArrayLike<number>, k: number, a: number) =>
  new Set(upTo(2 ** k).map((point) => partOf(one[point]!, a) * 2 ** (k - a) + partOf(other[point]!, k - a))).size === 2 ** k;

test.each(everyDimension)('in dimension %i the first 2^k points lie in 2^k different parts, so all in different cells', (dimension) => {
  const cells = sobolCells[dimension]!;
  expect(powers.filter((k) => new Set(upTo(2 ** k).map((point) => partOf(cells[point]!, k))).size !== 2 ** k)).toEqual([]);
  expect([...cells].sort((a, b) => a - b)).toEqual(upTo(sobolCount));
});

test('of the first two dimensions the first 2^k points lie one in each box of that size, however it is cut', () => {
  const [first, second] = sobolCells as [Uint16Array, Uint16Array];
  const missed = powers.flatMap((k) => upTo(k + 1).filter((a) => !fills(first, second, k, a)).map((a) => [k, a]));
  expect(missed).toEqual([]);
});

test('control: two dimensions that are the same leave boxes empty', () => {
  const [first] = sobolCells as [Uint16Array];
  expect(fills(first, first, 2, 1)).toBe(false);
});

test('a coordinate is the middle of its cell, so it is neither 0 nor 1', () => {
  expect([middleOf(0), middleOf(sobolCount / 2), middleOf(sobolCount - 1)]).toEqual([1 / 2048, 1025 / 2048, 2047 / 2048]);
});
