import fc from 'fast-check';
import { answersFormat, comfortWishes, criteria, type AnswersDocument, type TaskDocument } from '../../src/answers/schema.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { availabilities, type CatalogueDocument } from '../../src/catalogue/schema.ts';
import { catalogueForTests } from './catalogue-for-tests.ts';

/** Every run tries the same cases; SEED=… tries others. A failing one isn’t shrunk for ever. */
export const runs = (numRuns: number) => ({ numRuns, seed: Number(process.env.SEED ?? 1), interruptAfterTimeLimit: 6000 });
/** A property may take longer than a single case. */
export const aMinute = 60_000;

const choice = fc.constantFrom;
type Fields = Record<string, fc.Arbitrary<unknown>>;
/** A record of which each field is said by one buyer in `of`, so that most answers leave something standing. */
const said = (fields: Fields, of: number) => fc.record(Object.fromEntries(Object.entries(fields).map(([name, field]) => [
  name, fc.oneof({ weight: of - 1, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: field }),
]))).map((record) => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)));
/** An amount in one of two units, over the same range. */
const amount = <A extends string, B extends string>(unit: A, from: number, to: number, other: B, ratio: number) => fc.oneof(
  fc.integer({ min: from, max: to }).map((value) => ({ value, unit })),
  fc.integer({ min: Math.ceil(from * ratio), max: Math.floor(to * ratio) }).map((value) => ({ value, unit: other })),
) as fc.Arbitrary<{ value: number; unit: A | B }>;

const mass = (from: number, to: number) => amount('lb', from, to, 'kg', 0.4536);
const length = (from: number, to: number) => amount('in', from, to, 'cm', 2.54);
const money = fc.integer({ min: 6000, max: 60_000 }).map((value) => ({ value, currency: 'USD' }));

const task = (id: TaskDocument['task'], fields: Fields = {}) => fc.tuple(said({ must: fc.boolean() }, 2), said(fields, 2))
  .map(([must, more]) => ({ task: id, ...must, ...more }));

const tasks = {
  mow: task('mow-lawn', { deck: choice('belly', 'rear', 'either'), hours: amount('h', 1, 6, 'min', 60) }),
  cut: task('cut-rough', { growth: choice('grass', 'brush') }),
  bales: task('lift-bales', { weight: mass(200, 1500), height: length(30, 120), diameter: length(36, 72), width: length(36, 60), hay: choice('dry', 'wrapped'), perYear: fc.integer({ min: 1, max: 200 }) }),
  pallets: task('lift-pallets', { weight: mass(100, 2500), height: length(20, 120) }),
  dig: task('dig', { depth: length(30, 115) }),
  carry: task('carry-implement', { weight: mass(100, 3000), distance: length(10, 60) }),
  snow: task('clear-snow', { length: length(300, 20_000), depth: length(2, 30), how: choice('blade', 'blower', 'either'), perYear: fc.integer({ min: 1, max: 30 }) }),
  wagon: task('tow-wagon', { weight: mass(300, 6000), brakes: choice('none', 'inertia', 'hydraulic', 'air') }),
  loose: task('move-loose', { material: choice('gravel', 'mulch', 'moon-dust'), volume: amount('yd3', 1, 60, 'm3', 0.76) }),
  logs: task('handle-logs', { species: choice('red-oak', 'hemlock', 'ironwood'), diameter: length(6, 30), length: length(48, 200), height: length(20, 100) }),
  till: task('till-garden', { area: amount('ft2', 500, 20_000, 'm2', 0.0929) }),
  grade: task('grade-drive', { length: length(600, 20_000) }),
  holes: task('bore-holes', { perYear: fc.integer({ min: 1, max: 30 }) }),
  chip: task('chip-brush', { diameter: length(1, 8) }),
  spread: task('spread-spray', { area: amount('acre', 1, 20, 'ha', 0.4) }),
  hay: task('make-hay', { area: amount('acre', 1, 20, 'ha', 0.4) }),
  arena: task('drag-arena', { area: amount('ft2', 5000, 40_000, 'm2', 0.0929) }),
  level: task('level-field', { area: amount('acre', 1, 20, 'ha', 0.4) }),
};

const slope = fc.oneof(
  choice('flat' as const, 'rolling' as const, 'steep' as const),
  fc.integer({ min: 0, max: 20 }).map((value) => ({ value, unit: 'deg' as const })),
  fc.integer({ min: 0, max: 35 }).map((value) => ({ value, unit: 'percent' as const })),
);

const owned = said({
  kind: choice('rotary-cutter', 'finish-mower', 'pallet-forks', 'bale-spear'),
  width: length(40, 80), mass: mass(100, 900), centreDistance: length(5, 40),
}, 2);

/** What a buyer may say: any field, any of them left out. */
export const anyAnswers = said({
  land: said({
    mown: amount('acre', 1, 8, 'ha', 0.4), slope, gate: length(55, 160), obstacles: choice('open', 'some', 'many'),
    overhead: fc.oneof(choice('open' as const), length(95, 160)), ground: choice('firm', 'soft', 'wet'), soil: choice('clay', 'loam', 'sand'),
    altitude: amount('ft', 0, 9000, 'm', 0.3048),
  }, 2),
  tasks: said(tasks, 5).map((chosen) => Object.values(chosen)),
  owned: fc.array(owned, { maxLength: 2 }),
  drivers: said({ count: fc.integer({ min: 1, max: 4 }), least: choice('new', 'some', 'experienced'), under18: fc.boolean(), limits: choice('none', 'legs', 'reach', 'both') }, 2),
  storage: said({ kind: choice('shed', 'garage', 'outdoors'), doorWidth: length(60, 150), doorHeight: length(70, 140), depth: length(130, 260) }, 3),
  haul: said({
    how: choice('never', 'own-trailer', 'hire'), towRating: mass(4000, 14_000), tongueRating: mass(300, 1500), delivery: amount('mi', 1, 90, 'km', 1.6),
    trailer: said({ gross: mass(5000, 14_000), empty: mass(900, 3000), deckLength: length(120, 260), deckWidth: length(52, 100) }, 2),
  }, 2),
  budget: said({
    limit: money, firm: fc.boolean(), includes: fc.subarray(['implements', 'delivery', 'tax']),
    pay: choice('cash', 'loan'), monthly: fc.integer({ min: 100, max: 900 }).map((value) => ({ value, currency: 'USD' })), service: choice('self', 'dealer', 'pickup'),
    hoursPerYear: fc.integer({ min: 10, max: 400 }), keepYears: fc.integer({ min: 1, max: 20 }),
  }, 2),
  comfort: said({
    cab: choice('heat-and-air', 'heat', 'none'), drive: choice('pedal', 'shuttle', 'any'), smoothSeat: fc.boolean(), tiltWheel: fc.boolean(),
    cruise: fc.boolean(), loaderOff: choice('often', 'rarely'), levelLift: fc.boolean(), mowerLiftAlone: fc.boolean(), exhaust: choice('no-filter', 'any'),
    must: fc.subarray([...comfortWishes], { maxLength: 2 }),
  }, 3),
  priorities: fc.shuffledSubarray([...criteria]),
}, 2).map((answers) => ({ format: answersFormat, ...answers }) as unknown as AnswersDocument);

type Path = readonly (string | number)[];
type Tree = Record<string | number, unknown>;

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;
const at = (document: unknown, path: Path) => path.reduce<unknown>((value, key) => (value as Tree)[key], document);

/** Every path below one that ends in a name: what could be left unsaid. */
const named = (value: unknown, path: Path): Path[] => !isTree(value) ? [] : Object.entries(value).flatMap(([key, inner]) => {
  const here = [...path, Array.isArray(value) ? Number(key) : key];
  return [...(Array.isArray(value) ? [] : [here]), ...named(inner, here)];
});

/** Changes a document where a path leads, unless an earlier change has cut the path off. */
function edit(document: CatalogueDocument, path: Path, change: (holder: Tree, key: string | number) => void) {
  const holder = path.slice(0, -1).reduce<unknown>((value, key) => (isTree(value) ? value[key] : undefined), document);
  const key = path.at(-1)!;
  if (isTree(holder) && key in holder) change(holder, key);
}
const drop = (holder: Tree, key: string | number) => { delete holder[key]; };

/** A copy of a catalogue with one figure left unsaid. */
export function without(document: CatalogueDocument, path: Path): CatalogueDocument {
  const copy = structuredClone(document);
  edit(copy, path, drop);
  return copy;
}

const whole = catalogueForTests();
const paths = (['machines', 'implements', 'units'] as const).flatMap((list) => named(whole[list], [list]));
const pattern = (path: Path) => path.map((step) => (typeof step === 'number' ? '*' : step)).join('.');
const firsts = new Map([...paths].reverse().map((path) => [pattern(path), path]));
const optional = new Set([...firsts].filter(([, path]) => readCatalogue(without(whole, path)).value !== undefined).map(([name]) => name));

/** Every figure of the line-up that a catalogue may leave unsaid. */
export const removable = paths.filter((path) => optional.has(pattern(path)));
const amounts = removable.filter((path) => { const found = at(whole, path); return isTree(found) && typeof found.value === 'number'; });
const availabilitiesAt = paths.filter((path) => path.at(-1) === 'availability');

interface Damage { says: string; to: (catalogue: CatalogueDocument) => void }
const removal = choice(...removable).map((path): Damage => ({ says: `without ${path.join('.')}`, to: (catalogue) => edit(catalogue, path, drop) }));
const scaling = fc.tuple(choice(...amounts), choice(0.4, 0.7, 1.4, 2.5)).map(([path, by]): Damage => ({
  says: `${path.join('.')} times ${by}`,
  to: (catalogue) => edit(catalogue, path, (holder, key) => { const found = holder[key]; if (isTree(found)) found.value = Number(found.value) * by; }),
}));
const otherwiseHad = fc.tuple(choice(...availabilitiesAt), choice(...availabilities)).map(([path, availability]): Damage => ({
  says: `${path.join('.')} ${availability}`, to: (catalogue) => edit(catalogue, path, (holder, key) => { holder[key] = availability; }),
}));

const damaged = (...kinds: fc.Arbitrary<Damage>[]) => fc.array(fc.oneof(...kinds), { maxLength: 120, size: 'max' }).map((damages) => {
  const copy = structuredClone(whole);
  for (const { to } of damages) to(copy);
  // A failing case is told by what was done to the line-up, not by the whole of it.
  return Object.defineProperty(copy, fc.toStringMethod, { value: () => damages.map(({ says }) => says).join(', '), enumerable: false });
}).filter((catalogue) => readCatalogue(catalogue).value !== undefined);

/** The line-up of the tests with figures left unsaid. */
export const catalogueWithGaps = damaged(removal);
/** The same with other figures besides, and things had otherwise. */
export const anyCatalogue = damaged(removal, scaling, otherwiseHad);
