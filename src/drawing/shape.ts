/** Metres, from where the rear axle (seen from the side) or the middle (from behind) meets the ground; y goes up. */
export type Point = readonly [x: number, y: number];

/** A size that is drawn, and whether it was given or only assumed. */
export interface Measure {
  value: number;
  assumed: boolean;
}

/** What a shape is part of; also its class in the SVG. */
export type Part =
  | 'tyre' | 'wheel' | 'body' | 'bonnet' | 'seat' | 'steering' | 'fender' | 'rops' | 'folded' | 'cab' | 'hitch' | 'loader' | 'bucket'
  | 'reach' | 'deck' | 'door' | 'gate' | 'room' | 'trailer' | 'bale' | 'pallet' | 'log' | 'level' | 'slope' | 'post' | 'forks';

/** How strong a line is; a ground only hides what lies behind it. */
export type Line = 'heavy' | 'light' | 'thin' | 'no-line';

interface Drawn {
  part: Part;
  line: Line;
  /** Rests on an assumed size: drawn dashed, and nothing else is. */
  assumed: boolean;
  /** Hides what lies behind it. */
  filled: boolean;
}
export interface Path extends Drawn { form: 'path'; points: readonly Point[]; closed: boolean; corner: number }
export interface Circle extends Drawn { form: 'circle'; centre: Point; radius: number }
/** Lines that belong together, such as the lugs of a tyre. */
export interface Strokes extends Drawn { form: 'strokes'; strokes: readonly (readonly Point[])[] }
export type Shape = Path | Circle | Strokes;

/** A distance told in figures; only of what is known. */
export interface Dimension {
  of: 'wheelbase' | 'length' | 'width' | 'height' | 'reach' | 'deck' | 'wanted' | 'opening' | 'run' | 'rise' | 'diameter' | 'middle';
  from: Point;
  to: Point;
  value: number;
  /** Which side of what it measures it stands on, and how far out: 0 is nearest. */
  side: 'below' | 'left' | 'right';
  place: number;
}

export const dimension = (of: Dimension['of'], side: Dimension['side'], place: number, from: Point, to: Point, value: number): Dimension =>
  ({ of, side, place, from, to, value });

/** Whether anything a shape is made of is only assumed. */
const restsOn = (measures: readonly Measure[]) => measures.some(({ assumed }) => assumed);

type Style = Pick<Drawn, 'part' | 'line'> & { filled?: boolean; corner?: number; closed?: boolean };

export const path = ({ filled = false, corner = 0, closed = false, ...style }: Style, points: readonly Point[], ...on: Measure[]): Path =>
  ({ form: 'path', ...style, filled, corner, closed, points, assumed: restsOn(on) });

export const circle = ({ part, line, filled = false }: Style, centre: Point, radius: number, ...on: Measure[]): Circle =>
  ({ form: 'circle', part, line, filled, centre, radius, assumed: restsOn(on) });

export const strokes = ({ part, line }: Style, lines: readonly (readonly Point[])[], ...on: Measure[]): Strokes =>
  ({ form: 'strokes', part, line, filled: false, strokes: lines, assumed: restsOn(on) });

export const box = (style: Style, left: number, bottom: number, right: number, top: number, ...on: Measure[]) =>
  path({ ...style, closed: true }, [[left, bottom], [left, top], [right, top], [right, bottom]], ...on);

export interface Bounds { left: number; right: number; bottom: number; top: number }

const pointsOf = (shape: Shape): readonly Point[] => {
  if (shape.form === 'path') return shape.points;
  if (shape.form === 'strokes') return shape.strokes.flat();
  const { centre: [x, y], radius } = shape;
  return [[x - radius, y - radius], [x + radius, y + radius]];
};

export function boundsOf(shapes: readonly Shape[]): Bounds {
  const bounds = { left: 0, right: 0, bottom: 0, top: 0 };
  for (const [x, y] of shapes.flatMap(pointsOf)) {
    bounds.left = Math.min(bounds.left, x);
    bounds.right = Math.max(bounds.right, x);
    bounds.bottom = Math.min(bounds.bottom, y);
    bounds.top = Math.max(bounds.top, y);
  }
  return bounds;
}

/** A point turned about another: the turn as a unit vector, so that no function of an angle is needed. */
export const turned = ([x, y]: Point, [cx, cy]: Point, [cos, sin]: Point): Point =>
  [cx + (x - cx) * cos - (y - cy) * sin, cy + (x - cx) * sin + (y - cy) * cos];
