import { day, minute, second } from '../clock.ts';

/** What a provider takes, where he says. */
export interface Rates {
  perSecond?: number;
  perMinute?: number;
  perDay?: number;
}

/** Keeps to a provider's rates, by a clock that never goes back. */
export class Rate {
  readonly #windows: { most: number; length: number; at: number[] }[];

  constructor({ perSecond, perMinute, perDay }: Rates) {
    const given: [number | undefined, number][] = [[perSecond, second], [perMinute, minute], [perDay, day]];
    this.#windows = given.flatMap(([most, length]) => (most === undefined ? [] : [{ most, length, at: [] }]));
  }

  /** How long until one more may go out [ms]; 0 at once. */
  wait(now: number): number {
    return Math.max(0, ...this.#windows.map(({ most, length, at }) => (at.length < most ? 0 : at[at.length - most]! + length - now)));
  }

  take(now: number): void {
    for (const { most, at } of this.#windows) {
      at.push(now);
      if (at.length > most) at.splice(0, at.length - most);
    }
  }
}
