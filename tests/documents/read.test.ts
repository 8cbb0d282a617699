import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answers } from '../../src/answers/schema.ts';
import { catalogue } from '../../src/catalogue/schema.ts';
import { readDocument } from '../../src/documents/read.ts';
import { minimalCatalogue, withAt } from '../support/minimal-catalogue.ts';

const read = (document: unknown) => readDocument(catalogue, document);
const machineWith = (key: string, value: unknown) => withAt(minimalCatalogue(), ['machines', 0, key], value);

test('control: the least a catalogue must hold is read without a fault and comes back as it is', () => {
  expect(read(minimalCatalogue())).toEqual({ value: minimalCatalogue(), faults: [], unknownKeys: [] });
});

test('every fault is told at once', () => {
  const document = { ...minimalCatalogue(), asOf: 'yesterday', frames: [], id: 'A Lot', machines: [{ ...minimalCatalogue().machines[0], tier: 'delux', mass: 5 }] };
  expect(read(document).faults.map(({ place }) => place).sort()).toEqual(['asOf', 'frames', 'id', 'machines[0].mass', 'machines[0].tier']);
});

test.each([
  { what: 'a wrong word', document: machineWith('tier', 'delux'), place: 'machines[0].tier', read: '"delux"', expected: /economy, standard, deluxe/, nearest: 'deluxe' },
  { what: 'a wrong unit', document: machineWith('mass', { value: 800, unit: 'lbs' }), place: 'machines[0].mass.unit', read: '"lbs"', expected: /kg, lb, t, ton/, nearest: 'lb' },
  { what: 'an amount below zero', document: machineWith('mass', { value: -8, unit: 'lb' }), place: 'machines[0].mass.value', read: '-8', expected: /more than 0/ },
  { what: 'a bare number for an amount', document: machineWith('mass', 800), place: 'machines[0].mass', read: '800', expected: /"unit": "kg".*in kg, lb/ },
  { what: 'an amount without a unit', document: machineWith('mass', { value: 800 }), place: 'machines[0].mass.unit', read: 'nothing', expected: /kg, lb, t, ton/ },
  { what: 'a share over one', document: machineWith('frontAxleShare', 40), place: 'machines[0].frontAxleShare', read: '40', expected: /at most 1/ },
  { what: 'a broken year', document: machineWith('years', { from: 2012.5, meant: 'model' }), place: 'machines[0].years.from', read: '2012.5', expected: /whole number/ },
  { what: 'an id with a capital', document: machineWith('id', 'Small'), place: 'machines[0].id', read: '"Small"', expected: /small letters/ },
  { what: 'a day in another form', document: { ...minimalCatalogue(), asOf: '30.4.2026' }, place: 'asOf', read: '"30.4.2026"', expected: /2026-04-30/ },
  { what: 'a missing part', document: { ...minimalCatalogue(), dealer: undefined }, place: 'dealer', read: 'nothing', expected: /name/ },
  { what: 'another format', document: { ...minimalCatalogue(), format: 'acre-to-axle/catalogue/9' }, place: 'format', read: '"acre-to-axle/catalogue/9"', expected: /catalogue\/1/, nearest: 'acre-to-axle/catalogue/1' },
  { what: 'three where a pair is wanted', document: machineWith('notTogether', [['a', 'b', 'c']]), place: 'machines[0].notTogether[0]', read: '["a","b","c"]', expected: /pair/ },
  { what: 'a word for a rule', document: { ...minimalCatalogue(), rules: { 'mow.speed': 'fast' } }, place: 'rules.mow.speed', read: '"fast"', expected: /^(?!.*undefined).*a number/ },
])('$what is named with its place, what was read and what was expected', ({ document, place, read: was, expected, nearest }) => {
  const { value, faults } = read(document);
  expect(value).toBeUndefined();
  expect(faults).toEqual([{ place, read: was, expected: expect.stringMatching(expected), ...(nearest && { nearest }) }]);
});

test.each([[null], [3], ['x'], [true], [[]], [undefined]])('%j is no document, and one fault says so', (document) => {
  const { value, faults } = read(document);
  expect(value).toBeUndefined();
  expect(faults).toEqual([{ place: '', read: document === undefined ? 'nothing' : JSON.stringify(document), expected: expect.stringMatching(/object with format/) }]);
});

test.each([
  { path: ['zebra'], nearest: undefined },
  { path: ['machines', 0, 'wheelbse'], nearest: 'wheelbase' },
  { path: ['machines', 0, 'years', 'form'], nearest: 'from' },
  { path: ['dealer', 'constructor'], nearest: undefined },
  { path: ['machines', 0, '__proto__'], nearest: undefined },
])('an unknown key at $path is listed, and the rest still comes back', ({ path, nearest }) => {
  const { value, faults, unknownKeys } = read(withAt(minimalCatalogue(), path, 1));
  expect(value).toEqual(minimalCatalogue());
  expect(faults).toEqual([]);
  expect(unknownKeys.map((key) => key.nearest)).toEqual([nearest]);
  expect(unknownKeys[0]!.place.endsWith(String(path.at(-1)))).toBe(true);
});

test('unknown keys in several places and inside a record are all listed', () => {
  const document = { ...withAt(minimalCatalogue(), ['units'], [{ id: 'u', machine: 'small-standard', fitted: { loader: true, wings: true } }]), colour: 'red' };
  const { value, unknownKeys } = read(document);
  expect(unknownKeys.map(({ place }) => place).sort()).toEqual(['colour', 'units[0].fitted.wings']);
  expect(value?.units?.[0]?.fitted).toEqual({ loader: true });
});

test('unknown keys are listed beside the faults too', () => {
  const { faults, unknownKeys } = read({ ...minimalCatalogue(), asOf: 'yesterday', colour: 'red' });
  expect([faults.length, unknownKeys.length]).toEqual([1, 1]);
});

test.each([[['x-note']], [['dealer', 'x-note']], [['machines', 0, 'x-note']], [['machines', 0, 'years', 'x-note']]])('the key at %j is free for anyone', (path) => {
  expect(read(withAt(minimalCatalogue(), path, { any: ['thing'] }))).toEqual({ value: minimalCatalogue(), faults: [], unknownKeys: [] });
});

test('reading leaves the document itself alone', () => {
  const document = { ...minimalCatalogue(), colour: 'red', 'x-note': 1 }, before = structuredClone(document);
  read(document);
  expect(document).toEqual(before);
});

const schemas = { catalogue, answers } as const;
/** A value of any kind put at any key of a document that would otherwise be read. */
const hurt = fc.oneof(
  fc.jsonValue(),
  fc.tuple(fc.constantFrom(...Object.keys(catalogue.shape)), fc.jsonValue()).map(([key, value]) => ({ ...minimalCatalogue(), [key]: value })),
  fc.tuple(fc.constantFrom(...Object.keys(catalogue.shape.machines._zod.def.element.shape)), fc.jsonValue()).map(([key, value]) => machineWith(key, value)),
  fc.tuple(fc.constantFrom(...Object.keys(answers.shape)), fc.jsonValue()).map(([key, value]) => ({ format: 'acre-to-axle/answers/1', [key]: value })),
  fc.jsonValue().map((value) => ({ format: 'acre-to-axle/answers/1', tasks: [value, { task: 'dig', depth: value }], land: { slope: value } })),
);

test.each(['catalogue', 'answers'] as const)('whatever stands in a file read as %s, the outcome is a value or named faults', (name) => {
  fc.assert(fc.property(hurt, (document) => {
    const { value, faults } = readDocument(schemas[name], document);
    return (value === undefined) === (faults.length > 0) && faults.every(({ read: was, expected }) => was !== '' && expected !== '');
  }), { numRuns: 1000 });
});
