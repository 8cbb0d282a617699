import type { Database } from 'better-sqlite3';
import type { RequestDocument } from '../../../request/schema.ts';
import { ages, isWaiting } from '../rows.ts';
import { states, type Depth, type Instant, type Role, type StoredCatalogue } from '../store.ts';

const atOnce = 500;

interface Answered { seq: number; dealer: string; day: string; kind: RequestDocument['kind']; answers: string }

/** What is only looked at. */
export function looksInto(db: Database) {
  const counts = db.prepare<[], { state: keyof Depth['byState']; count: number }>('SELECT state, count FROM counts');
  const waitingNow = db.prepare(`SELECT coalesce(sum(count), 0) FROM counts WHERE ${isWaiting}`).pluck();
  const waiting = `FROM messages WHERE state IN ('queued', 'unsure', 'sending')`;
  const between = db.prepare(`SELECT count(*) ${waiting} AND accepted >= ? AND accepted < ?`).pluck();
  const oldest = db.prepare(`SELECT min(accepted) ${waiting}`).pluck();
  const held = db.prepare<[], { seq: number; request: string; dealer: string; role: Role; reason: string | null; since: Instant }>(`
    SELECT m.seq, r.id AS request, m.dealer, m.role, m.reason, m.changed AS since FROM messages m JOIN requests r ON r.seq = m.request WHERE m.state = 'held' ORDER BY m.changed, m.seq`);
  const ofCatalogue = 'SELECT dealer, hash, version, as_of AS asOf, text FROM catalogues WHERE dealer = ?';
  type CatalogueRow = Omit<StoredCatalogue, 'version'> & { version: string | null };
  const newest = db.prepare<[string], CatalogueRow>(`${ofCatalogue} ORDER BY seen DESC, seq DESC LIMIT 1`);
  const ofVersion = db.prepare<[string, string], CatalogueRow>(`${ofCatalogue} AND version = ? ORDER BY seen DESC, seq DESC LIMIT 1`);
  const answered = db.prepare<object, Answered>('SELECT seq, dealer, day, kind, answers FROM statistics WHERE seq > @after AND (@dealer IS NULL OR dealer = @dealer) ORDER BY seq LIMIT @atOnce');

  /** Each is counted once, however many ages it belongs to. */
  function waitingByAge(now: Instant): Depth['byAge'] {
    let count = 0;
    let before: Instant = Number.MAX_SAFE_INTEGER;
    return ages.map((upTo) => {
      count += between.get(now - upTo, before) as number;
      before = now - upTo;
      return { upTo, count };
    });
  }

  return {
    depth(now: Instant): Depth {
      const byState = Object.fromEntries(states.map((state) => [state, 0])) as Depth['byState'];
      for (const { state, count } of counts.all()) byState[state] = count;
      const first = oldest.get() as number | null;
      return {
        byState,
        byAge: waitingByAge(now),
        oldest: first === null ? undefined : Math.max(0, now - first),
      };
    },
    waiting: () => waitingNow.get() as number,
    held: () => held.all().map(({ seq, reason, ...rest }) => ({ message: String(seq), reason: reason ?? '', ...rest })),
    catalogueOf(dealer: string, version: string | undefined): StoredCatalogue | undefined {
      const row = version === undefined ? newest.get(dealer) : ofVersion.get(dealer, version);
      return row && { ...row, version: row.version ?? undefined };
    },
    /** By pieces, for nothing can be written while a question is read to its end. */
    statistics(after: number, dealer: string | undefined): Answered[] {
      return answered.all({ after, dealer: dealer ?? null, atOnce });
    },
  };
}
