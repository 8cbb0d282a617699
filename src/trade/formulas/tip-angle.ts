import { atan } from '../../units/transcendental.ts';
import type { Quantity } from '../../units/quantity.ts';
import { term, type Refusal, type Working } from '../working.ts';

export interface Stance {
  /** Distance between the middles of the rear tyres [m], > 0 */
  rearTrack: Quantity<'length'>;
  /** Share of the whole mass on the rear axle, 0 < r ≤ 1 [ratio] */
  rearShare: number;
  /** Height of the centre of mass [m], > 0 */
  height: Quantity<'length'>;
  /** Height of the front axle's pivot [m], ≥ 0 */
  pivot: Quantity<'length'>;
}

/**
 * Angle at which a standing tractor with a pivoted front axle begins to tip sideways: it turns about the
 * line from the lower rear tyre to the front pivot, so the front track doesn't help it.
 * tan θ = (T/2)·r / (h − p·(1 − r)). The rigid box atan(T / 2h) is kinder than the truth wherever the
 * pivot lies no higher than the centre of mass.
 *
 * A comparison between machines at rest on firm ground; never a slope on which one may drive.
 *
 * @returns angle [rad], with its working, or a refusal where the centre of mass lies below the line
 * @see rule `slope.tip-angle`
 */
export function tipAngle({ rearTrack, rearShare, height, pivot }: Stance): Working | Refusal {
  const above = height - pivot * (1 - rearShare);
  if (!(above > 0)) return { refused: 'the centre of mass must lie above the line from rear tyre to front pivot' };
  return {
    formula: 'slope.tip-angle',
    inputs: {
      rearTrack: term('length', rearTrack), rearShare: term('ratio', rearShare),
      height: term('length', height), pivot: term('length', pivot),
    },
    result: term('angle', atan(((rearTrack / 2) * rearShare) / above)),
  };
}
