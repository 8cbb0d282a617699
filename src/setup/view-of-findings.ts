import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { lettersOf, sayFinding, sayUnknown, type SheetKind } from '../sheets/sheets.ts';
import type { View } from './desk.ts';
import type { Group } from './groups.ts';
import type { Spoken } from './languages.ts';

export interface FindingsView {
  spoken: Spoken;
  view: View;
  /** Which page of them is shown, from 0. */
  page: number;
  turn(page: number): void;
  mend(sheet: SheetKind, column: number, rows: readonly number[], text: string): void;
  undo(): void;
}

/** Groups on one page, and cells named of one group. */
const [onAPage, cellsNamed] = [50, 12];

export const countsOf = (groups: readonly Group[]) => {
  const of = (weight: string) => groups.filter(({ finding }) => finding.weight === weight).reduce((sum, { rows }) => sum + Math.max(1, rows.length), 0);
  return [of('fault'), of('query'), of('notice')] as const;
};

function mendTemplate({ finding, rows }: Group, { spoken: { own }, mend }: FindingsView) {
  const { sheet, column } = finding;
  const submitted = (event: Event) => {
    event.preventDefault();
    mend(sheet as SheetKind, column!, rows, (new FormData(event.target as HTMLFormElement).get('text') as string).trim());
  };
  return html`
    <form class="mend" @submit=${submitted}>
      <label><span>${own.look.instead}</span><input type="text" name="text" autocomplete="off" .value=${finding.weight === 'fault' ? '' : (finding.read ?? '')} /></label>
      <button type="submit">${own.look.write(rows.length)}</button>
    </form>`;
}

function groupTemplate(group: Group, shown: FindingsView) {
  const { spoken: { own, sheets } } = shown;
  const { finding, rows, inCells } = group;
  const { of, cell, read, expected, mend } = sayFinding(finding, sheets);
  const named = inCells ? rows.slice(0, cellsNamed).map((row) => `${lettersOf(finding.column!)}${row}`).join(', ') : cell;
  return html`
    <li class="finding of-${finding.weight}" data-code=${finding.code}>
      <p><span class="tag">${own.look.weights[finding.weight]}</span> <strong><bdi>${of}</bdi></strong>
        <span class="lesser">${finding.sheet === 'dealer' ? '' : `${own.sheets[finding.sheet]} `}${own.look.cells(named, inCells ? Math.max(0, rows.length - cellsNamed) : 0)}</span></p>
      <dl>
        <div><dt>${own.look.found}</dt><dd><bdi>${read}</bdi></dd></div>
        <div><dt>${own.look.expected}</dt><dd><bdi>${expected}</bdi></dd></div>
        <div><dt>${own.look.mend}</dt><dd>${mend}</dd></div>
      </dl>
      ${inCells && finding.weight !== 'notice' ? keyed(`${finding.sheet} ${finding.column} ${finding.code} ${finding.read}`, mendTemplate(group, shown)) : nothing}
    </li>`;
}

/** All that was found, each mended where it is told, and what is unknown. */
export function findingsTemplate(shown: FindingsView) {
  const { spoken: { own, sheets }, view: { groups, unknowns, canUndo }, page, turn } = shown;
  const { look } = own;
  const from = Math.min(page * onAPage, Math.max(0, groups.length - 1));
  const here = groups.slice(from, from + onAPage);
  return html`
    <p role="status"><strong>${groups.length === 0 ? look.nothing : look.counts(...countsOf(groups))}</strong></p>
    ${canUndo ? html`<div class="actions"><button type="button" data-undo @click=${shown.undo}>${look.undo}</button></div>` : nothing}
    <ul class="findings" role="list">${here.map((group) => groupTemplate(group, shown))}</ul>
    ${groups.length > onAPage ? html`
      <div class="actions">
        <button type="button" ?disabled=${from === 0} @click=${() => turn(page - 1)}>${look.earlier}</button>
        <span>${look.shown(from + 1, from + here.length, groups.length)}</span>
        <button type="button" ?disabled=${from + onAPage >= groups.length} @click=${() => turn(page + 1)}>${look.later}</button>
      </div>` : nothing}
    ${unknowns.length > 0 ? html`<h3>${look.unknownHeading}</h3><ul>${unknowns.map((unknown) => html`<li>${sayUnknown(unknown, sheets)}</li>`)}</ul>` : nothing}
  `;
}
