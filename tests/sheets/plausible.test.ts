import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { lineOfFinding, queriesOf, sayUnknown, unknownsOf, type Finding } from '../../src/sheets/sheets.ts';
import { de } from '../../src/sheets/words/de.ts';
import { en } from '../../src/sheets/words/en.ts';
import { es } from '../../src/sheets/words/es.ts';
import { fr } from '../../src/sheets/words/fr.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { buyers, demoAnswers } from '../cli/fake-io.ts';
import { assembled, demo, machineWith, read } from './reading.ts';

const copy = () => structuredClone(demo);
const asked = (change: (catalogue: typeof demo) => void) => {
  const catalogue = copy();
  change(catalogue);
  return queriesOf(catalogue);
};
const places = (found: readonly Finding[]) => found.map(({ place }) => place);

test('nothing of the demo is asked about', () => expect(queriesOf(demo, {}, ['en', 'de', 'es', 'fr'])).toEqual([]));

/** A 25-hp machine of the trade lifts some 700 to 1,400 lb at the pins: common practice, no source. */
test('a 25-hp machine with a loader of 4,000 lb is asked about, with the power beside it', () => {
  const machines = read('machines', machineWith('engine power (hp),loader lift at pins (lb)', '25,4000'));
  const { catalogue } = assembled({ machines, units: read('units', 'id,machine\n') });
  expect(queriesOf(catalogue!, { machines })).toMatchObject([{
    code: 'query.ratio', weight: 'query', sheet: 'machines', row: 2, column: 9, read: '4000 lb', place: 'machines[0].loaders[0].ratings',
    facts: { id: 'rill', by: { heading: 'engine power', read: { value: 25, unit: 'hp' } }, most: { value: 2000, unit: 'lb' } },
  }]);
});

/** 1 lb is 0.45359237 kg (international yard and pound agreement of 1959): a slip between them is a factor of 2.2046. */
describe.each(demo.machines.map(({ id }, index) => [id, index] as const))('%s', (_id, index) => {
  test('its mass in the other unit of the two is asked about, either way, and the right one is named', () => {
    expect(asked(({ machines }) => { machines[index]!.mass!.unit = 'kg'; })).toMatchObject([{ place: `machines[${index}].mass`, facts: { meant: { unit: 'lb' } } }]);
    const kilograms = demo.machines[index]!.mass!.value * 0.453_592_37;
    expect(places(asked(({ machines }) => { machines[index]!.mass!.value = kilograms; }))).toContain(`machines[${index}].mass`);
  });

  test('millimetres read as inches are asked about, and named', () => {
    const millimetres = Math.round(demo.machines[index]!.wheelbase!.value * 25.4);
    expect(asked(({ machines }) => { machines[index]!.wheelbase = { value: millimetres, unit: 'in' }; })).toMatchObject([
      { code: 'query.range', place: `machines[${index}].wheelbase`, facts: { meant: { value: millimetres, unit: 'mm' } } },
    ]);
  });

  test('a power of 10,000 is asked about', () => {
    expect(places(asked(({ machines }) => { machines[index]!.engine!.power!.value = 10_000; }))).toEqual([`machines[${index}].engine.power`]);
  });
});

test.each<[string, (catalogue: typeof demo) => void, string]>([
  ['a price ten times too high', ({ units }) => { units[0]!.price!.value *= 10; }, 'units[0].price'],
  ['a price in thousands', ({ units }) => { units[0]!.price!.value /= 1000; }, 'units[0].price'],
  ['hours of a truck’s odometer', ({ units }) => { units[0]!.hours = 90_000; }, 'units[0].hours'],
  ['a lift that hardly falls', ({ machines }) => { machines[0]!.loaders![0]!.ratings[1]!.load.value = 514; }, 'machines[0].loaders[0].ratings'],
  ['a track wider than the tyres', ({ machines }) => { machines[0]!.rearTrack!.value = 60; }, 'machines[0].rearTrack'],
  ['an exhaust without its filter', ({ machines }) => { machines.find(({ id }) => id === 'comfrey-second')!.exhaust = 'none'; }, `machines[${demo.machines.findIndex(({ id }) => id === 'comfrey-second')}].exhaust`],
  ['terms that are missing', ({ dealer }) => { delete dealer.terms!.en; }, 'dealer.terms'],
])('%s: asked about', (_what, change, place) => expect(places(asked(change))).toEqual([place]));

test('a dealer’s own bound counts', () => {
  const own = (catalogue: typeof demo) => { catalogue.rules = { ...catalogue.rules, 'plausible.mass-by-power.most': 80 }; };
  expect(places(asked(own))).toEqual([`machines[${demo.machines.findIndex(({ id }) => id === 'tansy-plus')}].mass`]);
  const catalogue = copy();
  own(catalogue);
  expect(readCatalogue(catalogue).faults).toEqual([]);
});

const languages = { en, de, es, fr };

test('what is missing is counted, in every language, and sold units are left alone', () => {
  const catalogue = copy();
  for (const machine of catalogue.machines) for (const loader of machine.loaders ?? []) loader.ratings = loader.ratings.slice(0, 1);
  const lacking = unknownsOf(catalogue).find(({ figure }) => figure === 'loaderLiftAhead');
  expect(lacking).toMatchObject({ sheet: 'machines', of: 12, ids: { length: 12 } });
  for (const words of Object.values(languages)) expect(sayUnknown(lacking!, words)).toMatch(/12.*500 mm/);
  catalogue.units = [{ id: 'gone', machine: 'rill', status: 'sold' }];
  expect(unknownsOf(catalogue).filter(({ sheet }) => sheet === 'units')).toEqual([]);
});

/** Control of each cost: without the figure somebody's result is another. */
const dropped: Readonly<Record<string, (catalogue: CatalogueDocument) => void>> = {
  mass: ({ machines }) => machines.forEach((machine) => delete machine.mass),
  loaderLift: ({ machines }) => machines.forEach(({ loaders = [] }) => loaders.forEach((loader) => { loader.ratings = []; })),
  loaderLiftAhead: ({ machines }) => machines.forEach(({ loaders = [] }) => loaders.forEach((loader) => { loader.ratings = loader.ratings.slice(0, 1); })),
  hitchLift: ({ machines }) => machines.forEach(({ hitch }) => delete hitch?.lift610),
  width: ({ machines }) => machines.forEach((machine) => delete machine.tyres),
  height: ({ machines }) => machines.forEach((machine) => delete machine.height),
  ptoPower: ({ machines }) => machines.forEach(({ engine }) => delete engine?.ptoPower),
  rearTrack: ({ machines }) => machines.forEach((machine) => delete machine.rearTrack),
  centreOfMass: ({ machines }) => machines.forEach((machine) => delete machine.centreOfMassHeight),
  unitPrice: ({ units = [] }) => units.forEach((unit) => delete unit.price),
  unitHours: ({ units = [] }) => units.forEach((unit) => delete unit.hours),
  unitRecall: ({ units = [] }) => units.forEach((unit) => delete unit.recallOpen),
};

const resultOf = (catalogue: CatalogueDocument, buyer: (typeof buyers)[number]) => JSON.stringify(shortlist(catalogue, JSON.parse(demoAnswers(buyer)) as AnswersDocument));
const known = new Map<string, string>();
const resultOfDemo = (buyer: (typeof buyers)[number]) => {
  const result = known.get(buyer) ?? resultOf(demo, buyer);
  known.set(buyer, result);
  return result;
};

test.each(Object.entries(dropped))('without %s it says so, and a buyer’s result is another', (figure, drop) => {
  const catalogue = copy();
  drop(catalogue);
  expect(unknownsOf(catalogue).map((each) => each.figure)).toContain(figure);
  expect(buyers.some((buyer) => resultOf(catalogue, buyer) !== resultOfDemo(buyer))).toBe(true);
});

test('every language says the same of a query, with its figures and its own words', () => {
  const [query] = asked(({ machines }) => { machines[0]!.engine!.power!.value = 10_000; });
  const lines = Object.values(languages).map((words) => lineOfFinding(query!, words));
  expect(new Set(lines).size).toBe(4);
  for (const line of lines) expect(line).toMatch(/10000 hp.*8 hp.*120 hp.*rill/);
});

/** Every fact a message may speak of; what is missing in a language is a type error already. */
const facts = {
  limit: 7, count: 7, first: 7, nearest: 'seven', unit: 'lb', heading: 'mass', cells: 7, headings: ['mass', 'id'], id: 'seven', example: '7', from: 1, to: 7,
  either: ['1.5', '1500'], units: ['lb', 'kg'], currency: 'USD', words: ['one', 'two'], day: '2026-09-14', expected: 'seven', languages: ['es', 'fr'],
  least: { value: 1, unit: 'lb' }, most: { value: 7, unit: 'lb' }, meant: { value: 7, unit: 'kg' }, by: { heading: 'mass', read: { value: 7, unit: 'lb' } },
};

test.each(Object.entries(languages))('%s says of every finding what was expected and how to mend it', (tag, words) => {
  for (const [code, say] of Object.entries(words.findings) as [string, (facts: object, show: (figure: { value: number; unit: string }) => string) => { expected: string; mend: string }][]) {
    const list = code === 'column.not-taken' || code === 'cell.needs' || code === 'row.without' ? { headings: ['mass', 'id'], nearest: ['mass'] } : code === 'row.ragged-short' || code === 'row.ragged-long' ? { headings: 8 } : {};
    const { expected, mend } = say({ ...facts, ...list }, ({ value, unit }) => `${value} ${unit}`);
    for (const text of [expected, mend]) expect(text, `${tag} ${code}`).toMatch(/^(?!.*(undefined|\[object|NaN)).{2,}[^.]$/);
  }
});
