import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

export interface Standing {
  /** Mass without front load and ballast [kg] */
  tractor: Quantity<'mass'>;
  /** Its load on the rear axle [kg] */
  rear: Quantity<'mass'>;
  /** Everything carried in front [kg] */
  front: Quantity<'mass'>;
  /** Centre of that ahead of the front axle [m] */
  ahead: Quantity<'length'>;
  /** Wheelbase [m], > 0 */
  wheelbase: Quantity<'length'>;
}

/**
 * Rear ballast that leaves the rear axle its share of the whole mass, loader loaded and furthest forward.
 * Moments about the front axle: rear = TH − GV·a/b + GH·(b + behind)/b ≥ share × (TL + GV + GH).
 *
 * @param standing  the machine with its front load
 * @param behind    centre of the ballast behind the rear axle [m], ≥ 0
 * @param share     share that must stay on the rear axle, 0 < share < 1 [ratio]
 * @returns ballast [kg], zero where none is wanted, with its working
 * @see rules `ballast.rear` and `loader.rear-share`
 */
export function rearBallast(standing: Standing, behind: Quantity<'length'>, share: number): Working {
  const { tractor, rear, front, ahead, wheelbase } = standing;
  const missing = share * (tractor + front) - rear + (front * ahead) / wheelbase;
  const ballast = missing / ((wheelbase + behind) / wheelbase - share);
  return {
    formula: 'ballast.rear',
    inputs: {
      tractor: term('mass', tractor), rear: term('mass', rear), front: term('mass', front),
      ahead: term('length', ahead), wheelbase: term('length', wheelbase), behind: term('length', behind),
      share: term('ratio', share),
    },
    result: term('mass', Math.max(0, ballast)),
  };
}

/**
 * Load on the front axle, by moments about the rear axle.
 *
 * @param bareFront  front axle load without front and rear loads [kg]
 * @param front      load in front [kg] with its centre `ahead` of the front axle [m]
 * @param back       load behind [kg] with its centre `behind` the rear axle [m]
 * @param wheelbase  [m], > 0
 * @returns front axle load [kg] (below zero means it lifts off), with its working
 * @see rule `axle.front-load`
 */
export function frontAxleLoad(
  bareFront: Quantity<'mass'>,
  front: { mass: Quantity<'mass'>; ahead: Quantity<'length'> },
  back: { mass: Quantity<'mass'>; behind: Quantity<'length'> },
  wheelbase: Quantity<'length'>,
): Working {
  const load =
    (front.mass * (front.ahead + wheelbase) + bareFront * wheelbase - back.mass * back.behind) / wheelbase;
  return {
    formula: 'axle.front-load',
    inputs: {
      bareFront: term('mass', bareFront), frontLoad: term('mass', front.mass), ahead: term('length', front.ahead),
      rearLoad: term('mass', back.mass), behind: term('length', back.behind), wheelbase: term('length', wheelbase),
    },
    result: term('mass', load),
  };
}

export interface Hung {
  /** Mass without front and rear loads [kg] */
  tractor: Quantity<'mass'>;
  /** Its load on the front axle [kg] */
  bareFront: Quantity<'mass'>;
  /** Everything carried behind [kg] */
  back: Quantity<'mass'>;
  /** Centre of that behind the rear axle [m] */
  behind: Quantity<'length'>;
  /** Centre of the front weights ahead of the front axle [m], ≥ 0 */
  ahead: Quantity<'length'>;
  /** Wheelbase [m], > 0 */
  wheelbase: Quantity<'length'>;
  /** Share of the unladen mass that must stay on the front axle to steer with, 0 < share < 1 [ratio] */
  share: number;
}

/**
 * Front weights that leave the front axle its share with something heavy on the hitch:
 * GVmin = [GH·(c + d) − TV·b + share·TL·b] / (a + b).
 *
 * @returns front ballast [kg], zero where none is wanted, with its working
 * @see rules `ballast.front` and `hitch.front-share`
 */
export function frontBallast(hung: Hung): Working {
  const { tractor, bareFront, back, behind, ahead, wheelbase, share } = hung;
  const ballast = (back * behind - bareFront * wheelbase + share * tractor * wheelbase) / (ahead + wheelbase);
  return {
    formula: 'ballast.front',
    inputs: {
      tractor: term('mass', tractor), bareFront: term('mass', bareFront), back: term('mass', back),
      behind: term('length', behind), ahead: term('length', ahead), wheelbase: term('length', wheelbase),
      share: term('ratio', share),
    },
    result: term('mass', Math.max(0, ballast)),
  };
}

/**
 * What the rear axle carries of the whole.
 *
 * @param total  tractor with all it carries [kg]
 * @param front  its load on the front axle [kg]
 * @returns rear axle load [kg] (below zero means it lifts off), with its working
 * @see rule `axle.rear-load`
 */
export const rearAxleLoad = (total: Quantity<'mass'>, front: Quantity<'mass'>): Working => ({
  formula: 'axle.rear-load',
  inputs: { total: term('mass', total), frontAxle: term('mass', front) },
  result: term('mass', total - front),
});
