import type { Answers } from '../answers/answers.ts';
import { reckonedTasks } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import type { FigureId, RuleBook } from '../trade/book.ts';

export interface Caution {
  id: CautionId;
  /** A task the caution speaks of. */
  about?: string;
  figures?: Record<string, { value: number; unit: string }>;
}

/** Said with every result, whatever was asked. */
const always = [
  'manual', 'rops-and-belt', 'no-riders', 'bystanders', 'pto', 'engine-indoors', 'local-rules',
] as const;

const situations = [
  'slope', 'loader', 'bales', 'rear-ballast', 'backhoe', 'hitch', 'overhead', 'rops-folded', 'haul',
  'young-driver', 'new-driver', 'thrown-objects', 'task-not-reckoned', 'task-unknown',
] as const;

export const cautionIds = [...always, ...situations];
export type CautionId = (typeof cautionIds)[number];

/** The usual cautions for what the buyer wants to do, and the tasks that weren't reckoned. */
export function cautionsOf(answers: Answers, needs: readonly Need[], unknownTasks: readonly string[], book: RuleBook): Caution[] {
  const asks = (...prefixes: string[]) => needs.some(({ capability }) => prefixes.some((prefix) => capability.startsWith(prefix)));
  const { drivers, land, tasks = [] } = answers;
  const share = (id: FigureId) => ({ value: book.value(id), unit: 'ratio' });
  const when = (condition: boolean, id: CautionId): Caution[] => (condition ? [{ id }] : []);
  return [
    ...always.map((id) => ({ id })),
    ...when(land?.slope !== 'flat', 'slope'),
    ...when(asks('loader.'), 'loader'),
    ...when(asks('loader.rear-axle'), 'rear-ballast'),
    ...when(tasks.some(({ task }) => task === 'lift-bales'), 'bales'),
    ...when(asks('backhoe'), 'backhoe'),
    ...when(asks('hitch.'), 'hitch'),
    ...when(land?.overhead !== 'open', 'overhead'),
    ...when(asks('height.stored'), 'rops-folded'),
    ...(asks('trailer.') ? [{ id: 'haul', figures: { tieDowns: share('haul.tie-down-share'), tongueLeast: share('haul.tongue.least'), tongueMost: share('haul.tongue.most') } } as const] : []),
    ...when(asks('mower', 'rotary-cutter'), 'thrown-objects'),
    ...when(drivers?.under18 === true, 'young-driver'),
    ...when(drivers?.least === 'new', 'new-driver'),
    ...tasks.flatMap(({ task }): Caution[] => (reckonedTasks.includes(task) ? [] : [{ id: 'task-not-reckoned', about: task }])),
    ...unknownTasks.map((task): Caution => ({ id: 'task-unknown', about: task })),
  ];
}
