import { css } from 'lit';
import { look as wizardLook } from '../widget/look.ts';

const own = css`
  .page, section, .drop { grid-template-columns: minmax(0, 1fr); }
  :host { background: var(--paper); color: var(--ink); line-height: 1.5; }
  .page { container-type: inline-size; display: grid; gap: 2.5rem; max-inline-size: 64rem; }
  section { display: grid; gap: 0.9rem; align-content: start; border-block-start: 1.5px solid var(--ink); padding-block-start: 1.25rem; min-inline-size: 0; }
  h1 { margin: 0; font-size: 2rem; line-height: 1.15; text-wrap: balance; }
  header { display: grid; gap: 0.6rem; }
  h2:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
  section > * { margin: 0; min-inline-size: 0; }
  .drop { border: 1.5px dashed var(--line); border-radius: var(--radius); padding: 1rem; display: grid; gap: 0.9rem; }
  .drop.over { border-color: var(--accent); background: var(--tint); }
  .steps { display: grid; gap: 0.25rem 2rem; grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr)); padding-inline-start: 1.5rem; }
  .steps li > span { display: block; }
  .fields { display: grid; gap: 0.9rem 1.5rem; grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr)); align-items: start; }
  label { display: grid; gap: 0.25rem; }
  label.tick { display: flex; gap: 0.6rem; align-items: start; min-block-size: 1.75rem; }
  .tick input { inline-size: 1.35em; block-size: 1.35em; margin: 0.1em 0 0; accent-color: var(--accent); flex: none; }
  label.language { display: flex; }
  label > span:first-child { font-weight: 650; }
  input[type='file'] { font: inherit; inline-size: 100%; min-inline-size: 0; min-block-size: 2rem; }
  input[type='search'], textarea { font: inherit; color: inherit; background: var(--paper); border: 1.5px solid var(--ink); border-radius: var(--radius); padding: 0.55rem 0.7rem; inline-size: 100%; min-block-size: 2.9rem; }
  input.short { inline-size: 8rem; }
  input[type='search'] { max-inline-size: 24rem; }
  textarea { max-inline-size: 48rem; resize: vertical; }
  [aria-invalid='true'] { border-color: var(--alert); border-width: 2px; }
  progress { accent-color: var(--accent); inline-size: 12rem; max-inline-size: 100%; }
  .scroll { overflow-x: auto; }
  .scroll:focus-visible, pre:focus-visible, textarea:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
  table { border-collapse: collapse; inline-size: 100%; min-inline-size: 46rem; font-size: 0.95em; }
  th, td { text-align: start; vertical-align: middle; padding: 0.4rem 0.75rem 0.4rem 0; border-block-end: 1px solid var(--line); overflow-wrap: anywhere; }
  td:last-child { overflow-wrap: normal; }
  thead th { color: var(--muted); font-weight: 400; overflow-wrap: normal; }
  td select { min-inline-size: 9rem; }
  tbody th { font-weight: 650; }
  .findings, .figures { list-style: none; margin: 0; padding: 0; display: grid; gap: 0.9rem; }
  .finding { border: 1px solid var(--line); border-inline-start: 4px solid var(--line); border-radius: var(--radius); padding: 0.8rem 1rem; display: grid; gap: 0.5rem; overflow-wrap: anywhere; }
  .of-fault { border-inline-start-color: var(--alert); }
  .of-query { border-inline-start-color: var(--accent); }
  .of-fault .tag { color: var(--alert); }
  .finding dl { display: grid; gap: 0.25rem; }
  .finding dl > div { display: grid; grid-template-columns: minmax(6rem, 9rem) minmax(0, 1fr); gap: 0.75rem; }
  .finding dt { color: var(--muted); }
  .mend { display: flex; flex-wrap: wrap; gap: 0.75rem; align-items: end; }
  .mend label { flex: 0 1 18rem; }
  .mend label.wide { flex: 1 1 100%; }
  .finding:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
  .tag { display: inline-block; border: 1px solid currentColor; border-radius: var(--radius); padding: 0 0.4rem; font-size: 0.85em; }
  .notice { border: 2px solid var(--alert); border-radius: var(--radius); padding: 1rem; }
  .preview { border: 1px dashed var(--line); padding: 0.5rem; }
  pre { margin: 0; padding: 1rem; border: 1px solid var(--line); background: var(--tint); overflow-x: auto; font-size: 0.9em; white-space: pre-wrap; overflow-wrap: anywhere; }
  .version { overflow-wrap: anywhere; font-size: 0.85em; }
  ul:not([role]), ol:not(.steps) { padding-inline-start: 1.3rem; display: grid; gap: 0.35rem; }
  @container (max-width: 36rem) {
    .finding dl > div { grid-template-columns: 1fr; gap: 0; }
  }
`;

export const look = [wizardLook, own];
