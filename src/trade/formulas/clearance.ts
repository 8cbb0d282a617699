import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

type Length = Quantity<'length'>;

/**
 * Width wanted to pass through an opening [m]: the machine's width and room on both sides.
 * @see rule `place.passage`
 */
export const passage = (width: Length, room: Length): Working => ({
  formula: 'place.passage',
  inputs: { width: term('length', width), room: term('length', room) },
  result: term('length', width + 2 * room),
});

/**
 * Height wanted to pass under something [m]: the machine's height and room above.
 * @see rule `place.headroom`
 */
export const headroom = (height: Length, room: Length): Working => ({
  formula: 'place.headroom',
  inputs: { height: term('length', height), room: term('length', room) },
  result: term('length', height + room),
});

/**
 * Depth wanted to park [m]: the machine's length and room to walk and close the door.
 * @see rule `place.length`
 */
export const parking = (length: Length, room: Length): Working => ({
  formula: 'place.length',
  inputs: { length: term('length', length), room: term('length', room) },
  result: term('length', length + room),
});
