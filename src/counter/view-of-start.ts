import { html, nothing } from 'lit';
import { dayIn } from '../units/day.ts';
import type { Covered } from './residue.ts';
import type { StockList } from './stock-list.ts';
import type { CounterWords } from './words/words.ts';

export interface StartView {
  own: CounterWords;
  stock: StockList;
  locale: string;
  isAccepted: boolean;
  /** What a page that went away left. */
  draft: unknown;
  /** Those who are parked. */
  parked: unknown;
  accept(): void;
  begin(): void;
  open(): void;
  printForm(): void;
  cover(): void;
}

function acceptTemplate({ own: { stock: words }, stock, locale, accept }: StartView) {
  return html`
    <section class="notice stack" aria-labelledby="start-heading">
      <h2 id="start-heading" tabindex="-1">${words.askHeading}</h2>
      <p>${words.ask(dayIn(locale, stock.document.asOf))}</p>
      <div class="actions"><button class="main" type="button" data-accept @click=${accept}>${words.use}</button></div>
    </section>`;
}

/** Between two customers: nothing of the last one, and the ways to the next. */
export function startTemplate(view: StartView) {
  const { own: { start }, stock, isAccepted, draft, parked, begin, open, printForm, cover } = view;
  if (stock.age === 'asked' && !isAccepted) return acceptTemplate(view);
  return html`
    <section class="start stack" aria-labelledby="start-heading">
      <div class="close"><h2 id="start-heading" tabindex="-1">${start.heading}</h2>${draft === nothing ? html`<p>${start.explained}</p>` : nothing}</div>
      ${draft}
      <div class="actions">
        <button class="main" type="button" data-begin @click=${begin}>${start.begin}</button>
        <button type="button" data-open @click=${open}>${start.open}</button>
        <button type="button" data-form @click=${printForm}>${start.form}</button>
        <button type="button" data-cover @click=${cover}>${start.cover}</button>
      </div>
      ${parked}
    </section>`;
}

/** Nobody is served: nothing is to be seen but that. */
export const coverTemplate = ({ covered, idle }: CounterWords, why: Covered, end: () => void) => html`
  <section class="start stack" aria-labelledby="start-heading">
    <div class="close"><h2 id="start-heading" tabindex="-1">${covered.heading}</h2><p>${covered.explained}</p></div>
    ${why === 'left-alone' ? html`<p class="lesser">${idle.over}</p>` : nothing}
    <div class="actions"><button type="button" data-uncover @click=${end}>${covered.end}</button></div>
  </section>`;
