import { css, unsafeCSS } from 'lit';
import { lineUpStyle } from '../drawing/style.ts';
import { laterLook } from '../widget/later-look.ts';
import { look as wizardLook } from '../widget/look.ts';
import { openingLook } from './opening/look.ts';

/** At a counter targets are 48 CSS pixels at least: people stand, hold a tablet and wear gloves. */
const own = css`
  :host { background: var(--paper); color: var(--ink); line-height: 1.4; min-block-size: 100vh; }
  .counter { container-type: inline-size; display: grid; gap: 0.9rem; align-content: start; padding: 0.75rem clamp(0.75rem, 2vw, 1.5rem) 2rem; }
  .counter > *, main > *, .work > * { min-inline-size: 0; }
  kbd { font: inherit; font-size: 0.8em; color: var(--muted); }
  button, select, .option, a.button, .counter input[type='text'] { min-block-size: 48px; }
  .taking h2, .sending h2 { font-size: 1.4em; }
  textarea { inline-size: 100%; max-inline-size: none; font-family: inherit; }

  .top { display: flex; flex-wrap: wrap; gap: 0.25rem 1.25rem; align-items: center; border-block-end: 1.5px solid var(--ink); padding-block-end: 0.5rem; }
  .top > * { margin: 0; }
  .name { font-size: 1.15rem; margin: 0; line-height: 1.3; }
  .name .lesser { font-weight: 400; }
  .facts { flex: 1 1 14rem; display: flex; flex-wrap: wrap; gap: 0 1rem; font-size: 0.9em; }
  .overdue { border-color: var(--alert); color: var(--alert); font-weight: 650; border-width: 2.5px; }
  .top .language select { min-block-size: 48px; inline-size: auto; }
  .update, .old { flex: 1 1 100%; }
  .notice { border: 2px solid var(--alert); border-radius: var(--radius); padding: 0.75em 1em; }

  .head { display: flex; flex-wrap: wrap; gap: 0.5rem 1rem; align-items: end; }
  .head .actions { margin-inline-start: auto; }
  .called { inline-size: 13rem; }
  .next { border-width: 2.5px; font-weight: 650; }
  .switch { display: flex; border: 1.5px solid var(--ink); border-radius: var(--radius); overflow: hidden; }
  .switch label { display: grid; grid-template-columns: 100%; cursor: pointer; }
  .switch label + label { border-inline-start: 1.5px solid var(--ink); }
  .switch input { grid-area: 1 / 1; appearance: none; inline-size: 100%; block-size: 100%; margin: 0; cursor: pointer; }
  .switch span { grid-area: 1 / 1; padding: 0.6em 0.9em; min-block-size: 48px; display: flex; align-items: center; pointer-events: none; }
  .switch label:has(:checked) { background: var(--accent); color: var(--on-accent); }
  .switch label:has(:focus-visible) { outline: 3px solid var(--accent); outline-offset: -5px; }
  .switch label:has(:checked:focus-visible) { outline-color: var(--on-accent); }

  .intake { display: grid; gap: 0.75rem; }
  .work { display: grid; gap: 1.25rem; align-items: start; }
  .questions { display: grid; gap: 1rem; }
  .topics { list-style: none; display: flex; flex-wrap: wrap; gap: 0 1.25rem; margin: 0; padding: 0; }
  .topics button { min-block-size: 48px; }
  .topic { border-block-start: 1.5px solid var(--ink); padding-block-start: 0.4rem; display: grid; gap: 0.75rem; scroll-margin-block-start: 0.5rem; }
  .topic[hidden] { display: none; }
  .topic h2 { font-size: 1.1rem; display: flex; justify-content: space-between; gap: 1rem; align-items: baseline; }
  .asked { display: grid; gap: 0.3rem; }
  .asked h3 { font-size: 1em; }
  .boxes { display: flex; flex-wrap: wrap; gap: 0.6rem 1.25rem; align-items: start; }
  .box { display: grid; gap: 0.2rem; min-inline-size: 0; align-content: start; }
  .box > label, .box legend { font-weight: 650; font-size: 0.95em; }
  .asked:has(h3) :is(.box > label, .box legend) { font-weight: 400; }
  .boxes > .box:not(.several, .choice, .order, .yes-no, .choice-or-quantity) { flex: 0 1 12.5rem; }
  .boxes > .box:is(.several, .order) { flex: 1 1 100%; }
  .boxes > .box:is(.choice, .yes-no, .choice-or-quantity) { flex: 0 1 auto; }
  .boxes > .box.wrong { flex-basis: 22rem !important; }
  .box .row { display: flex; flex-wrap: wrap; gap: 0.5rem 1rem; }
  .box .small { display: grid; gap: 0.15rem; }
  .box select { inline-size: auto; max-inline-size: 100%; }
  .below { color: var(--muted); font-size: 0.85em; min-block-size: 1.4em; margin: 0; }
  .box .fault { margin: 0; font-size: 0.95em; }
  .chips { display: flex; flex-wrap: wrap; gap: 0.3rem; }
  .chip span { font-weight: 400; }
  .chip { display: flex; align-items: center; gap: 0.45em; min-block-size: 48px; padding: 0.3em 0.75em 0.3em 0.5em; border: 1.5px solid var(--line); border-radius: var(--radius); cursor: pointer; position: relative; }
  .chip kbd { min-inline-size: 0.9em; text-align: center; }
  .chip input { inline-size: 1.2em; block-size: 1.2em; margin: 0; accent-color: var(--accent); }
  .chip:hover { border-color: var(--ink); }
  .chip:has(:checked) { border-color: var(--accent); background: var(--tint); box-shadow: inset 0 -3px 0 var(--accent); }
  .chip:has(:focus-visible) { outline: 3px solid var(--accent); outline-offset: 2px; }
  .chip input:focus-visible { outline: none; }
  .wrong .chips { border: 0; padding: 0; }

  .outcome { display: grid; gap: 0.6rem; align-content: start; }
  .outcome h2 { font-size: 1.1rem; }
  .outcome h3 { font-size: 1em; }
  .fit { list-style: none; display: grid; gap: 0.6rem; }
  .fits { border: 1.5px solid var(--line); border-radius: var(--radius); padding: 0.5em 0.75em; display: grid; gap: 0.2rem; }
  .fits:first-child { border-color: var(--accent); }
  .fits-head { display: flex; gap: 0.6em; align-items: baseline; flex-wrap: wrap; }
  .rank { border: 1.5px solid var(--ink); border-radius: 50%; min-inline-size: 1.6em; text-align: center; font-weight: 650; }
  .fits-price { margin-inline-start: auto; }
  .outcome summary { min-block-size: 48px; padding-block: 0.75em; }
  .outcome summary .fits { padding: 0; }
  .notes summary, .retiring summary { min-block-size: 48px; padding-block: 0.75em; }

  .jump { position: sticky; inset-block-end: 0; inline-size: 100%; background: var(--paper); border-width: 2px; font-weight: 650; z-index: 1; }

  .start { padding-block: 1.5rem; }
  .start > .close:first-child h2 { font-size: 2em; }
  .start .lesser-heading { font-size: 1.1rem; }
  .start .actions button { min-block-size: 64px; padding-inline: 1.5em; }
  .parked { list-style: none; display: flex; flex-wrap: wrap; gap: 0.5rem; padding: 0; margin: 0; }

  .waiting { list-style: none; padding: 0; display: grid; }
  .waits { display: flex; flex-wrap: wrap; gap: 0.25rem 1rem; align-items: center; border-block-end: 1px solid var(--line); padding-block: 0.5rem; }
  .file { display: inline-flex; align-items: center; gap: 0.5em; border: 1.5px solid var(--ink); border-radius: var(--radius); padding: 0.55em 1.1em; min-block-size: 48px; cursor: pointer; position: relative; }
  .file:hover { background: var(--tint); }
  .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; inline-size: 100%; }
  .file:has(:focus-visible) { outline: 3px solid var(--accent); outline-offset: 2px; }
  .hidden-text { -webkit-text-security: disc; letter-spacing: 0.3em; }

  dialog { color: var(--ink); background: var(--paper); border: 2.5px solid var(--ink); border-radius: var(--radius); padding: 1.5rem; max-inline-size: min(34rem, calc(100vw - 2rem)); }
  dialog[open] { display: grid; gap: 0.9rem; }
  dialog::backdrop { background: var(--paper); opacity: 0.96; }
  .kept-free { visibility: hidden; }
  .left { font-size: 1.6em; font-weight: 650; font-variant-numeric: tabular-nums; }

  @container (min-width: 64rem) {
    .jump { display: none; }
    .work.with { grid-template-columns: minmax(0, 1fr) minmax(20rem, 34%); gap: 1.75rem; }
    .with > .beside { border-inline-start: 1px solid var(--line); padding-inline-start: 1.25rem; position: sticky; inset-block-start: 0.5rem; max-block-size: calc(100vh - 1rem); overflow-y: auto; }
  }
  @container (max-width: 40rem) {
    .switch { flex: 1 1 100%; }
    .switch label { flex: 1 1 auto; }
    .switch span { justify-content: center; text-align: center; }
    .called { inline-size: 100%; }
    .head .actions { margin-inline-start: 0; }
    .boxes > .box { flex-basis: 100% !important; }
  }
  /* Whoever has fingers alone has no use for keys. */
  @media (hover: none) and (pointer: coarse) {
    .chip kbd, .topics kbd, .topic h2 kbd, .keys { display: none; }
  }
  @media (forced-colors: active) {
    .switch label:has(:checked), .chip:has(:checked) { outline: 3px solid Highlight; }
  }
`;

/** The look of the wizard, closer together: for hands that know where everything is. */
export const look = [wizardLook, laterLook, openingLook, unsafeCSS(lineUpStyle), own];
