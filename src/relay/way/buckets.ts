import type { Clock } from '../clock.ts';

/** Buckets in memory, for what costs nothing to be forgotten: pages and tickets. Bounded; the one longest untouched goes first. */
export class Buckets {
  readonly #clock: Clock;
  readonly #most: number;
  readonly #fills: number;
  readonly #mostKeys: number;
  readonly #levels = new Map<string, { level: number; at: number }>();

  /** @param fills  time in which one fills from empty [ms] */
  constructor(clock: Clock, most: number, fills: number, mostKeys = 50_000) {
    this.#clock = clock;
    this.#most = most;
    this.#fills = fills;
    this.#mostKeys = mostKeys;
  }

  #levelOf(key: string): number {
    const held = this.#levels.get(key);
    return held ? Math.min(this.#most, held.level + ((this.#clock.elapsed() - held.at) * this.#most) / this.#fills) : this.#most;
  }

  isEmpty(key: string): boolean {
    return this.#levelOf(key) < 1;
  }

  /** @returns false where nothing is left */
  take(key: string): boolean {
    const level = this.#levelOf(key);
    if (level < 1) return false;
    this.#levels.delete(key);
    this.#levels.set(key, { level: level - 1, at: this.#clock.elapsed() });
    const [oldest] = this.#levels.keys();
    if (this.#levels.size > this.#mostKeys && oldest !== undefined) this.#levels.delete(oldest);
    return true;
  }
}
