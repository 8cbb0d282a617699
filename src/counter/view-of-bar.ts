import { html, nothing } from 'lit';
import { dayIn } from '../units/day.ts';
import { languageNames, languageTags, type LanguageTag, type Spoken } from './languages.ts';
import { isOverdue, type QueueStatus } from './queue/status.ts';
import { sayAge } from './say-age.ts';
import type { StockList } from './stock-list.ts';

export interface BarView {
  spoken: Spoken;
  stock: StockList | undefined;
  locale: string;
  now: number;
  /** Undefined where no relay is set up. */
  queue: QueueStatus | undefined;
  isKept: boolean;
  isUpdateWaiting: boolean;
  isUpdateAsked: boolean;
  /** The relay takes nothing from this version any more. */
  isOutdated: boolean;
  /** Who is parked and thrown away soon. */
  going: unknown;
  speak(tag: LanguageTag): void;
  showWaiting(): void;
  update(): void;
}

function stockTemplate({ spoken: { own }, stock, locale }: BarView) {
  if (!stock) return nothing;
  const day = dayIn(locale, stock.document.asOf);
  return html`<span data-stock=${stock.from}>${stock.from === 'copy' ? own.stock.copyOf(day) : own.stock.of(day)}</span>`;
}

function queueTemplate({ spoken: { own: { waiting } }, queue, now, showWaiting }: BarView) {
  if (!queue) return nothing;
  const overdue = isOverdue(queue, now);
  const age = queue.oldest === undefined ? '' : `, ${waiting.oldest(sayAge(now - queue.oldest, waiting))}`;
  return html`<button class="queue ${overdue ? 'overdue' : ''}" type="button" data-queue=${queue.count} @click=${showWaiting}>${waiting.count(queue.count)}${age}</button>`;
}

function updateTemplate({ spoken: { own: { update } }, isUpdateWaiting, isUpdateAsked, update: change }: BarView) {
  if (!isUpdateWaiting) return nothing;
  return html`<p class="update" role="status">${isUpdateAsked ? update.ask : update.waits} <button type="button" data-update @click=${change}>${isUpdateAsked ? update.sure : update.now}</button></p>`;
}

/** What stands above everything: whose counter it is, of what day its list is, what waits, and the language. */
export function barTemplate(view: BarView) {
  const { spoken: { own }, stock, isKept, speak } = view;
  return html`
    <header class="top">
      <h1 class="name"><bdi>${stock?.document.dealer.name ?? own.title}</bdi> <span class="lesser">${own.title}</span></h1>
      <p class="lesser facts">${stockTemplate(view)}<span>${isKept ? own.offline.kept : own.offline.notKept}</span></p>
      ${queueTemplate(view)}
      <label class="language"><span class="unseen">${own.languageLabel}</span>
        <select data-language autocomplete="off" @change=${({ target }: Event) => speak((target as HTMLSelectElement).value as LanguageTag)}>
          ${languageTags.map((tag) => html`<option value=${tag} lang=${tag} ?selected=${tag === own.language}>${languageNames[tag]}</option>`)}
        </select></label>
      ${view.isOutdated ? html`<p class="notice old" role="status" data-outdated>${own.update.outdated}</p>` : nothing}
      ${view.going}
      ${updateTemplate(view)}
      ${stock?.age === 'old' || stock?.age === 'asked' ? html`<p class="notice old" data-old>${own.stock.old(dayIn(view.locale, stock.document.asOf))}</p>` : nothing}
    </header>`;
}
