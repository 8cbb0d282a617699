import { paper } from './proportions.ts';
import { boundsOf, type Bounds, type Dimension, type Shape } from './shape.ts';

interface Drawn { shapes: readonly Shape[]; dimensions: readonly Dimension[] }

/** A cell with its place on the sheet [CSS px]; `origin` is where 0, 0 of its shapes lies, always on the ground. */
export type Placed<C> = C & {
  box: { x: number; y: number; width: number; height: number };
  origin: { x: number; y: number };
  /** Of its shapes [m]. */
  bounds: Bounds;
  /** Where its labels begin [CSS px]. */
  labels: number;
};

/** What a reader has to be told to read the lines. */
export type LegendId = 'assumed' | 'room';
/** Room for the scale bar, and for two lines on each thing to be told [CSS px]. */
export const footHeight = (legend: readonly LegendId[]) => paper.foot + Math.max(0, legend.length - 1) * 2 * paper.legendLine;

function legendOf(cells: readonly Drawn[]): LegendId[] {
  const has = (test: (shape: Shape) => boolean) => cells.some(({ shapes }) => shapes.some(test));
  return [...(has(({ assumed }) => assumed) ? ['assumed' as const] : []), ...(has(({ part }) => part === 'room') ? ['room' as const] : [])];
}

interface Wish { layout: 'row' | 'wrap' | 'alone'; width: number; scaleAtMost?: number }

/** CSS pixels to the metre: as large as there is room for, within what reads well. */
const scales = { row: { least: 26, most: 90 }, wrap: { least: 1, most: 56 }, alone: { least: 1, most: 100 } } as const;
/** A single machine shrinks so far to share a row with the buyer's things, and no farther. */
const together = 45;

const scaleDigits = 10_000;

interface Sized<C> { cell: C; bounds: Bounds; extent: number; before: number; after: number; below: number }

const ranks = (dimensions: readonly Dimension[], side: Dimension['side']) =>
  dimensions.reduce((most, dimension) => (dimension.side === side ? Math.max(most, dimension.place + 1) : most), 0);

function sized<C extends Drawn>(cell: C): Sized<C> {
  const bounds = boundsOf(cell.shapes);
  return {
    cell, bounds, extent: bounds.right - bounds.left,
    before: paper.gap / 2 + ranks(cell.dimensions, 'left') * paper.dimension,
    after: paper.gap / 2 + ranks(cell.dimensions, 'right') * paper.dimension,
    below: ranks(cell.dimensions, 'below') * paper.dimension,
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const widthOf = <C>({ extent, before, after }: Sized<C>, scale: number) => Math.max(paper.leastCell, extent * scale + before + after);

/** The scale at which all stand in one row, should they; and the one at which the widest still fits. */
function scaleFor<C>(cells: readonly Sized<C>[], { layout, width, scaleAtMost = Infinity }: Wish) {
  const { least } = scales[layout];
  const most = Math.min(scales[layout].most, scaleAtMost);
  const inOneRow = (width - sum(cells.map(({ before, after }) => before + after))) / sum(cells.map(({ extent }) => extent));
  const one = cells.reduce<number>((scale, { extent, before, after }) => Math.min(scale, (width - before - after) / extent), most);
  if (cells.length === 0) return most;
  if (layout === 'row') return Math.min(most, Math.max(least, inOneRow));
  return Math.max(least, layout === 'alone' && inOneRow >= together ? Math.min(one, inOneRow) : one);
}

function rowsOf<C>(cells: readonly Sized<C>[], scale: number, { layout, width }: Wish): Sized<C>[][] {
  const rows: Sized<C>[][] = [];
  let left = 0;
  for (const cell of cells) {
    const wide = widthOf(cell, scale);
    if (rows.length === 0 || (layout !== 'row' && wide > left + 1e-6)) {
      rows.push([]);
      left = width;
    }
    rows.at(-1)!.push(cell);
    left -= wide;
  }
  return rows;
}

export interface Sheet<C> { scale: number; width: number; height: number; cells: Placed<C>[]; legend: LegendId[] }

/** Puts cells in rows on one scale, each row on one ground line, with room for dimensions and labels. */
export function laidOut<C extends Drawn>(drawn: readonly C[], wish: Wish): Sheet<C> {
  const cells = drawn.map((cell) => sized(cell));
  // Rounded down, so that what fits a width by its sum still does.
  const scale = Math.floor(scaleFor(cells, wish) * scaleDigits) / scaleDigits;
  const rows = rowsOf(cells, scale, wish);
  const taken = rows.map((row) => sum(row.map((cell) => widthOf(cell, scale))));
  const width = Math.max(wish.width, ...taken);
  const placed: Placed<C>[] = [];
  let y = 0;
  for (const [index, row] of rows.entries()) {
    const ground = y + paper.top + Math.max(...row.map(({ bounds }) => bounds.top)) * scale;
    const labels = ground + Math.max(...row.map(({ bounds, below }) => below - bounds.bottom * scale)) + paper.lineHeight;
    const end = labels + 3 * paper.lineHeight;
    // What is left over goes between them, but a short last row isn't strewn across the sheet.
    const spread = Math.min(wish.layout === 'alone' ? width : 2 * paper.gap, (width - taken[index]!) / row.length);
    let x = 0;
    for (const { cell, bounds, extent, before, after } of row) {
      const wide = widthOf({ cell, bounds, extent, before, after, below: 0 }, scale) + spread;
      const slack = wide - extent * scale - before - after;
      placed.push({
        ...cell, bounds, labels, box: { x, y, width: wide, height: end - y },
        origin: { x: x + slack / 2 + before - bounds.left * scale, y: ground },
      });
      x += wide;
    }
    y = end + paper.gap;
  }
  const legend = legendOf(drawn);
  return { scale, width, height: y + footHeight(legend), cells: placed, legend };
}
