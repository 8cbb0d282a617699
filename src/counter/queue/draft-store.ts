import { minute, type Clock } from './clock.ts';
import { whenDone, type Database } from './database.ts';
import { openOnDevice, sealToDevice, type DeviceBox } from './device-seal.ts';
import { isObject } from './read-record.ts';
import { refuseWhereRetired } from './retire.ts';
import type { StaffLock } from './staff-lock.ts';

/** How long what stood on a screen can be had back after its page was last there [ms]. */
export const draftGoodFor = 5 * minute;

const prefix = 'draft ';
/** Made when it is needed: some browsers throw on a mere look at storage. */
const all = () => IDBKeyRange.bound(prefix, `${prefix}\uffff`);

interface Kept extends DeviceBox {
  v: 1;
  /** When its page was last there [ms since 1970]. */
  at: number;
}

/** What a page that is gone left behind. */
export interface Left {
  id: string;
  /** Until when it can be had back [ms since 1970]. */
  until: number;
}

const isKept = (value: unknown): value is Kept => isObject(value) && value.v === 1 && typeof value.at === 'number' && value.enc instanceof Uint8Array && value.box instanceof Uint8Array;

/**
 * What stands on the screen, one a window, for the case that its page crashes: sealed as what is parked, so that nobody
 * has it back without the staff's PIN, and kept only where there is one.
 */
export class DraftStore {
  readonly #database: Database;
  readonly #lock: StaffLock;
  readonly #clock: Clock;

  constructor(database: Database, lock: StaffLock, clock: Clock) {
    this.#database = database;
    this.#lock = lock;
    this.#clock = clock;
  }

  /**
   * @param id     of the window
   * @param draft  anything JSON can hold
   * @returns whether it is kept: it isn't without a PIN @throws StorageTrouble
   */
  async keep(id: string, draft: unknown): Promise<boolean> {
    const publicKey = await this.#lock.publicKey();
    if (!publicKey) return false;
    const kept: Kept = { v: 1, at: this.#clock.now(), ...await sealToDevice(draft, publicKey, prefix + id) };
    await this.#database.run((database) => {
      const transaction = database.transaction('kept', 'readwrite');
      return whenDone(transaction, (async () => {
        await refuseWhereRetired(transaction.store);
        await transaction.store.put(kept, prefix + id);
      })());
    });
    return true;
  }

  /** Resolves once it is gone. @throws StorageTrouble */
  drop(id: string): Promise<void> {
    return this.#database.run((database) => {
      const transaction = database.transaction('kept', 'readwrite');
      return whenDone(transaction, transaction.store.delete(prefix + id));
    });
  }

  /** What lies there and isn't over; what is, or can't be read, is thrown away. @throws StorageTrouble */
  left(): Promise<Left[]> {
    const now = this.#clock.now();
    return this.#database.run((database) => {
      const transaction = database.transaction('kept', 'readwrite');
      return whenDone(transaction, (async () => {
        const found: Left[] = [];
        for (const key of await transaction.store.getAllKeys(all())) {
          const value = await transaction.store.get(key);
          // A clock that was put back must not keep it for longer.
          if (isKept(value) && Math.abs(now - value.at) < draftGoodFor) found.push({ id: key.slice(prefix.length), until: value.at + draftGoodFor });
          else await transaction.store.delete(key);
        }
        return found;
      })());
    });
  }

  /** Takes it out, for one page alone. @returns undefined while locked, where it is over, and where it can't be read @throws StorageTrouble */
  async take(id: string): Promise<unknown> {
    const { privateKey } = this.#lock;
    if (!privateKey || !(await this.left()).some((each) => each.id === id)) return undefined;
    const value = await this.#database.run((database) => {
      const transaction = database.transaction('kept', 'readwrite');
      return whenDone(transaction, (async () => {
        const found = await transaction.store.get(prefix + id);
        await transaction.store.delete(prefix + id);
        return found;
      })());
    });
    return isKept(value) ? openOnDevice(value, privateKey, prefix + id) : undefined;
  }
}
