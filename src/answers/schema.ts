/**
 * The answers: what the buyer said. The single definition of `acre-to-axle/answers/1`. Every field is
 * optional: absent means "not sure" and constrains nothing (safety apart).
 */
import { implement } from '../catalogue/schema.ts';
import { amount, money } from '../documents/parts.ts';
import * as z from '../zod.ts';
import { answersFormat, comfortWishes, criteria, finerPoints } from './names.ts';

export { answersFormat, comfortWishes, criteria, type Criterion } from './names.ts';

const optional = z.optional;
const count = z.number().check(z.minimum(0));
const often = { must: optional(z.boolean()), perYear: optional(count) };
const area = optional(amount('area'));
const tow = optional(z.enum(['none', 'inertia', 'hydraulic', 'air']));

/** A slope is said in words, as an angle, or in percent (rise over run). */
export const slope = z.union([
  z.enum(['flat', 'rolling', 'steep']),
  amount('angle'),
  z.strictObject({ value: z.number().check(z.minimum(0)), unit: z.literal('percent') }),
]);

export const taskSchemas = {
  'mow-lawn': z.strictObject({
    task: z.literal('mow-lawn'), ...often,
    deck: optional(z.enum(['belly', 'rear', 'either'])),
    hours: optional(amount('time')),
  }),
  'cut-rough': z.strictObject({ task: z.literal('cut-rough'), ...often, growth: optional(z.enum(['grass', 'brush'])) }),
  'lift-bales': z.strictObject({
    task: z.literal('lift-bales'), ...often, weight: optional(amount('mass')), height: optional(amount('length')),
    diameter: optional(amount('length')), width: optional(amount('length')), hay: optional(z.enum(['dry', 'wrapped'])),
  }),
  'lift-pallets': z.strictObject({
    task: z.literal('lift-pallets'), ...often, weight: optional(amount('mass')), height: optional(amount('length')),
  }),
  'move-loose': z.strictObject({
    task: z.literal('move-loose'), ...often, material: optional(z.string()), volume: optional(amount('volume')),
  }),
  dig: z.strictObject({ task: z.literal('dig'), ...often, depth: optional(amount('length')) }),
  'till-garden': z.strictObject({ task: z.literal('till-garden'), ...often, area }),
  'grade-drive': z.strictObject({ task: z.literal('grade-drive'), ...often, length: optional(amount('length')) }),
  'clear-snow': z.strictObject({
    task: z.literal('clear-snow'), ...often, length: optional(amount('length')), depth: optional(amount('length')),
    how: optional(z.enum(['blade', 'blower', 'either'])),
  }),
  'handle-logs': z.strictObject({
    task: z.literal('handle-logs'), ...often,
    weight: optional(amount('mass')), species: optional(z.string()),
    diameter: optional(amount('length')), length: optional(amount('length')), height: optional(amount('length')),
  }),
  'bore-holes': z.strictObject({ task: z.literal('bore-holes'), ...often }),
  'chip-brush': z.strictObject({ task: z.literal('chip-brush'), ...often, diameter: optional(amount('length')) }),
  'carry-implement': z.strictObject({
    task: z.literal('carry-implement'), ...often, weight: optional(amount('mass')), distance: optional(amount('length')),
  }),
  'tow-wagon': z.strictObject({ task: z.literal('tow-wagon'), ...often, weight: optional(amount('mass')), brakes: tow }),
  'spread-spray': z.strictObject({ task: z.literal('spread-spray'), ...often, area }),
  'make-hay': z.strictObject({ task: z.literal('make-hay'), ...often, area }),
  'drag-arena': z.strictObject({ task: z.literal('drag-arena'), ...often, area }),
  'level-field': z.strictObject({ task: z.literal('level-field'), ...often, area }),
} as const;

export type TaskId = keyof typeof taskSchemas;
export const taskIds = Object.keys(taskSchemas) as TaskId[];

const [first, ...rest] = Object.values(taskSchemas);
export const task = z.discriminatedUnion('task', [first!, ...rest]);

export const answers = z.strictObject({
  format: z.literal(answersFormat),
  land: optional(z.strictObject({
    area: optional(amount('area')),
    mown: optional(amount('area')),
    rough: optional(amount('area')),
    slope: optional(slope),
    ground: optional(z.enum(['firm', 'soft', 'wet'])),
    soil: optional(z.enum(['clay', 'loam', 'sand'])),
    gate: optional(amount('length')),
    obstacles: optional(z.enum(['open', 'some', 'many'])),
    altitude: optional(amount('length')),
    overhead: optional(z.union([z.literal('open'), amount('length')])),
  })),
  tasks: optional(z.array(task)),
  owned: optional(z.array(z.partial(implement))),
  drivers: optional(z.strictObject({
    count: optional(z.int().check(z.minimum(1))),
    least: optional(z.enum(['new', 'some', 'experienced'])),
    limits: optional(z.enum(['none', 'legs', 'reach', 'both'])),
    under18: optional(z.boolean()),
  })),
  storage: optional(z.strictObject({
    kind: optional(z.enum(['shed', 'garage', 'outdoors'])),
    doorWidth: optional(amount('length')),
    doorHeight: optional(amount('length')),
    depth: optional(amount('length')),
  })),
  haul: optional(z.strictObject({
    how: optional(z.enum(['never', 'own-trailer', 'hire'])),
    trailer: optional(z.strictObject({
      gross: optional(amount('mass')),
      empty: optional(amount('mass')),
      deckLength: optional(amount('length')),
      deckWidth: optional(amount('length')),
      brakes: tow,
    })),
    towRating: optional(amount('mass')),
    tongueRating: optional(amount('mass')),
    delivery: optional(z.union([amount('length'), z.string()])),
  })),
  budget: optional(z.strictObject({
    limit: optional(money),
    firm: optional(z.boolean()),
    pay: optional(z.enum(['cash', 'loan'])),
    monthly: optional(money),
    includes: optional(z.array(z.enum(['implements', 'delivery', 'tax']))),
    tradeIn: optional(z.strictObject({ kind: z.string(), owed: optional(money) })),
    hoursPerYear: optional(count),
    keepYears: optional(count),
    service: optional(z.enum(['self', 'dealer', 'pickup'])),
  })),
  comfort: optional(z.strictObject({
    cab: optional(z.enum(['heat-and-air', 'heat', 'none'])),
    drive: optional(z.enum(['pedal', 'shuttle', 'any'])),
    smoothSeat: optional(z.boolean()),
    tiltWheel: optional(z.boolean()),
    cruise: optional(z.boolean()),
    loaderOff: optional(z.enum(['often', 'rarely'])),
    levelLift: optional(z.boolean()),
    mowerLiftAlone: optional(z.boolean()),
    exhaust: optional(z.enum(['no-filter', 'any'])),
    must: optional(z.array(z.enum(comfortWishes))),
  })),
  /** Finer points the buyer wants looked at. */
  more: optional(z.array(z.enum(finerPoints))),
  priorities: optional(z.array(z.enum(criteria))),
  unsure: optional(z.array(z.string())),
});

export type AnswersDocument = z.infer<typeof answers>;
export type TaskDocument = z.infer<typeof task>;
