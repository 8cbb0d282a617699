import type { Answers } from '../answers/answers.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Need } from '../needs/need.ts';
import { rank, type Ranking } from '../ranking/rank.ts';
import type { Relaxed } from '../ranking/relax.ts';
import { backOf, brings, hangsOnTasks, mayReturn, relaxations, type Back } from '../ranking/ways-out.ts';
import { toMillionth } from '../units/compare.ts';
import { becauseOf } from './because.ts';
import type { RelaxedEntry, Shortlist } from './schema.ts';

type Change = Shortlist['changes'][number];

// What the buyer said comes to other last digits in other units: they are cut.
export const relaxedEntry = ({ is, value, to, unit }: Relaxed): RelaxedEntry => ({ is, from: toMillionth(value), to, unit });

/** What comes back, and what is saved where that costs less than the first that stands. */
function backEntry({ stands, asks, low }: Back, { standing: [first] }: Ranking): Pick<Change, 'stands' | 'asks' | 'saves'> {
  const price = first?.best.price?.low;
  const saves = stands.length > 0 && low !== undefined && price !== undefined && low < price ? price - low : undefined;
  return { stands: [...stands], asks: [...asks], ...(saves !== undefined && { saves }) };
}

/** A need dropped, its bound relaxed, or a whole task with all that it asks, and which of the machines ruled out come back. */
export function changesOf(ranking: Ranking, catalogue: Catalogue, answers: Answers): Change[] {
  if (ranking.ruledOut.length === 0) return [];
  const failing = new Set(ranking.ruledOut.flatMap(({ inGeneral }) => becauseOf(inGeneral.judged, 'failed').map(({ need }) => need)));
  // Verdicts don't depend on who competes, so only those are judged again that might come back.
  const others = (dropped: readonly Need[]): Catalogue => ({ ...catalogue, machines: mayReturn(ranking, dropped) });
  // A safety gate is never dropped by itself; it goes only with the task that raises it.
  const needs = ranking.needs.filter(({ id, safety }) => failing.has(id) && !safety).map((need) => ({
    need: need.id, of: need.task, back: backOf(rank(others([need]), answers, ({ id }) => id !== need.id, ranking.world)),
  }));
  const tasks = (answers.tasks ?? []).map(({ task }) => ({
    task,
    back: backOf(rank(
      others(ranking.needs.filter((need) => need.task === task || hangsOnTasks(need))),
      { ...answers, tasks: answers.tasks!.filter((each) => each.task !== task) }, undefined, ranking.world,
    )),
  }));
  const same = (a: Back, b: Back) => a.stands.join() === b.stands.join() && a.asks.join() === b.asks.join();
  return [
    ...relaxations(ranking, catalogue, answers).map(({ relaxed, ...back }) => ({ need: relaxed.need, relaxed: relaxedEntry(relaxed), ...backEntry(back, ranking) })),
    ...needs.filter(({ back }) => brings(back)).map(({ need, back }) => ({ need, ...backEntry(back, ranking) })),
    ...tasks.filter(({ task, back }) => brings(back) && !needs.some((each) => each.of === task && same(each.back, back)))
      .map(({ task, back }) => ({ task, ...backEntry(back, ranking) })),
  ];
}
