import type { Clock } from './clock.ts';
import { onDisk, whenDone, type Database } from './database.ts';
import { openOnDevice, sealToDevice, type DeviceBox } from './device-seal.ts';
import { isObject } from './read-record.ts';
import { refuseWhereRetired } from './retire.ts';
import type { StaffLock } from './staff-lock.ts';
import { troubleOf, type StorageWhy } from './storage-trouble.ts';

export const parkedVersion = 1;

/** An intake put aside, as it lies on the disk. */
interface Parked extends DeviceBox {
  id: string;
  v: number;
  /** Milliseconds since 1970. */
  parkedAt: number;
}

export type Park =
  | { kind: 'parked'; id: string }
  | { kind: 'not-saved'; why: StorageWhy }
  /** Staff made no PIN yet. */
  | { kind: 'no-lock' };

export interface ParkedEntry {
  id: string;
  parkedAt: number | undefined;
  /** Undefined for one this page can't read: it is `newer`, or `damaged`. */
  label: string | undefined;
  is: 'sound' | 'newer' | 'damaged';
}

export interface Reopened {
  label: string;
  /** As it was parked: whoever uses it reads it as he reads any document. */
  draft: unknown;
}

const isParked = (value: unknown): value is Parked =>
  isObject(value) && value.v === parkedVersion && typeof value.id === 'string' && value.enc instanceof Uint8Array && value.box instanceof Uint8Array;

/**
 * Intakes that are not finished, put aside under a name or number. Anybody at the counter may park; what is parked, its
 * label too, is sealed before it is written and opens with the staff's PIN alone.
 */
export class ParkedStore {
  readonly #database: Database;
  readonly #lock: StaffLock;
  readonly #clock: Clock;

  constructor(database: Database, lock: StaffLock, clock: Clock) {
    this.#database = database;
    this.#lock = lock;
    this.#clock = clock;
  }

  /**
   * Puts an intake aside. It is parked once this has resolved so, and not before.
   *
   * @param draft  anything JSON can hold
   * @param id     of one that was open, to take its place
   */
  async park(label: string, draft: unknown, id: string = crypto.randomUUID()): Promise<Park> {
    try {
      const publicKey = await this.#lock.publicKey();
      if (!publicKey) return { kind: 'no-lock' };
      const parked: Parked = { id, v: parkedVersion, parkedAt: this.#clock.now(), ...await sealToDevice({ label, draft }, publicKey, id) };
      await this.#database.run((database) => {
        const transaction = database.transaction(['parked', 'kept'], 'readwrite', onDisk);
        return whenDone(transaction, (async () => {
          await refuseWhereRetired(transaction.objectStore('kept'));
          await transaction.objectStore('parked').put(parked);
        })());
      });
      return { kind: 'parked', id };
    } catch (thrown) {
      return { kind: 'not-saved', why: troubleOf(thrown).why };
    }
  }

  /**
   * Throws away what has lain too long; that needs no PIN. What a later page wrote is left to it.
   *
   * @param longest  how long one may lie [ms]
   * @returns how many were thrown away, and when the others are [ms since 1970], the first first
   * @throws StorageTrouble
   */
  expire(longest: number): Promise<{ gone: number; ends: readonly number[] }> {
    const now = this.#clock.now();
    return this.#database.run((database) => {
      const transaction = database.transaction('parked', 'readwrite', onDisk);
      return whenDone(transaction, (async () => {
        const rows = (await transaction.store.getAll()).filter(isObject).filter(({ v }) => !(typeof v === 'number' && v > parkedVersion));
        // One without a time, or parked before the clock was put back, lies from now on: it must not lie for ever.
        const dated = rows.map((row) => ({ row, at: typeof row.parkedAt === 'number' && row.parkedAt <= now ? row.parkedAt : now }));
        const over = dated.filter(({ at }) => now - at >= longest);
        const left = dated.filter((each) => !over.includes(each));
        await Promise.all([
          ...over.map(({ row }) => transaction.store.delete(String(row.id))),
          ...left.filter(({ row, at }) => row.parkedAt !== at).map(({ row, at }) => transaction.store.put({ ...row, parkedAt: at })),
        ]);
        return { gone: over.length, ends: left.map(({ at }) => at + longest).sort((one, other) => one - other) };
      })());
    });
  }

  /** How many there are; that may be told to anybody. @throws StorageTrouble */
  count(): Promise<number> {
    return this.#database.run((database) => database.count('parked'));
  }

  /** All that is parked, the latest first; undefined while locked. @throws StorageTrouble */
  async list(): Promise<ParkedEntry[] | undefined> {
    if (!this.#lock.privateKey) return undefined;
    const values = await this.#database.run((database) => database.getAll('parked'));
    const entries = await Promise.all(values.filter(isObject).map((value) => this.#entryOf(value)));
    return entries.sort((one, other) => (other.parkedAt ?? 0) - (one.parkedAt ?? 0));
  }

  /** One that is parked, which stays so; undefined while locked, and where it isn't there or can't be read. @throws StorageTrouble */
  async open(id: string): Promise<Reopened | undefined> {
    return this.#reopened(await this.#database.run((database) => database.get('parked', id)));
  }

  /** @returns false while locked: who can't read one can't throw it away @throws StorageTrouble */
  async remove(id: string): Promise<boolean> {
    if (!this.#lock.privateKey) return false;
    await this.#database.run((database) => {
      const transaction = database.transaction('parked', 'readwrite', onDisk);
      return whenDone(transaction, transaction.store.delete(id));
    });
    return true;
  }

  async #reopened(value: unknown): Promise<Reopened | undefined> {
    const { privateKey } = this.#lock;
    const opened = privateKey && isParked(value) ? await openOnDevice(value, privateKey, value.id) : undefined;
    return isObject(opened) && typeof opened.label === 'string' ? { label: opened.label, draft: opened.draft } : undefined;
  }

  async #entryOf(value: Record<string, unknown>): Promise<ParkedEntry> {
    const opened = await this.#reopened(value);
    const isNewer = typeof value.v === 'number' && value.v > parkedVersion;
    return {
      id: String(value.id), parkedAt: typeof value.parkedAt === 'number' ? value.parkedAt : undefined, label: opened?.label,
      is: opened ? 'sound' : isNewer ? 'newer' : 'damaged',
    };
  }
}
