import type { Database } from 'better-sqlite3';
import type { RequestDocument } from '../../../request/schema.ts';
import { digestOf, farthest } from '../rows.ts';
import type { Claim, Except, Instant, MessageIds, Outcome, Role } from '../store.ts';
import type { Stops } from './stops.ts';
import type { Words } from './words.ts';

interface Row {
  seq: number; id: string; role: Role; recipient: string; messageId: string; token: string; digest: string; body: string | null; dealer: string;
  accepted: Instant; attempts: number; crashes: number; wasUnsure: 0 | 1; isWord: 0 | 1; fence: number;
}

const candidates = (order: 'ASC' | 'DESC') => `
  SELECT m.seq, r.id, m.role, m.recipient, m.message_id AS messageId, m.token, m.digest, r.body, m.dealer, m.accepted, m.attempts, m.crashes,
    m.was_unsure AS wasUnsure, m.fence, m.role = 'dealer' AND EXISTS (SELECT 1 FROM messages o WHERE o.request = m.request AND o.role = 'dealer' AND o.seq < m.seq) AS isWord
  FROM messages m JOIN requests r ON r.seq = m.request
  WHERE m.state IN ('queued', 'unsure') AND m.due <= @now
    AND m.dealer NOT IN (SELECT value FROM json_each(@dealers)) AND m.destination NOT IN (SELECT value FROM json_each(@destinations))
  ORDER BY m.due ${order}, m.seq ${order} LIMIT @most`;

/** Claims of one process. The transactions are the caller's. */
export function claimsOf(db: Database, stops: Stops, words: Words, worker: string) {
  const newest = db.prepare<object, Row>(candidates('DESC'));
  const longestWaiting = db.prepare<object, Row>(candidates('ASC'));
  const bringBack = db.prepare(`UPDATE messages SET due = @now WHERE state IN ('queued', 'unsure') AND due > @now + ${farthest}`);
  const give = db.prepare(`
    UPDATE messages SET state = 'sending', changed = @now, attempts = attempts + 1, fence = fence + 1, worker = @worker, beat = @now, reason = NULL
    WHERE seq = @seq`);
  const setAside = db.prepare('UPDATE messages SET state = @state, reason = @reason, changed = @now WHERE seq = @seq');
  const settle = db.prepare(`
    UPDATE messages SET state = @state, due = coalesce(@due, due), reason = @reason, reply = coalesce(@reply, reply), changed = @now, crashes = 0, worker = NULL, beat = NULL,
      was_unsure = was_unsure OR @state = 'unsure'
    WHERE seq = @message AND fence = @fence AND state = 'sending'`);
  const release = db.prepare(`
    UPDATE messages SET state = 'queued', due = @now, changed = @now, crashes = crashes + 1, worker = NULL, beat = NULL, reason = 'no outcome'
    WHERE state = 'sending' AND (@silentSince IS NULL OR beat < @silentSince)`);
  const beat = db.prepare(`UPDATE messages SET beat = @now WHERE state = 'sending' AND worker = @worker`);
  const nextDue = db.prepare(`SELECT min(due) FROM messages WHERE state IN ('queued', 'unsure')`).pluck();

  /** Whether half of an odd number was the newest's the last time. */
  let newestHadMore = false;

  /** A claim, or undefined where the mail was settled instead. */
  function claimOf(row: Row, now: Instant, crashesHeld: number): Claim | undefined {
    const { seq, id, role, recipient, messageId, token, digest, body, dealer, accepted, attempts, crashes, wasUnsure, isWord, fence } = row;
    const aside = (state: 'held' | 'suppressed', reason: string) => {
      setAside.run({ seq, state, reason, now });
      return undefined;
    };
    if (stops.isStopped(recipient, dealer, now)) return aside('suppressed', 'stopped');
    if (crashes >= crashesHeld) return aside('held', 'crashes');
    if (body === null || digestOf(body, { role, recipient, messageId, token }) !== digest) return aside('held', 'damaged');
    give.run({ seq, now, worker });
    return {
      message: String(seq), request: id, role, recipient, messageId, token, dealer, document: JSON.parse(body) as RequestDocument, acceptedAt: accepted,
      attempt: attempts + 1, crashes, wasUnsure: wasUnsure === 1, isWord: isWord === 1, fence: fence + 1,
    };
  }

  return {
    /** Half of them the newest, half those that wait longest: neither waits for all of the other. */
    claim(most: number, now: Instant, crashesHeld: number, { dealers = [], destinations = [] }: Except = {}): Claim[] {
      bringBack.run({ now });
      const claims: Claim[] = [];
      const take = (from: typeof newest, upTo: number) => {
        while (claims.length < upTo) {
          const rows = from.all({ now, most: upTo - claims.length, dealers: JSON.stringify(dealers), destinations: JSON.stringify(destinations) });
          if (rows.length === 0) return;
          for (const row of rows) {
            const claim = claimOf(row, now, crashesHeld);
            if (claim) claims.push(claim);
          }
        }
      };
      const half = newestHadMore ? Math.floor(most / 2) : Math.ceil(most / 2);
      newestHadMore = half > most / 2;
      take(newest, half);
      take(longestWaiting, most);
      return claims;
    },
    settle(message: string, fence: number, outcome: Outcome, now: Instant, word?: MessageIds): boolean {
      const { state } = outcome;
      const isSettled = settle.run({
        message: Number(message), fence, state, now, due: 'at' in outcome ? outcome.at : null, reason: 'reason' in outcome ? outcome.reason : null, reply: outcome.reply ?? null,
      }).changes === 1;
      if (isSettled && word) words.tellOf(Number(message), word, now);
      return isSettled;
    },
    release: (now: Instant, silentFor?: number) => release.run({ now, silentSince: silentFor === undefined ? null : now - silentFor }).changes,
    beat: (now: Instant) => void beat.run({ now, worker }),
    nextDue: () => (nextDue.get() as number | null) ?? undefined,
  };
}
