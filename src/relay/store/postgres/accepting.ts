import { sha256 } from '../../hashes.ts';
import { StoreAway, StoreBroken, StoreFull } from '../failures.ts';
import { taken, type Level, type NewLevel } from '../levels.ts';
import { dayOf, destinationOf, digestOf } from '../rows.ts';
import type { Accepted, Instant, NewRequest, Take } from '../store.ts';
import { columnsOf } from './columns.ts';
import type { Connections, Link } from './connections.ts';
import type { WakeUps } from './wake-ups.ts';

interface Asked { request: NewRequest; takes: readonly Take[]; now: Instant; likeSince: Instant }
interface Stop { recipient: string; scope: string; until: Instant | null }

/** Most that share one transaction, and with it one wait for the disk. Each holds about ten locks, of which a server has thousands. */
const mostTogether = 32;

/** What a decision goes by is locked first, all at once and in one order, so that nobody waits for whoever waits for him. */
const lock = (link: Link, batch: readonly Asked[]) => link.rows(
  'SELECT pg_advisory_xact_lock(hash) FROM (SELECT DISTINCT hashtextextended(name, 0) AS hash FROM unnest($1::text[]) AS name ORDER BY hash) AS sorted',
  [batch.flatMap(({ request: { id, likeness }, takes }) => [`key ${id}`, `like ${likeness}`, ...takes.map(({ bucket }) => `bucket ${bucket}`)])],
);

/** What there is of all that a batch asks about. */
async function look(link: Link, batch: readonly Asked[]) {
  const keys = await link.rows<{ id: string; fingerprint: string }>('SELECT id, fingerprint FROM acre.keys WHERE id = ANY ($1)', [batch.map(({ request }) => request.id)]);
  const alike = await link.rows<{ likeness: string; accepted: Instant }>('SELECT likeness, max(accepted) AS accepted FROM acre.requests WHERE likeness = ANY ($1) GROUP BY likeness', [batch.map(({ request }) => request.likeness)]);
  const levels = await link.rows<Level>('SELECT bucket, level, at FROM acre.buckets WHERE bucket = ANY ($1)', [batch.flatMap(({ takes }) => takes.map(({ bucket }) => bucket))]);
  const stops = await link.rows<Stop>('SELECT recipient, scope, until FROM acre.stops WHERE recipient = ANY ($1)', [batch.flatMap(({ request }) => request.messages.map(({ recipient }) => recipient))]);
  return {
    keys: new Map(keys.map(({ id, fingerprint }) => [id, fingerprint])),
    alike: new Map(alike.map(({ likeness, accepted }) => [likeness, accepted])),
    levels: new Map(levels.map((level) => [level.bucket, level])),
    stops,
  };
}

/** Decides one after the other, each in sight of those before it. */
function decide(batch: readonly Asked[], { keys, alike, levels }: Awaited<ReturnType<typeof look>>) {
  const newKeys: { id: string; fingerprint: string; accepted: Instant }[] = [];
  const newLevels = new Map<string, NewLevel>();
  const stored: Asked[] = [];
  const answers = batch.map((asked): Accepted => {
    const { request: { id, fingerprint, likeness }, takes, now, likeSince } = asked;
    const known = keys.get(id);
    if (known !== undefined) return known === '' || known === fingerprint ? 'repeated' : 'other-body';
    const isAlike = (alike.get(likeness) ?? -Infinity) >= likeSince;
    if (!isAlike) {
      const result = taken(takes, now, (bucket) => levels.get(bucket));
      if ('after' in result) return { limited: true, after: result.after };
      for (const level of result.levels) {
        levels.set(level.bucket, level);
        newLevels.set(level.bucket, level);
      }
      alike.set(likeness, Math.max(now, alike.get(likeness) ?? now));
      stored.push(asked);
    }
    // From here on this key stands for it, also where it is one alike.
    keys.set(id, fingerprint);
    newKeys.push({ id, fingerprint, accepted: now });
    return isAlike ? 'repeated' : 'stored';
  });
  return { answers, newKeys, newLevels: [...newLevels.values()], stored };
}

async function put(link: Link, { newKeys, newLevels, stored }: ReturnType<typeof decide>, stops: readonly Stop[], wakeUps: WakeUps): Promise<void> {
  const keys = columnsOf(newKeys, { id: 'text', fingerprint: 'text', accepted: 'bigint' });
  await link.rows(`INSERT INTO acre.keys SELECT id, fingerprint, accepted FROM ${keys.from}`, keys.values);
  if (stored.length === 0) return;
  const levels = columnsOf(newLevels, { bucket: 'text', level: 'float8', at: 'bigint', fullAt: 'bigint' });
  await link.rows(`
    INSERT INTO acre.buckets SELECT bucket, level, at, "fullAt" FROM ${levels.from}
    ON CONFLICT (bucket) DO UPDATE SET level = excluded.level, at = excluded.at, full_at = excluded.full_at`, levels.values);

  const bodies = stored.map(({ request, now }) => ({ id: request.id, dealer: request.dealer, likeness: request.likeness, body: JSON.stringify(request.request), accepted: now }));
  const requests = columnsOf(bodies, { id: 'text', dealer: 'text', likeness: 'text', body: 'text', accepted: 'bigint' });
  const numbers = new Map((await link.rows<{ id: string; seq: number }>(`
    INSERT INTO acre.requests (id, dealer, likeness, body, accepted) SELECT id, dealer, likeness, body, accepted FROM ${requests.from} ORDER BY place RETURNING id, seq`, requests.values))
    .map(({ id, seq }) => [id, seq]));

  const mails = stored.flatMap(({ request: { id, dealer, request, messages }, now }, place) => messages.map((message) => {
    const stopped = stops.some(({ recipient, scope, until }) => recipient === message.recipient && (scope === '' || scope === dealer) && (until === null || until > now));
    return {
      request: numbers.get(id)!, role: message.role, dealer, destination: destinationOf(request.address, message.role, dealer), recipient: message.recipient, message_id: message.messageId,
      token: message.token, token_hash: sha256(message.token), digest: digestOf(bodies[place]!.body, message),
      state: stopped ? 'suppressed' as const : message.state, now, reason: stopped ? 'stopped' : null,
    };
  }));
  const messages = columnsOf(mails, {
    request: 'bigint', role: 'text', dealer: 'text', destination: 'text', recipient: 'text', message_id: 'text', token: 'text', token_hash: 'text', digest: 'text', state: 'text', now: 'bigint', reason: 'text',
  });
  await link.rows(`
    INSERT INTO acre.messages (request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, accepted, due, changed, reason)
    SELECT request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, now, now, now, reason FROM ${messages.from} ORDER BY place`, messages.values);

  const answered = stored.filter(({ request }) => request.request.consent.statistics)
    .map(({ request: { dealer, request }, now }) => ({ dealer, day: dayOf(now), kind: request.kind, answers: JSON.stringify(request.answers) }));
  const statistics = columnsOf(answered, { dealer: 'text', day: 'text', kind: 'text', answers: 'text' });
  if (answered.length > 0) await link.rows(`INSERT INTO acre.statistics (dealer, day, kind, answers) SELECT dealer, day, kind, answers FROM ${statistics.from} ORDER BY place`, statistics.values);
  if (mails.some(({ state }) => state === 'queued')) await wakeUps.send(link);
}

interface Waiting extends Asked {
  resolve: (answer: Accepted) => void;
  reject: (error: unknown) => void;
}

/** Takes requests in, in the order they came: what comes in together shares one transaction. */
export class Accepting {
  readonly #connections: Connections;
  readonly #wakeUps: WakeUps;
  #waiting: Waiting[] = [];
  #isBusy = false;

  constructor(connections: Connections, wakeUps: WakeUps) {
    this.#connections = connections;
    this.#wakeUps = wakeUps;
  }

  accept(asked: Asked): Promise<Accepted> {
    return new Promise((resolve, reject) => {
      this.#waiting.push({ ...asked, resolve, reject });
      if (!this.#isBusy) setImmediate(() => void this.#go());
      this.#isBusy = true;
    });
  }

  async #go(): Promise<void> {
    while (this.#waiting.length > 0) {
      const batch = this.#waiting.splice(0, mostTogether);
      try {
        await this.#store(batch);
      } catch (error) {
        const isStores = error instanceof StoreAway || error instanceof StoreFull || error instanceof StoreBroken;
        if (isStores || batch.length === 1) for (const { reject } of batch) reject(error);
        // One of them can't be stored; the others don't go without for it.
        else for (const each of batch) await this.#store([each]).catch(each.reject);
      }
    }
    this.#isBusy = false;
  }

  async #store(batch: readonly Waiting[]): Promise<void> {
    const answers = await this.#connections.write(async (link) => {
      await lock(link, batch);
      const found = await look(link, batch);
      const decided = decide(batch, found);
      if (decided.newKeys.length > 0) await put(link, decided, found.stops, this.#wakeUps);
      return decided.answers;
    });
    batch.forEach(({ resolve }, place) => resolve(answers[place]!));
  }
}
