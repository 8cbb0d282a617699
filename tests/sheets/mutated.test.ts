import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson, csvOf, tableOf, type Finding, type SheetKind } from '../../src/sheets/sheets.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { headingOf } from '../../src/sheets/headings/headings.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { buyers, demoAnswers } from '../cli/fake-io.ts';
import { aMinute } from '../support/arbitraries.ts';
import { assembled, demo, read } from './reading.ts';

/** Whole tables for the shortlist; a few rows of each, with all its columns, for what happens to cells. */
const whole = tableOf('units', demo.units).rows;
const tables = { machines: tableOf('machines', demo.machines.slice(0, 2)).rows, units: whole.slice(0, 4) };
const readOf = (sheet: SheetKind) => new Map(
  (read(sheet, csvOf(tables[sheet])).entries as readonly { row: number; entry: object }[]).map(({ row, entry }) => [row, { entry, json: canonicalJson(entry) }]),
);
const original = { machines: readOf('machines'), units: readOf('units') };

/** All of them, however long it takes. */
const inAll = 2000;
const tries = (usual: number) => ({ numRuns: Math.ceil((usual * Number(process.env.SLIPS ?? inAll)) / inAll), seed: Number(process.env.SEED ?? 1) });

/** What slips into cells: odd numbers, units, words, days, marks of the format itself. */
const slip = fc.oneof(
  fc.constantFrom('', ' ', 'NaN', 'Infinity', '-5', '0', '1e999', '1,500', '1.500', '25hp', '½', '٣٥', 'n/a', '#REF!', '=1+1', '@x', 'yes', 'none', 'TRUE', 'rill', 'RILL ', '12-Mar', '1.02E+05', '__proto__', 'constructor', '<b>', '\u202e', 'a;b', '"', '\n', '99999999', '2019', '540; x', 'sold'),
  fc.string({ maxLength: 12 }), fc.integer({ min: 0, max: 100_000 }).map(String), fc.double({ min: 0, max: 1e4, noNaN: true }).map(String),
);

interface Slip { sheet: SheetKind; row: number; column: number; cell: string }
const anySlip = fc.constantFrom<SheetKind>('machines', 'units').chain((sheet): fc.Arbitrary<Slip> => fc.record({
  sheet: fc.constant(sheet), row: fc.integer({ min: 1, max: tables[sheet].length - 1 }), column: fc.integer({ min: 0, max: tables[sheet][0]!.length - 1 }), cell: slip,
}));

const withSlip = ({ row, column, cell }: Omit<Slip, 'sheet'>, table: readonly (readonly (string | number)[])[]) => table.map((cells, index) => (index === row ? cells.map((each, at) => (at === column ? cell : each)) : cells));

const isDropped = (findings: readonly Finding[], row: number) => findings.some((each) => each.weight === 'fault' && each.dropsRow && each.row === row);

/** All of an entry but the thing a field belongs to. */
function without(entry: object, field: string) {
  const [key = ''] = field.split(/[.[]/);
  return canonicalJson(Object.fromEntries(Object.entries(entry).filter(([each]) => each !== key)));
}

/** A field can be read from a text only if there is something of its kind in it. */
const says = /\d|½|¼|¾|yes|no|true|false|x|y|n|none|sold|ja|wahr|falsch|oui|vrai|faux|si|sí|verdadero|falso/i;

test('whatever slips into a cell, no row is lost and none is changed in silence (SLIPS=100000 tries more)', () => {
  fc.assert(fc.property(anySlip, (made) => {
    const { sheet, row, column, cell } = made;
    const { entries, findings, columns } = read(sheet, csvOf(withSlip(made, tables[sheet])));
    const after = new Map((entries as readonly { row: number; entry: object }[]).map(({ row: at, entry }) => [at, entry]));
    const { field } = columns.find((each) => each.column === column + 1)!;
    const slipped = row + 1;
    const wrong = [...original[sheet]].flatMap(([at, { entry, json }]) => {
      const now = after.get(at);
      // Another row may have taken its id: then it goes, and is told.
      if (now === undefined) return isDropped(findings, at) ? [] : [`row ${at} is gone in silence`];
      if (at !== slipped) return canonicalJson(now) === json ? [] : [`row ${at} is another`];
      return field === 'id' || without(now, field) === without(entry, field) ? [] : [`of row ${at} more has changed than ${field}`];
    });
    const now = after.get(slipped);
    const { takes } = headingOf(sheet, field)!;
    const silent = now && !findings.some((each) => each.row === slipped) && canonicalJson(now) !== original[sheet].get(slipped)!.json;
    // A figure, a day, a word that isn't one can't pass in silence: either it was read as what it says, or it is told.
    if (silent && takes.as !== 'text' && takes.as !== 'id' && field !== 'attachments' && cell.trim() !== '' && !says.test(cell)) wrong.push(`${field} has become something in silence`);
    expect(wrong).toEqual([]);
  }), tries(1800));
}, 60 * aMinute);

/** What happens to a file as a whole: bytes cut, doubled, changed. Nothing is thrown, and what is read is a row of it or told. */
test('whatever happens to the bytes of a file, nothing is thrown and every row is an entry or told', () => {
  const bytes = new TextEncoder().encode(csvOf(tables.units));
  const change = fc.record({ at: fc.integer({ min: 0, max: bytes.length }), cut: fc.integer({ min: 0, max: 40 }), put: fc.uint8Array({ maxLength: 4 }) });
  fc.assert(fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
    const changed = changes.reduce((all, { at, cut, put }) => Uint8Array.from([...all.slice(0, at), ...put, ...all.slice(at + cut)]), bytes);
    const units = read('units', changed);
    const { entries, findings } = units;
    const rows = new Set([...entries.map(({ row }) => row), ...findings.flatMap(({ row, dropsRow }) => (row !== undefined && dropsRow ? [row] : []))]);
    const ofAll = findings.some(({ row, weight }) => weight === 'fault' && row === undefined);
    expect(ofAll || rows.size > 0).toBe(true);
    expect(assembled({ units }).catalogue).toBeDefined();
  }), tries(200));
}, 60 * aMinute);

/** Where each unit stands among all that may be bought as they are, by its id. */
const standingIn = (catalogue: CatalogueDocument, answers: AnswersDocument) => new Map(
  shortlist(catalogue, answers).shortlist.flatMap(({ units = [] }) => units).flatMap(({ unit, verdict, score }, index) => (verdict === 'stands' ? [[unit, { index, score }] as const] : [])),
);

test('a unit never moves up by a cell that can’t be read (ALL=1 tries every cell of every unit for every buyer)', () => {
  const cases = buyers.flatMap((buyer) => {
    const answers = JSON.parse(demoAnswers(buyer)) as AnswersDocument;
    const places = standingIn(demo, answers);
    return whole.slice(1).flatMap((cells, index) => cells.flatMap((cell, column) => (column < 2 || cell === '' ? [] : [{ buyer, answers, before: places.get(String(cells[0])), row: index + 1, column }])));
  });
  const some = (among: typeof cases, count: number) => fc.sample(fc.constantFrom(...among), { numRuns: count, seed: 1 });
  const tried = process.env.ALL ? cases : [...some(cases.filter(({ before }) => before), 14), ...some(cases.filter(({ before }) => !before), 6)];
  for (const { buyer, answers, before, row, column } of tried) {
    const { catalogue } = assembled({ units: read('units', csvOf(withSlip({ row, column, cell: '%%' }, whole))) });
    const after = standingIn(catalogue!, answers).get(String(whole[row]![0]));
    if (!after) continue;
    const what = `${buyer}, ${whole[row]![0]}, ${whole[0]![column]}`;
    expect(before, `${what}: stands only where it stood`).toBeDefined();
    expect(after.index, `${what}: no higher`).toBeGreaterThanOrEqual(before!.index);
    expect(after.score, `${what}: no more`).toBeLessThanOrEqual(before!.score);
  }
}, 10 * aMinute);
