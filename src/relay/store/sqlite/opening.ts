import { accessSync, closeSync, constants, existsSync, fsyncSync, openSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { StoreUnusable } from '../failures.ts';
import { readThrough } from './read-through.ts';
import { checkOwner, isAsMade, migrate } from './schema.ts';

/** The first release without the fault that could lose pages when two connections write and checkpoint at once (sqlite.org/releaselog/3_51_3.html). */
const soundSince = [3, 51, 3];
/** Pages in the log before they are brought home, and most bytes it is left with: a full disk is told early. */
const [checkpointPages, mostLog] = [1_000, 4_194_304];
/** Another program may look into the file for a moment [ms]. */
const patience = 2_000;

const older = (version: string) => {
  const parts = version.split('.').map(Number);
  const differs = soundSince.findIndex((part, place) => part !== (parts[place] ?? 0));
  return differs >= 0 && (parts[differs] ?? 0) < soundSince[differs]!;
};

/** @throws StoreUnusable where SQLite is a release that can lose what it confirmed */
export function checkVersion(version: string): void {
  if (older(version)) throw new StoreUnusable(`SQLite ${version} can lose what it confirmed: use ${soundSince.join('.')} or newer, as the package better-sqlite3 brings it.`);
}

const notWritable = (path: string) => `${path} can’t be written to: give it and its folder to the user the relay runs as, or name another.`;

const setAsideAs = (file: string) => `${file}.damaged`;
/** What a file is called while it is taken over to a database, and after. */
export const movingAs = (file: string) => `${file}.moving-`;
export const movedAs = (file: string) => `${file}.moved-`;

/** The file that is called so, with more behind it. */
export function calledBy(stem: string): string | undefined {
  const name = readdirSync(dirname(stem)).find((each) => each.startsWith(basename(stem)) && !/-(wal|shm)$/.test(each));
  return name && join(dirname(stem), name);
}

/** Never deleted: what was promised may still be in it. */
function setAside(file: string, now: number): string {
  const aside = `${setAsideAs(file)}-${new Date(now).toISOString().replaceAll(':', '-')}`;
  for (const tail of ['', '-wal', '-shm']) if (existsSync(file + tail)) renameSync(file + tail, aside + tail);
  return aside;
}

const recover = (aside: string, file: string) =>
  `copy what can be read of it with "acre-to-axle relay salvage ${aside} ${file}" or put a backup at ${file}; to begin with nothing, move ${aside} to another folder`;

function checkPlace(file: string): void {
  const folder = dirname(file);
  if (!existsSync(folder)) throw new StoreUnusable(`The folder ${folder} of the store isn’t there: make it, or name another.`);
  if (!statSync(folder).isDirectory()) throw new StoreUnusable(`${folder} is no folder: name one for the store.`);
  for (const each of [folder, file, `${file}-wal`]) {
    if (!existsSync(each)) continue;
    try {
      accessSync(each, constants.R_OK | constants.W_OK);
    } catch {
      throw new StoreUnusable(notWritable(each));
    }
  }
}

/** Nobody begins anew, knowing nobody who stopped mail, where a store was. */
function checkMoved(file: string): void {
  const moving = calledBy(movingAs(file));
  if (moving) throw new StoreUnusable(`${moving} is half-way to the database ACRE_DATABASE names: run "acre-to-axle relay move" again.`);
  const moved = calledBy(movedAs(file));
  if (moved) throw new StoreUnusable(`${file} was moved to a database: name that in ACRE_DATABASE. To begin with nothing, move ${moved} to another folder.`);
}

/** Held for as long as the process lives: the system lets go of it however the process ends. */
export function lock(file: string): Database.Database {
  const holder = new Database(`${file}.lock`, { timeout: 0 });
  try {
    holder.exec('BEGIN EXCLUSIVE');
    return holder;
  } catch (error) {
    holder.close();
    if (!String((error as { code?: unknown }).code).startsWith('SQLITE_BUSY')) throw new StoreUnusable(`${file}.lock can’t be used as a lock: delete it.`, { cause: error });
    throw new StoreUnusable(`Another relay works on ${file}: stop it first, or name another file.`);
  }
}

const damaged = (what: string) => Object.assign(new Error(what), { code: 'SQLITE_CORRUPT' });

/** A new file is there whole or not at all: whoever is killed meanwhile leaves none that looks damaged. */
export function make(file: string): void {
  const unfinished = `${file}.new`;
  for (const tail of ['', '-journal']) rmSync(unfinished + tail, { force: true });
  const db = new Database(unfinished);
  db.pragma('synchronous = FULL');
  migrate(db, file);
  db.close();
  renameSync(unfinished, file);
  const folder = openSync(dirname(file), 'r');
  fsyncSync(folder);
  closeSync(folder);
}

function prepared(file: string, fresh: Database.Database): Database.Database {
  // Before the connection is there: closing a file lets go of every lock its process has on it (sqlite.org/howtocorrupt.html, 2.2).
  readThrough(file);
  const db = new Database(file, { timeout: patience });
  try {
    checkOwner(db, file);
    db.pragma('journal_mode = WAL');
    // After the line above, and on every connection: the library is built to fall back to less after the first write.
    db.pragma('synchronous = FULL');
    db.pragma(`wal_autocheckpoint = ${checkpointPages}`);
    db.pragma(`journal_size_limit = ${mostLog}`);
    db.pragma('foreign_keys = ON');
    // What is erased is gone from the file too.
    db.pragma('secure_delete = ON');
    const found = db.pragma('quick_check(1)', { simple: true });
    if (found !== 'ok') throw damaged(String(found));
    migrate(db, file);
    if (!isAsMade(db, fresh)) throw damaged('schema');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

export interface Opened {
  db: Database.Database;
  lock: Database.Database;
}

/** @throws StoreUnusable, with one line that names the file and what to do */
export function open(file: string, now: number): Opened {
  checkPlace(file);
  const held = lock(file);
  const fresh = new Database(':memory:');
  try {
    checkVersion(fresh.prepare('SELECT sqlite_version()').pluck().get() as string);
    if (!existsSync(file)) checkMoved(file);
    const aside = existsSync(file) ? undefined : calledBy(setAsideAs(file));
    if (aside) throw new StoreUnusable(`${file} was damaged and set aside: ${recover(aside, file)}.`);
    if (!existsSync(file)) make(file);
    if (statSync(file).size === 0) throw damaged('no bytes');
    return { db: prepared(file, fresh), lock: held };
  } catch (error) {
    held.close();
    if (error instanceof StoreUnusable) throw error;
    const code = String((error as { code?: unknown }).code ?? '');
    if (/^SQLITE_(READONLY|CANTOPEN)/.test(code)) throw new StoreUnusable(notWritable(file), { cause: error });
    if (!/^SQLITE_(CORRUPT|NOTADB)/.test(code)) throw new StoreUnusable(`${file} can’t be opened (${code || String(error)}): look at the disk and at whom the file belongs to.`, { cause: error });
    const aside = setAside(file, now);
    throw new StoreUnusable(`${file} is damaged and was set aside: ${recover(aside, file)}.`, { cause: error });
  } finally {
    fresh.close();
  }
}
