import { html, nothing } from 'lit';
import { headingsOf, sayFinding, type Finding, type SheetKind } from '../sheets/sheets.ts';
import type { Progress } from './colleague.ts';
import { sheetKinds, type View } from './desk.ts';
import type { Spoken } from './languages.ts';

export interface FilesView {
  spoken: Spoken;
  view: View | undefined;
  progress: Progress | undefined;
  refused: readonly Finding[];
  failed: boolean;
  take(files: Iterable<File>, as?: SheetKind): void;
  demo(): void;
  stop(): void;
  add(sheet: SheetKind, form: HTMLFormElement): void;
  template(sheet: SheetKind): void;
}

/** Fields asked for first where a row is added by hand: those no row can do without, and those most reasons hang on. */
const first: Readonly<Record<SheetKind, readonly string[]>> = {
  machines: ['mass', 'tyres[].widthOverRear', 'tyres[].type', 'engine.power', 'engine.ptoPower', 'hitch.lift610', 'loaders[].ratings.pins', 'loaders[].ratings.ahead500', 'loaders[].fullHeight'],
  units: ['year', 'hours', 'price', 'fitted.loader', 'rops.kind', 'seatBelt', 'ptoShield', 'recallOpen'],
};

const withNumber = (field: string) => field.replace('[]', '[1]');

function addTemplate(sheet: SheetKind, { spoken: { own }, add }: FilesView) {
  const headings = headingsOf(sheet).filter(({ field, needed }) => needed || first[sheet].includes(field));
  const submitted = (event: Event) => {
    event.preventDefault();
    add(sheet, event.target as HTMLFormElement);
  };
  return html`
    <details>
      <summary>${own.files.addHeading(own.sheets[sheet])}</summary>
      <form class="fields" @submit=${submitted}>
        <p class="lesser">${own.files.addExplained}</p>
        ${headings.map(({ field, heading, example, needed }) => html`
          <label><span>${heading}</span><input type="text" name=${withNumber(field)} placeholder=${example} autocomplete="off" ?required=${needed} /></label>`)}
        <div class="actions"><button type="submit">${own.files.add}</button></div>
      </form>
    </details>`;
}

/** The tables: where they come from, how far their reading is, and rows added by hand. */
export function filesTemplate(shown: FilesView) {
  const { spoken: { own, sheets }, view, progress, refused, failed, take } = shown;
  const { files } = own;
  const chosen = (as?: SheetKind) => ({ target }: Event) => {
    const input = target as HTMLInputElement;
    take([...(input.files ?? [])], as);
    input.value = '';
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    take([...(event.dataTransfer?.files ?? [])]);
  };
  return html`
    <p class="lesser">${files.private}</p>
    <div class="drop" @dragover=${(event: Event) => event.preventDefault()} @drop=${dropped}>
      <p>${files.drop}</p>
      <div class="fields">
        ${sheetKinds.map((sheet) => html`
          <div>
            <label><span>${files.choose(own.sheets[sheet])}</span><input type="file" accept=".csv,.tsv,.txt,text/csv" data-sheet=${sheet} @change=${chosen(sheet)} /></label>
            <p class="lesser">${view?.sheets[sheet] ? files.rows(view.sheets[sheet].name, view.sheets[sheet].rows) : files.none}</p>
            <button class="text" type="button" @click=${() => shown.template(sheet)}>${files.template}</button>
          </div>`)}
        <label><span>${files.document}</span><input type="file" accept=".json,application/json" data-document @change=${chosen()} /></label>
      </div>
      <div class="actions"><button type="button" data-demo @click=${shown.demo}>${files.demo}</button></div>
    </div>
    <div role="status" class="progress">${progress ? html`
      <label>${files.progress(progress.done, progress.of)} <progress max=${progress.of} value=${progress.done}></progress></label>
      <button type="button" @click=${shown.stop}>${files.stop}</button>` : nothing}</div>
    ${refused.length > 0 ? html`
      <div class="notice" role="alert"><p><strong>${files.refused}</strong></p><ul>${refused.slice(0, 10).map((finding) => {
        const { of, read, expected, mend } = sayFinding(finding, sheets);
        return html`<li><bdi>${of}</bdi>: ${sheets.line(read, expected, mend)}</li>`;
      })}</ul></div>` : nothing}
    ${failed ? html`<p class="notice" role="alert">${files.failed}</p>` : nothing}
    ${sheetKinds.map((sheet) => addTemplate(sheet, shown))}
  `;
}
