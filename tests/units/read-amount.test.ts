import fc from 'fast-check';
import { expect, test } from 'vitest';
import { kinds, unitsOf, type Kind, type UnitOf } from '../../src/units/quantity.ts';
import { readAmount } from '../../src/units/read.ts';

type Read = [Kind, string, number, string];
const read = (kind: Kind, typed: string, unit: string, mark?: '.' | ',') => readAmount(kind, typed, unit as UnitOf<Kind>, mark);

test.each<Read>([
  ['area', '1.5 ac', 1.5, 'acre'],
  ['area', '2acres', 2, 'acre'],
  ['area', '900 sq ft', 900, 'ft2'],
  ['area', '900 ft²', 900, 'ft2'],
  ['area', '900 ft2', 900, 'ft2'],
  ['area', '900 m2', 900, 'm2'],
  ['area', '900m²', 900, 'm2'],
  ['area', '1½ ha', 1.5, 'ha'],
  ['area', '3 Hektar', 3, 'ha'],
  ['power', '25hp', 25, 'hp'],
  ['power', '25 HP', 25, 'hp'],
  ['power', '18,5 kW', 18.5, 'kW'],
  ['power', '18 kw', 18, 'kW'],
  ['mass', '1,200 lbs.', 1200, 'lb'],
  ['mass', '800#', 800, 'lb'],
  ['mass', '500 Kilo', 500, 'kg'],
  ['mass', '2 t', 2, 't'],
  ['mass', '2 tons', 2, 'ton'],
  ['mass', '2 tonnes', 2, 't'],
  ['length', '2 metres', 2, 'm'],
  ['length', '2 mètres', 2, 'm'],
  ['length', '900 millimetres', 900, 'mm'],
  ['length', '12 miles', 12, 'mi'],
  ['length', '100 yards', 100, 'yd'],
  ['length', '100 yd', 100, 'yd'],
  ['time', '40 minutes', 40, 'min'],
  ['power', '25 horsepower', 25, 'hp'],
  ['power', '20 kilowatts', 20, 'kW'],
  ['volume', '20 yards', 20, 'yd3'],
  ['volume', '20 yd3', 20, 'yd3'],
  ['volume', '5 m3', 5, 'm3'],
  ['volume', '5 ft3', 5, 'ft3'],
  ['volume', '5 cubic feet', 5, 'ft3'],
  ['time', '45 min', 45, 'min'],
  ['length', '6 pi', 6, 'ft'],
  ['length', '60 po', 60, 'in'],
  ['length', '60 Pouces', 60, 'in'],
  ['length', '2 millas', 2, 'mi'],
  ['length', '3 Meilen', 3, 'mi'],
  ['length', '7 Fuss', 7, 'ft'],
  ['length', '7 Fuß', 7, 'ft'],
  ['volume', '20 yardas cúbicas', 20, 'yd3'],
  ['volume', '20 yardas cubicas', 20, 'yd3'],
  ['volume', '1 yarda cúbica', 1, 'yd3'],
  ['volume', '20 verges cubes', 20, 'yd3'],
  ['volume', '10 Kubikyard', 10, 'yd3'],
  ['volume', '5 Kubikmeter', 5, 'm3'],
  ['volume', '5m3', 5, 'm3'],
  ['volume', '5 pi3', 5, 'ft3'],
  ['area', '900 pies cuadrados', 900, 'ft2'],
  ['area', '1 pie cuadrado', 1, 'ft2'],
  ['area', '900 pieds carrés', 900, 'ft2'],
  ['area', '900 pieds carres', 900, 'ft2'],
  ['area', '900 pi²', 900, 'ft2'],
  ['area', '900 pi2', 900, 'ft2'],
  ['area', '900ft2', 900, 'ft2'],
  ['area', '900m2', 900, 'm2'],
  ['area', '900 Quadratmeter', 900, 'm2'],
  ['area', '900 metros cuadrados', 900, 'm2'],
  ['area', '3 hectareas', 3, 'ha'],
  ['time', '2 hrs', 2, 'h'],
  ['angle', '12°', 12, 'deg'],
  ['length', '8\'', 8, 'ft'],
  ['length', '60"', 60, 'in'],
  ['length', '54 1/2 in', 54.5, 'in'],
  ['length', '  7 ft ', 7, 'ft'],
  ['length', '2.5 m', 2.5, 'm'],
  ['length', '190 centimètres', 190, 'cm'],
])('as %s "%s" is %d %s', (kind, typed, value, unit) => {
  // The unit that would be taken where none is typed is another one.
  const other = unitsOf(kind).find((each) => each !== unit)!;
  expect(read(kind, typed, other)).toEqual({ amount: { value, unit } });
});

test.each<Read>([
  ['length', '60', 60, 'in'],
  ['length', ' 60 ', 60, 'in'],
  ['mass', '1,200', 1200, 'lb'],
  ['length', '5 1/2', 5.5, 'ft'],
])('as %s "%s" without a unit is %d %s, as asked', (kind, typed, value, unit) => expect(read(kind, typed, unit)).toEqual({ amount: { value, unit } }));

test.each<Read>([
  ['length', '6 ft 6', 6.5, 'ft'],
  ['length', '6\'6"', 6.5, 'ft'],
  ['length', '6 ft 6 in', 6.5, 'ft'],
  ['length', '6 feet 3 inches', 6.25, 'ft'],
  ['length', '5\' 4 1/2"', 5.375, 'ft'],
  ['length', '2 m 10', 2.1, 'm'],
  ['length', '2 m 10 cm', 2.1, 'm'],
  ['length', '6 pi 6 po', 6.5, 'ft'],
  ['length', '6 pieds 6', 6.5, 'ft'],
  ['length', '6ft3', 6.25, 'ft'],
  ['time', '1 h 30', 1.5, 'h'],
  ['time', '2 h 15 min', 2.25, 'h'],
])('as %s, the smaller part of "%s" is folded into %d %s', (kind, typed, value, unit) => expect(read(kind, typed, unit)).toEqual({ amount: { value, unit } }));

test.each<[Kind, string, string, object]>([
  ['length', '', 'ft', { fault: 'empty' }],
  ['length', '   ', 'ft', { fault: 'empty' }],
  ['length', 'wide', 'ft', { fault: 'not-a-number' }],
  ['length', 'about 6 ft', 'ft', { fault: 'not-a-number' }],
  ['length', '-6 ft', 'ft', { fault: 'not-a-number' }],
  ['length', '1..5 ft', 'ft', { fault: 'not-a-number' }],
  ['length', '6 ft 6 in 2', 'ft', { fault: 'not-a-number' }],
  ['length', '6 in 6', 'ft', { fault: 'not-a-number' }],
  ['length', '6 ft 6 cm', 'ft', { fault: 'not-a-number' }],
  ['length', '6 ft 6 ft', 'ft', { fault: 'not-a-number' }],
  ['length', '6 to 7 ft', 'ft', { fault: 'unknown-unit', word: 'to' }],
  ['mass', '6 t 200', 't', { fault: 'not-a-number' }],
  ['length', '6 furlongs', 'ft', { fault: 'unknown-unit', word: 'furlongs' }],
  ['length', '6 lb', 'ft', { fault: 'unknown-unit', word: 'lb' }],
  ['length', '6 ft..', 'ft', { fault: 'unknown-unit', word: 'ft..' }],
  ['length', '6 f.t', 'ft', { fault: 'unknown-unit', word: 'f.t' }],
  ['length', '6 mille', 'ft', { fault: 'unknown-unit', word: 'mille' }],
  ['area', '6 Morgen', 'ha', { fault: 'unknown-unit', word: 'Morgen' }],
  ['area', '900 pi', 'ft2', { fault: 'unknown-unit', word: 'pi' }],
  ['area', '900 m3', 'm2', { fault: 'unknown-unit', word: 'm³' }],
  ['area', '900m3', 'm2', { fault: 'unknown-unit', word: 'm³' }],
  ['length', '900 m2', 'm', { fault: 'unknown-unit', word: 'm²' }],
  ['mass', '6 constructor', 'lb', { fault: 'unknown-unit', word: 'constructor' }],
])('as %s "%s" isn\'t understood, and it is said why', (kind, typed, unit, outcome) => expect(read(kind, typed, unit)).toEqual(outcome));

test('where the comma is the decimal mark, a thousand by a foreign hand is asked about', () => {
  expect(read('mass', '1,500 kg', 'kg', ',')).toEqual({ fault: 'ambiguous', either: [{ value: 1.5, unit: 'kg' }, { value: 1500, unit: 'kg' }] });
  expect(read('mass', '1,5 t', 'kg', ',')).toEqual({ amount: { value: 1.5, unit: 't' } });
});

const anyUnit = fc.constantFrom(...kinds).chain((kind) => fc.record({ kind: fc.constant(kind), unit: fc.constantFrom<string>(...unitsOf(kind)) }))
  // A unit that has a digit inside its symbol, or a stroke, is typed in words.
  .filter(({ unit }) => /^[a-z]+$/i.test(unit));

test('every unit is understood by its own symbol, in small letters and in capitals', () => {
  fc.assert(fc.property(anyUnit, fc.integer({ min: 1, max: 999 }), ({ kind, unit }, value) => {
    const written = [unit, unit.toLowerCase(), unit.toUpperCase()].map((word) => read(kind, `${value} ${word}`, unitsOf(kind)[0]!));
    return written.every((outcome) => 'amount' in outcome && outcome.amount.value === value && (outcome.amount.unit as string).toLowerCase() === unit.toLowerCase());
  }));
});
