import { KeysFault } from '../../settings/keys.ts';
import { StoreUnusable } from '../failures.ts';
import type { Instant } from '../store.ts';
import { columnsOf } from './columns.ts';
import { Connections, type Link } from './connections.ts';
import { usable } from './postgres-store.ts';
import { migrate } from './schema.ts';
import { WakeUps } from './wake-ups.ts';

/** A whole store in one transaction [ms]. */
const longest = 3_600_000;
const mark = 'moved';

/** A table's columns and their types. */
export type Columns = Readonly<Record<string, string>>;

/** A store on its way in: its id, what is in it, and its rows by table, a piece at a time. */
export interface Moved {
  id: string;
  tables: Readonly<Record<string, Columns>>;
  /** Rows by table. */
  counts: Readonly<Record<string, number>>;
  pieces(table: string): Iterable<object[]>;
  /** Of the secrets it was filled with. */
  secrets: string;
}

async function checkSecrets(link: Link, secrets: string): Promise<void> {
  await link.rows(`INSERT INTO acre.about VALUES ('secrets', $1) ON CONFLICT (name) DO NOTHING`, [secrets]);
  const [found] = await link.rows<{ value: string }>(`SELECT value FROM acre.about WHERE name = 'secrets'`);
  if (found!.value !== secrets) throw new KeysFault('ACRE_DATABASE: this database was filled with other secrets than the store that is to be moved; name an empty one');
}

async function countsOf(link: Link, tables: readonly string[]): Promise<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const table of tables) counts[table] = (await link.rows<{ count: number }>(`SELECT count(*) AS count FROM acre.${table}`))[0]!.count;
  return counts;
}

const told = (counts: Moved['counts']) => JSON.stringify(Object.entries(counts).sort());

async function copy(link: Link, { tables, counts, pieces }: Moved, now: Instant): Promise<void> {
  const names = Object.keys(tables);
  // Counts and changes come as they are, and aren't to be made again.
  await link.rows('ALTER TABLE acre.messages DISABLE TRIGGER USER');
  for (const [table, types] of Object.entries(tables)) {
    const listed = Object.keys(types).map((name) => `"${name}"`).join(', ');
    for (const piece of pieces(table)) {
      const rows = columnsOf(piece as Record<string, unknown>[], types);
      await link.rows(`INSERT INTO acre.${table} (${listed}) SELECT ${listed} FROM ${rows.from}`, rows.values);
    }
    if ('seq' in types) await link.rows(`SELECT setval(pg_get_serial_sequence('acre.${table}', 'seq'), (SELECT coalesce(max(seq), 0) + 1 FROM acre.${table}), false)`);
  }
  await link.rows('ALTER TABLE acre.messages ENABLE TRIGGER USER');
  await link.rows('INSERT INTO acre.counts SELECT 0, state, count(*) FROM acre.messages GROUP BY state');
  const there = await countsOf(link, names);
  if (told(there) !== told(counts)) throw new StoreUnusable(`what came in isn’t what was sent (${told(there)} of ${told(counts)}); nothing was moved.`);
  // What a process that was killed had claimed, as a relay that starts on the file would have it.
  await link.rows(`UPDATE acre.messages SET state = 'queued', due = $1, changed = $1, crashes = crashes + 1, reason = 'no outcome' WHERE state = 'sending'`, [now]);
}

/**
 * Takes a store in, all or nothing.
 *
 * @param isWhole  told once all is there but for the last word; an error after that leaves it open whether it was written
 * @returns false where it was in there already
 * @throws StoreUnusable, KeysFault, each with what to do; nothing was moved
 */
export async function receive(address: string, moved: Moved, now: Instant, isWhole: (whole: boolean) => void): Promise<boolean> {
  const connections = new Connections({ address, name: 'acre-to-axle move' });
  const wakeUps = new WakeUps(connections, false, () => {});
  try {
    await usable(async () => {
      await migrate(connections);
      await wakeUps.prepare();
    });
    return await connections.write(async (link) => {
      isWhole(false);
      const names = Object.keys(moved.tables);
      await link.rows(`LOCK TABLE ${names.map((name) => `acre.${name}`).join(', ')} IN EXCLUSIVE MODE`);
      const [before] = await link.rows<{ value: string }>('SELECT value FROM acre.about WHERE name = $1', [mark]);
      const isThis = before?.value === moved.id;
      const filled = Object.entries(await countsOf(link, names)).filter(([, count]) => count > 0);
      if (!isThis && filled.length > 0) throw new StoreUnusable(`ACRE_DATABASE: the database isn’t empty (${filled.map(([table, count]) => `${table}: ${count}`).join(', ')}); name an empty one.`);
      await checkSecrets(link, moved.secrets);
      if (!isThis) {
        await copy(link, moved, now);
        await link.rows('INSERT INTO acre.about VALUES ($1, $2) ON CONFLICT (name) DO UPDATE SET value = excluded.value', [mark, moved.id]);
        await wakeUps.send(link);
      }
      isWhole(true);
      return !isThis;
    }, { longest });
  } finally {
    await wakeUps.stop();
    await connections.close();
  }
}

/** Whether a database can be had at all, before anything is touched. @throws StoreUnusable */
export async function checkTarget(address: string): Promise<void> {
  const connections = new Connections({ address, name: 'acre-to-axle move' });
  try {
    await usable(() => migrate(connections));
  } finally {
    await connections.close();
  }
}
