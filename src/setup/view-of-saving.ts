import { html, nothing } from 'lit';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { SheetKind } from '../sheets/sheets.ts';
import { mostRows } from '../widget/usable.ts';
import { sheetKinds, type View } from './view.ts';
import { languageNames, languageTags, type Spoken } from './languages.ts';
import { pasted, policyOf, type Places, type Script } from './pasted.ts';
import { isNamed } from './view-of-dealer.ts';
import { countsOf } from './view-of-findings.ts';

export interface SavingView {
  spoken: Spoken;
  view: View | undefined;
  withoutSold: boolean;
  places: Places;
  script: Script | undefined;
  /** It, and the words of other languages that lie beside it. */
  scripts: readonly Script[];
  offered: ReadonlySet<string>;
  /** JSON of the catalogue, where it is to stand in the lines to paste. */
  inside: string | undefined;
  /** The catalogue the wizard is tried with; undefined until it is. */
  tried: CatalogueDocument | undefined;
  /** Whether the lines are in the clipboard, or marked to be copied by hand. */
  copied: 'copied' | 'marked' | undefined;
  place(places: Places): void;
  offer(tag: string, isOffered: boolean): void;
  putInside(isInside: boolean): void;
  leaveOutSold(isLeftOut: boolean): void;
  saveCatalogue(): void;
  saveTable(sheet: SheetKind): void;
  saveScript(script: Script): void;
  tryIt(): void;
  copy(text: string): void;
  saveLines(text: string): void;
}

const bytesOfAKilobyte = 1000;
/** Lines beyond that are shown in part; they are copied and saved whole. */
const mostShown = 20_000;

function catalogueTemplate({ spoken: { own }, view, withoutSold, leaveOutSold, saveCatalogue, saveTable }: SavingView) {
  const { save } = own;
  const { made, base, groups, sheets } = view!;
  const [faults] = countsOf(groups);
  const { machines, units, sold, implements: tools, version, asOf } = made!;
  const count = machines + units + tools;
  return html`
    <p>${save.ready(machines, units)}</p>
    ${faults > 0 ? html`<p class="notice">${save.withFaults(faults)}</p>` : nothing}
    ${count > mostRows ? html`<p class="notice" data-too-many>${save.tooMany(count, mostRows)}</p>` : nothing}
    ${isNamed(base) ? nothing : html`<p class="notice">${own.dealer.noName}</p>`}
    ${sold > 0 ? html`<label class="tick"><input type="checkbox" data-sold .checked=${withoutSold} @change=${({ target }: Event) => leaveOutSold((target as HTMLInputElement).checked)} /> ${save.sold(sold)}</label>` : nothing}
    <div class="actions">
      <button class="main" type="button" data-save @click=${saveCatalogue}>${save.catalogue}</button>
      ${sheetKinds.map((sheet) => (sheets[sheet] ? html`<button type="button" data-save-table=${sheet} @click=${() => saveTable(sheet)}>${save.table(own.sheets[sheet])}</button>` : nothing))}
    </div>
    <p class="lesser version">${save.version(version, asOf)}</p>`;
}

function pastingTemplate(shown: SavingView) {
  const { spoken: { own: { save } }, view, places, script, scripts, offered, inside, copied } = shown;
  const own = view!.base.dealer.locale.slice(0, 2);
  const chosen = languageTags.filter((tag) => tag === own || offered.has(tag));
  const lines = pasted(view!.base, places, script, chosen.length < languageTags.length ? chosen : undefined, inside);
  const typed = (key: keyof Places) => ({ target }: Event) => shown.place({ ...places, [key]: (target as HTMLInputElement).value.trim() });
  const way = (isInside: boolean, label: string) => html`
    <label class="tick"><input type="radio" name="way" data-way=${isInside ? 'lines' : 'files'} .checked=${(inside !== undefined) === isInside} @change=${() => shown.putInside(isInside)} /> ${label}</label>`;
  return html`
    <h3>${save.snippetHeading}</h3>
    <fieldset class="close"><legend>${save.how}</legend>${way(false, save.asFiles)}${way(true, save.asLines)}</fieldset>
    <fieldset class="close"><legend>${save.offered}</legend>${languageTags.map((tag) => html`
      <label class="tick"><input type="checkbox" data-offered=${tag} .checked=${chosen.includes(tag)} ?disabled=${tag === own} @change=${({ target }: Event) => shown.offer(tag, (target as HTMLInputElement).checked)} /> <span lang=${tag}>${languageNames[tag]}</span></label>`)}
    </fieldset>
    <div class="fields">
      <label><span>${save.folder}</span><input type="text" data-place="folder" .value=${places.folder} @input=${typed('folder')} /></label>
      ${inside === undefined ? html`<label><span>${save.where}</span><input type="text" data-place="catalogue" .value=${places.catalogue} @input=${typed('catalogue')} /></label>` : nothing}
    </div>
    ${script ? html`<div class="actions">${scripts.map((each) => html`<button type="button" data-save-script=${each.file} @click=${() => shown.saveScript(each)}>${each === script ? save.script(each.file) : save.wordsFile(each.file)}</button>`)}</div>` : html`<p class="lesser">${save.noHash}</p>`}
    <ol>${save.steps[inside === undefined ? 'files' : 'lines'].map((step) => html`<li>${step}</li>`)}</ol>
    ${inside === undefined ? nothing : html`<p class="lesser">${save.asLinesExplained(Math.ceil(new TextEncoder().encode(lines).length / bytesOfAKilobyte))}</p>`}
    <pre tabindex="0" role="region" aria-label=${save.snippetHeading} data-snippet><code>${lines.length > mostShown ? `${lines.slice(0, mostShown)} …` : lines}</code></pre>
    <div class="actions">
      <button type="button" data-copy @click=${() => shown.copy(lines)}>${save.copy}</button>
      <button type="button" data-save-lines @click=${() => shown.saveLines(lines)}>${save.saveLines}</button>
      <span role="status">${copied === 'copied' ? save.copied : copied === 'marked' && lines.length <= mostShown ? save.markedInstead : ''}</span>
    </div>
    <details><summary>${save.policy}</summary><p>${save.policyExplained}</p><pre tabindex="0" role="region" aria-label=${save.policy}><code>${policyOf(places, script)}</code></pre></details>`;
}

/** The catalogue as a file, the wizard as the buyers meet it, and the lines to paste. */
export function savingTemplate(shown: SavingView) {
  const { spoken: { own }, view, tried } = shown;
  if (!view?.made) return html`<p>${own.save.notYet}</p>`;
  return html`
    ${catalogueTemplate(shown)}
    ${tried ? html`<h3>${own.save.preview}</h3><div class="preview"><acre-to-axle loading="eager" .catalogue=${tried} lang=${own.language}></acre-to-axle></div>`
    : html`<div class="actions"><button type="button" data-try @click=${shown.tryIt}>${own.save.tryIt}</button></div>`}
    ${pastingTemplate(shown)}`;
}
