import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import type { CatalogueDocument, MachineDocument } from '../../src/catalogue/schema.ts';
import type { Entry } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { kindOfUnit, toSi, unitsOf, type Unit } from '../../src/units/quantity.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { catalogueForTests, inches, lb, lineUp, soundUnit, usd, withLoader, withMachine } from '../support/catalogue-for-tests.ts';
import { saying, unitsIn, verdicts } from '../support/reckon.ts';

/** A line-up with twins, in which only the rules of order can decide. */
function crowded(): CatalogueDocument {
  const plain = catalogueForTests();
  const twin = { ...plain.machines.find(({ id }) => id === 'mid-deluxe')!, id: 'mid-twin', line: 'twin' };
  const cutters = plain.implements!.filter(({ kind }) => kind === 'rotary-cutter' || kind === 'finish-mower');
  return {
    ...plain,
    machines: [...plain.machines, twin],
    implements: [...plain.implements!, ...cutters.map((each) => ({ ...each, id: `${each.id}-twin` }))],
    units: [...plain.units!, soundUnit('twin-a', 'small-deluxe'), soundUnit('twin-b', 'small-deluxe'), soundUnit('twin-c', 'mid-twin')],
  };
}

/** Deals a list out in an order that a number decides. */
const dealt = <T>(list: readonly T[], by: number): T[] => list.map((each, index) => ({ each, key: ((index + 1) * by) % 101 })).sort((a, b) => a.key - b.key).map(({ each }) => each);
const anyDeal = fc.integer({ min: 1, max: 100 });

/** Where the shortlists of two catalogues first differ, in a few words; undefined where they are the same bytes. */
function difference(one: CatalogueDocument, other: CatalogueDocument, answers: AnswersDocument) {
  const [a, b] = [one, other].map((catalogue) => JSON.stringify(shortlist(catalogue, answers))) as [string, string];
  if (a === b) return undefined;
  const at = [...a].findIndex((letter, index) => letter !== b[index]);
  return [a, b].map((text) => text.slice(Math.max(0, at - 80), at + 80));
}

test('the order of machines, units and implements in the catalogue changes nothing', () => {
  const catalogue = crowded();
  fc.assert(fc.property(anyAnswers, anyDeal, (answers, by) => {
    const shuffled = { ...catalogue, machines: dealt(catalogue.machines, by), units: dealt(catalogue.units!, by), implements: dealt(catalogue.implements!, by) };
    expect(difference(catalogue, shuffled, answers)).toBeUndefined();
  }), runs(40));
}, aMinute);

test('of two ballast boxes of one mass the order in the catalogue doesn’t choose', () => {
  const plain = lineUp();
  const dear = { ...plain.implements!.find(({ id }) => id === 'ballast-box-500')!, id: 'dear-box', price: usd(5000) };
  const answers = saying({ tasks: [{ task: 'lift-bales', weight: lb(800), must: true }] });
  const before = { ...plain, implements: [dear, ...plain.implements!] };
  const after = { ...plain, implements: [...plain.implements!, dear] };
  const ballast = shortlist(after, answers).shortlist.flatMap(({ package: { additions } }) => additions.filter(({ what }) => what === 'rear-ballast').map(({ id }) => id));
  expect(ballast, 'control: a box is chosen').toContain('ballast-box-500');
  expect(difference(before, after, answers)).toBeUndefined();
});

test.each<keyof MachineDocument>(['tyres', 'decks', 'loaders', 'cabs', 'transmissions', 'typicalPrices'])('nor does the order of %s in a machine', (list) => {
  const plain = crowded();
  const [loader] = plain.machines.find(({ id }) => id === 'mid-deluxe')!.loaders!;
  const catalogue = withMachine(plain, 'mid-deluxe', ({ tyres = [], loaders = [], cabs = [] }) => ({
    tyres: [...tyres, { type: 'turf', widthOverRear: { value: 62, unit: 'in' } }, { type: 'agricultural', widthOverRear: { value: 58, unit: 'in' } }],
    loaders: [...loaders, { ...loader!, id: 'light-loader', mass: lb(700) }, { ...loader!, id: 'other-loader', availability: 'field-kit' }],
    cabs: [...cabs, { id: 'soft-cab', availability: 'aftermarket', heat: true, airConditioning: false, mass: lb(250) }],
  }));
  fc.assert(fc.property(anyAnswers, anyDeal, (answers, by) => {
    const shuffled = { ...catalogue, machines: catalogue.machines.map((machine) => ({ ...machine, [list]: dealt((machine[list] ?? []) as unknown[], by) })) };
    expect(difference(catalogue, shuffled, answers)).toBeUndefined();
  }), runs(20));
}, aMinute);

test.each([52, 80])('nor does the order of tyres in the figure a trailer deck of %i in is held against', (width) => {
  const tyres: NonNullable<MachineDocument['tyres']> = [60, 62, 58].map((over, index) => ({ type: (['turf', 'industrial', 'agricultural'] as const)[index]!, widthOverRear: inches(over) }));
  const catalogue = withMachine(lineUp(), 'mid-deluxe', () => ({ tyres }));
  const shuffled = withMachine(lineUp(), 'mid-deluxe', () => ({ tyres: tyres.toReversed() }));
  expect(difference(catalogue, shuffled, saying({ haul: { how: 'own-trailer', trailer: { deckWidth: inches(width) } } }))).toBeUndefined();
});

const grades = ['ruled-out', 'ask', 'stands'];
type Raise = (machine: MachineDocument) => Partial<MachineDocument>;
const times = <U extends string>(amount: { value: number; unit: U } | undefined, by: number) => amount && { ...amount, value: amount.value * by };
const loaders = (machine: MachineDocument, change: (loader: NonNullable<MachineDocument['loaders']>[number]) => object) =>
  machine.loaders && { loaders: machine.loaders.map((loader) => ({ ...loader, ...change(loader) })) };

const raises: Record<string, Raise> = {
  'loader lift': (machine) => ({ ...loaders(machine, ({ ratings }) => ({ ratings: ratings.map((each) => ({ ...each, load: times(each.load, 1.5)! })) })) }),
  'loader height': (machine) => ({ ...loaders(machine, ({ fullHeight }) => (fullHeight ? { fullHeight: times(fullHeight, 1.3) } : {})) }),
  'hitch lift': (machine) => (machine.hitch?.lift610 ? { hitch: { ...machine.hitch, lift610: times(machine.hitch.lift610, 1.5)! } } : {}),
  'PTO power': ({ engine }) => (engine?.ptoPower ? { engine: { ...engine, power: times(engine.power ?? engine.ptoPower, 2)!, ptoPower: times(engine.ptoPower, 1.5)! } } : {}),
  'digging depth': ({ backhoe }) => (backhoe?.digDepth ? { backhoe: { ...backhoe, digDepth: times(backhoe.digDepth, 1.3)! } } : {}),
  'permitted gross mass': ({ grossMass }) => (grossMass ? { grossMass: times(grossMass, 1.3)! } : {}),
  'steadiness, by a lower centre of mass': ({ centreOfMassHeight: height }) => (height ? { centreOfMassHeight: { ...height, value: times(height.value, 0.9)! } } : {}),
  'value for money, by a lower price': ({ typicalPrices }) => (typicalPrices ? { typicalPrices: typicalPrices.map((each) => ({ ...each, price: { ...each.price, value: each.price.value * 0.8 } })) } : {}),
  comforts: () => ({ suspensionSeat: { availability: 'fitted' }, tiltWheel: { availability: 'fitted' }, cruise: { availability: 'fitted' } }),
};

test.each(Object.keys(raises))('more %s never lowers the standing of a machine', (name) => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, fc.nat({ max: 8 }), (catalogue, answers, index) => {
    const lot = { ...catalogue, units: [] };
    const { id } = lot.machines[index]!;
    const better = { ...lot, machines: lot.machines.map((machine) => (machine.id === id ? { ...machine, ...raises[name]!(machine) } : machine)) };
    const grade = (of: CatalogueDocument) => grades.indexOf(verdicts(shortlist(of, answers))[id]!);
    expect(grade(better), id).toBeGreaterThanOrEqual(grade(lot));
  }), runs(25));
}, aMinute);

test('a stronger loader doesn’t rule out a machine for a load that is only wished for', () => {
  const wish = saying({ tasks: [{ task: 'lift-pallets', must: false, weight: lb(3000) }] });
  const rated = (by: number) => withLoader(lineUp(), 'mid-economy', ({ ratings }) => ({ ratings: ratings.map((each) => ({ ...each, load: times(each.load, by)! })) }));
  expect(verdicts(shortlist(rated(1), wish))['mid-economy']).toBe('stands');
  expect(verdicts(shortlist(rated(3), wish))['mid-economy']).toBe('stands');
});

test('a machine that has nothing to do with the others swaps none of them', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, fc.nat({ max: 8 }), fc.constantFrom(0.5, 1.5), (catalogue, answers, index, by) => {
    const like = catalogue.machines[index]!;
    const stray: MachineDocument = { ...like, id: 'a-stray', line: 'stray', ...(like.mass && { mass: times(like.mass, by)! }), typicalPrices: [{ age: 5, hours: 300, price: usd(20_000 * by) }] };
    const ids = ({ shortlist: stands, askDealer, ruledOut }: ReturnType<typeof shortlist>) =>
      [stands, askDealer, ruledOut].map((group) => group.map(({ machine }) => machine).filter((id) => id !== 'a-stray'));
    expect(ids(shortlist({ ...catalogue, machines: [...catalogue.machines, stray] }, answers))).toEqual(ids(shortlist(catalogue, answers)));
  }), runs(50));
}, aMinute);

const dominates = (a: Entry, b: Entry) => Object.entries(b.contributions).every(([criterion, { value = 0 }]) => (a.contributions[criterion as keyof Entry['contributions']]!.value ?? 0) >= value);

test('a machine worth at least as much by every criterion is never below the other', () => {
  let dominated = 0;
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const { shortlist: stands, askDealer } = shortlist(catalogue, answers);
    for (const group of [stands, askDealer]) {
      for (const [index, above] of group.entries()) {
        for (const below of group.slice(index + 1)) {
          expect(below.score).toBeLessThanOrEqual(above.score);
          if (dominates(above, below)) dominated += 1;
          // Of equals the price decides; a difference too small to be scored makes equals.
          else if (dominates(below, above)) expect(below.score, `${below.machine} below ${above.machine}`).toBe(above.score);
        }
      }
    }
  }), runs(80));
  expect(dominated).toBeGreaterThan(60);
}, aMinute);

/** Every amount of a document said in another unit of its kind. */
function inOtherUnits<T>(document: T, step: number): T {
  if (Array.isArray(document)) return document.map((each) => inOtherUnits(each, step)) as T;
  if (typeof document !== 'object' || document === null) return document;
  const { value, unit } = document as { value?: unknown; unit?: unknown };
  const kind = typeof unit === 'string' ? kindOfUnit(unit) : undefined;
  if (typeof value === 'number' && kind) {
    const units = unitsOf(kind) as Unit[];
    const other = units[(units.indexOf(unit as Unit) + step) % units.length]!;
    return { value: toSi({ value, unit: unit as Unit }) / toSi({ value: 1, unit: other }), unit: other } as T;
  }
  return Object.fromEntries(Object.entries(document).map(([key, each]) => [key, inOtherUnits(each, step)])) as T;
}

const gist = (result: ReturnType<typeof shortlist>) => ({
  order: [result.shortlist, result.askDealer].map((group) => group.map(({ machine, unit, package: { additions } }) => [machine, unit, additions.map(({ what, id }) => [what, id])])),
  out: result.ruledOut.map(({ machine, because }) => [machine, because.map(({ need }) => need)]),
  units: unitsIn(result).map(({ unit, verdict }) => [unit, verdict]),
  changes: result.changes,
});

test('amounts said in other units give the same verdicts in the same order', () => {
  fc.assert(fc.property(anyAnswers, fc.integer({ min: 1, max: 3 }), (answers, step) => {
    const catalogue = catalogueForTests();
    const other = inOtherUnits(catalogue, step);
    expect(readCatalogue(other).faults).toEqual([]);
    expect(gist(shortlist(other, inOtherUnits(answers, step)))).toEqual(gist(shortlist(catalogue, answers)));
  }), runs(50));
}, aMinute);

test('control: a figure said in another unit without being converted would be noticed', () => {
  const heavy = JSON.parse(JSON.stringify(lineUp()).replaceAll('"lb"', '"kg"')) as CatalogueDocument;
  const trailer = saying({ haul: { how: 'own-trailer', trailer: { gross: lb(5000), empty: lb(1500) } } });
  expect(gist(shortlist(heavy, trailer))).not.toEqual(gist(shortlist(lineUp(), trailer)));
});
