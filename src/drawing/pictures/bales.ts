import { taskOf } from '../../answers/answers.ts';
import { needsOfLifting } from '../../needs/lifting.ts';
import { figureRules } from '../../trade/book.ts';
import { baleVolume, massOfVolume } from '../../trade/formulas/bale-mass.ts';
import { factors, type Quantity } from '../../units/quantity.ts';
import { box, circle, path, type Point, type Shape } from '../shape.ts';
import { ft, type Given, type Picture, type PictureCell, type SaidDimension } from './picture.ts';

/** Common sizes: width and diameter [m]. */
const sizes: readonly (readonly [number, number])[] = [[4 * ft, 4 * ft], [4 * ft, 5 * ft], [5 * ft, 5 * ft], [5 * ft, 6 * ft]];
/** A post to measure them by: about as high as a man. */
const posts = { us: 6 * ft, metric: 2 };
const postThickness = 0.1;

/** How a bale's width is shown: back and up by these shares of it. */
const depth = [0.4, 0.2] as const;

const volumeOf = (width: number, diameter: number) =>
  baleVolume(diameter as Quantity<'length'>, width as Quantity<'length'>).result.value as Quantity<'volume'>;
const weightAt = (density: number, width: number, diameter: number) =>
  massOfVolume(volumeOf(width, diameter), density as Quantity<'density'>).result.value;

/** Two digits in the reader's unit: a bale nobody weighed isn't known to the pound. */
function roundMass(kg: number, units: 'us' | 'metric'): number {
  const factor = units === 'us' ? factors.mass.lb : factors.mass.kg;
  return Number((kg / factor).toPrecision(2)) * factor;
}

/** A bale lying on its side, seen on its round face with its width behind it, as it is drawn in a workshop. */
function baleShapes(diameter: number, width: number | undefined): Shape[] {
  const r = diameter / 2;
  const face = [1, 0.74, 0.48, 0.22].map((share) => circle({ part: 'bale', line: share === 1 ? 'heavy' : 'thin', filled: share === 1 }, [r, r], r * share));
  if (width === undefined) return face;
  const [dx, dy] = [width * depth[0], width * depth[1]];
  const long = Math.sqrt(dx * dx + dy * dy);
  const [outX, outY] = [(-dy / long) * r, (dx / long) * r];
  const [over, under]: [Point, Point] = [[r + outX, r + outY], [r - outX, r - outY]];
  const back = ([x, y]: Point): Point => [x + dx, y + dy];
  return [
    circle({ part: 'bale', line: 'heavy', filled: true }, back([r, r]), r),
    path({ part: 'body', line: 'no-line', filled: true, closed: true }, [over, back(over), back(under), under]),
    path({ part: 'bale', line: 'heavy' }, [over, back(over)]),
    path({ part: 'bale', line: 'heavy' }, [under, back(under)]),
    ...face,
  ];
}

const upright = (of: 'diameter' | 'height', high: number, { length }: Given): SaidDimension =>
  ({ of, side: 'left', place: 0, from: [0, 0], to: [0, high], said: length(high) });

function postCell(given: Given): PictureCell {
  const high = posts[given.units];
  return {
    name: given.words.bales.post, lines: [given.length(high)], own: false, dimensions: [upright('height', high, given)],
    shapes: [box({ part: 'post', line: 'heavy', filled: true }, 0, 0, postThickness, high)],
  };
}

function sizeCell([width, diameter]: readonly [number, number], given: Given): PictureCell {
  const { book, mass, units, words } = given;
  const at = (density: number) => mass(roundMass(weightAt(density, width, diameter), units));
  const [low, high] = figureRules['bale.density'].valid.map((density) => at(density * factors.density['lb/ft3'])) as [string, string];
  return {
    name: `${given.length(width)} × ${given.length(diameter)}`, own: false,
    lines: [words.about(at(book.value('bale.density'))), words.range(low, high)],
    shapes: baleShapes(diameter, width), dimensions: [upright('diameter', diameter, given)],
  };
}

/** The buyer's own bale, where its size is answered: with its weight, answered or reckoned as a loader is judged by it. */
function ownCell(given: Given): PictureCell | undefined {
  const { answers, book, length, mass, units, words } = given;
  const { diameter, width, weight } = taskOf(answers, 'lift-bales') ?? {};
  if (diameter === undefined || !(diameter > 0)) return undefined;
  const lift = needsOfLifting(answers, book).find(({ id }) => id === 'lift-bales.weight');
  const reckoned = weight === undefined && lift?.capability === 'loader.lift' ? lift.load : undefined;
  return {
    name: words.bales.own, own: true,
    lines: [
      width === undefined ? length(diameter) : `${length(width)} × ${length(diameter)}`,
      ...(weight === undefined ? [] : [mass(weight)]), ...(reckoned === undefined ? [] : [words.about(mass(roundMass(reckoned, units)))]),
    ],
    shapes: baleShapes(diameter, width), dimensions: [upright('diameter', diameter, given)],
  };
}

/** The common round bales to one scale beside a post, with what such bales of dry hay weigh. */
export function balesPicture(given: Given): Picture {
  const own = ownCell(given);
  return {
    title: given.words.bales.title, scale: { least: 36, most: 52 },
    cells: [postCell(given), ...sizes.map((size) => sizeCell(size, given)), ...(own ? [own] : [])],
  };
}
