import { hour } from './clock.ts';
import type { RelayTrouble } from './drain.ts';
import { troubleOf, type StorageWhy } from './storage-trouble.ts';
import type { Counts, WaitingStore } from './waiting-store.ts';

/** What stands in the way at the moment. */
export type Trouble = { of: 'relay'; why: RelayTrouble } | { of: 'storage'; why: StorageWhy };

/** What a page shows of its queue. */
export interface QueueStatus extends Counts {
  /** Whether the browser promised not to clear it when the disk runs full; undefined where it wasn't asked or can't say. */
  persisted: boolean | undefined;
  trouble: Trouble | undefined;
}

const [manyWaiting, longWaiting] = [20, 24 * hour];

/** Whether somebody has to do something: too many wait, one waits too long, or one needs staff. */
export const isOverdue = ({ count, oldest, needsStaff }: QueueStatus, now: number) =>
  needsStaff > 0 || count > manyWaiting || (oldest !== undefined && now - oldest > longWaiting);

/** The state of a queue as all windows of this device see it. A `change` event tells that something of it is other. */
export class StatusBoard extends EventTarget {
  status: QueueStatus = { count: 0, oldest: undefined, needsStaff: 0, persisted: undefined, trouble: undefined };
  readonly #store: WaitingStore;
  readonly #windows: BroadcastChannel;
  #relay: RelayTrouble | undefined;
  #storage: StorageWhy | undefined;
  #reading: Promise<void> | undefined;
  #stale = false;
  #closed = false;

  constructor(store: WaitingStore, name: string) {
    super();
    this.#store = store;
    this.#windows = new BroadcastChannel(name);
    this.#windows.addEventListener('message', () => { void this.read(); });
  }

  persisted(persisted: boolean | undefined) {
    this.#set({ persisted });
  }

  /** How the last round ended. */
  relay(why: RelayTrouble | undefined) {
    this.#relay = why;
    this.#set({});
  }

  /** How the last write ended. */
  storage(why: StorageWhy | undefined) {
    this.#storage = why;
    this.#set({});
  }

  /** Something of the queue was changed by this window. */
  async changed(): Promise<void> {
    if (this.#closed) return;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel of this origin alone
    this.#windows.postMessage('changed');
    await this.read();
  }

  /** Counts anew; whoever calls while it counts is counted for afterwards. */
  read(): Promise<void> {
    this.#stale = true;
    this.#reading ??= this.#count().finally(() => { this.#reading = undefined; });
    return this.#reading;
  }

  close() {
    this.#closed = true;
    this.#windows.close();
  }

  #set(change: Partial<QueueStatus>) {
    const trouble: Trouble | undefined = this.#storage ? { of: 'storage', why: this.#storage } : this.#relay && { of: 'relay', why: this.#relay };
    const next = { ...this.status, ...change, trouble };
    if (JSON.stringify(next) === JSON.stringify(this.status)) return;
    this.status = next;
    this.dispatchEvent(new Event('change'));
  }

  async #count() {
    while (this.#stale) {
      this.#stale = false;
      try {
        const counts = await this.#store.counts();
        // What can be read may still be full.
        if (this.#storage !== 'full') this.#storage = undefined;
        this.#set(counts);
      } catch (thrown) {
        this.storage(troubleOf(thrown).why);
      }
    }
  }
}
