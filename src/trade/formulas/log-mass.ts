import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Mass of a log as a cylinder of its middle diameter.
 *
 * @param density   of the green wood [kg/m³], > 0
 * @param diameter  half way along, inside the bark [m], > 0
 * @param length    [m], > 0
 * @returns mass [kg], with its working
 * @see rules `log.mass` and `log.red-oak` and the like
 */
export function logMass(density: Quantity<'density'>, diameter: Quantity<'length'>, length: Quantity<'length'>): Working {
  return {
    formula: 'log.mass',
    inputs: { density: term('density', density), diameter: term('length', diameter), length: term('length', length) },
    result: term('mass', (density * Math.PI * diameter * diameter * length) / 4),
  };
}
