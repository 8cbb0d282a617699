import { narrowestTyres } from '../ranking/candidate.ts';
import type { RuleBook } from '../trade/book.ts';
import type { Outfit } from './outfit.ts';
import { proportions as share } from './proportions.ts';
import { readTyre } from './read-tyre.ts';
import type { Measure } from './shape.ts';

export const known = (value: number): Measure => ({ value, assumed: false });
export const guess = (value: number): Measure => ({ value, assumed: true });
const or = (value: number | undefined, otherwise: number): Measure => (value === undefined ? guess(otherwise) : known(value));

/** Every size of a machine the drawing needs, given or assumed. */
export interface Measures {
  wheelbase: Measure;
  /** Without loader. */
  length: Measure;
  /** With the loader, bucket on the ground. */
  withLoader: Measure;
  width: Measure;
  height: Measure;
  /** With the ROPS folded, where that is of use to the buyer. */
  folded: Measure | undefined;
  bonnet: Measure;
  rearTyre: Measure;
  frontTyre: Measure;
  tyreWidth: Measure;
  clearance: Measure;
  /** From the rear axle back to the end of the machine. */
  back: number;
}

/** @param stored  whether the buyer drives it under a door, for which the ROPS may be folded */
export function measuresOf(outfit: Outfit, book: RuleBook, stored: boolean): Measures {
  const { machine, unit, cab } = outfit;
  const ofLength = book.value('drawing.wheelbase-of-length');
  const wheelbase = or(machine.wheelbase, machine.length === undefined ? book.value('drawing.wheelbase') : machine.length * ofLength);
  const w = wheelbase.value;
  const stretch = book.value('drawing.loader-length');
  const length = or(machine.length, machine.lengthWithLoader === undefined ? w / ofLength : machine.lengthWithLoader / stretch);
  const tyres = narrowestTyres(outfit);
  const rear = readTyre(tyres?.size, 'rear', book);
  const front = readTyre(tyres?.size, 'front', book);
  const rearTyre = rear.diameter ?? guess(w * book.value('drawing.rear-tyre-of-wheelbase'));
  const height = or(cab ? machine.height?.cab : machine.height?.ropsUp, machine.height?.ropsUp ?? w * book.value('drawing.height-of-wheelbase'));
  return {
    wheelbase, length, rearTyre, height,
    withLoader: or(machine.lengthWithLoader, length.value * stretch),
    width: or(tyres?.widthOverRear, w * book.value('drawing.width-of-wheelbase')),
    folded: stored && !cab && (unit?.rops?.kind ?? machine.rops?.kind) === 'folding' && machine.height?.ropsFolded !== undefined ? known(machine.height.ropsFolded) : undefined,
    bonnet: guess(height.value * book.value('drawing.bonnet-of-height')),
    frontTyre: front.diameter ?? guess(rearTyre.value * book.value('drawing.front-tyre-of-rear')),
    tyreWidth: rear.width ?? guess(rearTyre.value * book.value('drawing.tyre-width-of-diameter')),
    clearance: or(machine.groundClearance, rearTyre.value * book.value('drawing.clearance-of-tyre')),
    back: Math.max(0, length.value - w) * share.behindRearAxle,
  };
}
