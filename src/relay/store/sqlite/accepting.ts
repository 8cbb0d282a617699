import type { Database } from 'better-sqlite3';
import { sha256 } from '../../hashes.ts';
import { taken, type Level } from '../levels.ts';
import { dayOf, destinationOf, digestOf } from '../rows.ts';
import type { Accepted, Instant, NewRequest, Take } from '../store.ts';
import type { Stops } from './stops.ts';

/** As {@link taken}, on the file. @returns how long until all could be taken [ms], or undefined where they were */
function takingFrom(db: Database) {
  const find = db.prepare<[string], Level>('SELECT bucket, level, at FROM buckets WHERE bucket = ?');
  const put = db.prepare('INSERT INTO buckets VALUES (@bucket, @level, @at, @fullAt) ON CONFLICT DO UPDATE SET level = @level, at = @at, full_at = @fullAt');
  return (takes: readonly Take[], now: Instant): number | undefined => {
    const result = taken(takes, now, (bucket) => find.get(bucket));
    if ('after' in result) return result.after;
    for (const level of result.levels) put.run(level);
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
