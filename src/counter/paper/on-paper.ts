import { fitToPages, type Fitted } from './fit-to-pages.ts';
import type { Paper } from './paper.ts';
import { margin, sheets } from './sizes.ts';

const mark = 'data-on-paper';

/** The sheet and its margins are the document's: a rule for them counts in no shadow root. All else on the page isn't printed. */
const documentStyle = ({ size }: Paper) => `
@page { size: ${sheets[size].size}; margin: ${margin}mm; }
@media print {
  html, body { display: block !important; margin: 0 !important; padding: 0 !important; border: 0 !important; background: #fff !important; min-height: 0 !important; height: auto !important; }
  body > :not([${mark}]) { display: none !important; }
}
@media screen { [${mark}] { position: fixed; inset-block-start: 0; inset-inline-start: 0; inline-size: 0; block-size: 0; overflow: hidden; visibility: hidden; } }
`;

export interface OnPaper extends Fitted {
  /** Stands in the page, seen by nobody, until it is taken down. */
  host: HTMLElement;
  takeDown(): void;
}

/** Lays a paper on a page so that printing the page prints it, and nothing else. */
export function putOnPaper(paper: Paper, page: Document): OnPaper {
  const host = page.createElement('div');
  host.setAttribute(mark, '');
  const style = new CSSStyleSheet();
  style.replaceSync(documentStyle(paper));
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, style];
  page.body.append(host);
  const takeDown = () => {
    host.remove();
    page.adoptedStyleSheets = page.adoptedStyleSheets.filter((each) => each !== style);
  };
  try {
    return { ...fitToPages(host, paper), host, takeDown };
  } catch (trouble) {
    takeDown();
    throw trouble;
  }
}

/** Prints a paper from a window; comes back when the printer has it, or the dealer has thought better of it. */
export function printPaper(paper: Paper, view: Window): Promise<Fitted> {
  const { takeDown, host: _host, ...fitted } = putOnPaper(paper, view.document);
  return new Promise((resolve) => {
    view.addEventListener('afterprint', () => {
      takeDown();
      resolve(fitted);
    }, { once: true });
    view.print();
  });
}
