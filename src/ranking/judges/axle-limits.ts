import { leastOf } from '../../trade/formulas/least-of.ts';
import { isRefusal, type Working } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build } from '../build.ts';

type Mass = Quantity<'mass'>;

/**
 * What an axle may bear [kg]: the least of its own limit and that of its tyres, as far as they are
 * published; undefined where neither is. Of tyres that differ the weakest counts.
 */
export function leastLimit(axle: 'front' | 'rear', { machine, unit }: Build): Working | undefined {
  const own = axle === 'front' ? machine.frontAxleLimit : machine.rearAxleLimit;
  const tyres = (machine.tyres ?? [])
    .filter(({ type }) => unit?.tyres?.type === undefined || type === unit.tyres.type)
    .flatMap((tyre) => (axle === 'front' ? tyre.frontLimit : tyre.rearLimit) ?? []);
  const least = leastOf({
    ...(own !== undefined && { axleLimit: own }), ...(tyres.length > 0 && { tyreLimit: Math.min(...tyres) as Mass }),
  });
  return isRefusal(least) ? undefined : least;
}
