import { personOf } from '../../hashes.ts';
import { ended } from '../rows.ts';
import type { Instant, Store, StoredCatalogue } from '../store.ts';
import type { Connections, Link } from './connections.ts';
import type { WakeUps } from './wake-ups.ts';

/** Rows deleted in one transaction. */
const atOnce = 500;
/** All bodies are looked through, for an address may stand in one whose mails are to somebody else [ms]. */
const longestLook = 300_000;

interface Body { seq: number; id: string; dealer: string; accepted: Instant; body: string | null }

// The dealer's copies are addressed to him: they are found by the request they belong to.
const about = (link: Link, recipient: string, address: string) => link.rows<Body>(`
  SELECT seq, id, dealer, accepted, body FROM acre.requests
  WHERE seq IN (SELECT request FROM acre.messages WHERE recipient = $1 AND role <> 'dealer') OR acre.person_of(body::json ->> 'address') = $2 ORDER BY seq`, [recipient, personOf(address)]);

/** Requests whose mails have all ended before a time. */
const over = (more: string) => `
  SELECT DISTINCT r.seq FROM acre.messages m JOIN acre.requests r ON r.seq = m.request
  WHERE m.${ended} AND m.changed < $1 ${more} AND NOT EXISTS (SELECT 1 FROM acre.messages o WHERE o.request = r.seq AND (NOT o.${ended} OR o.changed >= $1)) LIMIT ${atOnce}`;

const forget = async (link: Link, requests: readonly number[]) => {
  await link.rows(`UPDATE acre.messages SET token = '', reply = NULL WHERE request = ANY ($1::bigint[])`, [requests]);
  await link.rows(`UPDATE acre.requests SET body = NULL, likeness = '' WHERE seq = ANY ($1::bigint[])`, [requests]);
};
const seqs = (rows: readonly { seq: number }[]) => rows.map(({ seq }) => seq);

type Keep = Parameters<Store['tidy']>[1];

/** One step of {@link Store.tidy}. @returns whether there is more to do */
async function tidied(link: Link, now: Instant, { bodies, rows, catalogues, expiresAfter }: Keep): Promise<boolean> {
  // One relay tidies for all.
  const [turn] = await link.rows<{ ours: boolean }>(`SELECT pg_try_advisory_xact_lock(hashtextextended('acre tidying', 0)) AS ours`);
  if (!turn!.ours) return false;
  const done = [await link.count(`
    UPDATE acre.messages SET state = 'expired', reason = 'unconfirmed', changed = $1 WHERE seq IN (
      SELECT seq FROM acre.messages WHERE state = 'unconfirmed' AND changed < $2 ORDER BY seq LIMIT ${atOnce} FOR UPDATE SKIP LOCKED)`, [now, now - expiresAfter])];
  const without = seqs(await link.rows<{ seq: number }>(over('AND r.body IS NOT NULL'), [now - bodies]));
  await forget(link, without);
  const whole = seqs(await link.rows<{ seq: number }>(over(''), [now - rows]));
  await link.rows('DELETE FROM acre.messages WHERE request = ANY ($1::bigint[])', [whole]);
  await link.rows('DELETE FROM acre.requests WHERE seq = ANY ($1::bigint[])', [whole]);
  done.push(without.length, whole.length,
    await link.count(`DELETE FROM acre.keys WHERE id IN (SELECT id FROM acre.keys WHERE accepted < $1 LIMIT ${atOnce} FOR UPDATE SKIP LOCKED)`, [now - rows]),
    await link.count(`DELETE FROM acre.buckets WHERE bucket IN (SELECT bucket FROM acre.buckets WHERE full_at < $1 LIMIT ${atOnce} FOR UPDATE SKIP LOCKED)`, [now]));
  await link.rows(`
    DELETE FROM acre.catalogues WHERE seen < $1 AND seq NOT IN (
      SELECT last.seq FROM (SELECT seq, row_number() OVER (PARTITION BY dealer ORDER BY seen DESC, seq DESC) AS place FROM acre.catalogues) last WHERE place = 1)`, [now - catalogues]);
  await link.rows('DELETE FROM acre.spent WHERE until < $1', [now]);
  await link.rows('DELETE FROM acre.stops WHERE until < $1', [now]);
  // The parts of counts are added up, but for those somebody is at.
  await link.rows(`
    WITH gone AS (
      DELETE FROM acre.counts WHERE (part, state) IN (SELECT part, state FROM acre.counts WHERE part <> 0 FOR UPDATE SKIP LOCKED) RETURNING state, count)
    INSERT INTO acre.counts AS c SELECT 0, state, sum(count) FROM gone GROUP BY state ON CONFLICT (part, state) DO UPDATE SET count = c.count + excluded.count`);
  return done.some((count) => count >= atOnce);
}

/** What is kept, for how long, and what is held about one person. */
export const keepingIn = (connections: Connections, wakeUps: WakeUps) => ({
  keepCatalogue: ({ dealer, hash, version, asOf, text }: StoredCatalogue, now: Instant) => connections.write(async (link) => {
    await link.rows(`
      INSERT INTO acre.catalogues AS c (dealer, hash, version, as_of, text, seen) VALUES ($1, $2, $3, $4, $5, $6)
      ON CONFLICT (dealer, hash) DO UPDATE SET seen = greatest(c.seen, excluded.seen)`, [dealer, hash, version ?? null, asOf, text, now]);
  }),

  sendAgain: (messages: readonly string[] | 'all', now: Instant) => connections.write(async (link) => {
    const queued = await link.count(`
      UPDATE acre.messages SET state = 'queued', due = $1, crashes = 0, changed = $1, reason = 'sent again' WHERE seq IN (
        SELECT seq FROM acre.messages WHERE state = 'held' AND ($2 OR seq = ANY ($3::bigint[])) ORDER BY seq FOR UPDATE)`, [now, messages === 'all', messages === 'all' ? [] : messages]);
    if (queued > 0) await wakeUps.send(link);
    return queued;
  }),

  spend: (word: string, until: Instant, now: Instant) => connections.write(async (link) =>
    await link.count('INSERT INTO acre.spent AS s VALUES ($1, $2) ON CONFLICT (word) DO UPDATE SET until = excluded.until WHERE s.until <= $3', [word, until, now]) === 1),

  exportOf: (recipient: string, address: string): Promise<unknown[]> => connections.write(async (link) => {
    const found = await about(link, recipient, address);
    const mails = await link.rows<{ request: number; mail: unknown }>(`
      SELECT request, json_build_object('role', role, 'state', state, 'accepted', accepted, 'changed', changed, 'attempts', attempts, 'reason', reason, 'reply', reply) AS mail
      FROM acre.messages WHERE request = ANY ($1::bigint[]) ORDER BY seq`, [seqs(found)]);
    const stopped = await link.rows('SELECT scope AS dealer, why, since, until FROM acre.stops WHERE recipient = $1', [recipient]);
    return [
      ...found.map(({ seq, id, dealer, accepted, body }) => ({
        request: id, dealer, accepted, document: JSON.parse(body ?? 'null') as unknown, mails: mails.filter(({ request }) => request === seq).map(({ mail }) => mail),
      })),
      ...stopped.map((stop) => ({ stopped: stop })),
    ];
  }, { longest: longestLook }),

  erase: (recipient: string, address: string, now: Instant) => connections.write(async (link) => {
    const found = (await about(link, recipient, address)).filter(({ body }) => body !== null);
    const requests = seqs(found);
    await link.rows(`
      UPDATE acre.messages SET state = 'cancelled', reason = 'erased', changed = $2, fence = fence + 1 WHERE seq IN (
        SELECT seq FROM acre.messages WHERE request = ANY ($1::bigint[]) AND NOT ${ended} ORDER BY seq FOR UPDATE)`, [requests, now]);
    await forget(link, requests);
    await link.rows(`UPDATE acre.keys SET fingerprint = '' WHERE id = ANY ($1::text[])`, [found.map(({ id }) => id)]);
    return found.length;
  }, { longest: longestLook }),

  async tidy(now: Instant, keep: Keep): Promise<void> {
    while (await connections.write((link) => tidied(link, now, keep), { longest: longestLook }));
  },
});
