import { html, nothing } from 'lit';
import { questions, type Question } from '../../answers/questions.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { sayOption } from '../../widget/say-answer.ts';
import { bringing } from './form/conditions.ts';
import { fieldTemplate, type FormLanguage, type FormVoice } from './form/field.ts';
import { isSaidBySecondBoxes } from './form/musts.ts';
import type { Paper, Part } from './paper.ts';
import type { SheetSize } from './sizes.ts';
import type { PaperWords } from './words/words.ts';

export interface BlankFormView {
  voice: FormLanguage;
  own: PaperWords;
  dealer: Pick<CatalogueDocument['dealer'], 'name' | 'phone'>;
  size: SheetSize;
}

/** More options than this bring a question to nearly everyone. */
const mostNamed = 3;

/** The options a question is only for, where they are few and of one question. */
function onlyIf(question: Question, { voice, own, conditions }: FormVoice): string | undefined {
  if (!conditions) return undefined;
  const brings = bringing(question);
  if (brings.length === 0 || brings.length > mostNamed || new Set(brings.map(({ field }) => field.at)).size > 1) return undefined;
  return own.form.onlyIf(brings.map((each) => sayOption(each.option, each.field, each.question, voice)).join(', '));
}

const numberOf = ({ id }: Question) => questions.findIndex((each) => each.id === id) + 1;

function questionPart(question: Question, told: FormVoice): Part[] {
  const fields = question.fields.filter((field) => !isSaidBySecondBoxes(field));
  // Answered beside what it is about.
  if (fields.length === 0) return [];
  const only = onlyIf(question, told);
  const { ask } = told.voice.words.questions[question.id as keyof typeof told.voice.words.questions];
  return [{
    id: `question-${question.id}`,
    body: html`
      <div class="question">
        <h3 class=${fields.length > 1 ? 'wide' : ''}><span class="number">${numberOf(question)}</span> ${ask}${only ? html` <span class="lesser">${only}</span>` : nothing}</h3>
        ${fields.map((field) => fieldTemplate(field, question, told))}
      </div>`,
  }];
}

const headPart = (first: Part, { name }: BlankFormView['dealer'], { form }: PaperWords): Part => ({
  id: 'head',
  body: html`
    <div class="form-head">
      <header><h1>${form.title}</h1><p class="dealer"><strong><bdi>${name}</bdi></strong></p></header>
      <p>${form.explained} ${form.secondBox}</p>
      <div data-part=${first.id}>${first.body}</div>
    </div>`,
});

/** Each way to set the form: with examples or without, with more room for the pen or less, with long lists to tick or a line to write on. */
const settings = [
  { hints: true, lists: true, conditions: true, pen: 'pen-9' }, { hints: true, lists: true, conditions: true, pen: 'pen-8' },
  { hints: false, lists: true, conditions: true, pen: 'pen-9' }, { hints: false, lists: true, conditions: true, pen: 'pen-8' },
  { hints: false, lists: true, conditions: true, pen: 'pen-7' }, { hints: false, lists: true, conditions: true, pen: 'pen-6' },
  { hints: false, lists: false, conditions: true, pen: 'pen-6' }, { hints: false, lists: false, conditions: false, pen: 'pen-6' },
] as const;

/** Every question, in the order of the wizard and of the sheet, to be answered by pen. It asks for nothing about who answers. */
export function blankFormPaper({ voice, own, dealer, size }: BlankFormView): Paper {
  const { words } = voice;
  return {
    size, language: words.language, direction: words.direction, columns: 2, foot: [dealer.name, dealer.phone].filter((each) => each !== undefined).join(' · '),
    tellings: settings.map(({ pen, ...setting }) => () => {
      const parts = (questions as readonly Question[]).flatMap((question) => questionPart(question, { voice, own, ...setting }))
        .map(({ id, body }) => ({ id, body: html`<div class=${pen}>${body}</div>` }));
      // The first question, on which all others hang, has more options than any: it takes the whole width.
      const [first, ...rest] = parts;
      return { head: headPart(first!, dealer, own), parts: rest };
    }),
  };
}
