import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Sum of masses [kg] by name, with its working.
 * @see rules `mass.aboard` and `haul.behind`
 */
export const totalMass = (parts: Record<string, Quantity<'mass'>>, formula: 'mass.aboard' | 'haul.behind'): Working => ({
  formula,
  inputs: Object.fromEntries(Object.entries(parts).map(([name, mass]) => [name, term('mass', mass)])),
  result: term('mass', Object.values(parts).reduce<number>((sum, mass) => sum + mass, 0)),
});
