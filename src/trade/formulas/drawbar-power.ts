import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

type Power = Quantity<'power'>;

/**
 * Power that pulling takes at the drawbar: P = D·v (in pounds and miles an hour, D·S / 375).
 *
 * @param draft  pull [N], ≥ 0
 * @param speed  ground speed [m/s], ≥ 0
 * @returns power [W], with its working
 * @see rule `power.drawbar`
 */
export function drawbarPower(draft: Quantity<'force'>, speed: Quantity<'speed'>): Working {
  return {
    formula: 'power.drawbar',
    inputs: { draft: term('force', draft), speed: term('speed', speed) },
    result: term('power', draft * speed),
  };
}

/**
 * Drawbar power that is left of the PTO power on a given ground.
 *
 * @param ptoPower  [W], ≥ 0
 * @param share     drawbar to PTO power on that ground, 0 < share < 1 [ratio]
 * @returns power [W], with its working
 * @see rules `power.drawbar-left` and `drawbar.four-wheel.firm` and the like
 */
export function drawbarFromPto(ptoPower: Power, share: number): Working {
  return {
    formula: 'power.drawbar-left',
    inputs: { ptoPower: term('power', ptoPower), share: term('ratio', share) },
    result: term('power', ptoPower * share),
  };
}

/**
 * PTO power where only that of the engine is known.
 *
 * @param flywheel  power at the flywheel [W], ≥ 0
 * @param share     PTO to flywheel power, 0 < share < 1 [ratio]
 * @returns power [W], with its working
 * @see rule `pto.of-flywheel`, and `pto.from-flywheel` for the share
 */
export function ptoFromFlywheel(flywheel: Power, share: number): Working {
  return {
    formula: 'pto.of-flywheel',
    inputs: { flywheel: term('power', flywheel), share: term('ratio', share) },
    result: term('power', flywheel * share),
  };
}

/**
 * Rated power wanted for a steady job, so that it takes no more than its share of the rating.
 *
 * @param power  what the job takes [W], ≥ 0
 * @param share  share of the rating a steady job may take, 0 < share ≤ 1 [ratio]
 * @returns power [W], with its working
 * @see rule `power.wanted`, and `power.in-hand` for the share
 */
export function powerInHand(power: Power, share: number): Working {
  return {
    formula: 'power.wanted',
    inputs: { power: term('power', power), share: term('ratio', share) },
    result: term('power', power / share),
  };
}
