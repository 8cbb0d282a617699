import { randomUUID } from 'node:crypto';
import { copyFileSync, existsSync, mkdtempSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { clock } from '../../src/relay/clock.ts';
import { logTo } from '../../src/relay/log.ts';
import { markOf, openStore } from '../../src/relay/open-store.ts';
import { doTask, move, serve, type World } from '../../src/relay/run.ts';
import { createSender } from '../../src/relay/sender/sender.ts';
import { makeKeys } from '../../src/relay/settings/keys.ts';
import { readSettings } from '../../src/relay/settings/read-settings.ts';
import { startRelay, type Running } from '../../src/relay/start.ts';
import { moveStore } from '../../src/relay/store/move.ts';
import { openPostgres } from '../../src/relay/store/postgres/postgres-store.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import type { Store } from '../../src/relay/store/store.ts';
import { paths } from '../../src/request/names.ts';
import { postgresServer, type TestServer } from '../support/postgres.ts';
import { demoCatalogue } from '../cli/fake-io.ts';
import { aDealer, browserHeaders, requestTo, settingsWith } from './a-relay.ts';
import { newRequest, noon, take } from './store-requests.ts';

const minute = 60_000;
const day = 86_400_000;
const never = 3;

let server: TestServer;
let folder: string;
let file: string;
let database: string;
beforeAll(async () => {
  server = await postgresServer();
}, 60_000);
afterAll(() => server?.end());
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'acre-move-'));
  file = join(folder, 'relay.sqlite');
  database = await server.database();
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const secrets = 'mark of the secrets';
const moving = () => moveStore({ file, address: server.address(database), secrets }, noon + 10 * minute);
const opened = () => openPostgres({ address: server.address(database) });

/** A store with something of everything. */
async function filled(): Promise<void> {
  const store = openSqlite({ file, ballast: 0 });
  const accept = (wanted: Parameters<typeof newRequest>[0], now = noon) => store.accept(newRequest({ recipient: `hash of ${wanted.name}`, ...wanted }), [take('shared', 30, day)], now, now - 10 * minute);
  const claimed = async (now = noon) => (await store.claim(1, now, never))[0]!;
  await accept({ name: 'sent', roles: ['buyer', 'dealer'], statistics: true });
  for (const claim of await store.claim(2, noon, never)) await store.settle(claim, { state: 'sent', reply: '250 kept as 1\0' }, noon);
  await accept({ name: 'held' });
  await store.settle(await claimed(), { state: 'held', reason: 'can’t be made' }, noon);
  await accept({ name: 'unsure' });
  await store.settle(await claimed(), { state: 'unsure', at: noon + 15 * minute, reason: 'no answer' }, noon);
  await accept({ name: 'later' });
  await store.settle(await claimed(), { state: 'queued', at: noon + 30 * minute, reason: 'busy', reply: '451' }, noon);
  await accept({ name: 'killed' });
  await claimed();
  await accept({ name: 'question', state: 'unconfirmed' });
  await accept({ name: 'stopped', statistics: true });
  await store.stop('token-stopped-buyer', 'stop', noon);
  await store.suppress('bounced', { dealer: 'demo-lot' }, 'bounce', noon, noon + day);
  await accept({ name: 'erased', address: 'gone@buyer.example', recipient: 'hash of gone' });
  await store.erase('hash of gone', 'gone@buyer.example', noon);
  await accept({ name: 'waits' });
  await store.keepCatalogue({ dealer: 'demo-lot', hash: 'h1', version: 'v1', asOf: '2026-05-12', text: '{"ü":"𝄞"}' }, noon);
  await store.keepCatalogue({ dealer: 'demo-lot', hash: 'h2', version: undefined, asOf: '2026-05-13', text: '{}' }, noon + 1);
  await store.spend('ticket', noon + day, noon);
  await store.close();
}

/** All that can be asked of a store. */
async function told(store: Store) {
  const people = ['sent', 'held', 'unsure', 'later', 'killed', 'question', 'stopped', 'waits'].map((name) => `hash of ${name}`);
  const statistics: unknown[] = [];
  for await (const each of store.statistics()) statistics.push(each);
  return JSON.parse(JSON.stringify({
    depth: await store.depth(noon + 20 * minute), due: await store.nextDue(), held: await store.held(), statistics,
    about: await Promise.all(people.map((person) => store.exportOf(person, 'nobody@nowhere.example'))),
    erased: await store.exportOf('hash of gone', 'gone@buyer.example'),
    stopped: await Promise.all([...people, 'bounced'].map((person) => store.isStopped(person, 'demo-lot', noon))),
    catalogues: [await store.catalogueOf('demo-lot', 'v1'), await store.catalogueOf('demo-lot', undefined)],
  }).replaceAll('\\u0000', '')) as unknown;
}

describe('a store that is moved', () => {
  test('is the same to whoever asks it: mails in their states, keys, limits, the stop list, catalogues, statistics', async () => {
    await filled();
    copyFileSync(file, join(folder, 'copy.sqlite'));
    const counts = await moving();
    expect(counts).toMatchObject({ requests: 9, keys: 9, messages: 10, stops: 2, buckets: 1, spent: 1, catalogues: 2, statistics: 2 });
    const old = openSqlite({ file: join(folder, 'copy.sqlite'), ballast: 0 });
    // What a relay does first when it starts on a file.
    expect(await old.release(noon + 10 * minute)).toBe(1);
    const store = await opened();
    expect(await told(store)).toEqual(await told(old));

    for (const each of [old, store]) {
      expect(await each.accept(newRequest({ name: 'sent' }), [], noon, noon)).toBe('repeated');
      expect(await each.accept(newRequest({ name: 'erased' }), [], noon, noon)).toBe('repeated');
      expect(await each.accept({ ...newRequest({ name: 'held' }), fingerprint: 'other' }, [], noon, noon)).toBe('other-body');
      expect(await each.accept(newRequest({ name: 'new' }), Array.from({ length: 22 }, () => take('shared', 30, 1e12)), noon, noon)).toMatchObject({ limited: true });
      expect(await each.accept(newRequest({ name: 'new' }), Array.from({ length: 21 }, () => take('shared', 30, 1e12)), noon, noon)).toBe('stored');
      expect(await each.spend('ticket', noon + day, noon)).toBe(false);
      expect(await each.confirm('token-question-buyer', noon + 20 * minute)).toBe(true);
      expect(await each.sendAgain('all', noon + 20 * minute)).toBe(1);
    }
    const claims = (await Promise.all([old, store].map((each) => each.claim(99, noon + 60 * minute, never)))).map((all) => all.sort((a, b) => (a.request < b.request ? -1 : 1)));
    expect(claims[0]!.map(({ request }) => request)).toEqual(['held', 'killed', 'later', 'new', 'question', 'unsure', 'waits']);
    expect(claims[1]!.map(({ message: _message, ...claim }) => claim)).toEqual(claims[0]!.map(({ message: _message, ...claim }) => claim));
    await Promise.all([old.close(), store.close()]);
  });

  test('is set aside and not deleted, and nothing begins on an empty one in its place', async () => {
    await filled();
    await moving();
    expect(readdirSync(folder).filter((name) => /^relay\.sqlite(?!\.lock|.*-(?:wal|shm|journal)$)/.test(name))).toEqual(['relay.sqlite.moved-2026-05-12T12-10-00.000Z']);
    expect(() => openSqlite({ file })).toThrow(/was moved to a database.*ACRE_DATABASE/);
    await expect(moving()).rejects.toThrow(/moved already/);
  });

  test('is refused by a database that has something in it, or other secrets, and goes on as it was', async () => {
    await filled();
    const store = await opened();
    await store.suppress('someone', { all: true }, 'stop', noon);
    await expect(moving()).rejects.toThrow(/isn’t empty \(stops: 1\)/);
    await server.ask('DELETE FROM acre.stops', database);
    await store.filledWith('others');
    await store.close();
    await expect(moving()).rejects.toThrow(/filled with other secrets/);
    await expect(moveStore({ file, address: server.address('nowhere'), secrets }, noon)).rejects.toThrow(/no such database/);
    const old = openSqlite({ file, ballast: 0 });
    expect((await old.depth(noon)).byState).toMatchObject({ sent: 2, sending: 1, queued: 2 });
    await old.close();
  });

  test('is not moved while a relay works on it', async () => {
    await filled();
    const old = openSqlite({ file, ballast: 0 });
    await expect(moving()).rejects.toThrow(/Another relay works on/);
    await old.close();
    expect(await server.ask('SELECT 1 FROM acre.keys', database)).toEqual([]);
  });

  test('that was ended at its last word is moved by moving it again, and only once', async () => {
    await filled();
    const before = join(folder, 'whole.sqlite');
    copyFileSync(file, before);
    await moving();
    const aside = readdirSync(folder).find((name) => name.includes('.moved-') && !name.endsWith('lock'))!;
    const [{ value: id }] = await server.ask<{ value: string }>(`SELECT value FROM acre.about WHERE name = 'moved'`, database) as [{ value: string }];
    // Written, and the process gone before the file got its new name; a relay has begun on the database meanwhile.
    renameSync(join(folder, aside), `${file}.moving-${id}`);
    expect(() => openSqlite({ file })).toThrow(/half-way.*relay move/);
    const store = await opened();
    await store.accept(newRequest({ name: 'after' }), [], noon, noon);
    await moving();
    expect((await store.depth(noon)).byState).toMatchObject({ sent: 2, queued: 4 });
    await store.close();
    expect(existsSync(`${file}.moving-${id}`)).toBe(false);
  });

  test('that doesn’t come in whole isn’t moved at all', async () => {
    await filled();
    await (await opened()).close();
    // What comes in is one less than what was sent.
    await server.ask(`CREATE FUNCTION acre.lose() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN IF NEW.id = 'held' THEN RETURN NULL; END IF; RETURN NEW; END $$`, database);
    await server.ask('CREATE TRIGGER lose BEFORE INSERT ON acre.keys FOR EACH ROW EXECUTE FUNCTION acre.lose()', database);
    await expect(moving()).rejects.toThrow(/nothing was moved/);
    expect(await server.ask('SELECT (SELECT count(*) FROM acre.requests)::int + (SELECT count(*) FROM acre.messages)::int AS rows', database)).toEqual([{ rows: 0 }]);
    await openSqlite({ file, ballast: 0 }).close();
  });

  test('of many rows goes over in pieces', async () => {
    await filled();
    const db = new Database(file);
    const many = 12_000;
    db.prepare(`WITH RECURSIVE n (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM n WHERE n < ${many}) INSERT INTO keys SELECT 'k' || n, '', n FROM n`).run();
    db.prepare(`WITH RECURSIVE n (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM n WHERE n < ${many}) INSERT INTO statistics (dealer, day, kind, answers) SELECT 'd', '2026-05-12', 'shortlist', '{}' FROM n`).run();
    db.close();
    expect(await moving()).toMatchObject({ keys: many + 9, statistics: many + 2 });
    const store = await opened();
    let count = 0;
    for await (const { dealer } of store.statistics()) count += dealer === '' ? 0 : 1;
    expect(count).toBe(many + 2);
    await store.close();
  });
});

describe('goal 27: a relay that is moved under load', () => {
  test('loses nothing it said yes to, and sends nothing twice', async () => {
    const settingsFile = join(folder, 'settings.json');
    writeFileSync(join(folder, 'catalogue.json'), demoCatalogue);
    const many = 100_000;
    writeFileSync(settingsFile, JSON.stringify(settingsWith({ ...aDealer, limits: { perHour: many, perDay: many } })));
    const env = { ACRE_DATA: join(folder, 'data'), ACRE_LISTEN: '127.0.0.1:0', ACRE_LOG: 'silent', ACRE_FREE_LEAST: '1', ACRE_MAILS_PER_DAY: String(many), ACRE_PROXIES: '127.0.0.1' };
    const onDatabase = { ...env, ACRE_DATABASE: server.address(database) };
    const sent: string[] = [];
    const started = async (its: Record<string, string>) => startRelay(await readSettings(its, settingsFile), logTo('silent'), (needs) => createSender({
      ...needs, metrics: { settled: () => {}, paused: () => {}, busy: () => {} },
      compose: async () => ({ fromName: 'D', subject: 'S', text: 'T' }),
      transport: { send: async ({ envelope }) => { sent.push(envelope.to); return { kind: 'sent', reply: '250' }; }, abort: () => {}, close: async () => {} },
    }));
    const said: string[] = [];
    const world = (its: Record<string, string>): World => ({ env: its, out: (line) => void said.push(line), err: (line) => void said.push(line), exit: () => {}, onStop: () => () => {} });

    let relay: Running | undefined = await started(env);
    const accepted = new Set<string>();
    const load = { isOver: false };
    let [count, again] = [0, 0];
    const client = async () => {
      while (!load.isOver) {
        count += 1;
        const address = `p${count}@buyer.example`;
        const init = { method: 'POST', headers: { ...browserHeaders, 'idempotency-key': randomUUID(), 'x-forwarded-for': `10.${count >> 16}.${(count >> 8) & 255}.${count & 255}` }, body: JSON.stringify(requestTo(address, { contact: undefined, consent: { mail: true, dealerCopy: false, statistics: true } })) };
        for (let taken = false; !taken && !load.isOver;) {
          taken = relay !== undefined && (await fetch(`${relay.address}${paths.shortlists.slice(1)}`, init).catch(() => undefined))?.status === 202;
          if (taken) accepted.add(address);
          else {
            again += 1;
            await new Promise((resolve) => { setTimeout(resolve, 10); });
          }
        }
      }
    };
    const clients = Array.from({ length: 8 }, client);
    await expect.poll(() => accepted.size, { timeout: 20_000 }).toBeGreaterThan(100);

    // The switch, as the administrator does it.
    const stopping = relay;
    await stopping.stop();
    relay = undefined;
    expect(await serve(settingsFile, () => { throw new Error('started'); }, world(onDatabase))).toBe(1);
    expect(said.splice(0).join()).toMatch(/relay\.sqlite holds a store: take it over with "acre-to-axle relay move"/);
    expect(await move(settingsFile, world(onDatabase))).toBe(0);
    expect(said.splice(0).join()).toMatch(/moved and counted: requests \d+/);
    const before = accepted.size;
    relay = await started(onDatabase);

    await expect.poll(() => accepted.size, { timeout: 20_000 }).toBeGreaterThan(before + 100);
    load.isOver = true;
    await Promise.all(clients);
    await expect.poll(async () => (await server.ask(`SELECT 1 FROM acre.messages WHERE state <> 'sent'`, database)).length, { timeout: 30_000 }).toBe(0);
    expect(again).toBeGreaterThan(0);
    expect([...accepted].filter((address) => !sent.includes(address))).toEqual([]);
    expect(sent).toHaveLength(new Set(sent).size);
    expect(await doTask(settingsFile, { task: 'held' }, world(onDatabase))).toBe(0);
    await relay.stop();
  }, 90_000);
});

describe('secrets of a database', () => {
  const at = (name: string) => ({ data: join(folder, name), database: server.address(database) });
  const hears = { onDue: () => {}, onBroken: () => {}, log: logTo('silent') };

  test('are made by the first relay, asked of the next, and held to', async () => {
    const first = await openStore(at('one'), clock, hears);
    await expect(openStore(at('two'), clock, hears)).rejects.toThrow(/two.keys\.json: put a copy there/);
    await makeKeys(join(folder, 'two', 'keys.json'), clock.now());
    await expect(openStore(at('two'), clock, hears)).rejects.toThrow(/not the secrets this database was filled with/);
    copyFileSync(join(folder, 'one', 'keys.json'), join(folder, 'two', 'keys.json'));
    const second = await openStore(at('two'), clock, hears);
    expect(markOf(second.keys)).toBe(markOf(first.keys));
    await Promise.all([first.store.close(), second.store.close()]);
  });

  test('a second relay on one data folder says so and ends', async () => {
    const settingsFile = join(folder, 'settings.json');
    writeFileSync(join(folder, 'catalogue.json'), demoCatalogue);
    writeFileSync(settingsFile, JSON.stringify(settingsWith(aDealer)));
    const settings = await readSettings({ ACRE_DATA: join(folder, 'one'), ACRE_LISTEN: '127.0.0.1:0', ACRE_DATABASE: server.address(database) }, settingsFile);
    const sender = () => ({ start: async () => {}, stop: async () => {}, wake: () => {} });
    const relay = await startRelay(settings, logTo('silent'), sender);
    await expect(startRelay(settings, logTo('silent'), sender)).rejects.toThrow(/Another relay works on/);
    await relay.stop();
    await (await startRelay(settings, logTo('silent'), sender)).stop();
  });
});
