import { expect, test } from 'vitest';
import { assembled, base, codes, demo, machineWith, read } from './reading.ts';
import { allAtOnce, assembling, readBase } from '../../src/sheets/sheets.ts';

const machine = (headings: string, cells: string) => {
  const { entries: [first], findings } = read('machines', machineWith(headings, cells));
  return { entry: first?.entry, faults: findings.filter(({ weight }) => weight === 'fault') };
};

test('a column is wanted that no row can do without, and is told once', () => {
  expect(read('units', 'machine,price\nrill,5\nrill,6\n')).toMatchObject({ entries: [], findings: [{ code: 'column.missing', facts: { heading: 'id' }, dropsRow: true }] });
});

test('headings that are blank, twice, or nobody’s: told, and the rest is read', () => {
  const { entries, findings } = read('units', 'id,machine,price,price (USD),,pric of,salesman\nu-1,rill,5,6,x,y,z\n');
  expect(entries).toMatchObject([{ entry: { price: { value: 5 } } }]);
  expect(findings.map(({ code, weight, column }) => [code, weight, column])).toEqual([
    ['column.twice', 'fault', 4], ['column.blank-heading', 'query', 5], ['column.not-taken', 'query', 6], ['column.not-taken', 'notice', 7],
  ]);
  expect(read('units', 'id,machine,,\nu-1,rill,,\n').findings).toEqual([]);
});

test('a loader is made of what its columns say', () => {
  const { entry, faults } = machine('loader lift at pins (lb),loader lift 500 mm ahead (lb),loader lift height (in),loader lift with bucket,loader 2 lift at pins (kg)', '515,385,70.5,no,300');
  expect(faults).toEqual([]);
  const beside = { height: { value: 70.5, unit: 'in' }, bucketOn: false };
  expect(entry?.loaders).toEqual([
    {
      id: 'rill-loader', name: 'Rill', availability: 'unknown',
      ratings: [{ ahead: { value: 0, unit: 'mm' }, load: { value: 515, unit: 'lb' }, ...beside }, { ahead: { value: 500, unit: 'mm' }, load: { value: 385, unit: 'lb' }, ...beside }],
    },
    { id: 'rill-loader-2', name: 'Rill', availability: 'unknown', ratings: [{ ahead: { value: 0, unit: 'mm' }, load: { value: 300, unit: 'kg' } }] },
  ]);
});

test('a lift that can’t be read takes the other of its loader along, for one alone would be stretched', () => {
  const { entry, faults } = machine('loader lift at pins (lb),loader lift 500 mm ahead (lb)', '515,38S');
  expect(entry?.loaders).toMatchObject([{ ratings: [] }]);
  expect(faults).toMatchObject([{ code: 'cell.unit', column: 9 }]);
});

test.each<[string, string, string, readonly string[]]>([
  ['a cab without a word on heat', 'cab availability', 'option', ['cab heat', 'cab air conditioning']],
  ['a deck without a width', 'deck price', '2390', ['deck width']],
  ['a list price without its year', 'list price', '17350', ['list price year']],
  ['a tyre without a width', 'tyre type', 'turf', ['tyre width over rear']],
  ['a lift without its distance', 'loader other lift (lb)', '400', ['loader other lift ahead']],
  ['a used price without age and hours', 'used price 2', '14900', ['used price 2 age', 'used price 2 hours']],
])('%s is left out and told', (_what, heading, cell, headings) => {
  const { entry, faults } = machine(heading, cell);
  expect(faults).toMatchObject([{ code: 'cell.needs', row: 2, column: 8, facts: { headings } }]);
  expect(Object.keys(entry!).filter((key) => ['cabs', 'decks', 'listPrice', 'tyres', 'typicalPrices'].includes(key))).toEqual([]);
});

test('none is not blank: the one says there is none, the other that nobody knows', () => {
  expect(machine('cab id,deck id', 'none,').entry).toMatchObject({ cabs: [] });
  expect(machine('cab id,deck id', 'none,').entry).not.toHaveProperty('decks');
  expect(machine('cab id,cab price', 'none,5').faults).toMatchObject([{ code: 'cell.none-and-more', column: 8 }]);
});

test.each(['status', 'recall open', 'seat belt', 'ROPS', 'loader fitted', 'imported'])('a slip in “%s” might hide what speaks against a unit: the row goes', (heading) => {
  const { entries, findings } = read('units', `id,machine,${heading}\nu-1,rill,zzz\nu-2,rill,\n`);
  expect(entries.map(({ row }) => row)).toEqual([3]);
  expect(findings).toMatchObject([{ weight: 'fault', row: 2, column: 3, dropsRow: true }]);
});

test('a slip in a figure leaves the figure out, and the row stays', () => {
  const { entries, findings } = read('units', 'id,machine,price,hours\nu-1,rill,call,7 x\n');
  expect(entries).toEqual([{ row: 2, entry: { id: 'u-1', machine: 'rill' } }]);
  expect(codes(findings)).toEqual([['cell.not-a-number', 2, 3], ['cell.not-a-number', 2, 4]]);
});

const unitsOf = (text: string) => {
  const units = read('units', text);
  const { catalogue, findings } = assembled({ units });
  return { units: catalogue?.units, findings: findings.map(({ code, row, column, dropsRow }) => [code, row, column, dropsRow ?? false]) };
};

test.each<[string, string, unknown[], boolean]>([
  ['no such machine', 'u-1,ril,2019,,', ['row.no-machine', 2, 2, true], false],
  ['no such loader', 'u-1,rill,2019,lodder,', ['row.no-part', 2, 4, true], false],
  ['no such implement', 'u-1,rill,2019,,grappel', ['cell.no-implement', 2, 5, false], true],
  ['a year before its machine', 'u-1,rill,1999,,', ['cell.year-outside', 2, 3, false], true],
])('%s: told by row and column', (_what, row, fault, stays) => {
  const { units, findings } = unitsOf(`id,machine,year,loader id,attachments\n${row}\nu-2,rill,2019,,\n`);
  expect(findings).toEqual([fault]);
  expect(units?.map(({ id }) => id)).toEqual(stays ? ['u-1', 'u-2'] : ['u-2']);
});

const line = (id: string, more: string) => `${id},Rill,Millrace,subcompact,economy,2016,model,${more}`;
test.each<[string, string, readonly string[], unknown[]]>([
  ['no such frame', 'mass (lb)', ['rill,Rill,Millrace,subcompct,economy,2016,model,5000', line('b', '1')], ['row.no-frame', 2, 4, true]],
  ['years turned around', 'to year', [line('rill', '2010'), line('b', '')], ['row.years-turned', 2, 8, true]],
  ['generations that overlap', 'line', [line('rill', 'x'), line('b', 'x')], ['row.years-overlap', 3, 6, true]],
  ['folded higher than up', 'height ROPS folded (in),height ROPS up (in)', [line('rill', '90,80')], ['cell.folded-higher', 2, 8, false]],
  ['more at the PTO than the engine has', 'PTO power (hp),engine power (hp)', [line('rill', '25,20')], ['cell.pto-above-engine', 2, 8, false]],
  ['a lift that grows with the distance', 'loader lift at pins (lb),loader lift 500 mm ahead (lb)', [line('rill', '400,500')], ['cell.ratings', 2, 8, false]],
])('%s: told by row and column, and left out', (_what, headings, rows, fault) => {
  const machines = read('machines', `id,name,make,frame,tier,from year,years are,${headings}\n${rows.join('\n')}\n`);
  const { catalogue, findings } = assembled({ machines, units: read('units', 'id,machine\n') });
  expect(findings.map(({ code, row, column, dropsRow }) => [code, row, column, dropsRow ?? false])).toEqual([fault]);
  expect(catalogue?.machines).toHaveLength(rows.length - (fault[3] ? 1 : 0));
  expect(catalogue?.machines[0]).not.toHaveProperty('height.ropsUp');
  expect(catalogue?.machines[0]?.loaders?.[0]?.ratings ?? []).toEqual([]);
});

test('a machine that goes takes its units along, each told', () => {
  const machines = read('machines', 'id,name,make,frame,tier,from year,years are\nrill,Rill,Millrace,nowhere,economy,2016,model\nb,B,Millrace,small,economy,2016,model\n');
  const { catalogue, findings } = assembled({ machines, units: read('units', 'id,machine\nu-1,rill\nu-2,b\n') });
  expect(catalogue?.units?.map(({ id }) => id)).toEqual(['u-2']);
  expect(findings.map(({ code, sheet, row }) => [code, sheet, row])).toEqual([['row.no-frame', 'machines', 2], ['row.no-machine', 'units', 2]]);
});

test('without any machine there is no catalogue', () => {
  expect(assembled({ machines: read('machines', 'id,name\na,b\n') })).toMatchObject({ catalogue: undefined, findings: [{ code: 'catalogue.no-machines' }] });
});

test('the dealer’s JSON may be a whole catalogue or lack its tables, and a slip in it is told by place', () => {
  const { machines: _m, units: _u, asOf: _a, format: _f, ...bare } = demo;
  expect(readBase(bare)).toMatchObject({ base: { id: 'hollowmere' }, findings: [] });
  expect(readBase(bare).base).not.toHaveProperty('machines');
  expect(base.machines).toHaveLength(demo.machines.length);
  expect(readBase({ ...bare, dealr: 1 }).findings).toMatchObject([{ code: 'dealer.faulty', place: 'dealr', facts: { nearest: 'dealer' } }]);
  for (const wrong of [null, [], 7, 'x', {}]) {
    expect(readBase(wrong).base).toBeUndefined();
    expect(readBase(wrong).findings.length).toBeGreaterThan(0);
  }
});

test('a fault in what no table holds stops it, and is told once', () => {
  const faulty = { ...base, rules: { 'loader.margn': 0.3 } };
  const { catalogue, findings } = allAtOnce(assembling({ base: faulty, asOf: demo.asOf, units: read('units', 'id,machine\nu-1,nobody\n') }));
  expect(catalogue).toBeUndefined();
  expect(findings.filter(({ sheet }) => sheet === 'dealer')).toMatchObject([{ code: 'dealer.faulty', place: 'rules.loader.margn', facts: { nearest: 'loader.margin' } }]);
});
