import { expect, test } from 'vitest';
import { codes, read } from './reading.ts';

const units = (...ids: readonly string[]) => read('units', `id,machine\n${ids.map((id) => `"${id}",rill\n`).join('')}`);

test.each<[string, string]>([
  ['t-1042', 't-1042'], ['T-1042', 't-1042'], [' t-1042 ', 't-1042'], ['Stock 17/B', 'stock-17-b'], ['Größe 3', 'grosse-3'], ['1042', '1042'], ['a_b.c', 'a-b-c'],
])('the id "%s" is taken as %s', (written, id) => expect(units(written).entries.map(({ entry }) => entry.id)).toEqual([id]));

test.each<[string, string]>([
  ['__proto__', 'cell.id'], ['🚜', 'cell.id'], ['#12', 'cell.id'], ['1.02E+05', 'cell.id-mangled'], ['1,02E+05', 'cell.id-mangled'], ['12E5', 'cell.id-mangled'],
  ['#REF!', 'cell.error'],
])('the id "%s" is refused with its row', (written, code) => {
  const { entries, findings } = units(written, 'good');
  expect(entries.map(({ row }) => row)).toEqual([3]);
  expect(findings).toMatchObject([{ code, weight: 'fault', row: 2, column: 1, dropsRow: true }]);
});

test('constructor and its like are ids as any', () => {
  const { entries, findings } = units('constructor', 'tostring', 'hasownproperty');
  expect([entries.length, findings]).toEqual([3, []]);
});

test.each(['12-Mar', 'Mar-12', '3-Mar-2026', '03/12/2026', '2026-03-12'])('an id such as %s is asked about, for a spreadsheet may have made a day of it', (written) => {
  const { entries, findings } = units(written);
  expect(entries).toHaveLength(1);
  expect(findings).toMatchObject([{ code: 'cell.id-date', weight: 'query', row: 2 }]);
});

test('ids that differ by capitals, accents or blanks are the same: the first stands, the others are told with its row', () => {
  const { entries, findings } = units('t-1', 'T-1', 't-1 ', 't_1', 't-2');
  expect(entries.map(({ row }) => row)).toEqual([2, 6]);
  expect(codes(findings.filter(({ weight }) => weight === 'fault'))).toEqual([['row.same-id', 3, 1], ['row.same-id', 4, 1], ['row.same-id', 5, 1]]);
  expect(findings.find(({ code }) => code === 'row.same-id')).toMatchObject({ facts: { id: 't-1', first: 2 }, read: '"T-1"', dropsRow: true });
});

test('that ids were changed is told once a column', () => {
  expect(units('T-1', 'T-2', 'T-3').findings).toMatchObject([{ code: 'cell.id-changed', weight: 'notice', row: 2, facts: { id: 't-1' } }]);
});

test('a row without an id, or without anything to belong to, is told and left out', () => {
  expect(read('units', 'id,machine,price\n,rill,5\nu-1,,6\n')).toMatchObject({
    entries: [],
    findings: [{ code: 'row.without', row: 2, facts: { headings: ['id'] }, dropsRow: true }, { code: 'row.without', row: 3, facts: { headings: ['machine'] }, dropsRow: true }],
  });
});
