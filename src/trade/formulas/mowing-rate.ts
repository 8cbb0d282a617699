import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

export interface Swath {
  /** Ground speed while cutting [m/s], > 0 */
  speed: Quantity<'speed'>;
  /** Width of deck or cutter [m], > 0 */
  width: Quantity<'length'>;
  /** Share of the width lost to overlap, 0 ≤ o < 1 */
  overlap: number;
  /** Share of the time spent cutting, 0 < e ≤ 1 */
  efficiency: number;
}

/**
 * Area worked in a given time: speed × width less overlap × efficiency.
 *
 * @returns rate [m²/s], with its working
 * @see rule `mow.rate`: University of Kentucky AEN-73 and Iowa State PM 696 give it as S·W·e / 8.25 in
 *   miles an hour, feet and acres an hour.
 */
export function mowingRate({ speed, width, overlap, efficiency }: Swath): Working {
  return {
    formula: 'mow.rate',
    inputs: {
      speed: term('speed', speed), width: term('length', width),
      overlap: term('ratio', overlap), efficiency: term('ratio', efficiency),
    },
    result: term('areaRate', speed * width * (1 - overlap) * efficiency),
  };
}
