import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Volume of a fall of snow on a drive or a yard.
 *
 * @param length  [m], ≥ 0
 * @param width   [m], ≥ 0
 * @param depth   as it lies [m], ≥ 0
 * @returns volume [m³], with its working
 * @see rule `snow.volume`
 */
export function snowVolume(length: Quantity<'length'>, width: Quantity<'length'>, depth: Quantity<'length'>): Working {
  return {
    formula: 'snow.volume',
    inputs: { length: term('length', length), width: term('length', width), depth: term('length', depth) },
    result: term('volume', length * width * depth),
  };
}
