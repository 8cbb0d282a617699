/** What waits for time to pass, so that a test can let it pass. */
export interface Timers {
  /** Runs it after so long [ms]. @returns what takes that back */
  after(wait: number, run: () => void): () => void;
}

export const timers: Timers = {
  after(wait, run) {
    const timer = setTimeout(run, wait);
    return () => clearTimeout(timer);
  },
};
