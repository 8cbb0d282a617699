import { taskOf, type Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

/** A lawn wants a deck of the kind the buyer said, and a mow within the hours he will give it. */
export function needsOfMowing(answers: Answers): Need[] {
  const task = taskOf(answers, 'mow-lawn');
  if (!task) return [];
  const must = task.must === true;
  const area = answers.land?.mown;
  return [
    {
      id: 'mow-lawn.deck', capability: 'mower', deck: task.deck ?? 'either', must, safety: false,
      task: 'mow-lawn', from: ['tasks.mow-lawn.deck'], working: [],
    },
    ...(area === undefined ? [] : [{
      id: 'mow-lawn.hours', capability: 'mower.hours', area, obstacles: answers.land?.obstacles ?? 'some',
      ...(task.hours !== undefined && { atMost: task.hours }), must: must && task.hours !== undefined, safety: false,
      task: 'mow-lawn', from: ['land.mown', 'tasks.mow-lawn.hours', 'land.obstacles'], working: [],
    } as const]),
  ];
}
