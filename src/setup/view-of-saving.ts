import { html, nothing } from 'lit';
import { snippet, type Embedding } from '../embed/snippet.ts';
import type { Base, SheetKind } from '../sheets/sheets.ts';
import { sheetKinds, type View } from './desk.ts';
import { countsOf } from './view-of-findings.ts';
import type { Spoken } from './languages.ts';

/** Where the dealer puts things on his own site. */
export interface Places {
  folder: string;
  catalogue: string;
}

export interface SavingView {
  spoken: Spoken;
  view: View;
  places: Places;
  /** The wizard's one file in the dealer's language and its hash, where they lie beside this page. */
  script: { file: string; integrity: string } | undefined;
  tried: boolean;
  copied: boolean;
  place(places: Places): void;
  saveCatalogue(): void;
  saveTable(sheet: SheetKind): void;
  tryIt(): void;
  copy(text: string): void;
}

/** What to say and link to where the script doesn't run. */
const fallbackOf = ({ dealer }: Base): Embedding['fallback'] => [
  { text: dealer.name },
  ...(dealer.phone ? [{ text: dealer.phone, href: `tel:${dealer.phone.replaceAll(/[^+\d]/g, '')}` }] : []),
  ...(dealer.email ? [{ text: dealer.email, href: `mailto:${dealer.email}` }] : []),
];

/** The lines to paste, for a dealer and the places he named. */
export const pasted = (base: Base, { folder, catalogue }: Places, script: SavingView['script']) => snippet({
  script: `${folder.replace(/\/?$/, '/')}${script?.file ?? 'acre-to-axle.js'}`, integrity: script?.integrity,
  attributes: { catalogue, lang: base.dealer.locale.slice(0, 2) }, fallback: fallbackOf(base),
});

/** The catalogue as a file, the wizard as the buyers meet it, and the lines to paste. */
export function savingTemplate(shown: SavingView) {
  const { spoken: { own }, view: { catalogue, groups, base, sheets }, places, script, tried } = shown;
  const { save } = own;
  if (!catalogue) return html`<p>${save.notYet}</p>`;
  const [faults] = countsOf(groups);
  const lines = pasted(base, places, script);
  const typed = (key: keyof Places) => ({ target }: Event) => shown.place({ ...places, [key]: (target as HTMLInputElement).value.trim() });
  return html`
    <p>${save.ready(catalogue.machines.length, catalogue.units?.length ?? 0)}</p>
    ${faults > 0 ? html`<p class="notice">${save.withFaults(faults)}</p>` : nothing}
    <div class="actions">
      <button class="main" type="button" data-save @click=${shown.saveCatalogue}>${save.catalogue}</button>
      ${sheetKinds.map((sheet) => (sheets[sheet] ? html`<button type="button" data-save-table=${sheet} @click=${() => shown.saveTable(sheet)}>${save.table(own.sheets[sheet])}</button>` : nothing))}
    </div>
    <p class="lesser version">${save.version(catalogue.version ?? '')}</p>
    ${tried ? html`<h3>${save.preview}</h3><div class="preview"><acre-to-axle loading="eager" .catalogue=${catalogue} lang=${own.language}></acre-to-axle></div>`
    : html`<div class="actions"><button type="button" data-try @click=${shown.tryIt}>${save.tryIt}</button></div>`}
    <h3>${save.snippetHeading}</h3>
    <div class="fields">
      <label><span>${save.folder}</span><input type="text" data-place="folder" .value=${places.folder} @input=${typed('folder')} /></label>
      <label><span>${save.where}</span><input type="text" data-place="catalogue" .value=${places.catalogue} @input=${typed('catalogue')} /></label>
    </div>
    <ol>${save.steps.map((step) => html`<li>${step}</li>`)}</ol>
    <pre tabindex="0" data-snippet><code>${lines}</code></pre>
    ${script ? nothing : html`<p class="lesser">${save.noHash}</p>`}
    <div class="actions"><button type="button" data-copy @click=${() => shown.copy(lines)}>${save.copy}</button><span role="status">${shown.copied ? save.copied : ''}</span></div>
  `;
}
