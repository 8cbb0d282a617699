import { hour, minute } from '../clock.ts';

/** Waits after the first, second … attempt [ms]; the last one stands for all that follow. */
const waits = [1, 5, 30, 120, 240].map((minutes) => minutes * minute);
/** Longest wait where nobody was reached: how long that lasts is no matter of the mail, and the brake keeps attempts few [ms]. */
const longestUnreached = 5 * minute;
/** A mail that was never answered is sent once more, not sooner than that [ms]: a server that is slow has then found out what it did. */
export const unsureWait = 15 * minute;
/** A shortlist is of no use any more [ms]. */
const givenUpAfter = 72 * hour;
/** A clock that jumps ahead must not give up what was hardly tried. */
const fewestAttempts = 6;

/**
 * How long to wait after an attempt [ms], up to half less or more, so that an outage doesn't end in a crowd.
 *
 * @param chance  from 0 to 1
 */
export function waitAfter(attempt: number, unreached: boolean, chance: number): number {
  const wait = waits[Math.min(attempt, waits.length) - 1]!;
  return Math.round((unreached ? Math.min(wait, longestUnreached) : wait) * (0.5 + chance));
}

/** Whether it is time to stop trying. */
export const isGivenUp = (age: number, attempt: number) => age >= givenUpAfter && attempt >= fewestAttempts;
