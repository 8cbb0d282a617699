import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import { sayRefusal } from '../../handoff/refusal.ts';
import type { CameraState } from './camera.ts';
import type { Opening, Opened } from './opening.ts';
import type { OpeningWords } from './words/words.ts';

export interface OpeningView {
  opening: Opening;
  words: OpeningWords;
}

/** What the camera sees, or why there is nothing to see. */
function pictureTemplate(state: CameraState, { opening, words: { camera: words } }: OpeningView) {
  if (state.is === 'starting') return html`<p role="status">${words.starting}</p>`;
  if (state.is === 'on') {
    return html`
      <p>${words.hint}</p>
      <video class="camera" autoplay playsinline .muted=${true} .srcObject=${state.stream} aria-label=${words.picture} ${ref(opening.camera.seeThrough)}></video>
      <p role="status">${opening.seen ? words.seen[opening.seen] : ''}</p>`;
  }
  return state.is === 'off' && state.trouble ? html`<p class="fault" role="alert">${words.trouble[state.trouble]}</p>` : nothing;
}

/** One button in all states, so that it keeps the focus. */
function cameraTemplate(view: OpeningView) {
  const { opening, words: { camera: words } } = view;
  const { state } = opening.camera;
  if (state.is === 'unknown') return nothing;
  if (state.is === 'absent') return html`<p class="hint">${words.absent[state.why]}</p>`;
  const isOff = state.is === 'off';
  const press = () => (isOff ? opening.scan() : opening.stopScanning());
  return html`
    ${pictureTemplate(state, view)}
    <div class="actions"><button class=${isOff ? 'main' : ''} type="button" @click=${press}>${isOff ? words.start : words.stop}</button></div>`;
}

function faultTemplate({ opening: { refused }, words }: OpeningView) {
  if (!refused) return nothing;
  const { what, why, mend } = sayRefusal(refused, words);
  return html`<p class="fault" id="opening-fault">${what} ${why} ${mend}</p>`;
}

/** Staff open a buyer's answers: by the camera where there is one that reads codes, by a link or a typed line in one field. */
export function openingTemplate(view: OpeningView) {
  const { opening, words } = view;
  const submitted = (event: Event) => {
    event.preventDefault();
    if (!opening.open()) (event.currentTarget as HTMLFormElement).querySelector('input')!.focus();
  };
  return html`
    <section class="opening stack" aria-labelledby="opening-heading">
      <div class="close"><h2 id="opening-heading" tabindex="-1">${words.heading}</h2><p>${words.explained}</p></div>
      <div class="close">${cameraTemplate(view)}</div>
      <form class="close" novalidate @submit=${submitted}>
        <div class="close field ${opening.refused ? 'wrong' : ''}">
          <label for="opening-field">${words.field.label}</label>
          <p class="hint" id="opening-hint">${words.field.hint}</p>
          ${faultTemplate(view)}
          <input type="text" id="opening-field" autocomplete="off" autocapitalize="characters" spellcheck="false" dir="ltr" .value=${live(opening.text)}
            aria-describedby="opening-hint${opening.refused ? ' opening-fault' : ''}" aria-invalid=${opening.refused ? 'true' : nothing}
            @input=${({ target }: Event) => opening.type((target as HTMLInputElement).value)} />
        </div>
        <div class="actions"><button class=${opening.camera.state.is === 'absent' ? 'main' : ''} type="submit">${words.field.open}</button></div>
      </form>
    </section>`;
}

/**
 * What is to be asked for, because no link carries it; undefined where nothing is.
 *
 * @param list  joins things to a sentence's list, in the language of the words
 */
export const sayNotCarried = ({ notCarried }: Opened, { kept, ask }: OpeningWords, list: (things: readonly string[]) => string) =>
  (notCarried.length > 0 ? ask(list(notCarried.map((each) => kept[each]))) : undefined);
