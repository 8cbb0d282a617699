import { inSi, type InSi } from '../units/quantity.ts';
import type { AnswersDocument, TaskDocument, TaskId } from './schema.ts';

/** The answers as the core wants them: every amount a quantity in SI. */
export type Answers = InSi<AnswersDocument>;
export const answersOf = (document: AnswersDocument): Answers => inSi(document);
export type Task = InSi<TaskDocument>;
export type TaskOf<T extends TaskId> = Extract<Task, { task: T }>;

/** The buyer's task of that name, or undefined where he has none. */
export const taskOf = <T extends TaskId>(answers: Answers, task: T) =>
  answers.tasks?.find((each): each is TaskOf<T> => each.task === task);
