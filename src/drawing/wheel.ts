import { lugs, proportions as share } from './proportions.ts';
import { circle, strokes, turned, type Measure, type Point, type Shape } from './shape.ts';

/** A wheel on the ground, seen from the side, its lugs hinted. */
export function wheelFromSide(x: number, diameter: Measure): Shape[] {
  const radius = diameter.value / 2;
  const centre: Point = [x, radius];
  const marks: [Point, Point][] = [];
  let [outer, inner]: [Point, Point] = [[x + radius, radius], [x + radius * share.lug, radius]];
  // Each mark leans: its inner end lies half a step ahead of its outer one.
  const { turn: [cos, sin] } = lugs;
  const half: Point = [Math.sqrt((1 + cos) / 2), Math.sqrt((1 - cos) / 2)];
  inner = turned(inner, centre, half);
  for (let lug = 0; lug < lugs.count; lug++) {
    marks.push([outer, inner]);
    [outer, inner] = [turned(outer, centre, [cos, sin]), turned(inner, centre, [cos, sin])];
  }
  return [
    circle({ part: 'tyre', line: 'heavy', filled: true }, centre, radius, diameter),
    strokes({ part: 'wheel', line: 'light' }, marks, diameter),
    circle({ part: 'wheel', line: 'light' }, centre, radius * share.rim, diameter),
    circle({ part: 'wheel', line: 'light' }, centre, radius * share.hub, diameter),
  ];
}
