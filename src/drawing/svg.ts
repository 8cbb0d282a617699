import type { Cell, LineUp } from './line-up.ts';
import { footHeight, type Placed } from './lay-out.ts';
import { paper } from './proportions.ts';
import { at, dimensionSvg, escaped, n, shapeSvg, text, wrapped, type ToSheet } from './svg-parts.ts';
import { lineUpStyle, standaloneStyle } from './style.ts';
import type { LineUpWords } from './words.ts';

export interface SvgWish {
  words: LineUpWords;
  /** Before every id, so that several pictures on a page don't meet. */
  prefix: string;
  /** Carries its own style, for print and mail; a page brings {@link lineUpStyle} itself. */
  standalone?: boolean;
  /** Nothing in it is to be reached by a key, as on paper, though a page brings its style. */
  still?: boolean;
}

/** A tick, a cross or a question mark: told apart without colour. */
const marks = {
  yes: '<path d="M-3.5 0.5l2.5 2.5l4.5 -6"/>', no: '<path d="M-3 -3l6 6M3 -3l-6 6"/>',
  unknown: '<path d="M-2.2 -1.8a2.2 2.2 0 1 1 3.2 2q-1 .6 -1 1.6M0 3.6v.4"/>',
} as const;

function cellSvg(cell: Placed<Cell>, { scale }: LineUp, { words, prefix, standalone = false, still = standalone }: SvgWish): string {
  const { origin, box, labels } = cell;
  const toSheet: ToSheet = ([x, y]) => [origin.x + x * scale, origin.y - y * scale];
  const said = cell.kind === 'machine' ? words.machine(cell.item) : words.thing(cell.id);
  const standing = cell.kind === 'machine' ? words.machine(cell.item).standing : undefined;
  const id = escaped(`${prefix}-${cell.kind}-${cell.id}`);
  const lines = wrapped(said.name, box.width - 8, paper.name, 2);
  const middle = box.x + box.width / 2;
  const line = (index: number) => labels + index * paper.lineHeight;
  // On paper and in a mail there is nothing to be reached by a key.
  const stop = cell.kind === 'machine' && !still ? ' tabindex="0"' : '';
  return `<g class="${cell.kind}${cell.kind === 'machine' ? ` ${cell.item.standing}` : ''}" id="${id}" role="img"${stop} aria-labelledby="${id}-name" aria-describedby="${id}-said">`
    + `<title id="${id}-name">${escaped(standing ? `${said.name}: ${standing}` : said.name)}</title><desc id="${id}-said">${escaped(said.description)}</desc>`
    + `<path class="ground" d="M${n(box.x + 4)} ${n(origin.y)}H${n(box.x + box.width - 4)}"/>`
    + cell.shapes.map((shape) => shapeSvg(shape, toSheet, scale)).join('')
    + cell.dimensions.map((dimension) => dimensionSvg(dimension, cell, toSheet, scale, words.length(dimension.value))).join('')
    + cell.marks.map(({ at: point, outcome }) => `<g class="mark ${outcome}" transform="translate(${at(toSheet(point))})"><circle r="7"/>${marks[outcome]}</g>`).join('')
    + lines.map((part, index) => text('name', [middle, line(index)], part)).join('')
    + (standing ? text('standing', [middle, line(lines.length)], wrapped(standing, box.width - 8, paper.text, 1)[0]!) : '')
    + '</g>';
}

/** Fewer pixels than this beside the scale bar are no room for a sentence. */
const leastNote = 200;
const sample = 32;

/** The scale bar, half of it filled, and what dashes and thin lines mean: beside it, or under it where it is narrow. */
function foot({ bar, scale, height, width, legend }: LineUp, { words }: SvgWish): { svg: string; height: number } {
  const [x, top, long] = [10, height - footHeight(legend), bar * scale];
  const beside = x + long + 34;
  const [left, first] = width - beside - sample - 8 < leastNote ? [x, top + 40] : [beside, top + 8];
  let y = first;
  const entries = legend.map((kind) => {
    const lines = wrapped(words.legend[kind], width - left - sample - 8, paper.text);
    const entry = `<g class="legend"><path class="${kind === 'assumed' ? 'assumed light' : 'room thin'}" d="M${n(left)} ${n(y + 3)}h26"/>${
      lines.map((part, line) => text('note', [left + sample, y + 7 + line * paper.legendLine], part)).join('')}</g>`;
    y += Math.max(lines.length, 2) * paper.legendLine;
    return entry;
  });
  return {
    svg: `<g class="scale"><path d="M${x} ${n(top + 8)}h${n(long)}v5h-${n(long)}z"/><path class="arrow" d="M${x} ${n(top + 8)}h${n(long / 2)}v5h-${n(long / 2)}z"/>`
      + `${text('figure', [x + long / 2, top + 27], words.bar(bar))}</g>${entries.join('')}`,
    height: Math.max(height, y + 8),
  };
}

/** The line-up as an SVG picture: the same line-up and words give the same bytes. */
export function lineUpSvg(lineUp: LineUp, wish: SvgWish): string {
  const { words, standalone = false } = wish;
  const prefix = escaped(wish.prefix);
  const under = foot(lineUp, wish);
  const [width, height] = [n(lineUp.width), n(under.height)];
  return `<svg xmlns="http://www.w3.org/2000/svg" class="acre-line-up" role="group" aria-labelledby="${prefix}-title" aria-describedby="${prefix}-description" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">`
    + (standalone ? `<style>${standaloneStyle}${lineUpStyle}</style>` : '')
    + `<title id="${prefix}-title">${escaped(words.title)}</title><desc id="${prefix}-description">${escaped(words.description)}</desc>`
    + lineUp.cells.map((cell) => cellSvg(cell, lineUp, wish)).join('') + under.svg + '</svg>';
}
