import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { MachineDocument, UnitDocument } from '../../src/catalogue/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, catalogueWithGaps, runs } from '../support/arbitraries.ts';
import { degrees, feet, inches, lb, lineUp, soundUnit, withLoader, withMachine, type Change } from '../support/catalogue-for-tests.ts';
import { because, out, saying, standing, toAsk, unitOf, unitsIn, type Verdict } from '../support/reckon.ts';

const all = lineUp().machines.map(({ id }) => id);
const altered = (change: Change<MachineDocument>) => withMachine(lineUp(), 'mid-deluxe', change);

const lifting: AnswersDocument['tasks'] = [{ task: 'lift-bales', weight: lb(300), must: true }];
const rolling = saying({ land: { slope: 'rolling' } });
const bales = saying({ tasks: lifting });
const balesOnRolling = saying({ land: { slope: 'rolling' }, tasks: lifting });
const branch = saying({ land: { overhead: feet(10) } });
const trailer = saying({ haul: { how: 'own-trailer', towRating: lb(14_000), trailer: { gross: lb(12_000), empty: lb(2000), deckWidth: inches(80), deckLength: feet(20) } } });
const carrying = saying({ tasks: [{ task: 'carry-implement', weight: lb(500) }] });

test.each<[string, Change<MachineDocument>, AnswersDocument, string[]]>([
  ['ROPS, on any ground', () => ({ rops: undefined }), saying(), ['operator.rops']],
  ['certificate of the ROPS, on any ground', () => ({ rops: { kind: 'folding' } }), saying(), ['operator.rops']],
  ['height of the centre of mass, on rolling ground', () => ({ centreOfMassHeight: undefined }), rolling, ['slope.tip-angle']],
  ['rear track, on rolling ground', () => ({ rearTrack: undefined }), rolling, ['slope.tip-angle']],
  ['height of the front pivot, on rolling ground', () => ({ frontPivotHeight: undefined }), rolling, ['slope.tip-angle']],
  ['driven wheels, for loader work on rolling ground', () => ({ drivenWheels: undefined }), balesOnRolling, ['slope.driven-wheels']],
  ['share on the front axle, for lifting bales', () => ({ frontAxleShare: undefined }), bales, ['lift-bales.rear-axle']],
  ['wheelbase, for lifting bales', () => ({ wheelbase: undefined }), bales, ['lift-bales.rear-axle']],
  ['mass, for lifting bales', () => ({ mass: undefined }), bales, ['lift-bales.rear-axle', 'work.gross-mass']],
  ['share on the front axle, for an implement behind', () => ({ frontAxleShare: undefined }), carrying, ['carry-implement.front-axle']],
  ['height with the ROPS standing, under a branch', () => ({ height: undefined }), branch, ['operator.overhead']],
  ['mass, on a trailer', () => ({ mass: undefined }), trailer, ['haul.payload', 'haul.tow-rating']],
  ['length, on a trailer', () => ({ lengthWithLoader: undefined }), trailer, ['haul.deck-length']],
  ['width, on a trailer', () => ({ tyres: undefined }), trailer, ['haul.deck-width']],
])('a machine of unknown %s, is one to ask about and never stands', (_what, change, answers, needs) => {
  const result = shortlist(altered(change), answers);
  expect(result.askDealer.map(({ machine }) => machine)).toEqual(['mid-deluxe']);
  expect(because(result, 'mid-deluxe')).toEqual(needs);
  const whole = standing(lineUp(), answers);
  expect(whole, 'control: with the figure it stands').toContain('mid-deluxe');
  expect(standing(altered(change), answers)).toEqual(whole.filter((id) => id !== 'mid-deluxe'));
});

test.each<[string, Change<MachineDocument>, AnswersDocument]>([
  ['centre of mass on flat ground', () => ({ centreOfMassHeight: undefined }), saying()],
  ['driven wheels without loader work', () => ({ drivenWheels: undefined }), rolling],
  ['share on the front axle with nothing to lift', () => ({ frontAxleShare: undefined }), saying()],
])('control: an unknown %s keeps nothing from standing', (_what, change, answers) => {
  expect(standing(altered(change), answers)).toEqual(all);
});

test('what a loader weighs and how far it reaches must be known to lift bales', () => {
  expect(toAsk(withLoader(lineUp(), 'mid-deluxe', () => ({ mass: undefined })), bales)).toEqual(['mid-deluxe']);
  expect(toAsk(withLoader(lineUp(), 'mid-deluxe', () => ({ pinsAhead: undefined })), bales)).toEqual(['mid-deluxe']);
});

test('where nobody knows which loader fits, no rear axle is cleared for a load, must or wish', () => {
  const wish = saying({ tasks: [{ task: 'lift-bales', weight: lb(300), must: false }] });
  const nameless = altered(() => ({ loaders: undefined }));
  expect(toAsk(nameless, bales)).toEqual(['mid-deluxe']);
  expect(toAsk(nameless, wish)).toEqual(['mid-deluxe']);
});

test.each<[string, Change<MachineDocument>]>([
  ['wheelbase', () => ({ wheelbase: undefined })], ['mass', () => ({ mass: undefined })], ['share on the front axle', () => ({ frontAxleShare: undefined })],
  ['reach of the loader', ({ loaders = [] }) => ({ loaders: loaders.map(({ pinsAhead: _reach, ...loader }) => loader) })],
])('a load only wished for is no less to be asked about where the %s is unknown', (_what, change) => {
  const wish = (weight: number) => saying({ tasks: [{ task: 'lift-pallets', weight: lb(weight), must: false }] });
  expect(toAsk(altered(change), wish(300))).toEqual(['mid-deluxe']);
  expect(standing(lineUp(), wish(300)), 'control: where it is known').toContain('mid-deluxe');
});

test('with two driven wheels there is no loader work on a slope', () => {
  const two = altered(() => ({ drivenWheels: 2 }));
  expect(out(two, balesOnRolling)).toContain('mid-deluxe');
  expect(because(shortlist(two, balesOnRolling), 'mid-deluxe')).toEqual(['slope.driven-wheels']);
  expect(standing(two, bales), 'control: on flat ground').toContain('mid-deluxe');
  expect(standing(two, rolling), 'control: without a loader').toContain('mid-deluxe');
  expect(standing(lineUp(), balesOnRolling), 'control: with four').toContain('mid-deluxe');
});

test('what would tip too early for the slope is out', () => {
  const tall = altered(() => ({ centreOfMassHeight: { value: inches(60), source: 'for the test' } }));
  expect(out(tall, rolling)).toEqual(['mid-deluxe']);
  expect(standing(tall, saying()), 'control: on flat ground').toEqual(all);
});

test('the steepest ground over 15 degrees is never cleared for a mower or a loader, whatever stands', () => {
  const steep = saying({ land: { slope: degrees(16) }, tasks: lifting });
  expect(shortlist(lineUp(), steep).notCleared).toMatchObject([{ id: 'slope.over-limit', tasks: ['lift-bales'] }]);
});

test('a branch lower than the standing ROPS and its room is out; no ROPS is folded for it', () => {
  const low = saying({ land: { overhead: inches(102) } });
  expect(standing(lineUp(), low)).toEqual(['subcompact-economy', 'subcompact-deluxe', 'small-standard', 'small-deluxe']);
});

const { rops: _rops, seatBelt: _belt, ...bareUnit } = soundUnit('the-unit', 'mid-deluxe');
const unit = (more: Partial<UnitDocument>): UnitDocument => ({ ...bareUnit, seatBelt: true, rops: { kind: 'folding', certified: true }, ...more });

test.each<[string, Verdict, Partial<UnitDocument>]>([
  ['as it was built', 'stands', {}],
  ['without a ROPS', 'ruled-out', { rops: { kind: 'none' } }],
  ['with an altered ROPS', 'ruled-out', { rops: { kind: 'folding', certified: true, altered: true } }],
  ['with a ROPS that isn’t certified', 'ruled-out', { rops: { kind: 'folding', certified: false } }],
  ['with a ROPS nobody looked at', 'ask', { rops: { kind: 'unknown' } }],
  ['without its seat belt', 'ruled-out', { seatBelt: false }],
  ['with its exhaust equipment defeated', 'ruled-out', { exhaustIntact: false }],
  ['with a recall open', 'ruled-out', { recallOpen: true }],
])('a unit %s: %s', (_what, verdict, more) => expect(unitOf(unit(more), saying()).verdict).toBe(verdict));

test('a unit whose seat belt nobody looked for is one to ask about, and speaks for no machine that stands', () => {
  const unsaid: UnitDocument = { ...bareUnit, rops: { kind: 'folding', certified: true } };
  expect(unitOf(unsaid, saying())).toMatchObject({ verdict: 'ask', because: [{ need: 'operator.seat-belt' }] });
  const { shortlist: stands } = shortlist({ ...lineUp(), units: [unsaid] }, saying());
  expect(stands.map((entry) => entry.unit)).not.toContain('the-unit');
});

test('a machine whose ROPS nobody knows asks for that of its unit, and stands on a unit that has it', () => {
  const nameless = altered(() => ({ rops: undefined }));
  expect(unitOf({ ...bareUnit, seatBelt: true }, saying(), nameless).verdict).toBe('ask');
  expect(unitOf(unit({}), saying(), nameless).verdict).toBe('stands');
});

test('no priority, budget or wish buys back a safety gate', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    const bare = altered(() => ({ rops: { kind: 'none' } }));
    expect(out(bare, answers)).toContain('mid-deluxe');
  }), runs(40));
}, aMinute);

test('nothing with an unknown safety gate stands, whatever is asked and whatever figures are missing', () => {
  fc.assert(fc.property(catalogueWithGaps, anyAnswers, (catalogue, answers) => {
    const result = shortlist(catalogue, answers);
    const safety = new Set(result.needs.flatMap(({ id, safety: is }) => (is ? [id] : [])));
    const open = (reasons: readonly { kind: string; need?: string | undefined }[]) => reasons.filter(({ kind, need }) => kind === 'unknown' && need && safety.has(need));
    for (const entry of result.shortlist) expect([...entry.because, ...open(entry.reasons)], entry.machine).toEqual([]);
    for (const each of unitsIn(result)) if (each.verdict === 'stands') expect([...each.because, ...open(each.reasons)], each.unit).toEqual([]);
    expect(result.unknowns.filter(({ machine, need }) => safety.has(need) && result.shortlist.some((entry) => entry.machine === machine))).toEqual([]);
  }), runs(80));
}, aMinute);

/** What must be known of a machine for a need to be met, told apart from how the engine reckons it. */
const wanted: Record<string, (machine: MachineDocument) => unknown[]> = {
  'slope.tip-angle': (m) => [m.mass, m.frontAxleShare, m.centreOfMassHeight, m.rearTrack, m.frontPivotHeight],
  'slope.driven-wheels': (m) => [m.drivenWheels],
  'lift-bales.rear-axle': (m) => [m.mass, m.frontAxleShare, m.wheelbase, m.loaders, ...(m.loaders ?? []).flatMap(({ mass, pinsAhead }) => [mass, pinsAhead])],
  'lift-pallets.rear-axle': (m) => [m.mass, m.frontAxleShare, m.wheelbase, m.loaders, ...(m.loaders ?? []).flatMap(({ mass, pinsAhead }) => [mass, pinsAhead])],
  'carry-implement.front-axle': (m) => [m.mass, m.frontAxleShare, m.wheelbase],
  'operator.overhead': (m) => [m.height?.cab ?? m.height?.ropsUp],
  'haul.payload': (m) => [m.mass], 'haul.tow-rating': (m) => [m.mass],
  'haul.deck-width': (m) => [m.tyres], 'haul.deck-length': (m) => [m.lengthWithLoader],
};

test('whatever stands has every figure that a safety gate is reckoned from', () => {
  fc.assert(fc.property(catalogueWithGaps, anyAnswers, (catalogue, answers) => {
    const result = shortlist(catalogue, answers);
    for (const { machine: id, unit: unitId, reasons } of result.shortlist) {
      const machine = catalogue.machines.find((each) => each.id === id)!;
      const found = catalogue.units?.find((each) => each.id === unitId);
      // A wish that a machine is said not to serve asks for no figure of it.
      const taskOf = (need: string | undefined) => result.needs.find((each) => each.id === need)?.task;
      const unserved = new Set(reasons.flatMap(({ kind, need }) => (kind === 'against' ? [taskOf(need)] : [])));
      const served = result.needs.filter(({ task }) => !task || !unserved.has(task));
      const missing = served.filter((need) => wanted[need.id]?.(machine).includes(undefined)).map((need) => need.id);
      expect(missing, id).toEqual([]);
      expect([found?.rops?.kind ?? machine.rops?.kind, found?.rops?.certified ?? machine.rops?.certified], id).not.toContain(undefined);
      if (found) expect(found.seatBelt, found.id).toBe(true);
    }
  }), runs(80));
}, aMinute);
