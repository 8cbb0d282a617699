import { standAlone } from '../../widget/stand-alone.ts';
import { fitToPages, type Fitted } from './fit-to-pages.ts';
import type { Paper } from './paper.ts';
import { margin, sheets } from './sizes.ts';

/** Laid out on the screen too, for it is measured there. */
const unseen = 'position: fixed; inset-block-start: 0; inset-inline-start: 0; inline-size: 0; block-size: 0; overflow: hidden; visibility: hidden;';

export interface OnPaper extends Fitted {
  /** Stands in the page, seen by nobody, until it is taken down. */
  host: HTMLElement;
  takeDown(): void;
}

/** Lays a paper on a page so that printing the page prints it, and nothing else. */
export function putOnPaper(paper: Paper, page: Document): OnPaper {
  const { host, takeDown } = standAlone(page, { size: sheets[paper.size].size, margin, unseen });
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
