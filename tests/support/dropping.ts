import { withAnswer } from '../../src/answers/at.ts';
import type { AnswersDocument, TaskDocument } from '../../src/answers/schema.ts';

/** Which answer a need of place, haul or budget comes down to, and what it becomes without that need. */
const said: Record<string, readonly [at: string, value?: unknown]> = {
  'operator.overhead': ['land.overhead', 'open'],
  'slope.tip-angle': ['land.slope', 'flat'],
  'slope.driven-wheels': ['land.slope', 'flat'],
  'land.gate': ['land.gate'],
  'storage.door-width': ['storage.doorWidth'],
  'storage.door-height': ['storage.doorHeight'],
  'storage.depth': ['storage.depth'],
  'haul.payload': ['haul.trailer.gross'],
  'haul.tow-rating': ['haul.towRating'],
  'haul.deck-width': ['haul.trailer.deckWidth'],
  'haul.deck-length': ['haul.trailer.deckLength'],
  'budget.limit': ['budget.firm', false],
};

/** The answers without a task. */
export const withoutTask = (answers: AnswersDocument, task: TaskDocument['task']): AnswersDocument =>
  ({ ...answers, tasks: (answers.tasks ?? []).filter((each) => each.task !== task) });

const safetyOfTask = /\.(rear-axle|front-axle)$/;

/**
 * The answers of a buyer who drops one need: a must becomes a wish, a measure is taken back, and what is
 * safety of a task goes with the task. Undefined where it isn't the buyer's to drop.
 */
export function dropping(answers: AnswersDocument, need: string): AnswersDocument | undefined {
  const [theme, what] = need.split('.') as [TaskDocument['task'], string];
  if (said[need]) return withAnswer(answers, said[need][0], said[need][1]);
  if (need.startsWith('comfort.')) return withAnswer(answers, 'comfort.must', answers.comfort?.must?.filter((wish) => wish !== what));
  if (safetyOfTask.test(need)) return withoutTask(answers, theme);
  if (answers.tasks?.some(({ task }) => task === theme)) return withAnswer(answers, 'tasks.must', answers.tasks.flatMap(({ task, must }) => (must && task !== theme ? [task] : [])));
  return undefined;
}
