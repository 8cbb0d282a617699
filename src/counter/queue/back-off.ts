import { day, minute, second } from './clock.ts';

const [first, most] = [2 * second, 5 * minute];
/** No relay is waited for longer at a time [ms]. */
export const longestWait = day;

/**
 * How long to wait before what was not taken is tried again [ms]. Twice as long each time, spread by half, so that many
 * counters don't come back at once; what a relay asked for is never undercut.
 *
 * @param tries   how often it was tried, from 1
 * @param after   seconds the relay asked for
 * @param random  from 0 up to 1
 */
export function waitAfter(tries: number, after: number | undefined, random: number): number {
  if (after !== undefined) return Math.min(after * second * (1 + random / 10), longestWait);
  return Math.min(first * 2 ** (tries - 1), most) * (0.5 + random);
}
