import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { second, type Clock } from './clock.ts';
import { StorageTrouble, troubleOf, type StorageWhy } from './storage-trouble.ts';

/** What a counter keeps on its device. Records are read with suspicion: a later page or a broken disk may have written them. */
export interface Tables extends DBSchema {
  /** Sealed intakes, in the order they came. */
  waiting: { key: number; value: unknown; indexes: { id: string; state: string; createdAt: number } };
  /** Parked intakes, sealed to the device. */
  parked: { key: string; value: unknown };
  /** One thing a name: the relay's keys, the staff's lock, whatever a page keeps of its set-up. */
  kept: { key: string; value: unknown };
}
export type Table = 'waiting' | 'parked' | 'kept';
export type Opened = IDBPDatabase<Tables>;

/** Asks that what is written is on the disk before it counts: without it a browser may say so seconds too early. */
export const onDisk = { durability: 'strict' } as const;

export const databaseName = 'acre-to-axle-counter';
const databaseVersion = 1;
const longestWait = 10 * second;

function make(database: Opened, from: number) {
  if (from >= 1) return;
  const waiting = database.createObjectStore('waiting', { keyPath: 'number', autoIncrement: true });
  waiting.createIndex('id', 'id', { unique: true });
  waiting.createIndex('state', 'state');
  waiting.createIndex('createdAt', 'createdAt');
  database.createObjectStore('parked', { keyPath: 'id' });
  database.createObjectStore('kept');
}

/** Some browsers throw on a mere look at it. */
function isThere(): boolean {
  try {
    return (globalThis as { indexedDB?: IDBFactory }).indexedDB !== undefined && (globalThis.crypto as Partial<Crypto>).subtle !== undefined;
  } catch {
    return false;
  }
}

/**
 * Waits until a transaction is complete; nothing is kept before that.
 *
 * @throws why the transaction failed, which tells more than what became of the work in it
 */
export async function whenDone<T>(transaction: { done: Promise<void> }, work: Promise<T>): Promise<T> {
  const [worked, done] = await Promise.allSettled([work, transaction.done]);
  if (done.status === 'rejected') throw done.reason;
  if (worked.status === 'rejected') throw worked.reason;
  return worked.value;
}

/** The one way to what a counter keeps. It opens when it is needed, and once more where the browser lost it. */
export class Database {
  readonly name: string;
  readonly #clock: Clock;
  readonly #version: number;
  #opening: Promise<Opened> | undefined;
  /** Rejects as long as another window stands in the way. */
  #blocked: Promise<never> | undefined;
  /** Once a newer page or the deletion had it closed, it stays so. */
  #gone: StorageWhy | undefined;

  /** @param version  for tests: a page of a later release */
  constructor(clock: Clock, { name = databaseName, version = databaseVersion }: { name?: string; version?: number } = {}) {
    this.#clock = clock;
    this.name = name;
    this.#version = version;
  }

  /**
   * Does something with what is kept. It may be done twice where the browser lost its storage in between, so it has to
   * bear that.
   *
   * @throws StorageTrouble
   */
  async run<T>(action: (database: Opened) => Promise<T>): Promise<T> {
    try {
      return await this.#once(action);
    } catch (thrown) {
      const trouble = troubleOf(thrown);
      if (trouble.why !== 'lost') throw trouble;
    }
    this.close();
    try {
      return await this.#once(action);
    } catch (thrown) {
      throw troubleOf(thrown);
    }
  }

  /** @throws StorageTrouble */
  kept(name: string): Promise<unknown> {
    return this.run((database) => database.get('kept', name));
  }

  /** Resolves once it is on disk. @throws StorageTrouble */
  keep(name: string, value: unknown): Promise<void> {
    return this.run(async (database) => {
      const transaction = database.transaction('kept', 'readwrite', onDisk);
      await whenDone(transaction, transaction.store.put(value, name));
    });
  }

  /** It opens again when it is needed. */
  close() {
    void this.#opening?.then((database) => database.close(), () => undefined);
    this.#opening = undefined;
    this.#blocked = undefined;
  }

  /** Closes for good, before what is kept is deleted. */
  retire() {
    this.#gone = 'retired';
    this.close();
  }

  async #once<T>(action: (database: Opened) => Promise<T>): Promise<T> {
    if (this.#gone) throw new StorageTrouble(this.#gone);
    if (!isThere()) throw new StorageTrouble('refused');
    this.#opening ??= this.#open();
    return this.#inTime(Promise.race([this.#opening, ...(this.#blocked ? [this.#blocked] : [])]).then(action));
  }

  #inTime<T>(work: Promise<T>): Promise<T> {
    return new Promise<T>((resolve, reject) => {
      const callOff = this.#clock.after(longestWait, () => reject(new StorageTrouble('silent')));
      void work.then(resolve, reject).finally(callOff);
    });
  }

  #open(): Promise<Opened> {
    let block = () => {};
    const blocked = new Promise<never>((_resolve, reject) => { block = () => reject(new StorageTrouble('blocked')); });
    blocked.catch(() => undefined);
    this.#blocked = blocked;
    const lost = () => { if (this.#opening === opening) this.close(); };
    const opening = openDB<Tables>(this.name, this.#version, {
      upgrade: make,
      blocked: () => block(),
      // Whoever stands in the way of a newer page, or of the deletion, goes.
      blocking: (_current, next) => {
        this.#gone = next === null ? 'retired' : 'newer-page';
        this.close();
      },
      terminated: lost,
    });
    const free = () => { if (this.#opening === opening) this.#blocked = undefined; };
    void opening.then(free, lost);
    return opening;
  }
}
