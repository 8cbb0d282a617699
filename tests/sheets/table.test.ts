import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allAtOnce, csvOf, limits, parsing, type Progress } from '../../src/sheets/sheets.ts';
import { aMinute, runs } from '../support/arbitraries.ts';
import { tableOfText } from './reading.ts';

const cells = (text: string) => {
  const { headings, rows } = tableOfText('units', text);
  return [headings, ...rows];
};
const found = (text: string) => tableOfText('units', text).findings.map(({ code, row, read }) => [code, row, read].filter((part) => part !== undefined));

/** The examples of RFC 4180, section 2, item by item. */
describe('RFC 4180, section 2', () => {
  test.each<[string, string, string[][]]>([
    ['1: each record on its own line', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n', [['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['2: the last may have no line break', 'aaa,bbb,ccc\r\nzzz,yyy,xxx', [['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['3: a header line', 'field_name,field_name2,field_name3\r\naaa,bbb,ccc\r\n', [['field_name', 'field_name2', 'field_name3'], ['aaa', 'bbb', 'ccc']]],
    ['5: fields in double quotes', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx', [['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['6: a line break in quotes', '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx', [['aaa', 'b\r\nbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['7: a quote escaped by another', '"aaa","b""bb","ccc"\r\nd,e,f', [['aaa', 'b"bb', 'ccc'], ['d', 'e', 'f']]],
  ])('%s', (_what, text, expected) => expect(cells(text)).toEqual(expected));

  test('4: spaces are part of a field', () => expect(cells('a, b \r\n1,2')[0]).toEqual(['a', ' b ']));
});

test.each<[string, string, string]>([
  ['semicolons', 'id;price;hours\nr-1;12,5;3\nr-2;9,25;4\n', ';'],
  ['tabs', 'id\tnotes\nr-1\tone, two\nr-2\tthree; four\n', '\t'],
  ['strokes', 'id|price|hours\nr-1|1|2\n', '|'],
  ['a line that says so', 'sep=;\r\nid;price\r\nr-1;5\r\n', ';'],
  ['a separator inside quotes', 'id;"a,b,c";"d,e,f"\n1;2;3\n', ';'],
])('%s are found', (_what, text, separator) => {
  const table = tableOfText('units', text);
  expect(table.dialect.separator).toBe(separator);
  expect(table.headings.length).toBeGreaterThan(1);
  expect(table.rows.every((row) => row.length === table.headings.length)).toBe(true);
});

test.each<[string, string, '.' | ',', 'found' | 'assumed']>([
  ['decimal commas', 'id;a;b\n1;12,5;3\n', ',', 'found'],
  ['decimal points', 'id,a,b\n1,12.5,3\n', '.', 'found'],
  ['both marks in one number', 'id;a\n1;1.234,50\n', ',', 'found'],
  ['points behind semicolons', 'id;a\n1;12.5\n', '.', 'found'],
  ['nothing that tells, behind semicolons', 'id;a\n1;1.500\n', ',', 'assumed'],
  ['nothing that tells', 'id,a\n1,15\n', '.', 'assumed'],
])('%s are found by what can be read in one way only', (_what, text, decimalMark, decimalMarkFrom) => {
  expect(tableOfText('units', text).dialect).toMatchObject({ decimalMark, decimalMarkFrom });
});

test('what is given is not guessed', () => {
  expect(tableOfText('units', 'id,a\n1,1.5\n', { decimalMark: ',', separator: ',' }).dialect).toEqual({ separator: ',', decimalMark: ',', decimalMarkFrom: 'given' });
});

test('old ends of lines are ends of lines', () => expect(cells('a,b\r1,2\r3,4\r')).toEqual([['a', 'b'], ['1', '2'], ['3', '4']]));

test.each<[string, string, (string | number)[][]]>([
  ['headings alone', 'id,price\n', [['file.no-rows']]],
  ['blank rows below the headings', 'id,price\n,\n , \n', [['file.no-rows']]],
  ['a blank row between', 'id,price\na,1\n,\nb,2\n', [['file.blank-rows']]],
  ['a quote that never ends', 'id,price\na,1\n"b,2\nc,3\n', [['file.unclosed-quote', 3]]],
  ['a quote in the middle of a quoted cell', 'id,price\n"a"x,1\n', [['file.quote', 2]]],
])('%s: told', (_what, text, expected) => expect(found(text)).toEqual(expected));

test('inches in a cell without quotes are no quotes', () => {
  expect(cells('id,width\na,49"\nb,50"\n')).toEqual([['id', 'width'], ['a', '49"'], ['b', '50"']]);
});

test('a row too many, a column too many are refused with the number; at the limit they are not', () => {
  const rows = (count: number) => `id\n${'a\n'.repeat(count)}`;
  expect(tableOfText('units', rows(limits.rows)).rows).toHaveLength(100_000);
  expect(tableOfText('units', rows(limits.rows + 1))).toMatchObject({ rows: [], findings: [{ code: 'file.too-many-rows', facts: { limit: 100_000 }, read: '100001' }] });
  const wide = (count: number) => `${Array.from({ length: count }, (_, index) => `h${index}`).join(',')}\n1\n`;
  expect(found(wide(limits.columns))).toEqual([]);
  expect(found(wide(limits.columns + 1))).toEqual([['file.too-many-columns', String(limits.columns + 1)]]);
});

/** Texts with all that makes a cell hard to write: separators, quotes, ends of lines, what begins a formula, our own quote. */
const nasty = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.array(fc.constantFrom('a', '1', ',', ';', '"', '""', '\n', '\r\n', '\r', '\t', ' ', '=', '+', '-', '@', "'", '\0', 'é', '١', '½'), { maxLength: 8 }).map((parts) => parts.join('')),
);

test('parse(write(x)) = x, for any cells', () => {
  const tables = fc.integer({ min: 1, max: 5 }).chain((width) => fc.tuple(
    fc.array(nasty.filter((cell) => cell.trim() !== ''), { minLength: width, maxLength: width }),
    fc.array(fc.array(nasty, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
  ));
  fc.assert(fc.property(tables, ([headings, rows]) => {
    const { headings: readHeadings, rows: readRows } = allAtOnce(parsing('units', csvOf([headings, ...rows]), { separator: ',' }));
    expect([readHeadings, ...readRows]).toEqual([headings, ...rows]);
  }), runs(Number(process.env.TABLES ?? 1500)));
}, aMinute);

test('no cell leaves as a formula (OWASP ASVS 5.0, 1.2.10; CWE-1236), and numbers stay numbers', () => {
  fc.assert(fc.property(nasty, (cell) => {
    const { rows: [[first] = []] } = allAtOnce(parsing('units', csvOf([['h', 'i'], [cell, 'x']]).replaceAll("'", '\u{1F4CC}'), { separator: ',' }));
    expect(first).not.toMatch(/^[=+\-@\t\r\0]/);
  }), runs(1500));
  expect(csvOf([['h'], ['=1+1'], ['-5'], [-5], ["'@x"], ['\tx']])).toBe("h\r\n\"'=1+1\"\r\n\"'-5\"\r\n-5\r\n\"''@x\"\r\n\"'\tx\"\r\n");
}, aMinute);

test('a long text is read in slices that tell how far it is, cut anywhere', () => {
  const row = (index: number) => [`u-${index}`, 'a "quoted"\r\nsecond line', `${index}`, 'x'.repeat(index % 50)];
  const rows = Array.from({ length: 5000 }, (_, index) => row(index));
  const told: Progress[] = [];
  const table = allAtOnce(parsing('units', csvOf([['id', 'notes', 'hours', 'more'], ...rows])), (progress) => told.push(progress));
  expect(table.rows).toEqual(rows);
  expect(told.length).toBeGreaterThan(4);
  expect(told.every(({ done, of }, index) => done <= of && (index === 0 || done > told[index - 1]!.done))).toBe(true);
});
