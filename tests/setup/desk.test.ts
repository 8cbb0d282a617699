import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Desk } from '../../src/setup/desk.ts';
import { type View } from '../../src/setup/view.ts';
import { blankBase } from '../../src/setup/blank.ts';
import { withFrames } from '../../src/setup/frames.ts';
import { groupsOf } from '../../src/setup/groups.ts';
import { idOf, idsFrom } from '../../src/setup/ids.ts';
import { typedFigure, withFigure } from '../../src/setup/view-of-figures.ts';
import { pasted } from '../../src/setup/pasted.ts';
import { allAtOnce, type SheetKind } from '../../src/sheets/sheets.ts';

const file = (path: string) => readFileSync(new URL(`../../demo/${path}`, import.meta.url));
const demo = JSON.parse(file('catalogue.json').toString()) as object;
const bytes = (text: string) => new TextEncoder().encode(text);
const deskWith = (tables: Partial<Record<SheetKind, string>>, document: object = demo) => {
  const desk = new Desk('2026-11-20', ['en']);
  expect(desk.openDocument('catalogue.json', document)).toEqual([]);
  for (const [sheet, text] of Object.entries(tables)) expect(allAtOnce(desk.open(sheet as SheetKind, `${sheet}.csv`, bytes(text)))).toEqual([]);
  return desk;
};
const view = (desk: Desk) => {
  const seen = allAtOnce(desk.view());
  return { ...seen, catalogue: desk.catalogue };
};
const codes = ({ groups }: View, weight = 'fault') => groups.filter(({ finding }) => finding.weight === weight).map(({ finding }) => finding.code);

const lot = [
  'id,machine,year,hours,price (USD),loader fitted',
  'lot-1,rill,2021,312,13750,yes', 'lot-2,rill,2020,abc,12500,yes', 'lot-3,rilll,2019,n/a,11000,no', 'lot-4,rill,2019,abc,-5,no',
].join('\r\n');

describe('a catalogue on the desk', () => {
  test('is the one that was opened, its tables with it', () => {
    const { catalogue, sheets, groups } = view(deskWith({}));
    // At the pins is at the pins, in whatever unit.
    const said = (document: object) => JSON.parse(JSON.stringify({ ...document, version: undefined, asOf: undefined }).replaceAll('"ahead":{"value":0,"unit":"in"}', '"ahead":{"value":0,"unit":"mm"}')) as object;
    expect(said(catalogue!)).toEqual(said(demo));
    expect([sheets.machines?.rows, sheets.units?.rows]).toEqual([12, 28]);
    expect(groups.filter(({ finding }) => finding.weight === 'fault')).toEqual([]);
  });

  test('comes to the same by way of its tables as CSV', () => {
    const desk = deskWith({});
    const before = view(desk).catalogue;
    const tables = { machines: desk.csv('machines'), units: desk.csv('units') };
    expect(view(deskWith(tables)).catalogue).toEqual(before);
  });

  test('that is none is refused by place, and what was there stays', () => {
    const desk = deskWith({});
    const before = view(desk).catalogue;
    expect(desk.openDocument('other.json', { ...demo, frames: 'none' }).map(({ place }) => place)).toEqual(['frames']);
    expect(view(desk).catalogue).toEqual(before);
  });
});

describe('what is wrong in a table', () => {
  test('is told once for all cells that say the same, and mended in all of them', () => {
    const desk = deskWith({ units: lot });
    const found = view(desk);
    const group = found.groups.find(({ finding }) => finding.code === 'cell.not-a-number')!;
    expect(group.rows).toEqual([3, 5]);
    desk.mend('units', group.finding.column!, group.rows, '250');
    expect(codes(view(desk))).not.toContain('cell.not-a-number');
    expect(view(desk).catalogue!.units!.find(({ id }) => id === 'lot-2')!.hours).toBe(250);
  });

  test('leaves out no row in silence: each is in the catalogue or in a fault', () => {
    const { catalogue, groups } = view(deskWith({ units: lot }));
    expect(catalogue!.units!.map(({ id }) => id)).toEqual(['lot-1', 'lot-2', 'lot-4']);
    expect(groups.filter(({ finding }) => finding.dropsRow).flatMap(({ rows }) => rows)).toEqual([4]);
    expect(catalogue!.units!.find(({ id }) => id === 'lot-4')!.price).toBe(undefined);
  });

  test('goes, where a column is taken for another', () => {
    const desk = deskWith({ units: lot.replace('hours', 'how many h') });
    const before = view(desk);
    expect(before.sheets.units!.mapping[3]?.field).not.toBe('hours');
    desk.map('units', before.sheets.units!.mapping.map((taken, at) => (at === 3 ? { field: 'hours' } : taken)));
    expect(view(desk).catalogue!.units![0]!.hours).toBe(312);
  });

  test('of ten thousand rows is one thing to mend', () => {
    const rows = Array.from({ length: 10_000 }, (_, at) => `u-${at},rill,2020,n/a,12500,yes`);
    const desk = deskWith({ units: [lot.split('\r\n')[0], ...rows].join('\n') });
    const group = view(desk).groups.find(({ finding }) => finding.code === 'cell.said-unknown')!;
    expect(group.rows.length).toBe(10_000);
  });
});

test('every change can be taken back, one after the other', () => {
  const change = fc.record({ column: fc.integer({ min: 1, max: 9 }), rows: fc.uniqueArray(fc.integer({ min: 2, max: 5 }), { minLength: 1 }), text: fc.string() });
  fc.assert(fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
    const desk = new Desk('2026-11-20', ['en']);
    allAtOnce(desk.open('units', 'lot.csv', bytes(lot)));
    const before = desk.csv('units');
    for (const { column, rows, text } of changes) desk.mend('units', column, rows, text);
    for (const _ of changes) desk.undo();
    expect(desk.csv('units')).toBe(before);
  }), { numRuns: 50 });
});

test('a row is added by its fields, to a table that isn’t there yet too', () => {
  const desk = new Desk('2026-11-20', ['en']);
  desk.add('machines', { id: 'plum', name: 'Plum', make: 'Orchard', frame: 'small', tier: 'economy', 'years.from': '2015', 'years.meant': 'model', mass: '1,500 lb' });
  const { catalogue, base } = view(desk);
  expect(catalogue!.machines).toEqual([expect.objectContaining({ id: 'plum', mass: { value: 1500, unit: 'lb' } })]);
  expect(base.frames).toEqual([{ id: 'small', name: 'Small compact', order: 1 }]);
  desk.add('machines', { id: 'pear', name: 'Pear', make: 'Orchard', frame: 'large', tier: 'deluxe', 'years.from': '2018', 'years.meant': 'model' });
  expect(view(desk).catalogue!.machines.map(({ id, mass }) => [id, mass?.value])).toEqual([['plum', 1500], ['pear', undefined]]);
});

test('usual frames that machines name stand in the trade’s order, and behind those the dealer has; another word may be a slip', () => {
  expect(withFrames(blankBase, ['large', 'smal', 'subcompact']).frames.map(({ id }) => id)).toEqual(['subcompact', 'large']);
  expect(withFrames(blankBase, ['smal']).frames.map(({ id }) => id)).toContain('small');
  const own = { ...blankBase, frames: [{ id: 'large', name: 'Big ones', order: 7 }] };
  expect(withFrames(own, ['small', 'large']).frames).toEqual([...own.frames, { id: 'small', name: 'Small compact', order: 8 }]);
});

test('a cell that a spreadsheet would reckon with leaves as text', () => {
  const desk = deskWith({ units: lot });
  desk.mend('units', 1, [2], '=HYPERLINK("https://elsewhere.example")');
  // OWASP ASVS 5.0, 1.2.10: a quote before what begins a formula.
  expect(desk.csv('units')).toContain('"\'=HYPERLINK(""https://elsewhere.example"")"');
});

test('groups are in the order of what must be done', () => {
  const { groups } = view(deskWith({ units: lot }));
  const order = ['fault', 'query', 'notice'];
  const weights = groups.map(({ finding }) => order.indexOf(finding.weight));
  expect(weights).toEqual([...weights].sort());
  expect(groupsOf([])).toEqual([]);
});

describe('a dealer’s own figure', () => {
  test.each([['30', 30], ['30,5', 30.5], ['18 in', { value: 18, unit: 'in' }], ['a lot', undefined], ['', undefined]] as const)('%j is read as %j', (text, read) => expect(typedFigure(text)).toEqual(read));

  test('of safety is taken on the safe side alone', () => {
    expect(withFigure({}, 'overhead.clearance', '18')).toEqual({ 'overhead.clearance': 18 });
    expect(withFigure({}, 'overhead.clearance', '6')).toBe(undefined);
    expect(withFigure({ 'overhead.clearance': 18 }, 'overhead.clearance', ' ')).toEqual({});
  });
});

test('the lines to paste are text, whatever a dealer is called', () => {
  const base = { ...blankBase, dealer: { ...blankBase.dealer, name: '"><script>alert(1)</script>', phone: '555 0100' } };
  const lines = pasted(base, { folder: '/files', catalogue: '/c.json' }, { file: 'acre-to-axle.en.js', integrity: 'sha384-x' });
  expect(lines).toContain('src="/files/acre-to-axle.en.js" integrity="sha384-x"');
  expect(lines).not.toContain('<script>alert');
  expect(lines).not.toContain('languages=');
  expect(pasted(base, { folder: '/files', catalogue: '/c.json' }, undefined, ['en', 'es'])).toContain('languages="en es"');
});

test.each([
  [['Rill Plus', 'rill plus', '', 'Burdock'], ['rill-plus', 'rill-plus-2', '', 'burdock']],
  [['a', 'a-2', 'A'], ['a', 'a-2', 'a-3']],
])('names %j give the ids %j', (names, ids) => expect(idsFrom(names)).toEqual(ids));

test.each([['Hollowmere Valley Tractors', 'hollowmere-valley-tractors'], ['  Éloi & Fils ', 'eloi-fils'], ['…', 'my-lot']])('%j gives the id %s', (name, id) => expect(idOf(name)).toBe(id));
