import { paper } from './proportions.ts';
import type { Bounds, Dimension, Point, Shape } from './shape.ts';

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
/** Control characters and halves of a pair: XML forbids them even escaped. */
const forbidden = /[^\P{Cc}\t\n\r]|\p{Cs}|[\ufffe\uffff]/gu;
export const escaped = (text: string) => text.replace(forbidden, '').replace(/[&<>"']/g, (sign) => entities[sign]!);

/** Two digits: the same bytes everywhere. */
export const n = (value: number) => String(Math.round(value * 100) / 100 || 0);
export const at = ([x, y]: Point) => `${n(x)} ${n(y)}`;

const toward = ([ax, ay]: Point, [bx, by]: Point, by_: number): Point => {
  const long = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  const share = long === 0 ? 0 : Math.min(0.5, by_ / long);
  return [ax + (bx - ax) * share, ay + (by - ay) * share];
};

/** A line through points, its corners rounded. */
function lineThrough(points: readonly Point[], closed: boolean, corner: number): string {
  if (corner === 0) return `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;
  const count = points.length;
  const turns = points.map((point, index) => {
    const [before, after] = [points[(index + count - 1) % count]!, points[(index + 1) % count]!];
    if (!closed && (index === 0 || index === count - 1)) return at(point);
    return `${at(toward(point, before, corner))}Q${at(point)} ${at(toward(point, after, corner))}`;
  });
  return `M${turns.join('L')}${closed ? 'Z' : ''}`;
}

export type ToSheet = (point: Point) => Point;
/** What was drawn [m], and where 0, 0 of it lies on the sheet [CSS px]. */
interface OnSheet { bounds: Bounds; origin: { x: number; y: number } }

export function shapeSvg(shape: Shape, toSheet: ToSheet, scale: number): string {
  const classes = [shape.part, shape.line, shape.filled && 'filled', shape.assumed && 'assumed'].filter(Boolean).join(' ');
  if (shape.form === 'circle') {
    const [x, y] = toSheet(shape.centre);
    return `<circle class="${classes}" cx="${n(x)}" cy="${n(y)}" r="${n(shape.radius * scale)}"/>`;
  }
  const d = shape.form === 'strokes' ? shape.strokes.map((points) => lineThrough(points.map(toSheet), false, 0)).join('') : lineThrough(shape.points.map(toSheet), shape.closed, shape.corner * scale);
  return `<path class="${classes}" d="${d}"/>`;
}

export const text = (kind: string, [x, y]: Point, content: string, turned = false) =>
  `<text class="${kind}" x="${n(x)}" y="${n(y)}"${turned ? ` transform="rotate(-90 ${at([x, y])})"` : ''}>${escaped(content)}</text>`;

const arrow = 6;
/** A dimension line with what it says, and the lines that lead from the thing to it. */
export function dimensionSvg({ from, to, side, place, of }: Omit<Dimension, 'value'>, { bounds, origin }: OnSheet, toSheet: ToSheet, scale: number, said: string): string {
  const [a, b] = [toSheet(from), toSheet(to)];
  const out = (place + 1) * paper.dimension - 4;
  if (side === 'below') {
    const y = origin.y - bounds.bottom * scale + out;
    return `<g class="dimension ${of}"><path d="M${n(a[0])} ${n(a[1] + 3)}V${n(y + 3)}M${n(b[0])} ${n(b[1] + 3)}V${n(y + 3)}M${n(a[0])} ${n(y)}H${n(b[0])}"/>`
      + `<path class="arrow" d="M${n(a[0])} ${n(y)}l${arrow} 2v-4zM${n(b[0])} ${n(y)}l-${arrow} 2v-4z"/>${text('figure', [(a[0] + b[0]) / 2, y - 3], said)}</g>`;
  }
  const x = side === 'left' ? origin.x + bounds.left * scale - out : origin.x + bounds.right * scale + out;
  const [gap, over] = side === 'left' ? [-3, -3] : [3, 3];
  return `<g class="dimension ${of}"><path d="M${n(b[0] + gap)} ${n(b[1])}H${n(x + over)}M${n(x)} ${n(a[1])}V${n(b[1])}"/>`
    + `<path class="arrow" d="M${n(x)} ${n(a[1])}l2 -${arrow}h-4zM${n(x)} ${n(b[1])}l2 ${arrow}h-4z"/>${text('figure', [x - 3, (a[1] + b[1]) / 2], said, true)}</g>`;
}

/** Where a line may break: at any space but those that hold a figure and its unit together. */
export const breaks = /[^\S\u00a0\u202f]+/;

/** Words on as many lines as they may take, for what can't be measured here is reckoned wide. */
export function wrapped(content: string, width: number, size: number, lines = Infinity): string[] {
  const most = Math.max(4, Math.floor(width / (size * paper.letter)));
  const broken: string[] = [];
  for (const word of content.split(breaks)) {
    const last = broken.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) broken[broken.length - 1] = `${last} ${word}`;
    else broken.push(word);
  }
  const kept = broken.slice(0, lines);
  if (broken.length > lines) kept[lines - 1] += ' …';
  return kept.map((line) => (line.length > most ? `${[...line].slice(0, most - 1).join('')}…` : line));
}
