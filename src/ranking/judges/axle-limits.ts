import { leastOf } from '../../trade/formulas/least-of.ts';
import { isRefusal, type Working } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import { tyresOf, type Candidate } from '../candidate.ts';

type Mass = Quantity<'mass'>;

/**
 * What an axle may bear [kg]: the least of its own limit and that of its tyres, as far as they are
 * published; undefined where neither is. Of tyres that differ the weakest counts.
 */
export function leastLimit(axle: 'front' | 'rear', candidate: Candidate): Working | undefined {
  const { machine } = candidate;
  const own = axle === 'front' ? machine.frontAxleLimit : machine.rearAxleLimit;
  const tyres = tyresOf(candidate).flatMap((tyre) => (axle === 'front' ? tyre.frontLimit : tyre.rearLimit) ?? []);
  const least = leastOf({
    ...(own !== undefined && { axleLimit: own }), ...(tyres.length > 0 && { tyreLimit: Math.min(...tyres) as Mass }),
  });
  return isRefusal(least) ? undefined : least;
}
