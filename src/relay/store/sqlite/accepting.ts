import type { Database } from 'better-sqlite3';
import { sha256 } from '../../hashes.ts';
import type { Accepted, Instant, NewMessage, NewRequest, Take } from '../store.ts';
import type { Stops } from './stops.ts';

/** What a mail is made of and for whom, in one figure. */
export const digestOf = (body: string, { role, recipient, messageId, token }: Pick<NewMessage, 'role' | 'recipient' | 'messageId' | 'token'>) =>
  sha256(JSON.stringify([body, role, recipient, messageId, token]));

/** The domain a mail goes to; copies go to the dealer's, whom the settings know. */
export const destinationOf = (address: string, role: NewMessage['role'], dealer: string) =>
  (role === 'dealer' ? `dealer:${dealer}` : address.slice(address.lastIndexOf('@') + 1).toLowerCase());

const dayOf = (at: Instant) => new Date(at).toISOString().slice(0, 'yyyy-mm-dd'.length);

interface Level { bucket: string; level: number; at: Instant }

/** Takes from buckets that fill up steadily, all or none. A clock that is put back fills nothing and empties nothing. */
function takingFrom(db: Database) {
  const find = db.prepare<[string], Level>('SELECT bucket, level, at FROM buckets WHERE bucket = ?');
  const put = db.prepare('INSERT INTO buckets VALUES (@bucket, @level, @at, @fullAt) ON CONFLICT DO UPDATE SET level = @level, at = @at, full_at = @fullAt');
  /** @returns how long until all could be taken [ms], or undefined where they were */
  return (takes: readonly Take[], now: Instant): number | undefined => {
    const levels = new Map<string, number>();
    let wait = 0;
    for (const { bucket, most, fills } of takes) {
      const kept = levels.has(bucket) ? undefined : find.get(bucket);
      const level = levels.get(bucket) ?? (kept ? Math.min(most, kept.level + Math.max(0, now - kept.at) * most / fills) : most);
      levels.set(bucket, level - 1);
      if (level < 1) wait = Math.max(wait, (1 - level) * fills / most);
    }
    if (wait > 0) return wait;
    for (const { bucket, most, fills } of new Map(takes.map((take) => [take.bucket, take])).values()) {
      const level = levels.get(bucket)!;
      put.run({ bucket, level, at: now, fullAt: Math.ceil(now + (most - level) * fills / most) });
    }
    return undefined;
  };
}

/** Stores what was handed in; the transaction is the caller's. */
export function acceptingInto(db: Database, stops: Stops) {
  const take = takingFrom(db);
  const findKey = db.prepare<[string], { fingerprint: string }>('SELECT fingerprint FROM keys WHERE id = ?');
  const findAlike = db.prepare('SELECT 1 FROM requests WHERE likeness = ? AND accepted >= ? LIMIT 1').pluck();
  const putKey = db.prepare('INSERT INTO keys VALUES (?, ?, ?)');
  const putRequest = db.prepare('INSERT INTO requests (id, dealer, likeness, body, accepted) VALUES (@id, @dealer, @likeness, @body, @now)');
  const putMessage = db.prepare(`
    INSERT INTO messages (request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, accepted, due, changed, reason)
    VALUES (@request, @role, @dealer, @destination, @recipient, @messageId, @token, @tokenHash, @digest, @state, @now, @now, @now, @reason)`);
  const putStatistics = db.prepare('INSERT INTO statistics (dealer, day, kind, answers) VALUES (?, ?, ?, ?)');

  return ({ id, dealer, fingerprint, likeness, request, messages }: NewRequest, takes: readonly Take[], now: Instant, likeSince: Instant): Accepted => {
    const known = findKey.get(id);
    if (known) return known.fingerprint === '' || known.fingerprint === fingerprint ? 'repeated' : 'other-body';
    if (findAlike.get(likeness, likeSince) !== undefined) {
      // From here on this key stands for it too: tried again later it is still no second mail.
      putKey.run(id, fingerprint, now);
      return 'repeated';
    }
    const after = take(takes, now);
    if (after !== undefined) return { limited: true, after };
    putKey.run(id, fingerprint, now);
    const body = JSON.stringify(request);
    const seq = putRequest.run({ id, dealer, likeness, body, now }).lastInsertRowid;
    for (const message of messages) {
      const stopped = stops.isStopped(message.recipient, dealer, now);
      putMessage.run({
        ...message, request: seq, dealer, destination: destinationOf(request.address, message.role, dealer), tokenHash: sha256(message.token),
        digest: digestOf(body, message), state: stopped ? 'suppressed' : message.state, reason: stopped ? 'stopped' : null, now,
      });
    }
    if (request.consent.statistics) putStatistics.run(dealer, dayOf(now), request.kind, JSON.stringify(request.answers));
    return 'stored';
  };
}
