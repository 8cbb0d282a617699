import { answerAt, withAnswers } from '../answers/at.ts';
import { questionOf, type QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Visit } from './next-question.ts';
import type { Skip } from './skip.ts';

export type Values = Readonly<Record<string, unknown>>;

const passed = ({ seen }: Visit, at: QuestionId) => (seen.includes(at) ? seen : [...seen, at]);

/** The unsure list with a question put in or taken out; no list where it would be empty. */
function withUnsure(answers: AnswersDocument, id: QuestionId, unsure: boolean): AnswersDocument {
  const others = (answers.unsure ?? []).filter((each) => each !== id);
  const all = unsure ? [...others, id] : others;
  const { unsure: _unsure, ...rest } = answers;
  return all.length > 0 ? { ...rest, unsure: all } : rest;
}

const nothing = (at: QuestionId): Values => Object.fromEntries(questionOf(at).fields.map((field) => [field.at, undefined]));

/** Whether an answer only adds to what was said: then what was proven over all that might be said still holds. */
const onlyAdds = ({ answers, seen }: Visit, at: QuestionId, after: AnswersDocument) =>
  (!seen.includes(at) && questionOf(at).fields.every((field) => answerAt(answers, field.at) === undefined))
  || JSON.stringify(answers) === JSON.stringify(after);

/** The visit after a question is answered by some values, or left unsure where there are none. */
export function answered(visit: Visit, at: QuestionId, values: Values | undefined): Visit {
  const given = withAnswers(visit.answers, values ?? nothing(at));
  const answers = withUnsure(given, at, values === undefined);
  return { answers, seen: passed(visit, at), skipped: onlyAdds(visit, at, answers) ? (visit.skipped ?? []) : [] };
}

/** A visit with more questions proven to need no asking; what was proven first stays told. */
export function withSkips(visit: Visit, skips: readonly Skip[]): Visit {
  const known = visit.skipped ?? [];
  return { ...visit, skipped: [...known, ...skips.filter(({ question }) => !known.some((other) => other.question === question))] };
}
