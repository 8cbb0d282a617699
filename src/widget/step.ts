import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import type { Field, Question } from '../answers/questions.ts';
import { readTyped, type Typing, type Value } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { AskingVoice } from '../reasons/asking-voice.ts';
import type { QuestionWords } from '../reasons/words/words.ts';
import { kindOfUnit, toSi, type Unit } from '../units/quantity.ts';
import { showAmount, unitWord } from '../units/show.ts';
import { hasOptions, notSure, typedFor, type Box, type Boxes, type StepFault } from './box.ts';
import { sayFault } from './say-fault.ts';
import { sayValue } from './say-value.ts';

export interface StepView {
  question: Question;
  answers: AnswersDocument;
  boxes: Boxes;
  faults: readonly StepFault[];
  voice: AskingVoice;
  typing: Typing;
  progress: { now: number; atMost: number | undefined };
  /** How many machines still stand, for the line below the question. */
  standing: string;
  canGoBack: boolean;
  /** What is asked, drawn. */
  picture: unknown;
  change(at: string, box: Box): void;
  submit(): void;
  unsure(): void;
  back(): void;
  seeResult(): void;
}

const fieldId = (at: string) => `field-${at.replaceAll('.', '-')}`;

/** The control a fault's link leads to: the first one of its field. */
export const controlOf = (root: ShadowRoot, at: string) => root.querySelector<HTMLElement>(`[data-field="${at}"]`);

const wordsOf = (question: Question, { words }: AskingVoice): QuestionWords => words.questions[question.id as keyof typeof words.questions];

function describedBy(at: string, hint: boolean, fault: boolean) {
  const ids = [...(hint ? [`${fieldId(at)}-hint`] : []), ...(fault ? [`${fieldId(at)}-fault`] : [])];
  return ids.length > 0 ? ids.join(' ') : nothing;
}

/** Options of tasks and wishes take their words from the lists of those. */
function optionWords(field: Field, option: string, view: StepView): { label: string; hint: string | undefined } {
  const { words } = view.voice;
  const own = wordsOf(view.question, view.voice).fields[field.at];
  const tasks = view.question.id === 'musts' ? words.questions.tasks.fields.tasks?.options : undefined;
  const wishes: Readonly<Record<string, string>> = words.wishes;
  if (option === notSure) return { label: words.wizard.notSure, hint: undefined };
  if (field.control === 'yes-no') return { label: words.wizard[option as 'yes' | 'no'], hint: undefined };
  return {
    label: own?.options?.[option] ?? tasks?.[option] ?? wishes[option] ?? option,
    hint: own?.hints?.[option],
  };
}

function optionTemplate(field: Field, option: string, type: 'radio' | 'checkbox', first: boolean, view: StepView) {
  const box = view.boxes[field.at] ?? {};
  const { label, hint } = optionWords(field, option, view);
  const ticked = box.ticked ?? [];
  const checked = type === 'radio' ? box.chosen === option : ticked.includes(option);
  const changed = () =>
    view.change(field.at, type === 'radio'
      ? { ...box, chosen: option }
      : { ...box, ticked: checked ? ticked.filter((each) => each !== option) : [...ticked, option] });
  return html`
    <label class="option">
      <input type=${type} name=${fieldId(field.at)} value=${option} .checked=${checked} data-field=${first ? field.at : nothing} @change=${changed} />
      <span><span>${label}</span>${hint ? html` <span class="hint">${hint}</span>` : nothing}</span>
    </label>
  `;
}

function echoOf(field: Field, typed: string, { typing, voice }: StepView): string {
  const read = readTyped(field, typed, typing);
  if ('fault' in read || read.value === undefined) return '';
  const amount = read.value as Value;
  if (typeof amount === 'number') return '';
  const understood = sayValue(amount, voice.reader);
  if ('currency' in amount) return voice.words.wizard.understood(understood);
  const si = toSi({ value: amount.value, unit: amount.unit as Unit });
  const other = showAmount(si, siUnit(amount.unit), { ...voice.reader, units: typing.units === 'us' ? 'metric' : 'us' });
  return voice.words.wizard.understood(`${understood} (${other})`);
}

const siUnit = (unit: string) => ({ mass: 'kg', length: 'm', area: 'm2', time: 's', angle: 'rad' } as Record<string, string>)[kindOfUnit(unit) ?? ''] ?? unit;

function textTemplate(field: Field, label: string, hint: string | undefined, fault: StepFault | undefined, view: StepView, unit: string | undefined) {
  const box = view.boxes[field.at] ?? {};
  const { words, reader } = view.voice;
  const said = field.control === 'money' ? words.wizard.moneyHint(view.typing.currency) : unit && unitWord(unit, reader);
  const typed = (event: Event) => view.change(field.at, { ...box, typed: (event.target as HTMLInputElement).value });
  return html`
    <div class="close field">
      <label for=${fieldId(field.at)}>${label}${said ? html` <span class="lesser">(${said})</span>` : nothing}</label>
      ${hint ? html`<p class="hint" id="${fieldId(field.at)}-hint">${hint}</p>` : nothing}
      <input
        type="text" id=${fieldId(field.at)} data-field=${field.at} inputmode=${field.control === 'money' || field.control === 'number' ? 'decimal' : 'text'}
        autocomplete="off" spellcheck="false" .value=${box.typed ?? ''} @input=${typed}
        aria-describedby=${describedBy(field.at, hint !== undefined, fault !== undefined)} aria-invalid=${fault ? 'true' : nothing}
      />
      ${fault && 'either' in fault && fault.either ? eitherTemplate(field, fault.either, view) : html`<p class="echo">${echoOf(field, box.typed ?? '', view)}</p>`}
    </div>
  `;
}

/** The two readings of an ambiguous number, to be chosen from. */
const eitherTemplate = (field: Field, either: readonly Value[], { typing, voice, boxes, change }: StepView) => html`
  <div class="actions">${either.map((value) => html`
    <button type="button" @click=${() => change(field.at, { ...boxes[field.at], typed: typedFor(value, typing) })}>${sayValue(value, voice.reader)}</button>`)}</div>
`;

function orderTemplate(field: Extract<Field, { control: 'order' }>, view: StepView) {
  const { words } = view.voice;
  const ticked = view.boxes[field.at]?.ticked ?? [];
  // A place more than are taken, so that whoever has more to say can, and nobody's order is cut short.
  const places = Array.from({ length: Math.min(field.options.length, Math.max(field.places, ticked.findLastIndex((each) => each !== '') + 2)) }, (_, place) => place);
  const chosen = (place: number) => (event: Event) => {
    const next = places.map((each) => ticked[each] ?? '');
    next[place] = (event.target as HTMLSelectElement).value;
    view.change(field.at, { ticked: next });
  };
  return html`<div class="stack">${places.map((place) => html`
    <div class="close field">
      <label for="${fieldId(field.at)}-${place}">${words.wizard.place(place + 1)}</label>
      <select id="${fieldId(field.at)}-${place}" data-field=${place === 0 ? field.at : nothing} @change=${chosen(place)}>
        <option value="" ?selected=${!ticked[place]}>${ticked.some((each) => each !== '') ? words.wizard.nothingChosen : words.wizard.choose}</option>
        ${field.options.map((option) => html`
          <option value=${option} ?selected=${ticked[place] === option} ?disabled=${ticked.includes(option) && ticked[place] !== option}>
            ${words.criteria[option as keyof typeof words.criteria]}
          </option>`)}
      </select>
    </div>`)}</div>`;
}

/** More options than this are a list to pull down: on a phone they would push all else off the screen. */
const mostButtons = 8;

function pickTemplate(field: Extract<Field, { control: 'choice' }>, label: string, fault: StepFault | undefined, view: StepView) {
  const box = view.boxes[field.at] ?? {};
  const { wizard } = view.voice.words;
  const options = wordsOf(view.question, view.voice).fields[field.at]?.options ?? {};
  const picked = (event: Event) => view.change(field.at, { ...box, chosen: (event.target as HTMLSelectElement).value || undefined });
  return html`
    <div class="close field">
      <label for=${fieldId(field.at)}>${label}</label>
      <select id=${fieldId(field.at)} data-field=${field.at} @change=${picked} aria-describedby=${describedBy(field.at, false, fault !== undefined)}>
        <option value="" ?selected=${box.chosen === undefined}>${wizard.choose}</option>
        ${field.options.map((option) => html`<option value=${option} ?selected=${box.chosen === option}>${options[option] ?? option}</option>`)}
        <hr />
        <option value=${notSure} ?selected=${box.chosen === notSure}>${wizard.notSure}</option>
      </select>
    </div>`;
}

function controlTemplate(field: Field, label: string, hint: string | undefined, fault: StepFault | undefined, view: StepView, alone: boolean): TemplateResult {
  const group = (options: readonly string[], type: 'radio' | 'checkbox') => html`
    <fieldset aria-labelledby=${alone ? 'heading' : nothing} aria-describedby=${describedBy(field.at, false, fault !== undefined)}>
      ${alone ? nothing : html`<legend>${label}</legend>`}
      <div class="options">
        ${options.map((option, index) => optionTemplate(field, option, type, index === 0, view))}
        ${type === 'radio' ? html`<div class="last">${optionTemplate(field, notSure, type, false, view)}</div>` : nothing}
      </div>
    </fieldset>
  `;
  switch (field.control) {
    case 'choice':
      return field.options.length > mostButtons ? pickTemplate(field, label, fault, view) : group(field.options, 'radio');
    case 'yes-no':
      return group(['yes', 'no'], 'radio');
    case 'several':
      return group(field.options(view.answers), 'checkbox');
    case 'order':
      return orderTemplate(field, view);
    case 'choice-or-quantity': {
      const open = view.boxes[field.at]?.chosen === field.opens;
      return html`
        ${group(field.options, 'radio')}
        ${open ? html`<div class="inset">${textTemplate(field, label, hint, fault, view, field[view.typing.units])}</div>` : nothing}
      `;
    }
    case 'quantity':
      return textTemplate(field, label, hint, fault, view, field[view.typing.units]);
    default:
      return textTemplate(field, label, hint, fault, view, undefined);
  }
}

function fieldTemplate(field: Field, view: StepView) {
  const { fields } = view.question;
  const { label = '', hint } = wordsOf(view.question, view.voice).fields[field.at] ?? {};
  const fault = view.faults.find(({ at }) => at === field.at);
  return html`
    <div class="close ${fault ? 'wrong' : ''}">
      ${fault ? html`<p class="fault" id="${fieldId(field.at)}-fault">${sayFault(fault, field, view.question, view.voice)}</p>` : nothing}
      ${controlTemplate(field, label, hint, fault, view, fields.length === 1)}
    </div>
  `;
}

/** The faults of a step in one place, each leading to its field; takes the focus when it appears. */
function summaryTemplate({ faults, question, voice }: StepView) {
  if (faults.length === 0) return nothing;
  const lead = (at: string) => (event: Event) => {
    event.preventDefault();
    controlOf((event.target as HTMLElement).getRootNode() as ShadowRoot, at)?.focus();
  };
  return html`
    <div class="summary" tabindex="-1" id="summary" part="fault-summary">
      <div role="alert">
        <h3>${voice.words.wizard.thereIsAProblem}</h3>
        <ul>${faults.map((fault) => {
          const field = question.fields.find(({ at }) => at === fault.at)!;
          return html`<li><a href="#${fieldId(fault.at)}" @click=${lead(fault.at)}>${sayFault(fault, field, question, voice)}</a></li>`;
        })}</ul>
      </div>
    </div>
  `;
}

/** One step of the guide, made anew for each question: what was ticked in one is never found ticked in the next. */
export const stepTemplate = (view: StepView) => keyed(view.question.id, formTemplate(view));

/** The question, why it is asked, the boxes, and the ways on. */
function formTemplate(view: StepView) {
  const { question, voice, progress: { now, atMost } } = view;
  const { wizard } = voice.words;
  const { ask, why, hint } = wordsOf(question, voice);
  const submitted = (event: Event) => {
    event.preventDefault();
    view.submit();
  };
  return html`
    <form class="stack narrow" novalidate @submit=${submitted} part="question" data-question=${question.id}>
      <div class="progress" part="progress">
        <span>${atMost === undefined ? wizard.stepOnly(now) : wizard.step(now, atMost)}</span>
        ${atMost === undefined ? nothing : html`<div class="dimension" aria-hidden="true"><span .style=${`inline-size:${(100 * now) / atMost}%`}></span></div>`}
      </div>
      ${summaryTemplate(view)}
      <div class="close">
        <h2 id="heading" tabindex="-1">${ask}</h2>
        ${hint ? html`<p class="hint">${hint}</p>` : nothing}
        <details><summary>${wizard.why}</summary><p>${why}</p></details>
      </div>
      ${view.picture ?? nothing}
      ${question.fields.map((field) => fieldTemplate(field, view))}
      <div class="actions"><button class="main" type="submit" part="continue">${wizard.next}</button></div>
      <div class="actions apart">
        ${question.fields.length === 1 && hasOptions(question.fields[0]!) ? nothing : html`<button type="button" part="unsure" @click=${view.unsure}>${wizard.notSure}</button>`}
        ${view.canGoBack ? html`<button class="text" type="button" part="back" @click=${view.back}>${wizard.back}</button>` : nothing}
        <button class="text" type="button" part="see-result" @click=${view.seeResult}>${wizard.seeResult}</button>
        <span class="lesser">${view.standing}</span>
      </div>
    </form>
  `;
}
