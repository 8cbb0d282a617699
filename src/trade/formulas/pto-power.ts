import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * PTO power an implement takes by its width.
 *
 * @param width     working width [m], > 0
 * @param perWidth  power for each metre of width [W/m], > 0
 * @returns power [W], with its working
 * @see rule `pto.power-for-width`
 */
export function ptoPowerForWidth(width: Quantity<'length'>, perWidth: Quantity<'powerPerLength'>): Working {
  return {
    formula: 'pto.power-for-width',
    inputs: { width: term('length', width), powerPerWidth: term('powerPerLength', perWidth) },
    result: term('power', width * perWidth),
  };
}

/**
 * Power an engine has left at an altitude.
 *
 * @param rated     power at sea level [W]
 * @param altitude  above sea level [m], ≥ 0
 * @param loss      share lost for each `step` above `free`: `{ perStep [ratio], step [m], free [m] }`
 * @returns power [W], not below zero, with its working
 * @see rule `pto.at-altitude`
 */
export function powerAtAltitude(
  rated: Quantity<'power'>,
  altitude: Quantity<'length'>,
  loss: { perStep: number; step: Quantity<'length'>; free: Quantity<'length'> },
): Working {
  const steps = Math.max(0, altitude - loss.free) / loss.step;
  return {
    formula: 'pto.at-altitude',
    inputs: {
      rated: term('power', rated), altitude: term('length', altitude), loss: term('ratio', loss.perStep),
      step: term('length', loss.step), free: term('length', loss.free),
    },
    result: term('power', Math.max(0, rated * (1 - loss.perStep * steps))),
  };
}
