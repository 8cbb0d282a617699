import type { Database } from 'better-sqlite3';
import { personOf } from '../../hashes.ts';
import { ended } from '../rows.ts';
import type { Instant, Store, StoredCatalogue } from '../store.ts';

/** Rows deleted in one transaction: nobody waits for more. */
const atOnce = 500;

interface Body { seq: number; id: string; dealer: string; accepted: Instant; body: string }

/** What is kept, for how long, and what is held about one person. The transactions are the caller's. */
export function keepingIn(db: Database) {
  db.function('person_of', { deterministic: true }, (address) => (typeof address === 'string' ? personOf(address) : null));
  const keep = db.prepare(`
    INSERT INTO catalogues (dealer, hash, version, as_of, text, seen) VALUES (@dealer, @hash, @version, @asOf, @text, @now) ON CONFLICT DO UPDATE SET seen = max(seen, @now)`);
  const again = db.prepare(`UPDATE messages SET state = 'queued', due = @now, crashes = 0, changed = @now, reason = 'sent again' WHERE state = 'held' AND (@all OR seq IN (SELECT value FROM json_each(@messages)))`);
  const spend = db.prepare('INSERT INTO spent VALUES (?, ?) ON CONFLICT DO UPDATE SET until = excluded.until WHERE until <= ?');

  // The dealer's copies are addressed to him: they are found by the request they belong to.
  const about = db.prepare<object, Body>(`
    SELECT seq, id, dealer, accepted, body FROM requests
    WHERE seq IN (SELECT request FROM messages WHERE recipient = @recipient AND role <> 'dealer') OR person_of(body ->> 'address') = @person`);
  const mails = db.prepare('SELECT role, state, accepted, changed, attempts, reason, reply FROM messages WHERE request = ? ORDER BY seq');
  const stopped = db.prepare('SELECT scope AS dealer, why, since, until FROM stops WHERE recipient = ?');
  const cancel = db.prepare(`UPDATE messages SET state = 'cancelled', reason = 'erased', changed = @now, fence = fence + 1 WHERE request = @seq AND NOT ${ended}`);
  const blank = db.prepare(`UPDATE messages SET token = '', reply = NULL WHERE request = ?`);
  const blankRequest = db.prepare(`UPDATE requests SET body = NULL, likeness = '' WHERE seq = ?`);
  const blankKey = db.prepare(`UPDATE keys SET fingerprint = '' WHERE id = ?`);

  const expire = db.prepare(`UPDATE messages SET state = 'expired', reason = 'unconfirmed', changed = @now WHERE seq IN (SELECT seq FROM messages WHERE state = 'unconfirmed' AND changed < @before LIMIT ${atOnce})`);
  const over = db.prepare<object, { seq: number }>(`
    SELECT DISTINCT r.seq FROM messages m JOIN requests r ON r.seq = m.request
    WHERE m.${ended} AND m.changed < @before AND r.body IS NOT NULL AND NOT EXISTS (SELECT 1 FROM messages o WHERE o.request = r.seq AND (NOT o.${ended} OR o.changed >= @before)) LIMIT ${atOnce}`);
  const gone = db.prepare<object, { seq: number }>(`
    SELECT DISTINCT m.request AS seq FROM messages m
    WHERE m.${ended} AND m.changed < @before AND NOT EXISTS (SELECT 1 FROM messages o WHERE o.request = m.request AND (NOT o.${ended} OR o.changed >= @before)) LIMIT ${atOnce}`);
  const dropMessages = db.prepare('DELETE FROM messages WHERE request = ?');
  const dropRequest = db.prepare('DELETE FROM requests WHERE seq = ?');
  const dropKeys = db.prepare(`DELETE FROM keys WHERE id IN (SELECT id FROM keys WHERE accepted < ? LIMIT ${atOnce})`);
  const dropCatalogues = db.prepare('DELETE FROM catalogues WHERE seen < ? AND seq NOT IN (SELECT last.seq FROM (SELECT seq, row_number() OVER (PARTITION BY dealer ORDER BY seen DESC, seq DESC) AS place FROM catalogues) last WHERE place = 1)');
  const dropBuckets = db.prepare(`DELETE FROM buckets WHERE bucket IN (SELECT bucket FROM buckets WHERE full_at < ? LIMIT ${atOnce})`);
  const dropSpent = db.prepare('DELETE FROM spent WHERE until < ?');
  const dropStops = db.prepare('DELETE FROM stops WHERE until < ?');

  const forget = (seq: number) => {
    blank.run(seq);
    blankRequest.run(seq);
  };

  return {
    keepCatalogue: (catalogue: StoredCatalogue, now: Instant) => void keep.run({ ...catalogue, version: catalogue.version ?? null, now }),
    sendAgain: (messages: readonly string[] | 'all', now: Instant) =>
      again.run({ all: messages === 'all' ? 1 : 0, messages: JSON.stringify(messages === 'all' ? [] : messages.map(Number)), now }).changes,
    spend: (word: string, until: Instant, now: Instant) => spend.run(word, until, now).changes === 1,
    exportOf: (recipient: string, address: string): unknown[] => [
      ...about.all({ recipient, person: personOf(address) }).map(({ seq, id, dealer, accepted, body }) => ({ request: id, dealer, accepted, document: JSON.parse(body ?? 'null') as unknown, mails: mails.all(seq) })),
      ...stopped.all(recipient).map((stop) => ({ stopped: stop })),
    ],
    erase(recipient: string, address: string, now: Instant): number {
      const found = about.all({ recipient, person: personOf(address) }).filter(({ body }) => body !== null);
      for (const { seq, id } of found) {
        cancel.run({ seq, now });
        forget(seq);
        blankKey.run(id);
      }
      return found.length;
    },
    /** One step of {@link Store.tidy}. @returns whether there is more to do */
    tidy(now: Instant, { bodies, rows, catalogues, expiresAfter }: Parameters<Store['tidy']>[1]): boolean {
      const done = [expire.run({ now, before: now - expiresAfter }).changes];
      const [without, whole] = [over.all({ before: now - bodies }), gone.all({ before: now - rows })];
      for (const { seq } of without) forget(seq);
      for (const { seq } of whole) {
        dropMessages.run(seq);
        dropRequest.run(seq);
      }
      done.push(without.length, whole.length, dropKeys.run(now - rows).changes, dropBuckets.run(now).changes);
      dropCatalogues.run(now - catalogues);
      dropSpent.run(now);
      dropStops.run(now);
      return done.some((count) => count >= atOnce);
    },
  };
}
