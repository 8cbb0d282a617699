/** Our questions as a document of the general survey library: the same pages, boxes, words and, where simple, conditions. */
import { withAnswer, answerAt } from '../../src/answers/at.ts';
import { noAnswers } from '../../src/answers/names.ts';
import { questionOf, questions, type Field, type Question, type QuestionId } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { en } from '../../src/reasons/words/en.ts';

/** A dot in a name would be read as a path. */
const nameOf = (at: string) => at.replaceAll('.', '_');

/** From how many options ours are a list to pull down, too. */
const mostButtons = 8;

const wordsOf = (question: Question, field: Field) => en.questions[question.id as QuestionId].fields[field.at]!;

function choicesOf(question: Question, field: Field, options: readonly string[]) {
  const own = wordsOf(question, field);
  const words: Readonly<Record<string, string>> = { ...en.wishes, ...en.criteria, ...own.options };
  const choices = options.map((value) => ({ value, text: [words[value], own.hints?.[value]].filter(Boolean).join(' – ') }));
  return field.control === 'several' || field.control === 'order' ? choices : [...choices, { value: 'not-sure', text: en.wizard.notSure }];
}

function several(question: Question, field: Extract<Field, { control: 'several' }>) {
  const options = field.options(noAnswers);
  if (question.id === 'musts') return { choicesFromQuestion: 'tasks', choicesFromQuestionMode: 'selected' };
  return { choices: choicesOf(question, field, options.length > 0 ? options : Object.keys(en.wishes)) };
}

function elementsOf(question: Question, field: Field): object[] {
  const { label, hint } = wordsOf(question, field);
  const name = nameOf(field.at);
  const base = { name, title: label, ...(hint && { description: hint }), ...(question.fields.length === 1 && { titleLocation: 'hidden' }) };
  switch (field.control) {
    case 'several':
      return [{ ...base, type: 'checkbox', ...several(question, field) }];
    case 'choice':
      return [{ ...base, type: field.options.length > mostButtons ? 'dropdown' : 'radiogroup', choices: choicesOf(question, field, field.options) }];
    case 'choice-or-quantity':
      return [
        { ...base, type: 'radiogroup', choices: choicesOf(question, field, field.options) },
        { ...base, name: `${name}_amount`, type: 'text', visibleIf: `{${name}} = '${field.opens}'` },
      ];
    case 'yes-no':
      return [{ ...base, type: 'boolean', labelTrue: en.wizard.yes, labelFalse: en.wizard.no }];
    case 'order':
      return Array.from({ length: field.places }, (_, place) =>
        ({ type: 'dropdown', name: `${name}_${place}`, title: en.wizard.place(place + 1), choices: choicesOf(question, field, field.options) }));
    case 'number':
      return [{ ...base, type: 'text', inputType: 'number', min: field.from, max: field.to }];
    default:
      return [{ ...base, type: 'text' }];
  }
}

/** Each answer that may be chosen, as the library says it and as our document does. */
const chosen = questions.flatMap(({ fields }) => (fields as readonly Field[]).flatMap((field) => {
  if (field.control === 'choice') return field.options.map((option) => ({ said: `{${nameOf(field.at)}} = '${option}'`, answers: withAnswer(noAnswers, field.at, option) }));
  if (field.control !== 'several') return [];
  return field.options(noAnswers).map((option) => ({ said: `{${nameOf(field.at)}} contains '${option}'`, answers: withAnswer(noAnswers, field.at, [option]) }));
}));

/** Found by asking our own condition of each answer by itself. */
function visibleIf({ asked }: Question): string | undefined {
  if (asked(noAnswers, () => true) === 'yes') return undefined;
  return chosen.filter(({ answers }) => asked(answers, () => true) === 'yes').map(({ said }) => said).join(' or ');
}

export const surveyForm = {
  showQuestionNumbers: false, pageNextText: en.wizard.next, pagePrevText: en.wizard.back, showTitle: false,
  pages: questions.map((question: Question) => {
    const { ask, hint, why } = en.questions[question.id as QuestionId];
    const condition = visibleIf(question);
    return {
      name: question.id, title: ask, description: hint ?? why, ...(condition && { visibleIf: condition }),
      elements: question.fields.flatMap((field) => elementsOf(question, field)),
    };
  }),
};

function valuesOf(field: Field, value: unknown): Record<string, unknown> {
  const name = nameOf(field.at);
  const typed = typeof value === 'object' && value !== null && 'value' in value ? Object.values(value).join(' ') : undefined;
  if (field.control === 'choice-or-quantity') return typed === undefined ? { [name]: value } : { [name]: field.opens, [`${name}_amount`]: typed };
  if (field.control === 'order') return Object.fromEntries((value as string[]).slice(0, field.places).map((each, place) => [`${name}_${place}`, each]));
  return { [name]: typed ?? value };
}

/** What a buyer puts into the boxes of a page, as the library keeps it. */
export const surveyValues = (page: string, answers: AnswersDocument): Record<string, unknown> =>
  Object.assign({}, ...questionOf(page as QuestionId).fields.map((field) => {
    const value = answerAt(answers, field.at);
    return value === undefined ? {} : valuesOf(field, value);
  })) as Record<string, unknown>;
