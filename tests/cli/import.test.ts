import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { versionOf } from '../../src/sheets/sheets.ts';
import { aMinute } from '../support/arbitraries.ts';
import { root } from '../support/sources.ts';
import { demoAnswers, demoCatalogue, faultForm, runWith, today } from './fake-io.ts';

const file = (name: string) => readFileSync(join(root, 'demo/csv', name), 'utf8');
const files = { 'm.csv': file('machines.csv'), 'u.csv': file('units.csv'), 'd.json': file('dealer.json') };
const argv = ['import', '--machines', 'm.csv', '--units', 'u.csv', '--dealer', 'd.json'];
const { asOf } = JSON.parse(demoCatalogue) as CatalogueDocument;

const imported = async (changed: Partial<Record<keyof typeof files, string | Uint8Array>> = {}, ...more: readonly string[]) => {
  const ran = await runWith({ ...files, ...changed } as typeof files, ...argv, '-o', 'out.json', ...more);
  const text = ran.written?.['out.json'];
  return { ...ran, catalogue: text === undefined ? undefined : (JSON.parse(text) as CatalogueDocument) };
};

/** Without what tells how it was made; of two ratings the nearer first, as the columns have them. */
const meant = (catalogue: CatalogueDocument) => ({ ...catalogueOf(catalogue), version: undefined });

test('the demo’s tables give the demo: no fault, no query, and all of it the same in SI', async () => {
  const { code, err, out, catalogue } = await imported({}, '--as-of', asOf);
  expect({ code, err }).toEqual({ code: 0, err: [] });
  expect(out.at(-1)).toContain('12 machines and 28 units');
  expect(readCatalogue(catalogue).faults).toEqual([]);
  expect(meant(catalogue!)).toEqual(meant(JSON.parse(demoCatalogue) as CatalogueDocument));
});

test('so a buyer’s shortlist is the same, but for the version it names', async () => {
  const { catalogue } = await imported({}, '--as-of', asOf);
  const shortlist = async (lot: string) => {
    const { out } = await runWith({ lot, buyer: demoAnswers('hay-and-barn') }, 'shortlist', '--catalogue', 'lot', '--answers', 'buyer', '--format', 'json');
    return { ...(JSON.parse(out[0]!) as object), catalogue: undefined };
  };
  expect(await shortlist(JSON.stringify(catalogue))).toEqual(await shortlist(demoCatalogue));
}, aMinute);

test('the version is a hash of what is written, the day is today’s unless it is said', async () => {
  const { catalogue } = await imported();
  expect(catalogue).toMatchObject({ asOf: today, version: versionOf(catalogue!) });
  expect(catalogue!.version).toMatch(/^sha256-[0-9a-f]{64}$/);
  const other = await imported({}, '--as-of', '2026-01-02');
  expect(other.catalogue).toMatchObject({ asOf: '2026-01-02' });
  expect(other.catalogue!.version).not.toBe(catalogue!.version);
});

test('without -o the catalogue is all that goes to standard output', async () => {
  const { code, out, err } = await runWith(files, ...argv);
  expect(code).toBe(0);
  expect(out).toHaveLength(1);
  expect(readCatalogue(JSON.parse(out[0]!)).faults).toEqual([]);
  expect(err.at(-1)).toContain('12 machines');
});

test('one table alone leaves the other of the dealer’s JSON as it is', async () => {
  const { written, code } = await runWith({ 'u.csv': files['u.csv'], lot: demoCatalogue }, 'import', '--units', 'u.csv', '--dealer', 'lot', '-o', 'out');
  expect(code).toBe(0);
  expect((JSON.parse(written!.out!) as CatalogueDocument).machines).toEqual((JSON.parse(demoCatalogue) as CatalogueDocument).machines);
});

test('faults have file, row and column, the rest is written all the same, and it ends with 1', async () => {
  const rows = files['u.csv'].split('\n');
  const wrong = [rows[0], rows[1]!.replace('14250', 'call us'), rows[2]!.replace('hydrostatic', 'hydrostatc'), ...rows.slice(3)].join('\n');
  const { code, err, out, catalogue } = await imported({ 'u.csv': wrong });
  expect(code).toBe(1);
  expect(err).toHaveLength(2);
  expect(err[0]).toMatch(/^u\.csv:2:8 price \(USD\): read "call us", expected a figure such as 14250: /);
  expect(err[1]).toMatch(/^u\.csv:3:29 transmission: read "hydrostatc", expected one of .*nearest is hydrostatic.*row is left out$/);
  for (const line of err) expect(line).toMatch(faultForm);
  expect(catalogue!.units).toHaveLength(27);
  expect(catalogue!.units![0]).not.toHaveProperty('price');
  expect(out.at(-1)).toContain('without what 2 faults left out');
});

test('queries and notices say so, and end with 0', async () => {
  const { code, err } = await imported({ 'm.csv': files['m.csv'].replace('56.6', '1438') }, '--language', 'de');
  expect(code).toBe(0);
  expect(err).toEqual([expect.stringMatching(/^Rückfrage: m\.csv:2:15 wheelbase \(in\): gelesen 1438 in, erwartet .*1\.438 mm würde passen/)]);
});

test('separators, decimal commas, encodings of a spreadsheet elsewhere', async () => {
  const text = 'Hersteller;name;id;frame;tier;from year;years are;Gewicht (kg);Radstand (mm)\r\nMühle;Rill;rill;subcompact;economy;2016;model;628,5;1.438\r\n';
  const latin = Uint8Array.from([...text].map((letter) => letter.codePointAt(0)!));
  const { code, err, catalogue } = await imported({ 'm.csv': latin, 'u.csv': 'id;machine\nu-1;rill\n' });
  expect(code).toBe(0);
  expect(err).toEqual([expect.stringMatching(/^notice: m\.csv:1:1 .*Windows-1252/)]);
  expect(catalogue!.machines[0]).toMatchObject({ make: 'Mühle', mass: { value: 628.5, unit: 'kg' }, wheelbase: { value: 1438, unit: 'mm' } });
});

test('a dealer’s own headings are named in a file', async () => {
  const table = files['m.csv'].replace(/^id,name/, 'id,Bezeichner').replace('mass (lb)', 'Leermasse (lb)');
  const without = await imported({ 'm.csv': table });
  expect([without.code, without.err[0]]).toEqual([1, expect.stringContaining('a column name')]);
  const own = { machines: { Bezeichner: 'name', 'Leermasse (lb)': 'mass (lb)' } };
  const ran = await runWith({ ...files, 'm.csv': table, own: JSON.stringify(own) }, ...argv, '--columns', 'own', '-o', 'out.json');
  expect([ran.code, ran.err]).toEqual([0, []]);
  const slip = await runWith({ ...files, own: '{"machines": {"a": "mas"}}' }, ...argv, '--columns', 'own');
  expect([slip.code, slip.err]).toEqual([1, [expect.stringContaining('(nearest: mass)')]]);
});

test.each<[string, Partial<Record<keyof typeof files, string>>, RegExp]>([
  ['no rows', { 'u.csv': 'id,machine\n' }, /^u\.csv:1:1 units: /],
  ['an empty file', { 'u.csv': '' }, /^u\.csv:1:1 units: /],
  ['a slip in the dealer’s JSON', { 'd.json': file('dealer.json').replace('"currency": "USD"', '"currency": "usd"') }, /^d\.json:\d+:\d+ dealer\.currency: read "usd", expected a currency/],
  ['no JSON at all', { 'd.json': 'dealer' }, /^d\.json:1:1 /],
])('%s: told, in one line', async (_what, changed, first) => {
  const { code, err } = await imported(changed);
  expect(code).toBe(1);
  expect(err[0]).toMatch(first);
});

test.each<[string, string[], string]>([
  ['no dealer', ['import', '--units', 'u.csv'], '--dealer FILE'],
  ['two files from standard input', ['import', '--units', '-', '--machines', '-', '--dealer', 'd.json'], 'standard input'],
  ['a day that is none', [...argv, '--as-of', 'tomorrow'], '--as-of'],
  ['a separator nobody knows', [...argv, '--separator', 'comm'], '(nearest: comma)'],
  ['an option with a letter, twice', [...argv, '-o', 'a', '--output', 'b'], 'twice'],
])('%s is refused with 2', async (_what, typed, expected) => {
  const { code, err } = await runWith(files, ...typed);
  expect(code).toBe(2);
  expect(err[0]).toContain(expected);
});

test('files that aren’t there are told', async () => {
  const { code, err } = await runWith({ 'd.json': files['d.json'] }, ...argv);
  expect([code, err]).toEqual([1, ['m.csv: there is no such file', 'u.csv: there is no such file']]);
});

test('a long file tells how far it is', async () => {
  const many = `id,machine\n${Array.from({ length: 25_000 }, (_, index) => `u-${index},rill\n`).join('')}`;
  const { code, err, catalogue } = await imported({ 'u.csv': many });
  expect([code, catalogue!.units!.length]).toEqual([0, 25_000]);
  expect(err).toEqual(['u.csv: 10000 of 25000 rows', 'u.csv: 20000 of 25000 rows']);
}, aMinute);

test('what a cell says can’t move the cursor or begin a line of its own', async () => {
  const { err } = await imported({ 'u.csv': 'id,machine,status\nu-1,rill,"a\u202eb\u2028c\n\u001b[2J"\n' });
  expect(err.length).toBeGreaterThan(0);
  for (const line of err) expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
});
