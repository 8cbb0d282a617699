import { html } from 'lit';
import type { Unit } from '../../catalogue/catalogue.ts';
import { askingContext, type AskingContext, type NoContext } from '../../lot/asking/context.ts';
import { sayAsking } from '../../lot/asking/say.ts';
import type { UnitView } from './view.ts';

/** Drawing prices anew takes a while, and what comes of it hangs on the catalogue alone. */
const known = new WeakMap<Unit, AskingContext | NoContext>();

/** A unit's asking price beside the dealer's others. */
export function askingTemplate({ inSi, voice, words: { lot } }: UnitView, unit: Unit) {
  const context = known.get(unit) ?? askingContext(inSi, unit);
  known.set(unit, context);
  const said = sayAsking(context, { voice, lot });
  return html`<div class="close" part="asking">${said.map((each) => html`<p>${each}</p>`)}</div>`;
}
