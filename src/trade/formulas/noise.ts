import { quantity } from '../../units/quantity.ts';
import { power } from '../../units/transcendental.ts';
import { operator } from '../figures/operator.ts';
import { term, type Working } from '../working.ts';

const { value, unit } = operator['noise.day'];
const day = term('time', quantity('time', value, unit), 'noise.day');

/**
 * Time a day at a level of noise until something is to be done: T = 8 h / 2^((L − action) / exchange).
 *
 * @param level     L, at the driver's ear [dB(A)]
 * @param action    level that may last eight hours [dB(A)]
 * @param exchange  step by which the time halves [dB], > 0
 * @returns time [s], which may be longer than a day, with its working
 * @see rules `noise.time`, `noise.action` and `noise.exchange`
 */
export const noiseTime = (level: number, action: number, exchange: number): Working => ({
  formula: 'noise.time',
  inputs: { level: term('dB(A)', level), action: term('dB(A)', action), exchange: term('dB(A)', exchange), day },
  result: term('time', day.value / power(2, (level - action) / exchange)),
});
