import type { Quantity } from '../../units/quantity.ts';
import { term, type Refusal, type Working } from '../working.ts';

/**
 * Volume of a round bale.
 *
 * @param diameter  [m], > 0
 * @param width     [m], > 0
 * @returns volume [m³], with its working
 * @see rule `bale.volume`
 */
export function baleVolume(diameter: Quantity<'length'>, width: Quantity<'length'>): Working {
  return {
    formula: 'bale.volume',
    inputs: { diameter: term('length', diameter), width: term('length', width) },
    result: term('volume', (Math.PI * diameter * diameter * width) / 4),
  };
}

/**
 * Mass of a volume: a bale, a bucketful, a fall of snow.
 *
 * @param volume   [m³], ≥ 0
 * @param density  as it lies, with its water and its gaps [kg/m³], > 0
 * @returns mass [kg], with its working
 * @see rule `mass.of-volume`
 */
export function massOfVolume(volume: Quantity<'volume'>, density: Quantity<'density'>): Working {
  return {
    formula: 'mass.of-volume',
    inputs: { volume: term('volume', volume), density: term('density', density) },
    result: term('mass', volume * density),
  };
}

/**
 * Mass as it is weighed, from the dry matter in it.
 *
 * @param dry       dry matter [kg], ≥ 0
 * @param moisture  water as a share of the whole, 0 ≤ m < 1 [ratio]
 * @returns mass [kg], with its working, or a refusal where the moisture is no such share
 * @see rules `mass.at-moisture` and `bale.moisture`
 */
export function massAtMoisture(dry: Quantity<'mass'>, moisture: number): Working | Refusal {
  if (!(moisture >= 0 && moisture < 1)) return { refused: 'the moisture must be a share of the whole, from 0 to below 1' };
  return {
    formula: 'mass.at-moisture',
    inputs: { dry: term('mass', dry), moisture: term('ratio', moisture) },
    result: term('mass', dry / (1 - moisture)),
  };
}
