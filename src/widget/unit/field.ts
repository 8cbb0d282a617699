import { html, nothing } from 'lit';

export interface BoxWish {
  id: string;
  label: string;
  hint?: string;
  value: string;
  fault: string | undefined;
  typed(value: string): void;
}

/** A box to type in, with what is wrong with it. */
export const boxTemplate = ({ id, label, hint, value, fault, typed }: BoxWish) => html`
  <div class="close field ${fault ? 'wrong' : ''}">
    <label for=${id}>${label}${hint ? html` <span class="lesser">(${hint})</span>` : nothing}</label>
    <input type="text" id=${id} inputmode="decimal" autocomplete="off" spellcheck="false" .value=${value} aria-invalid=${fault ? 'true' : nothing}
      aria-describedby=${fault ? `${id}-fault` : nothing} @input=${({ target }: Event) => typed((target as HTMLInputElement).value)} />
    ${fault ? html`<p class="fault" id="${id}-fault">${fault}</p>` : nothing}
  </div>`;

export interface ListWish {
  id: string;
  label: string;
  options: readonly { value: string; text: string }[];
  chosen: string;
  choose(value: string): void;
}

/** A list to pull down. */
export const listTemplate = ({ id, label, options, chosen, choose }: ListWish) => html`
  <div class="close field">
    <label for=${id}>${label}</label>
    <select id=${id} @change=${({ target }: Event) => choose((target as HTMLSelectElement).value)}>
      ${options.map(({ value, text }) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`)}
    </select>
  </div>`;
