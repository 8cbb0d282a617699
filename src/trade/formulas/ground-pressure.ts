import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Mean pressure of a tyre on the ground: the air in it, and what its carcass bears.
 *
 * @param inflation  pressure in the tyre [Pa], ≥ 0
 * @param stiffness  pressure the carcass adds [Pa], ≥ 0
 * @returns pressure [Pa], with its working
 * @see rules `ground.pressure` and `tyre.stiffness`
 */
export function groundPressure(inflation: Quantity<'pressure'>, stiffness: Quantity<'pressure'>): Working {
  return {
    formula: 'ground.pressure',
    inputs: { inflation: term('pressure', inflation), stiffness: term('pressure', stiffness) },
    result: term('pressure', inflation + stiffness),
  };
}
