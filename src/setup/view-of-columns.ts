import { html, nothing } from 'lit';
import { headingsOf, headingText, lettersOf, type Mapping, type SheetKind } from '../sheets/sheets.ts';
import { sheetKinds, type SheetView, type View } from './desk.ts';
import type { Spoken } from './languages.ts';

export interface ColumnsView {
  spoken: Spoken;
  view: View;
  /** Tables whose known columns are unfolded: most dealers never look at them, and there may be hundreds. */
  unfolded: ReadonlySet<SheetKind>;
  unfold(sheet: SheetKind, open: boolean): void;
  map(sheet: SheetKind, mapping: Mapping): void;
}

/** All fields a column may be taken for, those it is near to first; of things there may be several of, the numbers already there too. */
function choices(sheet: SheetKind, near: readonly string[], taken: string | undefined): string[] {
  const documented = headingsOf(sheet).map(({ field }) => field.replace('[]', '[1]'));
  return [...new Set([...(taken ? [taken] : []), ...near, ...documented])];
}

function rowTemplate(sheet: SheetKind, table: SheetView, index: number, { spoken: { own }, map }: ColumnsView) {
  const { columns } = own;
  const { heading, sure, nearest, unit } = table.matches[index]!;
  const taken = table.mapping[index]?.field;
  const changed = ({ target }: Event) => {
    const field = (target as HTMLSelectElement).value;
    map(sheet, table.mapping.map((each, at) => (at === index ? (field ? { field, ...(unit && { unit }) } : undefined) : each)));
  };
  return html`
    <tr>
      <th scope="row"><span class="lesser">${lettersOf(index + 1)}</span> <bdi>${heading}</bdi></th>
      <td><bdi>${table.samples[index]!.join(' · ')}</bdi></td>
      <td>
        <select aria-label="${columns.takenFor}: ${heading}" data-column="${sheet} ${index + 1}" @change=${changed}>
          <option value="" ?selected=${taken === undefined}>${columns.leftOut}</option>
          ${choices(sheet, nearest.map(({ field }) => field), taken).map((field) => html`<option value=${field} ?selected=${field === taken}>${headingText(sheet, field)}</option>`)}
        </select>
      </td>
      <td>${taken === undefined ? columns.sure.none : columns.sure[sure]}</td>
    </tr>`;
}

function tableTemplate(sheet: SheetKind, shown: ColumnsView) {
  const table = shown.view.sheets[sheet];
  const { own } = shown.spoken;
  if (!table || table.headings.length === 0) return nothing;
  const { columns } = own;
  const all = table.headings.map((_, index) => index);
  const isKnown = (index: number) => ['exact', 'same'].includes(table.matches[index]!.sure) && table.mapping[index] !== undefined;
  const rows = (indices: readonly number[]) => html`
    <div class="scroll" tabindex="0" role="region" aria-label=${own.sheets[sheet]}>
      <table>
        <thead><tr><th scope="col">${columns.yours}</th><th scope="col">${columns.sample}</th><th scope="col">${columns.takenFor}</th><th scope="col"></th></tr></thead>
        <tbody>${indices.map((index) => rowTemplate(sheet, table, index, shown))}</tbody>
      </table>
    </div>`;
  const known = all.filter(isKnown);
  const others = all.filter((index) => !isKnown(index));
  return html`
    <h3>${own.sheets[sheet]}</h3>
    ${others.length > 0 ? rows(others) : nothing}
    ${known.length > 0 ? html`
      <details .open=${shown.unfolded.has(sheet)} @toggle=${(event: Event) => shown.unfold(sheet, (event.target as HTMLDetailsElement).open)}>
        <summary>${columns.settled(known.length)}</summary>${shown.unfolded.has(sheet) ? rows(known) : nothing}
      </details>` : nothing}`;
}

/** What each column is taken for; those that aren't known for certain first. */
export const columnsTemplate = (shown: ColumnsView) => html`
  <p>${shown.spoken.own.columns.explained}</p>
  ${sheetKinds.map((sheet) => tableTemplate(sheet, shown))}`;
