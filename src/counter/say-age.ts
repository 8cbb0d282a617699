import { day, hour, minute } from './queue/clock.ts';
import type { CounterWords } from './words/words.ts';

/** How long something has waited, in the largest unit it has two of. */
export function sayAge(milliseconds: number, { minutes, hours, days }: CounterWords['waiting']): string {
  if (milliseconds >= 2 * day) return days(Math.floor(milliseconds / day));
  if (milliseconds >= 2 * hour) return hours(Math.floor(milliseconds / hour));
  return minutes(Math.max(0, Math.floor(milliseconds / minute)));
}
