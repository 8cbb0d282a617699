import { atan } from '../../units/transcendental.ts';
import type { Quantity } from '../../units/quantity.ts';

/**
 * Angle of a slope given as rise over run.
 *
 * @param percent  100 × rise / run, ≥ 0
 * @returns angle [rad]
 * @see rule `slope.from-percent`
 */
export const slopeFromPercent = (percent: number) => atan(percent / 100) as Quantity<'angle'>;
