import { minute, second, type Clock } from './clock.ts';
import type { RoundEnd } from './drain.ts';

/** At the latest so often while something waits [ms]. */
const longestPause = minute / 2;
const shortestPause = second / 2;

export interface PacemakerParts {
  clock: Clock;
  /** Name of the lock that one window at a time drains under. */
  lock: string;
  /** One round; undefined where nothing is left to send. Never throws. */
  round(): Promise<RoundEnd | undefined>;
}

/**
 * Says when to drain: at the start, when the network or the reader comes back, and every half minute while something
 * waits. One window at a time, where the browser has locks; without them two may send the same, which the key of each
 * request makes harmless.
 */
export class Pacemaker {
  readonly #parts: PacemakerParts;
  #running: Promise<void> | undefined;
  #again = false;
  #stopped = true;
  #callOff = () => {};

  constructor(parts: PacemakerParts) {
    this.#parts = parts;
  }

  start() {
    this.#stopped = false;
    addEventListener('online', this.#kicked);
    document.addEventListener('visibilitychange', this.#seen);
    this.kick();
  }

  stop() {
    this.#stopped = true;
    this.#callOff();
    removeEventListener('online', this.#kicked);
    document.removeEventListener('visibilitychange', this.#seen);
  }

  /** Drains now, or once more after the round that is under way. @returns when that is over; it never rejects */
  kick(): Promise<void> {
    if (this.#stopped) return Promise.resolve();
    if (this.#running) {
      this.#again = true;
      return this.#running;
    }
    this.#callOff();
    this.#running = this.#run().finally(() => { this.#running = undefined; });
    return this.#running;
  }

  readonly #kicked = () => { void this.kick(); };
  readonly #seen = () => { if (document.visibilityState === 'visible') void this.kick(); };

  async #run() {
    let end: RoundEnd | undefined;
    do {
      this.#again = false;
      end = await this.#locked();
    } while (this.#again && !this.#stopped);
    if (this.#stopped || !end) return;
    const { clock } = this.#parts;
    const pause = Math.min(Math.max((end.at ?? Infinity) - clock.now(), shortestPause), longestPause);
    this.#callOff = clock.after(pause, this.#kicked);
  }

  async #locked(): Promise<RoundEnd | undefined> {
    const { lock, round } = this.#parts;
    const { locks } = navigator as { locks?: LockManager };
    if (!locks) return round();
    // Another window that drains is waited for, not queued behind: it may go on for long.
    return locks.request(lock, { ifAvailable: true }, (held) => (held ? round() : {}));
  }
}
