import * as fc from 'fast-check';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { clock } from '../../src/relay/clock.ts';
import { personOf } from '../../src/relay/hashes.ts';
import { Connections } from '../../src/relay/store/postgres/connections.ts';
import { openPostgres, type PostgresOptions } from '../../src/relay/store/postgres/postgres-store.ts';
import { migrate, migrations } from '../../src/relay/store/postgres/schema.ts';
import type { Claim, Store, Take } from '../../src/relay/store/store.ts';
import { postgresServer, type TestServer } from '../support/postgres.ts';
import { newRequest, noon, take } from './store-requests.ts';

const minute = 60_000;
const never = 3;

let server: TestServer;
let made: string;
let database: string;
let open: Store[];
beforeAll(async () => {
  server = await postgresServer();
  made = await server.database();
  await (await openPostgres({ address: server.address(made) })).close();
}, 60_000);
afterAll(() => server?.end());
beforeEach(async () => {
  open = [];
  database = await server.database(made);
});
afterEach(async () => {
  await Promise.all(open.map((store) => store.close()));
  await server.drop(database);
});

/** One more process, as it were: it shares nothing with the others but the database. */
async function another(options: Partial<PostgresOptions> = {}) {
  const store = await openPostgres({ address: server.address(database), ...options });
  open.push(store);
  return store;
}
const several = (count: number) => Promise.all(Array.from({ length: count }, () => another()));
const accept = (store: Store, name: string, takes: readonly Take[] = [], now = noon) => store.accept(newRequest({ name, recipient: `hash of ${name}` }), takes, now, now - 10 * minute);
const states = async (store: Store) => Object.fromEntries(Object.entries((await store.depth(noon)).byState).filter(([, count]) => count > 0));

describe('several processes on one database', () => {
  test('claim each mail once, and each only what no other has', async () => {
    const stores = await several(4);
    for (let index = 0; index < 60; index++) await accept(stores[index % 4]!, `m${index}`);
    const claims = (await Promise.all(stores.flatMap((store) => Array.from({ length: 10 }, () => store.claim(2, noon, never))))).flat();
    expect(claims).toHaveLength(60);
    expect(new Set(claims.map(({ message }) => message)).size).toBe(60);
  });

  test('store one request handed to all of them at once, under one key or alike under many', async () => {
    const stores = await several(4);
    const sameKey = await Promise.all(Array.from({ length: 40 }, (_, index) => accept(stores[index % 4]!, 'a')));
    expect(sameKey.filter((answer) => answer === 'stored')).toHaveLength(1);
    const alike = await Promise.all(Array.from({ length: 40 }, (_, index) => stores[index % 4]!.accept(newRequest({ name: `like ${index}`, likeness: 'same' }), [], noon, noon)));
    expect(alike.filter((answer) => answer === 'stored')).toHaveLength(1);
    expect(await states(stores[0]!)).toEqual({ queued: 2 });
  });

  test('take no more out of a bucket than is in it, in whatever order each names its buckets, and never wait for each other in a ring', async () => {
    const stores = await several(4);
    const buckets = ['a', 'b', 'c', 'd', 'e'].map((name, place) => take(name, 20 + place, 1e12));
    const [before] = await server.ask<{ deadlocks: string }>(`SELECT deadlocks FROM pg_stat_database WHERE datname = '${database}'`);
    const answers = await Promise.all(Array.from({ length: 120 }, (_, index) => {
      const turned = [...buckets.slice(index % 5), ...buckets.slice(0, index % 5)];
      return accept(stores[index % 4]!, `m${index}`, index % 2 === 0 ? turned : turned.reverse());
    }));
    expect(answers.filter((answer) => answer === 'stored')).toHaveLength(20);
    const levels = await server.ask<{ bucket: string; level: number }>('SELECT bucket, round(level)::int AS level FROM acre.buckets ORDER BY bucket', database);
    expect(levels).toEqual(buckets.map(({ bucket, most }) => ({ bucket, level: most - 20 })));
    // What a connection counted is told once it has ended.
    await Promise.all(stores.map((store) => store.close()));
    await expect.poll(() => server.ask(`SELECT 1 FROM pg_stat_activity WHERE datname = '${database}'`), { timeout: 20_000 }).toEqual([]);
    expect((await server.ask(`SELECT deadlocks FROM pg_stat_database WHERE datname = '${database}'`))[0]).toEqual(before);
  });

  test('goal 13: give out nobody whose stop was answered before it was asked for', async () => {
    const one = await another();
    const other = await another();
    const people = Array.from({ length: 40 }, (_, index) => `m${index}`);
    await Promise.all(people.map((name) => accept(one, name)));
    const stopped = new Set<string>();
    const wrong: string[] = [];
    const stopping = (async () => {
      for (const name of people.filter((_, index) => index % 2 === 0)) {
        await other.suppress(`hash of ${name}`, { all: true }, 'stop', noon);
        stopped.add(name);
      }
    })();
    const given: Claim[] = [];
    for (let index = 0; index < 60; index++) {
      const before = new Set(stopped);
      const claims = await one.claim(1, noon, never);
      wrong.push(...claims.filter(({ request }) => before.has(request)).map(({ request }) => request));
      given.push(...claims);
    }
    await stopping;
    expect(wrong).toEqual([]);
    expect(given.length).toBeGreaterThanOrEqual(20);
    await one.release(noon);
    expect((await one.claim(99, noon, never)).filter(({ request }) => stopped.has(request))).toEqual([]);
  });

  test('count every state right while all of them change', async () => {
    const stores = await several(3);
    await Promise.all(Array.from({ length: 45 }, (_, index) => accept(stores[index % 3]!, `m${index}`)));
    await Promise.all(stores.map(async (store) => {
      for (const claim of await store.claim(10, noon, never)) await store.settle(claim, { state: 'sent', reply: '250' }, noon);
    }));
    await Promise.all(stores.map((store) => store.tidy(noon, { bodies: 1e12, rows: 1e12, catalogues: 1e12, expiresAfter: 1e12 })));
    expect(await states(stores[0]!)).toEqual({ sent: 30, queued: 15 });
    expect(await server.ask('SELECT state, sum(count)::int AS count FROM acre.counts GROUP BY state HAVING sum(count) <> 0 ORDER BY state', database))
      .toEqual(await server.ask('SELECT state, count(*)::int AS count FROM acre.messages GROUP BY state ORDER BY state', database));
  });

  test('hear within a second of what another took in or put off', async () => {
    let heard = 0;
    await another({ onDue: () => { heard += 1; } });
    const one = await another();
    await accept(one, 'a', [], clock.now());
    const since = clock.elapsed();
    await expect.poll(() => heard, { timeout: 20_000, interval: 20 }).toBe(1);
    expect(clock.elapsed() - since).toBeLessThan(1_500);
    const [claim] = await one.claim(1, clock.now(), never);
    await one.settle(claim!, { state: 'queued', at: clock.now() + 400, reason: 'later' }, clock.now());
    await expect.poll(() => heard, { timeout: 20_000, interval: 20 }).toBe(2);
    expect(await server.ask('SELECT 1 FROM acre_jobs.job', database)).toEqual([]);
  });
});

describe('a worker that dies', () => {
  test('goal 4: and is started again frees what it had at once, and nothing of the others; the late one can’t write over the new', async () => {
    const first = await another({ name: 'one' });
    const other = await another({ name: 'other' });
    await accept(first, 'a');
    await accept(first, 'b');
    const [late] = await first.claim(1, noon, never);
    const [others] = await other.claim(1, noon, never);
    const again = await another({ name: 'one' });
    expect(await again.release(noon + 1_000, minute)).toBe(1);
    const [next] = await again.claim(9, noon + 1_000, never);
    expect(next).toMatchObject({ message: late!.message, crashes: 1, fence: late!.fence + 1 });
    expect(await first.settle(late!, { state: 'refused', reason: 'late' }, noon + 2_000)).toBe(false);
    expect(await again.settle(next!, { state: 'sent', reply: '250' }, noon + 2_000)).toBe(true);
    expect(await other.settle(others!, { state: 'sent', reply: '250' }, noon + 2_000)).toBe(true);
    expect(await states(other)).toEqual({ sent: 2 });
  });

  test('and isn’t is freed by the others once it was silent; what it has put down isn’t kept alive by what it still has', async () => {
    const one = await another({ name: 'one' });
    const other = await another({ name: 'other' });
    await accept(one, 'a');
    await accept(one, 'b');
    const [first, second] = await one.claim(2, noon, never);
    await server.ask(`UPDATE acre.messages SET fence = fence + 1 WHERE seq = ${first!.message}`, database);
    expect(await one.settle(first!, { state: 'sent', reply: '250' }, noon)).toBe(false);
    await one.beat(noon + 2 * minute);
    expect(await other.release(noon + 2 * minute, minute)).toBe(1);
    expect(await one.settle(second!, { state: 'sent', reply: '250' }, noon + 2 * minute)).toBe(true);
  });

  test('frees nobody by a clock that is wrong', async () => {
    const one = await another({ name: 'one' });
    let apart = 0;
    const ahead = await another({ name: 'ahead', clock: { now: () => clock.now() + apart, elapsed: () => clock.elapsed() + apart } });
    await accept(one, 'a', [], clock.now());
    await one.claim(1, clock.now(), never);
    apart = 10 * minute;
    await expect(ahead.release(clock.now() + apart, minute)).rejects.toThrow(/600 s apart/);
    await expect(ahead.claim(1, clock.now() + apart, never)).rejects.toThrow(/apart/);
    expect(await states(one)).toEqual({ sending: 1 });
    await expect(another({ clock: { now: () => clock.now() - 20_000, elapsed: () => clock.elapsed() } })).rejects.toThrow(/20 s apart/);
  });
});

describe('what is confirmed', () => {
  test('goal 2: is on the server’s disk, also where the role would have it otherwise', async () => {
    await server.ask('CREATE TABLE acre.seen (how text)', database);
    await server.ask(`CREATE FUNCTION acre.look() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN INSERT INTO acre.seen VALUES (current_setting('synchronous_commit')); RETURN NULL; END $$`, database);
    for (const table of ['keys', 'messages', 'stops']) await server.ask(`CREATE TRIGGER look AFTER INSERT OR UPDATE ON acre.${table} FOR EACH STATEMENT EXECUTE FUNCTION acre.look()`, database);
    await server.ask(`ALTER DATABASE ${database} SET synchronous_commit = off`);
    const store = await another();
    await accept(store, 'a');
    const [claim] = await store.claim(1, noon, never);
    await store.settle(claim!, { state: 'sent', reply: '250' }, noon);
    await store.suppress('someone', { all: true }, 'stop', noon);
    expect(await server.ask('SELECT DISTINCT how FROM acre.seen', database)).toEqual([{ how: 'on' }]);
    expect(await store.health()).toMatchObject({ kind: 'postgres', durable: true });
  });

  test('is there whole or not at all: one that can’t be stored leaves nothing, and the others go in', async () => {
    const store = await another();
    await accept(store, 'first');
    await server.ask(`CREATE FUNCTION acre.refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN IF NEW.message_id LIKE '%bad%' THEN RAISE 'no'; END IF; RETURN NEW; END $$`, database);
    await server.ask('CREATE TRIGGER refuse BEFORE INSERT ON acre.messages FOR EACH ROW EXECUTE FUNCTION acre.refuse()', database);
    const bucket = [take('one', 10, 1e12)];
    const answers = await Promise.allSettled(['a', 'bad', 'c'].map((name) => accept(store, name, bucket)));
    expect(answers.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect((await server.ask<{ id: string }>('SELECT id FROM acre.keys ORDER BY id', database)).map(({ id }) => id)).toEqual(['a', 'c', 'first']);
    expect((await server.ask<{ id: string }>('SELECT id FROM acre.requests ORDER BY id', database)).map(({ id }) => id)).toEqual(['a', 'c', 'first']);
    expect(await server.ask('SELECT level FROM acre.buckets', database)).toEqual([{ level: 8 }]);
  });

  test('a failed statement that nobody looked at is no success', async () => {
    const connections = new Connections({ address: server.address(database), name: 'test' });
    await expect(connections.write(async (link) => { await link.rows('SELECT 1 / 0').catch(() => {}); })).rejects.toThrow(/passed over/);
    await connections.close();
  });

  test('statistics are read by a cursor: as they stood at the beginning, and given up without harm', async () => {
    const store = await another();
    await server.ask(`INSERT INTO acre.statistics (dealer, day, kind, answers) SELECT 'd', '2026-05-12', 'shortlist', '{"n":' || n || '}' FROM generate_series(1, 2500) n`, database);
    const read: unknown[] = [];
    for await (const { answers } of store.statistics()) {
      if (read.length === 0) await server.ask(`INSERT INTO acre.statistics (dealer, day, kind, answers) VALUES ('d', '2026-05-13', 'shortlist', '{"n":0}')`, database);
      read.push(answers);
    }
    expect(read).toEqual(Array.from({ length: 2_500 }, (_, index) => ({ n: index + 1 })));
    for (let index = 0; index < 15; index++) for await (const { day } of store.statistics('d')) if (day) break;
    expect(await accept(store, 'a')).toBe('stored');
  });
});

test('an address belongs to the same person for both stores', async () => {
  const letter = fc.constantFrom(...'aB9.+-_');
  const local = fc.array(letter, { minLength: 1, maxLength: 8 }).map((letters) => letters.join(''));
  await fc.assert(fc.asyncProperty(fc.array(fc.tuple(local, local), { minLength: 1, maxLength: 40 }), async (pairs) => {
    const addresses = pairs.map(([one, other]) => `${one}@${other}.Example`);
    const found = await server.ask<{ person: string }>(`SELECT acre.person_of(each) AS person FROM unnest(ARRAY[${addresses.map((each) => `'${each}'`).join(', ')}]) WITH ORDINALITY AS t (each, n) ORDER BY n`, database);
    expect(found.map(({ person }) => person)).toEqual(addresses.map(personOf));
  }), { numRuns: 15 });
});

describe('a database that won’t do is refused in one line that tells what to do, and nothing of the password', () => {
  const refused = async (address: string) => {
    const error = await openPostgres({ address }).then(() => new Error('opened'), (thrown: Error) => thrown);
    expect(error.name).toBe('StoreUnusable');
    for (let each: unknown = error; each instanceof Error; each = each.cause) expect(`${each.message} ${each.stack}`).not.toMatch(/not-to-be-told|wrong-word/);
    return error.message;
  };
  const address = () => server.address(database);

  test('where it can’t be reached, or not by this user', async () => {
    expect(await refused(server.address('nowhere'))).toMatch(/3D000.*no such database/);
    expect(await refused(address().replace('not-to-be-told', 'wrong-word'))).toMatch(/28P01.*user and password/);
    expect(await refused(address().replace(`:${server.port}`, ':1'))).toMatch(/ECONNREFUSED.*see that it runs/);
    await server.ask('CREATE ROLE guest LOGIN PASSWORD \'not-to-be-told\'');
    expect(await refused((await (async () => {
      const empty = await server.database();
      return server.address(empty);
    })()).replace('owner:', 'guest:'))).toMatch(/42501.*may not make tables/);
  });

  test('where a newer release wrote it, another program has its place, or letters are encoded otherwise', async () => {
    await server.ask(`UPDATE acre.about SET value = '99' WHERE name = 'version'`, database);
    expect(await refused(address())).toMatch(/newer release \(version 99/);
    await server.ask('DROP TABLE acre.about', database);
    expect(await refused(address())).toMatch(/belongs to another program/);
    await server.ask('CREATE DATABASE latin ENCODING \'LATIN1\' TEMPLATE template0');
    expect(await refused(server.address('latin'))).toMatch(/LATIN1.*UTF8/);
  });
});

test('tables are made once, however many relays start at once, and a later step follows the first', async () => {
  const empty = await server.database();
  const stores = await Promise.all(Array.from({ length: 5 }, () => openPostgres({ address: server.address(empty) })));
  expect(await accept(stores[0]!, 'a')).toBe('stored');
  await Promise.all(stores.map((store) => store.close()));
  const connections = new Connections({ address: server.address(empty), name: 'test' });
  await Promise.all(Array.from({ length: 3 }, () => migrate(connections, [...migrations, 'ALTER TABLE acre.requests ADD COLUMN later text'])));
  expect(await connections.read((link) => link.rows('SELECT later FROM acre.requests'))).toEqual([{ later: null }]);
  await expect(migrate(connections, [...migrations, 'x', 'broken'])).rejects.toThrow();
  expect(await connections.read((link) => link.rows(`SELECT value FROM acre.about WHERE name = 'version'`))).toEqual([{ value: '2' }]);
  await connections.close();
});

