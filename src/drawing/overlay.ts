import type { RuleBook } from '../trade/book.ts';
import { heightOf, levelShape, loadShapes, openingShapes, type BuyersThings, type Mark } from './buyers-things.ts';
import { sideRoom, type Fit, type FitId } from './fits.ts';
import { guess, known, type Measures } from './measures.ts';
import { proportions } from './proportions.ts';
import { boundsOf, box, dimension, path, type Dimension, type Point, type Shape } from './shape.ts';

interface Beside {
  things: BuyersThings;
  fits: readonly Fit[];
  measures: Measures;
  /** The machine itself. */
  shapes: readonly Shape[];
  pin: Point | undefined;
  book: RuleBook;
}
/** What is drawn round a machine; the figures of it for where the things don't stand by themselves too. */
export interface Overlay { behind: Shape[]; before: Shape[]; marks: Mark[]; dimensions: Dimension[] }

/** Below the ground line a trailer's deck lies as a bar, as long or as wide as it is. */
const deckBar = { top: proportions.deckBarTop, bottom: proportions.deckBarBottom } as const;
const bar = (left: number, length: number) => box({ part: 'trailer', line: 'heavy' }, left, deckBar.bottom, left + length, deckBar.top, known(length));

const markOf = (fits: readonly Fit[]) => (of: FitId, at: Point): Mark[] => fits.filter(({ id }) => id === of).map(({ outcome }) => ({ at, outcome, of }));

/** Loads at the height they have to go to, ahead of the raised arms; side by side where they would run into each other. */
function loadsBeside({ things, fits, shapes, pin }: Beside): Overlay {
  const overlay: Overlay = { behind: [], before: [], marks: [], dimensions: [] };
  const { right } = boundsOf(shapes);
  const start = pin ? pin[0] + 0.15 : right + 0.15;
  const placed: { left: number; right: number; bottom: number; top: number }[] = [];
  for (const load of things.loads) {
    if (load.wanted === undefined) continue;
    const [bottom, top] = [load.wanted, load.wanted + heightOf(load)];
    // A load no higher than the resting arms, or the bucket, goes ahead of them.
    const free = shapes.filter(({ part }) => part === 'loader' || part === 'bucket').map((shape) => boundsOf([shape]))
      .filter((own) => bottom < own.top).reduce((x, own) => Math.max(x, own.right + 0.1), start);
    const left = placed.filter((one) => one.bottom < top && bottom < one.top).reduce((x, one) => Math.max(x, one.right + 0.12), free);
    placed.push({ left, right: left + load.size.value, bottom, top });
    overlay.behind.push(...loadShapes(load, left, bottom));
    overlay.before.push(levelShape(left - 0.1, left + load.size.value + 0.1, bottom));
    overlay.dimensions.push(dimension('wanted', 'right', placed.length, [left, 0], [left + load.size.value + 0.1, bottom], bottom));
    overlay.marks.push(...markOf(fits)(`${load.id}.height`, [left + load.size.value / 2, bottom]));
  }
  return overlay;
}

function fromSide(beside: Beside): Overlay {
  const { things: { trailer }, fits, measures } = beside;
  const loads = loadsBeside(beside);
  if (trailer?.length === undefined) return loads;
  const left = -Math.max(measures.back, measures.rearTyre.value / 2);
  const end: Point = [left + trailer.length, (deckBar.top + deckBar.bottom) / 2];
  return {
    ...loads, behind: [...loads.behind, bar(left, trailer.length)],
    marks: [...loads.marks, ...markOf(fits)('trailer.length', end)],
    dimensions: [...loads.dimensions, dimension('deck', 'below', 2, [left, deckBar.bottom], [end[0], deckBar.bottom], trailer.length)],
  };
}

/** Openings round a machine, and within them what is left for it once there is room on both sides. */
function fromBehind({ things: { door, gate, trailer }, fits, book }: Beside): Overlay {
  const mark = markOf(fits);
  const room = sideRoom(book);
  const within = (half: number, height: number) => [-1, 1].map((side) => path({ part: 'room', line: 'thin' }, [[side * (half - room), 0], [side * (half - room), height]], known(half)));
  const across = (place: number, of: 'opening' | 'deck', width: number) => dimension(of, 'below', place, [-width / 2, 0], [width / 2, 0], width);
  const gateHeight = guess(book.value('drawing.gate-height'));
  return {
    behind: trailer?.width === undefined ? [] : [bar(-trailer.width / 2, trailer.width)],
    before: [
      ...(door ? [...openingShapes('door', door.width, door.height), ...(door.width.assumed ? [] : within(door.width.value / 2, door.height.value))] : []),
      ...(gate ? [...openingShapes('gate', gate, gateHeight), ...within(gate.value / 2, gateHeight.value)] : []),
    ],
    dimensions: [
      ...(trailer?.width === undefined ? [] : [across(1, 'deck', trailer.width)]),
      ...(gate ? [across(2, 'opening', gate.value)] : []),
      ...(door && !door.width.assumed ? [across(3, 'opening', door.width.value)] : []),
      ...(door && !door.height.assumed ? [dimension('opening', 'right', 0, [door.width.value / 2, 0], [door.width.value / 2, door.height.value], door.height.value)] : []),
    ],
    marks: [
      ...(door ? [...mark('door.width', [door.width.value / 2, door.height.value * 0.8]), ...mark('door.height', [0, door.height.value])] : []),
      ...(gate ? mark('gate.width', [gate.value / 2, gateHeight.value]) : []),
      ...(trailer?.width === undefined ? [] : mark('trailer.width', [trailer.width / 2, (deckBar.top + deckBar.bottom) / 2])),
    ],
  };
}

export const besideMachine = (view: 'side' | 'rear', beside: Beside): Overlay => (view === 'side' ? fromSide(beside) : fromBehind(beside));
