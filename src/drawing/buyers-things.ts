import { taskOf, type Answers } from '../answers/answers.ts';
import { needsOfLifting } from '../needs/lifting.ts';
import type { FigureId, RuleBook } from '../trade/book.ts';
import type { Fit, FitId } from './fits.ts';
import { guess, known } from './measures.ts';
import { proportions } from './proportions.ts';
import { box, circle, dimension, path, type Dimension, type Measure, type Shape } from './shape.ts';

export interface Load {
  id: 'bale' | 'pallet' | 'log';
  /** Diameter, or length of a pallet. */
  size: Measure;
  /** How high it has to go; absent where nobody said. */
  wanted: number | undefined;
}

/** The buyer's own things, as far as the answers speak of them. */
export interface BuyersThings {
  door?: { width: Measure; height: Measure };
  gate?: Measure;
  trailer?: { length?: number; width?: number };
  loads: Load[];
}

export type ThingId = 'door' | 'gate' | 'trailer' | Load['id'];

/** What a bale measures across: said, reckoned from its weight, or assumed. */
function baleSize(answers: Answers, diameter: number | undefined, book: RuleBook): Measure {
  if (diameter !== undefined) return known(diameter);
  const lift = needsOfLifting(answers, book).find(({ id }) => id === 'lift-bales.weight');
  if (lift?.capability !== 'loader.lift') return guess(book.value('drawing.bale-diameter'));
  return guess(2 * (lift.loadAhead - book.value('spear.face')));
}

export function thingsOf(answers: Answers, book: RuleBook): BuyersThings {
  const measure = (value: number | undefined, otherwise: FigureId) => (value === undefined ? guess(book.value(otherwise)) : known(value));
  const { doorWidth, doorHeight, kind } = answers.storage ?? {};
  const { how, trailer } = answers.haul ?? {};
  const [bales, pallets, logs] = [taskOf(answers, 'lift-bales'), taskOf(answers, 'lift-pallets'), taskOf(answers, 'handle-logs')];
  const gate = answers.land?.gate;
  const { deckLength, deckWidth } = how === 'own-trailer' ? trailer ?? {} : {};
  return {
    ...(kind !== 'outdoors' && (doorWidth !== undefined || doorHeight !== undefined) && {
      door: { width: measure(doorWidth, 'drawing.door-width'), height: measure(doorHeight, 'drawing.door-height') },
    }),
    ...(gate !== undefined && { gate: known(gate) }),
    ...((deckLength !== undefined || deckWidth !== undefined) && {
      trailer: { ...(deckLength !== undefined && { length: deckLength }), ...(deckWidth !== undefined && { width: deckWidth }) },
    }),
    loads: [
      ...(bales ? [{ id: 'bale', size: baleSize(answers, bales.diameter, book), wanted: bales.height } as const] : []),
      ...(pallets ? [{ id: 'pallet', size: known(book.value('drawing.pallet-length')), wanted: pallets.height } as const] : []),
      ...(logs ? [{ id: 'log', size: measure(logs.diameter, 'drawing.log-diameter'), wanted: logs.height } as const] : []),
    ],
  };
}

/** A mark beside a thing: whether the machine does what it asks. */
export interface Mark { at: readonly [number, number]; outcome: Fit['outcome']; of: FitId }

const { palletHeight } = proportions;
export const heightOf = ({ id, size }: Load) => (id === 'pallet' ? palletHeight : size.value);

/** A load with its lowest point at a height, its left edge at x. */
export function loadShapes({ id, size }: Load, x: number, bottom: number): Shape[] {
  const d = size.value;
  if (id === 'pallet') {
    const board = palletHeight * 0.2;
    const block = (at: number) => box({ part: 'pallet', line: 'light' }, x + at, bottom + board, x + at + d * 0.1, bottom + palletHeight - board, size);
    return [
      box({ part: 'pallet', line: 'heavy', filled: true }, x, bottom + palletHeight - board, x + d, bottom + palletHeight, size),
      box({ part: 'pallet', line: 'light', filled: true }, x, bottom, x + d, bottom + board, size), block(0), block(d * 0.45), block(d * 0.9),
    ];
  }
  const rings = id === 'bale' ? [0.74, 0.48, 0.22] : [0.6, 0.3];
  return [
    circle({ part: id, line: 'heavy', filled: true }, [x + d / 2, bottom + d / 2], d / 2, size),
    ...rings.map((share) => circle({ part: id, line: 'thin' }, [x + d / 2, bottom + d / 2], (d / 2) * share, size)),
  ];
}

/** The level a load has to go up to. */
export const levelShape = (from: number, to: number, wanted: number) => path({ part: 'level', line: 'heavy' }, [[from, wanted], [to, wanted]], known(wanted));

/** An opening: two sides, and what lies over them where somebody said how high. */
export function openingShapes(part: 'door' | 'gate', width: Measure, height: Measure): Shape[] {
  const half = width.value / 2;
  const side = (x: number) => path({ part, line: 'heavy' }, [[x, 0], [x, height.value]], width, height);
  return [side(-half), side(half), ...(part === 'door' && !height.assumed ? [path({ part, line: 'heavy' }, [[-half, height.value], [half, height.value]], height)] : [])];
}

export interface DrawnThing { id: ThingId; shapes: Shape[]; dimensions: Dimension[] }

function trailerShapes(length: Measure, deck: number): Shape[] {
  const [l, wheel] = [length.value, deck * 0.5];
  return [
    box({ part: 'trailer', line: 'heavy', filled: true }, 0, deck * 0.8, l, deck, length),
    ...[0.56, 0.56 + (wheel * 2.2) / l].flatMap((at) => [circle({ part: 'trailer', line: 'light', filled: true }, [l * at, wheel], wheel, guess(0))]),
    path({ part: 'trailer', line: 'light' }, [[l, deck * 0.88], [l + deck * 1.3, deck * 0.7], [l + deck * 1.3, 0]], guess(0)),
  ];
}

const across = (of: 'opening' | 'deck', width: number) => dimension(of, 'below', 0, [-width / 2, 0], [width / 2, 0], width);

function doorAlone({ width, height }: { width: Measure; height: Measure }): DrawnThing {
  const left = -width.value / 2;
  return {
    id: 'door', shapes: openingShapes('door', width, height),
    dimensions: [
      ...(width.assumed ? [] : [across('opening', width.value)]),
      ...(height.assumed ? [] : [dimension('height', 'left', 0, [left, 0], [left, height.value], height.value)]),
    ],
  };
}

function trailerFromBehind(width: number, deck: number): DrawnThing {
  const wheel = (x: number) => box({ part: 'trailer', line: 'light' }, x - 0.1, 0, x + 0.1, deck * 0.8, guess(0));
  return {
    id: 'trailer', dimensions: [across('deck', width)],
    shapes: [box({ part: 'trailer', line: 'heavy', filled: true }, -width / 2, deck * 0.8, width / 2, deck, known(width)), wheel(-width * 0.4), wheel(width * 0.4)],
  };
}

function loadAlone(load: Load): DrawnThing {
  const { id, size, wanted } = load;
  if (wanted === undefined) return { id, shapes: loadShapes(load, 0, 0), dimensions: [] };
  return {
    id, shapes: [...loadShapes(load, 0, wanted), levelShape(-0.1, size.value + 0.1, wanted)],
    dimensions: [dimension('wanted', 'left', 0, [-0.1, 0], [-0.1, wanted], wanted)],
  };
}

/** The buyer's things by themselves, as one meets them from that side. */
export function drawnThings({ door, gate, trailer = {}, loads }: BuyersThings, view: 'side' | 'rear', book: RuleBook): DrawnThing[] {
  const deck = book.value('drawing.trailer-deck-height');
  const things: DrawnThing[] = [];
  if (door) things.push(doorAlone(door));
  if (gate) things.push({ id: 'gate', shapes: openingShapes('gate', gate, guess(book.value('drawing.gate-height'))), dimensions: [across('opening', gate.value)] });
  if (view === 'rear') return trailer.width === undefined ? things : [...things, trailerFromBehind(trailer.width, deck)];
  const { length } = trailer;
  if (length !== undefined) things.push({ id: 'trailer', shapes: trailerShapes(known(length), deck), dimensions: [dimension('deck', 'below', 0, [0, 0], [length, 0], length)] });
  return [...things, ...loads.map(loadAlone)];
}
