import type { Answers } from '../answers/answers.ts';
import type { TaskId } from '../answers/schema.ts';
import type { Need } from '../needs/need.ts';
import type { FigureId, RuleBook } from '../trade/book.ts';
import { turnForce } from '../trade/formulas/turn-force.ts';
import { atMost } from '../units/compare.ts';

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
  'young-driver', 'new-driver', 'thrown-objects', 'tow', 'entanglement', 'logs', 'spraying', 'ground-wet', 'trailer-brakes',
  'trade-in', 'rare-task', 'task-unknown',
] as const;

export const cautionIds = [...always, ...situations];
export type CautionId = (typeof cautionIds)[number];

/** The usual cautions for what the buyer wants to do, and the tasks that weren't reckoned. */
export function cautionsOf(answers: Answers, needs: readonly Need[], unknownTasks: readonly string[], book: RuleBook): Caution[] {
  const asks = (...prefixes: string[]) => needs.some(({ capability }) => prefixes.some((prefix) => capability.startsWith(prefix)));
  const { drivers, land, haul, budget, tasks = [] } = answers;
  const does = (...names: TaskId[]) => tasks.some(({ task }) => names.includes(task));
  const share = (id: FigureId) => ({ value: book.value(id), unit: 'ratio' });
  const when = (condition: boolean, id: CautionId): Caution[] => (condition ? [{ id }] : []);
  return [
    ...always.map((id) => ({ id })),
    ...(land?.slope === 'flat' ? [] : [{ id: 'slope', figures: { force: { value: turnForce(2).result.value, unit: 'times' } } } as const]),
    ...when(asks('loader.'), 'loader'),
    ...when(asks('loader.rear-axle'), 'rear-ballast'),
    ...when(does('lift-bales'), 'bales'),
    ...when(asks('backhoe'), 'backhoe'),
    ...when(asks('hitch.', 'implement.axles'), 'hitch'),
    ...when(land?.overhead !== 'open', 'overhead'),
    ...when(asks('height.stored'), 'rops-folded'),
    ...(asks('trailer.') ? [{ id: 'haul', figures: { tieDowns: share('haul.tie-down-share'), tongueLeast: share('haul.tongue.least'), tongueMost: share('haul.tongue.most') } } as const] : []),
    ...when(asks('mower', 'rotary-cutter'), 'thrown-objects'),
    ...when(drivers?.under18 === true, 'young-driver'),
    ...when(drivers?.least === 'new', 'new-driver'),
    ...when(does('tow-wagon', 'make-hay'), 'tow'),
    ...when(does('till-garden', 'bore-holes', 'chip-brush', 'make-hay', 'clear-snow'), 'entanglement'),
    ...when(does('handle-logs'), 'logs'),
    ...when(does('spread-spray'), 'spraying'),
    ...when(land?.ground === 'wet', 'ground-wet'),
    ...(haul?.how === 'own-trailer' && haul.trailer?.brakes === 'none'
      ? [{ id: 'trailer-brakes', figures: { above: { value: book.value('haul.brakes-above'), unit: 'kg' } } } as const] : []),
    ...when(budget?.tradeIn !== undefined, 'trade-in'),
    ...tasks.flatMap(({ task, perYear }): Caution[] => (perYear === undefined || !atMost(perYear, book.value('hire.rare-per-year'))
      ? [] : [{ id: 'rare-task', about: task, figures: { times: { value: perYear, unit: 'times' } } }])),
    ...unknownTasks.map((task): Caution => ({ id: 'task-unknown', about: task })),
  ];
}
