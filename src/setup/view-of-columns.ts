import { html, nothing } from 'lit';
import { headingOf, headingText, isSure, lettersOf, type Mapping, type SheetKind } from '../sheets/sheets.ts';
import { unitsOf } from '../units/quantity.ts';
import { choicesOf } from './choices.ts';
import { sheetKinds, type SheetView, type View } from './view.ts';
import type { Spoken } from './languages.ts';

export interface ColumnsView {
  spoken: Spoken;
  view: View;
  /** Tables whose known columns are unfolded: most dealers never look at them, and there may be hundreds. */
  unfolded: ReadonlySet<SheetKind>;
  /** Known columns that are being changed, as `units 4`. */
  changing: ReadonlySet<string>;
  unfold(sheet: SheetKind, open: boolean): void;
  change(column: string): void;
  map(sheet: SheetKind, mapping: Mapping): void;
  part(sheet: SheetKind, separator: string): void;
  decimals(sheet: SheetKind, mark: '.' | ','): void;
  swap(sheet: SheetKind): void;
}

const separators = [',', ';', '\t', '|'] as const;
/** What may set off decimals. */
export const marks = ['.', ','] as const;

/** Whether a column is known for certain and taken for that. */
export const isKnown = ({ matches, mapping }: SheetView, index: number) => isSure(matches[index]!) && mapping[index] !== undefined;

/** Columns that nobody has said anything of yet. */
export const openColumns = (table: SheetView | undefined) => (table?.mapping ?? []).filter((taken, index) => taken === undefined && !isKnown(table!, index)).length;

/** The units that bare numbers of a field may be in. */
function unitsFor(sheet: SheetKind, field: string | undefined): readonly string[] {
  const takes = field === undefined ? undefined : headingOf(sheet, field)?.takes;
  return takes?.as === 'amount' ? unitsOf(takes.of) : [];
}

export const withTaken = (mapping: Mapping, index: number, field: string, unit: string | undefined): Mapping =>
  mapping.map((each, at) => (at === index ? (field ? { field, ...(unit && { unit }) } : undefined) : each));

/** The choice of what a column is. */
export function fieldSelect(sheet: SheetKind, { mapping, matches, headings }: SheetView, index: number, { own }: Spoken, map: ColumnsView['map']) {
  const taken = mapping[index]?.field;
  const { nearest, unit } = matches[index]!;
  return html`
    <select aria-label="${own.columns.takenFor}: ${headings[index]}" data-column="${sheet} ${index + 1}" @change=${({ target }: Event) => map(sheet, withTaken(mapping, index, (target as HTMLSelectElement).value, unit))}>
      <option value="" ?selected=${taken === undefined}>${own.columns.leftOut}</option>
      ${choicesOf(sheet, mapping, nearest.map(({ field }) => field)).map(({ field, heading }) => html`<option value=${field} ?selected=${field === taken}>${heading}</option>`)}
    </select>`;
}

function rowTemplate(sheet: SheetKind, table: SheetView, index: number, { spoken, changing, change, map }: ColumnsView) {
  const { columns } = spoken.own;
  const { heading, sure } = table.matches[index]!;
  const { field: taken, unit } = table.mapping[index] ?? {};
  const units = unitsFor(sheet, taken);
  const name = `${sheet} ${index + 1}`;
  return html`
    <tr>
      <th scope="row"><span class="lesser">${lettersOf(index + 1)}</span> <bdi>${heading}</bdi></th>
      <td><bdi>${table.samples[index]!.join(' · ')}</bdi></td>
      <td>${isKnown(table, index) && !changing.has(name)
    ? html`${headingText(sheet, taken!)} <button class="text" type="button" data-change=${name} aria-label="${columns.change}: ${heading}" @click=${() => change(name)}>${columns.change}</button>`
    : fieldSelect(sheet, table, index, spoken, map)}</td>
      <td>${units.length > 0 ? html`
        <select aria-label="${columns.numbersIn}: ${heading}" data-unit=${name} @change=${({ target }: Event) => map(sheet, withTaken(table.mapping, index, taken!, (target as HTMLSelectElement).value))}>
          <option value="" ?selected=${unit === undefined}>${columns.numbersInUsual}</option>
          ${units.map((each) => html`<option value=${each} ?selected=${each === unit}>${each}</option>`)}
        </select>` : nothing}</td>
      <td>${taken === undefined ? columns.sure.none : columns.sure[sure]}</td>
    </tr>`;
}

function writtenTemplate(sheet: SheetKind, { dialect, isText }: SheetView, { spoken: { own }, part, decimals, swap }: ColumnsView) {
  const { columns } = own;
  if (!isText) return nothing;
  const other = sheet === 'machines' ? 'units' : 'machines';
  return html`
    <div class="fields">
      <label><span>${columns.between}</span>
        <select data-between=${sheet} @change=${({ target }: Event) => part(sheet, (target as HTMLSelectElement).value)}>
          ${separators.map((each) => html`<option value=${each} ?selected=${each === dialect.separator}>${columns.separators[each]}</option>`)}
        </select>
        <span class="lesser">${columns.reparted}</span></label>
      <label><span>${columns.decimals}</span>
        <select data-decimals=${sheet} @change=${({ target }: Event) => decimals(sheet, (target as HTMLSelectElement).value as '.' | ',')}>
          ${marks.map((each) => html`<option value=${each} ?selected=${each === dialect.decimalMark}>${columns.marks[each]}</option>`)}
        </select></label>
      <div><button class="text" type="button" data-swap=${sheet} @click=${() => swap(sheet)}>${columns.swap(own.sheets[other])}</button></div>
    </div>`;
}

function tableTemplate(sheet: SheetKind, shown: ColumnsView) {
  const table = shown.view.sheets[sheet];
  const { own } = shown.spoken;
  if (!table || table.headings.length === 0) return nothing;
  const { columns } = own;
  const all = table.headings.map((_, index) => index);
  const rows = (indices: readonly number[], name: string) => html`
    <div class="scroll" tabindex="0" role="region" aria-label=${name}>
      <table>
        <thead><tr>${[columns.yours, columns.sample, columns.takenFor, columns.numbersIn].map((heading) => html`<th scope="col">${heading}</th>`)}<td></td></tr></thead>
        <tbody>${indices.map((index) => rowTemplate(sheet, table, index, shown))}</tbody>
      </table>
    </div>`;
  const known = all.filter((index) => isKnown(table, index));
  const others = all.filter((index) => !isKnown(table, index));
  return html`
    <h3>${own.sheets[sheet]}</h3>
    ${writtenTemplate(sheet, table, shown)}
    ${others.length > 0 ? rows(others, own.sheets[sheet]) : nothing}
    ${known.length > 0 ? html`
      <details .open=${shown.unfolded.has(sheet)} @toggle=${(event: Event) => shown.unfold(sheet, (event.target as HTMLDetailsElement).open)}>
        <summary>${columns.settled(known.length)}</summary>${shown.unfolded.has(sheet) ? rows(known, `${own.sheets[sheet]}: ${columns.settled(known.length)}`) : nothing}
      </details>` : nothing}`;
}

/** How each table is written, and what each column is taken for; those that aren't known for certain first. */
export const columnsTemplate = (shown: ColumnsView) => html`
  <p>${shown.spoken.own.columns.explained}</p>
  ${sheetKinds.map((sheet) => tableTemplate(sheet, shown))}`;
