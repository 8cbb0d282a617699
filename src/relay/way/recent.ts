import { day } from '../clock.ts';
import type { Instant } from '../store/store.ts';

/**
 * Who met whom in the last day, in memory and bounded: only signs are read from it, and a relay that begins anew may have
 * forgotten them.
 */
export class Recent {
  readonly #met = new Map<string, { since: Instant; members: Set<string> }>();
  readonly #mostKeys: number;
  readonly #mostMembers: number;

  constructor(mostKeys = 20_000, mostMembers = 20) {
    this.#mostKeys = mostKeys;
    this.#mostMembers = mostMembers;
  }

  /** @returns how many met this key, the new one with them */
  add(key: string, member: string, now: Instant): number {
    const found = this.#met.get(key);
    const { since, members } = found && now - found.since < day ? found : { since: now, members: new Set<string>() };
    if (members.size < this.#mostMembers) members.add(member);
    this.#met.delete(key);
    this.#met.set(key, { since, members });
    const [oldest] = this.#met.keys();
    if (this.#met.size > this.#mostKeys && oldest !== undefined) this.#met.delete(oldest);
    return members.size;
  }

  /** How many met it in the last day. */
  count(key: string, now: Instant): number {
    const found = this.#met.get(key);
    return found && now - found.since < day ? found.members.size : 0;
  }
}
