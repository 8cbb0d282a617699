import { onDisk, whenDone, type Database } from './database.ts';
import { longestWait } from './back-off.ts';
import { refuseWhereRetired } from './retire.ts';
import { findIn, isObject } from './read-record.ts';
import type { Found, Waiting } from './record.ts';

/** What is to be sent next, when there is something to wait for, or that there is nothing. */
export type Next = { is: 'due'; waiting: Waiting } | { is: 'later'; at: number } | { is: 'none' };

/** What lies in one place of the queue. A place is never given twice. */
export interface Stored {
  place: number;
  /** As it was written. */
  record: unknown;
  found: Found;
}

/** How many wait, since when the first of them does [ms since 1970], and how many of them need staff. */
export interface Counts {
  count: number;
  oldest: number | undefined;
  needsStaff: number;
}

/** After so many answers that it can't be taken now, one lets those behind it go first: it may be what breaks the relay. */
const patience = 8;

/** A wait longer than any there is comes of a clock that was put back. */
const isDue = ({ nextAt }: Waiting, now: number) => nextAt <= now || nextAt > now + longestWait;

/** The intakes that wait, in the order they came. Every call may throw StorageTrouble. */
export class WaitingStore {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  /** Resolves once they are on disk. Adding what is there already changes nothing. @returns how many were new */
  add(records: readonly Waiting[]): Promise<number> {
    return this.#database.run((database) => {
      const transaction = database.transaction(['waiting', 'kept'], 'readwrite', onDisk);
      const store = transaction.objectStore('waiting');
      return whenDone(transaction, (async () => {
        await refuseWhereRetired(transaction.objectStore('kept'));
        let added = 0;
        for (const record of records) {
          if (await store.index('id').getKey(record.id) !== undefined) continue;
          await store.add({ ...record });
          added += 1;
        }
        return added;
      })());
    });
  }

  /** The first that is due; one that was tried too often comes after all others. */
  next(now: number): Promise<Next> {
    return this.#database.run(async (database) => {
      let tired: Waiting | undefined;
      for (let cursor = await database.transaction('waiting').store.openCursor(); cursor; cursor = await cursor.continue()) {
        const found = readStored(cursor.value);
        if (found.is !== 'waiting' || found.waiting.state === 'needs-staff') continue;
        const { waiting } = found;
        if (waiting.tries < patience) return isDue(waiting, now) ? { is: 'due', waiting } : { is: 'later', at: waiting.nextAt };
        if (!tired || waiting.nextAt < tired.nextAt) tired = waiting;
      }
      if (!tired) return { is: 'none' };
      return isDue(tired, now) ? { is: 'due', waiting: tired } : { is: 'later', at: tired.nextAt };
    });
  }

  /**
   * Changes a record that is still there.
   *
   * @param strict  whether it counts only once it is on disk; what is lost of a try is tried again
   */
  change(id: string, change: Partial<Pick<Waiting, 'state' | 'tries' | 'nextAt' | 'code'>>, { strict = true } = {}): Promise<void> {
    return this.#database.run((database) => {
      const transaction = database.transaction('waiting', 'readwrite', strict ? onDisk : { durability: 'relaxed' });
      return whenDone(transaction, (async () => {
        const cursor = await transaction.store.index('id').openCursor(id);
        if (cursor && isObject(cursor.value)) await cursor.update({ ...cursor.value, ...change });
      })());
    });
  }

  remove(id: string): Promise<void> {
    return this.#database.run((database) => {
      const transaction = database.transaction('waiting', 'readwrite', onDisk);
      return whenDone(transaction, (async () => { await (await transaction.store.index('id').openCursor(id))?.delete(); })());
    });
  }

  /** Everything that waits, in its order, as it was found; what a later page wrote and what is damaged too. */
  all(): Promise<Stored[]> {
    return this.#database.run(async (database) => {
      const { store } = database.transaction('waiting');
      const [places, values] = await Promise.all([store.getAllKeys(), store.getAll()]);
      return places.map((place, index) => ({ place, record: withoutPlace(values[index]), found: readStored(values[index]) }));
    });
  }

  /** Back into the queue with what needs staff and is sound: one of them, or all. */
  sendAgain(id?: string): Promise<void> {
    return this.#each((value) => {
      const found = readStored(value);
      const isMeant = found.is === 'waiting' && found.waiting.state === 'needs-staff' && (id === undefined || found.waiting.id === id);
      if (!isMeant) return undefined;
      const { code: _code, ...rest } = value;
      return { ...rest, state: 'queued', tries: 0, nextAt: 0 };
    });
  }

  /** Hands what is damaged to staff, who alone can say what becomes of it. */
  setDamagedAside(): Promise<void> {
    return this.#each((value) => (readStored(value).is === 'damaged' && value.state !== 'needs-staff' ? { ...value, state: 'needs-staff', code: 'damaged' } : undefined));
  }

  /** Deletes what needs staff, but for what a later page wrote. @returns whether there was such a one in this place */
  discard(place: number): Promise<boolean> {
    return this.#database.run((database) => {
      const transaction = database.transaction('waiting', 'readwrite', onDisk);
      return whenDone(transaction, (async () => {
        const value = await transaction.store.get(place);
        if (!isObject(value) || value.state !== 'needs-staff' || readStored(value).is === 'newer') return false;
        await transaction.store.delete(place);
        return true;
      })());
    });
  }

  counts(): Promise<Counts> {
    return this.#database.run(async (database) => {
      const { store } = database.transaction('waiting');
      const [count, needsStaff, first] = await Promise.all([store.count(), store.index('state').count('needs-staff'), store.index('createdAt').openKeyCursor()]);
      return { count, needsStaff, oldest: typeof first?.key === 'number' ? first.key : undefined };
    });
  }

  /** Changes each that `changeOf` has a change for, all or none. */
  #each(changeOf: (value: Record<string, unknown>) => Record<string, unknown> | undefined): Promise<void> {
    return this.#database.run((database) => {
      const transaction = database.transaction('waiting', 'readwrite', onDisk);
      return whenDone(transaction, (async () => {
        for (let cursor = await transaction.store.openCursor(); cursor; cursor = await cursor.continue()) {
          const changed = isObject(cursor.value) ? changeOf(cursor.value) : undefined;
          if (changed) await cursor.update(changed);
        }
      })());
    });
  }
}

function withoutPlace(value: unknown): unknown {
  if (!isObject(value)) return value;
  const { number: _place, ...record } = value;
  return record;
}

const readStored = (value: unknown): Found => findIn(withoutPlace(value));
