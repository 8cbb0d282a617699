import { loadShapes } from '../buyers-things.ts';
import { guess, known } from '../measures.ts';
import { proportions } from '../proportions.ts';
import { box, circle, path, strokes, type Point, type Shape } from '../shape.ts';
import type { Given, Picture } from './picture.ts';

/** The upright of the forks, which the load stands against: its thickness and height, and that of a tine [m]. */
const [upright, mast, tine] = [0.06, 0.75, 0.04];
const mark = 0.05;

/** A pallet on the forks, and how far ahead of them the middle of its load is. */
export function palletsPicture({ book, length, words }: Given): Picture {
  const [long, ahead] = [book.value('drawing.pallet-length'), book.value('forks.load-centre')];
  const bottom = proportions.palletHeight;
  const high = long * 0.7;
  const middle: Point = [ahead, bottom + high / 2];
  const cross: Point[][] = [[[ahead - mark * 1.6, middle[1]], [ahead + mark * 1.6, middle[1]]], [[ahead, middle[1] + mark * 1.6], [ahead, 0]]];
  const shapes: Shape[] = [
    // What stands on it, and how high, nobody said.
    box({ part: 'pallet', line: 'light' }, 0, bottom, long, bottom + high, guess(high)),
    ...loadShapes({ id: 'pallet', size: known(long), wanted: undefined }, 0, 0),
    path({ part: 'forks', line: 'heavy', filled: true, closed: true }, [
      [-upright, mast], [-upright, bottom * 0.35], [long * 0.88, bottom * 0.45], [long * 0.88, bottom * 0.45 + tine / 2], [0, bottom * 0.35 + tine], [0, mast],
    ]),
    strokes({ part: 'forks', line: 'thin' }, cross),
    circle({ part: 'forks', line: 'heavy' }, middle, mark),
  ];
  return {
    title: words.pallets.title, scale: { least: 100, most: 170 },
    cells: [{
      shapes, name: words.pallets.middle(length(ahead)), lines: [], own: false,
      dimensions: [
        { of: 'middle', side: 'below', place: 0, from: [0, 0], to: [ahead, 0], said: length(ahead) },
        { of: 'length', side: 'below', place: 1, from: [0, 0], to: [long, 0], said: length(long) },
      ],
    }],
  };
}
