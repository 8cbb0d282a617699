import { taskOf, type Answers } from '../answers/answers.ts';
import type { TaskId } from '../answers/schema.ts';
import type { RuleBook } from '../trade/book.ts';
import { liftsOf } from './lifting.ts';
import type { Need } from './need.ts';

/** Tasks that put weight on the machine, in front or behind. */
const loading: readonly TaskId[] = [
  'mow-lawn', 'cut-rough', 'lift-bales', 'lift-pallets', 'move-loose', 'handle-logs', 'dig', 'till-garden', 'grade-drive', 'clear-snow',
  'bore-holes', 'chip-brush', 'carry-implement', 'spread-spray', 'make-hay', 'drag-arena', 'level-field',
];

/** With its heaviest load, what holds it and its ballast a machine weighs no more than it may. */
export const needsOfGrossMass = (answers: Answers, book: RuleBook): Need[] =>
  (answers.tasks?.some(({ task }) => loading.includes(task)) ? [{
    id: 'work.gross-mass', capability: 'gross-mass', must: true, safety: true, from: ['tasks'], working: [],
    lifts: liftsOf(answers, book), carried: taskOf(answers, 'carry-implement')?.weight,
  }] : []);
