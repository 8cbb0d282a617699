import type { RequestDocument } from '../../../request/schema.ts';
import { digestOf, farthest } from '../rows.ts';
import type { Claim, Except, Instant, MessageIds, Outcome, Role } from '../store.ts';
import type { Connections, Link } from './connections.ts';
import type { WakeUps } from './wake-ups.ts';
import { tellIn } from './words.ts';

interface Row {
  seq: number; id: string; role: Role; recipient: string; messageId: string; token: string; digest: string; body: string | null; dealer: string;
  accepted: Instant; attempts: number; crashes: number; wasUnsure: boolean; isWord: boolean; fence: number; isStopped: boolean;
}

/** Who claims: a name that stays over restarts, and which run of it this is. */
export interface Worker { name: string; run: string }

/** What others are at is passed over, not waited for. */
const candidates = (order: 'ASC' | 'DESC') => `
  SELECT m.seq, r.id, m.role, m.recipient, m.message_id AS "messageId", m.token, m.digest, r.body, m.dealer, m.accepted, m.attempts, m.crashes,
    m.was_unsure AS "wasUnsure", m.fence,
    m.role = 'dealer' AND EXISTS (SELECT 1 FROM acre.messages o WHERE o.request = m.request AND o.role = 'dealer' AND o.seq < m.seq) AS "isWord",
    EXISTS (SELECT 1 FROM acre.stops s WHERE s.recipient = m.recipient AND s.scope IN ('', m.dealer) AND (s.until IS NULL OR s.until > $1)) AS "isStopped"
  FROM acre.messages m JOIN acre.requests r ON r.seq = m.request
  WHERE m.state IN ('queued', 'unsure') AND m.due <= $1 AND m.dealer <> ALL ($2::text[]) AND m.destination <> ALL ($3::text[])
  ORDER BY m.due ${order}, m.seq ${order} LIMIT $4 FOR UPDATE OF m SKIP LOCKED`;

const bringBack = `
  UPDATE acre.messages SET due = $1::bigint WHERE seq IN (
    SELECT seq FROM acre.messages WHERE state IN ('queued', 'unsure') AND due > $1::bigint + ${farthest} ORDER BY seq FOR UPDATE SKIP LOCKED)`;

const give = `
  UPDATE acre.messages SET state = 'sending', changed = $2, attempts = attempts + 1, fence = fence + 1, worker = $3, run = $4, beat = $2, reason = NULL
  WHERE seq = ANY ($1::bigint[])`;

/** Why a mail isn't given out but settled. */
function asideOf({ isStopped, crashes, body, digest, ...rest }: Row, crashesHeld: number): { state: 'suppressed' | 'held'; reason: string } | undefined {
  if (isStopped) return { state: 'suppressed', reason: 'stopped' };
  if (crashes >= crashesHeld) return { state: 'held', reason: 'crashes' };
  if (body === null || digestOf(body, rest) !== digest) return { state: 'held', reason: 'damaged' };
  return undefined;
}

const claimOf = ({ seq, id, role, recipient, messageId, token, body, dealer, accepted, attempts, crashes, wasUnsure, isWord, fence }: Row): Claim => ({
  message: String(seq), request: id, role, recipient, messageId, token, dealer, document: JSON.parse(body!) as RequestDocument, acceptedAt: accepted,
  attempt: attempts + 1, crashes, wasUnsure, isWord, fence: fence + 1,
});

interface Wanted { order: 'ASC' | 'DESC'; most: number; now: Instant; crashesHeld: number; dealers: readonly string[]; destinations: readonly string[] }

async function take(link: Link, { order, most, now, crashesHeld, dealers, destinations }: Wanted, { name, run }: Worker): Promise<Claim[]> {
  const claims: Claim[] = [];
  while (claims.length < most) {
    const found = await link.rows<Row>(candidates(order), [now, dealers, destinations, most - claims.length]);
    if (found.length === 0) break;
    const given: Row[] = [];
    for (const row of found) {
      const aside = asideOf(row, crashesHeld);
      if (aside) await link.rows('UPDATE acre.messages SET state = $2, reason = $3, changed = $4 WHERE seq = $1', [row.seq, aside.state, aside.reason, now]);
      else given.push(row);
    }
    if (given.length > 0) await link.rows(give, [given.map(({ seq }) => seq), now, name, run]);
    claims.push(...given.map(claimOf));
  }
  return claims;
}

/** Claims of one process. */
export class Claiming {
  readonly #connections: Connections;
  readonly #wakeUps: WakeUps;
  readonly #worker: Worker;
  /** What this process has claimed and not settled, by its fence. A claim whose answer was lost on the way isn't among them, and goes silent. */
  readonly #inHand = new Map<string, number>();
  /** Whether half of an odd number was the newest's the last time. */
  #newestHadMore = false;

  constructor(connections: Connections, wakeUps: WakeUps, worker: Worker) {
    this.#connections = connections;
    this.#wakeUps = wakeUps;
    this.#worker = worker;
  }

  /** Half of them the newest, half those that wait longest: neither waits for all of the other. */
  async claim(most: number, now: Instant, crashesHeld: number, { dealers = [], destinations = [] }: Except = {}): Promise<Claim[]> {
    const half = this.#newestHadMore ? Math.floor(most / 2) : Math.ceil(most / 2);
    this.#newestHadMore = half > most / 2;
    const wanted = { now, crashesHeld, dealers, destinations };
    const claims = await this.#connections.write(async (link) => {
      await link.rows(bringBack, [now]);
      const newest = await take(link, { ...wanted, order: 'DESC', most: half }, this.#worker);
      return [...newest, ...await take(link, { ...wanted, order: 'ASC', most: most - newest.length }, this.#worker)];
    });
    for (const { message, fence } of claims) this.#inHand.set(message, fence);
    return claims;
  }

  /** @param isRepeated  whether it was tried before and nobody knows what came of it */
  async settle(message: string, fence: number, outcome: Outcome, now: Instant, { isRepeated, word }: { isRepeated: boolean; word?: MessageIds | undefined }): Promise<boolean> {
    const { state } = outcome;
    const at = 'at' in outcome ? outcome.at : undefined;
    return this.#connections.write(async (link) => {
      const [settled] = await link.rows<{ request: number }>(`
        UPDATE acre.messages SET state = $3::text, due = coalesce($4, due), reason = $5, reply = coalesce($6, reply), changed = $7, crashes = 0, worker = NULL, run = NULL, beat = NULL,
          was_unsure = was_unsure OR $3::text = 'unsure'
        WHERE seq = $1 AND fence = $2 AND state = 'sending' RETURNING request`,
      // A server's words may hold what this one can't store.
      [message, fence, state, at ?? null, 'reason' in outcome ? outcome.reason : null, outcome.reply?.replaceAll('\0', '') ?? null, now]);
      if (settled && word) await tellIn(link, this.#wakeUps, settled.request, word, now);
      if (settled && at !== undefined) await this.#wakeUps.send(link, at);
      if (settled || !isRepeated) return settled !== undefined;
      return (await link.rows('SELECT 1 FROM acre.messages WHERE seq = $1 AND fence = $2 AND state = $3 AND changed = $4', [message, fence, state, now])).length === 1;
    });
  }

  /** It isn't worked on any more, whatever became of it. */
  putDown(message: string, fence: number): void {
    if (this.#inHand.get(message) === fence) this.#inHand.delete(message);
  }

  /** Of whom nobody heard for so long, and what an earlier run of this worker left. */
  release(now: Instant, silentFor: number | undefined): Promise<number> {
    return this.#connections.write(async (link) => {
      const freed = await link.count(`
        UPDATE acre.messages SET state = 'queued', due = $1, changed = $1, crashes = crashes + 1, worker = NULL, run = NULL, beat = NULL, reason = 'no outcome'
        WHERE seq IN (
          SELECT seq FROM acre.messages
          WHERE state = 'sending' AND ($2::bigint IS NULL OR beat < $2 OR (worker = $3 AND run <> $4)) ORDER BY seq FOR UPDATE SKIP LOCKED)`,
      [now, silentFor === undefined ? null : now - silentFor, this.#worker.name, this.#worker.run]);
      if (freed > 0) await this.#wakeUps.send(link);
      return freed;
    });
  }

  async beat(now: Instant): Promise<void> {
    if (this.#inHand.size === 0) return;
    await this.#connections.write((link) => link.rows(`
      UPDATE acre.messages SET beat = $1 WHERE seq IN (
        SELECT seq FROM acre.messages WHERE state = 'sending' AND run = $2 AND seq = ANY ($3::bigint[]) ORDER BY seq FOR UPDATE SKIP LOCKED)`,
    [now, this.#worker.run, [...this.#inHand.keys()]]));
  }

  nextDue(): Promise<Instant | undefined> {
    return this.#connections.read(async (link) => {
      const [first] = await link.rows<{ due: Instant | null }>(`SELECT min(due) AS due FROM acre.messages WHERE state IN ('queued', 'unsure')`);
      return first?.due ?? undefined;
    });
  }
}
