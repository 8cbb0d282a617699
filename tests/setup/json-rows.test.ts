import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Desk } from '../../src/setup/desk.ts';
import { fromJson } from '../../src/setup/json-rows.ts';
import { allAtOnce } from '../../src/sheets/sheets.ts';

const demo = JSON.parse(readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8')) as { machines: Record<string, unknown>[]; units: Record<string, unknown>[] };

function seen(document: unknown) {
  const desk = new Desk('2026-11-20', ['en']);
  const refused = desk.openDocument('lot.json', document);
  const view = allAtOnce(desk.view());
  return { desk, refused, ...view, faults: view.groups.filter(({ finding }) => finding.weight === 'fault'), catalogue: desk.catalogue };
}

describe('a catalogue with faults in its entries', () => {
  test('is no reason to refuse it: the entry is told by row and column, the others stand', () => {
    const units = demo.units.map((unit, at) => (at === 3 ? { ...unit, hours: 'many', price: { value: 'cheap', currency: 'USD' } } : unit));
    const { refused, faults, catalogue } = seen({ ...demo, units });
    expect(refused).toEqual([]);
    expect(faults.map(({ finding, rows }) => [finding.heading, finding.read, rows])).toEqual(expect.arrayContaining([['hours', '"many"', [5]]]));
    expect(catalogue!.units!.length).toBe(demo.units.length);
  });

  test('keeps all that isn’t wrong', () => {
    const machines = demo.machines.map((machine, at) => (at === 0 ? { ...machine, tier: 'plain' } : machine));
    const { desk, faults } = seen({ ...demo, machines });
    const [{ finding, rows }] = faults as [(typeof faults)[number]];
    expect([finding.code, finding.heading]).toEqual(['cell.word', 'tier']);
    desk.mend('machines', finding.column!, rows, String(demo.machines[0]!.tier));
    allAtOnce(desk.view());
    const amounts = (document: unknown) => JSON.stringify(document).replaceAll('"ahead":{"value":0,"unit":"in"}', '"ahead":{"value":0,"unit":"mm"}');
    expect(desk.catalogue!.machines.map((machine) => JSON.parse(amounts(machine)) as object)).toEqual(demo.machines.map((machine) => JSON.parse(amounts(machine)) as object));
  });
});

describe('bare rows', () => {
  const machine = { id: 'plum', name: 'Plum', make: 'Orchard', frame: 'small', tier: 'economy', 'from year': 2015, 'years are': 'model', mass: { value: 1500, unit: 'lb' } };

  test.each([[[machine]], [{ machines: [machine] }]])('are a table: %j', (document) => {
    const { catalogue } = seen(document);
    expect(catalogue!.machines).toEqual([expect.objectContaining({ id: 'plum', mass: { value: 1500, unit: 'lb' } })]);
  });

  test('are of the table that knows more of their keys', () => expect(Object.keys(fromJson([{ 'stock number': 'a', machine: 'plum', hours: 3, 'seat belt': true }]).tables)).toEqual(['units']));

  test('lose nothing, whatever they hold', () => {
    const word = fc.stringMatching(/^[a-z]{3,8}$/);
    const entry = fc.dictionary(word, fc.oneof(word, fc.record({ [`deeper`]: word })), { minKeys: 1, maxKeys: 5, noNullPrototype: true });
    fc.assert(fc.property(fc.array(entry, { minLength: 1, maxLength: 4 }), (entries) => {
      const { tables } = fromJson(entries);
      const { rows } = Object.values(tables)[0]!;
      entries.forEach((each, at) => {
        const texts = Object.values(each).map((value) => (typeof value === 'string' ? value : value.deeper!));
        expect(rows[at]!.filter((cell) => cell !== '').sort()).toEqual(texts.sort());
      });
    }), { numRuns: 60 });
  });
});

test('a dealer’s file leaves the tables that other files brought', () => {
  const { machines, units, ...dealer } = demo;
  const desk = new Desk('2026-11-20', ['en']);
  for (const document of [{ machines }, { units }, dealer]) expect(desk.openDocument('a.json', document)).toEqual([]);
  allAtOnce(desk.view());
  expect([desk.catalogue!.machines.length, desk.catalogue!.units!.length]).toEqual([machines.length, units.length]);
  expect(desk.openDocument('b.json', { ...demo, units: [] })).toEqual([]);
  allAtOnce(desk.view());
  expect(desk.catalogue!.units).toEqual([]);
});

test.each([['a text'], [7], [null], [[]], [{ format: 'acre-to-axle/catalogue/1' }]])('%j is refused in words', (document) => {
  const { refused, catalogue } = seen(document);
  expect(refused.length).toBeGreaterThan(0);
  expect(catalogue).toBe(undefined);
});
