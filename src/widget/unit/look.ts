import { css, unsafeCSS } from 'lit';
import { chartStyle } from '../../lot/owning/chart-svg.ts';

/** A unit, closer: lines with their sum, a list to tick off on a phone, a chart. */
export const unitLook = css`
  ${unsafeCSS(chartStyle)}
  .closer .stack { padding-block: 0.5em 1em; }
  .closer, .closer :is(.stack, .close) { grid-template-columns: minmax(0, 1fr); min-inline-size: 0; }
  .closer > details { border-block-start: 1px solid var(--line); }
  .closer summary { min-block-size: 2.75em; align-content: center; }
  .ways, .pair { display: grid; gap: 0.5em 1em; }
  .lines { inline-size: 100%; border-collapse: collapse; }
  .lines :is(th, td) { text-align: start; vertical-align: top; font-weight: 400; padding-block: 0.45em; border-block-end: 1px solid var(--line); }
  .lines td { text-align: end; padding-inline-start: 1em; font-variant-numeric: tabular-nums; }
  .lines tfoot :is(th, td) { font-weight: 650; border-block-start: 1.5px solid var(--ink); }
  .lines th { overflow-wrap: anywhere; }
  .note { display: block; font-size: 0.95em; font-weight: 400; }
  .closer .facts { display: grid; grid-template-columns: auto 1fr; gap: 0.1em 1.5em; }
  .closer .facts dd { font-variant-numeric: tabular-nums; }
  .looks { list-style: none; margin: 0; padding: 0; display: grid; }
  .looks > li { padding-block: 0.9em; border-block-start: 1px solid var(--line); }
  .ticks { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 0.5em; }
  .ticks .option { min-block-size: 3em; align-items: center; }
  .counted { position: sticky; inset-block-end: 0; background: var(--paper); border-block-start: 1.5px solid var(--ink); padding-block: 0.5em; }
  .ticks input { scroll-margin-block-end: 5em; }
  .scroll > .acre-cost-chart { max-inline-size: none; }
  .closer .compared { min-inline-size: 40em; font-variant-numeric: tabular-nums; }
  .closer .compared td { white-space: nowrap; }
  @container (min-width: 38em) {
    .ways, .pair { grid-template-columns: 1fr 1fr; }
  }
  @container (max-width: 20em) {
    .lines, .lines :is(tbody, tfoot) { display: block; }
    .lines tr { display: grid; border-block-end: 1px solid var(--line); }
    .lines tbody :is(th, td), .lines tfoot td { border: 0; padding-block-end: 0.2em; }
  }
  @media print {
    .counted { position: static; }
  }
`;
