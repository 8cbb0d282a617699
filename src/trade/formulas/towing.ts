import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

type Mass = Quantity<'mass'>;
type Length = Quantity<'length'>;
type Gravity = Quantity<'acceleration'>;

export interface Train {
  /** What is towed, with its load [kg] */
  towed: Mass;
  /** Tractor with all it carries [kg] */
  tractor: Mass;
  /** Rolling resistance as a share of the towed weight, ≥ 0 [ratio] */
  rolling: number;
  /** Tangent of the slope, ≥ 0 [ratio] */
  grade: number;
  /** [m/s²] */
  gravity: Gravity;
}

/**
 * Pull that tractor and load take uphill together. On a slope the tangent stands for the sine and the whole
 * weight for its share at right angles to the ground: both err on the safe side.
 *
 * @returns pull [N], with its working
 * @see rule `tow.pull`
 */
export function towingPull({ towed, tractor, rolling, grade, gravity }: Train): Working {
  return {
    formula: 'tow.pull',
    inputs: {
      towed: term('mass', towed), tractor: term('mass', tractor), rolling: term('ratio', rolling),
      grade: term('ratio', grade), gravity: term('acceleration', gravity),
    },
    result: term('force', gravity * (towed * (rolling + grade) + tractor * grade)),
  };
}

/**
 * Greatest mass a tractor may have behind it, so that it can hold and stop it.
 *
 * @param tractor  mass of the tractor as it stands [kg], > 0
 * @param ratio    towed to tractor mass, > 0 [ratio]
 * @returns mass [kg], with its working
 * @see rules `tow.greatest-mass`, `tow.ratio.unbraked` and `tow.ratio.braked`
 */
export function greatestTowed(tractor: Mass, ratio: number): Working {
  return {
    formula: 'tow.greatest-mass',
    inputs: { tractor: term('mass', tractor), ratio: term('ratio', ratio) },
    result: term('mass', tractor * ratio),
  };
}

/**
 * Level pull at which the front axle lifts off, by moments about the point where the rear tyres stand. It
 * holds for a machine at rest on level ground: a comparison between machines, never a permission.
 *
 * @param frontLoad  mass on the front axle [kg], ≥ 0
 * @param wheelbase  [m], > 0
 * @param height     of the hitch point above ground [m], > 0
 * @param gravity    [m/s²]
 * @returns pull [N], with its working
 * @see rule `overturn.rear-pull`
 */
export function rearOverturnPull(frontLoad: Mass, wheelbase: Length, height: Length, gravity: Gravity): Working {
  return {
    formula: 'overturn.rear-pull',
    inputs: {
      frontLoad: term('mass', frontLoad), wheelbase: term('length', wheelbase),
      height: term('length', height), gravity: term('acceleration', gravity),
    },
    result: term('force', (gravity * frontLoad * wheelbase) / height),
  };
}
