import { sha256 } from '../../hashes.ts';
import { digestOf } from '../rows.ts';
import type { Instant, MessageIds, Store, Undelivered } from '../store.ts';
import type { Connections, Link } from './connections.ts';
import type { WakeUps } from './wake-ups.ts';

interface Copy { dealer: string; destination: string; recipient: string; body: string }

/** As on the file: once, and only where the dealer has a copy. The transaction is the caller's. */
export async function tellIn(link: Link, wakeUps: WakeUps, request: number, { messageId, token }: MessageIds, now: Instant): Promise<boolean> {
  // Who tells of one request at the same time waits here, and then finds that it is done.
  const [copy] = await link.rows<Copy>(`
    SELECT m.dealer, m.destination, m.recipient, r.body FROM acre.requests r JOIN acre.messages m ON m.request = r.seq
    WHERE r.seq = $1 AND r.body IS NOT NULL AND m.role = 'dealer' ORDER BY m.seq LIMIT 1 FOR UPDATE OF r`, [request]);
  if (!copy) return false;
  const written = await link.count(`
    INSERT INTO acre.messages (request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, accepted, due, changed)
    SELECT $1::bigint, 'dealer', $2, $3, $4, $5, $6, $7, $8, 'queued', $9::bigint, $9::bigint, $9::bigint WHERE (SELECT count(*) FROM acre.messages WHERE request = $1 AND role = 'dealer') = 1`,
  [request, copy.dealer, copy.destination, copy.recipient, messageId, token, sha256(token), digestOf(copy.body, { role: 'dealer', recipient: copy.recipient, messageId, token }), now]);
  if (written === 1) await wakeUps.send(link);
  return written === 1;
}

/** Word to dealers of mail that can't be delivered. */
export function wordsIn(connections: Connections, wakeUps: WakeUps): Pick<Store, 'tell' | 'undelivered'> {
  return {
    tell: (request, word, now) => connections.write(async (link) => {
      const [found] = await link.rows<{ seq: number }>('SELECT seq FROM acre.requests WHERE id = $1', [request]);
      return found !== undefined && tellIn(link, wakeUps, found.seq, word, now);
    }),
    undelivered: () => connections.read(async (link) => (await link.rows<Omit<Undelivered, 'told'> & { told: Undelivered['told'] | null }>(`
      SELECT m.seq::text AS message, r.id AS request, m.dealer, m.state, coalesce(m.reason, '') AS reason, m.changed AS since,
        (SELECT o.state FROM acre.messages o WHERE o.request = m.request AND o.role = 'dealer' ORDER BY o.seq LIMIT 1 OFFSET 1) AS told
      FROM acre.messages m JOIN acre.requests r ON r.seq = m.request WHERE m.role = 'buyer' AND m.state IN ('refused', 'expired') AND coalesce(m.reason, '') <> 'unconfirmed'
      ORDER BY m.changed DESC, m.seq DESC LIMIT 1000`)).map(({ told, ...rest }) => ({ ...rest, told: told ?? undefined }))),
  };
}
