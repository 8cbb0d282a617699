/** Facts about implements on hitch and PTO; each is common practice, no source, unless it says otherwise, with its control. */
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument, ImplementDocument, MachineDocument } from '../../src/catalogue/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import {
  feet, hp, inches, lb, lineUp, soundUnit, usd, withImplement, withLoader, withMachine, type Change,
} from '../support/catalogue-for-tests.ts';
import { additionsOf, because, mustDo, out, saying, standing, toAsk, unitOf } from '../support/reckon.ts';

const all = lineUp().machines.map(({ id }) => id);
const subcompacts = all.slice(0, 2);
const mid = (change: Change<MachineDocument>, catalogue = lineUp()) => withMachine(catalogue, 'mid-deluxe', change);
const on = (answers: AnswersDocument, land: AnswersDocument['land']): AnswersDocument => ({ ...answers, land: { ...answers.land, ...land } });
/** The line-up with some of its implements alone, or with others. */
const only = (keep: (each: ImplementDocument) => boolean, ...more: ImplementDocument[]): CatalogueDocument =>
  ({ ...lineUp(), implements: [...lineUp().implements!.filter(keep), ...more] });
const onlyId = (id: string) => only((each) => each.id === id);
const whyNot = (catalogue: CatalogueDocument, answers: AnswersDocument, machine: string) => because(shortlist(catalogue, answers), machine);

const till = mustDo({ task: 'till-garden' });

test('a tiller takes 6 hp at the PTO for each foot of its width', () => {
  const of = (power: number) => mid(() => ({ engine: { ptoPower: hp(power) } }), onlyId('tiller-60'));
  expect(standing(of(30), till)).toContain('mid-deluxe');
  expect(whyNot(of(29.9), till, 'mid-deluxe')).toEqual(['till-garden.implement']);
  expect(standing(withImplement(onlyId('tiller-48'), 'tiller-48', () => ({})), till), 'nothing narrower than the tyres').not.toContain('mid-deluxe');
});

test('a maker’s own figure counts over the rule of thumb, whether it is less or more', () => {
  const asks = (power: number) => withImplement(onlyId('tiller-60'), 'tiller-60', () => ({ ptoPower: hp(power) }));
  expect(out(onlyId('tiller-60'), till)).toContain('mid-economy');
  expect(standing(asks(28), till)).toContain('mid-economy');
  expect(standing(asks(28.1), till)).not.toContain('mid-economy');
  expect([standing(onlyId('tiller-60'), till).includes('mid-deluxe'), standing(asks(33), till).includes('mid-deluxe')]).toEqual([true, false]);
});

test.each<['grass' | 'brush', number, boolean]>([['grass', 25, true], ['grass', 24.9, false], ['brush', 35, true], ['brush', 34.9, false]])(
  'in %s a cutter of 5 ft on %d hp: %s', (growth, power, cuts) => {
    const catalogue = mid(() => ({ engine: { ptoPower: hp(power) } }), onlyId('cutter-60'));
    expect(standing(catalogue, mustDo({ task: 'cut-rough', growth })).includes('mid-deluxe')).toBe(cuts);
  },
);

test('in brush the greater of rule and maker’s figure counts, for a maker’s least is for grass', () => {
  const catalogue = withImplement(mid(() => ({ engine: { ptoPower: hp(30) } }), onlyId('cutter-60')), 'cutter-60', () => ({ ptoPower: hp(20) }));
  expect(out(catalogue, mustDo({ task: 'cut-rough', growth: 'brush' }))).toContain('mid-deluxe');
  expect(standing(catalogue, mustDo({ task: 'cut-rough', growth: 'grass' }))).toContain('mid-deluxe');
});

// ISO 730: the pins of a larger category don't go into the ball ends of a smaller.
test.each([['2', '1', 'ruled-out'], ['2', '2', 'stands'], ['1', '2', 'stands'], ['0', '1', 'stands'], ['1', '0', 'ruled-out'], ['3', '2', 'ruled-out']] as const)(
  'an implement of category %s on a hitch of category %s: %s', (implement, hitch, verdict) => {
    const catalogue = withImplement(mid(() => ({ hitch: { category: hitch, lift610: lb(2500) } }), onlyId('tiller-60')), 'tiller-60', () => ({ hitchCategory: implement }));
    expect(standing(catalogue, till).includes('mid-deluxe') ? 'stands' : 'ruled-out').toBe(verdict);
  },
);

test('of an implement or a hitch whose category nobody gave the dealer is asked', () => {
  expect(toAsk(withImplement(onlyId('tiller-60'), 'tiller-60', () => ({ hitchCategory: undefined })), till)).toContain('mid-deluxe');
  expect(toAsk(mid(() => ({ hitch: { lift610: lb(2500) } })), till)).toEqual(['mid-deluxe']);
});

test('a PTO speed the machine hasn’t got turns nothing', () => {
  const rpm = (value: number) => ({ value, unit: 'rpm' as const });
  const fast = withImplement(onlyId('tiller-60'), 'tiller-60', () => ({ ptoSpeed: rpm(1000) }));
  expect(whyNot(fast, till, 'mid-deluxe')).toEqual(['till-garden.implement']);
  expect(standing(mid(() => ({ rearPto: { speeds: [rpm(540), rpm(1000)] } }), fast), till), 'control').toEqual(['mid-deluxe']);
  expect(out(mid(() => ({ rearPto: { speeds: [] } })), till), 'no PTO at all').toContain('mid-deluxe');
  expect(toAsk(mid(() => ({ rearPto: undefined })), till), 'a PTO nobody spoke of').toEqual(['mid-deluxe']);
});

test('what works the ground covers the tyre tracks', () => {
  expect(whyNot(onlyId('tiller-48'), till, 'small-standard')).toEqual(['till-garden.implement']);
  const narrow = withMachine(onlyId('tiller-48'), 'small-standard', () => ({ tyres: [{ type: 'industrial', widthOverRear: inches(48) }] }));
  expect(standing(narrow, till), 'control: on narrower tyres').toEqual(['small-standard']);
});

test('of a unit on tyres nobody named an implement may cover the tracks or not', () => {
  const two = withMachine(onlyId('tiller-60'), 'mid-deluxe', () => ({
    tyres: [{ type: 'industrial', widthOverRear: inches(60) }, { type: 'turf', widthOverRear: inches(66) }],
  }));
  const on = (type: 'industrial' | 'turf' | undefined) => unitOf(soundUnit('u', 'mid-deluxe', { tyres: type ? { type } : {} }), till, two).verdict;
  expect([on('industrial'), on('turf'), on(undefined)]).toEqual(['stands', 'ruled-out', 'ask']);
});

test.each([[4, true], [6, true], [6.1, false]])('a branch of %d in wants a chipper that takes it: %s', (diameter, chips) => {
  const answers = mustDo({ task: 'chip-brush', diameter: inches(diameter) });
  expect(standing(lineUp(), answers).includes('large-economy')).toBe(chips);
});

test('a chipper takes about 5 hp for each inch of its own capacity, and one of unknown capacity is asked about', () => {
  const branch = mustDo({ task: 'chip-brush', diameter: inches(3) });
  const of = (power: number) => mid(() => ({ engine: { ptoPower: hp(power) } }), onlyId('chipper-4'));
  expect([standing(of(21), branch).includes('mid-deluxe'), standing(of(20.5), branch).includes('mid-deluxe')]).toEqual([true, false]);
  expect(toAsk(withImplement(onlyId('chipper-4'), 'chipper-4', () => ({ capacity: undefined })), branch)).toContain('mid-deluxe');
});

test('a post-hole digger wants about 20 hp', () => {
  const of = (power: number) => standing(mid(() => ({ engine: { ptoPower: hp(power) } })), mustDo({ task: 'bore-holes' })).includes('mid-deluxe');
  expect([of(20), of(19.9)]).toEqual([true, false]);
});

test('snow deeper than a blade moves wants a blower, whatever was wished for', () => {
  const snow = (depth: number, how?: 'blade' | 'blower') => mustDo({ task: 'clear-snow', depth: inches(depth), ...(how && { how }) });
  const blades = only(({ kind }) => kind !== 'snow-blower');
  const blowers = only(({ kind }) => kind !== 'rear-blade');
  expect(standing(blades, snow(12))).toEqual(all);
  expect(toAsk(blades, snow(12.1))).toEqual(all);
  expect(toAsk(blades, snow(14, 'blade'))).toEqual(all);
  expect(standing(blowers, snow(14, 'blade'))).toEqual(all.slice(2));
  expect(toAsk(blades, snow(4, 'blower'))).toEqual(all);
  expect(out(lineUp(), snow(12.1)), 'the blower wants more power than the smallest have').toEqual(subcompacts);
});

test('at altitude an engine has less left for the PTO, and one with a turbocharger loses less', () => {
  const high = on(till, { altitude: feet(6000) });
  const of = (power: number, aspiration?: 'natural' | 'turbo') => mid(() => ({ engine: { ptoPower: hp(power), ...(aspiration && { aspiration }) } }), onlyId('tiller-60'));
  const stands = (power: number, answers: AnswersDocument, aspiration?: 'natural' | 'turbo') => standing(of(power, aspiration), answers).includes('mid-deluxe');
  // 30 hp are wanted: 6 × 3 % are lost without a turbocharger, 1 % with one.
  expect([stands(36.5, high), stands(36.6, high), stands(36.5, high, 'natural')]).toEqual([false, true, false]);
  expect([stands(30.4, high, 'turbo'), stands(30.2, high, 'turbo'), stands(30, till)]).toEqual([true, false, true]);
});

test('altitude counts for what is pulled too', () => {
  // A disk of 5 ft at 4 mph asks about 18.5 hp of the PTO: 4,456 N × 1.788 m/s / 0.75 / 0.77.
  const catalogue = mid(() => ({ engine: { ptoPower: hp(19) } }), onlyId('disk-60'));
  const level = mustDo({ task: 'level-field' });
  expect(standing(catalogue, level)).toContain('mid-deluxe');
  expect(whyNot(catalogue, on(level, { altitude: feet(10_000) }), 'mid-deluxe')).toEqual(['level-field.pull']);
});

const spread = mustDo({ task: 'spread-spray' });

test('a full spreader counts, not the empty one', () => {
  const full = (mass: number) => withImplement(lineUp(), 'spreader', () => ({ fullMass: lb(mass) }));
  expect(standing(full(600), spread)).toContain('subcompact-economy');
  expect(whyNot(full(640), spread, 'subcompact-economy')).toContain('spread-spray.implement');
  const empty = withImplement(lineUp(), 'spreader', () => ({ fullMass: undefined }));
  expect(toAsk(empty, spread), 'of one nobody weighed full the dealer is asked').toEqual(all);
});

const carry = (weight: number, distance = 24) => mustDo({ task: 'carry-implement', weight: lb(weight), distance: inches(distance) });
/** A loaderless mid: in front nothing but its own weight. */
const bare = (more: Partial<MachineDocument> = {}) => mid(() => ({ loaders: [], ...more }));

test('front weights are asked for where the front gets light', () => {
  // 2,900 lb bare, 1,218 in front; 1,000 lb at 49.6 in behind the axle of a 68-in wheelbase leave 489 lb: 580 are wanted.
  const weights = (weight: number) => additionsOf(bare(), carry(weight), 'mid-deluxe').filter(({ what }) => what === 'front-ballast');
  expect(weights(850)).toEqual([]);
  expect(weights(1000)).toMatchObject([{ for: ['carry-implement.front-axle'] }]);
  // (1,000 × 49.59 + 580 × 68 − 1,218 × 68) / (15.75 + 68) = 74.1 lb
  expect(weights(1000)[0]!.mass! / 0.45359237).toBeCloseTo(74.1, 0);
});

test('front weights beyond what the machine may weigh rule out, and where nobody gave that they are asked about', () => {
  expect(standing(bare({ grossMass: lb(3980) }), carry(1000))).toContain('mid-deluxe');
  expect(whyNot(bare({ grossMass: lb(3970) }), carry(1000), 'mid-deluxe')).toEqual(['work.gross-mass']);
  expect(toAsk(mid(() => ({ loaders: [], grossMass: undefined })), carry(1000))).toEqual(['mid-deluxe']);
});

test('with an implement lifted the same front weights are asked for as with any load as heavy', () => {
  const heavy = withImplement(onlyId('tiller-60'), 'tiller-60', () => ({ mass: lb(1000) }));
  const machine = withMachine(heavy, 'mid-deluxe', () => ({ loaders: [] }));
  expect(additionsOf(machine, till, 'mid-deluxe').filter(({ what }) => what === 'front-ballast').map(({ mass }) => mass))
    .toEqual(additionsOf(bare(), carry(1000), 'mid-deluxe').filter(({ what }) => what === 'front-ballast').map(({ mass }) => mass));
});

test.each<[string, (limit: number) => Partial<MachineDocument>]>([
  ['the rear axle', (limit) => ({ rearAxleLimit: lb(limit) })],
  ['the rear tyres', (limit) => ({ tyres: [{ type: 'industrial', widthOverRear: inches(60), rearLimit: lb(limit) }] })],
])('what %s may bear rules out a load behind that is too heavy', (_what, limited) => {
  // 1,682 lb bare on the rear axle, and 800 × (68 + 49.59) / 68 = 1,383 of the load.
  expect(standing(bare(limited(3070)), carry(800))).toContain('mid-deluxe');
  expect(whyNot(bare(limited(3060)), carry(800), 'mid-deluxe')).toEqual(['carry-implement.front-axle']);
});

test('the weaker of axle and tyres counts', () => {
  const both = (axle: number, tyre: number) => bare({ rearAxleLimit: lb(axle), tyres: [{ type: 'industrial', widthOverRear: inches(60), rearLimit: lb(tyre) }] });
  expect([both(3070, 9000), both(9000, 3070), both(3060, 9000), both(9000, 3060)].map((catalogue) => standing(catalogue, carry(800)).includes('mid-deluxe')))
    .toEqual([true, true, false, false]);
});

const grade = mustDo({ task: 'grade-drive' });

test('a box blade is no wider than the wheels can pull: 200 lb of pull a foot against half the weight on firm ground', () => {
  // 5 ft pull 1,000 lb; the wheels hold half, a third or a quarter of the mass.
  const of = (mass: number) => mid(() => ({ mass: lb(mass) }), onlyId('box-blade-60'));
  const stands = (mass: number, ground: 'firm' | 'soft' | 'wet') => standing(of(mass), on(grade, { ground })).includes('mid-deluxe');
  expect([stands(2001, 'firm'), stands(1999, 'firm')]).toEqual([true, false]);
  expect([stands(2860, 'soft'), stands(2855, 'soft')]).toEqual([true, false]);
  expect([stands(4001, 'wet'), stands(3999, 'wet')]).toEqual([true, false]);
});

test('a box blade too wide for the grip is ruled out by its pull, and a narrower one would do', () => {
  const wide = onlyId('box-blade-72');
  expect(whyNot(wide, grade, 'small-standard')).toEqual(['grade-drive.pull']);
  expect(standing(onlyId('box-blade-60'), grade)).toContain('small-standard');
});

test('two driven wheels pull less than four', () => {
  // 2,200 lb: half of it is 1,100 with four wheels, 638 with the 58 % on the rear.
  const two = withMachine(onlyId('box-blade-60'), 'mid-economy', () => ({ drivenWheels: 2 }));
  expect(standing(onlyId('box-blade-60'), grade)).toContain('mid-economy');
  expect(whyNot(two, grade, 'mid-economy')).toEqual(['grade-drive.pull']);
  expect(toAsk(withMachine(onlyId('box-blade-60'), 'mid-economy', () => ({ drivenWheels: undefined })), grade)).toEqual(['mid-economy']);
});

// ASABE D497, as the rule book has it: sand takes 78 %, loam 88 % of what clay does.
test('clay pulls harder than loam, loam than sand, and soil nobody named counts as clay', () => {
  const level = mustDo({ task: 'level-field' });
  // A disk of 5 ft at 4 mph and 4 in takes 287.8 N for each cm of depth and m of width: 4,456 N in clay, which 2,004 lb hold on firm ground.
  const stands = (mass: number, soil?: 'clay' | 'loam' | 'sand') => standing(mid(() => ({ mass: lb(mass) }), onlyId('disk-60')), on(level, soil ? { soil } : {})).includes('mid-deluxe');
  expect([stands(2010, 'clay'), stands(1995, 'clay'), stands(1995)]).toEqual([true, false, false]);
  expect([stands(1770, 'loam'), stands(1755, 'loam'), stands(1570, 'sand'), stands(1555, 'sand')]).toEqual([true, false, true, false]);
});

test('what feeds on the hydraulics wants the flow', () => {
  const thirsty = withImplement(onlyId('tiller-60'), 'tiller-60', () => ({ hydraulicFlow: { value: 8, unit: 'gpm' } }));
  expect(standing(thirsty, till)).toContain('mid-deluxe');
  expect(out(mid(() => ({ hydraulics: { flow: { value: 7.9, unit: 'gpm' } } }), thirsty), till)).toContain('mid-deluxe');
  expect(toAsk(mid(() => ({ hydraulics: undefined }), thirsty), till)).toContain('mid-deluxe');
});

test('an implement the dealer hasn’t got is asked about, unless the buyer has it', () => {
  const none = only(({ kind }) => kind !== 'tiller');
  expect(toAsk(none, till)).toEqual(all);
  const own = { kind: 'tiller' as const, width: inches(60), mass: lb(540), hitchCategory: '1' as const };
  expect(standing(none, { ...till, owned: [own] })).toContain('mid-deluxe');
  expect(additionsOf(none, { ...till, owned: [own] }, 'mid-deluxe').map(({ what }) => what)).not.toContain('implement');
});

test('what can’t be on together is told as a drawback', () => {
  const both = mustDo({ task: 'dig' }, { task: 'till-garden' });
  const told = (catalogue: CatalogueDocument, answers: AnswersDocument) => shortlist(catalogue, answers).shortlist.find(({ machine }) => machine === 'mid-deluxe')!
    .reasons.filter(({ id }) => id === 'parts.not-together').map(({ kind, about }) => [kind, about]);
  const apart = mid(() => ({ notTogether: [['backhoe', 'hitch']] }));
  expect(told(apart, both)).toEqual([['against', { id: 'backhoe', other: 'hitch' }]]);
  expect(told(lineUp(), both), 'control: nothing forbids it').toEqual([]);
  expect(told(apart, till), 'control: without the backhoe').toEqual([]);
});

test('what rides on the lawn: turf tyres slip on wet ground, lugs mark a lawn', () => {
  const wish = (answers: AnswersDocument, ...types: ('turf' | 'industrial' | 'agricultural')[]) => {
    const catalogue = mid(() => ({ tyres: types.map((type) => ({ type, widthOverRear: inches(60) })) }));
    return shortlist(catalogue, answers).shortlist.find(({ machine }) => machine === 'mid-deluxe')!.reasons.find(({ need }) => need === 'land.tyres')?.id;
  };
  const wet = saying({ land: { ground: 'wet' } });
  const mow = saying({ tasks: [{ task: 'mow-lawn', deck: 'rear' }] });
  expect([wish(wet, 'turf'), wish(wet, 'agricultural'), wish(wet, 'industrial'), wish(wet, 'turf', 'industrial')])
    .toEqual(['tyres.failed', 'tyres.met', 'tyres.met', 'tyres.met']);
  expect([wish(mow, 'turf'), wish(mow, 'agricultural'), wish(mow, 'industrial')]).toEqual(['tyres.met', 'tyres.failed', 'tyres.met']);
  expect([wish(on(mow, { ground: 'wet' }), 'turf'), wish(on(mow, { ground: 'wet' }), 'agricultural'), wish(saying(), 'agricultural')])
    .toEqual(['tyres.failed', 'tyres.failed', undefined]);
});

// NIOSH: 85 dB(A) for 8 hours, half the time for every 3 dB(A) more.
test.each([[85, 8, true], [85, 8.1, false], [88, 4, true], [88, 4.1, false], [91, 2, true], [91, 2.1, false]])(
  'at %d dB(A) a day of %d h stays within what hearing bears: %s', (level, hours, bears) => {
    const answers = saying({ tasks: [{ task: 'mow-lawn', hours: { value: hours, unit: 'h' } }] });
    const found = shortlist(mid(() => ({ noiseAtEarDecibels: level })), answers).shortlist.find(({ machine }) => machine === 'mid-deluxe')!;
    expect(found.reasons.find(({ need }) => need === 'operator.noise')!.id).toBe(bears ? 'noise.met' : 'noise.failed');
  },
);

// Directive 2002/44/EC: 0.5 m/s² over eight hours.
test.each([[0.5, 8, true], [0.51, 8, false], [1, 2, true], [1, 2.1, false]])('a seat that shakes at %d m/s² for %d h: %s', (acceleration, hours, bears) => {
  const answers = saying({ tasks: [{ task: 'mow-lawn', hours: { value: hours, unit: 'h' } }] });
  const found = shortlist(mid(() => ({ seatVibration: { value: acceleration, unit: 'm/s2' } })), answers).shortlist.find(({ machine }) => machine === 'mid-deluxe')!;
  expect(found.reasons.find(({ need }) => need === 'operator.vibration')!.id).toBe(bears ? 'vibration.met' : 'vibration.failed');
});

// From here on what the tool does not do yet, though it should: each test turns red when it does.

/** With 1,000 lb behind it weighs 4,760: 2,900, its loader of 860, and the load. */
test('a machine that with its load weighs more than it may is ruled out, whether or not it asks for ballast', () => {
  const may = (mass: number) => standing(mid(() => ({ grossMass: lb(mass) })), carry(1000)).includes('mid-deluxe');
  expect([may(4761), may(4759)]).toEqual([true, false]);
});

test('an implement whose centre nobody gave is told as estimated, if it isn’t asked about', () => {
  const heavy = (centreDistance: ImplementDocument['centreDistance']) =>
    withImplement(onlyId('tiller-60'), 'tiller-60', () => ({ mass: lb(1200), centreDistance, ptoPower: hp(20) }));
  expect(out(heavy(inches(60)), till), 'control').toContain('mid-economy');
  const found = shortlist(heavy(undefined), till);
  const entry = found.shortlist.find(({ machine }) => machine === 'mid-economy');
  expect(entry === undefined || entry.reasons.some(({ id }) => id === 'figure.estimated')).toBe(true);
});

const spreader = (id: string, price: number, mass: number, full: number): ImplementDocument =>
  ({ id, name: id, kind: 'spreader', mass: lb(mass), fullMass: lb(full), price: usd(price), centreDistance: inches(24), hitchCategory: '1' });

test('the spreader that is cheaper and lighter when empty isn’t chosen where only the other may be carried full', () => {
  const light = (...tools: ImplementDocument[]) => withMachine(only(() => false, ...tools), 'mid-economy', () => ({ grossMass: lb(4100), frontAxleShare: 0.25 }));
  const [cheap, dear] = [spreader('cheap', 1000, 100, 1250), spreader('dear', 2000, 150, 400)];
  expect([standing(light(dear), spread).includes('mid-economy'), standing(light(cheap), spread).includes('mid-economy')], 'control').toEqual([true, false]);
  expect(standing(light(cheap, dear), spread)).toContain('mid-economy');
});

test('the cheaper of two tillers as heavy isn’t chosen where only the one nearer to the axle may be carried', () => {
  const tiller = (id: string, price: number, distance: number): ImplementDocument =>
    ({ id, name: id, kind: 'tiller', mass: lb(700), price: usd(price), width: inches(60), centreDistance: inches(distance), hitchCategory: '1', ptoPower: hp(20) });
  const light = (...tools: ImplementDocument[]) => withMachine(only(() => false, ...tools), 'mid-economy', () => ({ grossMass: lb(3650), frontAxleShare: 0.25 }));
  const [cheap, dear] = [tiller('cheap', 1000, 60), tiller('dear', 2000, 10)];
  expect([standing(light(dear), till).includes('mid-economy'), standing(light(cheap), till).includes('mid-economy')], 'control').toEqual([true, false]);
  expect(standing(light(cheap, dear), till)).toContain('mid-economy');
});

test('a drive is cleared of snow by a blade in one go, at the pace of pushing snow, and not graded four times', () => {
  const hours = (catalogue: CatalogueDocument) => shortlist(catalogue, mustDo({ task: 'clear-snow', length: feet(1000) })).shortlist
    .find(({ machine }) => machine === 'large-economy')!.reasons.find(({ need }) => need === 'clear-snow.hours')!.figures.has!.value / 3600;
  // 10,000 ft² with 6 ft at 3 mph, 8 % overlap and 60 % of the time: 1.1 × 10,000 / (15,840 × 6 × 0.92 × 0.6) h.
  expect(hours(onlyId('rear-blade-72'))).toBeCloseTo(0.2097, 3);
});

test('whoever bales wants the PTO power of a baler', () => {
  const hay = mustDo({ task: 'make-hay' });
  const of = (power: number) => withMachine(lineUp(), 'large-economy', () => ({ engine: { ptoPower: hp(power) } }));
  expect([standing(of(35), hay).includes('large-economy'), standing(of(34), hay).includes('large-economy')]).toEqual([true, false]);
});

test('without the mass of the loader nobody knows whether front weights may be carried as well', () => {
  const catalogue = withMachine(lineUp(), 'mid-economy', () => ({ grossMass: lb(3900), frontAxleShare: 0.2 }));
  expect(out(catalogue, carry(1000)), 'control').toContain('mid-economy');
  expect(standing(withLoader(catalogue, 'mid-economy', () => ({ mass: undefined })), carry(1000))).not.toContain('mid-economy');
});
