import { sha256 } from '../../hashes.ts';
import type { Instant, StopScope } from '../store.ts';
import type { Connections, Link } from './connections.ts';
import type { WakeUps } from './wake-ups.ts';

/** Stands in the list for every dealer. */
const everywhere = '';

async function put(link: Link, recipient: string, scope: string, why: string, now: Instant, until?: Instant): Promise<void> {
  // A person's own word has no end, and a bounce that has one doesn't shorten it.
  await link.rows(`
    INSERT INTO acre.stops AS s VALUES ($1, $2, $3, $4, $5) ON CONFLICT (recipient, scope) DO UPDATE SET
      why = CASE WHEN s.until IS NULL THEN s.why ELSE excluded.why END,
      until = CASE WHEN s.until IS NULL OR excluded.until IS NULL THEN NULL ELSE greatest(s.until, excluded.until) END`, [recipient, scope, why, now, until ?? null]);
  await link.rows(`
    UPDATE acre.messages SET state = 'suppressed', reason = 'stopped', changed = $3 WHERE seq IN (
      SELECT seq FROM acre.messages
      WHERE recipient = $1 AND state IN ('unconfirmed', 'queued', 'unsure', 'held') AND ($2 = '' OR dealer = $2) ORDER BY seq FOR UPDATE)`, [recipient, scope, now]);
}

/** Found by its hash, so that the time it takes tells nothing of tokens there are. */
const byToken = async (link: Link, token: string) =>
  (await link.rows<{ recipient: string; dealer: string; request: number }>('SELECT recipient, dealer, request FROM acre.messages WHERE token_hash = $1', [sha256(token)]))[0];

/** Whom nothing is sent to. */
export const stopsIn = (connections: Connections, wakeUps: WakeUps) => ({
  isStopped: (recipient: string, dealer: string, now: Instant) => connections.read(async (link) =>
    (await link.rows(`SELECT 1 FROM acre.stops WHERE recipient = $1 AND scope IN ('', $2) AND (until IS NULL OR until > $3) LIMIT 1`, [recipient, dealer, now])).length > 0),

  suppress: (recipient: string, scope: StopScope, why: string, now: Instant, until?: Instant) =>
    connections.write((link) => put(link, recipient, 'dealer' in scope ? scope.dealer : everywhere, why, now, until)),

  stop: (token: string, why: string, now: Instant) => connections.write(async (link) => {
    const found = await byToken(link, token);
    if (!found) return undefined;
    await put(link, found.recipient, everywhere, why, now);
    return { recipient: found.recipient, dealer: found.dealer };
  }),

  confirm: (token: string, now: Instant) => connections.write(async (link) => {
    const found = await byToken(link, token);
    if (!found) return false;
    const queued = await link.count(`
      UPDATE acre.messages SET state = 'queued', due = $2, changed = $2 WHERE seq IN (
        SELECT seq FROM acre.messages WHERE request = $1 AND state = 'unconfirmed' ORDER BY seq FOR UPDATE)`, [found.request, now]);
    if (queued > 0) await wakeUps.send(link);
    return true;
  }),
});
