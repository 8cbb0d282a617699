import { withAnswer } from '../../../answers/at.ts';
import { noAnswers } from '../../../answers/names.ts';
import { questions, type Field, type Question } from '../../../answers/questions.ts';
import type { AnswersDocument } from '../../../answers/schema.ts';

/** An option that brings a question. */
export interface Brings {
  question: Question;
  field: Field;
  option: string;
}

type Optioned = { option: string; value: unknown };

/** The options of a field with what each puts in the answers. */
function optionsOf(field: Field, answers: AnswersDocument): Optioned[] {
  if (field.control === 'yes-no') return [{ option: 'yes', value: true }, { option: 'no', value: false }];
  if (field.control === 'several') return field.options(answers).map((option) => ({ option, value: [option] }));
  return field.control === 'choice' ? field.options.map((option) => ({ option, value: option })) : [];
}

/**
 * The options of earlier questions of which each alone brings a question; none where it is always asked. Found by trying, so that
 * no list has to be kept in step with the questions.
 */
export function bringing(question: Question): Brings[] {
  const others = (id: string) => id !== question.id;
  const before = (questions as readonly Question[]).slice(0, questions.findIndex(({ id }) => id === question.id));
  if (question.asked(noAnswers, others) === 'yes') return [];
  return before.flatMap((each) => each.fields.flatMap((field) => optionsOf(field, noAnswers)
    .filter(({ value }) => question.asked(withAnswer(noAnswers, field.at, value), others) === 'yes')
    .map(({ option }) => ({ question: each, field, option }))));
}

/** Answers of a buyer who ticks everything, and of each list of options takes the one at a place. */
function everything(place: number): AnswersDocument {
  return (questions as readonly Question[]).flatMap(({ fields }) => fields).reduce<AnswersDocument>((answers, field) => {
    if (field.control === 'several') return withAnswer(answers, field.at, field.options(answers));
    return field.control === 'choice' ? withAnswer(answers, field.at, field.options[place % field.options.length]) : answers;
  }, noAnswers);
}

/** All options a field can ever have, for a sheet that is printed before anything is answered. */
export function everyOption(field: Extract<Field, { control: 'several' }>): string[] {
  const places = Math.max(...(questions as readonly Question[]).flatMap(({ fields }) => fields.map((each) => (each.control === 'choice' ? each.options.length : 1))));
  return [...new Set(Array.from({ length: places }, (_, place) => field.options(everything(place))).flat())];
}
