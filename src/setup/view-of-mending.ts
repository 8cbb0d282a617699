import { html, nothing, type TemplateResult } from 'lit';
import { headingOf, headingText, lettersOf, type Mapping, type SheetKind } from '../sheets/sheets.ts';
import type { Change } from './calls.ts';
import type { SheetView, View } from './view.ts';
import type { Group } from './groups.ts';
import type { Spoken } from './languages.ts';
import { unquoted, wordsOf, type Mend } from './mends.ts';
import { fieldSelect, marks, withTaken } from './view-of-columns.ts';

export interface MendingView {
  spoken: Spoken;
  view: View;
  /** Rows that are shown to be written anew, as lines, by the key of their group. */
  lines: ReadonlyMap<string, string>;
  /** @param key  of the group that is mended, so that who mends can go on from there */
  mend(key: string, change: Change): void;
  keep(key: string): void;
  showLine(key: string, sheet: SheetKind, row: number): void;
  addFrame(key: string, id: string): void;
  toTerms(): void;
}

type Of<How extends Mend['how']> = Extract<Mend, { how: How }>;

const typedIn = (event: Event) => {
  event.preventDefault();
  return new FormData(event.target as HTMLFormElement);
};
const textOf = (data: FormData, name: string) => String(data.get(name) ?? '').trim();

/** A field to write into: one of some words, or any text. */
const writing = (label: string, name: string, words: readonly string[] | undefined, value = '', required = true) => html`
  <label><span>${label}</span>${words
    ? html`<select name=${name} ?required=${required}><option value=""></option>${words.map((word) => html`<option value=${word}>${word}</option>`)}</select>`
    : html`<input type="text" name=${name} autocomplete="off" ?required=${required} .value=${value} />`}</label>`;

function cellsTemplate({ words, options, mayBeBlank, isSpan, better }: Of<'cells'>, group: Group, sheet: SheetKind, { spoken: { own }, view, mend, addFrame }: MendingView) {
  const { key, rows, finding } = group;
  const write = (text: string) => mend(key, { call: 'mend', sheet, column: finding.column!, rows, text });
  const frame = finding.code === 'row.no-frame' ? unquoted(finding.read) : undefined;
  const { mapping } = view.sheets[sheet]!;
  return html`
    <form class="mend" @submit=${(event: Event) => write(textOf(typedIn(event), 'text'))}>
      ${writing(own.look.instead, 'text', words, finding.weight === 'query' ? finding.read : '')}
      <button type="submit">${own.look.write(rows.length)}</button>
    </form>
    <div class="actions">
      ${options.map((text) => html`<button type="button" data-option @click=${() => write(text)}>${own.look.option(text, rows.length)}</button>`)}
      ${better ? html`<button type="button" data-better @click=${() => mend(key, { call: 'map', sheet, mapping: withTaken(mapping, finding.column! - 1, better, undefined) })}>${own.look.isColumn} ${headingText(sheet, better)}</button>` : nothing}
      ${isSpan ? html`<button type="button" data-span @click=${() => mend(key, { call: 'partYears', sheet, column: finding.column! })}>${own.look.partYears}</button>` : nothing}
      ${finding.code === 'cell.ambiguous' ? marks.map((mark) => html`<button type="button" data-decimals-by=${mark} @click=${() => mend(key, { call: 'decimals', sheet, mark })}>${own.columns.decimals} ${own.columns.marks[mark]}</button>`) : nothing}
      ${frame === undefined ? nothing : html`<button type="button" data-frame @click=${() => addFrame(key, frame)}>${own.look.addFrame(frame)}</button>`}
      ${mayBeBlank && finding.weight === 'fault' ? html`<button type="button" data-blank @click=${() => write('')}>${own.look.blank(rows.length)}</button>` : nothing}
    </div>`;
}

const fieldsTemplate = ({ fields }: Of<'fields'>, { key, rows }: Group, sheet: SheetKind, { spoken: { own }, mend }: MendingView) => html`
  <form class="mend" @submit=${(event: Event) => {
    const data = typedIn(event);
    const values = Object.fromEntries(fields.flatMap((field) => (textOf(data, field) ? [[field, textOf(data, field)]] : [])));
    if (Object.keys(values).length > 0) mend(key, { call: 'fill', sheet, rows, values });
  }}>
    ${fields.map((field) => writing(headingText(sheet, field), field, wordsOf(headingOf(sheet, field)!), '', fields.length === 1))}
    <button type="submit">${own.look.write(rows.length)}</button>
  </form>`;

function lineTemplate({ key, rows: [row] }: Group, sheet: SheetKind, { spoken: { own }, lines, mend, showLine }: MendingView) {
  const line = lines.get(key);
  if (row === undefined) return nothing;
  if (line === undefined) return html`<div class="actions"><button type="button" data-show @click=${() => showLine(key, sheet, row)}>${own.look.showRow}</button></div>`;
  return html`
    <form class="mend" @submit=${(event: Event) => mend(key, { call: 'rewrite', sheet, row, line: textOf(typedIn(event), 'text') })}>
      <label class="wide"><span>${own.look.rowLine}</span><textarea name="text" rows="3" spellcheck="false" .value=${line}></textarea></label>
      <button type="submit">${own.look.write(1)}</button>
    </form>`;
}

function unitTemplate({ units, taken }: Of<'unit'>, { key, finding: { column, heading } }: Group, sheet: SheetKind, { spoken: { own }, view, mend }: MendingView) {
  const { mapping } = view.sheets[sheet]!;
  const field = mapping[column! - 1]!.field;
  return html`
    <form class="mend" @submit=${(event: Event) => mend(key, { call: 'map', sheet, mapping: withTaken(mapping, column! - 1, field, textOf(typedIn(event), 'unit')) })}>
      <label><span>${own.look.inUnit}</span><select name="unit" aria-label="${own.look.inUnit}: ${heading}">${units.map((unit) => html`<option value=${unit} ?selected=${unit === taken}>${unit}</option>`)}</select></label>
      <button type="submit">${own.look.write(1)}</button>
    </form>`;
}

/** The column that a missing one is most likely to be: one nobody has taken whose heading is near; an id is made of what a row is called. */
function likely(field: string, { matches, mapping }: SheetView): number {
  if (field === 'id') return mapping.findIndex((taken) => taken?.field === 'name' || taken?.field === 'serial');
  return matches.findIndex(({ nearest }, index) => mapping[index] === undefined && nearest.some((near) => near.field === field));
}

function missingTemplate({ field, words }: Of<'missing'>, { key }: Group, sheet: SheetKind, { spoken: { own }, view, mend }: MendingView) {
  const table = view.sheets[sheet]!;
  const { headings, mapping, matches } = table;
  const from = likely(field, table);
  // A column that is nothing yet becomes what is missing; what is something already is copied.
  const take = (column: number) => (column > 0 && mapping[column - 1] === undefined
    ? mend(key, { call: 'map', sheet, mapping: withTaken(mapping, column - 1, field, matches[column - 1]!.unit) })
    : mend(key, { call: 'fillFrom', sheet, field, column }));
  return html`
    <form class="mend" @submit=${(event: Event) => take(Number(textOf(typedIn(event), 'column')))}>
      <label><span>${own.look.fromColumn}</span><select name="column" required><option value=""></option>
        ${field === 'id' ? html`<option value="0">${own.look.numberRows}</option>` : nothing}
        ${headings.map((heading, index) => html`<option value=${index + 1} ?selected=${index === from}>${lettersOf(index + 1)} ${heading}</option>`)}</select></label>
      <button type="submit">${own.look.write(1)}</button>
    </form>
    ${field === 'id' ? nothing : html`
      <form class="mend" @submit=${(event: Event) => mend(key, { call: 'fill', sheet, rows: undefined, values: { [field]: textOf(typedIn(event), 'text') } })}>
        ${writing(own.look.sameForAll, 'text', words)}
        <button type="submit">${own.look.write(1)}</button>
      </form>`}`;
}

/** Its nearest headings at a press, all others to choose from. */
function columnTemplate({ key, finding: { column } }: Group, sheet: SheetKind, { spoken, view, mend, keep }: MendingView) {
  const { own } = spoken;
  const table = view.sheets[sheet]!;
  const index = column! - 1;
  const { nearest, unit } = table.matches[index]!;
  const map = (_: SheetKind, mapping: Mapping) => mend(key, { call: 'map', sheet, mapping });
  return html`
    <div class="actions">
      ${nearest.map(({ field, heading }) => html`<button type="button" data-option @click=${() => map(sheet, withTaken(table.mapping, index, field, unit))}>${own.look.takeFor(heading)}</button>`)}
      <button type="button" data-keep @click=${() => keep(key)}>${own.look.leaveColumn}</button>
    </div>
    <div class="mend"><label><span>${own.look.isColumn}</span>${fieldSelect(sheet, table, index, spoken, map)}</label></div>`;
}

function byMend(mend: Mend, group: Group, sheet: SheetKind, shown: MendingView): TemplateResult | typeof nothing {
  switch (mend.how) {
    case 'cells': return cellsTemplate(mend, group, sheet, shown);
    case 'fields': return fieldsTemplate(mend, group, sheet, shown);
    case 'line': return lineTemplate(group, sheet, shown);
    case 'column': return columnTemplate(group, sheet, shown);
    case 'unit': return unitTemplate(mend, group, sheet, shown);
    case 'missing': return missingTemplate(mend, group, sheet, shown);
    case 'terms': return nothing;
  }
}

/** What can be done about a finding where it is told. */
export function mendingTemplate(group: Group, shown: MendingView) {
  const { finding, rows, mend, key } = group;
  const { own } = shown.spoken;
  if (mend?.how === 'terms') return html`<div class="actions"><button type="button" @click=${shown.toTerms}>${own.look.toTerms}</button></div>`;
  const sheet = finding.sheet as SheetKind;
  const mayKeep = finding.weight === 'query' && rows.length > 0;
  const mayDrop = finding.dropsRow === true && rows.length > 0;
  return html`
    ${mend && finding.sheet !== 'dealer' && shown.view.sheets[sheet] ? byMend(mend, group, sheet, shown) : nothing}
    ${mayKeep || mayDrop ? html`
      <div class="actions">
        ${mayKeep ? html`<button type="button" data-keep @click=${() => shown.keep(key)}>${own.look.keep}</button>` : nothing}
        ${mayDrop ? html`<button class="text" type="button" data-leave-out @click=${() => shown.mend(key, { call: 'drop', sheet, rows })}>${own.look.leaveOut(rows.length)}</button>` : nothing}
      </div>` : nothing}`;
}
