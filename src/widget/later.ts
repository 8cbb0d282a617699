import type { ReactiveControllerHost } from 'lit';

/**
 * What only some buyers want: fetched once it is asked for, by a key such as a language, and told to the page when it has
 * come or can't be had. What is wanted last counts.
 */
export class Later<K extends string, T> {
  there: T | undefined;
  isMissing = false;
  private key: K | undefined;
  private fetching: K | undefined;

  /** @param fetched  fetches what belongs to a key */
  constructor(private readonly host: Pick<ReactiveControllerHost, 'requestUpdate'>, private readonly fetched: (key: K) => Promise<T>) {}

  /** Asks for it, unless it is there, on its way, or couldn't be had. */
  want(key: K) {
    if (this.key !== key && this.fetching !== key && !this.isMissing) void this.fetch(key);
  }

  /** What couldn't be had is tried again when it is next wanted: as soon as the page is drawn anew. */
  tryAgain() {
    this.isMissing = false;
    this.host.requestUpdate();
  }

  private async fetch(key: K) {
    this.fetching = key;
    try {
      const there = await this.fetched(key);
      if (this.fetching !== key) return;
      this.there = there;
      this.key = key;
    } catch (trouble) {
      console.warn(`acre-to-axle: ${String(trouble)}`);
      this.isMissing = true;
    }
    if (this.fetching === key) this.fetching = undefined;
    this.host.requestUpdate();
  }
}
