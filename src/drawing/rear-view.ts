import type { Measures } from './measures.ts';
import type { Outfit } from './outfit.ts';
import { proportions as share } from './proportions.ts';
import { box, circle, dimension, path, strokes, type Point, type Shape } from './shape.ts';
import type { View } from './side-view.ts';

/** A tyre from behind, its lugs as chevrons; the outer edges of both stand as far apart as the machine is wide. */
function tyre(side: -1 | 1, { width, tyreWidth, rearTyre }: Measures): Shape[] {
  const outer = (side * width.value) / 2;
  const inner = outer - side * Math.min(tyreWidth.value, width.value * 0.45);
  const [left, right] = [Math.min(outer, inner), Math.max(outer, inner)];
  const [middle, top] = [(left + right) / 2, rearTyre.value];
  const chevrons = [0.1, 0.26, 0.42, 0.58, 0.74, 0.9].map((at): Point[] => [
    [left + (right - left) * 0.1, top * at - top * 0.025], [middle, top * at + top * 0.03], [right - (right - left) * 0.1, top * at - top * 0.025],
  ]);
  return [box({ part: 'tyre', line: 'heavy', filled: true, corner: (right - left) * 0.22 }, left, 0, right, top, width, tyreWidth, rearTyre), strokes({ part: 'wheel', line: 'light' }, chevrons, width, tyreWidth, rearTyre)];
}

function overDriver({ cab }: Outfit, { width, height, folded, rearTyre }: Measures): Shape[] {
  const [h, w, foot] = [height.value, width.value, rearTyre.value * 0.7];
  if (cab) {
    const [side, roof] = [w * share.cabSide, h * (1 - share.roof)];
    return [
      path({ part: 'cab', line: 'heavy', filled: true, closed: true }, [[-side, foot], [-side * 0.94, roof], [side * 0.94, roof], [side, foot]], height, width),
      box({ part: 'cab', line: 'light', corner: h * 0.02 }, -side * 0.8, rearTyre.value * 1.12, side * 0.8, roof - h * 0.03, height, width),
      box({ part: 'cab', line: 'heavy', filled: true, corner: h * 0.02 }, -side * 1.04, roof, side * 1.04, h, height, width),
    ];
  }
  const [x, thick] = [w * share.hoop, h * share.postThickness];
  return [
    path({ part: 'rops', line: 'heavy', filled: true, closed: true, corner: h * 0.035 }, [
      [-x - thick, foot], [-x - thick, h], [x + thick, h], [x + thick, foot], [x - thick, foot], [x - thick, h - 2 * thick], [-x + thick, h - 2 * thick], [-x + thick, foot],
    ], height),
    ...(folded ? [path({ part: 'folded', line: 'light' }, [[-x - thick * 3, folded.value], [x + thick * 3, folded.value]], folded)] : []),
  ];
}

function bodyShapes({ width: { value: w }, height: { value: h }, rearTyre, tyreWidth }: Measures): Shape[] {
  const r = rearTyre.value / 2;
  const inner = Math.max(w * 0.05, w / 2 - Math.min(tyreWidth.value, w * 0.45));
  const [seat, link] = [w * share.seatSide, w * share.linkSide];
  const over = r + r * share.fender;
  const fenderOf = (side: -1 | 1): Shape => path({ part: 'fender', line: 'heavy', filled: true, closed: true, corner: r * 0.08 }, [
    [side * inner * 0.8, over * 0.72], [side * inner * 0.8, over + r * 0.06], [side * (w / 2) * 0.96, over + r * 0.06], [side * (w / 2) * 0.96, over - r * 0.04], [side * inner * 0.92, over - r * 0.04], [side * inner * 0.92, over * 0.72],
  ], rearTyre);
  const bar = (from: Point, to: Point) => path({ part: 'hitch', line: 'heavy' }, [from, to]);
  return [
    box({ part: 'body', line: 'heavy', filled: true }, -inner, r * 0.82, inner, r * 1.18),
    box({ part: 'body', line: 'heavy', filled: true, corner: r * 0.1 }, -w * 0.13, r * 0.62, w * 0.13, r * 1.5),
    circle({ part: 'hitch', line: 'light', filled: true }, [0, r * 0.98], w * 0.035),
    fenderOf(-1), fenderOf(1),
    box({ part: 'seat', line: 'light', filled: true, corner: h * 0.03 }, -seat, h * (share.seatHeight - 0.03), seat, h * share.seatTop),
    box({ part: 'seat', line: 'light', filled: true, corner: h * 0.015 }, -seat * 1.1, h * (share.seatHeight - 0.05), seat * 1.1, h * (share.seatHeight + 0.03)),
    bar([-link * 0.8, r * 0.82], [-link, r * 0.5]), bar([link * 0.8, r * 0.82], [link, r * 0.5]),
    circle({ part: 'hitch', line: 'light', filled: true }, [-link, r * 0.48], w * 0.018), circle({ part: 'hitch', line: 'light', filled: true }, [link, r * 0.48], w * 0.018),
    path({ part: 'hitch', line: 'light' }, [[-link, r * 0.52], [-link * 0.9, r * 1.4], [link * 0.9, r * 1.4], [link, r * 0.52]]),
  ];
}

/** A machine from behind, its middle at 0. */
export function rearView(outfit: Outfit, measures: Measures): View {
  const { width, height } = measures;
  const half = width.value / 2;
  const deck = outfit.deck;
  return {
    shapes: [
      ...(deck === undefined ? [] : [box({ part: 'deck', line: 'heavy', filled: true, corner: 0.04 }, -deck / 2, share.deckBottom, deck / 2, share.deckTop)]),
      ...overDriver(outfit, measures), ...bodyShapes(measures), ...tyre(-1, measures), ...tyre(1, measures),
    ],
    dimensions: [
      ...(width.assumed ? [] : [dimension('width', 'below', 0, [-half, 0], [half, 0], width.value)]),
      ...(height.assumed ? [] : [dimension('height', 'left', 0, [-half, 0], [-half, height.value], height.value)]),
    ],
  };
}
