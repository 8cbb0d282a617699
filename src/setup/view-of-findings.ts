import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { lettersOf, sayFinding, sayUnknown } from '../sheets/sheets.ts';
import type { Group } from './groups.ts';
import { mendingTemplate, type MendingView } from './view-of-mending.ts';

export interface FindingsView extends MendingView {
  /** Keys of what the dealer said is right. */
  kept: ReadonlySet<string>;
  /** Which page of them is shown, from 0. */
  page: number;
  turn(page: number): void;
  undo(): void;
}

/** Groups on one page, and cells named of one group. */
const [onAPage, cellsNamed] = [50, 12];

/** How much there is to mend, to look at again and only to know; what is kept as it is counts as neither. */
export const countsOf = (groups: readonly Group[], kept: ReadonlySet<string> = new Set()) => {
  const of = (weight: string) => groups.filter(({ key, finding }) => finding.weight === weight && !kept.has(key)).reduce((sum, { rows }) => sum + Math.max(1, rows.length), 0);
  return [of('fault'), of('query'), of('notice')] as const;
};

function placeOf({ finding, rows }: Group, own: FindingsView['spoken']['own'], cell: string) {
  if (finding.sheet === 'dealer') return own.look.cells(cell, 0);
  const letters = finding.column === undefined ? '' : lettersOf(finding.column);
  const named = rows.length > 0 ? rows.slice(0, cellsNamed).map((row) => `${letters}${row}`).join(', ') : cell;
  return `${own.sheets[finding.sheet]} ${own.look.cells(named, Math.max(0, rows.length - cellsNamed))}`;
}

/** What a finding is of: a column by its heading, the one that is missing too; else the table. */
function nameOf({ finding }: Group, own: FindingsView['spoken']['own'], of: string) {
  if (finding.code === 'catalogue.terms') return own.dealer.termsHeading;
  if (finding.code === 'column.missing') return finding.facts.heading;
  return of === finding.sheet && finding.sheet !== 'dealer' ? own.sheets[finding.sheet] : of;
}

function groupTemplate(group: Group, shown: FindingsView) {
  const { spoken: { own, sheets } } = shown;
  const { finding, key } = group;
  const { of, cell, read, expected, mend } = sayFinding(finding, sheets);
  return html`
    <li class="finding of-${finding.weight}" data-code=${finding.code} data-key=${key} tabindex="-1">
      <p><span class="tag">${own.look.weights[finding.weight]}</span> <strong><bdi>${nameOf(group, own, of)}</bdi></strong> <span class="lesser">${placeOf(group, own, cell)}</span></p>
      <dl>
        <div><dt>${own.look.found}</dt><dd><bdi>${read}</bdi></dd></div>
        <div><dt>${own.look.expected}</dt><dd><bdi>${expected}</bdi></dd></div>
        <div><dt>${own.look.mend}</dt><dd>${mend}</dd></div>
      </dl>
      ${keyed(key, mendingTemplate(group, shown))}
    </li>`;
}

function listTemplate(groups: readonly Group[], shown: FindingsView) {
  const { spoken: { own: { look } }, page, turn } = shown;
  const last = Math.max(0, Math.ceil(groups.length / onAPage) - 1);
  const now = Math.min(page, last);
  const here = groups.slice(now * onAPage, (now + 1) * onAPage);
  return html`
    <ul class="findings" role="list">${here.map((group) => groupTemplate(group, shown))}</ul>
    ${last > 0 ? html`
      <div class="actions">
        <button type="button" data-earlier ?disabled=${now === 0} @click=${() => turn(now - 1)}>${look.earlier}</button>
        <span>${look.shown(now * onAPage + 1, now * onAPage + here.length, groups.length)}</span>
        <button type="button" data-later ?disabled=${now === last} @click=${() => turn(now + 1)}>${look.later}</button>
      </div>` : nothing}`;
}

/** All that was found, each mended where it is told, and what is unknown. */
export function findingsTemplate(shown: FindingsView) {
  const { spoken: { own, sheets }, view: { groups, unknowns, canUndo }, kept } = shown;
  const { look } = own;
  const open = groups.filter(({ key, finding }) => finding.weight !== 'notice' && !kept.has(key));
  const notices = groups.filter(({ finding }) => finding.weight === 'notice');
  const counts = countsOf(groups, kept);
  return html`
    <p role="status"><strong>${open.length === 0 && notices.length === 0 ? look.nothing : look.counts(...counts)}</strong></p>
    ${kept.size > 0 ? html`<p class="lesser">${look.kept(kept.size)}</p>` : nothing}
    ${canUndo ? html`<div class="actions"><button type="button" data-undo @click=${shown.undo}>${look.undo}</button></div>` : nothing}
    ${listTemplate(open, shown)}
    ${notices.length > 0 ? html`<details data-notices><summary>${look.notices(counts[2])}</summary><ul class="findings" role="list">${notices.slice(0, onAPage).map((group) => groupTemplate(group, shown))}</ul></details>` : nothing}
    ${unknowns.length > 0 ? html`<h3>${look.unknownHeading}</h3><ul>${unknowns.map((unknown) => html`<li>${sayUnknown(unknown, sheets)}</li>`)}</ul>` : nothing}
  `;
}
