import { deleteDB } from 'idb';
import { onDisk, whenDone, type Database } from './database.ts';
import { StorageTrouble } from './storage-trouble.ts';

const flag = 'retired';

/** Within a transaction: nothing new comes in once a device is being retired, from whichever window. @throws StorageTrouble */
export async function refuseWhereRetired(kept: { get(key: string): Promise<unknown> }): Promise<void> {
  if (await kept.get(flag)) throw new StorageTrouble('retired');
}

export type Retired =
  | { kind: 'retired' }
  /** So many intakes are neither sent nor in the file that was saved. */
  | { kind: 'waiting'; count: number }
  /** So many parked intakes would go with it. */
  | { kind: 'parked'; count: number }
  /** It goes once the other windows of this page are closed. */
  | { kind: 'other-window' };

/**
 * Deletes everything a counter keeps on this device, unless something would be lost.
 *
 * @param exported    places of the queue that are in a file which staff saved
 * @param dropParked  staff said that parked intakes go
 * @throws StorageTrouble
 */
export async function retire(database: Database, exported: ReadonlySet<number>, dropParked: boolean): Promise<Retired> {
  const held = await database.run((opened): Promise<Retired | undefined> => {
    const transaction = opened.transaction(['waiting', 'parked', 'kept'], 'readwrite', onDisk);
    return whenDone(transaction, (async () => {
      const places = await transaction.objectStore('waiting').getAllKeys();
      const count = places.filter((place) => !exported.has(place)).length;
      if (count > 0) return { kind: 'waiting', count };
      const parked = await transaction.objectStore('parked').count();
      if (parked > 0 && !dropParked) return { kind: 'parked', count: parked };
      await transaction.objectStore('kept').put(true, flag);
      return undefined;
    })());
  });
  if (held) return held;
  database.retire();
  return new Promise((resolve, reject) => {
    deleteDB(database.name, { blocked: () => resolve({ kind: 'other-window' }) }).then(() => resolve({ kind: 'retired' }), reject);
  });
}
