import { paper } from '../proportions.ts';
import { boundsOf, type Bounds } from '../shape.ts';
import { breaks, dimensionSvg, escaped, n, shapeSvg, text, wrapped, type ToSheet } from '../svg-parts.ts';
import type { Picture, PictureCell, SaidDimension } from './picture.ts';

export interface PictureWish {
  /** Before every id, so that several pictures on a page don't meet. */
  prefix: string;
  /** CSS pixels there are. */
  width: number;
  /** Of the words. The drawing isn't mirrored by it. */
  direction: 'ltr' | 'rtl';
}

interface Sized { cell: PictureCell; bounds: Bounds; extent: number; before: number; after: number }

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const textWidth = (content: string) => content.length * paper.text * paper.letter;
const out = paper.dimension - 4;
/** Left free beside words. */
const sides = 8;

/** As wide as its longest word, a cell has to be at the least. */
const wordWidth = ({ name, lines }: PictureCell) =>
  Math.max(...[name, ...lines].flatMap((line) => line.split(breaks)).map(({ length }) => length)) * paper.name * paper.letter + sides;

/** A figure at the right stands upright beside its line, for that may be shorter than the figure. */
function sized(cell: PictureCell, least: number): Sized {
  const bounds = boundsOf(cell.shapes);
  const on = (side: SaidDimension['side']) => cell.dimensions.filter((dimension) => dimension.side === side);
  const extent = bounds.right - bounds.left;
  const before = paper.gap / 2 + on('left').length * paper.dimension;
  const after = paper.gap / 2 + Math.max(0, ...on('right').map(({ said }) => out + 4 + textWidth(said)));
  const lacking = Math.max(0, wordWidth(cell) - before - after - extent * least);
  return { cell, bounds, extent, before: before + lacking / 2, after: after + lacking / 2 };
}

/** As many in a row as there can be without getting too small to read, in rows as even as can be. */
function rowsOf(cells: readonly Sized[], width: number, { least, most }: Picture['scale']): { rows: Sized[][]; scale: number } {
  const room = (row: readonly Sized[]) => (width - sum(row.map(({ before, after }) => before + after))) / sum(row.map(({ extent }) => extent));
  for (let count = 1; ; count++) {
    const inRow = Math.ceil(cells.length / count);
    const rows = Array.from({ length: count }, (_, row) => cells.slice(row * inRow, (row + 1) * inRow)).filter((row) => row.length > 0);
    const scale = Math.min(most, ...rows.map(room));
    if (scale >= least || inRow === 1) return { rows, scale: Math.max(1, scale) };
  }
}

interface Frame { x: number; wide: number; ground: number; labels: number; scale: number }

/** A dimension line upright at the right, with its figure beside it. */
function riseSvg({ from, to, said, of }: SaidDimension, x: number, [y1, y2]: readonly [number, number], edge: number): string {
  const head = Math.min(6, Math.abs(y1 - y2) / 2);
  return `<g class="dimension ${of}"><path d="M${n(edge + 3)} ${n(y1)}H${n(x + 3)}M${n(edge + 3)} ${n(y2)}H${n(x + 3)}M${n(x)} ${n(y1)}V${n(y2)}"/>`
    + (from[1] === to[1] ? '' : `<path class="arrow" d="M${n(x)} ${n(y1)}l2 -${n(head)}h-4zM${n(x)} ${n(y2)}l2 ${n(head)}h-4z"/>`)
    + `${text('figure beside', [x + 6, (y1 + y2) / 2 + 4], said)}</g>`;
}

const labelsOf = ({ name, lines }: PictureCell, wide: number) => [
  ...wrapped(name, wide - sides, paper.name).map((line) => ['name', line] as const),
  ...lines.flatMap((line) => wrapped(line, wide - sides, paper.text).map((part) => ['standing', part] as const)),
];

function cellSvg({ cell, bounds, extent, before, after }: Sized, { x, wide, ground, labels, scale }: Frame): string {
  const left = x + (wide - extent * scale - before - after) / 2 + before - bounds.left * scale;
  const toSheet: ToSheet = ([px, py]) => [left + px * scale, ground - py * scale];
  const right = left + bounds.right * scale;
  return `<g class="cell${cell.own ? ' own' : ''}"><path class="ground" d="M${n(x + 4)} ${n(ground)}H${n(x + wide - 4)}"/>`
    + cell.shapes.map((shape) => shapeSvg(shape, toSheet, scale)).join('')
    + cell.dimensions.map((dimension) => (dimension.side === 'right'
      ? riseSvg(dimension, right + out, [toSheet(dimension.from)[1], toSheet(dimension.to)[1]], right)
      : dimensionSvg(dimension, { bounds, origin: { x: left, y: ground } }, toSheet, scale, dimension.said))).join('')
    + labelsOf(cell, wide).map(([kind, line], row) => text(kind, [x + wide / 2, labels + row * paper.lineHeight], line)).join('')
    + '</g>';
}

/** What the picture shows, in words: each thing by its name and what is written under it. */
export const descriptionOf = ({ cells }: Picture) => cells.map(({ name, lines }) => `${[name, ...(lines.length > 0 ? [lines.join(', ')] : [])].join(': ')}.`).join(' ');

/** A picture beside a question as SVG: the same picture and wish give the same bytes. */
export function pictureSvg(picture: Picture, { prefix, width, direction }: PictureWish): string {
  const { rows, scale } = rowsOf(picture.cells.map((cell) => sized(cell, picture.scale.least)), width, picture.scale);
  const id = escaped(prefix);
  let y = 0;
  const drawn = rows.map((row) => {
    const ground = y + paper.top + Math.max(...row.map(({ bounds }) => bounds.top)) * scale;
    const below = Math.max(...row.map(({ cell }) => cell.dimensions.filter(({ side }) => side === 'below').length));
    const labels = ground + below * paper.dimension + paper.lineHeight;
    const spread = (width - sum(row.map(({ extent, before, after }) => extent * scale + before + after))) / row.length;
    let x = 0;
    let most = 0;
    const cells = row.map((each) => {
      const wide = each.extent * scale + each.before + each.after + spread;
      const svg = cellSvg(each, { x, wide, ground, labels, scale });
      most = Math.max(most, labelsOf(each.cell, wide).length);
      x += wide;
      return svg;
    });
    y = labels + most * paper.lineHeight;
    return cells.join('');
  });
  const size = `${n(width)} ${n(y)}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="acre-line-up acre-picture" role="img" direction="${direction}" aria-labelledby="${id}-title" aria-describedby="${id}-said" width="${n(width)}" height="${n(y)}" viewBox="0 0 ${size}">`
    + `<title id="${id}-title">${escaped(picture.title)}</title><desc id="${id}-said">${escaped(descriptionOf(picture))}</desc>${drawn.join('')}</svg>`;
}
