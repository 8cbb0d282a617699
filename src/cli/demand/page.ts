import type { SaidReport } from '../../demand/say-report.ts';
import { html, Markup } from '../rulebook/markup.ts';

const style = `
  :root { color-scheme: light dark; --ink: #1d2326; --paper: #fdfdfb; --accent: #6a2c62; --muted: #515a5e; --line: #8a9296; }
  @media (prefers-color-scheme: dark) { :root { --ink: #e9ecec; --paper: #14181a; --accent: #dba6d2; --muted: #aab3b6; --line: #727c80; } }
  body { margin: 0 auto; max-inline-size: 56rem; padding: 1.5rem; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
  h1 { border-block-end: 2px solid var(--ink); padding-block-end: 0.3em; }
  section { margin-block: 2.5rem; }
  .scroll { overflow-x: auto; }
  table { border-collapse: collapse; inline-size: 100%; font-variant-numeric: tabular-nums; }
  th, td { text-align: start; padding: 0.35em 1em 0.35em 0; border-block-end: 1px solid var(--line); vertical-align: top; font-weight: 400; }
  thead th { font-weight: 650; }
  td:last-child, th:last-child { inline-size: 45%; }
  svg { display: block; inline-size: 100%; block-size: 0.6em; margin-block-start: 0.2em; }
  svg rect { fill: var(--accent); }
  svg path { stroke: var(--line); vector-effect: non-scaling-stroke; }
  ul { list-style: none; padding: 0; font-variant-numeric: tabular-nums; }
  li { margin-block: 0.35em; }
  .lesser, footer { color: var(--muted); }
  @media print { body { max-inline-size: none; padding: 0; font-size: 10pt; } section { break-inside: avoid; margin-block: 1.2rem; } }
`;

/** A bar as long as its share, for the eye; the figure stands beside it. */
const bar = (share: number | undefined) => (share === undefined ? undefined
  : html`<svg viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true"><rect width="${(100 * share).toFixed(2)}" height="6"/><path d="M0 5.5H100" stroke-width="1"/></svg>`);

/** Shares, row by row, of what {@link SaidReport} says; undefined where it isn't told. */
export type Shares = { served: readonly (number | undefined)[]; sections: readonly (readonly (number | undefined)[])[] };

const rows = (said: readonly (readonly [string, string])[], shares: readonly (number | undefined)[]) =>
  said.map(([what, many], index) => html`<tr><th scope="row">${what}</th><td>${many}${bar(shares[index])}</td></tr>`);

/** A report as one page that fetches nothing. */
export function demandPage({ title, lead, served, sections, bring, closing }: SaidReport, shares: Shares, { language, buyers }: { language: string; buyers: string }): string {
  return html`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>${title}</title>
<style>${new Markup(style)}</style>
</head>
<body>
<main>
<h1>${title}</h1>
${lead.map((line) => html`<p>${line}</p>`)}
<table><tbody>${rows(served, shares.served)}</tbody></table>
<section><h2>${bring.heading}</h2><p class="lesser">${bring.explained}</p>${bring.lines.length > 0 ? html`<ul role="list">${bring.lines.map((line) => html`<li>${line}</li>`)}</ul>` : undefined}</section>
${sections.map((section, index) => html`<section><h2>${section.heading}</h2><p class="lesser">${section.explained}</p><div class="scroll"><table><thead><tr><th scope="col">${section.column}</th><th scope="col">${buyers}</th></tr></thead><tbody>${rows(section.rows, shares.sections[index] ?? [])}</tbody></table></div></section>`)}
</main>
<footer>${closing.map((line) => html`<p>${line}</p>`)}</footer>
</body>
</html>`.text;
}
