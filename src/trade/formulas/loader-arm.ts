import type { Quantity } from '../../units/quantity.ts';
import type { FigureId } from '../book.ts';
import { term, type Refusal, type Working } from '../working.ts';

type Mass = Quantity<'mass'>;
type Length = Quantity<'length'>;

/** A published lift [kg] at a distance ahead of the bucket pins [m], ≥ 0. */
export interface Rating {
  load: Mass;
  ahead: Length;
}

/** A loader seen as a lever: a lift at the pins, and the arm behind them about which it turns. */
export interface LoaderArm {
  /** Lift at the pins [kg] */
  atPins: Mass;
  /** Arm from the virtual pivot to the pins [m] */
  arm: Length;
  /** How the arm was found */
  working: Working;
}

/**
 * The lever behind two published ratings of one height. What it lifts follows one moment about a virtual
 * pivot: L1·(a + x1) = L2·(a + x2), so a = (L2·x2 − L1·x1) / (L1 − L2); with the first at the pins that is
 * a = d·L5 / (Lp − L5).
 *
 * @param near  the rating nearer the pins, > 0
 * @param far   the rating further ahead (500 mm by SAE J732), smaller than the other
 * @returns the lever, or a refusal where the ratings don't fall with distance as a lever's do
 * @see rule `loader.two-ratings`
 */
export function armFromTwoRatings(near: Rating, far: Rating): LoaderArm | Refusal {
  if (!(far.load < near.load)) return { refused: 'the lift further ahead must be smaller than the lift nearer the pins' };
  const arm = (far.load * far.ahead - near.load * near.ahead) / (near.load - far.load);
  if (!(arm > 0)) return { refused: 'the lift must fall more slowly with distance than to a pivot ahead of the pins' };
  return {
    atPins: ((near.load * (arm + near.ahead)) / arm) as Mass,
    arm: arm as Length,
    working: {
      formula: 'loader.two-ratings',
      inputs: {
        nearLift: term('mass', near.load), nearAhead: term('length', near.ahead),
        farLift: term('mass', far.load), farAhead: term('length', far.ahead),
      },
      result: term('length', arm),
    },
  };
}

/**
 * The lever behind a single rating, with the typical loss between the pins and `by`.
 *
 * @param rating  the one that is published
 * @param share   lift at `by` as a share of lift at the pins, 0 < share < 1 [ratio]
 * @param by      distance for which the share holds [m], > 0
 * @param rule    the figure the share comes from
 * @see rules `loader.one-rating` and `loader.one-rating-share`
 */
export function armFromOneRating({ load, ahead }: Rating, share: number, by: Length, rule?: FigureId): LoaderArm {
  const arm = (by * share) / (1 - share);
  return {
    atPins: ((load * (arm + ahead)) / arm) as Mass,
    arm: arm as Length,
    working: {
      formula: 'loader.one-rating',
      inputs: {
        nearLift: term('mass', load), nearAhead: term('length', ahead),
        share: { ...term('ratio', share), ...(rule && { rule }) }, by: term('length', by),
      },
      result: term('length', arm),
    },
  };
}

/**
 * Lift at a distance ahead of the pins [kg], with its working.
 *
 * @param lever     from one of the two functions above
 * @param distance  ahead of the pins [m], ≥ 0
 * @see rule `loader.lift-at`
 */
export function liftAt({ atPins, arm }: LoaderArm, distance: Length): Working {
  return {
    formula: 'loader.lift-at',
    inputs: { liftAtPins: term('mass', atPins), arm: term('length', arm), distance: term('length', distance) },
    result: term('mass', (atPins * arm) / (arm + distance)),
  };
}
