import { cubeRoot } from '../../units/transcendental.ts';
import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Size of a round bale that is as wide as it is high, from its weight: m = ρ·(π/4)·d²·d.
 *
 * @param mass     weight of the bale as it is [kg], > 0
 * @param density  of the bale as it is [kg/m³], > 0
 * @returns diameter and width [m], with its working
 * @see rules `bale.size` and `bale.density`
 */
export function baleSize(mass: Quantity<'mass'>, density: Quantity<'density'>): Working {
  return {
    formula: 'bale.size',
    inputs: { mass: term('mass', mass), density: term('density', density) },
    result: term('length', cubeRoot((4 * mass) / (Math.PI * density))),
  };
}
