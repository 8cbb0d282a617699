import { html } from 'lit';
import { readBackTemplate, type ReadBackView } from './read-back.ts';

export interface CheckView extends ReadBackView {
  checked(): void;
  back(): void;
}

/** The page before the result: all that was answered, to be looked over and put right. */
export function checkTemplate(view: CheckView) {
  const { result: { check }, wizard } = view.voice.words;
  return html`
    <div class="stack" part="check">
      <div class="close">
        <h2 id="heading" tabindex="-1">${check.title}</h2>
        <p>${check.explained}</p>
      </div>
      ${readBackTemplate(view)}
      <div class="actions"><button class="main" type="button" part="continue" @click=${view.checked}>${check.next}</button></div>
      <div class="actions apart"><button class="text" type="button" part="back" @click=${view.back}>${wizard.back}</button></div>
    </div>
  `;
}
