import { html, nothing } from 'lit';
import type { Flow } from './flow.ts';
import { mostPages, type Paper, type Part, type Told } from './paper.ts';
import { toPixels } from './sizes.ts';

/** What is left of a column goes between its parts, up to this [mm]. */
const mostBetween = 2.5;

const partTemplate = ({ id, body }: Part) => html`<section class="part" data-part=${id}>${body}</section>`;

/** All of it in one column, as wide as it is on paper, to be measured. */
export const measuredTemplate = ({ direction, language, columns }: Paper, { head, parts }: Told) => html`
  <div class="page" lang=${language} dir=${direction}>
    ${partTemplate(head)}
    <div class="columns"><div class="column">${parts.map(partTemplate)}</div>${columns > 1 ? html`<div class="column"></div>` : nothing}</div>
  </div>`;

/** The pages as they are printed, each with its number. */
export function pagesTemplate({ direction, language, columns, foot }: Paper, { head, parts }: Told, { columns: flow, left }: Flow) {
  const pages = Math.max(1, Math.ceil(flow.length / columns));
  const between = (column: number) => Math.max(0, Math.min(toPixels(mostBetween), (left[column] ?? 0) / Math.max(1, (flow[column]?.length ?? 0) - 1)));
  // Through the property: a style attribute, which Lit's own directive writes at first, breaks a strict policy.
  const columnOf = (column: number) => html`<div class="column" .style=${`row-gap:${between(column)}px`}>${(flow[column] ?? []).map((each) => partTemplate(parts[each]!))}</div>`;
  return Array.from({ length: pages }, (_, page) => html`
    <div class="page" lang=${language} dir=${direction}>
      ${page === 0 ? partTemplate(head) : nothing}
      <div class="columns">${Array.from({ length: columns }, (_each, column) => columnOf(page * columns + column))}</div>
      <footer><span><bdi>${foot}</bdi></span><span>${page + 1}/${pages}</span></footer>
    </div>`);
}

export const isTooMuch = (columns: number, { columns: flow }: Flow) => flow.length > mostPages * columns;
