import type { Answers } from '../answers/answers.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { StandingSoFar } from '../reasons/standing-so-far.ts';
import type { RuleBook } from '../trade/book.ts';
import { byCodeUnit } from '../units/compare.ts';
import { drawnThings, thingsOf, type BuyersThings, type Mark, type ThingId } from './buyers-things.ts';
import { fitsOf, type Fit } from './fits.ts';
import { laidOut, type Sheet } from './lay-out.ts';
import { measuresOf, type Measures } from './measures.ts';
import { outfitOf, type Outfit, type Standing } from './outfit.ts';
import { besideMachine } from './overlay.ts';
import { rearView } from './rear-view.ts';
import { scaleBar } from './scale-bar.ts';
import type { Dimension, Shape } from './shape.ts';
import { sideView } from './side-view.ts';

export interface LineUpWish {
  catalogue: Catalogue;
  answers: Answers;
  book: RuleBook;
  /** How each machine stands; without it none is judged. */
  shortlist?: StandingSoFar;
  /** Which machines, in this order; all, from the smallest frame up, where it is absent. */
  machines?: readonly string[];
  view: 'side' | 'rear';
  /** All in one row, as wide as it gets; in as many rows as it takes; or large, for one machine. */
  layout: 'row' | 'wrap' | 'alone';
  /** CSS pixels there are. */
  width: number;
  /** CSS pixels to the metre at the most: small, where many are to be taken in at once. */
  scaleAtMost?: number;
  /** Without figures beside the machines they take less room; they stand in the items all the same. */
  figures?: boolean;
  /** For the scale bar. */
  units: 'us' | 'metric';
}

/** What the picture says of a machine, for a table or a list in words. Lengths in metres, absent where unknown. */
export interface LineUpItem {
  machine: string;
  standing: Standing;
  unit?: string;
  width?: number;
  height?: number;
  /** What the height is over. */
  over: 'rops' | 'cab';
  /** With the loader if it has one. */
  length?: number;
  withLoader: boolean;
  wheelbase?: number;
  reach?: number;
  deck?: number;
  fits: Fit[];
}

export interface MachineCell { kind: 'machine'; id: string; item: LineUpItem; shapes: Shape[]; dimensions: Dimension[]; marks: Mark[] }
export interface ThingCell { kind: 'thing'; id: ThingId; shapes: Shape[]; dimensions: Dimension[]; marks: Mark[] }
export type Cell = MachineCell | ThingCell;

/** The sheet in CSS pixels, at one scale [px/m] for all; a row may be wider than was asked for. */
export interface LineUp extends Sheet<Cell> {
  view: 'side' | 'rear';
  /** Length of the scale bar [m]. */
  bar: number;
  items: LineUpItem[];
}

const told = <K extends string>(key: K, { value, assumed }: { value: number; assumed: boolean }) =>
  (assumed ? {} : { [key]: value } as { [P in K]: number });

function itemOf({ machine, standing, unit, loader, deck, cab }: Outfit, measures: Measures, fits: Fit[]): LineUpItem {
  return {
    machine: machine.id, standing, ...(unit && { unit: unit.id }), over: cab ? 'cab' : 'rops', withLoader: loader !== undefined,
    ...told('width', measures.width), ...told('height', measures.height), ...told('length', loader ? measures.withLoader : measures.length),
    ...told('wheelbase', measures.wheelbase), ...(loader?.fullHeight !== undefined && { reach: loader.fullHeight }),
    ...(deck !== undefined && { deck }), fits,
  };
}

/** Each side's dimensions next to one another, in their order, without gaps. */
const stacked = (dimensions: readonly Dimension[]) => dimensions.map((one) => ({
  ...one, place: dimensions.filter(({ side, place }) => side === one.side && place < one.place).length,
}));

function machineCell(outfit: Outfit, things: BuyersThings, { view, layout, book, figures = true }: LineUpWish): MachineCell {
  const measures = measuresOf(outfit, book, things.door !== undefined);
  const fits = fitsOf(outfit, things, book);
  const { shapes, dimensions, pin } = view === 'side' ? sideView(outfit, measures) : rearView(outfit, measures);
  const beside = besideMachine(view, { things, fits, measures, shapes, pin, book });
  return {
    kind: 'machine', id: outfit.machine.id, item: itemOf(outfit, measures, fits),
    shapes: [...beside.behind, ...shapes, ...beside.before],
    dimensions: figures ? stacked(layout === 'alone' ? [...dimensions, ...beside.dimensions] : dimensions) : [], marks: beside.marks,
  };
}

/** The machines asked for; all of them in the order of their frames. */
function machinesOf({ catalogue, machines }: LineUpWish) {
  if (machines) return machines.flatMap((id) => catalogue.machines.find((machine) => machine.id === id) ?? []);
  const order = new Map(catalogue.frames.map(({ id, order }) => [id, order]));
  return [...catalogue.machines].sort((a, b) => (order.get(a.frame) ?? 0) - (order.get(b.frame) ?? 0) || byCodeUnit(a.frame, b.frame));
}

/** The machines side by side with the buyer's own things among them, all to one scale. */
export function lineUp(wish: LineUpWish): LineUp {
  const { view, answers, book, units } = wish;
  const things = thingsOf(answers, book);
  const machines = machinesOf(wish).map((machine) => machineCell(outfitOf(machine, wish), things, wish));
  // Round a single machine they stand with their figures already, but for a load nobody said how high to lift.
  const apart = wish.layout === 'alone' ? { loads: things.loads.filter(({ wanted }) => wanted === undefined) } : things;
  const own = drawnThings(apart, view, book).map((thing): ThingCell => ({ kind: 'thing', marks: [], ...thing }));
  const layout = laidOut<Cell>([...own, ...machines], wish);
  return { view, ...layout, bar: scaleBar(layout.scale, units), items: machines.map(({ item }) => item) };
}
