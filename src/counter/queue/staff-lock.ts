import { minute, type Clock } from './clock.ts';
import { onDisk, whenDone, type Database } from './database.ts';
import { newDeviceKeys, unwrapKey, wrapKey, type WrappedKey } from './device-seal.ts';
import { isObject } from './read-record.ts';
import { refuseWhereRetired } from './retire.ts';

/** What came of typing the PIN. */
export type Unlocked =
  | { kind: 'open' }
  /** So many tries are left. */
  | { kind: 'wrong'; left: number }
  /** Not before then [ms since 1970]. */
  | { kind: 'locked'; until: number }
  | { kind: 'not-set-up' };

interface Kept {
  v: 1;
  publicKey: Uint8Array<ArrayBuffer>;
  key: WrappedKey;
  failed: number;
  lockedUntil: number;
}

const place = 'staff-lock';
const fewestSigns = 6;
const [mostTries, lockedFor] = [5, 5 * minute];
/** Of PBKDF2-HMAC-SHA256: above the 600,000 that OWASP's cheat sheet on storing passwords asks for. */
const usualIterations = 1_000_000;

/** Whether a PIN is long enough; letters make a better one. */
export const isPin = (pin: string) => [...pin.trim()].length >= fewestSigns;

const keptOf = (value: unknown) => (isObject(value) && value.v === 1 ? value as unknown as Kept : undefined);

/**
 * What only staff's PIN opens: the private key of this device, to which parked intakes are sealed. It lies on the disk
 * wrapped under the PIN, and open in the memory of a page from `unlock` to `lock`.
 *
 * What that is worth: who finds the device gets five tries each five minutes, and who reads its disk reads nothing.
 * Who copies the disk can try PINs elsewhere, and there are a million of six digits: hours or days of a machine made
 * for it. A longer PIN, or a device whose disk is encrypted, is proof against that. A key that the browser holds and
 * doesn't hand out would be weaker: it lies readable on the same disk, and opens for whoever opens the page.
 */
export class StaffLock {
  readonly #database: Database;
  readonly #clock: Clock;
  readonly #iterations: number;
  /** Opens what is parked; undefined while locked. */
  privateKey: CryptoKey | undefined;

  /** @param iterations  for tests; whatever a lock was made with is kept with it */
  constructor(database: Database, clock: Clock, { iterations = usualIterations } = {}) {
    this.#database = database;
    this.#clock = clock;
    this.#iterations = iterations;
  }

  /** What is parked is sealed to it; undefined before the set-up. @throws StorageTrouble */
  async publicKey(): Promise<Uint8Array<ArrayBuffer> | undefined> {
    return keptOf(await this.#database.kept(place))?.publicKey;
  }

  /**
   * Makes the lock.
   *
   * @returns false where there is one: its PIN can be changed, and it can be made anew
   * @throws StorageTrouble, RangeError where the PIN is too short
   */
  async setUp(pin: string): Promise<boolean> {
    const made = await this.#made(pin);
    return this.#database.run((database) => {
      const transaction = database.transaction('kept', 'readwrite', onDisk);
      return whenDone(transaction, (async () => {
        await refuseWhereRetired(transaction.store);
        if (keptOf(await transaction.store.get(place))) return false;
        await transaction.store.put(made, place);
        return true;
      })());
    });
  }

  /** @throws StorageTrouble */
  async unlock(pin: string): Promise<Unlocked> {
    const tried = await this.#try();
    if (!('key' in tried)) return tried;
    const privateKey = await unwrapKey(tried.key, pin);
    if (!privateKey) return tried.left > 0 ? { kind: 'wrong', left: tried.left } : { kind: 'locked', until: tried.until };
    await this.#change((kept) => ({ ...kept, failed: 0, lockedUntil: 0 }));
    this.privateKey = privateKey;
    return { kind: 'open' };
  }

  lock() {
    this.privateKey = undefined;
  }

  /**
   * Changes the PIN; what is parked stays.
   *
   * @throws StorageTrouble, RangeError where the new one is too short
   */
  async change(old: string, pin: string): Promise<Unlocked> {
    if (!isPin(pin)) throw new RangeError(`A PIN has at least ${fewestSigns} signs.`);
    const tried = await this.#try();
    if (!('key' in tried)) return tried;
    const privateKey = await unwrapKey(tried.key, old, { extractable: true });
    if (!privateKey) return tried.left > 0 ? { kind: 'wrong', left: tried.left } : { kind: 'locked', until: tried.until };
    const key = await wrapKey(privateKey, pin, this.#iterations);
    await this.#change((kept) => ({ ...kept, key, failed: 0, lockedUntil: 0 }));
    return { kind: 'open' };
  }

  /** For a PIN nobody knows any more: a new one, and all that is parked goes. @throws StorageTrouble, RangeError */
  async makeAnew(pin: string): Promise<void> {
    const made = await this.#made(pin);
    this.lock();
    await this.#database.run((database) => {
      const transaction = database.transaction(['kept', 'parked'], 'readwrite', onDisk);
      return whenDone(transaction, Promise.all([transaction.objectStore('kept').put(made, place), transaction.objectStore('parked').clear()]));
    });
  }

  async #made(pin: string): Promise<Kept> {
    if (!isPin(pin)) throw new RangeError(`A PIN has at least ${fewestSigns} signs.`);
    const keys = await newDeviceKeys();
    const publicKey = new Uint8Array(await crypto.subtle.exportKey('raw', keys.publicKey));
    return { v: 1, publicKey, key: await wrapKey(keys.privateKey, pin, this.#iterations), failed: 0, lockedUntil: 0 };
  }

  /** Counts a try before it is made: a page that is killed in between gives none away. */
  async #try(): Promise<{ key: WrappedKey; left: number; until: number } | Extract<Unlocked, { kind: 'locked' | 'not-set-up' }>> {
    const now = this.#clock.now();
    let locked: number | undefined;
    const kept = await this.#change((before) => {
      // A clock that was put back must not lock for years.
      const lockedUntil = Math.min(before.lockedUntil, now + lockedFor);
      locked = lockedUntil > now ? lockedUntil : undefined;
      if (locked !== undefined) return { ...before, lockedUntil };
      const failed = before.failed + 1;
      return failed < mostTries ? { ...before, failed, lockedUntil: 0 } : { ...before, failed: 0, lockedUntil: now + lockedFor };
    });
    if (!kept) return { kind: 'not-set-up' };
    if (locked !== undefined) return { kind: 'locked', until: locked };
    return { key: kept.key, left: kept.lockedUntil > 0 ? 0 : mostTries - kept.failed, until: kept.lockedUntil };
  }

  #change(changeOf: (kept: Kept) => Kept): Promise<Kept | undefined> {
    return this.#database.run((database) => {
      const transaction = database.transaction('kept', 'readwrite', onDisk);
      return whenDone(transaction, (async () => {
        const before = keptOf(await transaction.store.get(place));
        if (!before) return undefined;
        const after = changeOf(before);
        await transaction.store.put(after, place);
        return after;
      })());
    });
  }
}
