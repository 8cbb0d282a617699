import { html, nothing } from 'lit';
import { sayTime } from './say-time.ts';
import type { Left } from './queue/draft-store.ts';
import type { CounterWords } from './words/words.ts';

export interface DraftView {
  left: Left | undefined;
  /** It was asked for, and isn't there any more. */
  isGone: boolean;
  own: CounterWords;
  locale: string;
  take(): void;
}

/** That a page went away under a customer, and how staff have his answers back. */
export function draftTemplate({ left, isGone, own: { draft }, locale, take }: DraftView) {
  if (!left) return isGone ? html`<p role="alert">${draft.unreadable}</p>` : nothing;
  return html`
    <div class="notice stack" data-left>
      <p role="status">${draft.left(sayTime(locale, left.until))}</p>
      <div class="actions"><button type="button" data-bring-back @click=${take}>${draft.take}</button></div>
    </div>`;
}
