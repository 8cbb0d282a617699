import { expect, test } from 'vitest';
import { heading, item, paragraph, table, widthOf } from '../../src/cli/sheet/layout.ts';

test('a paragraph breaks at blanks, none of its lines wider than the page', () => {
  const words = Array.from({ length: 60 }, (_, index) => 'x'.repeat(1 + (index % 9)));
  const lines = paragraph(words.join(' '), 4);
  expect(lines.join(' ').split(/ +/).filter((word) => word !== '')).toEqual(words);
  for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(80);
  for (const line of lines) expect(line).toMatch(/^ {4}\S/);
});

test('the line is as full as it can be', () => {
  expect(paragraph(`${'x'.repeat(40)} ${'y'.repeat(39)}`)).toHaveLength(1);
  expect(paragraph(`${'x'.repeat(40)} ${'y'.repeat(40)}`)).toHaveLength(2);
});

test('an amount and its unit stay on one line', () => {
  const lines = paragraph(`${'x'.repeat(74)} 1,200\u00a0lb more`);
  expect(lines).toEqual(['x'.repeat(74), '1,200 lb more']);
});

test('later lines of an item stand below its first word', () => {
  const [first, second] = item('-', `${'x'.repeat(70)} ${'y'.repeat(20)}`, 3);
  expect(first).toBe(`   - ${'x'.repeat(70)}`);
  expect(second).toBe(`     ${'y'.repeat(20)}`);
});

test('a word wider than the page is left whole', () => {
  expect(paragraph('x'.repeat(100))).toEqual(['x'.repeat(100)]);
});

test.each([['abc', 3], ['ü', 1], ['u\u0308', 1], ['農業', 4], ['🚜', 2], ['', 0]])('%s takes %i columns', (text, width) => expect(widthOf(text)).toBe(width));

test('a heading too long for a line is underlined as far as it reaches', () => {
  const [blank, first, second, line] = heading(`${'x'.repeat(70)} ${'y'.repeat(20)}`);
  expect([blank, first, second, line]).toEqual(['', 'x'.repeat(70), 'y'.repeat(20), '-'.repeat(70)]);
});

test('columns of a table stand below each other', () => {
  expect(table([['a', '1.0'], ['農業', '10.0']], 2)).toEqual(['  a      1.0', '  農業  10.0']);
});
