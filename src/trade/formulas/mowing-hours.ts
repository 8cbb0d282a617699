import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Time a person spends on one pass over an area: area / rate × labour.
 *
 * @param area    area to be worked [m²], ≥ 0
 * @param rate    area rate [m²/s], > 0
 * @param labour  hours of a person for each hour of work, ≥ 1 [ratio]
 * @returns time [s], with its working
 * @see rule `mow.hours`
 */
export function mowingHours(area: Quantity<'area'>, rate: Quantity<'areaRate'>, labour: number): Working {
  return {
    formula: 'mow.hours',
    inputs: { area: term('area', area), rate: term('areaRate', rate), labour: term('ratio', labour) },
    result: term('time', (area / rate) * labour),
  };
}
