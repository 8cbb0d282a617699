/** What to look at on one unit: only what applies to it, safety first. */
import { describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { MachineDocument, UnitDocument } from '../../src/catalogue/schema.ts';
import { inspectionOf } from '../../src/lot/inspection/inspection.ts';
import { itemIds } from '../../src/lot/inspection/items.ts';
import { sayInspection } from '../../src/lot/inspection/say.ts';
import { en } from '../../src/lot/words/en.ts';
import { lineUp, soundUnit, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { saying } from '../support/reckon.ts';
import { before, candidateIn, lifting } from './buyers.ts';
import { voiceOf } from './voice.ts';

const documentOf = (unit: Partial<UnitDocument>, machine: Partial<MachineDocument> = {}) => withMachine(withUnits(lineUp(), soundUnit('u', 'mid-deluxe', unit)), 'mid-deluxe', () => machine);
function listOf(unit: Partial<UnitDocument> = {}, answers: AnswersDocument = saying(), machine: Partial<MachineDocument> = {}) {
  const document = JSON.parse(JSON.stringify(documentOf(unit, machine))) as ReturnType<typeof documentOf>;
  const { catalogue, needs, world } = before(document, answers);
  const { machine: its, unit: own } = candidateIn(catalogue, 'u');
  return inspectionOf(own!, its, needs, world);
}
const whyOf = (list: ReturnType<typeof listOf>, id: string) => list.items.find((item) => item.id === id)?.why.id;

test('what rules it out comes first, then what may hurt someone, then the rest', () => {
  const { items, ruledOut } = listOf({ recallOpen: true, seatBelt: false });
  expect(items.slice(0, 2).map(({ id }) => id)).toEqual(['seat-belt', 'recall']);
  expect(ruledOut).toEqual(['seat-belt', 'recall']);
  expect(items.map(({ order }) => order)).toEqual(items.map((_, index) => index + 1));
  const rest = items.slice(2).map(({ safety }) => safety);
  expect(rest).toEqual([...rest].sort((a, b) => Number(b) - Number(a)));
  expect(new Set(rest).size).toBe(2);
});

test.each<[string, Partial<UnitDocument>, string, boolean]>([
  ['a ROPS that is missing', { rops: { kind: 'none' } }, 'rops.missing', true],
  ['one that was altered', { rops: { kind: 'folding', certified: true, altered: true } }, 'rops.altered', true],
  ['one that isn’t certified', { rops: { kind: 'folding', certified: false } }, 'rops.uncertified', true],
  ['one nobody spoke of', { rops: undefined } as never, 'rops.unknown', false],
  ['a sound one', {}, 'rops.see', false],
])('%s is said to be so, and agrees with the gate', (_what, unit, why, out) => {
  const list = listOf(unit);
  expect(whyOf(list, 'rops')).toBe(why);
  expect(list.ruledOut.includes('rops')).toBe(out);
  const { evaluationOf, catalogue } = before(JSON.parse(JSON.stringify(documentOf(unit))) as ReturnType<typeof documentOf>);
  const { outcome } = evaluationOf(candidateIn(catalogue, 'u')).judged.find(({ need }) => need.capability === 'rops')!.verdict;
  expect(outcome === 'failed').toBe(out);
});

describe('only what applies is on it', () => {
  test.each<[string, string, Partial<UnitDocument>, Partial<UnitDocument>]>([
    ['the loader', 'loader-pins', { fitted: { loader: true } }, { fitted: { loader: false } }],
    ['the backhoe', 'backhoe', { fitted: { backhoe: true } }, { fitted: { backhoe: false } }],
    ['the deck', 'deck', { fitted: { deck: true } }, { fitted: { deck: false } }],
    ['a cab that is no ROPS', 'cab', { fitted: { cab: true } }, { fitted: { cab: true }, rops: { kind: 'cab', certified: true } }],
    ['the clutch', 'clutch', { transmission: 'gear' }, { transmission: 'hydrostatic' }],
    ['the hydrostatic drive', 'hydrostatic', { transmission: 'hydrostatic' }, { transmission: 'power-reverser' }],
    ['an open loan', 'lien', { lienOpen: true }, { lienOpen: false }],
    ['another market', 'imported', { imported: true }, { imported: false }],
    ['an unverified meter', 'hour-meter', { meterVerified: false }, { meterVerified: true }],
    ['liquid in the tyres', 'tyre-ballast', { tyres: { liquid: true } }, { tyres: { liquid: false } }],
    ['worn tyres', 'tyres', { tyres: { wear: 0.8 } }, { tyres: { wear: 0.1 } }],
    ['a recall nobody spoke of', 'recall', {}, { recallOpen: false }],
  ])('%s', (_what, id, there, gone) => {
    expect(whyOf(listOf(there), id)).toBeDefined();
    expect(whyOf(listOf(gone), id)).toBeUndefined();
  });

  test('a filter where the engine has one, a housing by what it is made of', () => {
    expect(whyOf(listOf({}, saying(), { exhaust: 'none' }), 'particulate-filter')).toBeUndefined();
    expect(whyOf(listOf(), 'particulate-filter')).toBe('filter.has');
    expect(whyOf(listOf({}, saying(), { axleHousing: 'aluminium' }), 'axle-housing')).toBe('magnet.aluminium');
    expect(whyOf(listOf({}, saying(), { axleHousing: 'cast-iron' }), 'axle-housing')).toBe('magnet.iron');
    expect(whyOf(listOf(), 'axle-housing')).toBe('magnet.unknown');
  });
});

test('hours are told against age, many and few apart', () => {
  const hours = (each: number) => listOf({ year: 2020, hours: each }).items.find(({ id }) => id === 'hours-and-wear')!.why;
  expect(hours(600)).toMatchObject({ id: 'hours.plain', figures: { perYear: { value: 100 }, age: { value: 6 } } });
  expect(hours(1501)).toMatchObject({ id: 'hours.many', rules: ['lot.inspect.hours-most'] });
  expect(hours(60)).toMatchObject({ id: 'hours.few' });
  expect(whyOf(listOf({ hours: undefined } as never), 'hours-and-wear')).toBe('hours.unknown');
});

test('a year on the edge of a generation wants the plate, until the serial number settles it', () => {
  const plate = (unit: Partial<UnitDocument>) => listOf(unit, saying(), { years: { from: 2018, meant: 'model' } }).items.find(({ id }) => id === 'serial-plate')!.why;
  expect(plate({ year: 2018, yearKind: 'sale' })).toMatchObject({ id: 'plate.edge', parts: ['generation'] });
  expect(plate({ year: 2018, yearKind: 'serial' })).toMatchObject({ id: 'plate.see' });
  expect(plate({ year: 2018, yearKind: 'model' })).toMatchObject({ id: 'plate.see' });
  expect(plate({ year: 2021, yearKind: 'sale' })).toMatchObject({ id: 'plate.see' });
  expect(plate({ year: undefined } as never)).toMatchObject({ id: 'plate.no-year' });
  const backhoe = { availability: 'field-kit' as const, years: { from: 2018 } };
  expect(listOf({ year: 2018, yearKind: 'build' }, saying(), { backhoe }).items.find(({ id }) => id === 'serial-plate')!.why).toMatchObject({ id: 'plate.edge', parts: ['backhoe'] });
});

test('it is made for the buyer’s work: what is looked at names the demands it is looked at for', () => {
  const fromNeeds = (answers: AnswersDocument) => listOf({}, answers).items.find(({ id }) => id === 'loader-pins')!;
  expect(fromNeeds(lifting(500)).fromNeeds).toContain('lift-pallets.weight');
  expect(fromNeeds(lifting(500)).why.id).toBe('pins.work');
  expect(fromNeeds(saying())).toMatchObject({ fromNeeds: [], why: { id: 'pins.fitted' } });
});

test('in words: the operator’s manual first, what rules out said so, each with its source', () => {
  const said = sayInspection(listOf({ seatBelt: false, previousUse: 'Mowed a churchyard.' }, lifting(500)), { voice: voiceOf(lineUp()), lot: en });
  expect(said.cautions[0]).toMatch(/operator’s manual first/);
  expect(said.items[0]).toMatchObject({ name: 'Seat belt', notes: [expect.stringMatching(/Ruled out until/), expect.anything()] });
  expect(said.items[0]!.source).toMatch(/^29 CFR 1928\.51/);
  expect(said.items.find(({ name }) => name === 'Loader pins and arms')!.source).toBe('Common practice, no source');
  expect(said.items.find(({ name }) => name === 'Work it did')!.why).toBe('The dealer says: Mowed a churchyard.');
});

test('every item there may be is on some list', () => {
  const seen = new Set([
    ...listOf({ fitted: { loader: true, backhoe: true, deck: true, cab: true }, tyres: { liquid: true }, transmission: 'gear', meterVerified: false }).items,
    ...listOf({ transmission: 'hydrostatic' }).items,
  ].map(({ id }) => id));
  expect(itemIds.filter((id) => !seen.has(id))).toEqual([]);
});
