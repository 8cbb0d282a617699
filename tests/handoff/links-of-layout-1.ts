import type { AnswersDocument } from '../../src/answers/schema.ts';

/** Fragments as layout 1 writes them, and what they say. They stay as they are, whatever the buyers of other tests come to say. */
export const madeByLayout1: readonly { name: string; fragment: string; answers: AnswersDocument }[] = [
  {
    name: 'horses', fragment: 'a1=AQ2bIXEdeWj8g6DFE5fOGELB6jK0Aq9UoGBXqmHUcQ',
    answers: {
      format: 'acre-to-axle/answers/1',
      tasks: [{ task: 'lift-bales', must: true, weight: { value: 600, unit: 'lb' }, hay: 'dry', height: { value: 5, unit: 'ft' }, perYear: 60 }, { task: 'drag-arena', must: false, area: { value: 20000, unit: 'ft2' }, perYear: 100 }, { task: 'move-loose', must: false, material: 'manure', perYear: 50 }],
      land: { slope: 'flat', ground: 'soft', overhead: 'open', gate: { value: 8, unit: 'ft' } },
      drivers: { least: 'new', under18: true, limits: 'none' },
      storage: { kind: 'shed', doorWidth: { value: 10, unit: 'ft' }, doorHeight: { value: 9, unit: 'ft' } },
      budget: { limit: { value: 30000, currency: 'USD' }, firm: false, pay: 'loan', monthly: { value: 500, currency: 'USD' }, hoursPerYear: 120, keepYears: 10 },
      more: ['haul', 'paying', 'use', 'drive', 'extras'],
      haul: { how: 'hire' },
      comfort: { drive: 'pedal', smoothSeat: false, tiltWheel: false, cruise: false, loaderOff: 'often', levelLift: false, mowerLiftAlone: false, exhaust: 'any', must: [] },
      priorities: ['headroom', 'price'],
    },
  },
  {
    name: 'hay', fragment: 'a1=AjgsG-NQ0T98EBuvLJJ_swjKZLv9Svr6ca6h',
    answers: {
      format: 'acre-to-axle/answers/1',
      tasks: [{ task: 'make-hay', must: true, area: { value: 4, unit: 'ha' }, perYear: 2 }, { task: 'tow-wagon', must: false, weight: { value: 1.5, unit: 't' }, brakes: 'inertia', perYear: 10 }],
      land: { slope: 'rolling', ground: 'firm', altitude: { value: 450, unit: 'm' }, overhead: 'open', gate: { value: 3.5, unit: 'm' } },
      drivers: { least: 'experienced', under18: false, limits: 'none' },
      storage: { kind: 'shed', doorWidth: { value: 3, unit: 'm' }, doorHeight: { value: 2.8, unit: 'm' } },
      budget: { limit: { value: 40000, currency: 'USD' }, firm: false, hoursPerYear: 150, keepYears: 12 },
      more: ['use', 'drive'],
      comfort: { drive: 'shuttle', must: [] },
      priorities: ['headroom', 'time'],
    },
  },
  {
    name: 'unsure', fragment: 'a1=AxAoDK2mSMF81drOTZfBgc0',
    answers: {
      format: 'acre-to-axle/answers/1',
      tasks: [{ task: 'mow-lawn', must: false }, { task: 'move-loose', must: false }, { task: 'bore-holes', must: false }],
      land: { mown: { value: 2, unit: 'acre' } },
      drivers: { least: 'new', under18: false },
      storage: { kind: 'outdoors' },
      budget: { limit: { value: 20000, currency: 'USD' } },
      unsure: ['deck', 'loose', 'holes', 'ground', 'overhead', 'gate', 'more', 'priorities'],
    },
  },
];

/** SHA-256 over the fragments of documents that between them say every word there is. */
export const everyWord = '4826657695be6609d527fb5b7bfe7d76b36e6bf0de057ba0b3916e3030da65fb';
