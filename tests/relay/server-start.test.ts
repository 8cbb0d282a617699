import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { second } from '../../src/relay/clock.ts';
import { handToRelay, socketAt } from '../../src/relay/control/socket.ts';
import { logTo } from '../../src/relay/log.ts';
import type { Sender } from '../../src/relay/sender/sender.ts';
import { doTask, newDevice, rotate, serve, type World } from '../../src/relay/run.ts';
import { readSettings, type Settings } from '../../src/relay/settings/read-settings.ts';
import { startRelay } from '../../src/relay/start.ts';
import { paths } from '../../src/request/names.ts';
import { demoCatalogue } from '../cli/fake-io.ts';
import { aDealer, aRelay, browserHeaders, requestTo, settingsWith } from './a-relay.ts';

const folder = mkdtempSync(join(tmpdir(), 'acre-start-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
writeFileSync(join(folder, 'catalogue.json'), demoCatalogue);
const settingsFile = join(folder, 'settings.json');
writeFileSync(settingsFile, JSON.stringify(settingsWith(aDealer)));
const envFor = <M extends Record<string, string>>(more: M = {} as M) => ({ ACRE_DATA: mkdtempSync(join(folder, 'd-')), ACRE_LISTEN: '127.0.0.1:0', ACRE_LOG: 'silent', ACRE_FREE_LEAST: '1', ...more });

const quiet = logTo('silent');
/** A sender that notes what it is told. */
function noting(): { sender: Sender; told: string[]; finish: () => void } {
  const told: string[] = [];
  let finish = () => {};
  const finished = new Promise<void>((resolve) => { finish = resolve; });
  return {
    told, finish,
    sender: { start: async () => void told.push('start'), wake: () => void told.push('wake'), stop: async (within) => { told.push(`stop ${within}`); await finished; } },
  };
}

const send = (address: string, change = {}) => fetch(`${address}${paths.shortlists.slice(1)}`, {
  method: 'POST', headers: { ...browserHeaders, 'idempotency-key': randomUUID() }, body: JSON.stringify({ ...requestTo('ann@buyer.example'), ...change }),
});

describe('a relay', () => {
  test('starts on what it finds, takes requests, and keeps the catalogue its dealer has put up', async () => {
    const settings = await readSettings(envFor({ ACRE_METRICS: '127.0.0.1:0' }), settingsFile);
    const { sender, told, finish } = noting();
    let store: { catalogueOf(dealer: string, version: undefined): Promise<unknown> } | undefined;
    const relay = await startRelay(settings, quiet, (needs) => {
      ({ store } = needs);
      return sender;
    });
    expect(relay.warnings).toEqual([]);
    expect((await send(relay.address)).status).toBe(202);
    expect(told).toEqual(['start', 'wake']);
    expect(await store!.catalogueOf(aDealer.id, undefined)).toMatchObject({ dealer: aDealer.id, asOf: '2026-11-20', text: demoCatalogue });
    const figures = await (await fetch(`http://127.0.0.1:${relay.metricsPort}/metrics`)).text();
    expect(figures).toMatch(/^acre_messages\{state="queued"\} 2$/m);
    expect(figures).toMatch(/^acre_store_durable 1$/m);
    expect(statSync(socketAt(settings.data)).mode & 0o777).toBe(0o600);
    finish();
    await relay.stop();
    expect(await relay.ended).toBe(true);
  });

  test('that is stopped claims nothing more, answers 503, lets what is on its way end, and only then lets go of its store', async () => {
    const settings = await readSettings(envFor(), settingsFile);
    const { sender, told, finish } = noting();
    const relay = await startRelay(settings, quiet, () => sender);
    const stopping = relay.stop();
    expect(told).toEqual(['start', `stop ${25 * second}`]);
    const answer = await send(relay.address).catch(() => undefined);
    expect([503, undefined]).toContain(answer?.status);
    await expect(startRelay(settings, quiet, () => sender)).rejects.toThrow(/Another relay works/);
    finish();
    await stopping;
    const next = await startRelay(settings, quiet, () => sender);
    await next.stop();
  });

  test('tells of a catalogue it can’t use, and takes requests all the same', async () => {
    const broken = join(folder, 'broken.json');
    writeFileSync(broken, JSON.stringify(settingsWith({ ...aDealer, catalogue: 'nowhere.json' }, { ...aDealer, id: 'inward', catalogue: 'https://127.0.0.1/catalogue.json' })));
    const { sender, finish } = noting();
    const relay = await startRelay(await readSettings(envFor(), broken), quiet, () => sender);
    expect(relay.warnings).toEqual([expect.stringContaining('ENOENT'), expect.stringContaining('ENOTOPEN')]);
    expect((await send(relay.address)).status).toBe(202);
    finish();
    await relay.stop();
  });

  test('ends by one signal in order, and by a second at once', async () => {
    const exits: number[] = [];
    const said: string[] = [];
    let signal = () => {};
    const { sender, finish, told } = noting();
    const world: World = { env: envFor(), out: () => {}, err: (line) => void said.push(line), exit: (code) => void exits.push(code), onStop: (stop) => { signal = stop; return () => { signal = () => {}; }; } };
    const ending = serve(settingsFile, () => sender, world);
    await expect.poll(() => said.length).toBe(2);
    signal();
    await expect.poll(() => told.at(-1)).toMatch(/^stop/);
    signal();
    expect(exits).toEqual([1]);
    finish();
    expect(await ending).toBe(0);
  });

  test('fault 30: a second one on the same folder says so and ends, and the first goes on', async () => {
    const settings = await readSettings(envFor(), settingsFile);
    const { sender, finish } = noting();
    const first = await startRelay(settings, quiet, () => sender);
    await expect(startRelay(settings, quiet, () => sender)).rejects.toThrow(/Another relay works on .*relay\.sqlite/);
    expect((await send(first.address)).status).toBe(202);
    expect(await handToRelay(settings.data, { task: 'held' })).toBeDefined();
    finish();
    await first.stop();
  });

  test.each([
    ['cut off', (whole: Buffer) => whole.subarray(0, 5_000)], ['no database', () => Buffer.from('not a database at all, whatever it is called')], ['empty', () => Buffer.alloc(0)],
  ])('fault 29: a store that is %s is set aside, and one line tells what to do', async (_what, damaged) => {
    const env = envFor();
    const settings = await readSettings(env, settingsFile);
    const { sender, finish } = noting();
    finish();
    await (await startRelay(settings, quiet, () => sender)).stop();
    const file = join(settings.data, 'relay.sqlite');
    writeFileSync(file, damaged(readFileSync(file)));
    const said: string[] = [];
    expect(await serve(settingsFile, () => sender, { env, out: () => {}, err: (line) => void said.push(line), exit: () => {}, onStop: () => () => {} })).toBe(1);
    expect(said).toEqual([expect.stringMatching(/relay\.sqlite is damaged and was set aside.*backup/)]);
    expect(readdirSync(settings.data).filter((name) => name.startsWith('relay.sqlite.damaged'))).not.toEqual([]);
  });

  test('whose place is taken says so in a line, and leaves nothing open', async () => {
    const { sender, finish } = noting();
    const first = await startRelay(await readSettings(envFor(), settingsFile), quiet, () => sender);
    const said: string[] = [];
    const env = envFor({ ACRE_LISTEN: `127.0.0.1:${first.port}` });
    const world: World = { env, out: () => {}, err: (line) => void said.push(line), exit: () => {}, onStop: () => () => {} };
    expect(await serve(settingsFile, () => sender, world)).toBe(1);
    expect(said).toEqual([expect.stringMatching(/^ACRE_LISTEN: .*EADDRINUSE/)]);
    finish();
    await first.stop();
    const again = await startRelay(await readSettings({ ...env, ACRE_LISTEN: '127.0.0.1:0' }, settingsFile), quiet, () => sender);
    await again.stop();
  });
});

test('fault 27: with too little room on the disk it is 503 before anything is taken, links and looks go on, and room brings it back', async () => {
  let free = 10_000_000;
  const relay = await aRelay({ freeLeast: 5_000_000, store: (real) => ({ ...real, health: async () => ({ ...await real.health(), freeBytes: free }) }) });
  const post = async () => (await relay.app.inject({ method: 'POST', url: paths.shortlists, headers: { ...browserHeaders, 'idempotency-key': randomUUID() }, payload: JSON.stringify(requestTo('ann@buyer.example')) })).statusCode;
  free = 1_000_000;
  await relay.guard.look(0);
  expect(await post()).toBe(503);
  expect((await relay.app.inject({ url: paths.health })).statusCode).toBe(200);
  expect((await relay.app.inject({ method: 'POST', url: '/u/unknown' })).statusCode).toBe(404);
  expect((await relay.store.depth(relay.clock.now())).byState.queued).toBe(0);
  free = 10_000_000;
  await relay.guard.look(0);
  expect(await post()).toBe(202);
  await relay.end();
});

test('what isn’t known of a disk is left out of the figures, and no 0 calls anybody', async () => {
  let free: number | undefined = 5;
  const relay = await aRelay({ store: (real) => ({ ...real, health: async () => {
    const { freeBytes, ...rest } = await real.health();
    return { ...rest, ...(free !== undefined && freeBytes !== undefined && { freeBytes: free }) };
  } }) });
  const room = async () => (await relay.metrics.registry.metrics()).split('\n').filter((line) => line.startsWith('acre_disk_free_bytes'));
  expect(await room()).toEqual(['acre_disk_free_bytes 5']);
  free = undefined;
  expect(await room()).toEqual([]);
  free = 0;
  expect(await room()).toEqual(['acre_disk_free_bytes 0']);
  await relay.end();
});

test('secrets are where ACRE_KEYS says, made there, used from there and replaced there', async () => {
  const elsewhere = mkdtempSync(join(folder, 'k-'));
  const env = envFor({ ACRE_KEYS: join(elsewhere, 'relay-keys.json') });
  const settings = await readSettings(env, settingsFile);
  const { sender, finish } = noting();
  finish();
  await (await startRelay(settings, quiet, () => sender)).stop();
  expect(readdirSync(settings.data)).not.toContain('keys.json');
  const made = readFileSync(env.ACRE_KEYS, 'utf8');
  expect(await rotate(settingsFile, { env, out: () => {}, err: () => {}, exit: () => {}, onStop: () => () => {} })).toBe(0);
  expect(readFileSync(env.ACRE_KEYS, 'utf8')).not.toBe(made);
  await (await startRelay(settings, quiet, () => sender)).stop();
  rmSync(env.ACRE_KEYS);
  await expect(startRelay(settings, quiet, () => sender)).rejects.toThrow(/relay-keys\.json: the secrets this store was filled with/);
});

describe('what an administrator has done', () => {
  const tell = async (job: (world: World) => Promise<number>, env: Record<string, string>) => {
    const [out, err]: [string[], string[]] = [[], []];
    const code = await job({ env, out: (line) => void out.push(line), err: (line) => void err.push(line), exit: () => {}, onStop: () => () => {} });
    return { code, out, err };
  };

  test('is done by the relay that runs, or on the store where none does', async () => {
    const env = envFor();
    const settings: Settings = await readSettings(env, settingsFile);
    const { sender, finish, told } = noting();
    const relay = await startRelay(settings, quiet, () => sender);
    await send(relay.address, { leftEmpty: 'x', ticket: 'a.b.c.0.d' });
    const task = (asked: Parameters<typeof doTask>[1]) => tell((world) => doTask(settingsFile, asked, world), env);
    const held = await task({ task: 'held' });
    const exported = await task({ task: 'export', address: 'ann@buyer.example' });
    expect(JSON.parse(exported.out.join('\n'))).toEqual([expect.objectContaining({ dealer: aDealer.id, document: expect.objectContaining({ address: 'ann@buyer.example' }) })]);
    expect(await task({ task: 'stop', address: 'bob@buyer.example' })).toMatchObject({ code: 0 });
    expect((await task({ task: 'again', messages: 'all' })).out).toEqual(['0 mails queued again']);
    expect(await task({ task: 'undelivered' })).toEqual({ code: 0, out: [], err: [] });
    expect(told).toContain('wake');
    expect(await handToRelay(settings.data, { task: 'held' })).toBeDefined();
    finish();
    await relay.stop();

    expect(await handToRelay(settings.data, { task: 'held' })).toBeUndefined();
    expect(await task({ task: 'held' })).toEqual(held);
    expect((await task({ task: 'export', address: 'bob@buyer.example' })).out.join('')).toContain('"why": "stop"');
    expect((await task({ task: 'erase', address: 'ann@buyer.example' })).out).toEqual([expect.stringContaining('1 request erased')]);
    const left = (await task({ task: 'export', address: 'ann@buyer.example' })).out.join('\n');
    expect(JSON.parse(left)).toEqual([expect.objectContaining({ document: null })]);
    expect(left).not.toMatch(/ann|O’Neill|slope/);
    expect(await tell((world) => rotate(settingsFile, world), env)).toMatchObject({ code: 0 });
  });

  test('a token for a counter is shown once, and what belongs into the settings is its hash', async () => {
    const { code, out: [token], err } = await tell((world) => newDevice(settingsFile, aDealer.id, world), envFor());
    expect([code, token!.length]).toEqual([0, 43]);
    const device = JSON.parse(err.at(-1)!) as { id: string; hash: string };
    expect(JSON.stringify(device)).not.toContain(token);
    const withDevice = join(folder, 'device.json');
    writeFileSync(withDevice, JSON.stringify(settingsWith({ ...aDealer, devices: [device] })));
    expect((await tell((world) => newDevice(withDevice, aDealer.id, world), envFor())).err.at(-1)).toContain('counter-2');
    expect(await tell((world) => newDevice(settingsFile, 'nobody', world), envFor())).toMatchObject({ code: 1, err: [expect.stringContaining(aDealer.id)] });
  });

  test('with settings that are wrong tells all of it, and does nothing', async () => {
    expect(await tell((world) => doTask('/nowhere', { task: 'held' }, world), envFor({ ACRE_QUEUE_MOST: 'many' }))).toMatchObject({ code: 1, out: [], err: [expect.stringContaining('ACRE_QUEUE_MOST'), expect.stringContaining('/nowhere')] });
  });
});

test('fault 48: of a folder of pages nothing is served but what lies in it', async () => {
  const pages = join(folder, 'pages');
  mkdirSync(join(pages, 'sub'), { recursive: true });
  writeFileSync(join(pages, 'index.html'), '<!doctype html>here');
  writeFileSync(join(pages, 'sub', 'wizard.js'), 'export {};');
  writeFileSync(join(pages, '.secret.json'), '{}');
  writeFileSync(join(folder, 'outside.json'), '{"canary":1}');
  symlinkSync(join(folder, 'outside.json'), join(pages, 'link.json'));
  const relay = await aRelay({ pages });
  const get = (url: string, headers = {}) => relay.app.inject({ url, headers });
  const { statusCode, body, headers } = await get('/');
  expect([statusCode, body, headers['content-type']]).toEqual([200, '<!doctype html>here', 'text/html; charset=utf-8']);
  expect(headers['content-security-policy']).toContain(`frame-ancestors 'self' https://relay.example ${aDealer.origins[0]}`);
  expect((await get('/sub/wizard.js')).statusCode).toBe(200);
  expect((await get('/', { 'if-none-match': headers.etag })).statusCode).toBe(304);
  for (const url of ['/.secret.json', '/link.json', '/../outside.json', '/%2e%2e/outside.json', '/..%2foutside.json', '/sub/../../outside.json', '/sub', '//outside.json', '/keys.json', '/index.html%00.js']) {
    const response = await get(url);
    expect([url, response.statusCode >= 400 && response.statusCode < 500]).toEqual([url, true]);
    expect(response.body).not.toMatch(/canary|outside/);
  }
  await relay.end();
});
