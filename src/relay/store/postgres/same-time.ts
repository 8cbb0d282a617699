import { second, type Clock } from '../../clock.ts';
import { StoreUnusable } from '../failures.ts';
import type { Connections } from './connections.ts';

/** How far a machine's clock may be from the server's, and how often that is looked at [ms]. */
const [mostApart, every] = [5 * second, 30 * second];

/**
 * Sees to it that all who share a database mean the same by "now": whose clock is ahead would take everybody else to be
 * silent, and free what they are sending.
 */
export class SameTime {
  readonly #connections: Connections;
  readonly #clock: Clock;
  #checked = -Infinity;

  constructor(connections: Connections, clock: Clock) {
    this.#connections = connections;
    this.#clock = clock;
  }

  /** @throws StoreUnusable where the clocks are apart */
  async check(): Promise<void> {
    if (this.#clock.elapsed() - this.#checked < every) return;
    const [before, there, after] = await this.#connections.read(async (link) => {
      const from = this.#clock.now();
      const [found] = await link.rows<{ now: number }>(`SELECT (extract(epoch FROM clock_timestamp()) * 1000)::bigint AS now`);
      return [from, found!.now, this.#clock.now()] as const;
    });
    const apart = Math.max(before - there, there - after, 0);
    if (apart > mostApart) throw new StoreUnusable(`ACRE_DATABASE: the clock of this machine and the database’s are ${Math.round(apart / second)} s apart; set both by one time server.`);
    this.#checked = this.#clock.elapsed();
  }
}
