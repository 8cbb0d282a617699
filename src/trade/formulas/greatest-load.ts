import type { Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';
import type { LoaderArm } from './loader-arm.ts';

export interface Carried {
  /** Mass of what holds the load [kg] */
  attachment: Quantity<'mass'>;
  /** Its centre of mass ahead of the pins [m] */
  attachmentAhead: Quantity<'length'>;
  /** Centre of the load ahead of the pins [m] */
  loadAhead: Quantity<'length'>;
  /** Lift kept in hand, ≥ 0 [ratio] */
  margin: number;
}

/**
 * The greatest load a loader takes up, once what holds it has had its own share of the moment and the
 * margin is kept: each mass counts at its own arm about the loader's pivot.
 *
 * @returns load [kg], not below zero, with its working
 * @see rule `loader.greatest-load`
 */
export function greatestLoad({ atPins, arm }: LoaderArm, carried: Carried): Working {
  const { attachment, attachmentAhead, loadAhead, margin } = carried;
  const left = (atPins * arm) / (1 + margin) - attachment * (arm + attachmentAhead);
  return {
    formula: 'loader.greatest-load',
    inputs: {
      liftAtPins: term('mass', atPins), arm: term('length', arm), margin: term('ratio', margin),
      attachment: term('mass', attachment), attachmentAhead: term('length', attachmentAhead),
      loadAhead: term('length', loadAhead),
    },
    result: term('mass', Math.max(0, left / (arm + loadAhead))),
  };
}
