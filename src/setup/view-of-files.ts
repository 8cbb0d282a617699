import { html, nothing } from 'lit';
import { sayFinding, type Finding, type Progress, type SheetKind } from '../sheets/sheets.ts';
import { sheetKinds, type View } from './view.ts';
import type { Spoken } from './languages.ts';
import { addingTemplate, type AddingView } from './view-of-adding.ts';

export interface FilesView extends AddingView {
  spoken: Spoken;
  view: View | undefined;
  progress: Progress | undefined;
  refused: readonly Finding[];
  failed: boolean;
  take(files: Iterable<File>, as?: SheetKind): void;
  demo(): void;
  stop(): void;
  template(sheet: SheetKind): void;
}

/** Who hears the page is told of the progress at these steps alone. */
const spokenStep = 25;

function progressTemplate({ spoken: { own: { files } }, progress, stop }: FilesView) {
  const percent = progress && Math.floor(((100 * progress.done) / Math.max(1, progress.of)) / spokenStep) * spokenStep;
  return html`
    <p role="status" class="unseen">${percent === undefined ? '' : files.percent(percent)}</p>
    ${progress ? html`
      <div class="progress actions">
        <label>${files.progress(progress.done, progress.of)} <progress max=${progress.of} value=${progress.done}></progress></label>
        <button type="button" @click=${stop}>${files.stop}</button>
      </div>` : nothing}`;
}

function refusedTemplate({ spoken: { own, sheets }, refused }: FilesView) {
  const mostShown = 10;
  if (refused.length === 0) return nothing;
  return html`
    <div class="notice" role="alert"><p><strong>${own.files.refused}</strong></p><ul>${refused.slice(0, mostShown).map((finding) => {
      const { of, read, expected, mend } = sayFinding(finding, sheets);
      return html`<li><bdi>${of}</bdi>: ${sheets.line(read, expected, mend)}</li>`;
    })}</ul>${refused.length > mostShown ? html`<p>${own.look.shown(1, mostShown, refused.length)}</p>` : nothing}</div>`;
}

/** The tables: where they come from, how far their reading is, and rows added by hand. */
export function filesTemplate(shown: FilesView) {
  const { spoken: { own }, view, failed, take } = shown;
  const { files } = own;
  const chosen = (as?: SheetKind) => ({ target }: Event) => {
    const input = target as HTMLInputElement;
    take([...(input.files ?? [])], as);
    input.value = '';
  };
  const over = (isOver: boolean) => (event: Event) => {
    event.preventDefault();
    (event.currentTarget as HTMLElement).classList.toggle('over', isOver);
  };
  const dropped = (event: DragEvent) => {
    over(false)(event);
    take([...(event.dataTransfer?.files ?? [])]);
  };
  return html`
    <p class="lesser">${files.private}</p>
    <div class="drop" @dragover=${over(true)} @dragleave=${over(false)} @drop=${dropped}>
      <p>${files.drop}</p>
      <div class="fields">
        ${sheetKinds.map((sheet) => html`
          <div class="close">
            <label><span>${files.choose(own.sheets[sheet])}</span><input type="file" accept=".csv,.tsv,.txt,.json,text/csv" data-sheet=${sheet} @change=${chosen(sheet)} /></label>
            <p class="lesser" data-held=${sheet}>${view?.sheets[sheet] ? files.rows(view.sheets[sheet].name, view.sheets[sheet].rows) : files.none}</p>
            <button class="text" type="button" data-template=${sheet} @click=${() => shown.template(sheet)}>${files.template}</button>
          </div>`)}
        <label><span>${files.document}</span><input type="file" accept=".json,application/json" data-document @change=${chosen()} /></label>
      </div>
      <div class="actions"><button type="button" data-demo @click=${shown.demo}>${files.demo}</button></div>
    </div>
    ${progressTemplate(shown)}
    ${refusedTemplate(shown)}
    ${failed ? html`<p class="notice" role="alert">${files.failed}</p>` : nothing}
    ${sheetKinds.map((sheet) => addingTemplate(sheet, shown))}
  `;
}
