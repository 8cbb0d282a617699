import { closeSync, copyFileSync, existsSync, mkdtempSync, openSync, readFileSync, readSync, renameSync, rmSync, statSync, truncateSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { StoreUnusable } from '../failures.ts';
import { make } from './opening.ts';
import { readableRows } from './readable-rows.ts';
import { copiedTables, type CopiedTable as Table } from './schema.ts';


/** What became of the rows of one table. */
export interface Salvaged {
  table: Table;
  copied: number;
  /** Read, and no row of that table: what stood there fell over itself. */
  senseless: number;
  /** Couldn't be read; undefined where there are some and nothing tells how many. */
  unreadable: number | undefined;
}

/** How a file begins, and where it says how large its pages are and how many (sqlite.org/fileformat.html, section 1.3). */
const [magic, pageSizeAt, versionsAt, pageCountAt] = ['SQLite format 3\0', 16, 18, 28];
/** Both versions of a file that has a log. */
const withLog = 0x02_02;
const largestPage = 65_536;

/** Pages of a file as it says itself, or undefined where its beginning is gone. */
function pagesOf(file: string): { size: number; count: number } | undefined {
  const head = Buffer.alloc(100);
  const handle = openSync(file, 'r');
  readSync(handle, head);
  closeSync(handle);
  if (head.toString('latin1', 0, magic.length) !== magic) return undefined;
  const size = head.readUInt16BE(pageSizeAt) === 1 ? largestPage : head.readUInt16BE(pageSizeAt);
  return { size, count: head.readUInt32BE(pageCountAt) };
}

/** Numbers of the pages that tell where tables begin: the first, and those it points to where it is too small (section 1.6). */
function headPages(first: Buffer): number[] {
  const at = 100;
  const isInterior = first[at] === 5;
  const cells = first.readUInt16BE(at + 3);
  return [1, ...(isInterior ? [first.readUInt32BE(at + 8), ...Array.from({ length: cells }, (_, cell) => first.readUInt32BE(first.readUInt16BE(at + 12 + 2 * cell)))] : [])];
}

/** Puts what tells where tables begin, as a new file has it, in the place of what is gone. */
function giveHead(file: string, fresh: string): void {
  const { size } = pagesOf(fresh)!;
  const model = readFileSync(fresh);
  model.writeUInt32BE(Math.ceil(statSync(file).size / size), pageCountAt);
  if (existsSync(`${file}-wal`)) model.writeUInt16BE(withLog, versionsAt);
  const handle = openSync(file, 'r+');
  for (const page of headPages(model)) writeSync(handle, model, (page - 1) * size, size, (page - 1) * size);
  closeSync(handle);
}

type Column = { name: string; pk: number };
const columnsOf = (table: Table, db: Database.Database) => (db.pragma(`table_info(${table})`) as Column[]).map(({ name }) => name);
/** What the table itself is in order of. */
const keyOf = (table: Table, db: Database.Database) => (db.pragma(`table_info(${table})`) as Column[]).find(({ pk }) => pk === 1)?.name ?? 'rowid';

/** A copy that can be opened, whatever it is like inside. */
function openable(copy: string, fresh: string, model: Database.Database): Database.Database {
  if (statSync(copy).size === 0) throw new StoreUnusable('There is nothing in the file: put a backup in its place.');
  if (!pagesOf(copy)) giveHead(copy, fresh);
  const { size, count } = pagesOf(copy)!;
  // Of what was cut off nothing can be read, but what is before it.
  if (statSync(copy).size < size * count) truncateSync(copy, size * count);
  const opened = () => {
    const db = new Database(copy);
    try {
      for (const table of copiedTables) db.prepare(`SELECT ${columnsOf(table, model).join(', ')} FROM ${table}`);
      return db;
    } catch (error) {
      db.close();
      throw error;
    }
  };
  try {
    return opened();
  } catch {
    giveHead(copy, fresh);
    return opened();
  }
}

const codeOf = (error: unknown) => String((error as { code?: unknown }).code ?? error);
/** What SQLite says of a row that can be none. */
const constraint = /^SQLITE_(CONSTRAINT|MISMATCH)/;

/** By an index of its own, where there is one: what is damaged in the table doesn't matter to that. */
function countOf(table: Table, db: Database.Database): number | undefined {
  try {
    return db.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number;
  } catch {
    return undefined;
  }
}

function copyTable(table: Table, from: Database.Database, to: Database.Database): Salvaged {
  const [columns, key] = [columnsOf(table, to), keyOf(table, to)];
  const put = to.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map((name) => `@${name}`).join(', ')})`);
  let [copied, senseless, isWhole] = [0, 0, true];
  for (const row of readableRows(from, { table, key, columns }, () => { isWhole = false; })) {
    try {
      put.run(row);
      copied += 1;
    } catch (error) {
      if (!constraint.test(codeOf(error))) throw error;
      senseless += 1;
    }
  }
  const missing = Math.max(0, (countOf(table, from) ?? 0) - copied - senseless);
  return { table, copied, senseless, unreadable: missing > 0 || isWhole ? missing : undefined };
}

/**
 * Copies every row of a damaged store that can be read into a new one, which a relay then opens. What it is read from isn't
 * written to. Where a mail isn't as it was stored, the relay holds it for a person.
 *
 * @param into  where no file is yet
 * @throws StoreUnusable, with one line that says what to do
 */
export function salvage(file: string, into: string): Salvaged[] {
  if (!existsSync(file)) throw new StoreUnusable(`${file} isn’t there: name the file that was set aside.`);
  for (const each of [into, `${into}-wal`]) if (existsSync(each)) throw new StoreUnusable(`${each} is there already: name a new file, or move it to another folder.`);
  if (!existsSync(dirname(into))) throw new StoreUnusable(`The folder ${dirname(into)} isn’t there: make it, or name another.`);
  const workshop = mkdtempSync(join(dirname(into), '.salvage-'));
  const [copy, fresh, made] = ['copy', 'fresh', 'made'].map((name) => join(workshop, name)) as [string, string, string];
  const opened: Database.Database[] = [];
  try {
    for (const tail of ['', '-wal']) if (existsSync(file + tail)) copyFileSync(file + tail, copy + tail);
    make(fresh);
    make(made);
    const to = new Database(made);
    opened.push(to);
    to.pragma('foreign_keys = ON');
    const from = openable(copy, fresh, to);
    opened.push(from);
    const salvaged = to.transaction(() => copiedTables.map((table) => {
      // The triggers noted that what was copied is new; what the old file noted counts.
      if (table === 'changes') to.exec('DELETE FROM changes');
      return copyTable(table, from, to);
    }))();
    opened.splice(0).forEach((db) => db.close());
    renameSync(made, into);
    return salvaged;
  } catch (error) {
    if (error instanceof StoreUnusable) throw error;
    throw new StoreUnusable(`Nothing in ${file} can be read (${codeOf(error)}): put a backup in its place.`, { cause: error });
  } finally {
    opened.forEach((db) => db.close());
    rmSync(workshop, { recursive: true, force: true });
  }
}
