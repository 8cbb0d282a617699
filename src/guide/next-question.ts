import { answerAt } from '../answers/at.ts';
import { questions, type Asked, type Question, type QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Skip } from './skip.ts';

/** Where a visit stands: what was said, which questions were passed, and which were proven to need no asking. */
export interface Visit {
  answers: AnswersDocument;
  seen: readonly QuestionId[];
  skipped?: readonly Skip[];
}

const askedOf = (question: Question, { answers, seen }: Visit): Asked =>
  question.asked(answers, (id) => (seen as readonly string[]).includes(id));

/** The questions that will be asked, or may be, in order; the skipped among them. */
export const pathOf = (visit: Visit): QuestionId[] =>
  questions.filter((question) => askedOf(question, visit) !== 'no').map(({ id }) => id);

/** What needs no asking and wasn't asked all the same. */
export const skippedOf = ({ seen, skipped = [] }: Visit): Skip[] => skipped.filter(({ question }) => !seen.includes(question));

const isSkipped = (visit: Visit, id: QuestionId) => skippedOf(visit).some(({ question }) => question === id);

/** The questions still open for certain, in order. */
export const openQuestions = (visit: Visit): QuestionId[] =>
  questions.filter((question) => !visit.seen.includes(question.id) && !isSkipped(visit, question.id) && askedOf(question, visit) === 'yes').map(({ id }) => id);

/** The questions that may still be answered, those skipped among them: whoever wants to may be asked any. */
export const unansweredOf = (visit: Visit): QuestionId[] => pathOf(visit).filter((id) => !visit.seen.includes(id));

/** What to ask next; undefined where enough is known. */
export const nextQuestion = (visit: Visit) => openQuestions(visit)[0];

/** The question passed before another, or the last one where none is named. */
export function questionBefore(visit: Visit, at: QuestionId | undefined): QuestionId | undefined {
  const passed = pathOf(visit).filter((id) => visit.seen.includes(id) || id === at);
  return at === undefined ? passed.at(-1) : passed[passed.indexOf(at) - 1];
}

/** A visit rebuilt from an answers document alone: a question is passed if it was answered or left unsure. */
export function visitOf(answers: AnswersDocument): Visit {
  const seen = questions.filter(({ id, fields }) =>
    answers.unsure?.includes(id) || fields.some(({ at }) => answerAt(answers, at) !== undefined)).map(({ id }) => id);
  return { answers, seen };
}

/** "Step 4 of at most 9": the total appears once the tasks are known, and never rises going forward. */
export function progressOf(visit: Visit, at: QuestionId): { now: number; atMost: number | undefined } {
  const path = pathOf(visit).filter((id) => id === at || !isSkipped(visit, id));
  return { now: path.indexOf(at) + 1, atMost: visit.seen.includes('tasks') ? path.length : undefined };
}
