import { html, nothing } from 'lit';
import { criteria, type Criterion } from '../answers/names.ts';
import type { Voice } from '../reasons/say.ts';
import type { Entry } from '../reasons/schema.ts';
import { sayPoints } from './say-points.ts';

/** Shares of a bar from which its number fits into a part of it. */
const numbered = 0.05;

const pointsOf = ({ contributions }: Entry, criterion: Criterion) => contributions[criterion]?.points ?? 0;

/**
 * What each machine earns and what for, as bars of parts that are told apart by number and pattern, not by
 * colour alone; and the same as a table.
 */
export function scoreChartTemplate(entries: readonly Entry[], { words, reader, nameOf }: Voice) {
  const { chart } = words.result;
  const applying = criteria.filter((criterion) => entries.some(({ contributions }) => contributions[criterion]));
  if (entries.length === 0) return nothing;
  const points = (share: number) => sayPoints(share, reader);
  const name = ({ machine }: Entry) => nameOf(machine);
  return html`
    <details part="score-chart">
      <summary>${chart.heading}</summary>
      <div class="stack">
        <p class="lesser">${chart.explained}</p>
        <ul class="legend" role="list">${applying.map((criterion, index) => html`<li><span class="part of-${index + 1}" aria-hidden="true">${index + 1}</span> ${words.criteria[criterion]}</li>`)}</ul>
        <div class="close" aria-hidden="true">${entries.map((entry) => html`
          <div class="charted">
            <span>${name(entry)}</span>
            <span class="parts">${applying.map((criterion, index) => html`
              <span class="part of-${index + 1}" .style=${`inline-size:${100 * pointsOf(entry, criterion)}%`}>${pointsOf(entry, criterion) >= numbered ? index + 1 : nothing}</span>`)}</span>
            <span>${points(entry.score)}</span>
          </div>`)}</div>
        <div class="scroll" tabindex="0" role="region" aria-label=${chart.inTable}>
          <table class="compared">
            <thead><tr><td></td>${entries.map((entry) => html`<th scope="col">${name(entry)}</th>`)}</tr></thead>
            <tbody>
              ${applying.map((criterion) => html`<tr><th scope="row">${words.criteria[criterion]}</th>${entries.map((entry) => html`<td>${points(pointsOf(entry, criterion))}</td>`)}</tr>`)}
              <tr><th scope="row">${chart.total}</th>${entries.map((entry) => html`<td><strong>${points(entry.score)}</strong></td>`)}</tr>
            </tbody>
          </table>
        </div>
      </div>
    </details>
  `;
}
