import { quantity, type Quantity } from '../../units/quantity.ts';
import { operator } from '../figures/operator.ts';
import { term, type Refusal, type Working } from '../working.ts';

type Acceleration = Quantity<'acceleration'>;

const { value, unit } = operator['vibration.day'];
const day = term('time', quantity('time', value, unit), 'vibration.day');

/**
 * Vibration of a day in the seat as if it lasted eight hours: A(8) = a·√(T / 8 h).
 *
 * @param acceleration  a, weighted root mean square at the seat, in the direction that is worst, a level
 *   direction counting 1.4 times [m/s²], ≥ 0
 * @param time          T, in the seat that day [s], ≥ 0
 * @returns daily exposure [m/s²], with its working
 * @see rules `vibration.daily`, `vibration.action` and `vibration.limit`
 */
export const dailyExposure = (acceleration: Acceleration, time: Quantity<'time'>): Working => ({
  formula: 'vibration.daily',
  inputs: { acceleration: term('acceleration', acceleration), time: term('time', time), day },
  result: term('acceleration', acceleration * Math.sqrt(time / day.value)),
});

/**
 * Time in the seat until a daily exposure is reached: T = 8 h·(limit / a)².
 *
 * @param acceleration  a, as for {@link dailyExposure} [m/s²], > 0
 * @param limit         daily exposure that is to be reached [m/s²], ≥ 0
 * @returns time [s], which may be longer than a day, with its working, or a refusal where nothing shakes
 * @see rule `vibration.time-to`
 */
export function timeToExposure(acceleration: Acceleration, limit: Acceleration): Working | Refusal {
  if (!(acceleration > 0)) return { refused: 'the acceleration must be above 0' };
  const ratio = limit / acceleration;
  return {
    formula: 'vibration.time-to',
    inputs: { acceleration: term('acceleration', acceleration), limit: term('acceleration', limit), day },
    result: term('time', day.value * ratio * ratio),
  };
}
