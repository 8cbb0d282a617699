import { randomUUID } from 'node:crypto';
import { existsSync, renameSync } from 'node:fs';
import Database from 'better-sqlite3';
import { StoreUnusable } from './failures.ts';
import { checkTarget, receive, type Columns, type Moved } from './postgres/receiving.ts';
import { calledBy, lock, movedAs, movingAs, open } from './sqlite/opening.ts';
import type { CopiedTable as Table } from './sqlite/schema.ts';
import type { Instant } from './store.ts';

/** What is moved, in the order of {@link Table}, and what its columns are there. */
const tables = {
  requests: { seq: 'bigint', id: 'text', dealer: 'text', likeness: 'text', body: 'text', accepted: 'bigint' },
  keys: { id: 'text', fingerprint: 'text', accepted: 'bigint' },
  messages: {
    seq: 'bigint', request: 'bigint', role: 'text', dealer: 'text', destination: 'text', recipient: 'text', message_id: 'text', token: 'text', token_hash: 'text', digest: 'text', state: 'text',
    accepted: 'bigint', due: 'bigint', changed: 'bigint', attempts: 'integer', crashes: 'integer', was_unsure: 'boolean', fence: 'bigint', reason: 'text', reply: 'text',
  },
  changes: { message: 'bigint', at: 'bigint', state: 'text', reason: 'text' },
  stops: { recipient: 'text', scope: 'text', why: 'text', since: 'bigint', until: 'bigint' },
  buckets: { bucket: 'text', level: 'float8', at: 'bigint', full_at: 'bigint' },
  spent: { word: 'text', until: 'bigint' },
  catalogues: { seq: 'bigint', dealer: 'text', hash: 'text', version: 'text', as_of: 'text', text: 'text', seen: 'bigint' },
  statistics: { seq: 'bigint', dealer: 'text', day: 'text', kind: 'text', answers: 'text' },
} as const satisfies Record<Table, Columns>;

/** Rows, and letters of text, sent in one statement. */
const [mostRows, mostLetters] = [1_000, 4_000_000];
const tails = ['', '-wal', '-shm'];
const rename = (from: string, to: string) => tails.filter((tail) => existsSync(from + tail)).forEach((tail) => renameSync(from + tail, to + tail));

/** Text that PostgreSQL can hold: a server's reply may have brought what it can't. */
const lettersOf = (row: Record<string, unknown>): number => Object.entries(row).reduce((sum, [name, value]) => {
  if (typeof value !== 'string') return sum;
  if (value.includes('\0')) row[name] = value.replaceAll('\0', '');
  return sum + value.length;
}, 0);

function* piecesOf(db: Database.Database, table: Table): Iterable<object[]> {
  let [piece, letters]: [object[], number] = [[], 0];
  for (const row of db.prepare<[], Record<string, unknown>>(`SELECT ${Object.keys(tables[table]).join(', ')} FROM ${table}`).iterate()) {
    letters += lettersOf(row);
    piece.push(row);
    if (piece.length < mostRows && letters < mostLetters) continue;
    yield piece;
    [piece, letters] = [[], 0];
  }
  if (piece.length > 0) yield piece;
}

const countsOf = (db: Database.Database) => Object.fromEntries(Object.keys(tables).map((table) => [table, db.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number]));

export interface Move {
  /** The store in one file. */
  file: string;
  /** Of the database. */
  address: string;
  /** Mark of the secrets the file was filled with. */
  secrets: string;
}

/** Renames a file that is whole, with nothing of it left in its log. @returns what it is called now */
function begun(file: string, now: Instant): string {
  const { db, lock: second } = open(file, now);
  db.close();
  second.close();
  const moving = `${movingAs(file)}${randomUUID()}`;
  rename(file, moving);
  return moving;
}

/**
 * Takes all that a store in one file holds over to PostgreSQL, while no relay works on it: all or nothing, and as often as one
 * likes. From the first step to the last no relay starts on the file, so that nothing is sent from both.
 *
 * @returns rows by table
 * @throws StoreUnusable, KeysFault, each with what to do
 */
export async function moveStore({ file, address, secrets }: Move, now: Instant): Promise<Record<string, number>> {
  const unfinished = calledBy(movingAs(file));
  if (!unfinished && !existsSync(file)) {
    const moved = calledBy(movedAs(file));
    throw new StoreUnusable(moved ? `${file} was moved already; it lies at ${moved}.` : `${file}: there is no store to move; a relay on ${address.split(':')[0]} begins with nothing.`);
  }
  if (unfinished && existsSync(file)) throw new StoreUnusable(`both ${unfinished}, half-way to the database, and ${file} are there: move ${file} to another folder first.`);
  await checkTarget(address);
  const moving = unfinished ?? begun(file, now);
  const held = lock(file);
  const db = new Database(moving);
  let isWhole = false;
  try {
    const counts = countsOf(db);
    const moved: Moved = { id: moving.slice(movingAs(file).length), tables, counts, secrets, pieces: (table) => piecesOf(db, table as Table) };
    await receive(address, moved, now, (whole) => { isWhole = whole; });
    db.close();
    rename(moving, `${movedAs(file)}${new Date(now).toISOString().replaceAll(':', '-')}`);
    return counts;
  } catch (error) {
    db.close();
    // Where it isn't known whether it is there now, only the same move may go on from here.
    if (!isWhole && !unfinished) rename(moving, file);
    throw error;
  } finally {
    held.close();
  }
}
