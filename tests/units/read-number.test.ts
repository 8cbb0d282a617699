import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readNumber } from '../../src/units/read.ts';

/** As it is typed, the decimal mark of the reader's language, and the number meant. */
test.each<[string, '.' | ',', number]>([
  ['0', '.', 0],
  ['7', '.', 7],
  [' 12 ', '.', 12],
  ['1200', '.', 1200],
  ['1.5', '.', 1.5],
  ['1,5', ',', 1.5],
  // A foreign decimal mark before other than three digits can be nothing else.
  ['1,5', '.', 1.5],
  ['1.5', ',', 1.5],
  ['12,75', '.', 12.75],
  ['1.2345', ',', 1.2345],
  ['.5', '.', 0.5],
  [',5', ',', 0.5],
  ['5.', '.', 5],
  // One mark before exactly three digits groups where it isn't the reader's decimal mark.
  ['1,200', '.', 1200],
  ['1.200', ',', 1200],
  ['12,500', '.', 12_500],
  ['0,125', ',', 0.125],
  ['0.125', '.', 0.125],
  ['1,234,567', '.', 1_234_567],
  ['1.234.567', ',', 1_234_567],
  ['1.234.567', '.', 1_234_567],
  // Where both stand, the last is the decimal mark.
  ['1,234.5', '.', 1234.5],
  ['1.234,5', ',', 1234.5],
  ['1.234,5', '.', 1234.5],
  ['1,234.5', ',', 1234.5],
  ['1.234.567,25', ',', 1_234_567.25],
  ['1,234,567.25', ',', 1_234_567.25],
  // Blanks group too: plain ones, those that don't break, narrow ones.
  ['1 200', '.', 1200],
  ['1\u00a0200', ',', 1200],
  ['12\u202f500', ',', 12_500],
  ['1 234 567', '.', 1_234_567],
  ['1  200', '.', 1200],
  ['.55', '.', 0.55],
  ['1  1/2', '.', 1.5],
  ['1 200,5', ',', 1200.5],
  ['½', '.', 0.5],
  ['¼', '.', 0.25],
  ['¾', '.', 0.75],
  ['1½', '.', 1.5],
  ['2 ¾', '.', 2.75],
  ['12¼', '.', 12.25],
  ['1/2', '.', 0.5],
  ['3 / 4', '.', 0.75],
  ['1 1/2', '.', 1.5],
  ['12 5/16', '.', 12.3125],
  ['10/16', '.', 0.625],
])('"%s" where the decimal mark is "%s" is %d', (typed, mark, meant) => {
  expect(readNumber(typed, mark)).toBe(meant);
});

test('of who says nothing of his language the point is taken for the decimal mark', () => {
  expect([readNumber('1.2345'), readNumber('1,234'), readNumber('1,5')]).toEqual([1.2345, 1234, 1.5]);
});

test.each([['1,500', ',', 1.5, 1500], ['12,750', ',', 12.75, 12_750], ['1.500', '.', 1.5, 1500]] as const)('"%s" may be decimals or a foreign thousand where "%s" is the decimal mark', (typed, mark, ...either) => {
  expect(readNumber(typed, mark)).toEqual({ either });
});
test.each([['1,50', 1.5], ['1,5000', 1.5], ['0,500', 0.5], ['1234,500', 1234.5]] as const)('control: "%s" is not', (typed, meant) => expect(readNumber(typed, ',')).toBe(meant));

test.each([
  '', ' ', 'ten', '-5', '+5', '1e3', '5 5', '1 2 3', '12 34', 'x5', '5x', '.', ',', '..5', '1..5', '1,2,3', '1,23,456', '1234,567,890', '1,,200', '1,234,56', '1,234,5678', 'x.5', '.5x',
  '1/0', '0/0', '1/', '/2', '1½½', '½1', 'x1/2', '1/2x', '1 x/2', '½ 1',
])('"%s" is no number', (typed) => expect(readNumber(typed)).toBeUndefined());

const written = fc.record({ whole: fc.integer({ min: 0, max: 999_999_999 }), cents: fc.integer({ min: 10, max: 99 }) });

test.each(['en-US', 'de-DE'])('what a program writes in %s is read as it was meant', (locale) => {
  const mark = locale === 'en-US' ? '.' : ',';
  fc.assert(fc.property(written, ({ whole, cents }) => {
    const amount = whole + cents / 100;
    const text = new Intl.NumberFormat(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(amount);
    return readNumber(text, mark) === Number(amount.toFixed(2));
  }));
});

test('fractions of an inch come out as their part', () => {
  fc.assert(fc.property(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 15 }), (whole, over) =>
    readNumber(`${whole} ${over}/16`) === whole + over / 16 && readNumber(`${over}/16`) === over / 16));
});
