import { mkdir, readdir, stat } from 'node:fs/promises';
import { connect } from 'node:net';
import { hostname } from 'node:os';
import { basename, join } from 'node:path';
import type { Clock } from './clock.ts';
import { socketAt } from './control/socket.ts';
import { keyedHash, sha256 } from './hashes.ts';
import type { Log } from './log.ts';
import { KeysFault, makeKeys, readKeys, type Keys } from './settings/keys.ts';
import { SettingsFault, type Settings } from './settings/read-settings.ts';
import { StoreUnusable, type StoreBroken } from './store/failures.ts';
import type { PostgresStore } from './store/postgres/postgres-store.ts';
import type { Store } from './store/store.ts';

/** What tells where a store is. */
export type StorePlace = Pick<Settings, 'data' | 'database' | 'keys'>;

export const storeFileOf = (settings: Pick<Settings, 'data'>) => join(settings.data, 'relay.sqlite');
export const keysFileOf = (settings: Pick<Settings, 'data' | 'keys'>) => settings.keys ?? join(settings.data, 'keys.json');

const isThere = (path: string) => stat(path).then(() => true, () => false);

/** The secrets of a relay; made for a new one, never beside a store that was filled with others. @throws SettingsFault, KeysFault */
export async function keysFor(settings: Pick<Settings, 'data' | 'keys'>, clock: Clock): Promise<Keys> {
  const file = keysFileOf(settings);
  if (await isThere(file)) return readKeys(file);
  if (await isThere(storeFileOf(settings))) throw new SettingsFault([`${file}: the secrets this store was filled with aren’t there; put the file back from a backup, for without it nobody who stopped mail is known any more`]);
  return makeKeys(file, clock.now());
}

/** What a database is told of the secrets it is filled with. */
export const markOf = ({ addresses }: Keys) => keyedHash(addresses, 'store', 'acre-to-axle');

/** The secrets of a database, which all who share it have to have. @throws KeysFault */
async function sharedKeys(settings: StorePlace, clock: Clock, store: PostgresStore): Promise<Keys> {
  const file = keysFileOf(settings);
  const copy = `${file}: put a copy there of the secrets of the relay that has this database already, for without it nobody who stopped mail is known`;
  if (!await isThere(file) && await store.filledWith() !== undefined) throw new KeysFault(copy);
  const keys = await keysFor(settings, clock);
  if (await store.filledWith(markOf(keys)) !== markOf(keys)) throw new KeysFault(`these are not the secrets this database was filled with. ${copy}`);
  return keys;
}

/** Whether a relay runs on a data folder. */
const isTaken = (data: string) => new Promise<boolean>((resolve) => {
  const socket = connect(socketAt(data));
  socket.once('error', () => resolve(false)).once('connect', () => {
    socket.destroy();
    resolve(true);
  });
});

export interface StoreHears {
  /** Mail may be due that was taken in elsewhere. */
  onDue(): void;
  /** The store failed for good. */
  onBroken(error: StoreBroken): void;
  log: Log;
}

/**
 * Opens the store the settings name, and the secrets it was filled with.
 *
 * @param hears  what a relay hears of it; undefined for a task beside one
 * @throws SettingsFault, KeysFault, StoreUnusable, each with what to do
 */
export async function openStore(settings: StorePlace, clock: Clock, hears?: StoreHears): Promise<{ store: Store; keys: Keys }> {
  await mkdir(settings.data, { recursive: true, mode: 0o700 });
  if (settings.database === undefined) {
    const keys = await keysFor(settings, clock);
    const { openSqlite } = await import('./store/sqlite/sqlite-store.ts');
    return { keys, store: openSqlite({ file: storeFileOf(settings), clock, ...(hears ? { onBroken: (error) => hears.onBroken(error) } : { ballast: 0 }) }) };
  }
  const left = (await readdir(settings.data)).find((name) => name === basename(storeFileOf(settings)) || name.startsWith(`${basename(storeFileOf(settings))}.moving-`));
  if (left !== undefined) throw new StoreUnusable(`ACRE_DATABASE is set, and ${join(settings.data, left)} holds a store: take it over with "acre-to-axle relay move", or put it in another folder.`);
  if (hears && await isTaken(settings.data)) throw new StoreUnusable(`Another relay works on ${settings.data}: stop it first, or give this one a folder of its own with a copy of keys.json.`);
  const { openPostgres } = await import('./store/postgres/postgres-store.ts');
  const store = await openPostgres({
    address: settings.database, clock, name: sha256(`${hostname()}\0${settings.data}`).slice(0, 16),
    ...(hears && { onDue: () => hears.onDue(), onBroken: (error: StoreBroken) => hears.onBroken(error), onTrouble: (error: unknown) => hears.log.warn('the database is away', { why: (error as { code?: string }).code }) }),
  });
  try {
    return { store, keys: await sharedKeys(settings, clock, store) };
  } catch (error) {
    await store.close();
    throw error;
  }
}
