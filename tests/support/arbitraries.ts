import fc from 'fast-check';
import { answersFormat, comfortWishes, criteria, type AnswersDocument, type TaskDocument } from '../../src/answers/schema.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { availabilities, type CatalogueDocument } from '../../src/catalogue/schema.ts';
import { catalogueForTests } from './catalogue-for-tests.ts';

/** Every run tries the same cases; SEED=… tries others. A failing one is not shrunk for ever. */
export const runs = (numRuns: number) => ({ numRuns, seed: Number(process.env.SEED ?? 1), interruptAfterTimeLimit: 15_000 });
/** A property may take longer than a single case. */
export const aMinute = 60_000;

const choice = fc.constantFrom;
const maybe = <T extends object>(fields: { [K in keyof T]: fc.Arbitrary<T[K]> }) => fc.record(fields, { requiredKeys: [] }) as fc.Arbitrary<Partial<T>>;
/** An amount in one of two units, over the same range. */
const amount = <A extends string, B extends string>(unit: A, from: number, to: number, other: B, ratio: number) => fc.oneof(
  fc.integer({ min: from, max: to }).map((value) => ({ value, unit })),
  fc.integer({ min: Math.ceil(from * ratio), max: Math.floor(to * ratio) }).map((value) => ({ value, unit: other })),
) as fc.Arbitrary<{ value: number; unit: A | B }>;

const mass = (from: number, to: number) => amount('lb', from, to, 'kg', 0.4536);
const length = (from: number, to: number) => amount('in', from, to, 'cm', 2.54);
const money = fc.integer({ min: 6000, max: 60_000 }).map((value) => ({ value, currency: 'USD' }));

/** Something said by one buyer in `of`, so that most answers leave something standing. */
const rarely = <T>(said: fc.Arbitrary<T>, of = 3) => fc.option(said, { nil: undefined, freq: 1 / (of - 1) < 1 ? of - 1 : 1 });

const often = { must: fc.boolean(), perYear: fc.integer({ min: 0, max: 200 }) };
const task = <T extends TaskDocument['task']>(id: T, fields: Record<string, fc.Arbitrary<unknown>> = {}) =>
  maybe({ ...often, ...fields }).map((said) => ({ task: id, ...said })) as unknown as fc.Arbitrary<TaskDocument>;

const tasks = [
  task('mow-lawn', { deck: choice('belly', 'rear', 'either'), hours: amount('h', 1, 6, 'min', 60) }),
  task('cut-rough', { growth: choice('grass', 'brush') }),
  task('lift-bales', { weight: mass(200, 2200), height: length(30, 130) }),
  task('lift-pallets', { weight: mass(200, 3000), height: length(20, 130) }),
  task('dig', { depth: length(30, 130) }),
  task('carry-implement', { weight: mass(100, 3500), distance: length(10, 60) }),
  task('clear-snow'), task('tow-wagon', { weight: mass(300, 6000) }),
];

const slope = fc.oneof(
  choice('flat' as const, 'rolling' as const, 'steep' as const),
  fc.integer({ min: 0, max: 25 }).map((value) => ({ value, unit: 'deg' as const })),
  fc.integer({ min: 0, max: 40 }).map((value) => ({ value, unit: 'percent' as const })),
);

const owned = maybe({
  kind: choice('rotary-cutter' as const, 'finish-mower' as const, 'pallet-forks' as const, 'bale-spear' as const),
  width: length(40, 80), mass: mass(100, 900), centreDistance: length(5, 40),
});

/** What a buyer may say: any field, any of them left out. */
export const anyAnswers: fc.Arbitrary<AnswersDocument> = maybe({
  land: maybe({
    mown: amount('acre', 1, 20, 'ha', 0.4), slope, gate: length(45, 140), obstacles: choice('open', 'some', 'many'),
    overhead: fc.oneof(choice('open' as const), length(80, 150)),
  }),
  tasks: fc.tuple(...tasks.map((each) => fc.option(each, { nil: undefined }))).map((chosen) => chosen.filter((each) => each !== undefined)),
  owned: fc.array(owned, { maxLength: 2 }),
  drivers: maybe({ count: fc.integer({ min: 1, max: 4 }), least: choice('new', 'some', 'experienced'), under18: fc.boolean() }),
  storage: maybe({ kind: choice('shed', 'garage', 'outdoors'), doorWidth: length(50, 150), doorHeight: length(65, 140), depth: length(100, 260) }),
  haul: maybe({
    how: choice('never', 'own-trailer', 'hire'), towRating: mass(3000, 14_000), delivery: amount('mi', 1, 90, 'km', 1.6),
    trailer: maybe({ gross: mass(3000, 14_000), empty: mass(900, 3500), deckLength: length(110, 260), deckWidth: length(50, 100) }),
  }),
  budget: maybe({
    limit: money, firm: fc.boolean(), includes: fc.subarray(['implements', 'delivery', 'tax']),
    hoursPerYear: fc.integer({ min: 10, max: 400 }), keepYears: fc.integer({ min: 1, max: 20 }),
  }),
  comfort: maybe({
    cab: choice('heat-and-air', 'heat', 'none'), drive: choice('pedal', 'shuttle', 'any'), smoothSeat: fc.boolean(), tiltWheel: fc.boolean(),
    cruise: fc.boolean(), loaderOff: choice('often', 'rarely'), levelLift: fc.boolean(), mowerLiftAlone: fc.boolean(), exhaust: choice('no-filter', 'any'),
    must: fc.subarray([...comfortWishes]),
  }),
  priorities: fc.shuffledSubarray([...criteria]),
}).map((said) => ({ format: answersFormat, ...said }) as unknown as AnswersDocument);

type Path = readonly (string | number)[];
type Tree = Record<string | number, unknown>;

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;
const at = (document: unknown, path: Path) => path.reduce<unknown>((value, key) => (value as Tree)[key], document);

/** Every path below one that ends in a name: what could be left unsaid. */
const named = (value: unknown, path: Path): Path[] => !isTree(value) ? [] : Object.entries(value).flatMap(([key, inner]) => {
  const here = [...path, Array.isArray(value) ? Number(key) : key];
  return [...(Array.isArray(value) ? [] : [here]), ...named(inner, here)];
});

/** A copy of a document changed where a path leads; where it no longer leads anywhere, the copy alone. */
function edited(document: CatalogueDocument, path: Path, edit: (holder: Tree, key: string | number) => void): CatalogueDocument {
  const copy = structuredClone(document);
  const holder = path.slice(0, -1).reduce<unknown>((value, key) => (isTree(value) ? value[key] : undefined), copy);
  const key = path.at(-1)!;
  if (isTree(holder) && key in holder) edit(holder, key);
  return copy;
}
export const without = (document: CatalogueDocument, path: Path) => edited(document, path, (holder, key) => delete holder[key]);

const whole = catalogueForTests();
const paths = (['machines', 'implements', 'units'] as const).flatMap((list) => named(whole[list], [list]));
const pattern = (path: Path) => path.map((step) => (typeof step === 'number' ? '*' : step)).join('.');
const firsts = new Map([...paths].reverse().map((path) => [pattern(path), path]));
const optional = new Set([...firsts].filter(([, path]) => readCatalogue(without(whole, path)).value !== undefined).map(([name]) => name));

/** Every figure of the line-up that a catalogue may leave unsaid. */
export const removable = paths.filter((path) => optional.has(pattern(path)));
const amounts = removable.filter((path) => { const found = at(whole, path); return isTree(found) && typeof found.value === 'number'; });
const availabilitiesAt = paths.filter((path) => path.at(-1) === 'availability');

type Damage = (catalogue: CatalogueDocument) => CatalogueDocument;
const removal = choice(...removable).map((path): Damage => (catalogue) => without(catalogue, path));
const scaling = fc.tuple(choice(...amounts), choice(0.4, 0.7, 1.4, 2.5)).map(([path, by]): Damage => (catalogue) =>
  edited(catalogue, path, (holder, key) => { const found = holder[key]; if (isTree(found)) found.value = Number(found.value) * by; }));
const otherwiseHad = fc.tuple(choice(...availabilitiesAt), choice(...availabilities)).map(([path, availability]): Damage => (catalogue) =>
  edited(catalogue, path, (holder, key) => { holder[key] = availability; }));

const damaged = (...kinds: fc.Arbitrary<Damage>[]) => fc.array(fc.oneof(...kinds), { maxLength: 25 })
  .map((damages) => damages.reduce((catalogue, damage) => damage(catalogue), whole))
  .filter((catalogue) => readCatalogue(catalogue).value !== undefined);

/** The line-up of the tests with figures left unsaid. */
export const catalogueWithGaps = damaged(removal);
/** The same with other figures besides, and things had otherwise. */
export const anyCatalogue = damaged(removal, scaling, otherwiseHad);
