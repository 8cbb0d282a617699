import type { Loader } from '../catalogue/catalogue.ts';
import { guess, known, type Measures } from './measures.ts';
import { proportions as share } from './proportions.ts';
import { circle, path, turned, type Measure, type Point, type Shape } from './shape.ts';

/** Where the loader's parts are, seen from the side. */
export interface LoaderPose {
  shapes: Shape[];
  /** How high and how far ahead its pins come; absent where nobody said how high. */
  pin?: Point;
}

/** A line made as thick as an arm: along one side and back along the other. */
function band(points: readonly Point[], thickness: number): Point[] {
  const side = (by: number) => points.map(([x, y], at): Point => {
    const [a, b] = [points[Math.max(0, at - 1)]!, points[Math.min(points.length - 1, at + 1)]!];
    // Where the arms turn decides how far out they are when raised.
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const long = Math.sqrt(dx * dx + dy * dy) || 1;
    return [x - (dy / long) * by, y + (dx / long) * by];
  });
  return [...side(thickness / 2), ...side(-thickness / 2).reverse()];
}

/**
 * The loader with its bucket on the ground, and its arms once more as they stand at full height: how high is its
 * maker's figure, how far out is assumed.
 */
export function loaderFromSide(loader: Loader, { wheelbase, withLoader, bonnet, back }: Measures): LoaderPose {
  const b = bonnet.value;
  const tip = withLoader.value - back;
  const pivot: Point = [wheelbase.value * share.loaderPivot, b * share.pivotHeight];
  const rest = b * share.pinAtRest;
  const drop = pivot[1] - rest;
  // At its farthest the arm lies level: the pins are then as far ahead of the front axle as its maker says.
  const reach = loader.pinsAhead === undefined ? undefined : wheelbase.value + loader.pinsAhead - pivot[0];
  const restX = reach !== undefined && reach > drop ? pivot[0] + Math.sqrt(reach * reach - drop * drop) : Infinity;
  const depth = b * share.bucketDepth;
  // A bucket shorter than half its usual depth means that the figures don't fit together.
  const fits = restX < tip - depth / 2;
  const pin: Point = [fits ? restX : Math.max(pivot[0] + drop / 2, tip - depth), rest];
  const thick = b * share.armThickness;
  const knee: Point = [pin[0] - depth * 0.35, pivot[1] - drop * 0.12];
  const armLine: Point[] = [pivot, knee, pin];
  const bucketTop = b * share.bucketHeight;
  const bucketBack = pin[0] + thick * 0.5;
  const mast = (by: number, height: number): Point => [pivot[0] + thick * by, height];
  const foot = b * share.chassisTop * 0.8;
  const shapes: Shape[] = [
    path({ part: 'loader', line: 'light', filled: true, closed: true }, [mast(-1.5, foot), mast(-0.9, pivot[1] + thick), mast(0.9, pivot[1] + thick), mast(1.5, foot)], withLoader),
    path({ part: 'loader', line: 'light' }, [mast(0.7, foot + thick), [pivot[0] + (knee[0] - pivot[0]) * 0.62, pivot[1] - drop * 0.09]], withLoader),
    path({ part: 'loader', line: 'heavy', filled: true, closed: true, corner: thick / 2 }, band(armLine, thick), withLoader),
    circle({ part: 'loader', line: 'light' }, pivot, thick * 0.28, withLoader),
    path({ part: 'bucket', line: 'heavy', filled: true, closed: true, corner: bucketTop * 0.18 }, [
      [tip, 0.01], [bucketBack + depth * 0.1, 0.01], [bucketBack, bucketTop * 0.35], [bucketBack, bucketTop], [bucketBack + (tip - bucketBack) * 0.3, bucketTop * 0.98],
    ], withLoader),
    circle({ part: 'loader', line: 'light', filled: true }, pin, thick * 0.28, withLoader),
  ];
  const { fullHeight } = loader;
  if (fullHeight === undefined) return { shapes };

  // Where the arms turn decides how far out they are when raised.
  const arm: Measure = guess(0);
  const [dx, dy] = [pin[0] - pivot[0], pin[1] - pivot[1]];
  const long = Math.sqrt(dx * dx + dy * dy);
  const rise = fullHeight - pivot[1];
  // Arms too short for the height their maker gives would stand upright: the height is believed.
  const out = Math.sqrt(Math.max(0, long * long - rise * rise));
  const top: Point = [pivot[0] + out, fullHeight];
  const turn: Point = [(dx * out + dy * rise) / (long * long), (dx * rise - dy * out) / (long * long)];
  return {
    shapes: [
      path({ part: 'reach', line: 'thin' }, Math.abs(rise) <= long ? armLine.map((point) => turned(point, pivot, turn)) : [pivot, top], arm),
      circle({ part: 'reach', line: 'thin', filled: true }, top, thick * 0.4, known(fullHeight)),
      path({ part: 'reach', line: 'thin' }, [[top[0] + thick * 0.4, fullHeight], [top[0] + depth * 0.7, fullHeight]], known(fullHeight)),
      ...shapes,
    ],
    pin: top,
  };
}
