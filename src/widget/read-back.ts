import { html, nothing } from 'lit';
import type { QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Skip } from '../guide/skip.ts';
import type { Voice } from '../reasons/say.ts';
import { beforeSaid, saidOf } from './say-answer.ts';

export interface ReadBackView {
  answers: AnswersDocument;
  voice: Voice;
  /** Questions on the way, in order, to be read back and changed. */
  path: readonly QuestionId[];
  /** Those that were proven to need no asking, and why. */
  skipped: readonly Skip[];
  change(question: QuestionId): void;
}

/** All that was asked with what was answered, each with a way to change it. */
export function readBackTemplate({ answers, path, skipped, voice, change }: ReadBackView) {
  const { words } = voice;
  const whyNot = (id: QuestionId) => {
    const skip = skipped.find(({ question }) => question === id);
    return skip && words.wizard.skipped[skip.because](words.list(skip.machines.map((machine) => voice.nameOf(machine))));
  };
  const answered = (id: QuestionId) => {
    const said = saidOf(id, answers, voice);
    if (said.length === 0) return html`<span class="lesser">${whyNot(id) ?? words.result.notSaid}</span>`;
    return said.map(({ label, text }) => html`<p>${label ? html`<span class="lesser">${beforeSaid(label, voice)}</span>` : nothing}<span>${text}</span></p>`);
  };
  return html`
    <dl class="answers">${path.map((id) => html`
      <div>
        <dt>${words.questions[id].ask}</dt>
        <dd>${answered(id)}</dd>
        <dd><button class="text" type="button" data-change=${id} @click=${() => change(id)} aria-label=${words.result.changeHidden(words.questions[id].ask)}>${words.result.change}</button></dd>
      </div>`)}</dl>
  `;
}
