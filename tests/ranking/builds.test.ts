/** What is chosen where there is a choice, and that a wish, or what a buyer owns, never rules out. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument, TaskDocument } from '../../src/answers/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, runs } from '../support/arbitraries.ts';
import { catalogueForTests, inches, lb, lineUp, soundUnit, usd, withImplement, withLoader, withMachine } from '../support/catalogue-for-tests.ts';
import { because, mustDo, mustHave, out, saying, standing, toAsk, unitOf } from '../support/reckon.ts';

const additionsOf = (machine: string, answers: AnswersDocument, catalogue = lineUp()) =>
  shortlist(catalogue, answers).shortlist.find((each) => each.machine === machine)?.package.additions.map(({ what, id }) => [what, id].filter(Boolean).join(' '));

test('the cheapest of the parts that serve is chosen', () => {
  expect(additionsOf('small-standard', mustDo({ task: 'mow-lawn', deck: 'belly' }))).toEqual(['deck small-standard-deck-60', 'mid-pto']);
  const dear = withMachine(lineUp(), 'small-standard', ({ decks = [] }) => ({ decks: decks.map((deck) => (deck.width.value === 60 ? { ...deck, price: usd(9000) } : deck)) }));
  expect(additionsOf('small-standard', mustDo({ task: 'mow-lawn', deck: 'belly' }), dear)).toContain('deck small-standard-deck-72');
});

test('what is on the unit, comes with it or is the buyer’s own isn’t bought again', () => {
  const unit = soundUnit('the-unit', 'mid-deluxe', { attachments: ['cutter-60'] });
  expect(unitOf(unit, mustDo({ task: 'cut-rough' })).package.additions).toEqual([]);
  const owning = { ...mustDo({ task: 'cut-rough' }), owned: [{ kind: 'rotary-cutter' as const, width: inches(60), mass: lb(500), hitchCategory: '1' as const }] };
  expect(additionsOf('mid-deluxe', owning)).toEqual([]);
  expect(additionsOf('mid-deluxe', mustDo({ task: 'cut-rough' })), 'control').toEqual(['implement cutter-60']);
});

test('ballast is bought where the rear axle asks for it, the lightest box that does', () => {
  expect(additionsOf('mid-deluxe', mustDo({ task: 'lift-bales', weight: lb(800) }))).toContain('rear-ballast ballast-box-500');
  expect(additionsOf('mid-deluxe', mustDo({ task: 'lift-bales', weight: lb(200) })), 'control: a light load').not.toContain('rear-ballast ballast-box-500');
});

/** 2 acres take 1 h 22 under 54 in and 1 h 14 under 60 in; the gate lets through no deck wider than 55 in. */
test('a wish for a faster mow doesn’t choose a deck that the gate rules out', () => {
  const wish: AnswersDocument = {
    ...saying(), land: { ...saying().land, mown: { value: 2, unit: 'acre' }, obstacles: 'some', gate: inches(67) },
    tasks: [{ task: 'mow-lawn', deck: 'belly', must: false, hours: { value: 78, unit: 'min' } }],
  };
  expect(because(shortlist(lineUp(), wish), 'subcompact-economy')).toEqual([]);
  expect(standing(lineUp(), wish)).toEqual(expect.arrayContaining(['subcompact-economy', 'subcompact-deluxe']));
});

const wishFor = (task: TaskDocument, more: Partial<AnswersDocument>) => saying({ ...more, tasks: [{ ...task, must: false }] });
const firm = (value: number) => ({ budget: { limit: usd(value), firm: true } });
const trailer = (payload: number) => ({ haul: { how: 'own-trailer' as const, trailer: { gross: lb(2000 + payload), empty: lb(2000) } } });

test.each<[string, string, TaskDocument, Partial<AnswersDocument>]>([
  ['a backhoe', 'price', { task: 'dig' }, firm(12_000)],
  ['a cutter', 'price', { task: 'cut-rough' }, firm(12_600)],
  ['a belly mower', 'price', { task: 'mow-lawn', deck: 'belly' }, firm(12_000)],
  ['forks', 'price', { task: 'lift-pallets', weight: lb(200) }, firm(12_600)],
  ['a backhoe', 'weight on the trailer', { task: 'dig' }, trailer(3000)],
  ['a cutter', 'weight on the trailer', { task: 'cut-rough' }, trailer(3000)],
])('a wish for %s doesn’t rule out by its %s: without it the machine serves', (_wish, _by, task, limits) => {
  const plain = standing(lineUp(), saying(limits));
  expect(plain.length, 'control: something stands without the wish').toBeGreaterThan(0);
  expect(standing(lineUp(), wishFor(task, limits))).toEqual(plain);
  expect(standing(lineUp(), { ...wishFor(task, limits), tasks: [{ ...task, must: true }] }).length, 'control: as a must it does rule out').toBeLessThan(plain.length);
});

test('nothing is bought for a wish that the machine can’t meet', () => {
  const pallet: TaskDocument = { task: 'lift-pallets', weight: lb(500), must: false };
  const bought = (machine: string) => additionsOf(machine, saying({ tasks: [pallet] }));
  expect(bought('mid-deluxe'), 'control: for one it can meet').toEqual(['implement forks']);
  expect(bought('small-deluxe')).toEqual([]);
});

test('a wish for digging, cutting or mowing never rules out what would stand without it', () => {
  const wishes: TaskDocument[] = [{ task: 'dig' }, { task: 'cut-rough' }, { task: 'mow-lawn', deck: 'belly' }];
  fc.assert(fc.property(anyAnswers, fc.constantFrom(...wishes), (answers, wish) => {
    const others = (answers.tasks ?? []).filter(({ task }) => task !== wish.task);
    const before = out(lineUp(), { ...answers, tasks: others });
    expect(out(lineUp(), { ...answers, tasks: [...others, wish] }).filter((id) => !before.includes(id))).toEqual([]);
  }), runs(40));
}, aMinute);

test('a cutter of his own that is too narrow doesn’t rule out a frame for which a wider one is sold', () => {
  const owning = { ...mustDo({ task: 'cut-rough' }), owned: [{ kind: 'rotary-cutter' as const, width: inches(48), mass: lb(400) }] };
  expect(standing(lineUp(), owning)).toEqual(expect.arrayContaining(standing(lineUp(), mustDo({ task: 'cut-rough' }))));
});

test('a machine without a rear PTO turns no cutter and no rear mower', () => {
  const without = withMachine(lineUp(), 'mid-deluxe', () => ({ rearPto: { speeds: [] } }));
  expect(standing(lineUp(), mustDo({ task: 'cut-rough' })), 'control').toContain('mid-deluxe');
  expect(out(without, mustDo({ task: 'cut-rough' }))).toContain('mid-deluxe');
  expect(out(without, mustDo({ task: 'mow-lawn', deck: 'rear' }))).toContain('mid-deluxe');
});

test.each(['width', 'mass'] as const)('an implement of unknown %s suits nobody knows whom', (figure) => {
  const only = { ...lineUp(), implements: lineUp().implements!.filter(({ id }) => id === 'cutter-60') };
  expect(standing(only, mustDo({ task: 'cut-rough' })), 'control').toContain('mid-deluxe');
  expect(toAsk(withImplement(only, 'cutter-60', () => ({ [figure]: undefined })), mustDo({ task: 'cut-rough' }))).toContain('mid-deluxe');
});

test.each<[string, TaskDocument]>([
  ['rotary cutter', { task: 'cut-rough' }], ['finish mower', { task: 'mow-lawn', deck: 'rear' }],
])('where the dealer lists no %s, the machines are to be asked about, not ruled out', (_what, task) => {
  const bare = { ...lineUp(), implements: [] };
  expect(out(bare, mustDo(task))).toEqual([]);
  expect(toAsk(bare, mustDo(task))).toContain('mid-deluxe');
});

test('a unit on tyres of which nobody gave the width is one to ask about', () => {
  const unit = soundUnit('the-unit', 'mid-deluxe', { tyres: { type: 'turf' } });
  const gate = saying({ land: { gate: inches(73) } });
  expect(unitOf(soundUnit('the-unit', 'mid-deluxe'), gate).verdict, 'control: on tyres that are listed').toBe('stands');
  expect(unitOf(unit, gate).verdict).toBe('ask');
});

test('a unit whose cab only heats doesn’t have the cab with air', () => {
  const catalogue = withMachine(lineUp(), 'mid-deluxe', ({ cabs = [] }) => ({ cabs: [...cabs, { id: 'soft-cab', availability: 'aftermarket', heat: true, airConditioning: false }] }));
  const unit = (cab: string) => unitOf(soundUnit('the-unit', 'mid-deluxe', { fitted: { loader: true, cab: true }, cab }), mustHave({ cab: 'heat-and-air' }), catalogue).verdict;
  expect(unit('mid-deluxe-factory-cab'), 'control: with the factory cab').toBe('stands');
  expect(unit('soft-cab')).toBe('ruled-out');
});

test('a loader that could be bought counts for how loaders come off, though nothing is to be lifted', () => {
  const catalogue = withLoader(lineUp(), 'mid-deluxe', () => ({ availability: 'field-kit' }));
  expect(standing(lineUp(), mustHave({ loaderOff: 'often' })), 'control: with the loader on it').toContain('mid-deluxe');
  expect(standing(catalogue, mustHave({ loaderOff: 'often' }))).toContain('mid-deluxe');
});

test('front weights beyond what the machine may weigh don’t clear an implement', () => {
  const strong = withMachine(lineUp(), 'subcompact-economy', () => ({ hitch: { category: '1', lift610: lb(4000) } }));
  const heavy = mustDo({ task: 'carry-implement', weight: lb(3000), distance: inches(40) });
  expect(standing(strong, mustDo({ task: 'carry-implement', weight: lb(500), distance: inches(24) })), 'control: a lighter one').toContain('subcompact-economy');
  expect(standing(strong, heavy)).not.toContain('subcompact-economy');
});

const trailerFor = (task: TaskDocument, pounds: number) => ({ ...mustDo(task), ...trailer(pounds) });

test('a spear of unknown weight isn’t taken for weightless on a trailer', () => {
  const bale: TaskDocument = { task: 'lift-bales', weight: lb(500) };
  // 2,900 of machine, 860 of loader, 150 of reserve; the spear makes it 4,070.
  expect(out(lineUp(), trailerFor(bale, 4000))).toContain('mid-deluxe');
  expect(standing(lineUp(), trailerFor(bale, 4100)), 'control').toContain('mid-deluxe');
  expect(standing(withImplement(lineUp(), 'spear', () => ({ mass: undefined })), trailerFor(bale, 4000))).not.toContain('mid-deluxe');
});

test('a deck that is on the unit travels along, whatever it is for', () => {
  // 1,620 of machine, 480 of loader, 150 of reserve; the deck of 60 in makes it 2,490.
  const on = (payload: number) => unitOf(catalogueForTests().units![0]!, saying(trailer(payload))).verdict;
  expect(on(2500)).toBe('stands');
  expect(on(2400)).toBe('ruled-out');
});

test('a loader that is on the unit, of which nobody gave the weight, leaves the trailer to be asked about', () => {
  const nameless = withMachine(lineUp(), 'mid-deluxe', () => ({ loaders: undefined }));
  const unit = soundUnit('the-unit', 'mid-deluxe');
  expect(unitOf(unit, saying(trailer(5000))).verdict, 'control: with its loader known').toBe('stands');
  expect(unitOf(unit, saying(trailer(3100)), nameless).verdict).toBe('ask');
});
