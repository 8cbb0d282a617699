import type { Cell, LineUp } from './line-up.ts';
import { footHeight, type Placed } from './lay-out.ts';
import { paper } from './proportions.ts';
import type { Dimension, Point, Shape } from './shape.ts';
import { lineUpStyle, standaloneStyle } from './style.ts';
import type { LineUpWords } from './words.ts';

export interface SvgWish {
  words: LineUpWords;
  /** Before every id, so that several pictures on a page don't meet. */
  prefix: string;
  /** Carries its own style, for print and mail; a page brings {@link lineUpStyle} itself. */
  standalone?: boolean;
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
/** Control characters and halves of a pair: XML forbids them even escaped. */
const forbidden = /[^\P{Cc}\t\n\r]|\p{Cs}|[\ufffe\uffff]/gu;
const escaped = (text: string) => text.replace(forbidden, '').replace(/[&<>"']/g, (sign) => entities[sign]!);

/** Two digits: the same bytes everywhere. */
const n = (value: number) => String(Math.round(value * 100) / 100 || 0);
const at = ([x, y]: Point) => `${n(x)} ${n(y)}`;

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

type ToSheet = (point: Point) => Point;

function shapeSvg(shape: Shape, toSheet: ToSheet, scale: number): string {
  const classes = [shape.part, shape.line, shape.filled && 'filled', shape.assumed && 'assumed'].filter(Boolean).join(' ');
  if (shape.form === 'circle') {
    const [x, y] = toSheet(shape.centre);
    return `<circle class="${classes}" cx="${n(x)}" cy="${n(y)}" r="${n(shape.radius * scale)}"/>`;
  }
  const d = shape.form === 'strokes' ? shape.strokes.map((points) => lineThrough(points.map(toSheet), false, 0)).join('') : lineThrough(shape.points.map(toSheet), shape.closed, shape.corner * scale);
  return `<path class="${classes}" d="${d}"/>`;
}

const text = (kind: string, [x, y]: Point, content: string, turned = false) =>
  `<text class="${kind}" x="${n(x)}" y="${n(y)}"${turned ? ` transform="rotate(-90 ${at([x, y])})"` : ''}>${escaped(content)}</text>`;

const arrow = 6;
/** A dimension line with its figure, and the lines that lead from the machine to it. */
function dimensionSvg({ from, to, value, side, place, of }: Dimension, { bounds, origin }: Placed<Cell>, toSheet: ToSheet, scale: number, words: LineUpWords): string {
  const [a, b] = [toSheet(from), toSheet(to)];
  const out = (place + 1) * paper.dimension - 4;
  const said = words.length(value);
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

/** A tick, a cross or a question mark: told apart without colour. */
const marks = {
  yes: '<path d="M-3.5 0.5l2.5 2.5l4.5 -6"/>', no: '<path d="M-3 -3l6 6M3 -3l-6 6"/>',
  unknown: '<path d="M-2.2 -1.8a2.2 2.2 0 1 1 3.2 2q-1 .6 -1 1.6M0 3.6v.4"/>',
} as const;

/** Words on as many lines as they may take, for what can't be measured here is reckoned wide. */
export function wrapped(content: string, width: number, size: number, lines = Infinity): string[] {
  const most = Math.max(4, Math.floor(width / (size * paper.letter)));
  const broken: string[] = [];
  for (const word of content.split(/\s+/)) {
    const last = broken.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) broken[broken.length - 1] = `${last} ${word}`;
    else broken.push(word);
  }
  const kept = broken.slice(0, lines);
  if (broken.length > lines) kept[lines - 1] += ' …';
  return kept.map((line) => (line.length > most ? `${[...line].slice(0, most - 1).join('')}…` : line));
}

function cellSvg(cell: Placed<Cell>, { scale }: LineUp, { words, prefix, standalone = false }: SvgWish): string {
  const { origin, box, labels } = cell;
  const toSheet: ToSheet = ([x, y]) => [origin.x + x * scale, origin.y - y * scale];
  const said = cell.kind === 'machine' ? words.machine(cell.item) : words.thing(cell.id);
  const standing = cell.kind === 'machine' ? words.machine(cell.item).standing : undefined;
  const id = escaped(`${prefix}-${cell.kind}-${cell.id}`);
  const lines = wrapped(said.name, box.width - 8, paper.name, 2);
  const middle = box.x + box.width / 2;
  const line = (index: number) => labels + index * paper.lineHeight;
  // On paper and in a mail there is nothing to be reached by a key.
  const stop = cell.kind === 'machine' && !standalone ? ' tabindex="0"' : '';
  return `<g class="${cell.kind}${cell.kind === 'machine' ? ` ${cell.item.standing}` : ''}" id="${id}" role="img"${stop} aria-labelledby="${id}-name" aria-describedby="${id}-said">`
    + `<title id="${id}-name">${escaped(standing ? `${said.name}: ${standing}` : said.name)}</title><desc id="${id}-said">${escaped(said.description)}</desc>`
    + `<path class="ground" d="M${n(box.x + 4)} ${n(origin.y)}H${n(box.x + box.width - 4)}"/>`
    + cell.shapes.map((shape) => shapeSvg(shape, toSheet, scale)).join('')
    + cell.dimensions.map((dimension) => dimensionSvg(dimension, cell, toSheet, scale, words)).join('')
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
