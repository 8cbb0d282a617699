import { html, nothing } from 'lit';
import type { CounterWords } from './words/words.ts';

export interface IdleView {
  own: CounterWords;
  /** Seconds left; undefined where nobody is asked. */
  left: number | undefined;
  stay(): void;
}

/** Whether anybody is still there, and how long he has to say so. */
export function idleTemplate({ own: { idle }, left, stay }: IdleView) {
  if (left === undefined) return nothing;
  const cancelled = (event: Event) => {
    event.preventDefault();
    stay();
  };
  return html`
    <dialog class="idle" aria-labelledby="idle-heading" aria-describedby="idle-explained" @cancel=${cancelled}>
      <h2 id="idle-heading">${idle.heading}</h2>
      <p id="idle-explained">${idle.explained}</p>
      <p class="left" role="timer" aria-live="off">${idle.left(left)}</p>
      <div class="actions"><button class="main" type="button" autofocus @click=${stay}>${idle.stay}</button></div>
    </dialog>`;
}
