import type { Answers } from '../answers/answers.ts';
import type { TaskId } from '../answers/schema.ts';
import type { RuleBook } from '../trade/book.ts';
import { slopeFromPercent } from '../trade/formulas/slope-from-percent.ts';
import { atMost } from '../units/compare.ts';
import type { Quantity } from '../units/quantity.ts';
import { liftsOf, loaderTasks } from './lifting.ts';
import type { Need, NotCleared } from './need.ts';

const mowingTasks: readonly TaskId[] = ['mow-lawn', 'cut-rough'];
const towingTasks: readonly TaskId[] = ['tow-wagon'];
const from = ['land.slope'];

/** The steepest ground [rad]; undefined where unsaid, `unbounded` where "steep" was said without a figure. */
export function steepest(answers: Answers, book: RuleBook): Quantity<'angle'> | 'unbounded' | undefined {
  const said = answers.land?.slope;
  if (said === undefined) return undefined;
  if (said === 'steep') return 'unbounded';
  if (said === 'flat' || said === 'rolling') return book.value(`slope.${said}`) as Quantity<'angle'>;
  return typeof said === 'number' ? said : slopeFromPercent(said.value);
}

const asked = (answers: Answers, tasks: readonly TaskId[]) =>
  tasks.filter((task) => answers.tasks?.some((each) => each.task === task));

/**
 * On sloping ground machines are compared by the angle at which they would tip in the worst loading of
 * the buyer's tasks. It is a comparison, never a permission.
 */
export function needsOfSlope(answers: Answers, book: RuleBook): Need[] {
  const slope = steepest(answers, book);
  if (slope === undefined || (slope !== 'unbounded' && atMost(slope, book.value('slope.flat')))) return [];
  const gate = { must: true, safety: true, from, working: [] } as const;
  const withLoader = asked(answers, loaderTasks).length > 0;
  return [
    ...(withLoader ? [{ ...gate, id: 'slope.driven-wheels', capability: 'slope.driven-wheels', rule: 'slope.limit' } as const] : []),
    ...(slope === 'unbounded' ? [] : [{
      ...gate, id: 'slope.tip-angle', capability: 'slope.tip-angle', rule: 'slope.margin', slope,
      carried: book.value('slope.carried-load') as Quantity<'length'>, lifts: liftsOf(answers, book),
    } as const]),
  ];
}

/** Which tasks don't count as cleared because of the slope, said or unsaid. */
export function notClearedBySlope(answers: Answers, book: RuleBook): NotCleared[] {
  const slope = steepest(answers, book);
  const tasks = asked(answers, [...mowingTasks, ...loaderTasks, ...towingTasks]);
  const all = answers.tasks?.map(({ task }) => task) ?? [];
  if (slope === undefined) return [{ id: 'slope.unsaid', tasks: all, from }];
  if (slope === 'unbounded') return [{ id: 'slope.steep-unsaid', tasks: all, from, rule: 'slope.limit' }];
  if (tasks.length === 0 || atMost(slope, book.value('slope.limit'))) return [];
  return [{ id: 'slope.over-limit', tasks, from, rule: 'slope.limit' }];
}
