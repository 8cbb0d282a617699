import { power } from '../../units/transcendental.ts';
import { term, type Working } from '../working.ts';

const thousandHours = 1000;

/**
 * Repairs between two readings of the hour meter: RF1·list·((to/1000)^RF2 − (from/1000)^RF2). The equation
 * comes from farm tractors in fair care, and single machines lie far to either side of it.
 *
 * @param list       today's list price of such a machine, new, in the dealer's currency
 * @param hoursFrom  hours on it at the start, ≥ 0
 * @param hoursTo    hours on it at the end, ≥ hoursFrom
 * @param rf1        RF1 of its kind [ratio]
 * @param rf2        RF2 of its kind [ratio]
 * @returns cost over these hours in the dealer's currency, with its working
 * @see rules `own.repairs`, `own.repair.rf1` and `own.repair.rf2`: ASABE D497, clause 6
 */
export function repairs(list: number, hoursFrom: number, hoursTo: number, rf1: number, rf2: number): Working {
  return {
    formula: 'own.repairs',
    inputs: {
      list: term('dealer-currency', list), hoursFrom: term('hours', hoursFrom), hoursTo: term('hours', hoursTo),
      rf1: term('ratio', rf1), rf2: term('ratio', rf2),
    },
    result: term('dealer-currency', rf1 * list * (power(hoursTo / thousandHours, rf2) - power(hoursFrom / thousandHours, rf2))),
  };
}
