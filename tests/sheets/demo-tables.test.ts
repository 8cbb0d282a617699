import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { csvOf, headingsOf, limits, tableOf, type SheetKind, type Takes } from '../../src/sheets/sheets.ts';
import { demoCatalogue } from '../cli/fake-io.ts';
import { root } from '../support/sources.ts';

const { machines, units, asOf: _asOf, ...dealer } = JSON.parse(demoCatalogue) as CatalogueDocument;

const kinds: Readonly<Record<Takes['as'], string>> = {
  id: 'id', text: 'text', link: 'https address', 'yes-no': 'yes or no', whole: 'whole number', year: 'year', number: 'number', share: '0 to 1, or %', hours: 'hours',
  decibels: 'dB(A)', day: 'day', money: 'money', pairs: 'pairs with +', amount: '', choice: '', list: '',
};
const takes = (each: Takes): string => (each.as === 'amount' ? each.of : each.as === 'choice' ? each.words.join(', ') : each.as === 'list' ? `${takes(each.each)}, with ; between` : kinds[each.as]);

const table = (sheet: SheetKind) => headingsOf(sheet).map(({ heading, field, takes: what, example, also = [], needed }) =>
  `| ${needed ? `**${heading}**` : heading} | ${takes(what)} | ${example} | \`${field}\` | ${also.join(', ')} |\n`).join('');

const guide = `# Headings of the tables

Written by \`REGEN=1 npx vitest run --config tests/vitest.config.ts tests/sheets/demo-tables.test.ts\` from
\`src/sheets/headings\`. How the tables are read is told in the [README](../../README.md#a-catalogue-from-a-spreadsheet).

Headings in bold are needed. A unit may stand behind a heading in brackets, \`mass (kg)\`, or in the cell, \`800 lb\`. Where the
field has \`[]\` there may be several: \`loader 2 breakout\`, \`tyre 3 type\`.

## Machines

| heading | takes | example | field | read as the same |
| --- | --- | --- | --- | --- |
${table('machines')}
## Units

| heading | takes | example | field | read as the same |
| --- | --- | --- | --- | --- |
${table('units')}`;

// Ends of lines as Git keeps them: a checkout may turn those of RFC 4180 into its own.
const files: Readonly<Record<string, string>> = {
  'machines.csv': csvOf(tableOf('machines', machines).rows).replaceAll('\r\n', '\n'),
  'units.csv': csvOf(tableOf('units', units ?? []).rows).replaceAll('\r\n', '\n'),
  'dealer.json': `${JSON.stringify(dealer, undefined, 1)}\n`,
  'headings.md': guide,
};

test.each(Object.entries(files))('demo/csv/%s is made of the demo and of the headings (REGEN=1 writes it)', (name, made) => {
  const path = `${root}/demo/csv/${name}`;
  if (process.env.REGEN) writeFileSync(path, made);
  expect(readFileSync(path, 'utf8')).toBe(made);
});

test('the whole of the demo has room in tables', () => {
  expect(tableOf('machines', machines).notHeld).toEqual([]);
  expect(tableOf('units', units ?? []).notHeld).toEqual([]);
});

test('every documented heading fits into one file, with several of a thing', () => {
  const several = 5;
  expect(headingsOf('machines').length + several * headingsOf('machines').filter(({ field }) => field.includes('[]')).length).toBeLessThan(limits.columns);
});
