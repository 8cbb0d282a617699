/** The look of a workshop drawing, as the widget has it: ink lines on plain paper, one accent. */
export const style = `
:root {
  color-scheme: light dark;
  --ink: #1d2326; --paper: #fdfdfb; --accent: #6a2c62; --on-accent: #ffffff; --muted: #515a5e; --line: #8a9296; --alert: #9c2a1c; --tint: #f3eef2;
  font-family: ui-sans-serif, system-ui, sans-serif; line-height: 1.5; background: var(--paper); color: var(--ink);
  scroll-padding-block-start: 1rem;
}
@media (prefers-color-scheme: dark) {
  :root {
    --ink: #e9ecec; --paper: #14181a; --accent: #dba6d2; --on-accent: #24101f; --muted: #aab3b6; --line: #727c80; --alert: #ff9d8d; --tint: #241c24;
  }
}
* { box-sizing: border-box; }
[hidden] { display: none !important; }
body { margin: 0 auto; max-inline-size: 62rem; padding: 1rem; display: grid; gap: 1.75rem; grid-template-columns: minmax(0, 1fr); overflow-wrap: anywhere; }
h1, h2, h3, p, ul, dl, dd { margin: 0; padding: 0; }
h1 { font-size: clamp(1.6rem, 1.2rem + 2vw, 2.3rem); line-height: 1.15; text-wrap: balance; }
h2 { font-size: 1.3rem; line-height: 1.2; font-weight: 650; }
h3 { font-size: 1.05rem; line-height: 1.35; font-weight: 650; text-wrap: pretty; }
header, section, form, nav { display: grid; gap: 0.6rem; align-content: start; grid-template-columns: minmax(0, 1fr); }
header > p, footer > p { max-inline-size: 42rem; }
.lesser { color: var(--muted); }
a { color: var(--accent); text-underline-offset: 0.2em; }
.skip { position: absolute; inset-block-start: 0; inset-inline-start: 0; padding: 0.6rem 1rem; background: var(--paper); border: 1.5px solid var(--ink); }
.skip:not(:focus) { clip-path: inset(50%); inline-size: 1px; block-size: 1px; padding: 0; overflow: hidden; }
:is(a, input, select, button, .sum):focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
main { display: grid; gap: 2.5rem; grid-template-columns: minmax(0, 1fr); outline: none; }

.tag { display: inline-block; border: 1px solid var(--line); border-radius: 2px; padding: 0 0.4rem; font-size: 0.875em; color: var(--muted); white-space: nowrap; }
.weak { border: 1.5px solid var(--alert); color: var(--alert); font-weight: 650; }
.weak::before { content: '! ' / ''; }
.legend { display: grid; gap: 0.35rem; }
.legend > div { display: flex; flex-wrap: wrap; gap: 0 0.75rem; align-items: baseline; }

form { border: 1.5px solid var(--ink); border-radius: 2px; padding: 1rem; }
form > p { display: grid; gap: 0.2rem; min-inline-size: 0; }
label { font-weight: 650; }
input, select, button { font: inherit; color: inherit; background: var(--paper); border: 1.5px solid var(--ink); border-radius: 2px; padding: 0.5rem 0.7rem; min-block-size: 2.9rem; inline-size: 100%; }
button { inline-size: auto; cursor: pointer; }
button:hover { background: var(--tint); }
[role='status'] { font-weight: 650; font-variant-numeric: tabular-nums; }

nav ul { list-style: none; columns: 15rem; column-gap: 1.5rem; }
.languages ul { columns: auto; display: flex; flex-wrap: wrap; gap: 0 1.25rem; margin-block-end: 0.75rem; }
.languages [aria-current] { color: inherit; font-weight: 650; text-decoration: none; }
nav a, .id a { display: inline-block; padding-block: 0.15rem; }

main > section > h2 { border-block-end: 3px solid var(--ink); padding-block-end: 0.3rem; }
article { border: 1.5px solid var(--ink); border-radius: 2px; display: grid; grid-template-columns: minmax(0, 1fr); }
article:target { outline: 3px solid var(--accent); outline-offset: 2px; }
article > h3 { padding: 0.75rem 0.9rem 0.3rem; }
.id { padding: 0 0.9rem 0.5rem; font-size: 0.95em; }
.id a, code { font-family: ui-monospace, monospace; }
dl > div { display: grid; gap: 0 1rem; grid-template-columns: minmax(0, 1fr); }
article dl > div { padding: 0.35rem 0.9rem; border-block-start: 1px solid var(--line); }
dt { color: var(--muted); }
.legend dt { color: inherit; }
article dl { font-variant-numeric: tabular-nums; }
.value strong, div.dealers strong { font-size: 1.15em; }
div.dealers { background: var(--tint); box-shadow: inset 4px 0 0 var(--accent); }
div.dealers dt { color: var(--accent); font-weight: 650; }
section.dealers { border-inline-start: 4px solid var(--accent); background: var(--tint); padding: 1rem; }
.dealers ul { padding-inline-start: 1.2rem; display: grid; gap: 0.4rem; }
div.refused, .refused li { color: var(--alert); font-weight: 650; }
.sum { overflow-x: auto; padding-block: 0.2rem; margin-block-end: 0.2rem; }
math { font-size: 1.05em; inline-size: fit-content; margin: 0; text-align: start; }
code.lesser { font-size: 0.9em; }
footer { border-block-start: 1px solid var(--line); padding-block-start: 0.75rem; color: var(--muted); }

@media (min-width: 44rem) {
  body { padding: 2rem; }
  form { grid-template-columns: 2fr 1fr 1fr auto; align-items: end; gap: 0.6rem 1rem; padding: 1.25rem; }
  form > h2, form > [role='status'] { grid-column: 1 / -1; }
  article { grid-template-columns: minmax(0, 1fr) auto; align-items: baseline; }
  article > dl { grid-column: 1 / -1; }
  article > h3 { padding-block-end: 0.75rem; }
  .id { padding-block: 0.75rem; }
  math { font-size: 1.2em; }
  article dl > div { grid-template-columns: 12rem minmax(0, 1fr); align-items: baseline; }
}
@media (forced-colors: active) {
  div.dealers, section.dealers { border-inline-start: 4px solid Highlight; }
  .weak { border-width: 2px; }
}
@media print {
  :root { color-scheme: light; --ink: #000000; --paper: #ffffff; --muted: #333333; --line: #777777; --tint: #ffffff; --accent: #6a2c62; --alert: #9c2a1c; font-size: 9.5pt; }
  form, nav, .skip { display: none !important; }
  body { max-inline-size: none; padding: 0; }
  article { break-inside: avoid; }
  h2 { break-after: avoid; }
  article dl > div { grid-template-columns: 13rem minmax(0, 1fr); }
  .sum { overflow: visible; }
  a { color: inherit; text-decoration: none; }
}
`;
