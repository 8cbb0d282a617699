import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Area of a strip such as a drive: length × width.
 *
 * @param length  [m], ≥ 0
 * @param width   [m], ≥ 0
 * @returns area [m²], with its working
 * @see rule `area.strip`
 */
export const areaOfStrip = (length: Quantity<'length'>, width: Quantity<'length'>): Working => ({
  formula: 'area.strip',
  inputs: { length: term('length', length), width: term('length', width) },
  result: term('area', length * width),
});
