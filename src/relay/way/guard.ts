import { monitorEventLoopDelay, type IntervalHistogram } from 'node:perf_hooks';
import { second } from '../clock.ts';
import type { Store } from '../store/store.ts';

/** How often it is looked at how things stand. */
const every = second;
/** Delay of the event loop from which nothing more is taken, and from which proof of work is asked for (99 of 100) [ms]. */
const [tooLate, late] = [200, 80];
const nanosecondsInMillisecond = 1e6;
/** How full the queue may be, of what it may hold, before a closed door opens again. */
const opensBelow = 0.9;
const loopResolution = 10;

export interface Lines {
  /** Mails waiting. */
  queueMost: number;
  /** Bytes. */
  freeLeast: number;
}

type Why = 'busy' | 'closing' | 'unavailable';

/** Looks, once a second, whether a request can be taken; before one is, not after. */
export class Guard {
  readonly #store: Store;
  readonly #lines: Lines;
  readonly #delay: IntervalHistogram = monitorEventLoopDelay({ resolution: loopResolution });
  #timer: NodeJS.Timeout | undefined;
  #why: Why | undefined;
  #full = false;
  #loaded = false;

  constructor(store: Store, lines: Lines) {
    this.#store = store;
    this.#lines = lines;
  }

  /** Why nothing is taken, or undefined where it is. */
  get closed(): Why | undefined {
    return this.#why;
  }

  /** Whether forms are to reckon something first. */
  get loaded(): boolean {
    return this.#loaded;
  }

  async start(): Promise<void> {
    this.#delay.enable();
    await this.look();
    this.#timer = setInterval(() => void this.look(), every);
    this.#timer.unref();
  }

  stop(): void {
    clearInterval(this.#timer);
    this.#delay.disable();
  }

  /** The relay is being stopped: that is for good. */
  close(): void {
    this.#why = 'closing';
  }

  /** The store failed: nothing more until it has answered again. */
  trip(): void {
    this.#why ??= 'unavailable';
  }

  /** @param p99  delay of the event loop [ms]; measured where it isn't given */
  async look(p99 = this.#delay.percentile(99) / nanosecondsInMillisecond - loopResolution): Promise<void> {
    this.#delay.reset();
    const why = await this.#found(p99).catch((): Why => 'unavailable');
    if (this.#why !== 'closing') this.#why = why;
  }

  async #found(p99: number): Promise<Why | undefined> {
    const [waiting, { freeBytes = Infinity }] = await Promise.all([this.#store.waiting(), this.#store.health()]);
    this.#full = waiting >= this.#lines.queueMost * (this.#full ? opensBelow : 1);
    this.#loaded = p99 > late || waiting > this.#lines.queueMost / 2;
    if (freeBytes < this.#lines.freeLeast) return 'unavailable';
    return this.#full || p99 > tooLate ? 'busy' : undefined;
  }
}
