import { html, nothing } from 'lit';
import { dayIn } from '../units/day.ts';
import type { StockList } from './stock-list.ts';
import type { CounterWords } from './words/words.ts';

export interface StartView {
  own: CounterWords;
  stock: StockList;
  locale: string;
  isAccepted: boolean;
  /** What was done to the last customer's answers without anybody asking for it. */
  isOver: boolean;
  /** Those who are parked. */
  parked: unknown;
  accept(): void;
  begin(): void;
  open(): void;
  printForm(): void;
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
  const { own: { start, idle }, stock, isAccepted, isOver, parked, begin, open, printForm } = view;
  if (stock.age === 'asked' && !isAccepted) return acceptTemplate(view);
  return html`
    <section class="start stack" aria-labelledby="start-heading">
      <div class="close"><h2 id="start-heading" tabindex="-1">${start.heading}</h2><p>${start.explained}</p></div>
      ${isOver ? html`<p class="notice" role="status">${idle.over}</p>` : nothing}
      <div class="actions">
        <button class="main" type="button" data-begin @click=${begin}>${start.begin}</button>
        <button type="button" data-open @click=${open}>${start.open}</button>
        <button type="button" data-form @click=${printForm}>${start.form}</button>
      </div>
      ${parked}
    </section>`;
}
