import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Field, Question, QuestionId } from '../answers/questions.ts';
import { readTyped, type TypedFault, type Typing, type Value } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { AskingVoice } from '../reasons/asking-voice.ts';
import { unitWord } from '../units/show.ts';
import { hasOptions, notSure, typedFor, type Box, type Boxes } from '../widget/box.ts';
import { sayFault } from '../widget/say-fault.ts';
import { sayOption } from '../widget/say-answer.ts';
import { sayValue } from '../widget/say-value.ts';
import { notSureSign, placeOf, signOf } from './keys.ts';

export interface FieldView {
  answers: AnswersDocument;
  boxes: Boxes;
  /** Faults to be told: of fields that were left. */
  faults: ReadonlyMap<string, TypedFault>;
  voice: AskingVoice;
  typing: Typing;
  /** Of this intake alone, so that no browser offers what stood in the last one's fields. */
  key: string;
  change(question: QuestionId, at: string, box: Box): void;
  left(field: Field): void;
}

const idOf = (at: string) => `sheet-${at.replaceAll('.', '-')}`;

const labelOf = (question: Question, field: Field, { words }: AskingVoice) => {
  const { ask, fields } = words.questions[question.id as QuestionId];
  return question.fields.length > 1 ? (fields[field.at]?.label ?? ask) : ask;
};

const hintOf = (question: Question, field: Field, { words }: AskingVoice) => words.questions[question.id as QuestionId].fields[field.at]?.hint;

function saidOf(field: Field, { typing, voice: { words, reader } }: FieldView): string | undefined {
  if (field.control === 'money') return words.wizard.moneyHint(typing.currency);
  return field.control === 'quantity' || field.control === 'choice-or-quantity' ? unitWord(field[typing.units], reader) : undefined;
}

/** What a typed amount was read as, or what is wrong with it once the field was left, in words. */
function belowTemplate(field: Field, question: Question, view: FieldView) {
  const { voice, typing, boxes, change } = view;
  const typed = boxes[field.at]?.typed ?? '';
  const fault = view.faults.get(field.at);
  const id = `${idOf(field.at)}-below`;
  if (fault) {
    return html`<p class="fault" id=${id}>${sayFault(fault, field, question, voice)}</p>
      ${fault.either ? html`<div class="actions">${fault.either.map((value) => html`<button type="button" @click=${() => change(question.id as QuestionId, field.at, { ...boxes[field.at], typed: typedFor(value, typing) })}>${sayValue(value, voice.reader)}</button>`)}</div>` : nothing}`;
  }
  const read = readTyped(field, typed, typing);
  const value = 'value' in read ? read.value as Value | undefined : undefined;
  const hint = hintOf(question, field, voice);
  const said = value === undefined || typeof value === 'number' ? hint : voice.words.wizard.understood(sayValue(value, voice.reader));
  return html`<p class="below" id=${id}>${said ?? ''}</p>`;
}

function typedTemplate(field: Field, question: Question, view: FieldView, label: string) {
  const { boxes, change, key, faults } = view;
  const box = boxes[field.at] ?? {};
  const said = saidOf(field, view);
  return html`
    <label for=${idOf(field.at)}>${label}${said ? html` <span class="lesser">(${said})</span>` : nothing}</label>
    <input type="text" id=${idOf(field.at)} name="${key}-${idOf(field.at)}" inputmode=${field.control === 'money' || field.control === 'number' ? 'decimal' : 'text'}
      autocomplete="off" autocorrect="off" autocapitalize="off" spellcheck="false" .value=${live(box.typed ?? '')}
      aria-describedby="${idOf(field.at)}-below" aria-invalid=${faults.has(field.at) ? 'true' : nothing}
      @input=${({ target }: Event) => change(question.id as QuestionId, field.at, { ...box, typed: (target as HTMLInputElement).value })} @change=${() => view.left(field)} />
    ${belowTemplate(field, question, view)}`;
}

interface Option {
  value: string;
  label: string;
  sign: string | undefined;
}

function optionsOf(field: Field, question: Question, { voice, answers }: FieldView): Option[] {
  const { wizard } = voice.words;
  const values = field.control === 'several' ? field.options(answers) : field.control === 'yes-no' ? ['yes', 'no'] : 'options' in field ? field.options : [];
  const label = (value: string) => (field.control === 'yes-no' ? wizard[value as 'yes' | 'no'] : sayOption(value, field, question, voice));
  const options = values.map((value, place) => ({ value, label: label(value), sign: signOf(place) }));
  return hasOptions(field) ? [...options, { value: notSure, label: wizard.notSure, sign: notSureSign }] : options;
}

/** A box after one of its options was pressed. */
function pressed(field: Field, box: Box, value: string): Box {
  if (field.control !== 'several') return { ...box, chosen: value };
  const ticked = box.ticked ?? [];
  return { ...box, ticked: ticked.includes(value) ? ticked.filter((each) => each !== value) : [...ticked, value] };
}

function groupTemplate(field: Field, question: Question, view: FieldView, label: string) {
  const { boxes, change, key } = view;
  const box = boxes[field.at] ?? {};
  const options = optionsOf(field, question, view);
  const isTicked = ({ value }: Option) => (field.control === 'several' ? (box.ticked ?? []).includes(value) : box.chosen === value);
  const press = (value: string) => change(question.id as QuestionId, field.at, pressed(field, box, value));
  const byKey = (event: KeyboardEvent) => {
    if (!(event.target as Element).matches('[type="radio"], [type="checkbox"]')) return;
    const option = event.key === notSureSign ? options.find(({ sign }) => sign === notSureSign) : options[placeOf(event) ?? -1];
    if (!option) return;
    event.preventDefault();
    press(option.value);
    (event.currentTarget as Element).querySelector<HTMLElement>(`input[value="${option.value}"]`)?.focus();
  };
  return html`
    <fieldset @keydown=${byKey}>
      <legend>${label}</legend>
      <div class="chips">${options.map((option) => html`
        <label class="chip"><kbd aria-hidden="true">${option.sign ?? ''}</kbd><input type=${field.control === 'several' ? 'checkbox' : 'radio'} name="${key}-${idOf(field.at)}" value=${option.value}
          .checked=${live(isTicked(option))} @change=${() => press(option.value)} /><span>${option.label}</span></label>`)}</div>
    </fieldset>`;
}

function orderTemplate(field: Extract<Field, { control: 'order' }>, question: Question, view: FieldView, label: string) {
  const { boxes, change, key, voice: { words } } = view;
  const ticked = boxes[field.at]?.ticked ?? [];
  const places = Array.from({ length: Math.min(field.options.length, Math.max(field.places, ticked.findLastIndex((each) => each !== '') + 2)) }, (_, place) => place);
  const chosen = (place: number) => ({ target }: Event) =>
    change(question.id as QuestionId, field.at, { ticked: places.map((each) => (each === place ? (target as HTMLSelectElement).value : (ticked[each] ?? ''))) });
  return html`
    <fieldset><legend>${label}</legend>
      <div class="row">${places.map((place) => html`
        <div class="small"><label for="${idOf(field.at)}-${place}">${words.wizard.place(place + 1)}</label>
          <select id="${idOf(field.at)}-${place}" name="${key}-${idOf(field.at)}-${place}" autocomplete="off" @change=${chosen(place)}>
            <option value="" ?selected=${!ticked[place]}>${words.wizard.choose}</option>
            ${field.options.map((option) => html`<option value=${option} ?selected=${ticked[place] === option} ?disabled=${ticked.includes(option) && ticked[place] !== option}>${words.criteria[option as keyof typeof words.criteria]}</option>`)}
          </select></div>`)}</div>
    </fieldset>`;
}

/** More options than this are a list to pull down. */
const mostChips = 9;

function pickTemplate(field: Field, question: Question, view: FieldView, label: string) {
  const { boxes, change, key, voice: { words } } = view;
  const box = boxes[field.at] ?? {};
  return html`
    <label for=${idOf(field.at)}>${label}</label>
    <select id=${idOf(field.at)} name="${key}-${idOf(field.at)}" autocomplete="off" @change=${({ target }: Event) => change(question.id as QuestionId, field.at, { ...box, chosen: (target as HTMLSelectElement).value || undefined })}>
      <option value="" ?selected=${box.chosen === undefined}>${words.wizard.choose}</option>
      ${optionsOf(field, question, view).map(({ value, label: said }) => html`<option value=${value} ?selected=${box.chosen === value}>${said}</option>`)}
    </select>`;
}

function controlTemplate(field: Field, question: Question, view: FieldView) {
  const label = labelOf(question, field, view.voice);
  switch (field.control) {
    case 'order': return orderTemplate(field, question, view, label);
    case 'several':
    case 'yes-no': return groupTemplate(field, question, view, label);
    case 'choice': return field.options.length > mostChips ? pickTemplate(field, question, view, label) : groupTemplate(field, question, view, label);
    case 'choice-or-quantity':
      return html`${groupTemplate(field, question, view, label)}${view.boxes[field.at]?.chosen === field.opens ? typedTemplate(field, question, view, sayOption(field.opens, field, question, view.voice)) : nothing}`;
    default: return typedTemplate(field, question, view, label);
  }
}

/** One field of the sheet: its words, its box or options, and how it was read. */
export const fieldTemplate = (field: Field, question: Question, view: FieldView) => html`
  <div class="box ${view.faults.has(field.at) ? 'wrong' : ''} ${field.control}" data-box=${field.at}>${controlTemplate(field, question, view)}</div>`;
