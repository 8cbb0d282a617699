import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Hitch lift at a distance behind the ball ends, by one moment about the front of the lower links. Nearer
 * than the rated distance it is never taken above the rating.
 *
 * @param rated     lift at `ratedAt` [kg]
 * @param ratedAt   distance behind the ball ends of the rating [m] (610 mm by ISO 730)
 * @param distance  distance of the implement's centre of mass behind the ball ends [m], ≥ 0
 * @param link      length of the lower links [m], > 0; too short a length errs on the safe side
 * @returns lift [kg], with its working
 * @see rule `hitch.lift-at`
 */
export function hitchLiftAt(
  rated: Quantity<'mass'>, ratedAt: Quantity<'length'>, distance: Quantity<'length'>, link: Quantity<'length'>,
): Working {
  return {
    formula: 'hitch.lift-at',
    inputs: {
      rated: term('mass', rated), ratedAt: term('length', ratedAt),
      behindBallEnds: term('length', distance), link: term('length', link),
    },
    result: term('mass', Math.min(rated, (rated * (link + ratedAt)) / (link + distance))),
  };
}
