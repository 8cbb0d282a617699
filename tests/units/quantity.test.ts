import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factors, inSi, inUnit, kindOfUnit, kinds, quantity, siUnitOf, toSi, unitsOf, type Unit } from '../../src/units/quantity.ts';

const value = fc.double({ min: -1e9, max: 1e9, noNaN: true }).filter((amount) => amount === 0 || Math.abs(amount) > 1e-9);
const kindWithUnits = fc.constantFrom(...kinds).chain((kind) =>
  fc.record({ kind: fc.constant(kind), unit: fc.constantFrom(...unitsOf(kind)), other: fc.constantFrom(...unitsOf(kind)) }));
const near = (a: number, b: number) => Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));

test('an amount put into SI and taken out again is what it was', () => {
  fc.assert(fc.property(kindWithUnits, value, ({ kind, unit }, amount) =>
    near(inUnit(kind, quantity(kind, amount, unit as never), unit as never), amount)));
});

test('going by another unit of the kind gives the same SI amount', () => {
  fc.assert(fc.property(kindWithUnits, value, ({ kind, unit, other }, amount) => {
    const first = quantity(kind, amount, unit as never);
    const through = quantity(kind, inUnit(kind, first, other as never), other as never);
    return near(first, through);
  }));
});

test('no unit belongs to two kinds', () => {
  const all = kinds.flatMap((kind) => unitsOf(kind) as string[]);
  expect(all.filter((unit, index) => all.indexOf(unit) !== index)).toEqual([]);
});

test.each(kinds)('the first unit of %s is its SI unit', (kind) => {
  expect((factors[kind] as Record<string, number>)[siUnitOf(kind)]).toBe(1);
});

test('a unit is known by its exact word alone', () => {
  expect(['lb', 'acre', 'LB', 'pound', 'constructor', ''].map(kindOfUnit)).toEqual(['mass', 'area', undefined, undefined, undefined, undefined]);
});

test('a mass in pounds becomes kilograms', () => {
  expect(toSi({ value: 800, unit: 'lb' })).toBeCloseTo(362.873896, 9);
});

test('amounts become SI however deep they lie, and all else stays as it is', () => {
  const document = {
    weight: { value: 1000, unit: 'lb' },
    lists: [{ width: { value: 60, unit: 'in' } }, 'word', 3, null],
    price: { value: 100, currency: 'USD' },
    slope: { value: 20, unit: 'percent' },
    height: { value: { value: 1, unit: 'ft' }, source: 'measured' },
    no: false,
    typed: { value: '5', unit: 'lb' },
  };
  expect(inSi(document)).toEqual({
    weight: expect.closeTo(453.59237, 9),
    lists: [{ width: expect.closeTo(1.524, 9) }, 'word', 3, null],
    price: { value: 100, currency: 'USD' },
    slope: { value: 20, unit: 'percent' },
    height: { value: expect.closeTo(0.3048, 9), source: 'measured' },
    no: false,
    typed: { value: '5', unit: 'lb' },
  });
});

test('at any depth the amount found is the amount put in', () => {
  fc.assert(fc.property(kindWithUnits, value, fc.array(fc.constantFrom('in a list', 'under a key'), { maxLength: 6 }), ({ unit }, amount, wraps) => {
    const wrapped = wraps.reduce<unknown>((inner, wrap) => (wrap === 'in a list' ? [inner] : { held: inner }), { value: amount, unit });
    const found = wraps.reduce<unknown>((outer) => (Array.isArray(outer) ? outer[0] : (outer as { held: unknown }).held), inSi(wrapped));
    return Object.is(found, toSi({ value: amount, unit: unit as Unit }));
  }));
});

test('turning a document into SI leaves the document itself alone', () => {
  const document = { weight: { value: 1, unit: 'lb' } };
  inSi(document);
  expect(document).toEqual({ weight: { value: 1, unit: 'lb' } });
});
