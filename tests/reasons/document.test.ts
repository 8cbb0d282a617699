import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { shortlistSchema } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import * as z from '../../src/zod.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { catalogueForTests, lb, lineUp, withMachine } from '../support/catalogue-for-tests.ts';
import { mustDo, unitsIn } from '../support/reckon.ts';

const faultsIn = (document: unknown) => {
  const read = z.safeParse(shortlistSchema, document);
  return read.success ? [] : read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
};

test('of whatever answers and figures the document is a shortlist by its schema, and survives being written', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const result = shortlist(catalogue, answers);
    expect(faultsIn(result)).toEqual([]);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  }), runs(80));
}, aMinute);

test('control: a figure that is none, a word that is none or a key too many would be noticed', () => {
  const result = shortlist(lineUp(), mustDo({ task: 'lift-bales', weight: lb(800) }));
  const [first, ...others] = result.shortlist;
  expect(faultsIn({ ...result, shortlist: [{ ...first!, score: Number.NaN }, ...others] })).toHaveLength(1);
  expect(faultsIn({ ...result, shortlist: [{ ...first!, rank: 'first' }, ...others] })).toHaveLength(1);
  expect(faultsIn({ ...result, words: 'none' })).toHaveLength(1);
});

test('a figure of zero, which no machine has, is refused at the door or does no harm', () => {
  const zero = { value: 0, unit: 'm' as const };
  const catalogue = withMachine(lineUp(), 'mid-deluxe', ({ loaders = [], decks = [] }) => ({
    wheelbase: zero, rearTrack: zero, mass: lb(0), loaders: loaders.map((loader) => ({ ...loader, mass: lb(0), pinsAhead: zero })), decks: decks.map((deck) => ({ ...deck, width: zero })),
  }));
  const answers = mustDo({ task: 'lift-bales', weight: lb(300) }, { task: 'mow-lawn', deck: 'belly', hours: { value: 1, unit: 'h' } }, { task: 'carry-implement', weight: lb(300) });
  if (readCatalogue(catalogue).value === undefined) return;
  expect(faultsIn(shortlist(catalogue, { ...answers, land: { ...answers.land, slope: 'rolling', mown: { value: 1, unit: 'acre' } } }))).toEqual([]);
});

const frozen = <T>(value: T): T => {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    for (const each of Object.values(value)) frozen(each);
  }
  return value;
};

test('the same documents give the same bytes, however often, copied or frozen, and are left as they were', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (damaged, answers) => {
    const catalogue = structuredClone(damaged);
    const before = JSON.stringify([catalogue, answers]);
    const first = JSON.stringify(shortlist(frozen(catalogue), frozen(answers)));
    expect(JSON.stringify(shortlist(catalogue, answers)) === first).toBe(true);
    expect(JSON.stringify(shortlist(structuredClone(catalogue), structuredClone(answers))) === first).toBe(true);
    expect(JSON.stringify([catalogue, answers])).toBe(before);
  }), runs(30));
}, aMinute);

test('every machine has its place once, ranks count up, and every unit on the lot stands with its machine', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const result = shortlist(catalogue, answers);
    const places = [...result.shortlist, ...result.askDealer, ...result.ruledOut];
    expect(places.map(({ machine }) => machine).sort()).toEqual(catalogue.machines.map(({ id }) => id).sort());
    for (const group of [result.shortlist, result.askDealer]) expect(group.map(({ rank }) => rank)).toEqual(group.map((_, index) => index + 1));
    const lot = (catalogue.units ?? []).filter(({ status }) => status !== 'sold');
    expect(unitsIn(result).map(({ unit }) => unit).sort()).toEqual(lot.map(({ id }) => id).sort());
    for (const { machine, units } of places) {
      for (const { unit } of units) expect(lot.find(({ id }) => id === unit)!.machine).toBe(machine);
    }
    for (const { unit, units } of result.shortlist) if (unit) expect(units.find((each) => each.unit === unit)!.verdict).toBe('stands');
  }), runs(30));
}, aMinute);

test('a sold unit is no longer on the lot', () => {
  const sold = { ...catalogueForTests(), units: catalogueForTests().units!.map((unit) => ({ ...unit, status: 'sold' as const })) };
  expect(unitsIn(shortlist(sold, mustDo()))).toEqual([]);
  expect(unitsIn(shortlist(catalogueForTests(), mustDo())), 'control').toHaveLength(4);
});

test('a task that is not known becomes a caution', () => {
  const { cautions } = shortlist(lineUp(), mustDo({ task: 'clear-snow' }), ['milk-goats']);
  expect(cautions).toEqual(expect.arrayContaining([{ id: 'task-unknown', about: 'milk-goats' }]));
  expect(shortlist(lineUp(), mustDo({ task: 'dig' })).cautions.filter(({ id }) => id.startsWith('task-'))).toEqual([]);
});
