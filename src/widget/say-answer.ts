import { answerAt } from '../answers/at.ts';
import { questionOf, type Field, type Question, type QuestionId } from '../answers/questions.ts';
import type { Value } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { AskingVoice } from '../reasons/asking-voice.ts';
import type { Voice } from '../reasons/say.ts';
import { sayValue } from './say-value.ts';

/** What an option is called: by the words of its question, else as a job, a wish or a criterion. */
export function sayOption(option: string, field: Pick<Field, 'at'>, question: Pick<Question, 'id'>, { words }: Pick<AskingVoice, 'words'>): string {
  const own = words.questions[question.id as QuestionId].fields[field.at]?.options ?? {};
  const wishes: Readonly<Record<string, string>> = words.wishes;
  const tasks: Readonly<Record<string, string>> = words.questions.tasks.fields.tasks?.options ?? {};
  const criteria: Readonly<Record<string, string>> = words.criteria;
  return own[option] ?? tasks[option] ?? wishes[option] ?? criteria[option] ?? option;
}

function sayAnswerOf(field: Field, value: unknown, question: Question, voice: AskingVoice): string {
  const { words, reader } = voice;
  const option = (each: string) => sayOption(each, field, question, voice);
  if (Array.isArray(value)) return value.length > 0 ? value.map((each) => option(String(each))).join(', ') : words.wizard.nothingChosen;
  if (typeof value === 'boolean') return words.wizard[value ? 'yes' : 'no'];
  return typeof value === 'object' || typeof value === 'number' ? sayValue(value as Value, reader) : option(String(value));
}

/** One thing that was said in answer to a question: what it is, where more than one is asked, and what was said of it. */
export interface Said {
  label: string | undefined;
  text: string;
}

/** What the buyer answered to a question, field by field; nothing where he said nothing. */
export const saidOf = (id: QuestionId, answers: AnswersDocument, voice: AskingVoice): Said[] => {
  const question = questionOf(id);
  return question.fields.flatMap((field) => {
    const value = answerAt(answers, field.at);
    if (value === undefined) return [];
    const label = question.fields.length > 1 ? voice.words.questions[id].fields[field.at]?.label : undefined;
    return [{ label, text: sayAnswerOf(field, value, question, voice) }];
  });
};

/** A label as it stands before what was said: one that asks needs no colon. */
export const beforeSaid = (label: string, { words }: Voice) => (label.endsWith('?') ? `${label} ` : `${label}${words.joins.colon}`);

/** The same in one line; undefined where he said nothing. */
export function sayAnswer(id: QuestionId, answers: AnswersDocument, voice: Voice): string | undefined {
  const said = saidOf(id, answers, voice).map(({ label, text }) => `${label ? beforeSaid(label, voice) : ''}${text}`);
  return said.length > 0 ? said.join(voice.words.joins.semicolon) : undefined;
}
