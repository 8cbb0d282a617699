import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Part } from './customer.ts';
import type { Intake, Way } from './intake.ts';
import type { Spoken } from './languages.ts';
import type { StorageWhy } from './queue/storage-trouble.ts';

export interface IntakeView {
  spoken: Spoken;
  intake: Intake;
  part: Part;
  /** That it was sent stands there, and nothing of him. */
  isSent: boolean;
  /** Something to be said of him. */
  note: string | undefined;
  /** Why he couldn't be parked. */
  trouble: StorageWhy | undefined;
  content: unknown;
  beside: unknown;
  /** The same in a line, where there is no room beside. */
  brief: string;
  say(said: Partial<Pick<Intake, 'name' | 'notes'>>): void;
  ask(way: Way): void;
  show(part: Part): void;
  measure(units: 'us' | 'metric'): void;
  park(): void;
  next(): void;
}

const valueOf = ({ target }: Event) => (target as HTMLInputElement).value;

function radios<V extends string>(name: string, legend: string, options: readonly (readonly [V, string])[], chosen: V, choose: (value: V) => void) {
  return html`<fieldset class="switch"><legend class="unseen">${legend}</legend>${options.map(([value, label]) => html`
    <label><input type="radio" name=${name} value=${value} .checked=${live(value === chosen)} @change=${() => choose(value)} /><span>${label}</span></label>`)}</fieldset>`;
}

const notesTemplate = ({ spoken: { own: { intake: words } }, intake, say }: IntakeView) => html`
  <details class="notes" ?open=${intake.notes !== ''}><summary>${words.notes}</summary>
    <div class="close"><label class="unseen" for="notes">${words.notes}</label><p class="hint" id="notes-hint">${words.notesHint}</p>
      <textarea id="notes" name="${intake.key}-notes" rows="3" autocomplete="off" autocorrect="off" spellcheck="false" aria-describedby="notes-hint" .value=${live(intake.notes)} @input=${(event: Event) => say({ notes: valueOf(event) })}></textarea></div>
  </details>`;

function headTemplate(view: IntakeView) {
  const { spoken: { own: { intake: words }, words: { wizard } }, intake, part, isSent } = view;
  return html`
    <div class="head">
      <h2 class="unseen" id="intake-heading" tabindex="-1">${words.heading}</h2>
      ${isSent ? nothing : html`<div class="box called"><label for="called">${words.name}</label>
        <input type="text" id="called" name="${intake.key}-called" autocomplete="off" autocorrect="off" spellcheck="false" maxlength="60" title=${words.nameHint} .value=${live(intake.name)} @input=${(event: Event) => view.say({ name: valueOf(event) })} /></div>`}
      ${radios(`${intake.key}-part`, words.partsLabel, (['ask', 'send', 'take'] as const).map((each) => [each, words.parts[each]] as const), part, view.show)}
      ${part === 'ask' ? radios(`${intake.key}-way`, words.waysLabel, (['sheet', 'steps'] as const).map((each) => [each, words.ways[each]] as const), intake.way, view.ask) : nothing}
      ${part === 'ask' && intake.way === 'sheet' ? radios(`${intake.key}-units`, wizard.unitsLabel, [['us', wizard.unitsUs], ['metric', wizard.unitsMetric]] as const, intake.units, view.measure) : nothing}
      <div class="actions">
        <button type="button" data-park @click=${view.park}>${words.park}</button>
        <button class="next" type="button" data-next @click=${view.next}>${words.next}</button>
      </div>
    </div>`;
}

/** The customer on the screen: what is asked, and beside it what it comes to. */
export function intakeTemplate(view: IntakeView) {
  const { content, beside, note, trouble, spoken: { own } } = view;
  const jump = ({ currentTarget }: Event) => (currentTarget as Element).closest('.intake')!.querySelector('.beside')!.scrollIntoView();
  return html`
    <div class="intake" aria-labelledby="intake-heading" role="group">
      ${headTemplate(view)}
      ${note ? html`<p class="opened" role="status">${note}</p>` : nothing}
      ${trouble ? html`<p class="fault" role="alert">${own.intake.notParked} ${own.storage[trouble]}</p>` : nothing}
      ${view.isSent ? nothing : notesTemplate(view)}
      <div class="work ${beside === nothing ? '' : 'with'}">${content}${beside === nothing ? nothing : html`<button class="jump" type="button" @click=${jump}>${view.brief}</button><div class="beside">${beside}</div>`}</div>
    </div>`;
}
