import { taskOf, type Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Need } from './need.ts';

/** An implement on the hitch wants lift at its own distance, and a front axle that still steers. */
export function needsOfCarrying(answers: Answers, book: RuleBook): Need[] {
  const task = taskOf(answers, 'carry-implement');
  if (task?.weight === undefined) return [];
  const carried = {
    load: task.weight,
    behind: task.distance ?? (book.value('hitch.rated-behind') as Quantity<'length'>),
    task: 'carry-implement', from: ['tasks.carry-implement.weight', 'tasks.carry-implement.distance'], working: [],
  } as const;
  return [
    { ...carried, id: 'carry-implement.lift', capability: 'hitch.lift', must: task.must === true, safety: false, rule: 'hitch.rated-behind' },
    { ...carried, id: 'carry-implement.front-axle', capability: 'hitch.front-axle', must: task.must === true, safety: true, rule: 'hitch.front-share' },
  ];
}
