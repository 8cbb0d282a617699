import { expect, test } from 'vitest';
import { cellOf, codes, machineWith, read, type Given } from './reading.ts';

const machine = (heading: string, cell: string, given: Given = {}) => {
  const { entries: [first], findings } = cellOf(heading, cell, given);
  return { entry: first?.entry, codes: findings.filter(({ weight }) => weight !== 'notice').map(({ code }) => code) };
};
const mass = (cell: string, given: Given = {}) => {
  const { entry, codes } = machine('mass (lb)', cell, given);
  return codes.length > 0 ? codes.join() : entry?.mass?.value;
};

test.each<[cell: string, point: number | string | undefined, comma: number | string | undefined]>([
  ['', undefined, undefined],
  [' \t', undefined, undefined],
  ['NaN', 'cell.not-a-number', 'cell.not-a-number'],
  ['Infinity', 'cell.not-a-number', 'cell.not-a-number'],
  ['-5', 'cell.negative', 'cell.negative'],
  ['−5', 'cell.negative', 'cell.negative'],
  ['(5)', 'cell.negative', 'cell.negative'],
  ['0', 'cell.zero', 'cell.zero'],
  ['0,0', 'cell.zero', 'cell.zero'],
  ['1e999', 'cell.not-a-number', 'cell.not-a-number'],
  ['1E+03', 'cell.not-a-number', 'cell.not-a-number'],
  ['1,500', 1500, 1.5],
  ['1.500', 1.5, 1500],
  ['1.500,5', 1500.5, 1500.5],
  ['1,500.5', 1500.5, 1500.5],
  ['1 500', 1500, 1500],
  ['1\u202f500', 1500, 1500],
  ['12,5', 12.5, 12.5],
  ['½', 0.5, 0.5],
  ['1½', 1.5, 1.5],
  ['٣٥', 'cell.not-a-number', 'cell.not-a-number'],
  ['fifteen', 'cell.not-a-number', 'cell.not-a-number'],
  ['#REF!', 'cell.error', 'cell.error'],
  ['#N/A', 'cell.error', 'cell.error'],
  ['#####', 'cell.error', 'cell.error'],
  ['=1+1', 'cell.formula', 'cell.formula'],
  ['9'.repeat(400), 'cell.not-a-number', 'cell.not-a-number'],
])('a mass of "%s" is %s by a decimal point, %s by a decimal comma', (cell, point, comma) => {
  expect(mass(cell, { decimalMark: '.' })).toBe(point);
  expect(mass(cell, { decimalMark: ',' })).toBe(comma);
});

test('where nobody said which mark sets off decimals, a number that could be two is asked about', () => {
  const { entries, findings } = cellOf('mass (lb)', '1.500');
  expect(entries[0]!.entry.mass).toBeUndefined();
  expect(findings).toMatchObject([{ code: 'cell.ambiguous', weight: 'fault', row: 2, column: 8, read: '"1.500"', facts: { either: ['1.5', '1500'] } }]);
});

test.each(['n/a', 'N/A', '-', '?', 'unbekannt', 'k. A.'])('"%s" is unknown, and told', (cell) => {
  const { entries, findings } = cellOf('mass (lb)', cell);
  expect(entries[0]!.entry).not.toHaveProperty('mass');
  expect(findings).toMatchObject([{ code: 'cell.said-unknown', weight: 'notice', row: 2, column: 8 }]);
});

test.each<[string, string, Given, unknown]>([
  ['engine power', '25hp', {}, { value: 25, unit: 'hp' }],
  ['engine power', '18.5 kW', {}, { value: 18.5, unit: 'kW' }],
  ['engine power (kW)', '18.5', {}, { value: 18.5, unit: 'kW' }],
  ['engine power (kW)', '25 hp', {}, { value: 25, unit: 'hp' }],
  ['engine power', '25', { units: 'us' }, { value: 25, unit: 'hp' }],
  ['engine power', '25', { units: 'metric' }, { value: 25, unit: 'kW' }],
  ['wheelbase', '1435', { units: 'metric' }, { value: 1435, unit: 'mm' }],
  ['turning radius [ft]', '8.3', {}, { value: 8.3, unit: 'ft' }],
  ['mass (pounds)', '1385', {}, { value: 1385, unit: 'lb' }],
])('%s "%s" (%j) is %j', (heading, cell, given, expected) => {
  const { entry } = machine(heading, cell, { decimalMark: '.', ...given });
  expect([entry?.engine?.power, entry?.wheelbase, entry?.turningRadius, entry?.mass].find((each) => each !== undefined)).toEqual(expected);
});

test('a unit nobody wrote is told once a column, one that was written is not', () => {
  const rows = ['rill', 'tansy'].map((id) => `${id},Rill,Millrace,subcompact,economy,2016,model,1385,56 in`).join('\n');
  const { findings } = read('machines', `id,name,make,frame,tier,from year,years are,mass,wheelbase\n${rows}\n`);
  expect(findings).toMatchObject([{ code: 'column.unit-assumed', weight: 'notice', row: 2, column: 8, facts: { unit: 'lb' } }]);
});

test('a unit that isn’t one is named with the nearest', () => {
  expect(cellOf('wheelbase', '56 inn').findings).toMatchObject([{ code: 'cell.unit', facts: { unit: 'inn', nearest: 'in' } }]);
  expect(cellOf('wheelbase', '56 kg').findings).toMatchObject([{ code: 'cell.unit', facts: { unit: 'kg' } }]);
});

const listPrice = (cell: string, given: Given = {}) => {
  const { entries: [first], findings } = read('machines', machineWith('list price year,list price', `2026,"${cell}"`), { decimalMark: '.', ...given });
  return first?.entry.listPrice?.price.value ?? findings[0]?.code;
};

test.each<[string, Given, number | string]>([
  ['17350', {}, 17_350], ['$17,350', {}, 17_350], ['17,350 USD', {}, 17_350], ['US$ 17350.50', {}, 17_350.5], ['0', {}, 0],
  ['€17350', {}, 'cell.currency'], ['17350 EUR', {}, 'cell.currency'], ['17.350,00 €', { currency: 'EUR', decimalMark: ',' }, 17_350], ['12.000.-', { currency: 'CHF', decimalMark: ',' }, 12_000],
  ['-5', {}, 'cell.negative'], ['$-5', {}, 'cell.negative'], ['call', {}, 'cell.not-a-number'], ['17350 or so', {}, 'cell.not-a-number'],
])('a price of "%s" (%j) is %s', (cell, given, expected) => {
  expect(listPrice(cell, given)).toBe(expected);
});

test.each<[string, number | string]>([
  ['0.4', 0.4], ['40%', 0.4], ['40 %', 0.4], ['12.5%', 0.125], ['0', 0], ['1', 1], ['40', 'cell.range'], ['140%', 'cell.range'],
])('a share of "%s" is %s', (cell, expected) => {
  const { entry, codes } = machine('front axle share', cell, { decimalMark: '.' });
  expect(entry?.frontAxleShare ?? codes[0]).toBe(expected);
});

test.each<[string, boolean | string]>([
  ['yes', true], ['Y', true], ['TRUE', true], ['x', true], ['1', true], ['WAHR', true], ['Ja', true], ['sí', true], ['oui', true],
  ['no', false], ['FALSE', false], ['nein', false], ['0', false], ['maybe', 'cell.yes-no'], ['2', 'cell.yes-no'],
])('yes or no, "%s", is %s', (cell, expected) => {
  const { entry, codes } = machine('drawbar', cell);
  expect(entry?.drawbar ?? codes[0]).toBe(expected);
});

test('a word is read in any capitals, and a slip names the nearest', () => {
  expect(machine('exhaust', 'Particulate Filter').entry?.exhaust).toBe('particulate-filter');
  expect(machine('driven wheels', '4').entry?.drivenWheels).toBe(4);
  expect(cellOf('exhaust', 'catalist').findings).toMatchObject([{ code: 'cell.word', facts: { nearest: 'catalyst' } }]);
});

const unit = (heading: string, cell: string, given: Given = {}) => {
  const { entries: [first], findings } = read('units', `id,machine,${heading}\nu-1,rill,"${cell}"\n`, given);
  return { entry: first?.entry, findings };
};

/** ISO 8601 days of the Gregorian calendar; 2100 is no leap year, 2000 was one. */
test.each<[string, string, string | undefined]>([
  ['2026-09-14', 'en-US', '2026-09-14'], ['2026/9/4', 'en-US', '2026-09-04'], ['14.09.2026', 'de-DE', '2026-09-14'], ['4.9.2026', 'en-US', '2026-09-04'],
  ['9/14/2026', 'de-DE', '2026-09-14'], ['14/9/2026', 'en-US', '2026-09-14'], ['9/4/2026', 'en-US', '2026-09-04'], ['9/4/2026', 'en-GB', '2026-04-09'],
  ['2026-02-29', 'en-US', undefined], ['2024-02-29', 'en-US', '2024-02-29'], ['2100-02-29', 'en-US', undefined], ['2000-02-29', 'en-US', '2000-02-29'],
  ['2026-13-01', 'en-US', undefined], ['46279', 'en-US', undefined], ['Sep 14, 2026', 'en-US', undefined],
])('the day "%s" in %s is %s', (cell, locale, expected) => {
  const { entry, findings } = unit('listed on', cell, { locale });
  expect(entry?.listedOn).toBe(expected);
  expect(findings.some(({ code }) => code === 'cell.day')).toBe(expected === undefined);
});

test('a day that could be two is told', () => {
  expect(unit('listed on', '9/4/2026').findings).toMatchObject([{ code: 'cell.day-assumed', weight: 'notice', facts: { day: '2026-09-04' } }]);
  expect(unit('listed on', '9/9/2026').findings).toEqual([]);
});

test.each<[string, boolean]>([
  ['https://example.com/a.jpg', true], ['HTTPS://example.com/a.jpg', true], ['http://example.com/a.jpg', false], ['javascript:alert(1)', false],
  ['java\tscript:alert(1)', false], ['data:text/html,x', false], ['//evil.example/x', false], ['https://user:pw@example.com/x', false], ['https://a b/x', false],
  [`https://example.com/${'x'.repeat(5000)}`, false],
])('the picture "%s" is taken: %s', (cell, taken) => {
  const { entry, findings } = unit('photo', cell);
  expect(entry && 'photo' in entry).toBe(taken);
  expect(findings.length > 0).toBe(!taken);
});

test.each<[string, string]>([['a\u001b[2Jb', 'cell.control'], ['a\u0085b', 'cell.control'], ['x'.repeat(2001), 'cell.too-long']])(
  'a text with what no text has, or too much of it, is refused: %j', (cell, code) => {
    const { entry, findings } = unit('notes', cell);
    expect(entry).not.toHaveProperty('notes');
    expect(codes(findings)).toEqual([[code, 2, 3]]);
  },
);

test('a text stays as it is, markup and formulas too, in composed letters', () => {
  for (const cell of ['<script>alert(1)</script>', '{{x}} ${y}', '=SUM(A1:A2)', 'two\nlines', '👨‍👩‍👧']) expect(unit('notes', cell).entry?.notes).toBe(cell);
  expect(unit('notes', 'Mu\u0308ller').entry?.notes).toBe('Müller');
  expect(unit('notes', 'x'.repeat(2000)).entry?.notes).toHaveLength(2000);
});

test('lists and pairs', () => {
  expect(machine('rear PTO speeds', '540; 1000').entry?.rearPto?.speeds).toEqual([{ value: 540, unit: 'rpm' }, { value: 1000, unit: 'rpm' }]);
  expect(machine('rear PTO speeds', 'none').entry?.rearPto?.speeds).toEqual([]);
  expect(machine('not together', 'backhoe + hitch; loader + deck').entry?.notTogether).toEqual([['backhoe', 'hitch'], ['loader', 'deck']]);
  expect(machine('rear PTO speeds', '540; fast').codes).toEqual(['cell.not-a-number']);
  expect(cellOf('not together', 'backhoe, hitch')).toMatchObject({ entries: [], findings: [{ code: 'cell.pair', dropsRow: true }] });
});

test('a cell beyond the last heading, and cells too few', () => {
  expect(read('machines', machineWith('mass', '1385 lb,'))).toMatchObject({ entries: [{ row: 2 }], findings: [] });
  expect(read('machines', machineWith('mass', '1385 lb,7'))).toMatchObject({ entries: [], findings: [{ code: 'row.ragged-long', row: 2, dropsRow: true }] });
  expect(read('machines', 'id,name,make,frame,tier,from year,years are,mass\nrill,Rill,Millrace,subcompact,economy,2016,model\n')).toMatchObject({
    entries: [{ row: 2 }], findings: [{ code: 'row.ragged-short', weight: 'query', facts: { cells: 7, headings: 8 } }],
  });
});
