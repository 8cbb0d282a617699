/** The database goes away and comes back, in order, by a loss of power, and without a word. */
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { clock } from '../../src/relay/clock.ts';
import { logTo } from '../../src/relay/log.ts';
import { createSender } from '../../src/relay/sender/sender.ts';
import { readSettings } from '../../src/relay/settings/read-settings.ts';
import { startRelay, type Running } from '../../src/relay/start.ts';
import { openPostgres, type PostgresStore } from '../../src/relay/store/postgres/postgres-store.ts';
import { paths } from '../../src/request/names.ts';
import { wayTo } from '../support/half-open.ts';
import { postgresServer, type TestServer } from '../support/postgres.ts';
import { demoCatalogue } from '../cli/fake-io.ts';
import { aDealer, browserHeaders, requestTo, settingsWith } from './a-relay.ts';
import { newRequest } from './store-requests.ts';

let server: TestServer;
beforeAll(async () => {
  server = await postgresServer();
}, 60_000);
afterAll(() => server?.end());

const never = 3;
/** How long a statement may take here [ms]. */
const longest = 1_500;
const accept = (store: PostgresStore, name: string) => store.accept(newRequest({ name }), [], clock.now(), clock.now() - 1_000);
const rows = async (database: string) => (await server.ask<{ id: string; keys: number; mails: number }>(`
  SELECT coalesce(r.id, k.id) AS id, count(DISTINCT k.id)::int AS keys, count(m.seq)::int AS mails
  FROM acre.requests r FULL JOIN acre.keys k ON k.id = r.id LEFT JOIN acre.messages m ON m.request = r.seq GROUP BY 1 ORDER BY 1`, database));

describe('a store whose server goes away', () => {
  let store: PostgresStore;
  let database: string;
  beforeEach(async () => {
    database = await server.database();
    store = await openPostgres({ address: server.address(database), name: 'one', onDue: () => {} });
  });
  afterEach(() => store.close());

  test.each(['in order', 'at once'] as const)('%s says so at once, keeps in mind what came of a mail, and goes on by itself', async (how) => {
    await accept(store, 'a');
    const [claim] = await store.claim(1, clock.now(), never);
    await server.stop(how);
    await expect(accept(store, 'b')).rejects.toMatchObject({ name: 'StoreAway' });
    await expect(store.health()).rejects.toMatchObject({ name: 'StoreAway' });
    const settling = store.settle(claim!, { state: 'sent', reply: '250' }, clock.now());
    await server.start();
    expect(await settling).toBe(true);
    await expect.poll(() => accept(store, 'b').catch(() => 'away'), { timeout: 20_000 }).toBe('stored');
    expect((await store.depth(clock.now())).byState).toMatchObject({ sent: 1, queued: 1 });
    expect(await rows(database)).toEqual([{ id: 'a', keys: 1, mails: 1 }, { id: 'b', keys: 1, mails: 1 }]);
  });

  test('goal 1: by a loss of power under load has all that was confirmed', async () => {
    const confirmed = new Set<string>();
    let asked = 0;
    const load = { isOver: false };
    const working = Array.from({ length: 12 }, async () => {
      while (!load.isOver) {
        asked += 1;
        const name = `m${asked}`;
        if (await accept(store, name).catch(() => 'away') === 'stored') confirmed.add(name);
      }
    });
    await expect.poll(() => confirmed.size, { timeout: 20_000, interval: 5 }).toBeGreaterThan(100);
    await server.stop('at once');
    load.isOver = true;
    await Promise.all(working);
    await server.start();
    const there = await rows(database);
    expect(there.filter(({ keys, mails }) => keys !== 1 || mails !== 1)).toEqual([]);
    const kept = new Set(there.map(({ id }) => id));
    expect([...confirmed].filter((name) => !kept.has(name))).toEqual([]);
  }, 30_000);
});

/** Each has a way of its own, for they are mostly waiting. */
describe.concurrent('a store to whose server nothing gets through any more, as by a cable that is pulled', () => {
  const begun = async () => {
    const way = await wayTo(server.port);
    const database = await server.database();
    const store = await openPostgres({ address: server.address(database, way.port), name: 'one', onDue: () => {}, longest });
    return { way, database, store, end: async () => {
      await store.close();
      await way.end();
    } };
  };

  test('is given up in time, and new connections are made', async ({ expect }) => {
    const { way, store, database, end } = await begun();
    await accept(store, 'a');
    const [claim] = await store.claim(1, clock.now(), never);
    way.swallow();
    const since = clock.elapsed();
    const underWay = [accept(store, 'b'), store.health(), store.isStopped('x', 'y', clock.now())].map((each) => each.then(() => 'done', (error: Error) => error.name));
    const settling = store.settle(claim!, { state: 'sent', reply: '250' }, clock.now());
    expect(await Promise.all(underWay)).toEqual(['StoreAway', 'StoreAway', 'StoreAway']);
    expect(clock.elapsed() - since).toBeLessThan(6_000);
    const dead = way.begun();
    way.pass();
    expect(await settling).toBe(true);
    expect(way.begun()).toBeGreaterThan(dead);
    await expect.poll(() => accept(store, 'b').catch(() => 'away'), { timeout: 20_000 }).toMatch(/stored|repeated/);
    expect((await store.depth(clock.now())).byState).toMatchObject({ sent: 1, queued: 1 });
    expect(await rows(database)).toHaveLength(2);
    await end();
  }, 40_000);

  test('leaves no lock behind that others wait for', async ({ expect }) => {
    const { way, store, database, end } = await begun();
    const other = await openPostgres({ address: server.address(database) });
    const bucket = [{ bucket: 'shared', most: 9, fills: 1e12 }];
    await server.ask(`CREATE FUNCTION acre.slow() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN PERFORM pg_sleep(0.5) WHERE NEW.id = 'a'; RETURN NEW; END $$`, database);
    await server.ask('CREATE TRIGGER slow BEFORE INSERT ON acre.keys FOR EACH ROW EXECUTE FUNCTION acre.slow()', database);
    const taking = store.accept(newRequest({ name: 'a' }), bucket, clock.now(), clock.now()).catch((error: Error) => error.name);
    const held = `SELECT 1 FROM pg_locks WHERE locktype = 'advisory' AND granted AND database = (SELECT oid FROM pg_database WHERE datname = current_database()) LIMIT 1`;
    await expect.poll(() => server.ask(held, database), { timeout: 20_000, interval: 5 }).toHaveLength(1);
    way.swallow();
    expect(await taking).toBe('StoreAway');
    await expect.poll(() => other.accept(newRequest({ name: 'b' }), bucket, clock.now(), clock.now()).catch(() => 'away'), { timeout: 20_000 }).toBe('stored');
    await other.close();
    await end();
  }, 40_000);

  test('just after the last word got through knows, once it asks again, that all was written', async ({ expect }) => {
    const { way, store, database, end } = await begun();
    way.loseAnswerTo('COMMIT');
    expect(await accept(store, 'a').catch((error: Error) => error.name)).toBe('StoreAway');
    expect(await accept(store, 'a')).toBe('repeated');
    const [claim] = await store.claim(1, clock.now(), never);
    way.loseAnswerTo('COMMIT');
    expect(await store.settle(claim!, { state: 'sent', reply: '250' }, clock.now())).toBe(true);
    expect(await server.ask('SELECT state, attempts FROM acre.messages', database)).toEqual([{ state: 'sent', attempts: 1 }]);
    // A claim whose answer was lost is nobody's, and goes silent.
    await accept(store, 'b');
    way.loseAnswerTo('COMMIT');
    await expect(store.claim(1, clock.now(), never)).rejects.toMatchObject({ name: 'StoreAway' });
    await store.beat(clock.now() + 100_000);
    expect(await store.release(clock.now() + 100_000, 60_000)).toBe(1);
    await end();
  }, 40_000);

  test('is noticed within seconds also by who may wait a minute, and one that only takes its time is waited for', async ({ expect }) => {
    const { way, database, end } = await begun();
    // Whoever starts waits for another that is at it.
    const waiting = async () => {
      const holder = new pg.Client({ connectionString: server.address(database) });
      await holder.connect();
      await holder.query(`SELECT pg_advisory_lock(hashtextextended('acre jobs', 0))`);
      const opening = openPostgres({ address: server.address(database, way.port), longest }).then(async (opened) => {
        await opened.close();
        return 'opened';
      }, (error: Error) => error.name);
      await expect.poll(() => holder.query('SELECT 1 FROM pg_locks WHERE NOT granted').then(({ rowCount }) => rowCount), { timeout: 20_000 }).toBe(1);
      const before = way.begun();
      // It has looked twice, and found that the server is there.
      await expect.poll(() => way.begun() - before, { timeout: 20_000 }).toBe(2);
      return { opening, end: () => holder.end() };
    };
    const slow = await waiting();
    await slow.end();
    expect(await slow.opening).toBe('opened');
    const dead = await waiting();
    way.swallow();
    const since = clock.elapsed();
    expect(await dead.opening).toBe('StoreUnusable');
    expect(clock.elapsed() - since).toBeLessThan(6 * longest);
    await dead.end();
    await end();
  }, 60_000);

  test('closes in time', async ({ expect }) => {
    const { way, store, end } = await begun();
    way.swallow();
    const lost = store.health().catch((error: Error) => error.name);
    const since = clock.elapsed();
    await store.close();
    expect(clock.elapsed() - since).toBeLessThan(8_000);
    expect(await lost).toBe('StoreAway');
    await end();
  }, 20_000);
});

describe('a relay whose database goes away', () => {
  const folder = mkdtempSync(join(tmpdir(), 'acre-away-'));
  const settingsFile = join(folder, 'settings.json');
  const logged: string[] = [];
  const sent: string[] = [];
  let relay: Running;
  let database: string;
  writeFileSync(join(folder, 'catalogue.json'), demoCatalogue);
  writeFileSync(settingsFile, JSON.stringify(settingsWith({ ...aDealer, devices: [{ id: 'counter', hash: '0'.repeat(64) }] })));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** @param before  what happens before the catalogue of a mail is looked for, and before it is made */
  const started = async (before: Partial<Record<'catalogue' | 'mail', () => Promise<void>>> = {}) => {
    const settings = await readSettings({ ACRE_DATA: mkdtempSync(join(folder, 'd-')), ACRE_LISTEN: '127.0.0.1:0', ACRE_DATABASE: server.address(database) }, settingsFile);
    return startRelay(settings, logTo('debug', { write: (line: string) => { logged.push(line); } }), (needs) => createSender({
      ...needs, metrics: { settled: () => {}, paused: () => {}, busy: () => {} },
      store: { ...needs.store, async catalogueOf(dealer, version) {
        await before.catalogue?.();
        return needs.store.catalogueOf(dealer, version);
      } },
      compose: async () => {
        await before.mail?.();
        return { fromName: 'D', subject: 'S', text: 'T' };
      },
      transport: { send: async ({ envelope }) => { sent.push(envelope.to); return { kind: 'sent', reply: '250' }; }, abort: () => {}, close: async () => {} },
    }));
  };
  let count = 0;
  const send = async (key = randomUUID() as string) => {
    count += 1;
    const response = await fetch(`${relay.address}${paths.shortlists.slice(1)}`, { method: 'POST', headers: { ...browserHeaders, 'idempotency-key': key }, body: JSON.stringify(requestTo(`ann${count}@buyer.example`, { consent: { mail: true, dealerCopy: false, statistics: false }, contact: undefined })) });
    return { status: response.status, after: response.headers.get('retry-after') };
  };
  beforeEach(async () => {
    database = await server.database();
  });
  afterEach(() => relay.stop());

  test('answers 503 with a time to try again, takes nothing by halves, and goes on by itself; the address stands in no line', async () => {
    relay = await started();
    expect((await send()).status).toBe(202);
    await expect.poll(() => sent, { timeout: 20_000 }).toEqual(['ann1@buyer.example']);
    await server.stop('at once');
    expect(await send()).toEqual({ status: 503, after: expect.stringMatching(/^\d+$/) });
    await server.start();
    await expect.poll(async () => (await send()).status, { timeout: 20_000, interval: 300 }).toBe(202);
    await expect.poll(() => sent.length, { timeout: 20_000 }).toBe(2);
    for (const { keys, mails } of await rows(database)) expect([keys, mails]).toEqual([1, 1]);
    expect(logged.join('\n')).toContain('the database is away');
    expect(logged.join('\n')).not.toMatch(/not-to-be-told|postgres:\/\//);
  }, 40_000);

  test.each(['catalogue', 'mail'] as const)('while a mail is made (%s) puts that back in its place, and doesn’t hold it as one that can’t be made', async (what) => {
    sent.length = 0;
    let isFirst = true;
    relay = await started({ [what]: async () => {
      if (!isFirst) return;
      isFirst = false;
      await server.stop('at once');
      void server.start();
    } });
    expect((await send()).status).toBe(202);
    await expect.poll(() => sent.length, { timeout: 20_000 }).toBe(1);
    await expect.poll(() => server.ask('SELECT state, attempts, crashes FROM acre.messages', database), { timeout: 20_000 }).toEqual([{ state: 'sent', attempts: 2, crashes: 0 }]);
  }, 40_000);
});
