import type { Database } from 'better-sqlite3';
import { sha256 } from '../../hashes.ts';
import { digestOf } from '../rows.ts';
import type { Instant, MessageIds, Undelivered } from '../store.ts';

interface Copy { request: number; dealer: string; destination: string; recipient: string; body: string }

export type Words = ReturnType<typeof wordsIn>;

/** Word to dealers of mail that can't be delivered. The transactions are the caller's. */
export function wordsIn(db: Database) {
  // Where there is a second mail to the dealer, he was told.
  const copyOf = db.prepare<[number], Copy>(`
    SELECT m.request, m.dealer, m.destination, m.recipient, r.body FROM messages m JOIN requests r ON r.seq = m.request
    WHERE m.request = ? AND m.role = 'dealer' AND r.body IS NOT NULL GROUP BY m.request HAVING count(*) = 1`);
  const put = db.prepare(`
    INSERT INTO messages (request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, accepted, due, changed)
    VALUES (@request, 'dealer', @dealer, @destination, @recipient, @messageId, @token, @tokenHash, @digest, 'queued', @now, @now, @now)`);
  const requestOf = db.prepare<[number], number>('SELECT request FROM messages WHERE seq = ?').pluck();
  const named = db.prepare<[string], number>('SELECT seq FROM requests WHERE id = ?').pluck();
  const undelivered = db.prepare<[], Omit<Undelivered, 'message' | 'told'> & { seq: number; told: Undelivered['told'] | null }>(`
    SELECT m.seq, r.id AS request, m.dealer, m.state, coalesce(m.reason, '') AS reason, m.changed AS since,
      (SELECT o.state FROM messages o WHERE o.request = m.request AND o.role = 'dealer' ORDER BY o.seq LIMIT 1 OFFSET 1) AS told
    FROM messages m JOIN requests r ON r.seq = m.request WHERE m.role = 'buyer' AND m.state IN ('refused', 'expired') AND coalesce(m.reason, '') <> 'unconfirmed'
    ORDER BY m.changed DESC, m.seq DESC LIMIT 1000`);

  function tell(request: number | undefined, { messageId, token }: MessageIds, now: Instant): boolean {
    const copy = request === undefined ? undefined : copyOf.get(request);
    if (!copy) return false;
    const { body, ...rest } = copy;
    put.run({ ...rest, messageId, token, tokenHash: sha256(token), digest: digestOf(body, { role: 'dealer', recipient: rest.recipient, messageId, token }), now });
    return true;
  }

  return {
    tell: (request: string, word: MessageIds, now: Instant) => tell(named.get(request), word, now),
    /** As {@link tell}, of the request a mail belongs to. */
    tellOf: (message: number, word: MessageIds, now: Instant) => tell(requestOf.get(message), word, now),
    undelivered: (): Undelivered[] => undelivered.all().map(({ seq, told, ...rest }) => ({ message: String(seq), ...rest, told: told ?? undefined })),
  };
}
