import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Desk } from '../../src/setup/desk.ts';
import { blankBase } from '../../src/setup/blank.ts';
import { framesWith } from '../../src/setup/frames.ts';
import type { Group } from '../../src/setup/groups.ts';
import { yearsIn } from '../../src/setup/years.ts';
import { allAtOnce, type FindingCode } from '../../src/sheets/sheets.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

const machines = [
  'id,name,make,frame,tier,from year,years are,mass,loader lift at pins,engine power', 'plum,Plum,Orchard,small,economy,2015,model,1500 lb,600 lb,20 hp', 'pear,Pear,Orchard,mid,deluxe,2018,model,2100 lb,900 lb,30 hp',
].join('\n');

function deskWith(table: string, sheet: 'machines' | 'units' = 'machines') {
  const desk = new Desk('2026-11-20', ['en']);
  desk.set({ id: 'lot', dealer: { ...blankBase.dealer, terms: { en: { guidance: 'Ours.' } } } }, '2026-11-20');
  if (sheet === 'units') allAtOnce(desk.open('machines', 'machines.csv', bytes(machines)));
  allAtOnce(desk.open(sheet, `${sheet}.csv`, bytes(table)));
  return desk;
}
const look = (desk: Desk) => allAtOnce(desk.view());
const groupOf = (desk: Desk, code: FindingCode): Group | undefined => look(desk).groups.find(({ finding }) => finding.code === code);
const faults = (desk: Desk) => look(desk).groups.filter(({ finding }) => finding.weight === 'fault').map(({ finding }) => finding.code);

describe('a finding is mended where it is told', () => {
  test('of a word that is none: by one of the words, the likeliest first', () => {
    const desk = deskWith(machines.replace('deluxe', 'delux'));
    const { mend, rows, finding } = groupOf(desk, 'cell.word')!;
    expect(mend).toMatchObject({ how: 'cells', words: expect.arrayContaining(['economy', 'deluxe']), options: ['deluxe'], mayBeBlank: false });
    desk.mend('machines', finding.column!, rows, 'deluxe');
    expect(faults(desk)).toEqual([]);
  });

  test('of a number that can be read in two ways: by either, or by saying how the file writes numbers', () => {
    const desk = deskWith(machines.replace('1500 lb', '1.500 lb'));
    expect(groupOf(desk, 'cell.ambiguous')!.mend).toMatchObject({ options: ['1.5 lb', '1500 lb'] });
    desk.decimals('machines', ',');
    look(desk);
    expect(desk.catalogue!.machines[0]!.mass).toEqual({ value: 1500, unit: 'lb' });
    desk.decimals('machines', '.');
    look(desk);
    expect(desk.catalogue!.machines[0]!.mass).toEqual({ value: 1.5, unit: 'lb' });
  });

  test('of what a row lacks: by filling it in, for all rows that lack the same', () => {
    const desk = deskWith(machines.replaceAll(/economy|deluxe/g, ''));
    const { mend, rows } = groupOf(desk, 'row.without')!;
    expect([mend, rows]).toEqual([{ how: 'fields', fields: ['tier'] }, [2, 3]]);
    desk.fill('machines', rows, { tier: 'standard' });
    look(desk);
    expect(desk.catalogue!.machines.map(({ tier }) => tier)).toEqual(['standard', 'standard']);
  });

  test('of what a part lacks: at once for all rows that lack it, whatever stands beside it', () => {
    const desk = deskWith(machines.split('\n').map((row, at) => `${row},${['tyre width over rear', '49 in', '56 in'][at]}`).join('\n'));
    const { mend, rows } = groupOf(desk, 'cell.needs')!;
    expect([mend, rows]).toEqual([{ how: 'fields', fields: ['tyres[1].type'] }, [2, 3]]);
    desk.fill('machines', rows, { 'tyres[1].type': 'turf' });
    expect(faults(desk)).toEqual([]);
    expect(desk.catalogue!.machines.map(({ tyres }) => tyres?.[0]?.type)).toEqual(['turf', 'turf']);
  });

  test('of a column that is missing: from another column, or the same in every row', () => {
    const desk = deskWith(machines.split('\n').map((row) => row.split(',').filter((_, at) => at !== 0 && at !== 6).join(',')).join('\n'));
    expect(look(desk).groups.filter(({ finding }) => finding.code === 'column.missing').map(({ mend }) => mend)).toEqual([
      { how: 'missing', field: 'id', words: undefined }, { how: 'missing', field: 'years.meant', words: ['model', 'build'] },
    ]);
    desk.fillFrom('machines', 'id', 1);
    desk.fill('machines', undefined, { 'years.meant': 'model' });
    look(desk);
    expect(desk.catalogue!.machines.map(({ id }) => id)).toEqual(['plum', 'pear']);
  });

  test('of a row that doesn’t part right: by writing it anew', () => {
    const desk = deskWith(machines.replace('Orchard,small', 'Orchard, Ltd,small'));
    const { mend, rows } = groupOf(desk, 'row.ragged-long')!;
    expect(mend).toEqual({ how: 'line' });
    desk.rewrite('machines', rows[0]!, desk.line('machines', rows[0]!).replace('Orchard," Ltd"', '"Orchard, Ltd"'));
    expect(faults(desk)).toEqual([]);
    expect(desk.catalogue!.machines[0]).toMatchObject({ make: 'Orchard, Ltd', frame: 'small' });
  });

  test('of a column nobody knows and of bare numbers: by saying what they are', () => {
    const desk = deskWith(machines.replace('mass', 'how heavy').replace('1500 lb', '1500').replace('2100 lb', '2100'));
    expect(groupOf(desk, 'column.not-taken')!.mend).toEqual({ how: 'column' });
    const { mapping } = look(desk).sheets.machines!;
    desk.map('machines', mapping.map((taken, at) => (at === 7 ? { field: 'mass' } : taken)));
    expect(groupOf(desk, 'column.unit-assumed')!.mend).toMatchObject({ how: 'unit', taken: 'lb', units: expect.arrayContaining(['lb', 'kg']) });
    desk.map('machines', mapping.map((taken, at) => (at === 7 ? { field: 'mass', unit: 'kg' } : taken)));
    look(desk);
    expect(desk.catalogue!.machines[0]!.mass).toEqual({ value: 1500, unit: 'kg' });
  });

  test('of a size that isn’t there: by one that is, or by taking it for one', () => {
    const desk = deskWith(machines.replace('small', 'smal').replace('mid', 'small'));
    expect(groupOf(desk, 'row.no-frame')!.mend).toMatchObject({ options: ['small'] });
    expect(groupOf(deskWith(machines.replace('small', 'sub compact')), 'row.no-frame')!.mend).toMatchObject({ options: expect.arrayContaining(['subcompact']) });
    const { base } = look(desk);
    desk.set({ ...base, frames: framesWith(base.frames, ['smal']) }, '2026-11-20');
    expect(faults(desk)).toEqual([]);
  });

  test('of a column that says whether a thing is there, under the name of the thing: by taking it for that', () => {
    const desk = deskWith('id,machine,Loader?\nu-1,plum,Y\nu-2,pear,N', 'units');
    expect(groupOf(desk, 'row.no-part')!.mend).toMatchObject({ how: 'cells', better: 'fitted.loader' });
    const { mapping } = look(desk).sheets.units!;
    desk.map('units', mapping.map((taken) => (taken?.field === 'loader' ? { field: 'fitted.loader' } : taken)));
    look(desk);
    expect(desk.catalogue!.units!.map(({ fitted }) => fitted?.loader)).toEqual([true, false]);
  });

  test('of a row that has no place here: by leaving it out, and the others keep their numbers', () => {
    const desk = deskWith('id,machine,hours\nu-1,none,5\nu-2,plum,abc', 'units');
    const { rows } = groupOf(desk, 'row.no-machine')!;
    desk.drop('units', rows);
    expect(groupOf(desk, 'row.no-machine')).toBe(undefined);
    expect(groupOf(desk, 'cell.not-a-number')!.rows).toEqual([3]);
    expect(desk.csv('units')).toBe('id,machine,hours\r\nu-2,plum,abc\r\n');
  });

  test.each([['2015-2019', '2015', '2019'], ['2018 –', '2018', ''], ['2016 to 2022', '2016', '2022'], ['2020', undefined, undefined], ['2015-19', undefined, undefined]])('of years in one cell: %j is %j to %j', (cell, from, to) => {
    expect(yearsIn(cell)).toEqual(from === undefined ? undefined : { from, to });
  });

  test('of years in one cell: by parting them in all rows', () => {
    const desk = deskWith(machines.replace(',2015,', ',2015-2019,').replace(',2018,', ',2018 to 2021,'));
    const before = faults(desk);
    const { mend, finding } = look(desk).groups.find(({ mend: how }) => how?.how === 'cells' && how.isSpan)!;
    expect(mend).toMatchObject({ how: 'cells' });
    desk.partYears('machines', finding.column!);
    expect(faults(desk)).toEqual([]);
    expect(desk.catalogue!.machines.map(({ years }) => [years.from, years.to])).toEqual([[2015, 2019], [2018, 2021]]);
    desk.undo();
    expect(faults(desk)).toEqual(before);
  });

  test('unless its file is no table', () => {
    const desk = new Desk('2026-11-20', ['en']);
    expect(allAtOnce(desk.open('units', 'book.xlsx', new Uint8Array([0x50, 0x4b, 3, 4, 0, 0]))).map(({ code }) => code)).toEqual(['file.nul']);
    expect(look(desk).sheets).toEqual({});
  });
});

test('what stands behind the last column never slips into a new one', () => {
  const cell = fc.stringMatching(/^[a-z]{0,4}$/);
  fc.assert(fc.property(fc.array(fc.array(cell, { minLength: 3, maxLength: 6 }), { minLength: 1, maxLength: 5 }), (rows) => {
    const desk = deskWith(['id,name,notes', ...rows.map((row) => row.join(','))].join('\n'));
    desk.fill('machines', rows.map((_, at) => at + 2), { make: 'Orchard' });
    const { headings } = look(desk).sheets.machines!;
    rows.forEach((row, at) => {
      const cells = desk.line('machines', at + 2).split(',');
      expect(cells.slice(0, 3)).toEqual(row.slice(0, 3));
      expect(cells[headings.indexOf('make')]).toBe('Orchard');
      expect(cells.slice(headings.length)).toEqual(row.slice(3));
    });
  }), { numRuns: 60 });
});

test('a file is parted anew by another sign, and its kind is known by its headings', () => {
  const desk = new Desk('2026-11-20', ['en']);
  allAtOnce(desk.open(undefined, 'inventory.csv', bytes('id;machine;hours;price\nu-1;plum;74;9000')));
  expect(look(desk).sheets).toMatchObject({ units: { dialect: { separator: ';' }, headings: ['id', 'machine', 'hours', 'price'] } });
  allAtOnce(desk.part('units', ','));
  expect(look(desk).sheets.units!.headings).toEqual(['id;machine;hours;price']);
  allAtOnce(desk.open(undefined, 'a.csv', bytes(machines)));
  expect(Object.keys(look(desk).sheets).sort()).toEqual(['machines', 'units']);
});

test('what is sold stays away when it is told to, under a version of its own', () => {
  const desk = deskWith('id,machine,status,sold for (USD)\nu-1,plum,available,\nu-2,pear,sold,9000', 'units');
  const whole = look(desk).made!;
  expect([whole.units, whole.sold]).toEqual([2, 1]);
  desk.set({ id: 'lot', dealer: blankBase.dealer }, '2026-11-20', true);
  const less = look(desk).made!;
  expect([less.units, less.sold]).toEqual([1, 1]);
  expect(JSON.stringify(desk.catalogue)).not.toContain('9000');
  expect(less.version).not.toBe(whole.version);
});
