import type { Database } from 'better-sqlite3';
import { sha256 } from '../../hashes.ts';
import type { Instant, StopScope } from '../store.ts';

/** Stands in the list for every dealer. */
const everywhere = '';

export type Stops = ReturnType<typeof stopsIn>;

/** Whom nothing is sent to. The transactions are the caller's. */
export function stopsIn(db: Database) {
  const find = db.prepare('SELECT 1 FROM stops WHERE recipient = ? AND scope IN (\'\', ?) AND (until IS NULL OR until > ?) LIMIT 1').pluck();
  // A person's own word has no end, and a bounce that has one doesn't shorten it.
  const put = db.prepare(`
    INSERT INTO stops VALUES (@recipient, @scope, @why, @now, @until)
    ON CONFLICT DO UPDATE SET
      why = CASE WHEN until IS NULL THEN why ELSE @why END,
      until = CASE WHEN until IS NULL OR @until IS NULL THEN NULL ELSE max(until, @until) END`);
  const settle = db.prepare(`
    UPDATE messages SET state = 'suppressed', reason = 'stopped', changed = @now
    WHERE recipient = @recipient AND state IN ('unconfirmed', 'queued', 'unsure', 'held') AND (@scope = '' OR dealer = @scope)`);
  const byToken = db.prepare<[string], { recipient: string; dealer: string; request: number }>('SELECT recipient, dealer, request FROM messages WHERE token_hash = ?');
  const queue = db.prepare(`UPDATE messages SET state = 'queued', due = @now, changed = @now WHERE request = @request AND state = 'unconfirmed'`);

  const suppress = (recipient: string, scope: string, why: string, now: Instant, until?: Instant) => {
    put.run({ recipient, scope, why, now, until: until ?? null });
    settle.run({ recipient, scope, now });
  };

  return {
    isStopped: (recipient: string, dealer: string, now: Instant) => find.get(recipient, dealer, now) !== undefined,
    suppress: (recipient: string, scope: StopScope, why: string, now: Instant, until?: Instant) =>
      suppress(recipient, 'dealer' in scope ? scope.dealer : everywhere, why, now, until),
    /** Found by its hash, so that the time it takes tells nothing of tokens there are. */
    stop(token: string, why: string, now: Instant) {
      const found = byToken.get(sha256(token));
      if (!found) return undefined;
      suppress(found.recipient, everywhere, why, now);
      return { recipient: found.recipient, dealer: found.dealer };
    },
    confirm(token: string, now: Instant): boolean {
      const found = byToken.get(sha256(token));
      if (found) queue.run({ request: found.request, now });
      return found !== undefined;
    },
  };
}
