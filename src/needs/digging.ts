import { taskOf, type Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

/** Digging wants a backhoe on its approved subframe, and the depth. */
export function needsOfDigging(answers: Answers): Need[] {
  const task = taskOf(answers, 'dig');
  if (!task) return [];
  return [{
    id: 'dig.backhoe', capability: 'backhoe', ...(task.depth !== undefined && { atLeast: task.depth }),
    must: task.must === true, safety: false, task: 'dig', from: ['tasks.dig.depth'], working: [],
  }];
}
