import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureIds, ruleBook, type FigureId, type FormulaId } from '../../src/trade/book.ts';
import { workFormulas } from '../../src/trade/figures/formulas-of-work.ts';
import { frontAxleLoad, frontBallast, rearAxleLoad } from '../../src/trade/formulas/axle-loads.ts';
import { massAtMoisture } from '../../src/trade/formulas/bale-mass.ts';
import { heapVolume } from '../../src/trade/formulas/bucket.ts';
import { draftByArea, draftByWidth, draftOfTool } from '../../src/trade/formulas/draft.ts';
import { drawbarFromPto, powerInHand, ptoFromFlywheel } from '../../src/trade/formulas/drawbar-power.ts';
import { leastOf } from '../../src/trade/formulas/least-of.ts';
import { loadsWanted } from '../../src/trade/formulas/loads.ts';
import { logMass } from '../../src/trade/formulas/log-mass.ts';
import { greatestTowed, rearOverturnPull, towingPull } from '../../src/trade/formulas/towing.ts';
import { tractionPull } from '../../src/trade/formulas/traction.ts';
import { turnForce } from '../../src/trade/formulas/turn-force.ts';
import { cite, isRefusal, type Refusal, type Working } from '../../src/trade/working.ts';
import { inUnit, quantity, type Quantity } from '../../src/units/quantity.ts';
import { isSum, reckon, sumOfText } from '../support/formula-reader.ts';
import { asSi, si } from '../support/quantities.ts';
import { workAndLoads as calls } from '../worked/calls/work-and-loads.ts';
import { workAndLoads as cases } from '../worked/cases/work-and-loads.ts';
import { known, type Given } from '../worked/given.ts';

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map(asSi);
const holds = <T>(arbitrary: fc.Arbitrary<T>, property: (value: T) => boolean) => fc.assert(fc.property(arbitrary, property), { numRuns: 300 });
const value = (outcome: Working | Refusal) => known<Working>(outcome).result.value;
const isAbout = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1);
const slack = 1 + 1e-9;
const book = ruleBook();

const workings = cases.map((each) => {
  const given = Object.fromEntries(Object.entries(each.given).map(([name, text]) => [name, si(text!)])) as unknown as Given;
  const formula = each.formula as keyof typeof workFormulas;
  const working: Working | number = formula === 'loads.count' ? loadsWanted(given.volume, given.perLoad) : calls[formula](given);
  return { name: each.name, formula, working: working as Working };
});

test.each(workings)('$formula can be reckoned again from its text and its inputs: $name', ({ formula, working }) => {
  const sum = sumOfText(workFormulas[formula].formula, working.inputs);
  expect(isSum(sum), sum).toBe(true);
  // The front wants no ballast where the sum is below zero, as its statement says.
  const again = formula === 'ballast.front' ? Math.max(0, reckon(sum)) : reckon(sum);
  expect(isAbout(again, working.result.value), `${sum} gives ${again}, not ${working.result.value}`).toBe(true);
});

test('control: a text that names an input otherwise is no sum', () => {
  const { working } = workings.find(({ formula }) => formula === 'traction.pull')!;
  expect(isSum(sumOfText('pull = mass on the driven wheels × coefficient × gravity', working.inputs))).toBe(false);
});

test('control: a text with another sum would be found', () => {
  const { working } = workings.find(({ formula, working: { inputs } }) => formula === 'tow.pull' && inputs.grade!.value > 0)!;
  const sum = sumOfText('pull = gravity × (towed × (rolling + grade) − tractor × grade)', working.inputs);
  expect([isSum(sum), isAbout(reckon(sum), working.result.value)]).toEqual([true, false]);
});

const disk = { a: 216, b: 11.2, c: 0 };
const draft = (speed: string, width: number, depth: string) => draftOfTool(disk, 1, si(speed), width, si(depth));

test.each([
  ['faster than was measured', '15.1 km/h', 2, '10 cm'],
  ['backwards', '-1 km/h', 2, '10 cm'],
  ['at no speed one can say', 'NaN km/h', 2, '10 cm'],
  ['above the ground', '6 km/h', 2, '0 cm'],
  ['deeper than any such tool', '6 km/h', 2, '61 cm'],
  ['at no depth one can say', '6 km/h', 2, 'NaN cm'],
  ['without width', '6 km/h', 0, '10 cm'],
  ['at no width one can say', '6 km/h', Number.NaN, '10 cm'],
])('the draft of a tool %s is refused', (_what, speed, width, depth) => expect(isRefusal(draft(speed, width, depth))).toBe(true));

test.each([['0 km/h', '10 cm'], ['15 km/h', '10 cm'], ['4.1666666667 m/s', '10 cm'], ['6 km/h', '60 cm'], ['6 km/h', '600 mm'], ['6 km/h', '1 mm']])(
  'control: at the edge, %s and %s, it is not', (speed, depth) => expect(isRefusal(draft(speed, 2, depth))).toBe(false));

const field = fc.record({ soil: from(0.4, 1), speed: from(0, 4), width: from(0.5, 4), depth: from(0.01, 0.6) });

test('a tool pulls no lighter for being wider, deeper, faster or in heavier soil', () => {
  holds(fc.record({ it: field, more: from(1, 1.04) }), ({ it: { soil, speed, width, depth }, more }) => {
    const least = value(draftOfTool(disk, soil, speed, width, depth));
    return [
      draftOfTool(disk, soil * more, speed, width, depth), draftOfTool(disk, soil, asSi(speed * more), width, depth),
      draftOfTool(disk, soil, speed, width * more, depth), draftOfTool(disk, soil, speed, width, asSi(Math.min(depth * more, 0.6))),
    ].every((other) => value(other) * slack >= least);
  });
});

test.each([-0.01, 1, 1.2, Number.NaN])('a moisture of %d is refused', (moisture) => {
  expect(isRefusal(massAtMoisture(asSi(100), moisture))).toBe(true);
});
test.each([0, 0.15, 0.999])('control: a moisture of %d is not', (moisture) => {
  expect(value(massAtMoisture(asSi(100), moisture)) * (1 - moisture)).toBeCloseTo(100, 9);
});

test.each([[1, 1.01], [1, 0], [1, -0.5], [Number.NaN, 0.5], [1, Number.NaN]])('a bucket of width %d and opening %d is refused', (width, opening) => {
  expect(isRefusal(heapVolume(asSi(width), asSi(opening)))).toBe(true);
});

test('a heap never holds more than a ridge without slopes at its ends, nor less than two thirds of it', () => {
  holds(fc.record({ width: from(0.5, 3), share: from(0.05, 1) }), ({ width, share }) => {
    const opening = width * share, ridge = (width * opening * opening) / 8;
    const heap = value(heapVolume(width, asSi(opening)));
    return heap <= ridge * slack && heap * slack >= (ridge * 2) / 3;
  });
});

test('no limit at all is refused', () => expect(isRefusal(leastOf({}))).toBe(true));

test('the least limit is one of them, and none is less', () => {
  holds(fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), from(0, 5000), { minKeys: 1 }), (limits) => {
    const least = value(leastOf(limits)), all: number[] = Object.values(limits);
    return all.includes(least) && all.every((limit) => limit >= least);
  });
});

test.each([['1 yd3', '9 ft3', 3], ['1 yd3', '8.99 ft3', 4], ['1 m3', '100 L', 10], ['0.3 m3', '0.1 m3', 3], ['1 L', '1 m3', 1]])(
  '%s by %s takes %i loads', (volume, perLoad, loads) => expect(value(loadsWanted(si(volume), si(perLoad)))).toBe(loads));

test('the loads hold it all, and one less would not', () => {
  holds(fc.record({ volume: from(0.01, 100), perLoad: from(0.05, 2) }), ({ volume, perLoad }) => {
    const loads = value(loadsWanted(volume, perLoad));
    return Number.isInteger(loads) && loads * perLoad * slack >= volume && (loads - 1) * perLoad < volume;
  });
});

const machines = fc.record({
  tractor: from(600, 3000), frontShare: from(0.25, 0.6), back: from(0, 1500), behind: from(0.5, 2), ahead: from(0, 1.5),
  wheelbase: from(1.3, 2.2), share: from(0.1, 0.3),
});

test('with its front weights the front axle has its share, and with less it has not', () => {
  holds(machines, ({ frontShare, ...hung }) => {
    const bareFront = asSi(hung.tractor * frontShare);
    const weights = value(frontBallast({ ...hung, bareFront }));
    const load = (mass: number) => value(frontAxleLoad(bareFront, { mass: asSi(mass), ahead: hung.ahead }, { mass: hung.back, behind: hung.behind }, hung.wheelbase));
    const wanted = hung.share * hung.tractor;
    return load(weights) * slack + 1e-6 >= wanted && (weights < 0.001 || load(weights * 0.99) < wanted);
  });
});

test('front and rear axle carry the whole', () => {
  holds(fc.record({ total: from(500, 5000), share: from(0, 1) }), ({ total, share }) =>
    isAbout(value(rearAxleLoad(total, asSi(total * share))) + total * share, total));
});

test('a pull uphill is no less than gravity asks, by the sine of the slope', () => {
  holds(fc.record({ towed: from(0, 5000), tractor: from(500, 3000), rolling: from(0, 0.3), grade: from(0, 0.6) }), (train) => {
    const gravity = asSi(9.80665), slope = Math.atan(train.grade);
    const asked = gravity * (train.towed * (train.rolling * Math.cos(slope) + Math.sin(slope)) + train.tractor * Math.sin(slope));
    return value(towingPull({ ...train, gravity })) * slack >= asked;
  });
});

test('a tractor rears sooner the higher it is hitched, and never on less than nothing in front', () => {
  holds(fc.record({ load: from(50, 2000), wheelbase: from(1.2, 2.4), height: from(0.2, 1), more: from(0.01, 0.5) }), ({ load, wheelbase, height, more }) => {
    const pull = (at: number) => value(rearOverturnPull(load, wheelbase, asSi(at), asSi(9.80665)));
    return pull(height + more) < pull(height);
  });
  expect(value(rearOverturnPull(asSi(0), asSi(1.6), asSi(0.4), asSi(9.80665)))).toBe(0);
});

test('a tractor that may tow more than its own mass may still not tow without mass of its own', () => {
  expect([value(greatestTowed(asSi(0), 3)), value(greatestTowed(asSi(1000), 1))]).toEqual([0, 1000]);
});

test('what is left at the drawbar and asked of it by the same share meet', () => {
  holds(fc.record({ power: from(1000, 60_000), share: from(0.4, 1) }), ({ power, share }) =>
    isAbout(value(powerInHand(asSi(value(drawbarFromPto(power, share))), share)), power));
});

test('a turn at the same speed pulls as before', () => expect(value(turnForce(1))).toBe(1));

/** Pounds a foot at 16 in through, as the National Park Service prints them for its densities. */
const at16in: Partial<Record<FigureId, number>> = {
  'log.apple': 77, 'log.ash': 67, 'log.beech': 75, 'log.birch': 80, 'log.black-cherry': 63, 'log.cottonwood': 68, 'log.american-elm': 75,
  'log.hickory': 89, 'log.honeylocust': 85, 'log.red-maple': 70, 'log.black-oak': 87, 'log.live-oak': 106, 'log.red-oak': 88,
  'log.white-oak': 87, 'log.yellow-poplar': 53, 'log.black-walnut': 81, 'log.hemlock': 70, 'log.red-spruce': 47, 'log.tamarack': 66,
};

test('every kind of log of the rule book has a printed weight to compare', () => {
  expect(figureIds.filter((id) => id.startsWith('log.') && id !== 'log.unknown').sort()).toEqual(Object.keys(at16in).sort());
});

test.each(Object.entries(at16in) as [FigureId, number][])('a foot of %s, 16 in through, is %i lb as printed', (id, printed) => {
  const mass = value(logMass(asSi(book.value(id)), si('16 in'), si('1 ft'))) as Quantity<'mass'>;
  expect(Math.round(inUnit('mass', mass, 'lb'))).toBe(printed);
});

test('a log nobody can name is no lighter than any common kind', () => {
  const common = (Object.keys(at16in) as FigureId[]).filter((id) => id !== 'log.live-oak');
  expect(common.filter((id) => book.value(id) > book.value('log.unknown'))).toEqual([]);
});

test.each(['four-wheel', 'two-wheel'] as const)('with %s drive less is left on softer ground', (drive) => {
  const left = (['firm', 'soft', 'wet'] as const).map((ground) => book.value(`drawbar.${drive}.${ground}`));
  expect(left).toEqual([...left].sort((a, b) => b - a));
});

test('softer ground gives less hold and bears less', () => {
  const hold = (['firm', 'soft', 'wet'] as const).map((ground) => book.value(`traction.${ground}`));
  const bears = (['turf', 'soft', 'wet'] as const).map((ground) => book.value(`ground.pressure.${ground}`));
  for (const falling of [hold, bears]) expect(falling).toEqual([...falling].sort((a, b) => b - a));
});

test('a chipper of 4 in wants about 20 hp, one of 6 in about 32', () => {
  const hp = (inches: number) => inUnit('power', asSi(book.value('chip.power') * quantity('length', inches, 'in')), 'hp');
  expect([Math.abs(hp(4) - 20), Math.abs(hp(6) - 32)].every((off) => off <= 1)).toBe(true);
});

const rules = { share: 'pto.from-flywheel', width: 'drive.width', gravity: 'gravity.standard', soil: 'soil.loam' } as const;
test.each<[FormulaId, Working]>([
  ['pto.of-flywheel', cite(ptoFromFlywheel(asSi(1), 0.9), rules)],
  ['draft.by-width', cite(draftByWidth(asSi(1), asSi(1)), rules)],
  ['draft.by-area', cite(draftByArea(asSi(1), asSi(1), asSi(1)), rules)],
  ['draft.tool', cite(known<Working>(draftOfTool(disk, 0.88, asSi(1), 1, asSi(0.1))), rules)],
  ['traction.pull', cite(tractionPull(asSi(1), 0.5, asSi(9.8)), rules)],
])('%s says which of its inputs are the rule book\'s, and of no other', (formula, working) => {
  expect(working.formula).toBe(formula);
  const cited = Object.fromEntries(Object.entries(working.inputs).map(([name, { rule }]) => [name, rule]));
  expect(cited).toEqual(Object.fromEntries(Object.keys(working.inputs).map((name) => [name, (rules as Record<string, FigureId>)[name]])));
});
