import type { Instant } from './store/store.ts';

/** The relay's one clock: nothing else in it asks what time it is. */
export interface Clock {
  /** By the wall: for what is kept, told and compared with what others say. */
  now(): Instant;
  /** From any beginning, and never backward [ms]: for how long something takes. */
  elapsed(): number;
}

export const clock: Clock = { now: () => Date.now(), elapsed: () => performance.now() };

export const [second, minute, hour, day] = [1_000, 60_000, 3_600_000, 86_400_000];
