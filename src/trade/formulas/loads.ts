import { atLeast } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Loads it takes to move a volume; a part of a load is a load.
 *
 * @param volume   what is to be moved [m³], ≥ 0
 * @param perLoad  what one load holds [m³], > 0
 * @returns loads [count], with its working
 * @see rule `loads.count`
 */
export function loadsWanted(volume: Quantity<'volume'>, perLoad: Quantity<'volume'>): Working {
  const exact = volume / perLoad;
  // Rounding in the conversion of units must not make a load more.
  const whole = Math.round(exact);
  return {
    formula: 'loads.count',
    inputs: { volume: term('volume', volume), perLoad: term('volume', perLoad) },
    result: term('count', atLeast(whole, exact) ? whole : Math.ceil(exact)),
  };
}

/**
 * Time for a number of loads.
 *
 * @param loads  ≥ 0 [count]
 * @param cycle  time to fill, drive, dump and come back [s], > 0
 * @returns time [s], with its working
 * @see rules `loads.time` and `bucket.cycle`
 */
export function timeForLoads(loads: number, cycle: Quantity<'time'>): Working {
  return {
    formula: 'loads.time',
    inputs: { loads: term('count', loads), cycle: term('time', cycle) },
    result: term('time', loads * cycle),
  };
}
