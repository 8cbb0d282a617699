/**
 * Facts of the trade about classes of machine in general: how wide they stand, what they lift, what they
 * weigh. Each is common practice, no source, and each has a control in which the figure is altered and
 * the verdict turns.
 */
import { expect, test } from 'vitest';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { catalogueForTests, degrees, inches, lb, lineUp, withLoader, withMachine } from '../support/catalogue-for-tests.ts';
import { because, mustDo, out, saying, standing } from '../support/reckon.ts';

const all = lineUp().machines.map(({ id }) => id);
const subcompacts = ['subcompact-economy', 'subcompact-deluxe'];
const smalls = ['small-standard', 'small-deluxe'];
const mids = ['mid-economy', 'mid-deluxe'];
const larges = ['large-economy', 'large-deluxe'];

test('the line-up of the tests is read without a fault, an unknown key or a warning', () => {
  const { faults, unknownKeys, warnings } = readCatalogue(catalogueForTests());
  expect({ faults, unknownKeys, warnings }).toEqual({ faults: [], unknownKeys: [], warnings: [] });
});

// Common practice, no source.
const bale = mustDo({ task: 'lift-bales', weight: lb(800) });

test('a round bale of 800 lb is too much for the smallest machines', () => {
  expect(out(lineUp(), bale)).toEqual([...subcompacts, ...smalls, 'mid-economy']);
  expect(because(shortlist(lineUp(), bale), 'subcompact-economy')).toEqual(['lift-bales.weight']);
  expect(standing(lineUp(), bale)).toEqual(['mid-deluxe', 'wide-mid-standard', ...larges]);
});

test('control: with the loader of a larger frame the small one would take it', () => {
  const strong = withLoader(lineUp(), 'small-standard', () => ({ ratings: lineUp().machines.find(({ id }) => id === 'mid-deluxe')!.loaders![0]!.ratings }));
  expect(standing(strong, bale)).toContain('small-standard');
});

test('control: with a weaker loader the deluxe mid would not', () => {
  const weak = withLoader(lineUp(), 'mid-deluxe', ({ ratings }) => ({ ratings: ratings.map((rating) => ({ ...rating, load: lb(rating.load.value * 0.8) })) }));
  expect(out(weak, bale)).toContain('mid-deluxe');
});

// Common practice, no source: 48, 54, 60, 66 and 72 in over the tyres; the rule book leaves 6 in on each side.
const throughGate = (width: number) => saying({ land: { gate: inches(width) } });

test.each([
  [59, []],
  [60, subcompacts],
  [65, subcompacts],
  [66, [...subcompacts, ...smalls]],
  [72, [...subcompacts, ...smalls, ...mids]],
  [78, [...subcompacts, ...smalls, ...mids, 'wide-mid-standard']],
  [83, [...subcompacts, ...smalls, ...mids, 'wide-mid-standard']],
  [84, all],
])('a gate of %i in lets through exactly the classes that fit', (width, through) => {
  expect(standing(lineUp(), throughGate(width))).toEqual(through);
});

test('control: on narrower tyres the economy mid would pass a gate for small frames', () => {
  const narrow = withMachine(lineUp(), 'mid-economy', () => ({ tyres: [{ type: 'industrial', widthOverRear: inches(54) }] }));
  expect(standing(narrow, throughGate(66))).toEqual([...subcompacts, ...smalls, 'mid-economy']);
});

// Common practice, no source.
const cutting = mustDo({ task: 'cut-rough' });
const onlyCutter60 = () => ({ ...lineUp(), implements: lineUp().implements!.filter(({ id }) => id === 'cutter-60') });

test('a cutter of 5 ft covers the tyres of the mid, and not those of the wide mid', () => {
  expect(standing(onlyCutter60(), cutting)).toEqual([...smalls, ...mids]);
  expect(out(onlyCutter60(), cutting)).toEqual([...subcompacts, 'wide-mid-standard', ...larges]);
});

test('control: on tyres 5 ft wide the wide mid would be covered', () => {
  const narrow = withMachine(onlyCutter60(), 'wide-mid-standard', () => ({ tyres: [{ type: 'industrial', widthOverRear: inches(60) }] }));
  expect(standing(narrow, cutting)).toContain('wide-mid-standard');
});

// Common practice, no source: about 2,200 against 2,900 lb bare in one 60-in frame.
test('of one 60-in frame the deluxe lifts a pallet that the economy can’t', () => {
  const pallet = mustDo({ task: 'lift-pallets', weight: lb(700) });
  expect(out(lineUp(), pallet)).toContain('mid-economy');
  expect(standing(lineUp(), pallet)).toContain('mid-deluxe');
  const swapped = withLoader(lineUp(), 'mid-economy', () => ({ ratings: lineUp().machines.find(({ id }) => id === 'mid-deluxe')!.loaders![0]!.ratings }));
  expect(standing(swapped, pallet), 'control: with the loader of the deluxe').toContain('mid-economy');
});

test('of one 60-in frame the deluxe carries an implement on its hitch that the economy can’t', () => {
  const carried = mustDo({ task: 'carry-implement', weight: lb(1400), distance: { value: 610, unit: 'mm' } });
  expect(out(lineUp(), carried)).toContain('mid-economy');
  expect(standing(lineUp(), carried)).toContain('mid-deluxe');
  const strong = withMachine(lineUp(), 'mid-economy', () => ({ hitch: { category: '1', lift610: lb(2500) } }));
  expect(standing(strong, carried), 'control: with the hitch of the deluxe').toContain('mid-economy');
});

test('of one 60-in frame the economy rides on a trailer that can’t carry the deluxe', () => {
  const trailer = saying({ haul: { how: 'own-trailer', trailer: { gross: lb(5000), empty: lb(1500) } } });
  expect(standing(lineUp(), trailer)).toContain('mid-economy');
  expect(out(lineUp(), trailer)).toContain('mid-deluxe');
  const light = withMachine(lineUp(), 'mid-deluxe', () => ({ mass: lb(2200) }));
  expect(standing(light, trailer), 'control: as light as the economy').toContain('mid-deluxe');
});

// Common practice, no source: about a foot wider, 30 to 40 % more at the loader, and higher.
test('the large frame lifts more, and higher, than the deluxe mid', () => {
  const heavy = mustDo({ task: 'lift-pallets', weight: lb(1100) });
  const high = mustDo({ task: 'lift-pallets', weight: lb(500), height: inches(108) });
  expect(standing(lineUp(), heavy)).toEqual(larges);
  expect(standing(lineUp(), high)).toEqual(larges);
  expect(because(shortlist(lineUp(), heavy), 'mid-deluxe')).toEqual(['lift-pallets.weight']);
  expect(because(shortlist(lineUp(), high), 'mid-deluxe')).toEqual(['lift-pallets.height']);
  const taller = withLoader(lineUp(), 'mid-deluxe', () => ({ fullHeight: inches(110) }));
  expect(standing(taller, high), 'control: a loader as high').toContain('mid-deluxe');
  const more = withLoader(lineUp(), 'mid-deluxe', ({ ratings }) => ({ ratings: ratings.map((rating) => ({ ...rating, load: lb(rating.load.value * 1.35) })) }));
  expect(standing(more, heavy), 'control: a loader as strong').toContain('mid-deluxe');
});

test('the large frame is too wide for a gate that the deluxe mid passes with a foot less', () => {
  expect(out(lineUp(), throughGate(83))).toEqual(larges);
  expect(standing(lineUp(), throughGate(72))).toContain('mid-deluxe');
});

// Common practice, no source: the bare mass grows by 500 to 600 lb.
test('from the heavier subcompact to the small frame a trailer is overloaded', () => {
  const trailer = saying({ haul: { how: 'own-trailer', trailer: { gross: lb(4300), empty: lb(1700) } } });
  expect(standing(lineUp(), trailer)).toEqual(subcompacts);
  const light = withMachine(lineUp(), 'small-standard', ({ mass }) => ({ mass: lb(mass!.value - 550) }));
  expect(standing(light, trailer), 'control: 550 lb lighter').toContain('small-standard');
});

// Common practice, no source.
test('a buyer without a hard requirement keeps the whole line-up', () => {
  const wishes = saying({
    land: { mown: { value: 2, unit: 'acre' }, obstacles: 'some', slope: degrees(4) },
    tasks: [{ task: 'mow-lawn', deck: 'either' }, { task: 'cut-rough' }, { task: 'lift-pallets', weight: lb(500), height: inches(60) }],
    comfort: { cab: 'heat', drive: 'pedal', cruise: true },
    budget: { limit: { value: 25_000, currency: 'USD' } },
  });
  expect(standing(lineUp(), wishes)).toEqual(all);
  const firm = { ...wishes, budget: { ...wishes.budget, firm: true } };
  expect(out(lineUp(), firm), 'control: a firm limit rules out').toContain('large-deluxe');
});

// Common practice, no source.
test('economy mid and small overlap: the same everyday work leaves both standing', () => {
  const everyday = mustDo({ task: 'cut-rough' }, { task: 'lift-pallets', weight: lb(300), height: inches(72) }, { task: 'carry-implement', weight: lb(900) });
  const both = ['small-standard', 'mid-economy'];
  expect(standing(lineUp(), everyday)).toEqual(expect.arrayContaining(both));
  const belly = { ...everyday, tasks: [...everyday.tasks!, { task: 'mow-lawn' as const, deck: 'belly' as const, must: true }] };
  expect(standing(lineUp(), belly), 'the belly mower decides').toContain('small-standard');
  expect(out(lineUp(), belly)).toContain('mid-economy');
});

test('between economy mid and small the price decides', () => {
  const answers = saying({ budget: { limit: { value: 24_000, currency: 'USD' } }, priorities: ['price'] });
  const order = (catalogue = lineUp()) => shortlist(catalogue, answers).shortlist.map(({ machine }) => machine).filter((id) => id === 'small-standard' || id === 'mid-economy');
  const cheaper = (id: string) => withMachine(lineUp(), id, ({ typicalPrices = [] }) => ({ typicalPrices: typicalPrices.map((each) => ({ ...each, price: { ...each.price, value: each.price.value - 3000 } })) }));
  expect(order(cheaper('mid-economy'))).toEqual(['mid-economy', 'small-standard']);
  expect(order(cheaper('small-standard')), 'control: the other way round').toEqual(['small-standard', 'mid-economy']);
});
