import { answerAt } from '../answers/at.ts';
import { questionOf, type Field, type Question, type QuestionId } from '../answers/questions.ts';
import type { Value } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { AskingVoice } from '../reasons/asking-voice.ts';
import { sayValue } from './say-value.ts';

function sayAnswerOf(field: Field, value: unknown, question: Question, { words, reader }: AskingVoice): string {
  const own = words.questions[question.id as QuestionId].fields[field.at]?.options ?? {};
  const wishes: Readonly<Record<string, string>> = words.wishes;
  const tasks: Readonly<Record<string, string>> = words.questions.tasks.fields.tasks?.options ?? {};
  const criteria: Readonly<Record<string, string>> = words.criteria;
  const option = (each: string) => own[each] ?? tasks[each] ?? wishes[each] ?? criteria[each] ?? each;
  if (Array.isArray(value)) return value.length > 0 ? value.map((each) => option(String(each))).join(', ') : words.wizard.nothingChosen;
  if (typeof value === 'boolean') return words.wizard[value ? 'yes' : 'no'];
  return typeof value === 'object' || typeof value === 'number' ? sayValue(value as Value, reader) : option(String(value));
}

/** What the buyer answered to a question, in words; undefined where he said nothing. */
export function sayAnswer(id: QuestionId, answers: AnswersDocument, voice: AskingVoice): string | undefined {
  const question = questionOf(id);
  const said = question.fields.flatMap((field) => {
    const value = answerAt(answers, field.at);
    if (value === undefined) return [];
    const text = sayAnswerOf(field, value, question, voice);
    const label = voice.words.questions[id].fields[field.at]?.label;
    return [question.fields.length > 1 && label ? `${label}${label.endsWith('?') ? '' : ':'} ${text}` : text];
  });
  return said.length > 0 ? said.join('; ') : undefined;
}
