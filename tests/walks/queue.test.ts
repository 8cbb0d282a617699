import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { crash, openDevice, serveQueuePage, type Device } from '../counter/queue-browser.ts';
import { StubRelay } from '../support/stub-relay.ts';

// The queue of a counter in a real browser, against a relay with a ledger: what was confirmed is there once, whatever happens.

let served: Awaited<ReturnType<typeof serveQueuePage>>;
let device: Device;
let relay: StubRelay;
/** Each test has an origin of its own, and so a storage of its own, in one browser. */
let origin: string;
let origins = 0;
beforeAll(async () => {
  served = await serveQueuePage();
  device = await openDevice();
});
afterAll(async () => {
  await device.close();
  await served.close();
});
beforeEach(async () => {
  relay = await StubRelay.start();
  origin = `http://till-${origins++}.localhost:${served.port}`;
});
afterEach(async () => {
  for (const page of device.context.pages().slice(1)) await page.close();
  await relay.goAway();
});

type Options = Parameters<typeof counter.open>[1];

/** A window with its queue opened. */
async function windowOf(options: Options = {}, prepare?: (page: Page) => Promise<unknown>): Promise<Page> {
  const page = await device.context.newPage();
  await prepare?.(page);
  await page.goto(origin);
  await opened(page, options);
  return page;
}

async function opened(page: Page, options: Options = {}) {
  await page.waitForFunction(() => 'counter' in globalThis);
  await page.evaluate(([address, given]) => counter.open(address, given), [relay.address, options] as const);
}

/** The first window of a device, set up while the relay is there. */
async function setUp(options: Options = {}, prepare?: (page: Page) => Promise<unknown>): Promise<Page> {
  const page = await windowOf(options, prepare);
  expect(await page.evaluate(() => counter.setUp())).toBe(true);
  return page;
}

/** Sets up, and cuts the relay off. */
async function offline(options: Options = {}, prepare?: (page: Page) => Promise<unknown>): Promise<Page> {
  const page = await setUp(options, prepare);
  await relay.goAway();
  await page.evaluate(() => counter.start());
  return page;
}

/** Keeps so many intakes. @returns their ids, in order */
async function put(page: Page, many: number): Promise<string[]> {
  const ids = Array.from({ length: many }, () => randomUUID());
  const kinds = await page.evaluate(async (all) => {
    const told: string[] = [];
    for (const id of all) told.push((await counter.put(id)).kind);
    return told;
  }, ids);
  expect(new Set(kinds)).toEqual(new Set(['saved']));
  return ids;
}

const start = (page: Page) => page.evaluate(() => counter.start());
const drained = (page: Page) => page.evaluate(() => counter.drained());
const status = (page: Page) => page.evaluate(() => counter.status());
const inLedger = () => relay.ledger.map(({ id }) => id);

test('500 intakes without a network; then it is back, with 10 % of answers 503 and one 422: 499 are taken once each in their order, one is with staff', async () => {
  const page = await offline();
  const ids = await put(page, 500);
  expect(await status(page)).toMatchObject({ count: 500, needsStaff: 0, trouble: { of: 'relay', why: 'unreachable' } });
  await page.reload();
  await opened(page, { leaps: true });
  const faulty = ids[123]!;
  // Every tenth, whichever it is; 7 apart from a multiple, so that it is no one intake's fate.
  relay.answer = ({ id, number }) => (number % 10 === 7 ? { refused: 'unavailable' } : id === faulty ? { refused: 'seal-broken' } : 'accept');
  await relay.comeBack();
  const since = Date.now();
  await start(page);
  await drained(page);
  expect(inLedger()).toEqual(ids.filter((id) => id !== faulty));
  expect(new Set(relay.ledger.map(({ token }) => token))).toEqual(new Set(['till-1']));
  expect(relay.heard.length).toBeGreaterThan(550);
  expect(await page.evaluate(() => counter.list())).toMatchObject([{ id: faulty, is: 'needs-staff', code: 'seal-broken' }]);
  const minutes = (Date.now() - since + await page.evaluate(() => counter.leapt())) / 60_000;
  expect(minutes).toBeLessThan(10);
}, 120_000);

describe('what was confirmed is there', () => {
  test('after a reload, a crash of the page and a new start of the browser, and is sent', async () => {
    let page = await offline();
    const ids = await put(page, 2);
    await page.reload();
    await opened(page);
    ids.push(...await put(page, 2));
    await crash(page);
    page = await windowOf();
    ids.push(...await put(page, 2));
    await device.restart();
    page = await windowOf();
    await start(page);
    expect((await status(page)).count).toBe(6);
    await relay.comeBack();
    await page.evaluate(() => counter.sendNow());
    await drained(page);
    expect(inLedger()).toEqual(ids);
  });

  test('when a page is killed between writing and the end of writing, it is there or was never confirmed', async () => {
    await offline();
    const [put, confirmed] = [[] as string[], new Set<string>()];
    await device.context.exposeFunction('confirm', (id: string) => { confirmed.add(id); });
    await device.context.exposeFunction('written', () => { write(); });
    let write = () => {};
    for (let kill = 0; kill < 12; kill += 1) {
      const page = await windowOf();
      const writing = new Promise<void>((done) => { write = done; });
      const ids = Array.from({ length: 6 }, () => randomUUID());
      put.push(...ids);
      await page.evaluate(([all, nth]) => {
        const told = globalThis as unknown as { confirm(id: string): void; written(): void };
        const add = IDBObjectStore.prototype.add;
        let calls = 0;
        IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...given: Parameters<typeof add>) {
          const asked = add.apply(this, given);
          calls += 1;
          if (calls === nth) told.written();
          return asked;
        };
        void (async () => {
          for (const id of all) if ((await counter.put(id)).kind === 'saved') told.confirm(id);
        })();
      }, [ids, 1 + kill % 6] as const);
      await writing;
      await crash(page);
    }
    expect(confirmed.size).toBeGreaterThan(0);
    expect(confirmed.size).toBeLessThan(put.length);
    await relay.comeBack();
    const page = await windowOf();
    await start(page);
    await drained(page);
    const kept = inLedger();
    expect(new Set(kept).size).toBe(kept.length);
    expect([...confirmed].filter((id) => !kept.includes(id))).toEqual([]);
    expect(kept.filter((id) => !put.includes(id))).toEqual([]);
  });

  test('two windows that send at once, where every third answer is lost: each is in the ledger once', async () => {
    const first = await offline({ leaps: true });
    const second = await windowOf({ leaps: true });
    const ids = [...await put(first, 20), ...await put(second, 20)];
    relay.answer = ({ number }) => (number % 3 === 2 ? 'lose-answer' : 'accept');
    await relay.comeBack();
    await Promise.all([start(first), start(second)]);
    await Promise.all([drained(first), drained(second)]);
    expect(inLedger()).toEqual(ids);
    expect(relay.heard.length).toBeGreaterThan(ids.length);
  });

  test('where the browser has no locks, two windows send the same, and the ledger shows each once', async () => {
    const withoutLocks = (page: Page) => page.addInitScript(() => { Object.defineProperty(navigator, 'locks', { value: undefined }); });
    const first = await offline({ leaps: true }, withoutLocks);
    const second = await windowOf({ leaps: true }, withoutLocks);
    const ids = await put(first, 20);
    await relay.comeBack();
    await Promise.all([start(first), start(second)]);
    await Promise.all([drained(first), drained(second)]);
    expect(inLedger().toSorted()).toEqual(ids.toSorted());
  });

  test('a window that is killed while it sends leaves the sending to the next', async () => {
    const page = await offline();
    const ids = await put(page, 3);
    let reached = () => {};
    const sending = new Promise<void>((done) => { reached = done; });
    relay.answer = () => { reached(); return 'silent'; };
    await relay.comeBack();
    await page.evaluate(() => { void counter.sendNow(); });
    await sending;
    await crash(page);
    relay.answer = () => 'accept';
    const next = await windowOf();
    await start(next);
    await drained(next);
    expect(inLedger()).toEqual(ids);
  });
});

describe('the network', () => {
  test('when it is back the browser says so, and the page sends by itself', async () => {
    const page = await setUp();
    await device.context.setOffline(true);
    await start(page);
    const ids = await put(page, 2);
    await page.evaluate(() => counter.sendNow());
    expect(inLedger()).toEqual([]);
    await device.context.setOffline(false);
    await drained(page);
    expect(inLedger()).toEqual(ids);
  });

  test('a page to log in with before everything takes nothing', async () => {
    const page = await setUp();
    const ids = await put(page, 1);
    relay.portal = true;
    await start(page);
    await page.evaluate(() => counter.sendNow());
    expect(await status(page)).toMatchObject({ count: 1, trouble: { of: 'relay', why: 'not-a-relay' } });
    relay.portal = false;
    await page.evaluate(() => counter.sendNow());
    await drained(page);
    expect(inLedger()).toEqual(ids);
  });

  test.each(['other-id', { status: 200, body: '<html>' }, { status: 403, body: 'blocked by the filter' }, 'cut'] as const)('an answer that is no relay’s own (%j) takes nothing off the queue', async (answer) => {
    const page = await setUp();
    const ids = await put(page, 1);
    relay.answer = () => answer;
    await start(page);
    await page.evaluate(() => counter.sendNow());
    expect(await status(page)).toMatchObject({ count: 1, needsStaff: 0 });
    relay.answer = () => 'accept';
    await page.evaluate(() => counter.sendNow());
    await drained(page);
    expect(inLedger()).toEqual(ids);
  });
});

test('what was sealed to the relay’s former key is taken; once that is forgotten it goes to staff, and into a file', async () => {
  const page = await offline();
  const [before, late] = [await put(page, 2), randomUUID()];
  await relay.rotate();
  await relay.comeBack();
  await page.evaluate(() => counter.sendNow());
  await drained(page);
  expect(inLedger()).toEqual(before);

  await relay.goAway();
  await page.evaluate((id) => counter.put(id), late);
  await relay.rotate();
  relay.forgetOldKeys();
  await relay.comeBack();
  await page.evaluate(() => counter.sendNow());
  await drained(page);
  expect(await page.evaluate(() => counter.list())).toMatchObject([{ id: late, is: 'needs-staff', code: 'seal-key' }]);
  expect((await page.evaluate(() => counter.toFile())).text).toContain(late);
  expect(await page.evaluate(() => counter.setUp())).toBe(true);
  const [next] = await put(page, 1);
  await page.evaluate(() => counter.sendNow());
  await drained(page);
  expect(inLedger()).toEqual([...before, next]);
});

test('where the room runs out it isn’t confirmed; the sealed intake is at hand and goes in once there is room', async () => {
  const session = await device.context.newCDPSession(device.context.pages()[0]!);
  const quota = (quotaSize?: number) => session.send('Storage.overrideQuotaForOrigin', { origin, ...(quotaSize !== undefined && { quotaSize }) });
  await quota(60_000);
  const page = await offline();
  const ids: string[] = [];
  const putOne = async () => {
    ids.push(randomUUID());
    return page.evaluate((id) => counter.put(id), ids.at(-1)!);
  };
  let outcome = await putOne();
  while (outcome.kind === 'saved' && ids.length < 200) outcome = await putOne();
  if (outcome.kind !== 'not-saved') throw new Error(outcome.kind);
  expect(outcome.why).toBe('full');
  expect(await status(page)).toMatchObject({ count: ids.length - 1, trouble: { of: 'storage', why: 'full' } });
  await quota();
  expect(await page.evaluate((waiting) => counter.putAgain(waiting), outcome.waiting)).toMatchObject({ kind: 'saved' });
  expect(await putOne()).toMatchObject({ kind: 'saved' });
  await relay.comeBack();
  await page.evaluate(() => counter.sendNow());
  await drained(page);
  expect(inLedger()).toEqual(ids);
});

test('a window of an older release that holds the database is told to be in the way; nothing is confirmed before it is closed', async () => {
  const old = await setUp();
  await old.evaluate(() => counter.hold());
  const page = await windowOf({ version: 2 });
  expect(await start(page)).toBe('blocked');
  const id = randomUUID();
  expect(await page.evaluate((each) => counter.put(each), id)).toEqual({ kind: 'no-key', why: 'blocked' });
  await old.close();
  await expect.poll(() => start(page)).toBe('started');
  expect(await page.evaluate((each) => counter.put(each), id)).toMatchObject({ kind: 'saved' });
  await drained(page);
  expect(inLedger()).toEqual([id]);
});

/** What a running browser has deleted meanwhile holds nothing. */
function unlessGone<T>(read: () => T, gone: T): T {
  try {
    return read();
  } catch (trouble) {
    if ((trouble as NodeJS.ErrnoException).code === 'ENOENT') return gone;
    throw trouble;
  }
}

/** Every file below a folder in which a text stands, in either of the encodings a browser writes. */
function filesWith(folder: string, text: string): string[] {
  const forms = [Buffer.from(text, 'utf8'), Buffer.from(text, 'utf16le')];
  return unlessGone(() => readdirSync(folder, { withFileTypes: true }), []).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesWith(path, text);
    if (!entry.isFile()) return [];
    const bytes = unlessGone(() => readFileSync(path), Buffer.alloc(0));
    return forms.some((form) => bytes.includes(form)) ? [path] : [];
  });
}

test('nothing of a buyer can be found in the folder of the browser, while it runs and after; what is kept plainly would be', async () => {
  const page = await offline();
  for (let i = 0; i < 5; i += 1) await page.evaluate((id) => counter.put(id, 'zephyrina'), randomUUID());
  expect(await page.evaluate(() => counter.park('zephyrina, blue truck'))).toMatchObject({ kind: 'parked' });
  expect(filesWith(device.profile, 'zephyrina')).toEqual([]);
  await device.restart();
  expect(filesWith(device.profile, 'zephyrina')).toEqual([]);

  const next = await windowOf();
  expect((await next.evaluate(() => counter.unparked()))!.map(({ label }) => label)).toEqual(['zephyrina, blue truck']);
  expect(filesWith(device.profile, 'zephyrina')).toEqual([]);
  await next.evaluate(() => counter.keepPlain('zephyrina'));
  expect(filesWith(device.profile, 'zephyrina')).not.toEqual([]);
});
