import { css } from 'lit';

/** A code to scan, with what can be copied beside it; the counter shows the same. */
export const handOnLook = css`
  .along > summary h3 { display: inline; font-size: 1.1em; }
  .taken { display: grid; gap: 1.25em; }
  .code { inline-size: min(100%, 15em); border: 1.5px solid var(--line); border-radius: var(--radius); overflow: hidden; forced-color-adjust: none; }
  .code svg { display: block; inline-size: 100%; block-size: auto; direction: ltr; }
  textarea {
    font: inherit; font-family: ui-monospace, monospace; font-size: 0.95em; color: inherit; background: var(--paper); border: 1.5px solid var(--line); border-radius: var(--radius);
    padding: 0.55em 0.7em; inline-size: 100%; max-inline-size: 34em; resize: none; field-sizing: content; overflow-wrap: anywhere;
  }
  textarea:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
  a.button { color: inherit; text-decoration: none; border: 1.5px solid var(--ink); border-radius: var(--radius); padding: 0.55em 1.1em; min-block-size: 2.9em; display: inline-flex; align-items: center; }
  a.button:hover { background: var(--tint); }
  .opened { border-inline-start: 4px solid var(--accent); padding-inline-start: 0.8em; }
  @container (min-width: 38em) {
    .taken { grid-template-columns: 15em minmax(0, 1fr); }
  }
  @media print {
    .taken textarea { border: 0; padding: 0; }
  }
`;
