import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Pull the tyres find hold for: the load on the driven wheels times what the ground allows.
 *
 * @param massOnDriven  mass that rests on the driven wheels [kg], ≥ 0
 * @param coefficient   pull as a share of that load on such ground, > 0 [ratio]
 * @param gravity       [m/s²]
 * @returns pull [N], with its working
 * @see rules `traction.pull` and `traction.firm`, `traction.soft`, `traction.wet`
 */
export function tractionPull(massOnDriven: Quantity<'mass'>, coefficient: number, gravity: Quantity<'acceleration'>): Working {
  return {
    formula: 'traction.pull',
    inputs: {
      massOnDriven: term('mass', massOnDriven), coefficient: term('ratio', coefficient), gravity: term('acceleration', gravity),
    },
    result: term('force', massOnDriven * coefficient * gravity),
  };
}
