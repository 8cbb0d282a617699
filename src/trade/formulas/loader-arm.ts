import type { Quantity } from '../../units/quantity.ts';
import { term, type Refusal, type Working } from '../working.ts';

/** A loader seen as a lever: a lift at the pins, and the arm behind them about which it turns. */
export interface LoaderArm {
  /** Lift at the pins [kg] */
  atPins: Quantity<'mass'>;
  /** Arm from the virtual pivot to the pins [m] */
  arm: Quantity<'length'>;
}

/**
 * The lever behind two published ratings of one height. What it lifts at a distance x ahead of the pins
 * follows one moment about a virtual pivot: L(x) = Lp·a / (a + x), with a = d·L5 / (Lp − L5).
 *
 * @param atPins  rating at the pins [kg], > 0
 * @param ahead   rating at the distance `by` ahead of the pins [kg], 0 < ahead < atPins
 * @param by      that distance [m], > 0 (500 mm by SAE J732)
 * @returns the lever, or a refusal where the ratings don't fall with distance
 * @see rule `loader.two-ratings`
 */
export function armFromTwoRatings(
  atPins: Quantity<'mass'>, ahead: Quantity<'mass'>, by: Quantity<'length'>,
): LoaderArm | Refusal {
  if (!(ahead < atPins)) return { refused: 'the lift ahead of the pins must be smaller than the lift at the pins' };
  return { atPins, arm: ((by * ahead) / (atPins - ahead)) as Quantity<'length'> };
}

/**
 * The lever behind a single rating, with the typical loss between pins and `by`.
 *
 * @param rating   published lift [kg], > 0
 * @param ratedAt  its distance ahead of the pins [m], ≥ 0
 * @param share    lift at `by` as a share of lift at the pins, 0 < share < 1 [ratio]
 * @param by       distance for which the share holds [m], > 0
 * @see rules `loader.one-rating` (formula and share)
 */
export function armFromOneRating(
  rating: Quantity<'mass'>, ratedAt: Quantity<'length'>, share: number, by: Quantity<'length'>,
): LoaderArm {
  const arm = (by * share) / (1 - share);
  return { atPins: ((rating * (arm + ratedAt)) / arm) as Quantity<'mass'>, arm: arm as Quantity<'length'> };
}

/**
 * Lift at a distance ahead of the pins [kg], with its working.
 *
 * @param lever     from one of the two functions above
 * @param distance  ahead of the pins [m], ≥ 0
 */
export function liftAt({ atPins, arm }: LoaderArm, distance: Quantity<'length'>): Working {
  return {
    formula: 'loader.two-ratings',
    inputs: { liftAtPins: term('mass', atPins), arm: term('length', arm), distance: term('length', distance) },
    result: term('mass', (atPins * arm) / (arm + distance)),
  };
}
