import { html } from 'lit';

/** What couldn't be fetched, and a way to have it fetched again. */
export const missingTemplate = (told: string, tryAgain: string, again: () => void) => html`
  <p role="alert">${told}</p>
  <div class="actions"><button type="button" part="try-again" @click=${again}>${tryAgain}</button></div>`;
