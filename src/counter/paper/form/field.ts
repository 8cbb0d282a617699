import { html, nothing, type TemplateResult } from 'lit';
import { questions, type Field, type Question } from '../../../answers/questions.ts';
import type { AskingVoice } from '../../../reasons/asking-voice.ts';
import type { Words } from '../../../reasons/words/words.ts';
import { unitWord } from '../../../units/show.ts';
import { sayOption } from '../../../widget/say-answer.ts';
import type { PaperWords } from '../words/words.ts';
import { everyOption } from './conditions.ts';
import { canBeMust, canBeMustWhole } from './musts.ts';

/** What a form is told with: the words of asking, and the one for a must. */
export type FormLanguage = AskingVoice & { words: Pick<Words, 'result'> };

export interface FormVoice {
  voice: FormLanguage;
  own: PaperWords;
  /** Whether examples stand under the labels. */
  hints: boolean;
  /** Whether it is said for whom a question is. */
  conditions: boolean;
  /** Whether long lists are ticked; else what is meant is written down. */
  lists: boolean;
}

const firstQuestion: string = questions[0].id;

/** A list with more options than this is long. */
const longList = 12;

const box = html`<span class="box"></span>`;
/** Ticked where it is a must. */
const secondBox = html`<span class="second">${box}</span>`;
/** A line to write on, and the unit behind it. */
const line = (unit: string) => html`<span class="line"></span>${unit ? html`<span class="unit">${unit}</span>` : nothing}`;

const optionTemplate = (option: string, label: string, behind: unknown = nothing) => html`<span class="option" data-option=${option}>${box}<span>${label}</span>${behind}</span>`;

function optionsTemplate(field: Field, question: Question, { voice, own, lists }: FormVoice) {
  const label = (option: string) => (field.control === 'yes-no' ? voice.words.wizard[option as 'yes' | 'no'] : sayOption(option, field, question, voice));
  switch (field.control) {
    case 'yes-no':
      return ['yes', 'no'].map((option) => optionTemplate(option, label(option)));
    case 'choice':
      if (!lists && field.options.length > longList) return undefined;
      return field.options.map((option) => optionTemplate(option, label(option)));
    case 'choice-or-quantity':
      return field.options.map((option) => optionTemplate(option, label(option), option === field.opens ? line(unitWord(field[voice.reader.units], voice.reader)) : nothing));
    case 'several':
      return everyOption(field).map((option) => optionTemplate(option, label(option), canBeMust(field, option) ? secondBox : nothing));
    case 'order':
      return html`<span class="wide">${own.form.number(String(field.places))}</span>${field.options.map((option) => optionTemplate(option, label(option)))}`;
    default:
      return undefined;
  }
}

function unitOf(field: Field, { reader }: AskingVoice): string {
  if (field.control === 'money') return reader.currency;
  return field.control === 'quantity' ? unitWord(field[reader.units], reader) : '';
}

/** One thing that is asked, as it is answered by pen. */
export function fieldTemplate(field: Field, question: Question, told: FormVoice): TemplateResult {
  const { voice, hints } = told;
  const { label = '', hint } = voice.words.questions[question.id as keyof typeof voice.words.questions].fields[field.at] ?? {};
  const options = optionsTemplate(field, question, told);
  // Where there is but one field the question has named it, but for what is counted, which has no unit to say so.
  const named = question.fields.length > 1 || field.control === 'number';
  const shape = options === undefined ? 'written' : field.control === 'several' && question.id === firstQuestion ? 'ticked list' : 'ticked';
  return html`
    <div class=${`field ${shape}`} data-field=${field.at}>
      ${named ? html`<span class="label">${label}</span>` : nothing}
      ${options === undefined ? line(unitOf(field, voice)) : options}
      ${canBeMustWhole(field) ? html`<span class="option">${secondBox}<span>${voice.words.result.must}</span></span>` : nothing}
      ${hints && hint ? html`<span class="wide lesser">${hint}</span>` : nothing}
    </div>`;
}
