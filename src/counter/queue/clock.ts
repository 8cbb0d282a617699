/** The time a queue goes by; a test hands in one of its own. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** @returns what calls it off */
  after(milliseconds: number, run: () => void): () => void;
}

export const pageClock: Clock = {
  now: () => Date.now(),
  after(milliseconds, run) {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
  },
};

export const second = 1_000;
export const minute = 60 * second;
export const hour = 60 * minute;
export const day = 24 * hour;
