import type { Quantity } from '../../units/quantity.ts';
import { term, type Refusal, type Working } from '../working.ts';

/**
 * The least of several limits, which is the one that counts.
 *
 * @param limits  each by its name [kg]
 * @returns mass [kg], with its working, or a refusal where there is no limit at all: that is no licence
 * @see rule `lift.least`
 */
export function leastOf(limits: Readonly<Record<string, Quantity<'mass'>>>): Working | Refusal {
  const masses = Object.values(limits);
  if (masses.length === 0) return { refused: 'without any limit there is no least' };
  return {
    formula: 'lift.least',
    inputs: Object.fromEntries(Object.entries(limits).map(([name, mass]) => [name, term('mass', mass)])),
    result: term('mass', Math.min(...masses)),
  };
}
