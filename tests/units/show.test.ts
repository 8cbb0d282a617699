import fc from 'fast-check';
import { expect, test } from 'vitest';
import { kinds, quantity, siUnitOf, unitsOf } from '../../src/units/quantity.ts';
import { showAmount, showTyped, unitWord, type Reader } from '../../src/units/show.ts';
import { si } from '../support/quantities.ts';

const us: Reader = { units: 'us', locale: 'en-US', currency: 'USD', unitWords: { acre: { one: 'acre', other: 'acres' }, deg: '°' } };
const metric: Reader = { units: 'metric', locale: 'de-DE', currency: 'EUR', unitWords: { h: { one: 'Stunde', other: 'Stunden' }, deg: '°' } };
/** Blanks that don't break, read as plain ones. */
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

/** An amount as it is told, its SI unit, and what the reader of each system sees. */
test.each<[string, string, string, string]>([
  ['800 lb', 'kg', '800 lb', '363 kg'],
  ['1200 kg', 'kg', '2,646 lb', '1.200 kg'],
  ['60 in', 'm', '60 in', '152 cm'],
  ['2 acre', 'm2', '2 acres', '0,81 ha'],
  ['1 acre', 'm2', '1 acre', '0,4 ha'],
  ['1.004 acre', 'm2', '1 acre', '0,41 ha'],
  ['1.006 acre', 'm2', '1.01 acres', '0,41 ha'],
  ['1000 m2', 'm2', '0.25 acres', '0,1 ha'],
  ['999 m2', 'm2', '10,753 ft2', '999 m2'],
  ['2000 ft2', 'm2', '2,000 ft2', '186 m2'],
  ['20 yd3', 'm3', '20 yd3', '15,3 m3'],
  ['100 lb/ft3', 'kg/m3', '100 lb/ft3', '1.601,8 kg/m3'],
  ['5 mph', 'm/s', '5 mph', '8 km/h'],
  ['24.5 hp', 'W', '24.5 hp', '18,3 kW'],
  ['500 lbf', 'N', '500 lbf', '2.224 N'],
  ['10 gpm', 'm3/s', '10 gpm', '37,9 L/min'],
  ['3e-5 m3/s', 'm3/s', '0.5 gpm', '1,8 L/min'],
  ['1.06 gal/h', 'm3/s', '1.06 gal/h', '4,01 L/h'],
  ['90 min', 's', '1.5 h', '1,5 Stunden'],
  ['60 min', 's', '1 h', '1 Stunde'],
  ['15.04 deg', 'rad', '15°', '15°'],
  ['2 acre/h', 'm2/s', '2 acre/h', '0,81 ha/h'],
  ['5 hp/ft', 'W/m', '5 hp/ft', '12,2 kW/m'],
  ['100 lbf/ft', 'N/m', '100 lbf/ft', '1,5 kN/m'],
  ['0.044 gal/(hp·h)', 'm3/J', '0.044 gal/(hp·h)', '0,223 L/kWh'],
  ['12 psi', 'Pa', '12 psi', '83 kPa'],
  ['0.5 m/s2', 'm/s2', '0.5 m/s2', '0,5 m/s2'],
  ['540 rpm', '1/s', '540 rpm', '540 rpm'],
  // A length is told in feet and inches, or in metres, from where it reads better.
  ['95 in', 'm', '95 in', '241 cm'],
  ['96 in', 'm', '8 ft', '244 cm'],
  ['102 in', 'm', '8 ft 6 in', '259 cm'],
  ['107.7 in', 'm', '9 ft', '274 cm'],
  ['299 cm', 'm', '9 ft 10 in', '299 cm'],
  ['3 m', 'm', '9 ft 10 in', '3 m'],
  ['5.204 m', 'm', '17 ft 1 in', '5,2 m'],
])('%s is shown as "%s", "%s", "%s"', (amount, siUnit, american, german) => {
  const value = si(amount);
  expect([showAmount(value, siUnit, us), showAmount(value, siUnit, metric)].map(plain)).toEqual([american, german]);
});

test('two amounts of one sentence are shown alike', () => {
  const beside = (small: string, unit: string, great: string) => [us, metric].map((reader) => plain(showAmount(si(small), unit, reader, si(great))));
  expect(beside('60 in', 'm', '10 ft')).toEqual(['5 ft', '1,52 m']);
  expect(beside('60 in', 'm', '70 in')).toEqual(['60 in', '152 cm']);
  expect(beside('500 m2', 'm2', '5000 m2')).toEqual(['0.12 acres', '0,05 ha']);
  expect(beside('5000 m2', 'm2', '500 m2')).toEqual(['1.24 acres', '0,5 ha']);
});

test.each<[number, string, string, string]>([
  [18_250.4, 'money', '$18,250', '18.250 €'],
  [999.4, 'money', '$999', '999 €'],
  [18_250.4, 'dealer-currency', '$18,250', '18.250 €'],
  [1000, 'dealer-currency', '$1,000', '1.000 €'],
  [999.5, 'dealer-currency', '$999.50', '999,50 €'],
  [3.7, 'dealer-currency', '$3.70', '3,70 €'],
  [-1500, 'dealer-currency', '-$1,500', '-1.500 €'],
  [0.0599, 'annual-rate', '5.99%', '5,99 %'],
  [0.06, 'annual-rate', '6.00%', '6,00 %'],
  [0.0058, 'ratio', '0.58%', '0,58 %'],
  [0.0999, 'ratio', '10%', '10 %'],
  [0.0912, 'ratio', '9.1%', '9,1 %'],
  [0.1, 'ratio', '10%', '10 %'],
  [0.254, 'ratio', '25%', '25 %'],
  [1.254, 'ratio', '125%', '125 %'],
  [-0.254, 'ratio', '-25%', '-25 %'],
  [5.26, 'years', '5.3 years', '5,3 years'],
  [85.04, 'dB(A)', '85 dB(A)', '85 dB(A)'],
])('%d of %s is shown as "%s", "%s"', (value, unit, american, german) => {
  expect([showAmount(value, unit, us), showAmount(value, unit, metric)].map(plain)).toEqual([american, german]);
});

test('a figure doesn\'t break from its unit, and a degree sign stands close', () => {
  expect([showAmount(si('800 lb'), 'kg', us), showAmount(si('12 deg'), 'rad', us)]).toEqual(['800\u00a0lb', '12°']);
});

test('an amount as it was typed keeps its own unit, whatever the reader\'s', () => {
  expect([showTyped({ value: 1.256, unit: 'ha' }, us), showTyped({ value: 1, unit: 'acre' }, us), showTyped({ value: 2.5, unit: 'acre' }, metric)].map(plain))
    .toEqual(['1.26 ha', '1 acre', '2,5 acre']);
});

test('a unit without a word is told by its symbol, and one by its word for several unless it is one', () => {
  expect([unitWord('lb', us), unitWord('acre', us), unitWord('acre', us, 1), unitWord('acre', us, 1.5), unitWord('deg', us)]).toEqual(['lb', 'acres', 'acre', 'acres', '°']);
});

const shown = fc.constantFrom(...kinds).chain((kind) => fc.record({ kind: fc.constant(kind), value: fc.double({ min: 0, max: 1e6, noNaN: true }) }));

test('whatever is shown in US units or in metric ones is a unit of that kind', () => {
  const bare = { ...us, unitWords: {} };
  fc.assert(fc.property(shown, fc.constantFrom<Reader['units']>('us', 'metric'), ({ kind, value }, units) => {
    const words = plain(showAmount(value, siUnitOf(kind), { ...bare, units })).split(' ').filter((word) => /^\D|^1\/s/.test(word));
    return words.length > 0 && words.every((word) => (unitsOf(kind) as string[]).includes(word));
  }));
});

test('feet and inches come back to the same inch, and never show twelve of them', () => {
  fc.assert(fc.property(fc.integer({ min: 96, max: 2000 }), (whole) => {
    const [feet = '', , inches = '0'] = plain(showAmount(quantity('length', whole, 'in'), 'm', us)).split(' ');
    return Number(inches) < 12 && Number(feet) * 12 + Number(inches) === whole;
  }));
});
