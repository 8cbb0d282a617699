import type { RequestDocument } from '../../../request/schema.ts';
import { ages, isWaiting } from '../rows.ts';
import { states, type Depth, type Instant, type Role, type Store, type StoredCatalogue } from '../store.ts';
import type { Connections } from './connections.ts';

/** Rows of a cursor fetched together, and how long whoever reads them may take over them [ms]. */
const [atOnce, longestReading] = [500, 600_000];

interface Answered { dealer: string; day: string; kind: RequestDocument['kind']; answers: string }
type Held = { message: string; request: string; dealer: string; role: Role; reason: string; since: Instant };
type CatalogueRow = Omit<StoredCatalogue, 'version'> & { version: string | null };

/** What is only looked at. */
export const looksInto = (connections: Connections) => ({
  depth: (now: Instant): Promise<Depth> => connections.read(async (link) => {
    const counts = await link.rows<{ state: keyof Depth['byState']; count: number }>('SELECT state, sum(count)::bigint AS count FROM acre.counts GROUP BY state');
    const [waiting] = await link.rows<Record<string, number> & { oldest: Instant | null }>(
      `SELECT min(accepted) AS oldest, ${ages.map((age, place) => `count(*) FILTER (WHERE accepted >= $1::bigint - ${age}) AS "${place}"`).join(', ')} FROM acre.messages WHERE ${isWaiting}`, [now]);
    const byState = Object.fromEntries(states.map((state) => [state, 0])) as Depth['byState'];
    for (const { state, count } of counts) byState[state] = count;
    const { oldest } = waiting!;
    return { byState, byAge: ages.map((upTo, place) => ({ upTo, count: waiting![place]! })), oldest: oldest === null ? undefined : Math.max(0, now - oldest) };
  }),

  waiting: (): Promise<number> => connections.read(async (link) => {
    const [row] = await link.rows<{ count: number }>(`SELECT coalesce(sum(count), 0)::bigint AS count FROM acre.counts WHERE ${isWaiting}`);
    return row!.count;
  }),

  held: (): Promise<Held[]> => connections.read((link) => link.rows<Held>(`
    SELECT m.seq::text AS message, r.id AS request, m.dealer, m.role, coalesce(m.reason, '') AS reason, m.changed AS since
    FROM acre.messages m JOIN acre.requests r ON r.seq = m.request WHERE m.state = 'held' ORDER BY m.changed, m.seq`)),

  catalogueOf: (dealer: string, version: string | undefined): Promise<StoredCatalogue | undefined> => connections.read(async (link) => {
    const [row] = await link.rows<CatalogueRow>(
      'SELECT dealer, hash, version, as_of AS "asOf", text FROM acre.catalogues WHERE dealer = $1 AND ($2::text IS NULL OR version = $2) ORDER BY seen DESC, seq DESC LIMIT 1', [dealer, version ?? null]);
    return row && { ...row, version: row.version ?? undefined };
  }),

  /** By a cursor: as it stood at the beginning, and never more of it here than a few rows. */
  async *statistics(dealer?: string): ReturnType<Store['statistics']> {
    const cursor = await connections.opened('SELECT dealer, day, kind, answers FROM acre.statistics WHERE $1::text IS NULL OR dealer = $1 ORDER BY seq', [dealer ?? null], { atOnce, longest: longestReading });
    try {
      for (let piece = await cursor.next<Answered>(); piece.length > 0; piece = await cursor.next<Answered>()) {
        for (const { answers, ...rest } of piece) yield { ...rest, answers: JSON.parse(answers) as RequestDocument['answers'] };
      }
    } finally {
      await cursor.close();
    }
  },
});
