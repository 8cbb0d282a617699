import type { Kind, UnitOf } from '../units/quantity.ts';
import { comfortWishes, criteria, finerPoints, type FinerPoint } from './names.ts';
import type { AnswersDocument, TaskId } from './schema.ts';

/** The tasks the guide offers, what most people have first. */
export const offeredTasks = [
  'mow-lawn', 'cut-rough', 'move-loose', 'lift-pallets', 'lift-bales', 'handle-logs', 'clear-snow', 'grade-drive', 'till-garden',
  'dig', 'bore-holes', 'chip-brush', 'tow-wagon', 'spread-spray', 'drag-arena', 'level-field', 'make-hay', 'carry-implement',
] as const satisfies readonly TaskId[];

/** Loose materials and green logs the rule book has a density for, by the last word of its id. */
export const materials = ['gravel', 'sand', 'topsoil', 'clay', 'mulch', 'wood-chips', 'compost', 'manure', 'firewood'] as const;
export const species = [
  'american-elm', 'apple', 'ash', 'beech', 'birch', 'black-cherry', 'black-oak', 'black-walnut', 'cottonwood', 'hemlock',
  'hickory', 'honeylocust', 'live-oak', 'red-maple', 'red-oak', 'red-spruce', 'tamarack', 'white-oak', 'yellow-poplar',
] as const;

/** Plain comforts, each one answer of the document and one box to tick. */
export const extras = {
  smoothSeat: true, tiltWheel: true, cruise: true, loaderOff: 'often', levelLift: true, mowerLiftAlone: true, exhaust: 'no-filter',
} as const;

/** An amount typed by hand; bounds are in the unit beside them and only catch slips of the pen. */
export interface Typed {
  kind: Kind;
  us: string;
  metric: string;
  from: number;
  to: number;
  boundUnit: string;
}

/** How a value is asked for. */
export type Control =
  | { control: 'choice'; options: readonly string[] }
  | { control: 'yes-no' }
  | { control: 'several'; options: (answers: AnswersDocument) => readonly string[] }
  | { control: 'order'; options: readonly string[]; places: number }
  | ({ control: 'quantity' } & Typed)
  /** A choice of which one option opens a box for an amount; without one that option stands, or is refused. */
  | ({ control: 'choice-or-quantity'; options: readonly string[]; opens: string; amountWanted: boolean } & Typed)
  | { control: 'money'; from: number; to: number; example: number }
  | { control: 'number'; from: number; to: number };

export type Field = Control & {
  /** Where the answer stands in the document; a task's by the name of the task. */
  at: string;
};

/** Whether a step is asked; `maybe` while an answer still to come decides it. */
export type Asked = 'yes' | 'no' | 'maybe';

export interface Question {
  id: string;
  fields: readonly Field[];
  /** The files of `src` that read its answers. */
  readBy: readonly string[];
  asked: (answers: AnswersDocument, seen: (id: string) => boolean) => Asked;
}

const quantity = <K extends Kind>(at: string, kind: K, us: UnitOf<K>, metric: UnitOf<K>, from: number, to: number) =>
  ({ at, control: 'quantity', kind, us, metric, from, to, boundUnit: us }) as const;

const perYear = (task: TaskId) => ({ at: `tasks.${task}.perYear`, control: 'number', from: 1, to: 2000 } as const);

const always = (): Asked => 'yes';
const has = (task: TaskId) => (answers: AnswersDocument): Asked =>
  answers.tasks?.some((each) => each.task === task) ? 'yes' : 'no';
/** Tasks for which it counts how firm the ground is, and how high it lies. */
const onGround: readonly string[] = ['mow-lawn', 'cut-rough', 'till-garden', 'grade-drive', 'drag-arena', 'level-field', 'tow-wagon', 'make-hay'];
const tasksOf = (answers: AnswersDocument) => (answers.tasks ?? []).map(({ task }) => task as string);
const indoors = (answers: AnswersDocument) => answers.storage?.kind === 'shed' || answers.storage?.kind === 'garage';
const ownTrailer = (answers: AnswersDocument) => answers.haul?.how === 'own-trailer';

/** The finer points are asked of who wants them looked at, and of who has answered them before. */
const ifWanted = (id: FinerPoint) => (answers: AnswersDocument, seen: (id: string) => boolean): Asked =>
  (seen(id) || answers.more?.includes(id) ? 'yes' : seen('more') ? 'no' : 'maybe');

/** Whether a finer point may still be asked. */
const mayCome = (id: FinerPoint, answers: AnswersDocument, seen: (id: string) => boolean) => !seen(id) && ifWanted(id)(answers, seen) !== 'no';

const comforts = ['cab', 'drive', 'extras'] as const;

/** The wishes for comfort a buyer has expressed: only those can be called musts. */
export const wishesOf = ({ comfort = {} }: AnswersDocument): (typeof comfortWishes)[number][] =>
  comfortWishes.filter((wish) => {
    const said = comfort[wish];
    return said !== undefined && said !== false && said !== 'none' && said !== 'any' && said !== 'rarely';
  });

/** Every step of the guide, in the order it is asked. Words stand with the languages, by the same ids. */
export const questions = [
  {
    id: 'tasks', readBy: ['needs/working-ground'], asked: always,
    fields: [{ at: 'tasks', control: 'several', options: () => offeredTasks }],
  },
  {
    id: 'musts', readBy: ['needs/mowing', 'needs/lifting', 'needs/digging', 'needs/working-ground', 'needs/towing'],
    fields: [{ at: 'tasks.must', control: 'several', options: tasksOf }],
    asked: (answers: AnswersDocument) => (tasksOf(answers).length > 0 ? 'yes' : 'no'),
  },
  {
    id: 'lawn', readBy: ['needs/mowing', 'reasons/cautions'], asked: has('mow-lawn'),
    fields: [
      quantity('land.mown', 'area', 'acre', 'ha', 0.05, 200),
      { at: 'land.obstacles', control: 'choice', options: ['open', 'some', 'many'] },
      quantity('tasks.mow-lawn.hours', 'time', 'h', 'h', 0.1, 24),
      perYear('mow-lawn'),
    ],
  },
  {
    id: 'deck', readBy: ['needs/mowing'], asked: has('mow-lawn'),
    fields: [{ at: 'tasks.mow-lawn.deck', control: 'choice', options: ['belly', 'rear', 'either'] }],
  },
  {
    id: 'rough', readBy: ['needs/cutting'], asked: has('cut-rough'),
    fields: [
      { at: 'tasks.cut-rough.growth', control: 'choice', options: ['grass', 'brush'] },
      quantity('land.rough', 'area', 'acre', 'ha', 0.05, 2000),
    ],
  },
  {
    id: 'bales', readBy: ['needs/lifting', 'reasons/cautions'], asked: has('lift-bales'),
    fields: [
      quantity('tasks.lift-bales.weight', 'mass', 'lb', 'kg', 30, 4000),
      quantity('tasks.lift-bales.diameter', 'length', 'ft', 'cm', 2, 8),
      quantity('tasks.lift-bales.width', 'length', 'ft', 'cm', 2, 8),
      { at: 'tasks.lift-bales.hay', control: 'choice', options: ['dry', 'wrapped'] },
      quantity('tasks.lift-bales.height', 'length', 'ft', 'm', 0.5, 30),
      perYear('lift-bales'),
    ],
  },
  {
    id: 'loose', readBy: ['needs/lifting', 'reasons/cautions'], asked: has('move-loose'),
    fields: [
      { at: 'tasks.move-loose.material', control: 'choice', options: materials },
      quantity('tasks.move-loose.volume', 'volume', 'yd3', 'm3', 0.1, 5000),
      perYear('move-loose'),
    ],
  },
  {
    id: 'logs', readBy: ['needs/lifting', 'reasons/cautions'], asked: has('handle-logs'),
    fields: [
      quantity('tasks.handle-logs.weight', 'mass', 'lb', 'kg', 10, 20_000),
      { at: 'tasks.handle-logs.species', control: 'choice', options: species },
      quantity('tasks.handle-logs.diameter', 'length', 'in', 'cm', 2, 72),
      quantity('tasks.handle-logs.length', 'length', 'ft', 'm', 1, 60),
      quantity('tasks.handle-logs.height', 'length', 'ft', 'm', 0.5, 30),
      perYear('handle-logs'),
    ],
  },
  {
    id: 'pallets', readBy: ['needs/lifting', 'reasons/cautions'], asked: has('lift-pallets'),
    fields: [
      quantity('tasks.lift-pallets.weight', 'mass', 'lb', 'kg', 30, 6000),
      quantity('tasks.lift-pallets.height', 'length', 'ft', 'm', 0.5, 30),
      perYear('lift-pallets'),
    ],
  },
  {
    id: 'digging', readBy: ['needs/digging', 'reasons/cautions'], asked: has('dig'),
    fields: [quantity('tasks.dig.depth', 'length', 'ft', 'm', 0.5, 30), perYear('dig')],
  },
  {
    id: 'drive-snow', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('clear-snow'),
    fields: [
      quantity('tasks.clear-snow.length', 'length', 'ft', 'm', 5, 50_000),
      quantity('tasks.clear-snow.depth', 'length', 'in', 'cm', 1, 120),
      { at: 'tasks.clear-snow.how', control: 'choice', options: ['blade', 'blower', 'either'] },
      perYear('clear-snow'),
    ],
  },
  {
    id: 'drive-grading', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('grade-drive'),
    fields: [quantity('tasks.grade-drive.length', 'length', 'ft', 'm', 5, 50_000), perYear('grade-drive')],
  },
  {
    id: 'garden', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('till-garden'),
    fields: [quantity('tasks.till-garden.area', 'area', 'ft2', 'm2', 20, 5_000_000), perYear('till-garden')],
  },
  { id: 'holes', readBy: ['reasons/cautions'], asked: has('bore-holes'), fields: [perYear('bore-holes')] },
  {
    id: 'chipping', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('chip-brush'),
    fields: [quantity('tasks.chip-brush.diameter', 'length', 'in', 'cm', 0.5, 24), perYear('chip-brush')],
  },
  {
    id: 'wagon', readBy: ['needs/towing', 'reasons/cautions'], asked: has('tow-wagon'),
    fields: [
      quantity('tasks.tow-wagon.weight', 'mass', 'lb', 'kg', 50, 60_000),
      { at: 'tasks.tow-wagon.brakes', control: 'choice', options: ['none', 'inertia', 'hydraulic', 'air'] },
      perYear('tow-wagon'),
    ],
  },
  {
    id: 'spreading', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('spread-spray'),
    fields: [quantity('tasks.spread-spray.area', 'area', 'acre', 'ha', 0.05, 2000), perYear('spread-spray')],
  },
  {
    id: 'arena', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('drag-arena'),
    fields: [quantity('tasks.drag-arena.area', 'area', 'ft2', 'm2', 100, 5_000_000), perYear('drag-arena')],
  },
  {
    id: 'levelling', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('level-field'),
    fields: [
      quantity('tasks.level-field.area', 'area', 'acre', 'ha', 0.05, 2000),
      { at: 'land.soil', control: 'choice', options: ['clay', 'loam', 'sand'] },
      perYear('level-field'),
    ],
  },
  {
    id: 'hay', readBy: ['needs/working-ground', 'reasons/cautions'], asked: has('make-hay'),
    fields: [quantity('tasks.make-hay.area', 'area', 'acre', 'ha', 0.05, 2000), perYear('make-hay')],
  },
  {
    id: 'carrying', readBy: ['needs/carrying'], asked: has('carry-implement'),
    fields: [
      quantity('tasks.carry-implement.weight', 'mass', 'lb', 'kg', 20, 8000),
      quantity('tasks.carry-implement.distance', 'length', 'in', 'cm', 4, 160),
    ],
  },
  {
    id: 'slope', readBy: ['needs/slope'], asked: always,
    fields: [{
      ...quantity('land.slope', 'angle', 'deg', 'deg', 0, 60),
      control: 'choice-or-quantity', options: ['flat', 'rolling', 'steep'], opens: 'steep', amountWanted: false,
    }],
  },
  {
    id: 'ground', readBy: ['needs/ground', 'needs/working-ground', 'needs/towing', 'ranking/rank'],
    fields: [
      { at: 'land.ground', control: 'choice', options: ['firm', 'soft', 'wet'] },
      quantity('land.altitude', 'length', 'ft', 'm', 0, 15_000),
    ],
    asked: (answers: AnswersDocument) => (answers.tasks?.some(({ task }) => onGround.includes(task)) ? 'yes' : 'no'),
  },
  {
    id: 'overhead', readBy: ['needs/operator'], asked: always,
    fields: [{
      ...quantity('land.overhead', 'length', 'ft', 'm', 3, 40),
      control: 'choice-or-quantity', options: ['open', 'low'], opens: 'low', amountWanted: true,
    }],
  },
  {
    id: 'drivers', readBy: ['needs/operator', 'reasons/cautions'], asked: always,
    fields: [
      { at: 'drivers.least', control: 'choice', options: ['new', 'some', 'experienced'] },
      { at: 'drivers.under18', control: 'yes-no' },
      { at: 'drivers.limits', control: 'choice', options: ['none', 'legs', 'reach', 'both'] },
    ],
  },
  {
    id: 'storage', readBy: ['needs/place'], asked: always,
    fields: [{ at: 'storage.kind', control: 'choice', options: ['garage', 'shed', 'outdoors'] }],
  },
  {
    id: 'door', readBy: ['needs/place'],
    fields: [
      quantity('storage.doorWidth', 'length', 'ft', 'm', 2, 60),
      quantity('storage.doorHeight', 'length', 'ft', 'm', 3, 40),
      quantity('storage.depth', 'length', 'ft', 'm', 4, 200),
    ],
    asked: (answers: AnswersDocument, seen) => (indoors(answers) ? 'yes' : seen('storage') ? 'no' : 'maybe'),
  },
  {
    id: 'gate', readBy: ['needs/place'], asked: always,
    fields: [quantity('land.gate', 'length', 'ft', 'm', 2, 60)],
  },
  {
    id: 'budget', readBy: ['needs/budget', 'ranking/values'], asked: always,
    fields: [{ at: 'budget.limit', control: 'money', from: 500, to: 500_000, example: 18_000 }, { at: 'budget.firm', control: 'yes-no' }],
  },
  {
    id: 'more', readBy: ['answers/questions'],
    fields: [{ at: 'more', control: 'several', options: () => finerPoints }],
    asked: (_answers: AnswersDocument, seen) => (finerPoints.every((id) => seen(id)) ? 'no' : 'yes'),
  },
  {
    id: 'haul', readBy: ['needs/haul'], asked: ifWanted('haul'),
    fields: [{ at: 'haul.how', control: 'choice', options: ['never', 'own-trailer', 'hire'] }],
  },
  {
    id: 'trailer', readBy: ['needs/haul', 'reasons/cautions'],
    fields: [
      quantity('haul.trailer.gross', 'mass', 'lb', 'kg', 500, 40_000),
      quantity('haul.trailer.empty', 'mass', 'lb', 'kg', 100, 20_000),
      quantity('haul.towRating', 'mass', 'lb', 'kg', 500, 40_000),
      quantity('haul.tongueRating', 'mass', 'lb', 'kg', 50, 5000),
      { at: 'haul.trailer.brakes', control: 'choice', options: ['none', 'inertia', 'hydraulic', 'air'] },
      quantity('haul.trailer.deckWidth', 'length', 'in', 'cm', 30, 120),
      quantity('haul.trailer.deckLength', 'length', 'ft', 'm', 5, 60),
    ],
    asked: (answers: AnswersDocument, seen) => (ownTrailer(answers) ? 'yes' : mayCome('haul', answers, seen) ? 'maybe' : 'no'),
  },
  {
    id: 'paying', readBy: ['needs/budget'], asked: ifWanted('paying'),
    fields: [
      { at: 'budget.pay', control: 'choice', options: ['cash', 'loan'] },
      { at: 'budget.monthly', control: 'money', from: 10, to: 20_000, example: 350 },
      { at: 'budget.service', control: 'choice', options: ['self', 'dealer', 'pickup'] },
    ],
  },
  {
    id: 'use', readBy: ['ranking/values', 'ranking/yearly-hours'], asked: ifWanted('use'),
    fields: [
      { at: 'budget.hoursPerYear', control: 'number', from: 1, to: 3000 },
      { at: 'budget.keepYears', control: 'number', from: 1, to: 40 },
    ],
  },
  {
    id: 'cab', readBy: ['needs/comfort'], asked: ifWanted('cab'),
    fields: [{ at: 'comfort.cab', control: 'choice', options: ['none', 'heat', 'heat-and-air'] }],
  },
  {
    id: 'drive', readBy: ['needs/comfort'], asked: ifWanted('drive'),
    fields: [{ at: 'comfort.drive', control: 'choice', options: ['pedal', 'shuttle', 'any'] }],
  },
  {
    id: 'extras', readBy: ['needs/comfort'], asked: ifWanted('extras'),
    fields: [{ at: 'comfort.extras', control: 'several', options: () => Object.keys(extras) }],
  },
  {
    id: 'comfort-musts', readBy: ['needs/comfort'],
    fields: [{ at: 'comfort.must', control: 'several', options: wishesOf }],
    asked: (answers: AnswersDocument, seen) =>
      (wishesOf(answers).length > 0 ? 'yes' : comforts.some((id) => mayCome(id, answers, seen)) ? 'maybe' : 'no'),
  },
  {
    id: 'priorities', readBy: ['ranking/rank'], asked: always,
    fields: [{ at: 'priorities', control: 'order', options: criteria, places: 3 }],
  },
] as const satisfies readonly Question[];

export type QuestionId = (typeof questions)[number]['id'];

export const questionOf = (id: QuestionId): Question => questions.find((each) => each.id === id)!;
