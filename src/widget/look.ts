import { css } from 'lit';

const light = css`
  color-scheme: light;
  --ink: var(--acre-ink, #1d2326);
  --paper: var(--acre-paper, #fdfdfb);
  --accent: var(--acre-accent, #6a2c62);
  --on-accent: var(--acre-on-accent, #ffffff);
  --muted: var(--acre-muted, #515a5e);
  --line: var(--acre-line, #8a9296);
  --alert: var(--acre-alert, #9c2a1c);
  --tint: var(--acre-tint, #f3eef2);
`;

const dark = css`
  color-scheme: dark;
  --ink: var(--acre-ink, #e9ecec);
  --paper: var(--acre-paper, #14181a);
  --accent: var(--acre-accent, #dba6d2);
  --on-accent: var(--acre-on-accent, #24101f);
  --muted: var(--acre-muted, #aab3b6);
  --line: var(--acre-line, #727c80);
  --alert: var(--acre-alert, #ff9d8d);
  --tint: var(--acre-tint, #241c24);
`;

/* Whoever asks for more contrast is served before the colours of the host. */
const contrast = css`
  color-scheme: light;
  --ink: #000000; --paper: #ffffff; --accent: #3d0f5c; --on-accent: #ffffff; --muted: #000000; --line: #000000; --alert: #7a0000; --tint: #ffffff;
`;

const darkContrast = css`
  color-scheme: dark;
  --ink: #ffffff; --paper: #000000; --accent: #f2c8ff; --on-accent: #000000; --muted: #ffffff; --line: #ffffff; --alert: #ffb4a8; --tint: #000000;
`;

/**
 * The look of a workshop drawing: ink lines on plain paper, dimension lines, one accent. Every colour
 * and size is a custom property that the host may set.
 *
 * @cssproperty --acre-ink      text and lines
 * @cssproperty --acre-paper    ground
 * @cssproperty --acre-accent   what can be pressed or is chosen
 * @cssproperty --acre-on-accent  text on the accent
 * @cssproperty --acre-muted    lesser text
 * @cssproperty --acre-line     lesser lines
 * @cssproperty --acre-alert    errors and what is not cleared
 * @cssproperty --acre-tint     ground of what stands out
 * @cssproperty --acre-radius   rounding of corners
 * @cssproperty --acre-width    greatest width of the text
 */
export const look = css`
  :host {
    display: block;
    ${light}
    --radius: var(--acre-radius, 2px);
    font: inherit;
  }
  :host([hidden]) { display: none; }
  @media (prefers-color-scheme: dark) {
    :host(:not([theme='light'])) { ${dark} }
  }
  :host([theme='dark']) { ${dark} }
  @media (prefers-contrast: more) {
    :host { ${contrast} }
    :host([theme='dark']) { ${darkContrast} }
  }
  @media (prefers-contrast: more) and (prefers-color-scheme: dark) {
    :host(:not([theme='light'])) { ${darkContrast} }
  }
  :host([theme='contrast']) { ${contrast} }

  * { box-sizing: border-box; }
  input { font: inherit; }
  /* A host that resets everything resets the element too: what must hold stands inside. Spacing of letters and words is the reader's. */
  .sheet {
    container-type: inline-size; color: var(--ink); background: var(--paper); line-height: 1.5; text-align: start; white-space: normal; text-transform: none;
    text-indent: 0; text-shadow: none; cursor: auto; overflow-wrap: break-word;
    border: 1.5px solid var(--ink); border-radius: var(--radius); padding: clamp(1.25em, 3.5%, 2em); display: grid; gap: 1.25em;
  }
  .sheet > * { min-width: 0; }
  .narrow { max-width: var(--acre-width, 40em); }
  h2, h3, h4, p, ul, ol, dl, dd, fieldset, figure { margin: 0; padding: 0; }
  h2 { font-size: 1.6em; line-height: 1.2; font-weight: 650; text-wrap: balance; }
  h3 { font-size: 1.25em; line-height: 1.3; font-weight: 650; }
  h4 { font-size: 1em; font-weight: 650; }
  h2:focus { outline: none; }
  a { color: var(--accent); text-underline-offset: 0.2em; }
  fieldset { border: 0; min-width: 0; }
  legend { padding: 0; font-weight: 650; margin-block-end: 0.35em; }
  label { display: inline-block; }
  .field > label { font-weight: 650; }
  .field > label .lesser { font-weight: 400; }
  .hint, .lesser { color: var(--muted); }
  .hint { font-size: 0.95em; }
  .stack { display: grid; gap: 1.1em; align-content: start; }
  .close { display: grid; gap: 0.5em; align-content: start; }

  /* Progress as a dimension line: how far of how much. */
  .progress { display: grid; gap: 0.4em; color: var(--muted); font-size: 0.95em; }
  .dimension { block-size: 0.9em; position: relative; border-inline: 1.5px solid var(--line); }
  .dimension::before { content: ''; position: absolute; inset-inline: 0; inset-block-start: 50%; border-block-start: 1px solid var(--line); }
  .dimension > span { position: absolute; inset-block-start: calc(50% - 2px); inset-inline-start: 0; block-size: 4px; background: var(--accent); }

  .options { display: grid; gap: 0.5em; }
  .option { display: grid; grid-template-columns: auto 1fr; column-gap: 0.75em; align-items: start; padding: 0.65em 0.8em; border: 1.5px solid var(--line); border-radius: var(--radius); cursor: pointer; }
  .option:hover { border-color: var(--ink); }
  .option:has(input:checked) { border-color: var(--accent); background: var(--tint); box-shadow: inset 4px 0 0 var(--accent); }
  .option:dir(rtl):has(input:checked) { box-shadow: inset -4px 0 0 var(--accent); }
  .option input { inline-size: 1.35em; block-size: 1.35em; margin: 0.1em 0 0; accent-color: var(--accent); }
  .option .hint { display: block; }
  .options > .last { border-block-start: 1px solid var(--line); padding-block-start: 0.6em; margin-block-start: 0.15em; }
  .inset { margin-inline-start: 1em; padding-inline-start: 1em; border-inline-start: 2px solid var(--line); }

  input:is([type='text'], [type='email'], [type='tel']), select {
    font: inherit; color: inherit; background: var(--paper); border: 1.5px solid var(--ink); border-radius: var(--radius);
    padding: 0.55em 0.7em; inline-size: 100%; max-inline-size: 20em; min-block-size: 2.9em;
  }
  .wrong input, .wrong select { border-color: var(--alert); border-width: 2px; }
  .wrong .options { border-inline-start: 4px solid var(--alert); padding-inline-start: 0.75em; }
  .fault { color: var(--alert); font-weight: 650; }
  .echo { color: var(--muted); font-size: 0.95em; min-block-size: 1.5em; }

  :is(a, button, input, select, summary, [tabindex]):focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
  .option:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
  .option input:focus-visible { outline: none; }

  .summary { border: 3px solid var(--alert); border-radius: var(--radius); padding: 1em; display: grid; gap: 0.5em; }
  .summary ul { list-style: none; display: grid; gap: 0.35em; }
  .summary a { color: var(--alert); font-weight: 650; }

  .actions { display: flex; flex-wrap: wrap; gap: 0.75em; align-items: center; }
  button { font: inherit; color: inherit; background: none; border: 1.5px solid var(--ink); border-radius: var(--radius); padding: 0.55em 1.1em; min-block-size: 2.9em; cursor: pointer; }
  button.main { background: var(--accent); border-color: var(--accent); color: var(--on-accent); font-weight: 650; }
  button.main:hover { filter: brightness(1.1); }
  button:not(.main):not(.text):hover { background: var(--tint); }
  button.text { border: 0; padding: 0.3em 0; min-block-size: 2em; color: var(--accent); text-decoration: underline; text-underline-offset: 0.2em; text-align: start; }
  .apart { border-block-start: 1px solid var(--line); padding-block-start: 1em; }

  details > summary { cursor: pointer; color: var(--accent); padding-block: 0.25em; }
  details > :not(summary) { margin-block-start: 0.4em; }

  .foot { display: flex; flex-wrap: wrap; gap: 0.5em 1.5em; justify-content: space-between; align-items: center; border-block-start: 1px solid var(--line); padding-block-start: 0.9em; font-size: 0.95em; }
  .language { display: flex; gap: 0.5em; align-items: center; color: var(--muted); }
  .language select { inline-size: auto; min-block-size: 2.2em; padding: 0.2em 0.5em; }
  .units { display: flex; flex-wrap: wrap; gap: 0.25em 1em; align-items: center; }
  .units legend { float: inline-start; margin: 0; font-weight: 400; color: var(--muted); padding-inline-end: 0.25em; }
  .units label { display: flex; gap: 0.4em; align-items: center; min-block-size: 1.75em; }
  .units input { accent-color: var(--accent); inline-size: 1.1em; block-size: 1.1em; margin: 0; }

  .unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }

  .stage { display: grid; gap: 1.25em; align-content: start; }
  .stage > * { min-width: 0; }
  .stage.wide { grid-template-columns: minmax(0, 27em) minmax(0, 1fr); gap: 2em; }
  .stage.wide > .beside { border-inline-start: 1px solid var(--line); padding-inline-start: 1.5em; }
  @media (prefers-reduced-motion: no-preference) {
    .dimension > span { transition: inline-size 160ms ease-out; }
  }
  @media (forced-colors: active) {
    .option:has(input:checked) { outline: 2px solid Highlight; }
    .dimension > span { background: Highlight; forced-color-adjust: none; }
  }
`;
