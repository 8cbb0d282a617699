import { html } from 'lit';
import type { Unit } from '../../catalogue/catalogue.ts';
import { askingContext, type AskingContext, type NoContext } from '../../lot/asking/context.ts';
import { sayAsking } from '../../lot/asking/say.ts';
import { afterPaint } from '../after-paint.ts';
import type { UnitView } from './view.ts';

/** What comes of it hangs on the catalogue alone; undefined while it is drawn. */
const known = new WeakMap<Unit, AskingContext | NoContext | undefined>();

/** Drawing prices anew takes a while: the page says so before. */
async function draw({ inSi }: UnitView, unit: Unit, changed: () => void) {
  known.set(unit, undefined);
  await afterPaint();
  known.set(unit, askingContext(inSi, unit));
  changed();
}

/** A unit's asking price beside the dealer's others. */
export function askingTemplate(view: UnitView, unit: Unit, changed: () => void) {
  const { voice, words: { lot } } = view;
  if (!known.has(unit)) draw(view, unit, changed);
  const context = known.get(unit);
  return html`<div class="close" part="asking" role="status">${context ? sayAsking(context, { voice, lot }).map((each) => html`<p>${each}</p>`) : html`<p>${voice.words.wizard.loading}</p>`}</div>`;
}
