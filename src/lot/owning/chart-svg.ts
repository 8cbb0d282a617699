import { escaped, n, text } from '../../drawing/svg-parts.ts';
import type { Point } from '../../drawing/shape.ts';
import type { ChartPoint, OwningChart } from './chart.ts';

/** What the caller says: the picture itself holds no words. */
export interface ChartWords {
  title: string;
  description: string;
  /** By the candidates' order. */
  names: readonly string[];
  /** Under the picture: what runs to the right, and beside it what runs up. */
  acrossLabel: string;
  upLabel: string;
  hours(hoursPerYear: number): string;
  money(amount: number): string;
}

export interface ChartWish {
  words: ChartWords;
  /** Before every id, so that several pictures on a page don't meet. */
  prefix: string;
  /** In CSS px, at least {@link narrowest}. */
  width: number;
  /** Carries its own style, for print and mail; a page brings {@link chartStyle} itself. */
  standalone?: boolean;
}

export const narrowest = 280;
const margin = { left: 78, right: 12, top: 34, bottom: 44 };
const steepness = 0.6;
const ticksUp = 5;
const lineOfKey = 18;
/** Where its marks stand: a name needs all the width there is. */
const keyAt = 7;
const mark = 4;

/** Each way has a mark of its own, told apart without colour. */
const marks: readonly ((at: Point) => string)[] = [
  ([x, y]) => `<circle cx="${n(x)}" cy="${n(y)}" r="${mark}"/>`,
  ([x, y]) => `<path d="M${n(x - mark)} ${n(y - mark)}h${2 * mark}v${2 * mark}h-${2 * mark}z"/>`,
  ([x, y]) => `<path d="M${n(x)} ${n(y - mark - 1)}l${mark + 1} ${2 * mark + 1}h-${2 * mark + 2}z"/>`,
];

/** The next round amount: 1, 2, 2½ or 5 and noughts. */
export function roundUp(amount: number): number {
  let unit = 1;
  while (unit * 10 < amount) unit *= 10;
  return unit * ([1, 2, 2.5, 5, 10].find((step) => unit * step >= amount) ?? 10);
}

/** Every other way is filled too, which tells them apart where they meet. */
const markClass = (index: number) => (index % 2 === 1 ? 'mark full' : 'mark');

const path = (kind: string, points: readonly Point[]) => `<path class="${kind}" d="M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}"/>`;

/** Costs by hours a year as a picture: the same chart and words give the same bytes. What it shows, the table behind it says. */
export function chartSvg({ series, own, crossings }: OwningChart, { words, prefix, width, standalone = false }: ChartWish): string {
  const wide = Math.max(narrowest, width);
  const key = series.length * lineOfKey;
  const [left, right, top] = [margin.left, wide - margin.right, margin.top + key];
  const bottom = top + (right - left) * steepness;
  const points = series.flat();
  const highest = Math.max(1, ...points.map(({ high }) => high));
  const step = roundUp(highest / ticksUp);
  const ticks = Math.ceil(highest / step);
  const most = ticks * step;
  const hours = points.map(({ hoursPerYear }) => hoursPerYear);
  const [from, to] = [Math.min(...hours), Math.max(...hours)];
  const across = (each: number) => left + ((right - left) * (each - from)) / Math.max(1, to - from);
  const up = (amount: number) => bottom - ((bottom - top) * amount) / most;
  const along = (line: readonly ChartPoint[], of: 'perYear' | 'low' | 'high') => line.map((point): Point => [across(point.hoursPerYear), up(point[of])]);
  const id = escaped(prefix);
  const levels = Array.from({ length: ticks + 1 }, (_, tick) => step * tick);
  const height = bottom + margin.bottom;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="acre-cost-chart" role="img" aria-labelledby="${id}-title" aria-describedby="${id}-description" width="${n(wide)}" height="${n(height)}" viewBox="0 0 ${n(wide)} ${n(height)}">`
    + (standalone ? `<style>${standaloneStyle}${chartStyle}</style>` : '')
    + `<title id="${id}-title">${escaped(words.title)}</title><desc id="${id}-description">${escaped(words.description)}</desc>`
    + series.map((_, index) => {
      const y = margin.top / 2 + index * lineOfKey;
      return `<g class="${markClass(index)}">${marks[index % marks.length]!([keyAt, y])}</g>${text('key', [keyAt + 12, y + 4], words.names[index] ?? '')}`;
    }).join('')
    + text('label', [2, top - 10], words.upLabel)
    + levels.map((level) => path('grid', [[left, up(level)], [right, up(level)]]) + text('up', [left - 6, up(level) + 4], words.money(level))).join('')
    + [from, (from + to) / 2, to].map((each, place) => text(`across ${['first', 'middle', 'last'][place]}`, [across(each), bottom + 16], words.hours(each))).join('')
    + text('label', [left, bottom + 34], words.acrossLabel)
    + path('own', [[across(own), top], [across(own), bottom]])
    + crossings.map((each) => path('crossing', [[across(each), top], [across(each), bottom]])).join('')
    + series.map((line, index) => `<g class="way">${path('bound', along(line, 'low'))}${path('bound', along(line, 'high'))}${path('point', along(line, 'perYear'))}`
      + `<g class="${markClass(index)}">${along(line, 'perYear').map((at) => marks[index % marks.length]!(at)).join('')}</g></g>`).join('')
    + '</svg>';
}

/** How the classes look, by the custom properties of the page the picture stands in. */
export const chartStyle = `
.acre-cost-chart { --cc-ink: var(--ink, var(--acre-ink, currentColor)); --cc-paper: var(--paper, var(--acre-paper, #fdfdfb)); --cc-own: var(--accent, var(--acre-accent, #6a2c62)); --cc-lesser: var(--muted, var(--acre-muted, #515a5e)); --cc-far: var(--line, var(--acre-line, #8a9296)); direction: ltr; font-size: 12px; max-width: 100%; height: auto; }
.acre-cost-chart path { fill: none; stroke: var(--cc-ink); stroke-linejoin: round; }
.acre-cost-chart .point { stroke-width: 1.8; }
.acre-cost-chart .bound { stroke: var(--cc-far); stroke-width: .75; }
.acre-cost-chart .grid { stroke: var(--cc-far); stroke-width: .4; }
.acre-cost-chart .own { stroke: var(--cc-own); stroke-width: 1; }
.acre-cost-chart .crossing { stroke: var(--cc-own); stroke-width: 1; stroke-dasharray: 2 3; }
.acre-cost-chart .mark :is(path, circle) { fill: var(--cc-paper); stroke: var(--cc-ink); stroke-width: 1.2; }
.acre-cost-chart .full :is(path, circle) { fill: var(--cc-ink); }
.acre-cost-chart text { fill: var(--cc-ink); font-variant-numeric: tabular-nums; }
.acre-cost-chart .label { fill: var(--cc-lesser); }
.acre-cost-chart .up { text-anchor: end; }
.acre-cost-chart .across.middle { text-anchor: middle; }
.acre-cost-chart .across.last { text-anchor: end; }
@media (forced-colors: active) {
  .acre-cost-chart { --cc-ink: CanvasText; --cc-paper: Canvas; --cc-own: LinkText; --cc-lesser: CanvasText; --cc-far: GrayText; forced-color-adjust: none; }
}
`;

/** For a picture that stands in no page of ours: on paper, in a mail. */
const standaloneStyle = '.acre-cost-chart { font-family: system-ui, sans-serif; background: var(--cc-paper); --acre-ink: #1d2326; }';
