import { html, nothing } from 'lit';
import type { QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Move } from '../reasons/moves.ts';
import type { Voice } from '../reasons/say.ts';
import { steerIds, type SteerId } from '../reasons/steers.ts';
import { sayAnswer } from './say-answer.ts';

/** What a steer did: nothing, or one answer changed and what moved by it. */
export type Steered = { to: SteerId } | { to: SteerId; question: QuestionId; moves: readonly Move[] };

export interface SteersView {
  steered: Steered | undefined;
  answers: AnswersDocument;
  /** What was said before the steer. */
  unsteered: AnswersDocument | undefined;
  voice: Voice;
  steer(to: SteerId): void;
  undoSteer(): void;
}

function outcomeTemplate(steered: Steered, { answers, unsteered, voice, undoSteer }: SteersView) {
  const { words, nameOf } = voice;
  const { steers, notSaid } = words.result;
  if (!('moves' in steered)) return html`<p>${steers.none[steered.to]}</p>`;
  const said = (by: AnswersDocument | undefined) => (by && sayAnswer(steered.question, by, voice)) ?? notSaid;
  return html`
    <p>${steers.changed(words.questions[steered.question].ask, said(answers), said(unsteered))}</p>
    <ul class="plain">${steered.moves.map(({ machine, from, to }) => html`<li>${steers.moved(nameOf(machine), steers.spot(to), steers.spot(from))}</li>`)}</ul>
    <p><button class="text" type="button" @click=${undoSteer}>${steers.undo}</button></p>
  `;
}

/** Buttons that ask for another first machine, and what the last one did. */
export function steersTemplate(view: SteersView) {
  const { steers } = view.voice.words.result;
  return html`
    <section class="close steers" part="steers">
      <h3>${steers.heading}</h3>
      <p>${steers.explained}</p>
      <div class="actions">${steerIds.map((to) => html`<button type="button" @click=${() => view.steer(to)}>${steers.to[to]}</button>`)}</div>
      <div class="close" role="status">${view.steered ? outcomeTemplate(view.steered, view) : nothing}</div>
    </section>
  `;
}
