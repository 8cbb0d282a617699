import { html, render, type TemplateResult } from 'lit';
import type { Voice } from '../../reasons/say.ts';
import { paperLook } from './paper-look.ts';

const mark = 'data-acre-paper';

/** Where letters are written on the sheet of the United States; A4 (ISO 216) elsewhere. From memory: Unicode CLDR, supplemental data, paperSize. */
const letterRegions: readonly string[] = ['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'];

export const sheetOf = (locale: string) => (letterRegions.includes(new Intl.Locale(locale).region ?? '') ? 'letter' : 'A4');

/** The sheet and its margins are the document's: a rule for them counts in no shadow root. All else on the page isn't printed. */
const documentStyle = (sheet: string) => `
@page { size: ${sheet}; margin: 14mm; }
@media print {
  html, body { display: block !important; margin: 0 !important; padding: 0 !important; border: 0 !important; background: #fff !important; min-height: 0 !important; height: auto !important; }
  body > :not([${mark}]) { display: none !important; }
}
@media screen { [${mark}] { display: none !important; } }
`;

const sheetWith = (css: string) => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  return sheet;
};

let clear: (() => void) | undefined;

/** Prints this and nothing else of the page, which is then as it was. */
export function printAlone(body: TemplateResult, { words: { language, direction }, reader: { locale } }: Voice) {
  clear?.();
  const style = sheetWith(documentStyle(sheetOf(locale)));
  const host = document.createElement('div');
  host.setAttribute(mark, '');
  const root = host.attachShadow({ mode: 'open' });
  root.adoptedStyleSheets = [sheetWith(paperLook)];
  render(html`<article lang=${language} dir=${direction}>${body}</article>`, root);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, style];
  document.body.append(host);
  clear = () => {
    clear = undefined;
    host.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== style);
  };
  window.addEventListener('afterprint', () => clear?.(), { once: true });
  window.print();
}
