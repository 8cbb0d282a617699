import { html, nothing, type TemplateResult } from 'lit';
import { questions, type Field, type Question } from '../../../answers/questions.ts';
import type { AskingVoice } from '../../../reasons/asking-voice.ts';
import { unitWord } from '../../../units/show.ts';
import { sayOption } from '../../../widget/say-answer.ts';
import type { PaperWords } from '../words/words.ts';
import { everyOption } from './conditions.ts';

export interface FormVoice {
  voice: AskingVoice;
  own: PaperWords;
  /** Whether examples stand under the labels. */
  hints: boolean;
  /** Whether long lists are ticked; else what is meant is written down. */
  lists: boolean;
}

const fields: readonly Field[] = (questions as readonly Question[]).flatMap((each) => each.fields);
/** Where the field that says which options of another are a must stands. */
const mustOf = (at: string) => `${at}.must`;
/** A field whose options have a second box for those that are a must. */
export const hasSecondBox = ({ at }: Field) => fields.some((each) => each.at === mustOf(at));
/** A field that is the second box of another. */
export const isSecondBox = ({ at }: Field) => fields.some((each) => mustOf(each.at) === at);

/** A list with more options than this is long. */
const longList = 12;

const box = html`<span class="box"></span>`;
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
      return everyOption(field).map((option) => optionTemplate(option, label(option), hasSecondBox(field) ? html`<span class="second">${box}</span>` : nothing));
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
  // Where there is but one field the question has said it all, but for a line, which wants a name.
  const named = question.fields.length > 1 || options === undefined;
  return html`
    <div class=${`field ${options === undefined ? 'written' : hasSecondBox(field) ? 'ticked list' : 'ticked'}`} data-field=${field.at}>
      ${named ? html`<span class="label">${label}</span>` : nothing}
      ${options === undefined ? line(unitOf(field, voice)) : options}
      ${hints && hint ? html`<span class="wide lesser">${hint}</span>` : nothing}
    </div>`;
}
