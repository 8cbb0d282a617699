import { html, render, type TemplateResult } from 'lit';
import type { Voice } from '../../reasons/say.ts';
import { sheetWith, standAlone } from '../stand-alone.ts';
import { paperLook } from './paper-look.ts';

/** [mm] */
const margin = 14;

/** Where letters are written on the sheet of the United States; A4 (ISO 216) elsewhere. From memory: Unicode CLDR, supplemental data, paperSize. */
const letterRegions: readonly string[] = ['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'];

export const sheetOf = (locale: string) => (letterRegions.includes(new Intl.Locale(locale).region ?? '') ? 'letter' : 'A4');

let clear: (() => void) | undefined;

/** Prints this and nothing else of the page, which is then as it was. @param paper  as `@page` names it */
export function printAlone(body: TemplateResult, { words: { language, direction }, reader: { locale } }: Voice, paper: string = sheetOf(locale)) {
  clear?.();
  const { host, takeDown } = standAlone(document, { size: paper, margin, unseen: 'display: none !important;' });
  const root = host.attachShadow({ mode: 'open' });
  root.adoptedStyleSheets = [sheetWith(paperLook)];
  render(html`<article lang=${language} dir=${direction}>${body}</article>`, root);
  clear = () => {
    clear = undefined;
    takeDown();
  };
  window.addEventListener('afterprint', () => clear?.(), { once: true });
  window.print();
}
