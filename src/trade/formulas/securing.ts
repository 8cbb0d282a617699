import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Working load limits that all tie-downs of a load must come to together.
 *
 * @param mass   of what is tied down [kg], ≥ 0
 * @param share  of that mass, > 0 [ratio]
 * @returns sum of the working load limits [kg], with its working
 * @see rules `haul.tie-downs` and `haul.tie-down-share`
 */
export function tieDownsWanted(mass: Quantity<'mass'>, share: number): Working {
  return {
    formula: 'haul.tie-downs',
    inputs: { mass: term('mass', mass), share: term('ratio', share) },
    result: term('mass', mass * share),
  };
}

/**
 * Load on the tow ball for a share of the loaded trailer.
 *
 * @param loaded  trailer and load together [kg], ≥ 0
 * @param share   that rests on the ball, > 0 [ratio]
 * @returns mass [kg], with its working
 * @see rules `haul.tongue`, `haul.tongue.least` and `haul.tongue.most`
 */
export function tongueLoad(loaded: Quantity<'mass'>, share: number): Working {
  return {
    formula: 'haul.tongue',
    inputs: { loaded: term('mass', loaded), share: term('ratio', share) },
    result: term('mass', loaded * share),
  };
}
