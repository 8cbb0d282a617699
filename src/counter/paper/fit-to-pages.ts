import { html, render } from 'lit';
import { flowed, type Flow } from './flow.ts';
import { isTooMuch, measuredTemplate, pagesTemplate } from './pages.ts';
import type { Paper, Told } from './paper.ts';
import { insideOf, toPixels } from './sizes.ts';
import { paperStyle } from './style.ts';

export interface Fitted {
  pages: number;
  /** Which of the tellings stands there, 0 for the whole. */
  telling: number;
  /** Whether it has no more pages than a sheet may have: only a text of the dealer's that no telling can shorten has more. */
  fits: boolean;
}

const heightsIn = (root: ShadowRoot) => [...root.querySelectorAll('.part')].map((part) => part.getBoundingClientRect().height);

/** Where all of it goes, by the heights it has as this browser sets it. */
function flowOf(paper: Paper, told: Told, root: ShadowRoot): Flow {
  render(measuredTemplate(paper, told), root);
  const [head = 0, ...heights] = heightsIn(root);
  const blocks = heights.map((height, index) => ({ height, floats: told.parts[index]!.floats }));
  const room = toPixels(insideOf(paper.size).room);
  return flowed(blocks, (column) => (column < paper.columns ? room - head : room));
}

/** The shadow root a paper stands in, so that no style of the page around it changes what was measured. */
function rootOf(host: HTMLElement, { size }: Paper): ShadowRoot {
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const style = new CSSStyleSheet();
  style.replaceSync(paperStyle(size));
  root.adoptedStyleSheets = [style];
  return root;
}

/**
 * Sets a paper on as few pages as a sheet may have: measures what it takes on the printer's sheet, and tells less of it until that
 * fits. Every telling says itself what it leaves out; nothing is ever cut off.
 *
 * @param host  an element of the page that holds nothing else; it must be laid out, if not seen
 */
export function fitToPages(host: HTMLElement, paper: Paper): Fitted {
  const root = rootOf(host, paper);
  const last = paper.tellings.length - 1;
  for (const [telling, tell] of paper.tellings.entries()) {
    const told = tell();
    const flow = flowOf(paper, told, root);
    const fits = flow.holds && !isTooMuch(paper.columns, flow);
    if (!fits && telling < last) continue;
    render(html`${pagesTemplate(paper, told, flow)}`, root);
    return { pages: root.querySelectorAll('.page').length, telling, fits };
  }
  throw new Error('a paper tells nothing');
}
