import type { Quantity } from '../../units/quantity.ts';
import { slopeFromPercent } from '../../trade/formulas/slope-from-percent.ts';
import { tan } from '../../units/transcendental.ts';
import { guess, known } from '../measures.ts';
import { path, strokes, type Point, type Shape } from '../shape.ts';
import { ft, showAngle, type Given, type Picture, type PictureCell } from './picture.ts';

/** How far the ground is drawn to go along. */
const runs = { us: 10 * ft, metric: 1 };
/** CSS pixels of that run, and the greatest height for the steepest. */
const [least, most] = [140, 230];
/** Steeper than this many times its run nothing is driven, and nothing is drawn. */
const wall = 4;

const unit = ([x, y]: Point): Point => {
  const long = Math.sqrt(x * x + y * y);
  return [x / long, y / long];
};

/** From the level to the slope, at a distance from where they meet. */
function arc(run: number, rise: number, radius: number): Point[] {
  const steps = [0, 1, 2, 3, 4, 5, 6].map((step) => step / 6);
  const [cos, sin] = unit([run, rise]);
  return steps.map((share) => unit([1 + (cos - 1) * share, sin * share])).map(([x, y]): Point => [x * radius, y * radius]);
}

/** Ground that goes up, hatched below as ground is in a section; dashed where only its kind is known. */
function ground(run: number, rise: number, open: boolean): Shape[] {
  const on = open ? guess(rise) : known(rise);
  const hatch = Array.from({ length: 11 }, (_, at): Point[] => {
    const [x, y] = [(run * (at + 1)) / 12, (rise * (at + 1)) / 12];
    const deep = Math.min(y, run * 0.035);
    return [[x, y], [x - deep, y - deep]];
  });
  return [
    strokes({ part: 'slope', line: 'thin' }, hatch),
    path({ part: 'slope', line: 'light' }, [[0, 0], [run, 0], [run, rise]]),
    path({ part: 'slope', line: 'thin' }, arc(run, rise, run * 0.5)),
    path({ part: 'slope', line: 'heavy' }, [[0, 0], [run, rise]], on),
  ];
}

/** What the buyer measured [rad]; a kind of ground is no measure. */
function measured({ answers: { land } }: Given): Quantity<'angle'> | undefined {
  const said = land?.slope;
  if (said === undefined || typeof said === 'string') return undefined;
  return typeof said === 'number' ? said : slopeFromPercent(said.value);
}

/** Flat, rolling and steep ground as angles, with how far each goes up, and the buyer's own beside them. */
export function slopePicture(given: Given): Picture {
  const { book, units, words, length, answers: { land } } = given;
  const { names, title, upIn } = words.slope;
  const run = runs[units];
  const [flat, rolling] = [book.value('slope.flat'), book.value('slope.rolling')];
  const [flatRise, rollingRise] = [flat, rolling].map((angle) => run * tan(angle)) as [number, number];
  const angle = (radians: number) => showAngle(radians, given);

  const cell = (kind: keyof typeof names, drawn: number, told: number, up: string, by: string, more: readonly Shape[] = []): PictureCell => {
    const own = kind === 'own' || land?.slope === kind;
    return {
      own, name: kind !== 'own' && own ? words.chosen(names[kind]) : names[kind], lines: [upIn(up, length(run)), by],
      shapes: [...more, ...ground(run, drawn, drawn !== told)],
      dimensions: [
        { of: 'run', side: 'below', place: 0, from: [0, 0], to: [run, 0], said: length(run) },
        { of: 'rise', side: 'right', place: 0, from: [run, 0], to: [run, told], said: drawn === told ? length(told) : `> ${length(told)}` },
      ],
    };
  };
  const cells = [
    cell('flat', flatRise, flatRise, words.lessThan(length(flatRise)), words.lessThan(angle(flat))),
    cell('rolling', rollingRise, rollingRise, words.range(length(flatRise), length(rollingRise)), words.range(angle(flat), angle(rolling))),
    // How steep steep is nobody said: it is drawn past the rolling ground, as far again.
    cell('steep', rollingRise * 2, rollingRise, words.moreThan(length(rollingRise)), words.moreThan(angle(rolling)), [
      path({ part: 'slope', line: 'thin' }, [[0, 0], [run, rollingRise]]),
    ]),
  ];
  const own = measured(given);
  const rise = own !== undefined && own >= 0 ? run * tan(own) : -1;
  if (own !== undefined && rise >= 0 && rise <= run * wall) cells.push(cell('own', rise, rise, length(rise), angle(own)));
  const steepest = Math.max(run, rise);
  return { title, cells, scale: { least: least / steepest, most: most / steepest } };
}
