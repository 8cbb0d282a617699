/** The floor for a first question: an element that shows one of the same shape, and nothing else. */
import { html, LitElement } from 'lit';

declare const firstQuestion: { ask: string; hint: string; options: readonly { value: string; label: string; hint?: string }[] };

class BareQuestion extends LitElement {
  protected override render() {
    const { ask, hint, options } = firstQuestion;
    return html`
      <form @submit=${(event: Event) => event.preventDefault()}>
        <h2 id="heading">${ask}</h2>
        <p>${hint}</p>
        <fieldset aria-labelledby="heading">${options.map((option) => html`
          <label>
            <input type="checkbox" name="tasks" value=${option.value} />
            <span>${option.label}${option.hint ? html` <span class="hint">${option.hint}</span>` : ''}</span>
          </label>`)}
        </fieldset>
        <button>Continue</button>
      </form>
    `;
  }
}

customElements.define('bare-question', BareQuestion);
