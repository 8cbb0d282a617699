import { css } from 'lit';
import { handOnLook } from './hand-on/look.ts';

/** What is seen once there is something to reckon with, and not before: the line-up, the check and the result. */
export const laterLook = css`
  ${handOnLook}
  .notice { border: 2px solid var(--alert); border-radius: var(--radius); padding: 1em; display: grid; gap: 0.5em; }
  .notice h3 { color: var(--alert); }
  .notice ul, .points, .plain { display: grid; gap: 0.4em; padding-inline-start: 1.2em; }

  /* A machine as the title block of a drawing: a numbered balloon, the name, the price. */
  .machine { border: 1.5px solid var(--ink); border-radius: var(--radius); }
  .machine > header { display: grid; grid-template-columns: auto 1fr; gap: 0.25em 0.9em; align-items: center; padding: 0.9em 1em; border-block-end: 1.5px solid var(--ink); }
  .balloon { inline-size: 2.4em; block-size: 2.4em; border: 1.5px solid var(--ink); border-radius: 50%; display: grid; place-items: center; font-weight: 650; font-variant-numeric: tabular-nums; }
  .first .balloon { background: var(--accent); border-color: var(--accent); color: var(--on-accent); }
  .price { grid-column: 2; font-variant-numeric: tabular-nums; }
  .price strong { font-size: 1.1em; }
  .body { padding: 1em; display: grid; gap: 1em; }
  .points { list-style: none; padding: 0; }
  .lead { font-size: 1.15em; }
  .lot { list-style: none; margin: 0; padding: 0; }
  .points li { display: grid; grid-template-columns: 1.4em 1fr; gap: 0.4em; }
  .points li::before { content: attr(data-mark); font-weight: 700; text-align: center; }
  .points .against::before, .points .caution::before { color: var(--alert); }
  .points .for::before { color: var(--accent); }
  .columns { display: grid; gap: 1em; }
  .unit { border-block-start: 1px solid var(--line); padding-block: 0.6em; display: grid; gap: 0.25em; }
  .unit:has(.photo) { display: flow-root; min-block-size: 8em; }
  .unit > .photo ~ p + p { margin-block-start: 0.25em; }
  .photo { float: inline-end; margin-inline-start: 1em; inline-size: clamp(6em, 30%, 9em); aspect-ratio: 4 / 3; border: 1px solid var(--line); border-radius: var(--radius); overflow: hidden; }
  .photo img { display: block; inline-size: 100%; block-size: 100%; object-fit: cover; }
  .photo[data-bare] { visibility: hidden; }
  .unit:first-child { border-block-start: 0; }
  .tag { display: inline-block; border: 1px solid currentColor; border-radius: var(--radius); padding: 0 0.4em; font-size: 0.85em; }
  .tag.ruled-out, .tag.ask { color: var(--alert); }
  .working { border-inline-start: 2px solid var(--line); padding-inline-start: 0.8em; display: grid; gap: 0.25em; overflow-wrap: anywhere; }
  .working code { font-size: 0.92em; }
  .working dl { display: grid; grid-template-columns: auto 1fr; gap: 0.1em 0.8em; font-size: 0.95em; }
  .working dd { font-variant-numeric: tabular-nums; }
  .scores { inline-size: 100%; border-collapse: collapse; font-size: 0.95em; }
  .scores :is(th, td) { text-align: start; padding: 0.25em 0.5em 0.25em 0; font-weight: 400; border-block-end: 1px solid var(--line); }
  .scores td:last-child { inline-size: 40%; }
  .bar { display: block; block-size: 0.7em; border: 1px solid var(--line); position: relative; }
  .bar > span { position: absolute; inset-block: 0; inset-inline-start: 0; background: var(--accent); }
  .compared { inline-size: 100%; border-collapse: collapse; font-size: 0.95em; }
  .compared :is(th, td) { text-align: start; vertical-align: top; padding: 0.35em 0.6em 0.35em 0; border-block-end: 1px solid var(--line); font-weight: 400; }
  .compared thead th { font-weight: 650; }
  .compared td { font-variant-numeric: tabular-nums; }
  dl.compared > div { padding-block: 0.5em; border-block-end: 1px solid var(--line); }
  dl.compared dt { font-weight: 650; }
  .differs { color: var(--accent); font-weight: 700; }
  .scroll { overflow-x: auto; }
  .picks { display: flex; flex-wrap: wrap; gap: 0.35em 1.25em; }
  .picks label { display: flex; gap: 0.5em; align-items: center; min-block-size: 1.75em; }
  .picks input { accent-color: var(--accent); inline-size: 1.2em; block-size: 1.2em; margin: 0; }

  /* Parts of a bar, told apart by number and hatching. */
  .legend { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0.35em 1.25em; }
  .legend li { display: flex; gap: 0.5em; align-items: center; }
  dl.compared dd { display: grid; grid-template-columns: 1fr 1fr; gap: 0.75em; }
  .part { display: inline-block; min-block-size: 1.6em; line-height: 1.6em; text-align: center; overflow: hidden; background-color: var(--paper); background-image: var(--hatch, none); border-inline-end: 1.5px solid var(--ink); font-weight: 650; font-variant-numeric: tabular-nums; text-shadow: 0 0 3px var(--paper), 0 0 3px var(--paper), 0 0 3px var(--paper); }
  .legend .part { inline-size: 1.9em; border: 1.5px solid var(--ink); }
  .parts { display: flex; border: 1.5px solid var(--ink); border-inline-end-style: dashed; }
  .parts .part:first-child { border-inline-start: 0; }
  .charted { display: grid; grid-template-columns: 1fr 2.5em; gap: 0 0.75em; align-items: center; }
  .charted > :first-child { grid-column: 1 / -1; }
  .charted > :last-child { text-align: end; font-weight: 650; font-variant-numeric: tabular-nums; }
  .of-1 { --hatch: repeating-linear-gradient(45deg, var(--line) 0 1.5px, transparent 1.5px 7px); }
  .of-2 { --hatch: repeating-linear-gradient(0deg, var(--line) 0 1px, transparent 1px 6px); }
  .of-3 { --hatch: radial-gradient(var(--line) 1.2px, transparent 1.6px) 0 0 / 7px 7px; background: var(--paper) var(--hatch); }
  .of-4 { --hatch: repeating-linear-gradient(-45deg, var(--line) 0 1.5px, transparent 1.5px 7px); }
  .of-5 { --hatch: repeating-linear-gradient(90deg, var(--line) 0 1px, transparent 1px 5px); }
  .of-6 { --hatch: repeating-linear-gradient(45deg, var(--line) 0 1px, transparent 1px 7px), repeating-linear-gradient(-45deg, var(--line) 0 1px, transparent 1px 7px); }

  .answers { display: grid; gap: 0; }
  .answers > div { display: grid; gap: 0.1em 1em; padding-block: 0.55em; border-block-end: 1px solid var(--line); }
  .answers dt { font-weight: 650; }
  .terms { border: 1px dashed var(--line); padding: 1em; display: grid; gap: 0.4em; font-size: 0.95em; }
  .stage:not(:has(> form)) > .beside { order: -1; }
  .drawn { overflow-x: auto; }
  .drawn svg { display: block; block-size: auto; max-inline-size: none; }
  .drawn g.machine { cursor: pointer; }
  .pointed { min-block-size: 3em; color: var(--muted); }

  @container (min-width: 44em) {
    .machine > header { grid-template-columns: auto 1fr auto; }
    .price { grid-column: 3; text-align: end; }
    .charted { grid-template-columns: 10em 1fr 2.5em; }
    .charted > :first-child { grid-column: auto; }
    .columns { grid-template-columns: 1fr 1fr; }
    .answers > div { grid-template-columns: 1fr 1fr auto; align-items: baseline; }
  }
  @media (forced-colors: active) {
    .bar > span { background: Highlight; forced-color-adjust: none; }
    .first .balloon { border-color: Highlight; }
  }

  /* On paper nothing can be pressed or unfolded: what is folded away is left out, but for units and why the others don't stand. */
  @media print {
    .sheet { border: 0; padding: 0; }
    .actions, .foot, .units, .steers, .folded, .picks, button.text, details:not([open], .printed) { display: none; }
    .printed::details-content { display: block; content-visibility: visible; block-size: auto; }
    details > summary { list-style: none; color: inherit; font-weight: 650; }
    h2, h3, h4, header { break-after: avoid; }
    li, .unit, .answers > div, .notice, .terms, .working, tr { break-inside: avoid; }
    .first .balloon { background: none; color: var(--ink); border-color: var(--ink); }
    .machine { border-color: var(--line); box-decoration-break: clone; }
  }
  .bait { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  .mail { border: 1.5px solid var(--ink); border-radius: var(--radius); padding: 1em; display: grid; gap: 0.75em; }
  .mail .field input { inline-size: 100%; max-inline-size: 28em; }
`;
