import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import { extras, questions } from '../../src/answers/questions.ts';
import { taskIds, type AnswersDocument, type TaskDocument } from '../../src/answers/schema.ts';
import { needsOf } from '../../src/needs/all.ts';
import type { Need } from '../../src/needs/need.ts';
import { ruleBook, ruleIds } from '../../src/trade/book.ts';
import { aMinute, anyAnswers, runs } from '../support/arbitraries.ts';
import { degrees, feet, inches, lb, lineUp, usd, withMachine } from '../support/catalogue-for-tests.ts';
import { mustDo, mustHave, saying, standing } from '../support/reckon.ts';
import { si } from '../support/quantities.ts';

const needs = (answers: AnswersDocument) => needsOf(answersOf(answers), ruleBook());
const ids = (answers: AnswersDocument) => needs(answers).map(({ id }) => id);
const everyones = ['operator.rops', 'operator.seat-belt', 'operator.exhaust', 'operator.recall'];
/** What a machine may weigh in all is asked with whatever loads it. */
const own = (answers: AnswersDocument) => ids(answers).filter((id) => !everyones.includes(id) && id !== 'work.gross-mass');
const need = (answers: AnswersDocument, id: string): Need => needs(answers).find((each) => each.id === id)!;

test('who says nothing asks for a ROPS, a belt, an exhaust as it was built and no recall open, and for nothing else', () => {
  expect(ids({ format: 'acre-to-axle/answers/1' })).toEqual(everyones);
  expect(needs(saying()).every(({ must, safety }) => must && safety)).toBe(true);
});

test.each<[string, AnswersDocument, string[]]>([
  ['a deck', mustDo({ task: 'mow-lawn' }), ['mow-lawn.deck', 'mow-lawn.axles', 'land.tyres', 'land.pressure']],
  ['a lawn', { ...mustDo({ task: 'mow-lawn' }), land: { slope: 'flat', mown: { value: 2, unit: 'acre' } } }, ['mow-lawn.deck', 'mow-lawn.hours', 'mow-lawn.axles', 'land.tyres', 'land.pressure']],
  ['rough ground', mustDo({ task: 'cut-rough' }), ['cut-rough.cutter', 'cut-rough.axles']],
  ['a bale', mustDo({ task: 'lift-bales', weight: lb(800) }), ['lift-bales.weight', 'lift-bales.rear-axle']],
  ['a stack', mustDo({ task: 'lift-pallets', height: feet(6) }), ['lift-pallets.height']],
  ['a trench', mustDo({ task: 'dig' }), ['dig.backhoe', 'dig.axles']],
  ['an implement', mustDo({ task: 'carry-implement', weight: lb(700) }), ['carry-implement.lift', 'carry-implement.front-axle']],
  ['gravel', mustDo({ task: 'move-loose', material: 'gravel', volume: { value: 20, unit: 'yd3' } }), ['move-loose.loader', 'move-loose.rear-axle', 'move-loose.hours']],
  ['logs', mustDo({ task: 'handle-logs', species: 'red oak', diameter: inches(16), length: feet(8) }), ['handle-logs.weight', 'handle-logs.rear-axle', 'handle-logs.third-function']],
  ['a garden', mustDo({ task: 'till-garden', area: { value: 2000, unit: 'ft2' } }), ['till-garden.implement', 'till-garden.axles', 'till-garden.hours']],
  ['a drive', mustDo({ task: 'grade-drive', length: feet(600) }), ['grade-drive.implement', 'grade-drive.axles', 'grade-drive.pull', 'grade-drive.hours']],
  ['snow', mustDo({ task: 'clear-snow' }), ['clear-snow.implement', 'clear-snow.axles']],
  ['post holes', mustDo({ task: 'bore-holes' }), ['bore-holes.implement', 'bore-holes.axles']],
  ['a wagon', mustDo({ task: 'tow-wagon', weight: lb(3000) }), ['tow-wagon.drawbar', 'tow-wagon.towed-mass', 'tow-wagon.tow-pull']],
  ['a wagon on ground of unknown steepness', { ...mustDo({ task: 'tow-wagon', weight: lb(3000) }), land: { slope: 'steep' } }, ['tow-wagon.drawbar', 'tow-wagon.towed-mass']],
  ['hay', mustDo({ task: 'make-hay' }), ['make-hay.implement', 'make-hay.axles', 'make-hay.baler', 'make-hay.drawbar', 'make-hay.towed-mass', 'make-hay.tow-pull']],
  ['wet ground', saying({ land: { ground: 'wet' } }), ['land.tyres', 'land.pressure']],
  ['what the tow ball may carry', saying({ haul: { how: 'own-trailer', tongueRating: lb(700), trailer: { empty: lb(1800) } } }), ['haul.tongue']],
  ['a loan', saying({ budget: { pay: 'loan', monthly: usd(300), service: 'dealer' } }), ['budget.monthly', 'budget.service']],
  ['what he would pay a month, but in cash', saying({ budget: { pay: 'cash', monthly: usd(300) } }), []],
  ['legs that tire', saying({ drivers: { least: 'some', under18: false, limits: 'legs' } }), ['drivers.legs']],
  ['a gate', saying({ land: { gate: feet(6) } }), ['land.gate']],
  ['a shed', saying({ storage: { kind: 'shed', doorWidth: feet(8), doorHeight: feet(7), depth: feet(20) } }), ['storage.door-width', 'storage.door-height', 'storage.depth']],
  ['a place outdoors, whatever door was measured', saying({ storage: { kind: 'outdoors', doorWidth: feet(8), doorHeight: feet(7), depth: feet(20) } }), []],
  ['a trailer of his own', saying({ haul: { how: 'own-trailer', towRating: lb(7000), trailer: { gross: lb(7000), empty: lb(1800), deckWidth: inches(80), deckLength: feet(18) } } }), ['haul.payload', 'haul.tow-rating', 'haul.deck-width', 'haul.deck-length']],
  ['someone who hauls for him', saying({ haul: { how: 'hire', trailer: { gross: lb(7000), empty: lb(1800) } } }), []],
  ['a limit', saying({ budget: { limit: usd(20_000) } }), ['budget.limit']],
  ['a branch overhead', saying({ land: { overhead: feet(8) } }), ['operator.overhead']],
  ['rolling ground', saying({ land: { slope: 'rolling' } }), ['slope.tip-angle']],
  ['loader work on rolling ground', { ...mustDo({ task: 'lift-pallets' }), land: { slope: 'rolling' } }, ['lift-pallets.loader', 'slope.driven-wheels', 'slope.tip-angle']],
  ['loader work on ground of unknown steepness', { ...mustDo({ task: 'lift-pallets' }), land: { slope: 'steep' } }, ['lift-pallets.loader', 'slope.driven-wheels']],
  ['comforts he does without', saying({ comfort: { cab: 'none', drive: 'any', loaderOff: 'rarely', exhaust: 'any', cruise: false } }), []],
  ['a cab', saying({ comfort: { cab: 'heat' } }), ['comfort.cab', 'operator.noise']],
])('who speaks of %s', (_what, answers, expected) => {
  expect(own(answers).sort()).toEqual([...expected].sort());
});

test('a task that is a must rules out and a wish weighs; what is safety stays safety either way', () => {
  const lifting = (must: boolean) => needs({ ...saying(), tasks: [{ task: 'lift-bales', must, weight: lb(800), height: feet(6) }] })
    .flatMap(({ id, must: gate, safety }) => (id.startsWith('lift-bales') ? [[id, gate, safety]] : []));
  expect(lifting(true)).toEqual([['lift-bales.weight', true, false], ['lift-bales.rear-axle', true, true], ['lift-bales.height', true, false]]);
  expect(lifting(false)).toEqual([['lift-bales.weight', false, false], ['lift-bales.rear-axle', false, true], ['lift-bales.height', false, false]]);
});

test.each([
  ['a limit', (firm: boolean) => need(saying({ budget: { limit: usd(20_000), firm } }), 'budget.limit').must],
  ['a comfort', (must: boolean) => need(must ? mustHave({ cruise: true }) : saying({ comfort: { cruise: true } }), 'comfort.cruise').must],
])('%s rules out only where the buyer said so', (_what, isGate) => {
  expect([isGate(true), isGate(false)]).toEqual([true, false]);
});

/** An 800-lb bale of 11.2 lb a cubic foot is 53.96 in wide; its back rests 5 in ahead of the pins. */
test('a bale sits half of itself ahead of the spear, by the sum that is shown', () => {
  const lift = need(mustDo({ task: 'lift-bales', weight: lb(800) }), 'lift-bales.weight');
  if (lift.capability !== 'loader.lift') throw new Error('no lift');
  expect(lift.loadAhead).toBeCloseTo(si('31.98 in'), 3);
  expect(lift.load).toBeCloseTo(si('800 lb'), 9);
  expect(lift.working.map(({ formula, result }) => [formula, Math.round(result.value / si('1 in'))])).toEqual([['bale.size', 54]]);
});

test('a pallet sits 24 in ahead of the forks, whose face is 4 in ahead of the pins', () => {
  const lift = need(mustDo({ task: 'lift-pallets', weight: lb(800) }), 'lift-pallets.weight');
  expect(lift).toMatchObject({ holder: 'pallet-forks' });
  expect('loadAhead' in lift && lift.loadAhead).toBeCloseTo(si('28 in'), 9);
});

test('an implement whose middle nobody measured counts at the distance of the rating', () => {
  const carried = (distance?: ReturnType<typeof inches>) => need(mustDo({ task: 'carry-implement', weight: lb(500), ...(distance && { distance }) }), 'carry-implement.lift');
  expect(carried()).toMatchObject({ behind: 0.61 });
  expect(carried(inches(40))).not.toMatchObject({ behind: 0.61 });
});

const tipAngle = (slope: NonNullable<AnswersDocument['land']>['slope']) => needs(saying({ land: { slope } })).find(({ id }) => id === 'slope.tip-angle');
const angleOf = (slope: NonNullable<AnswersDocument['land']>['slope']) => {
  const found = tipAngle(slope);
  return found?.capability === 'slope.tip-angle' ? found.slope : undefined;
};

test('a slope is the same said in words, in degrees or in percent', () => {
  expect(angleOf('rolling')).toBeCloseTo(si('10 deg'), 9);
  expect(angleOf(degrees(10))).toBeCloseTo(si('10 deg'), 9);
  expect(angleOf({ value: 17.632698, unit: 'percent' })).toBeCloseTo(si('10 deg'), 7);
});

test('machines are compared on a slope from beyond what is meant by flat', () => {
  expect([tipAngle('flat'), tipAngle(degrees(5)), tipAngle({ value: 8.748, unit: 'percent' })]).toEqual([undefined, undefined, undefined]);
  expect(tipAngle(degrees(5.01))).toBeDefined();
});

test('every load whose weight is known goes into the comparison on a slope, and the bucketful too', () => {
  const answers: AnswersDocument = {
    ...saying({ land: { slope: 'rolling' } }),
    tasks: [{ task: 'lift-bales', weight: lb(800) }, { task: 'lift-pallets' }, { task: 'move-loose', material: 'sand' }],
  };
  const { lifts } = need(answers, 'slope.tip-angle') as Extract<Need, { capability: 'slope.tip-angle' }>;
  expect(lifts.map(({ holder }) => holder)).toEqual(['bale-spear', 'bucket']);
});

test('what is on the trailer may weigh what its plate leaves, and never less than nothing', () => {
  const payload = (gross: number, empty: number) => need(saying({ haul: { how: 'own-trailer', trailer: { gross: lb(gross), empty: lb(empty) } } }), 'haul.payload');
  expect(payload(7000, 1800)).toMatchObject({ capability: 'trailer.payload', safety: true });
  expect('atMost' in payload(7000, 1800) && payload(7000, 1800)).toHaveProperty('atMost', expect.closeTo(si('5200 lb'), 6));
  expect(payload(1000, 1800)).toHaveProperty('atMost', 0);
});

test('every task the schema knows asks something of a machine', () => {
  expect(taskIds.filter((task) => task !== 'carry-implement' && own(mustDo({ task } as TaskDocument)).length === 0)).toEqual([]);
});

/** NPS table of green logs, second-hand: red oak 16 in thick weighs 88 lb a foot. */
test('a log nobody weighed goes by species, diameter and length', () => {
  const log = need(mustDo({ task: 'handle-logs', species: 'Red Oak', diameter: inches(16), length: feet(8) }), 'handle-logs.weight');
  expect('load' in log && log.load! / si('1 lb')).toBeCloseTo(703.7, 1);
  expect(log.working[0]?.inputs.density?.rule).toBe('log.red-oak');
  const strange = need(mustDo({ task: 'handle-logs', species: 'ironwood', diameter: inches(16), length: feet(8) }), 'handle-logs.weight');
  expect(strange.working[0]?.inputs.density?.rule).toBe('log.unknown');
});

/** Texas A&M AgriLife E-319: 5 by 5 ft weighs 1,100 lb, 5 wide by 6 ft 1,584 lb of the same density. */
test('a bale nobody weighed goes by its size', () => {
  const bale = need(mustDo({ task: 'lift-bales', diameter: feet(6), width: feet(5) }), 'lift-bales.weight');
  expect('load' in bale && Math.abs(bale.load! / si('1 lb') - 1584)).toBeLessThan(1);
});

const asked = new Set([
  ...questions.flatMap(({ fields }) => fields.map(({ at }) => at as string)), ...Object.keys(extras).map((name) => `comfort.${name}`),
]);

test('of whatever answers: each need once, by a rule that exists, from answers that are asked for', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    const found = needs(answers);
    expect(new Set(found.map(({ id }) => id)).size).toBe(found.length);
    for (const { id, from, rule, safety, must, task } of found) {
      expect(from.filter((path) => !asked.has(path)), id).toEqual([]);
      if (!id.startsWith('operator.')) expect(from.length, id).toBeGreaterThan(0);
      if (rule) expect(ruleIds).toContain(rule);
      // Safety of a job goes with the job; any other rules out whoever asks.
      if (safety) expect(must, id).toBe(task === undefined || answers.tasks!.find((each) => each.task === task)!.must === true);
    }
  }), runs(300));
}, aMinute);

test('an answer left out never adds a need', () => {
  fc.assert(fc.property(anyAnswers, fc.constantFrom('land', 'tasks', 'storage', 'haul', 'budget', 'comfort', 'drivers', 'owned', 'priorities'), (answers, left) => {
    const { [left]: _left, ...fewer } = answers;
    const before = ids(answers);
    expect(ids(fewer as AnswersDocument).filter((id) => !before.includes(id))).toEqual([]);
  }), runs(200));
}, aMinute);

test('bales that nobody weighed still want a loader, and what can have none is ruled out', () => {
  const bales = mustDo({ task: 'lift-bales' });
  expect(standing(lineUp(), bales), 'control').toContain('mid-deluxe');
  expect(standing(withMachine(lineUp(), 'mid-deluxe', () => ({ loaders: [] })), bales)).not.toContain('mid-deluxe');
});
