import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import { taskIds, type AnswersDocument, type TaskDocument } from '../../src/answers/schema.ts';
import { needsOf, notCleared } from '../../src/needs/all.ts';
import type { Need } from '../../src/needs/need.ts';
import { ruleBook } from '../../src/trade/book.ts';
import { si } from '../support/quantities.ts';

type Said = Omit<Partial<AnswersDocument>, 'format'>;
const needs = (said: Said) => needsOf(answersOf({ format: 'acre-to-axle/answers/1', ...said }), ruleBook());
const need = (id: string, said: Said) => needs(said).find((each) => each.id === id);
const of = (task: TaskDocument, said: Said = {}): Said => ({ ...said, tasks: [task] });

const to = (value: number, unit: string) => ({ value, unit }) as never;
/** Figures to nine digits: how a sum is bracketed is no part of a demand. */
const steady = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_key, held: unknown) => (typeof held === 'number' ? Number(held.toPrecision(9)) : held)));

const weighs = { safety: false, must: false };
const gate = { safety: true, must: true };
const wished = { safety: true, must: false };

/** What is asked in full, but for the sums behind it. */
test.each<[string, Said, Record<string, unknown> | undefined]>([
  ['mow-lawn.deck', of({ task: 'mow-lawn' }), { ...weighs, capability: 'mower', deck: 'either', task: 'mow-lawn', from: ['tasks.mow-lawn.deck'] }],
  ['mow-lawn.deck', of({ task: 'mow-lawn', deck: 'rear' }), { ...weighs, capability: 'mower', deck: 'rear', task: 'mow-lawn', from: ['tasks.mow-lawn.deck'] }],
  ['mow-lawn.hours', of({ task: 'mow-lawn' }, { land: { mown: to(2, 'acre') } }),
    { ...weighs, capability: 'mower.hours', area: si('2 acre'), obstacles: 'some', task: 'mow-lawn', from: ['land.mown', 'tasks.mow-lawn.hours', 'land.obstacles'] }],
  ['mow-lawn.hours', of({ task: 'mow-lawn', hours: to(2, 'h') }, { land: { mown: to(2, 'acre'), obstacles: 'many' } }),
    { ...weighs, capability: 'mower.hours', area: si('2 acre'), obstacles: 'many', atMost: 7200, task: 'mow-lawn', from: ['land.mown', 'tasks.mow-lawn.hours', 'land.obstacles'] }],
  ['cut-rough.cutter', of({ task: 'cut-rough' }), { ...weighs, capability: 'rotary-cutter', growth: 'grass', task: 'cut-rough', from: ['tasks.cut-rough.growth'], rule: 'cut.power.grass' }],
  ['cut-rough.cutter', of({ task: 'cut-rough', growth: 'brush' }), { ...weighs, capability: 'rotary-cutter', growth: 'brush', task: 'cut-rough', from: ['tasks.cut-rough.growth'], rule: 'cut.power.brush' }],
  ['cut-rough.hours', of({ task: 'cut-rough', must: true }, { land: { rough: to(3, 'acre') } }),
    { ...weighs, capability: 'rotary-cutter.hours', area: si('3 acre'), task: 'cut-rough', from: ['land.rough'], rule: 'cut.speed' }],
  ['mow-lawn.hours', of({ task: 'mow-lawn', hours: to(2, 'h') }), undefined],
  ['cut-rough.hours', of({ task: 'cut-rough' }), undefined],
  ['dig.backhoe', of({ task: 'dig' }), { ...weighs, capability: 'backhoe', task: 'dig', from: ['tasks.dig.depth'] }],
  ['dig.backhoe', of({ task: 'dig', depth: to(6, 'ft') }), { ...weighs, capability: 'backhoe', atLeast: si('6 ft'), task: 'dig', from: ['tasks.dig.depth'] }],
  ['dig.axles', of({ task: 'dig' }), { ...wished, capability: 'implement.axles', task: 'dig', from: ['tasks'], rule: 'hitch.front-share' }],
  ['carry-implement.front-axle', of({ task: 'carry-implement', weight: to(700, 'lb') }),
    { ...wished, capability: 'hitch.front-axle', load: si('700 lb'), behind: 0.61, task: 'carry-implement', from: ['tasks.carry-implement.weight', 'tasks.carry-implement.distance'], rule: 'hitch.front-share' }],
  ['carry-implement.lift', of({ task: 'carry-implement', weight: to(700, 'lb'), distance: to(40, 'in') }),
    { ...weighs, capability: 'hitch.lift', load: si('700 lb'), behind: si('40 in'), task: 'carry-implement', from: ['tasks.carry-implement.weight', 'tasks.carry-implement.distance'], rule: 'hitch.rated-behind' }],
  ['carry-implement.lift', of({ task: 'carry-implement', distance: to(40, 'in') }), undefined],

  ['lift-pallets.loader', of({ task: 'lift-pallets' }), { ...weighs, capability: 'loader.any', task: 'lift-pallets', from: ['tasks.lift-pallets.weight'] }],
  ['lift-pallets.loader', of({ task: 'lift-pallets', weight: to(800, 'lb') }), undefined],
  ['lift-pallets.loader', of({ task: 'lift-pallets', height: to(6, 'ft') }), undefined],
  ['lift-pallets.weight', of({ task: 'lift-pallets', weight: to(800, 'lb') }),
    { ...weighs, capability: 'loader.lift', holder: 'pallet-forks', load: si('800 lb'), loadAhead: si('28 in'), task: 'lift-pallets', from: ['tasks.lift-pallets.weight'], rule: 'loader.margin' }],
  ['lift-pallets.height', of({ task: 'lift-pallets', height: to(6, 'ft') }), { ...weighs, capability: 'loader.height', atLeast: si('6 ft'), task: 'lift-pallets', from: ['tasks.lift-pallets.height'] }],
  ['lift-bales.rear-axle', of({ task: 'lift-bales', weight: to(800, 'lb'), diameter: to(4, 'ft') }),
    { ...wished, capability: 'loader.rear-axle', holder: 'bale-spear', load: si('800 lb'), loadAhead: si('29 in'), task: 'lift-bales', from: ['tasks.lift-bales.weight'], rule: 'loader.rear-share' }],
  ['handle-logs.weight', of({ task: 'handle-logs', weight: to(900, 'lb') }),
    { ...weighs, capability: 'loader.lift', holder: 'grapple', load: si('900 lb'), loadAhead: si('24 in'), task: 'handle-logs', from: ['tasks.handle-logs.weight'], rule: 'loader.margin' }],
  ['handle-logs.third-function', of({ task: 'handle-logs' }), { ...weighs, capability: 'third-function', task: 'handle-logs', from: ['tasks'] }],
  ['handle-logs.height', of({ task: 'handle-logs', height: to(4, 'ft') }), { ...weighs, capability: 'loader.height', atLeast: si('4 ft'), task: 'handle-logs', from: ['tasks.handle-logs.height'] }],
  ['move-loose.loader', of({ task: 'move-loose' }), { ...weighs, capability: 'loader.any', task: 'move-loose', from: ['tasks.move-loose.material'] }],
  ['move-loose.rear-axle', of({ task: 'move-loose', material: ' Gravel ' }),
    { ...wished, capability: 'loader.rear-axle', holder: 'bucket', bulk: si('3400 lb/yd3'), loadAhead: si('15 in'), task: 'move-loose', from: ['tasks.move-loose.material'], rule: 'loader.rear-share' }],
  ['move-loose.rear-axle', of({ task: 'move-loose', material: 'moon dust' }),
    { ...wished, capability: 'loader.rear-axle', holder: 'bucket', loadAhead: si('15 in'), task: 'move-loose', from: ['tasks.move-loose.material'], rule: 'loader.rear-share' }],
  ['move-loose.hours', of({ task: 'move-loose', must: true, material: 'sand', volume: to(20, 'yd3') }),
    { ...weighs, capability: 'loader.loose', bulk: si('3100 lb/yd3'), volume: si('20 yd3'), task: 'move-loose', from: ['tasks.move-loose.material', 'tasks.move-loose.volume'], rule: 'bulk.sand' }],
  ['move-loose.hours', of({ task: 'move-loose', material: 'sand' }), undefined],
  ['move-loose.hours', of({ task: 'move-loose', volume: to(20, 'yd3') }), undefined],

  ['till-garden.implement', of({ task: 'till-garden' }), { ...weighs, capability: 'implement', kinds: ['tiller'], task: 'till-garden', from: ['tasks'] }],
  ['till-garden.hours', of({ task: 'till-garden', must: true, area: to(900, 'm2') }), { ...weighs, capability: 'implement.hours', area: 900, task: 'till-garden', from: ['tasks.till-garden.area'] }],
  ['till-garden.hours', of({ task: 'till-garden' }), undefined],
  ['till-garden.pull', of({ task: 'till-garden' }), undefined],
  ['grade-drive.implement', of({ task: 'grade-drive' }), { ...weighs, capability: 'implement', kinds: ['box-blade', 'rear-blade', 'landscape-rake'], task: 'grade-drive', from: ['tasks'] }],
  ['grade-drive.pull', of({ task: 'grade-drive' }), { ...weighs, capability: 'implement.pull', ground: 'firm', soil: 'clay', task: 'grade-drive', from: ['land.ground', 'land.soil'], rule: 'traction.firm' }],
  ['grade-drive.hours', of({ task: 'grade-drive', length: to(100, 'm') }), { ...weighs, capability: 'implement.hours', area: 304.8, task: 'grade-drive', from: ['tasks.grade-drive.length'] }],
  ['grade-drive.hours', of({ task: 'grade-drive' }), undefined],
  ['clear-snow.hours', of({ task: 'clear-snow', length: to(100, 'm') }), { ...weighs, capability: 'implement.hours', area: 304.8, task: 'clear-snow', from: ['tasks.clear-snow.length'] }],
  ['clear-snow.hours', of({ task: 'clear-snow', length: to(100, 'm'), depth: to(10, 'cm') }),
    { ...weighs, capability: 'implement.hours', area: 304.8, task: 'clear-snow', from: ['tasks.clear-snow.length', 'tasks.clear-snow.depth'] }],
  ['clear-snow.hours', of({ task: 'clear-snow', depth: to(10, 'cm') }), undefined],
  ['clear-snow.pull', of({ task: 'clear-snow' }), undefined],
  ['bore-holes.implement', of({ task: 'bore-holes' }), { ...weighs, capability: 'implement', kinds: ['post-hole-digger'], task: 'bore-holes', from: ['tasks'] }],
  ['chip-brush.implement', of({ task: 'chip-brush' }), { ...weighs, capability: 'implement', kinds: ['chipper'], task: 'chip-brush', from: ['tasks'] }],
  ['chip-brush.implement', of({ task: 'chip-brush', diameter: to(4, 'in') }),
    { ...weighs, capability: 'implement', kinds: ['chipper'], capacity: si('4 in'), task: 'chip-brush', from: ['tasks.chip-brush.diameter'] }],
  ['spread-spray.implement', of({ task: 'spread-spray' }), { ...weighs, capability: 'implement', kinds: ['spreader', 'sprayer'], task: 'spread-spray', from: ['tasks'] }],
  ['spread-spray.hours', of({ task: 'spread-spray', area: to(2, 'ha') }), { ...weighs, capability: 'implement.hours', area: 20_000, task: 'spread-spray', from: ['tasks.spread-spray.area'] }],
  ['make-hay.implement', of({ task: 'make-hay' }), { ...weighs, capability: 'implement', kinds: ['disk-mower'], task: 'make-hay', from: ['tasks'] }],
  ['make-hay.hours', of({ task: 'make-hay', area: to(2, 'ha') }), { ...weighs, capability: 'implement.hours', area: 20_000, task: 'make-hay', from: ['tasks.make-hay.area'] }],
  ['drag-arena.implement', of({ task: 'drag-arena' }), { ...weighs, capability: 'implement', kinds: ['drag-harrow', 'landscape-rake'], task: 'drag-arena', from: ['tasks'] }],
  ['drag-arena.hours', of({ task: 'drag-arena', area: to(900, 'm2') }), { ...weighs, capability: 'implement.hours', area: 900, task: 'drag-arena', from: ['tasks.drag-arena.area'] }],
  ['drag-arena.pull', of({ task: 'drag-arena' }, { land: { ground: 'wet', soil: 'loam' } }),
    { ...weighs, capability: 'implement.pull', ground: 'wet', soil: 'loam', task: 'drag-arena', from: ['land.ground', 'land.soil'], rule: 'traction.wet' }],
  ['level-field.implement', of({ task: 'level-field' }), { ...weighs, capability: 'implement', kinds: ['disk', 'plough', 'box-blade'], task: 'level-field', from: ['tasks'] }],
  ['level-field.hours', of({ task: 'level-field', area: to(2, 'ha') }), { ...weighs, capability: 'implement.hours', area: 20_000, task: 'level-field', from: ['tasks.level-field.area'] }],
  ['level-field.pull', of({ task: 'level-field' }, { land: { ground: 'soft', soil: 'sand' } }),
    { ...weighs, capability: 'implement.pull', ground: 'soft', soil: 'sand', task: 'level-field', from: ['land.ground', 'land.soil'], rule: 'traction.soft' }],
  ['level-field.axles', of({ task: 'level-field' }), { ...wished, capability: 'implement.axles', task: 'level-field', from: ['tasks'], rule: 'hitch.front-share' }],

  ['tow-wagon.drawbar', of({ task: 'tow-wagon' }), { ...wished, capability: 'drawbar', task: 'tow-wagon', from: ['tasks'] }],
  ['tow-wagon.towed-mass', of({ task: 'tow-wagon' }), undefined],
  ['tow-wagon.towed-mass', of({ task: 'tow-wagon', weight: to(2, 't') }),
    { ...wished, capability: 'tow.mass', towed: 2000, braked: false, task: 'tow-wagon', from: ['tasks.tow-wagon.weight', 'tasks.tow-wagon.brakes'], rule: 'tow.ratio.unbraked' }],
  ['tow-wagon.towed-mass', of({ task: 'tow-wagon', weight: to(2, 't'), brakes: 'none' }),
    { ...wished, capability: 'tow.mass', towed: 2000, braked: false, task: 'tow-wagon', from: ['tasks.tow-wagon.weight', 'tasks.tow-wagon.brakes'], rule: 'tow.ratio.unbraked' }],
  ['tow-wagon.towed-mass', of({ task: 'tow-wagon', weight: to(2, 't'), brakes: 'inertia' }),
    { ...wished, capability: 'tow.mass', towed: 2000, braked: true, task: 'tow-wagon', from: ['tasks.tow-wagon.weight', 'tasks.tow-wagon.brakes'], rule: 'tow.ratio.braked' }],
  ...(['hydraulic', 'air'] as const).map((brakes): [string, Said, Record<string, unknown>] => [
    'tow-wagon.towed-mass', of({ task: 'tow-wagon', weight: to(2, 't'), brakes }),
    { ...wished, capability: 'tow.mass', towed: 2000, braked: false, task: 'tow-wagon', from: ['tasks.tow-wagon.weight', 'tasks.tow-wagon.brakes'], rule: 'tow.ratio.unbraked' },
  ]),
  ['tow-wagon.tow-pull', of({ task: 'tow-wagon', must: true, weight: to(2, 't') }, { land: { slope: { value: 10, unit: 'percent' } } }),
    { ...gate, capability: 'tow.pull', towed: 2000, grade: 0.1, ground: 'firm', task: 'tow-wagon', from: ['tasks.tow-wagon.weight', 'tasks.tow-wagon.brakes', 'land.slope', 'land.ground'], rule: 'tow.rolling' }],
  ['tow-wagon.tow-pull', of({ task: 'tow-wagon', weight: to(2, 't') }), undefined],
  ['tow-wagon.tow-pull', of({ task: 'tow-wagon', weight: to(2, 't') }, { land: { slope: 'steep' } }), undefined],
  ['tow-wagon.tow-pull', of({ task: 'tow-wagon' }, { land: { slope: 'flat' } }), undefined],
  ['make-hay.towed-mass', of({ task: 'make-hay', must: true }),
    { ...gate, capability: 'tow.mass', towed: si('3000 lb'), braked: false, task: 'make-hay', from: ['tasks'], rule: 'tow.ratio.unbraked' }],
  ['make-hay.baler', of({ task: 'make-hay' }), { ...weighs, capability: 'pto.power', power: 'hay.baler-power', task: 'make-hay', from: ['tasks'], rule: 'hay.baler-power' }],
  ['make-hay.tow-pull', of({ task: 'make-hay' }, { land: { slope: { value: 10, unit: 'percent' }, ground: 'wet' } }),
    { ...wished, capability: 'tow.pull', towed: si('3000 lb'), grade: 0.1, ground: 'wet', task: 'make-hay', from: ['tasks', 'land.slope', 'land.ground'], rule: 'tow.rolling' }],

  ['slope.driven-wheels', of({ task: 'lift-pallets' }, { land: { slope: 'steep' } }), { ...gate, capability: 'slope.driven-wheels', from: ['land.slope'], rule: 'slope.limit' }],
  ['slope.driven-wheels', of({ task: 'mow-lawn' }, { land: { slope: 'rolling' } }), undefined],
  ['slope.tip-angle', { land: { slope: 'rolling' } }, { ...gate, capability: 'slope.tip-angle', slope: si('10 deg'), carried: 0.5, lifts: [], from: ['land.slope'], rule: 'slope.margin' }],
  ['slope.tip-angle', { land: { slope: 'steep' } }, undefined],
  ['slope.tip-angle', { land: { slope: 'flat' } }, undefined],
  ['slope.tip-angle', {}, undefined],
  ['slope.tip-angle', { land: { slope: 'rolling' }, tasks: [{ task: 'move-loose' }, { task: 'handle-logs', weight: to(900, 'lb') }, { task: 'lift-bales' }, { task: 'lift-pallets' }] },
    { ...gate, capability: 'slope.tip-angle', slope: si('10 deg'), carried: 0.5, from: ['land.slope'], rule: 'slope.margin',
      lifts: [{ task: 'handle-logs', holder: 'grapple', load: si('900 lb'), loadAhead: si('24 in') }, { task: 'move-loose', holder: 'bucket', loadAhead: si('15 in') }] }],

  ...taskIds.map((task): [string, Said, Record<string, unknown> | undefined] => [
    'work.gross-mass', { tasks: [{ task: 'tow-wagon' }, { task } as TaskDocument] },
    task === 'tow-wagon' ? undefined : {
      ...gate, capability: 'gross-mass', from: ['tasks'], lifts: task === 'move-loose' ? [{ task, holder: 'bucket', loadAhead: si('15 in') }] : [],
    },
  ]),
  ['work.gross-mass', {}, undefined],
  ['work.gross-mass', { tasks: [{ task: 'carry-implement', weight: to(500, 'kg') }, { task: 'lift-pallets', weight: to(800, 'lb') }] },
    { ...gate, capability: 'gross-mass', from: ['tasks'], carried: 500, lifts: [{ task: 'lift-pallets', holder: 'pallet-forks', load: si('800 lb'), loadAhead: si('28 in') }] }],

  ['land.tyres', of({ task: 'mow-lawn' }), { ...weighs, capability: 'tyres', lawn: true, from: ['tasks'] }],
  ['land.tyres', { land: { ground: 'soft' } }, { ...weighs, capability: 'tyres', ground: 'soft', lawn: false, from: ['land.ground'] }],
  ['land.tyres', { land: { ground: 'firm' } }, undefined],
  ['land.pressure', { land: { ground: 'soft' } }, { ...weighs, capability: 'ground-pressure', bears: 'soft', from: ['land.ground'], rule: 'ground.pressure.soft' }],
  ['land.pressure', of({ task: 'mow-lawn' }, { land: { ground: 'wet' } }), { ...weighs, capability: 'ground-pressure', bears: 'wet', from: ['land.ground'], rule: 'ground.pressure.wet' }],
  ['land.pressure', of({ task: 'mow-lawn' }, { land: { ground: 'firm' } }), { ...weighs, capability: 'ground-pressure', bears: 'turf', from: ['land.ground'], rule: 'ground.pressure.turf' }],
  ['land.gate', { land: { gate: to(6, 'ft') } }, { ...weighs, must: true, capability: 'width', passage: 'gate', atMost: si('6 ft'), from: ['land.gate'], rule: 'place.side-clearance' }],
  ['storage.door-width', { storage: { doorWidth: to(8, 'ft') } }, { ...weighs, must: true, capability: 'width', passage: 'door', atMost: si('8 ft'), from: ['storage.doorWidth'], rule: 'place.side-clearance' }],
  ['storage.door-height', { storage: { doorHeight: to(7, 'ft') } }, { ...weighs, must: true, capability: 'height.stored', atMost: si('7 ft'), from: ['storage.doorHeight'], rule: 'place.height-clearance' }],
  ['storage.depth', { storage: { depth: to(20, 'ft') } }, { ...weighs, must: true, capability: 'length', atMost: si('20 ft'), from: ['storage.depth'], rule: 'place.depth-clearance' }],

  ...(['land.gate', 'storage.door-width', 'storage.door-height', 'storage.depth'] as const).flatMap((id): [string, Said, undefined][] => [
    [id, { land: {}, storage: { kind: 'garage' } }, undefined],
    [id, { storage: { kind: 'outdoors', doorWidth: to(8, 'ft'), doorHeight: to(7, 'ft'), depth: to(20, 'ft') } }, undefined],
  ]),

  ['haul.payload', { haul: { how: 'own-trailer', trailer: { gross: to(3, 't'), empty: to(800, 'kg') } } },
    { ...gate, capability: 'trailer.payload', atMost: 2200, from: ['haul.trailer.gross', 'haul.trailer.empty'], rule: 'haul.reserve' }],
  ['haul.payload', { haul: { how: 'own-trailer', trailer: { gross: to(3, 't') } } }, undefined],
  ['haul.payload', { haul: { how: 'own-trailer', trailer: { empty: to(800, 'kg') } } }, undefined],
  ['haul.payload', { haul: { how: 'own-trailer' } }, undefined],
  ['haul.tow-rating', { haul: { how: 'own-trailer', towRating: to(3, 't'), trailer: { empty: to(800, 'kg') } } },
    { ...gate, capability: 'trailer.tow-rating', atMost: 3000, trailer: 800, from: ['haul.towRating', 'haul.trailer.empty'], rule: 'haul.reserve' }],
  ['haul.tow-rating', { haul: { how: 'own-trailer', towRating: to(3, 't') } }, undefined],
  ['haul.tow-rating', { haul: { how: 'own-trailer', trailer: { empty: to(800, 'kg') } } }, undefined],
  ['haul.tongue', { haul: { how: 'own-trailer', tongueRating: to(300, 'kg'), trailer: { empty: to(800, 'kg') } } },
    { ...gate, capability: 'trailer.tongue', atMost: 300, trailer: 800, from: ['haul.tongueRating', 'haul.trailer.empty'], rule: 'haul.tongue.least' }],
  ['haul.tongue', { haul: { how: 'own-trailer', tongueRating: to(300, 'kg') } }, undefined],
  ['haul.tongue', { haul: { how: 'own-trailer', trailer: { empty: to(800, 'kg') } } }, undefined],
  ['haul.deck-width', { haul: { how: 'own-trailer', trailer: { deckWidth: to(2, 'm') } } },
    { ...gate, capability: 'trailer.deck-width', atMost: 2, from: ['haul.trailer.deckWidth'], rule: 'haul.deck-side' }],
  ['haul.deck-length', { haul: { how: 'own-trailer', trailer: { deckLength: to(5, 'm') } } },
    { ...gate, capability: 'trailer.deck-length', atMost: 5, from: ['haul.trailer.deckLength'] }],
  ['haul.deck-width', { haul: { how: 'own-trailer', trailer: { deckLength: to(5, 'm') } } }, undefined],
  ['haul.deck-length', { haul: { how: 'own-trailer', trailer: { deckWidth: to(2, 'm') } } }, undefined],
  ['haul.deck-width', { haul: { trailer: { deckWidth: to(2, 'm') } } }, undefined],

  ['budget.limit', { budget: { limit: { value: 20_000, currency: 'USD' } } },
    { ...weighs, capability: 'price', atMost: 20_000, currency: 'USD', from: ['budget.limit', 'budget.firm'] }],
  ['budget.limit', { budget: { limit: { value: 20_000, currency: 'USD' }, firm: true, includes: ['delivery'] }, haul: { delivery: to(30, 'km') } },
    { ...weighs, must: true, capability: 'price', atMost: 20_000, currency: 'USD', includes: ['delivery'], delivery: 30_000, from: ['budget.limit', 'budget.firm'] }],
  ['budget.limit', { budget: { limit: { value: 20_000, currency: 'USD' } }, haul: { delivery: 'the old mill' } },
    { ...weighs, capability: 'price', atMost: 20_000, currency: 'USD', from: ['budget.limit', 'budget.firm'] }],
  ['budget.monthly', { budget: { pay: 'loan', monthly: { value: 300, currency: 'USD' } } },
    { ...weighs, capability: 'instalment', atMost: 300, currency: 'USD', from: ['budget.monthly', 'budget.firm'] }],
  ['budget.monthly', { budget: { pay: 'loan', firm: true, monthly: { value: 300, currency: 'USD' } } },
    { ...weighs, must: true, capability: 'instalment', atMost: 300, currency: 'USD', from: ['budget.monthly', 'budget.firm'] }],
  ['budget.monthly', { budget: { monthly: { value: 300, currency: 'USD' } } }, undefined],
  ['budget.monthly', { budget: { pay: 'loan' } }, undefined],
  ['budget.service', { budget: { service: 'pickup', firm: true } }, { ...weighs, capability: 'serviced', from: ['budget.service'] }],
  ['budget.service', { budget: { service: 'dealer' } }, { ...weighs, capability: 'serviced', from: ['budget.service'] }],
  ['budget.service', { budget: { service: 'self' } }, undefined],

  ['comfort.cab', { comfort: { cab: 'heat' } }, { ...weighs, capability: 'cab', heat: true, airConditioning: false, from: ['comfort.cab'] }],
  ['comfort.cab', { comfort: { cab: 'heat-and-air', must: ['cab'] } }, { ...weighs, must: true, capability: 'cab', heat: true, airConditioning: true, from: ['comfort.cab'] }],
  ['comfort.cab', { comfort: { cab: 'none' } }, undefined],
  ['comfort.drive', { comfort: { drive: 'pedal', must: ['cab'] } }, { ...weighs, capability: 'transmission', kinds: ['hydrostatic'], from: ['comfort.drive'] }],
  ['comfort.drive', { comfort: { drive: 'shuttle' } }, { ...weighs, capability: 'transmission', kinds: ['power-reverser'], from: ['comfort.drive'] }],
  ['comfort.drive', { comfort: { drive: 'any' } }, undefined],
  ...(['smoothSeat', 'tiltWheel', 'cruise', 'levelLift', 'mowerLiftAlone'] as const).flatMap((wish): [string, Said, Record<string, unknown> | undefined][] => [
    [`comfort.${wish}`, { comfort: { [wish]: true } }, { ...weighs, capability: 'fitting', wish, from: [`comfort.${wish}`] }],
    [`comfort.${wish}`, { comfort: { [wish]: false } }, undefined],
    [`comfort.${wish}`, {}, undefined],
  ]),
  ['comfort.loaderOff', { comfort: { loaderOff: 'often' } }, { ...weighs, capability: 'fitting', wish: 'loaderOff', from: ['comfort.loaderOff'] }],
  ['comfort.loaderOff', { comfort: { loaderOff: 'rarely' } }, undefined],
  ['comfort.exhaust', { comfort: { exhaust: 'no-filter' } }, { ...weighs, capability: 'fitting', wish: 'exhaust', from: ['comfort.exhaust'] }],
  ['comfort.exhaust', { comfort: { exhaust: 'any' } }, undefined],

  ['operator.rops', {}, { ...gate, capability: 'rops', from: [], rule: 'rops.power' }],
  ['operator.seat-belt', {}, { ...gate, capability: 'seat-belt', from: [], rule: 'rops.power' }],
  ['operator.exhaust', {}, { ...gate, capability: 'exhaust.intact', from: [] }],
  ['operator.recall', {}, { ...gate, capability: 'recall', from: [] }],
  ['operator.overhead', { land: { overhead: to(8, 'ft') } }, { ...gate, capability: 'height.working', atMost: si('8 ft'), from: ['land.overhead'], rule: 'overhead.clearance' }],
  ['operator.overhead', { land: { overhead: 'open' } }, undefined],
  // A day in the seat: as long as he mows, or as long as days are.
  ['operator.noise', of({ task: 'mow-lawn', hours: to(5, 'h') }), { ...weighs, capability: 'noise', day: 18_000, from: ['tasks.mow-lawn.hours'], rule: 'noise.action' }],
  ['operator.noise', { comfort: { cab: 'heat' } }, { ...weighs, capability: 'noise', day: 10_800, from: ['comfort.cab'], rule: 'noise.action' }],
  ['operator.noise', { comfort: { cab: 'none', smoothSeat: true } }, undefined],
  ['operator.noise', of({ task: 'mow-lawn' }), undefined],
  ['operator.vibration', of({ task: 'mow-lawn', hours: to(5, 'h') }), { ...weighs, capability: 'vibration', day: 18_000, from: ['tasks.mow-lawn.hours'], rule: 'vibration.action' }],
  ['operator.vibration', { comfort: { smoothSeat: true } }, { ...weighs, capability: 'vibration', day: 10_800, from: ['comfort.smoothSeat'], rule: 'vibration.action' }],
  ['operator.vibration', { comfort: { cab: 'heat' } }, undefined],
  ['drivers.legs', { drivers: { limits: 'legs' } }, { ...weighs, capability: 'transmission', kinds: ['hydrostatic', 'power-reverser'], from: ['drivers.limits'] }],
  ['drivers.legs', { drivers: { limits: 'both' } }, { ...weighs, capability: 'transmission', kinds: ['hydrostatic', 'power-reverser'], from: ['drivers.limits'] }],
  ['drivers.legs', { drivers: { limits: 'reach' } }, undefined],
  ['drivers.legs', { drivers: { limits: 'none' } }, undefined],
])('%s of %j', (id, said, expected) => {
  expect(needs(said).filter((each) => !/^(?!undefined)[a-z-]+\.[\w-]+$/.test(each.id))).toEqual([]);
  const found = need(id, said);
  if (!expected) return expect(found).toBeUndefined();
  const { working: _working, id: _id, ...asked } = found!;
  expect(steady(asked)).toEqual(steady(expected));
});

const sums = (id: string, said: Said) => need(id, said)!.working.map(({ formula, inputs, result }) => ({
  formula, result: Number(result.value.toPrecision(6)), rules: Object.values(inputs).flatMap(({ rule }) => rule ?? []),
}));

test('snow is told by the strip, its volume and its weight', () => {
  // 100 m by 10 ft is 304.8 m²; 10 cm of it 30.48 m³; at 18.7 lb/ft³ (299.545 kg/m³) 9,130 kg.
  expect(sums('clear-snow.hours', of({ task: 'clear-snow', length: to(100, 'm'), depth: to(10, 'cm') }))).toEqual([
    { formula: 'area.strip', result: 304.8, rules: ['drive.width'] },
    { formula: 'snow.volume', result: 30.48, rules: ['drive.width'] },
    { formula: 'mass.of-volume', result: 9130.14, rules: ['snow.density.settled'] },
  ]);
  expect(sums('clear-snow.hours', of({ task: 'clear-snow', length: to(100, 'm') })).map(({ formula }) => formula)).toEqual(['area.strip']);
  expect(sums('grade-drive.hours', of({ task: 'grade-drive', length: to(100, 'm') }))).toEqual([{ formula: 'area.strip', result: 304.8, rules: ['drive.width'] }]);
});

test.each<['blade' | 'blower' | 'either' | undefined, string | undefined, string[]]>([
  [undefined, undefined, ['rear-blade', 'snow-blower']],
  ['either', undefined, ['rear-blade', 'snow-blower']],
  ['blade', undefined, ['rear-blade']],
  ['blower', undefined, ['snow-blower']],
  ['blade', '12 in', ['rear-blade']],
  ['blade', '12.1 in', ['snow-blower']],
  ['either', '13 in', ['snow-blower']],
  ['blower', '3 in', ['snow-blower']],
])('snow by %s, %s deep, is cleared by %j', (how, depth, kinds) => {
  const deep = depth === undefined ? {} : { depth: to(Number(depth.split(' ')[0]), 'in') };
  expect(need('clear-snow.implement', of({ task: 'clear-snow', ...(how && { how }), ...deep }))).toMatchObject({ kinds });
});

const bale = { task: 'lift-bales', diameter: to(5, 'ft'), width: to(4, 'ft') } as const;

/** π/4 · 5² · 4 = 78.5398 ft³; dry at 11.2 lb/ft³ 879.646 lb; its middle 5 in and half of 60 in ahead. */
test('a bale nobody weighed goes by its size, and says by which figures', () => {
  const dry = need('lift-bales.weight', of(bale))!;
  expect(steady({ ...(dry.capability === 'loader.lift' && { load: dry.load, ahead: dry.loadAhead }) })).toEqual(steady({ load: 78.539816339745 * 11.2 * si('1 lb'), ahead: si('35 in') }));
  expect(dry.from).toEqual(['tasks.lift-bales.diameter', 'tasks.lift-bales.width', 'tasks.lift-bales.hay']);
  expect(sums('lift-bales.weight', of(bale)).map(({ formula, rules }) => [formula, rules])).toEqual([['bale.volume', []], ['mass.of-volume', ['bale.density']]]);
});

test('a wrapped bale weighs its dry matter and its water', () => {
  const book = ruleBook();
  const wrapped = need('lift-bales.weight', of({ ...bale, hay: 'wrapped' }))!;
  const volume = 78.539816339745 * si('1 ft3');
  expect('load' in wrapped && wrapped.load).toBeCloseTo((volume * book.value('bale.dry-density')) / (1 - book.value('bale.moisture.wrapped')), 6);
  expect(sums('lift-bales.weight', of({ ...bale, hay: 'wrapped' })).map(({ formula, rules }) => [formula, rules])).toEqual([
    ['bale.volume', []], ['mass.of-volume', ['bale.dry-density']], ['mass.at-moisture', ['bale.moisture.wrapped']],
  ]);
});

test('a wrapped bale somebody weighed is smaller than a dry one of that weight, by its density as it is', () => {
  const book = ruleBook();
  const ahead = (hay: 'dry' | 'wrapped') => {
    const lift = need('lift-bales.weight', of({ task: 'lift-bales', weight: to(1000, 'lb'), hay }))!;
    return 'loadAhead' in lift ? 2 * (lift.loadAhead - si('5 in')) : 0;
  };
  const size = (density: number) => Math.cbrt((4 * 1000 * si('1 lb')) / (Math.PI * density));
  expect(ahead('dry')).toBeCloseTo(size(book.value('bale.density')), 9);
  expect(ahead('wrapped')).toBeCloseTo(size(book.value('bale.dry-density') / (1 - book.value('bale.moisture.wrapped'))), 9);
  expect(sums('lift-bales.weight', of({ task: 'lift-bales', weight: to(1000, 'lb') })).map(({ formula, rules }) => [formula, rules])).toEqual([['bale.size', ['bale.density']]]);
});

test.each<[string, TaskDocument, string]>([
  ['a bale whose width nobody measured', { task: 'lift-bales', diameter: to(5, 'ft') }, 'lift-bales'],
  ['a bale whose diameter nobody measured', { task: 'lift-bales', width: to(5, 'ft') }, 'lift-bales'],
  ['a log whose length nobody measured', { task: 'handle-logs', diameter: to(16, 'in') }, 'handle-logs'],
  ['a log whose diameter nobody measured', { task: 'handle-logs', length: to(8, 'ft') }, 'handle-logs'],
])('%s has no weight: it wants a loader, whatever it lifts', (_what, task, name) => {
  expect(needs(of(task)).map(({ id }) => id).filter((id) => /\.(loader|weight|rear-axle)$/.test(id))).toEqual([`${name}.loader`]);
  expect(need(`${name}.loader`, of(task))!.from).toEqual([`tasks.${name}.weight`]);
});

test('what is weighed counts as weighed, though its size is known', () => {
  const log = need('handle-logs.weight', of({ task: 'handle-logs', weight: to(500, 'lb'), diameter: to(16, 'in'), length: to(8, 'ft') }))!;
  const round = need('lift-bales.weight', of({ ...bale, weight: to(500, 'lb') }))!;
  expect(steady([log, round].map((each) => ['load' in each && each.load, each.working, each.from]))).toEqual(steady([
    [si('500 lb'), [], ['tasks.handle-logs.weight']], [si('500 lb'), [], ['tasks.lift-bales.weight']],
  ]));
});

test('a log says by which sizes and by which figure it was reckoned', () => {
  const said = of({ task: 'handle-logs', species: ' white  oak ', diameter: to(16, 'in'), length: to(8, 'ft') });
  expect(need('handle-logs.weight', said)!.from).toEqual(['tasks.handle-logs.species', 'tasks.handle-logs.diameter', 'tasks.handle-logs.length']);
  expect(sums('handle-logs.weight', said).map(({ formula, rules }) => [formula, rules])).toEqual([['log.mass', ['log.white-oak']]]);
});

/** What of each job rules out where the job is a must; the rest of it only ever weighs. */
test.each<[TaskDocument, Said, string[]]>([
  [{ task: 'mow-lawn' }, { land: { mown: to(2, 'acre') } }, ['deck', 'axles']],
  [{ task: 'mow-lawn', hours: to(2, 'h') }, { land: { mown: to(2, 'acre') } }, ['deck', 'hours', 'axles']],
  [{ task: 'cut-rough' }, { land: { rough: to(2, 'acre') } }, ['cutter', 'axles']],
  [{ task: 'lift-bales' }, {}, ['loader']],
  [{ task: 'lift-pallets', weight: to(800, 'lb'), height: to(6, 'ft') }, {}, ['weight', 'rear-axle', 'height']],
  [{ task: 'handle-logs', weight: to(800, 'lb') }, {}, ['weight', 'rear-axle', 'third-function']],
  [{ task: 'move-loose', material: 'sand', volume: to(5, 'yd3') }, {}, ['loader', 'rear-axle']],
  [{ task: 'dig' }, {}, ['backhoe', 'axles']],
  [{ task: 'carry-implement', weight: to(500, 'lb') }, {}, ['lift', 'front-axle']],
  [{ task: 'grade-drive', length: to(100, 'm') }, {}, ['implement', 'axles', 'pull']],
  [{ task: 'tow-wagon', weight: to(2, 't') }, { land: { slope: 'flat' } }, ['drawbar', 'towed-mass', 'tow-pull']],
])('of %j with %j as a must, %j rule out', (task, said, parts) => {
  const gates = (must: boolean | undefined) =>
    needs(of({ ...task, ...(must !== undefined && { must }) }, said)).filter((each): each is Need => each.task === task.task && each.must).map(({ id }) => id);
  expect(gates(true).sort()).toEqual(parts.map((part) => `${task.task}.${part}`).sort());
  expect([gates(false), gates(undefined)]).toEqual([[], []]);
});

test('no need but those of sums carries a sum', () => {
  const said: Said = {
    land: { slope: 'rolling', mown: to(2, 'acre'), rough: to(2, 'acre'), ground: 'wet', gate: to(6, 'ft'), overhead: to(8, 'ft') },
    tasks: [
      { task: 'mow-lawn', hours: to(2, 'h') }, { task: 'cut-rough' }, { task: 'lift-bales' }, { task: 'lift-pallets', weight: to(500, 'lb'), height: to(6, 'ft') },
      { task: 'move-loose', material: 'sand', volume: to(5, 'yd3') }, { task: 'dig' }, { task: 'till-garden', area: to(900, 'm2') }, { task: 'handle-logs' },
      { task: 'carry-implement', weight: to(500, 'lb') }, { task: 'tow-wagon', weight: to(2, 't') }, { task: 'make-hay', area: to(2, 'ha') }, { task: 'level-field' },
    ],
    storage: { doorWidth: to(8, 'ft'), doorHeight: to(7, 'ft'), depth: to(20, 'ft') },
    haul: { how: 'own-trailer', towRating: to(3, 't'), tongueRating: to(300, 'kg'), trailer: { gross: to(3, 't'), empty: to(800, 'kg'), deckWidth: to(2, 'm'), deckLength: to(5, 'm') } },
    budget: { limit: { value: 20_000, currency: 'USD' }, pay: 'loan', monthly: { value: 300, currency: 'USD' }, service: 'dealer' },
    comfort: { cab: 'heat', drive: 'pedal', smoothSeat: true, cruise: true }, drivers: { limits: 'legs' },
  };
  const found = needs(said);
  expect(found.length).toBeGreaterThan(40);
  expect(found.filter(({ working }) => working.length > 0).map(({ id }) => id)).toEqual([]);
});

const left = (said: Said) => notCleared(answersOf({ format: 'acre-to-axle/answers/1', ...said }), ruleBook());
const driver = { drivers: { least: 'some', under18: false } } as const;
const ground = (slope: NonNullable<Said['land']>['slope']): Said => ({ ...driver, land: { ...(slope !== undefined && { slope }), overhead: 'open' } });
const under: Said = { ...driver, land: { slope: 'flat' } };
const wagon: TaskDocument = { task: 'tow-wagon', weight: to(2, 't') };
const each: TaskDocument[] = [
  { task: 'cut-rough' }, { task: 'lift-bales' }, { task: 'lift-pallets' }, { task: 'move-loose' }, { task: 'handle-logs' }, wagon, { task: 'dig' },
];
const unsaid = { from: ['land.slope'] };

test.each<[string, Said, object[]]>([
  ['all that safety asks, and no task', ground('flat'), []],
  ['no slope, and no task', ground(undefined), [{ ...unsaid, id: 'slope.unsaid', tasks: [] }]],
  ['no slope', { ...ground(undefined), tasks: [{ task: 'dig' }] }, [{ ...unsaid, id: 'slope.unsaid', tasks: ['dig'] }]],
  ['steep, and no task', ground('steep'), [{ ...unsaid, id: 'slope.steep-unsaid', tasks: [], rule: 'slope.limit' }]],
  ['steep', { ...ground('steep'), tasks: [{ task: 'dig' }] }, [{ ...unsaid, id: 'slope.steep-unsaid', tasks: ['dig'], rule: 'slope.limit' }]],
  ['beyond the limit, and no task', ground(to(16, 'deg')), []],
  ['beyond the limit, of mowing, loader and wagon', { ...ground(to(16, 'deg')), tasks: each },
    [{ ...unsaid, id: 'slope.over-limit', tasks: ['cut-rough', 'lift-bales', 'lift-pallets', 'move-loose', 'handle-logs', 'tow-wagon'], rule: 'slope.limit' }]],
  ['beyond the limit, of a wagon alone', { ...ground(to(16, 'deg')), tasks: [wagon] }, [{ ...unsaid, id: 'slope.over-limit', tasks: ['tow-wagon'], rule: 'slope.limit' }]],
  ['at the limit', { ...ground(to(15, 'deg')), tasks: each }, []],
  ['nothing of what hangs overhead, and no task', under, [{ id: 'overhead.unsaid', tasks: [], from: ['land.overhead'] }]],
  ['nothing of what hangs overhead', { ...under, tasks: [{ task: 'dig' }] }, [{ id: 'overhead.unsaid', tasks: ['dig'], from: ['land.overhead'] }]],
  ['nothing of who drives', { land: { slope: 'flat', overhead: 'open' }, tasks: [{ task: 'dig' }] }, [{ id: 'drivers.unsaid', tasks: ['dig'], from: ['drivers.least', 'drivers.under18'] }]],
  ['not how old he is', { ...ground('flat'), drivers: { least: 'new' } }, [{ id: 'drivers.unsaid', tasks: [], from: ['drivers.least', 'drivers.under18'] }]],
  ['no weight of a wagon', { ...ground('flat'), tasks: [{ task: 'tow-wagon' }] }, [{ id: 'wagon.unsaid', tasks: ['tow-wagon'], from: ['tasks.tow-wagon.weight'] }]],
  ['nothing of the land', { ...driver, tasks: [{ task: 'dig' }] }, [{ ...unsaid, id: 'slope.unsaid', tasks: ['dig'] }, { id: 'overhead.unsaid', tasks: ['dig'], from: ['land.overhead'] }]],
  ['not what he can', { ...ground('flat'), drivers: { under18: true } }, [{ id: 'drivers.unsaid', tasks: [], from: ['drivers.least', 'drivers.under18'] }]],
])('who says %s leaves this open, in full', (_what, said, open) => {
  expect(left(said)).toEqual(open);
});
