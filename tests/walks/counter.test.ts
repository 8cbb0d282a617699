import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import type { AcreCounter } from '../../src/counter/page.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { catalogueText, counterSite, type CounterSite } from './counter-site.ts';

declare const axe: { run(root: Element | Document, options: object): Promise<AxeResult> };

let browser: Browser;
beforeAll(async () => { browser = await chromium.launch({ ...(await findChromium()), ignoreDefaultArgs: ['--disable-back-forward-cache'] }); });
afterAll(() => browser.close());

let site: CounterSite;
beforeEach(async () => { site = await counterSite(); });
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
  await site.close();
});

interface Stand {
  page: Page;
  /** Errors, warnings, and what breaches the policy. */
  complaints: string[];
}

const atStart = (page: Page) => page.locator('[data-begin]').waitFor();
/** Whether the page's files are on the device, and it is they that are shown. */
const kept = (page: Page) => expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state), { timeout: 15_000 }).toBe('activated');

async function watched(page: Page): Promise<Stand> {
  const complaints: string[] = [];
  page.on('console', (message) => { if (message.type() !== 'log') complaints.push(message.text()); });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.addInitScript(() => document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => console.error(`policy: ${violatedDirective} ${blockedURI}`)));
  return { page, complaints };
}

async function stand(options: BrowserContextOptions = {}): Promise<Stand> {
  const opened = await watched(await (await browser.newContext({ locale: 'en-US', ...options })).newPage());
  await opened.page.goto(`${site.address}counter/`);
  await atStart(opened.page);
  return opened;
}

/** What a browser itself says of a request that failed is no complaint of ours. */
const ofOurs = (complaints: readonly string[]) => complaints.filter((each) => !each.startsWith('Failed to load resource'));

const part = (page: Page, value: string) => page.locator(`.head input[value="${value}"]`);
const show = (page: Page, value: 'ask' | 'send' | 'take' | 'sheet' | 'steps') => part(page, value).check({ force: true });
const chip = (page: Page, at: string, value: string) => page.locator(`[data-box="${at}"] input[value="${value}"]`);
const standing = (page: Page) => page.locator('.outcome [role="status"]').textContent();
const machines = (page: Page) => page.locator('.fits').evaluateAll((fits) => fits.map((each) => (each as HTMLElement).dataset.machine));

/** Goes on with the Tab key alone until something has the focus. */
async function tabTo(page: Page, selector: string) {
  for (let left = 150; left > 0; left--) {
    const isThere = await page.evaluate((wanted) => {
      const within = (root: Document | ShadowRoot): boolean => {
        const active = root.activeElement;
        return active !== null && (active.matches(wanted) || (active.shadowRoot !== null && within(active.shadowRoot)));
      };
      return within(document);
    }, selector);
    if (isThere) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way to ${selector} with the Tab key`);
}

const type = (page: Page, text: string) => page.keyboard.type(text);

describe('on the device', () => {
  test('it can be installed: a manifest with drawn icons, its own window, and nothing beyond its folder', async () => {
    const { page, complaints } = await stand();
    await kept(page);
    const session = await page.context().newCDPSession(page);
    const { errors, url, data } = await session.send('Page.getAppManifest') as { errors: unknown[]; url: string; data: string };
    expect(errors).toEqual([]);
    const manifest = JSON.parse(data) as { display: string; start_url: string; scope: string; icons: { src: string; sizes: string; type: string; purpose?: string }[] };
    expect([manifest.display, new URL(manifest.start_url, url).pathname, new URL(manifest.scope, url).pathname]).toEqual(['standalone', '/counter/', '/counter/']);
    for (const { src, sizes, type: kind } of manifest.icons) {
      const size = await page.evaluate(async (address) => {
        const image = new Image();
        image.src = address;
        await image.decode();
        return `${image.naturalWidth}x${image.naturalHeight}`;
      }, new URL(src, url).pathname);
      if (kind === 'image/png') expect(size).toBe(sizes);
    }
    // W3C Web Application Manifest: what browsers ask of an installable page.
    expect(manifest.icons.map(({ sizes, purpose = 'any' }) => `${sizes} ${purpose}`)).toEqual(expect.arrayContaining(['192x192 any', '512x512 any', '512x512 maskable']));
    const scopes = await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).map(({ scope, updateViaCache }) => [new URL(scope).pathname, updateViaCache]));
    expect(scopes).toEqual([['/counter/', 'none']]);
    expect(complaints).toEqual([]);
  });

  test('after one visit it works without a network: page, list with its day, languages, a whole intake by keyboard, sent when the network is back', async () => {
    const { page, complaints } = await stand();
    await kept(page);
    await expect.poll(() => page.locator('[data-queue]').count()).toBe(1);
    // The relay's key is on the device once the list of what waits can be asked.
    await expect.poll(() => site.asked.includes('/relay/v1/keys')).toBe(true);
    site.cut(true);
    await page.reload();
    await atStart(page);
    expect(await page.locator('[data-stock]').getAttribute('data-stock')).toBe('copy');
    expect(await page.locator('[data-stock]').textContent()).toContain('November 20, 2026');

    // Enter on what has the focus, then the first question has it.
    await tabTo(page, '[data-begin]');
    await page.keyboard.press('Enter');
    await tabTo(page, '[data-box="tasks"] input');
    for (const sign of ['1', '4']) await page.keyboard.press(sign);
    await page.keyboard.press('Enter');
    await page.keyboard.press('2');
    await page.keyboard.press('Alt+2');
    await type(page, '2 acres');
    await page.keyboard.press('Enter');
    await page.keyboard.press('2');
    await page.keyboard.press('Enter');
    await type(page, '2 h');
    await tabTo(page, '[data-box="tasks.lift-pallets.weight"] input');
    await type(page, 'nine hundred');
    await page.keyboard.press('Enter');
    expect(await page.locator('[data-box="tasks.lift-pallets.weight"] .fault').textContent()).toMatch(/couldn’t read that as a number/);
    await page.keyboard.press('Shift+Enter');
    await page.keyboard.press('Control+A');
    await type(page, '900');
    await page.keyboard.press('Alt+3');
    await page.keyboard.press('1');
    await page.keyboard.press('Alt+5');
    await type(page, '22,000');
    await page.keyboard.press('Enter');
    expect(await page.locator('[data-box="tasks.lift-pallets.weight"] .fault').count()).toBe(0);
    await expect.poll(() => machines(page)).not.toEqual([]);

    await page.keyboard.press('Alt+1');
    while (!(await page.evaluate(() => (document.querySelector('acre-counter')!.shadowRoot!.activeElement as HTMLInputElement | null)?.value === 'ask'))) await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('ArrowRight');
    await tabTo(page, '#send-address');
    await type(page, 'customer@canary.example');
    await tabTo(page, '[data-consent="mail"]');
    expect(await page.locator('#send-address').inputValue()).toBe('c•••@c•••');
    expect(await page.locator('[data-consent]:checked').count()).toBe(0);
    await tabTo(page, '[data-send]');
    await page.keyboard.press('Enter');
    // Nothing was ticked by anybody: nothing is sent, and it says why.
    await expect.poll(() => page.locator('#mail-fault').count()).toBe(1);
    await tabTo(page, '[data-consent="mail"]');
    await page.keyboard.press('Space');
    await tabTo(page, '[data-send]');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.sending [role="status"]').textContent()).toMatch(/Saved on this device/);
    await expect.poll(() => page.locator('[data-queue]').getAttribute('data-queue')).toBe('1');
    expect(site.taken).toEqual([]);

    site.cut(false);
    await tabTo(page, '[data-queue]');
    await page.keyboard.press('Enter');
    await tabTo(page, '[data-send-now]');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('[data-queue]').getAttribute('data-queue')).toBe('0');
    expect(site.taken).toMatchObject([{ kind: 'shortlist', dealer: 'hollowmere', address: 'customer@canary.example', consent: { mail: true, dealerCopy: false, statistics: false }, language: 'en', units: 'us' }]);
    expect(site.taken[0]!.answers.tasks).toMatchObject([{ task: 'mow-lawn', must: false }, { task: 'lift-pallets', must: true, weight: { value: 900, unit: 'lb' } }]);
    expect(site.taken[0]!.contact).toBeUndefined();
    expect(ofOurs(complaints)).toEqual([]);
  });

  test('a new version waits while a customer is served, in another window too, and takes over when nobody is', async () => {
    const { page } = await stand();
    await kept(page);
    const shown = () => page.evaluate(async () => (await (await fetch('counter.css')).text()).includes('second'));
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'mow-lawn').check();
    site.deploy('second');
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await page.locator('[data-update]').waitFor();
    // The intake is unhurt, the old files are still in use.
    expect(await chip(page, 'tasks', 'mow-lawn').isChecked()).toBe(true);
    expect(await shown()).toBe(false);
    const other = await page.context().newPage();
    await other.goto(`${site.address}counter/`);
    await atStart(other);
    await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.waiting?.state)).toBe('installed');
    expect(await chip(page, 'tasks', 'mow-lawn').isChecked()).toBe(true);
    await other.close();
    await page.locator('[data-next]').click();
    await expect.poll(async () => { await atStart(page); return shown().catch(() => false); }).toBe(true);
  });

  test('staff may change to it at once, and are asked first where a customer is served', async () => {
    const { page } = await stand();
    await kept(page);
    await page.locator('[data-begin]').click();
    site.deploy('wished');
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await page.locator('[data-update]').click();
    expect(await page.locator('.questions').count()).toBe(1);
    await page.locator('[data-update]').click();
    await atStart(page);
    await expect.poll(() => page.evaluate(async () => (await (await fetch('counter.css')).text()).includes('wished')).catch(() => false)).toBe(true);
  });

  test.each([
    ['isn’t there', (files: CounterSite['files']) => files.delete('/counter/icon-512.png')],
    ['is another than was built', (files: CounterSite['files']) => files.set('/counter/icon.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>')],
  ])('of a version of which one file %s nothing is installed, and the one before goes on', async (_what, spoil) => {
    const { page } = await stand();
    await kept(page);
    site.deploy('broken');
    spoil(site.files);
    const before = await page.evaluate(() => caches.keys());
    const state = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      const found = new Promise<ServiceWorker>((resolve) => { registration.addEventListener('updatefound', () => resolve(registration.installing!)); });
      void registration.update().catch(() => undefined);
      const worker = await found;
      if (worker.state !== 'redundant') await new Promise((resolve) => { worker.addEventListener('statechange', resolve, { once: true }); });
      return [worker.state, registration.waiting];
    });
    expect(state).toEqual(['redundant', null]);
    expect(await page.evaluate(() => caches.keys())).toEqual(before);
    site.cut(true);
    await page.reload();
    await atStart(page);
  });

  test('where it has gone wrong beyond help, the other worker takes itself and its files out, and what waits stays', async () => {
    const { page } = await stand();
    await kept(page);
    const databases = () => page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
    await expect.poll(databases).toEqual(['acre-to-axle-counter']);
    site.files.set('/counter/worker.js', site.files.get('/counter/kill-switch.js')!);
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await expect.poll(() => page.evaluate(async () => [(await navigator.serviceWorker.getRegistrations()).length, (await caches.keys()).filter((name) => name.startsWith('acre-to-axle-counter-')).length])).toEqual([0, 0]);
    expect(await databases()).toEqual(['acre-to-axle-counter']);
  });

  test('nothing but the page’s own files and the dealer’s list is kept by it', async () => {
    const { page } = await stand();
    await kept(page);
    const held = await page.evaluate(async () => (await Promise.all((await caches.keys()).map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname)))).flat());
    const own = [...site.files.keys()].filter((path) => !/\/(?:worker|kill-switch)\.js$/.test(path));
    expect(held.sort()).toEqual(own.sort());
  });

  test.each([
    [6, 'fresh'], [8, 'old'], [31, 'asked'],
  ] as const)('a copy of the list %i days old is %s', async (days, is) => {
    const asOf = new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10);
    site.files.set('/catalogue.json', JSON.stringify({ ...JSON.parse(catalogueText) as object, asOf }));
    const { page } = await stand();
    await kept(page);
    expect(await page.locator('[data-old], [data-accept]').count()).toBe(0);
    site.cut(true);
    await page.reload();
    await page.locator('[data-begin], [data-accept]').first().waitFor();
    expect([await page.locator('[data-old]').count(), await page.locator('[data-accept]').count()]).toEqual({ fresh: [0, 0], old: [1, 0], asked: [1, 1] }[is]);
    if (is === 'asked') await page.locator('[data-accept]').click();
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'mow-lawn').waitFor();
  });

  test('without settings or without any list it says so, and goes on once they are there', async () => {
    site.files.delete('/catalogue.json');
    const { page } = await watched(await (await browser.newContext({ locale: 'en-US' })).newPage());
    await page.goto(`${site.address}counter/`);
    await page.locator('[data-try-again]').waitFor();
    expect(await page.locator('[role="alert"]').textContent()).toMatch(/no stock list/);
    site.files.set('/catalogue.json', catalogueText);
    await page.locator('[data-try-again]').click();
    await atStart(page);
  });
});

/** A clock of a test's own, put into the page: it goes when it is told to, and sleeps when its timers aren't run. */
async function ownClock(page: Page) {
  await page.evaluate(() => {
    const timers = new Set<{ at: number; run: () => void }>();
    const clock = {
      time: Date.now(), now: () => clock.time,
      after(wait: number, run: () => void) {
        const timer = { at: clock.time + wait, run };
        timers.add(timer);
        return () => { timers.delete(timer); };
      },
      go(milliseconds: number) {
        const end = clock.time + milliseconds;
        for (;;) {
          const [next] = [...timers].filter(({ at }) => at <= end).sort((a, b) => a.at - b.at);
          if (!next) break;
          timers.delete(next);
          clock.time = Math.max(clock.time, next.at);
          next.run();
        }
        clock.time = end;
      },
    };
    Object.assign(globalThis, { ownClock: clock });
    document.querySelector<AcreCounter>('acre-counter')!.clock = clock;
  });
  type Own = { ownClock: { go(milliseconds: number): void; time: number } };
  return {
    go: (milliseconds: number) => page.evaluate(async (much) => {
      (globalThis as unknown as Own).ownClock.go(much);
      await document.querySelector<AcreCounter>('acre-counter')!.updateComplete;
    }, milliseconds),
    /** The device slept: time went on, and nothing was run. */
    sleep: (milliseconds: number) => page.evaluate((much) => {
      (globalThis as unknown as Own).ownClock.time += much;
      document.dispatchEvent(new Event('visibilitychange'));
    }, milliseconds),
  };
}

const canaries = { name: 'Canaryname', note: 'canarynote', address: 'canary@birdmail.example', contact: 'Canarycontact', phone: '+1 555 555 0177' };
const told = Object.values(canaries);

/** Fills in all that is somebody's own: as staff would, on the sheet and in the form. */
async function serve(page: Page) {
  await page.locator('[data-begin]').click();
  await chip(page, 'tasks', 'lift-pallets').check();
  await page.locator('[data-box="tasks.lift-pallets.weight"] input').fill('913 lb');
  await page.locator('#called').fill(canaries.name);
  await page.locator('.notes summary').click();
  await page.locator('#notes').fill(canaries.note);
  await show(page, 'send');
  await page.locator('#send-address').fill(canaries.address);
  await page.locator('[data-consent="dealerCopy"]').check();
  await page.locator('#send-name').fill(canaries.contact);
  await page.locator('#send-phone').fill(canaries.phone);
}

const anew = (page: Page) => page.waitForEvent('framenavigated');

/** Runs in the page: everything a page can get at of what was before, as one text. */
async function residue(): Promise<string> {
  const texts = (root: ParentNode): string[] => [...root.querySelectorAll('*')].flatMap((each) => [
    each instanceof HTMLInputElement || each instanceof HTMLTextAreaElement ? each.value : '', ...[...each.attributes].map(({ value }) => value), ...(each.shadowRoot ? [each.shadowRoot.textContent ?? '', ...texts(each.shadowRoot)] : []),
  ]);
  const stored = (storage: Storage) => JSON.stringify(Object.entries(storage));
  const cached = await Promise.all((await caches.keys()).map(async (name) => {
    const cache = await caches.open(name);
    return Promise.all((await cache.keys()).map(async (request) => `${request.url} ${await (await cache.match(request))!.text()}`));
  }));
  const rows = await Promise.all((await indexedDB.databases()).map(({ name }) => new Promise<string>((resolve) => {
    const opening = indexedDB.open(name!);
    opening.addEventListener('success', () => {
      const database = opening.result;
      const found: unknown[] = [];
      const transaction = database.transaction([...database.objectStoreNames]);
      for (const store of database.objectStoreNames) {
        const all = transaction.objectStore(store).getAll();
        all.addEventListener('success', () => found.push(all.result));
      }
      transaction.addEventListener('complete', () => {
        database.close();
        resolve(JSON.stringify(found));
      });
    });
  })));
  return [document.documentElement.outerHTML, ...texts(document), location.href, document.title, document.cookie, JSON.stringify(history.state), stored(localStorage), stored(sessionStorage), ...cached.flat(), ...rows].join('\n');
}

const hits = (text: string) => told.filter((each) => text.toLowerCase().includes(each.toLowerCase()));

/** Everything a browser wrote of a profile, as bytes are: one or two of them a letter. */
function inFolder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)).filter((path) => statSync(path, { throwIfNoEntry: false })?.isFile()).flatMap((path) => {
    const bytes = readFileSync(path);
    return told.filter((each) => bytes.includes(each) || bytes.includes(Buffer.from(each, 'utf16le'))).map((each) => `${path.slice(folder.length)}: ${each}`);
  });
}

describe('between two customers', () => {
  test('“Next customer” leaves nothing: not in page, storage, caches, address, title, history, nor in the browser’s folder on the disk', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'profile-'));
    const context = await chromium.launchPersistentContext(folder, { ...(await findChromium()), locale: 'en-US' });
    try {
      const { page, complaints } = await watched(context.pages()[0]!);
      await page.goto(`${site.address}counter/`);
      await atStart(page);
      await kept(page);
      await serve(page);
      // Control: what is looked for is there to be found; the address is covered even now, for its field was left.
      expect(hits(await page.evaluate(residue))).toEqual(told.filter((each) => each !== canaries.address));
      const entries = await page.evaluate(() => history.length);
      await page.locator('[data-consent="mail"]').check();
      await page.locator('[data-send]').click();
      await expect.poll(() => page.locator('.sending [role="status"]').textContent()).toMatch(/Saved on this device/);
      await expect.poll(() => site.taken.length).toBe(1);
      expect(site.taken[0]).toMatchObject({ address: canaries.address, contact: { name: canaries.contact, phone: canaries.phone } });
      expect(JSON.stringify(site.taken)).not.toMatch(/canarynote|Canaryname/);
      const gone = anew(page);
      await page.locator('[data-next]').click();
      await gone;
      await atStart(page);
      expect(hits(await page.evaluate(residue))).toEqual([]);
      expect(await page.evaluate(() => history.length)).toBe(entries);
      expect(ofOurs(complaints)).toEqual([]);
    } finally {
      await context.close();
    }
    try {
      expect(inFolder(folder)).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test('nothing is to be seen of him in the same moment, before the page is loaded anew', async () => {
    const { page } = await stand();
    await serve(page);
    const left = await page.evaluate(() => {
      const { shadowRoot } = document.querySelector('acre-counter')!;
      shadowRoot!.querySelector<HTMLElement>('[data-next]')!.click();
      return document.querySelector<AcreCounter>('acre-counter')!.updateComplete.then(() => [shadowRoot!.querySelectorAll('.intake, textarea').length, shadowRoot!.textContent] as const);
    });
    expect(left[0]).toBe(0);
    expect(hits(left[1] ?? '')).toEqual([]);
  });

  test('the browser’s Back and Forward bring nobody back', async () => {
    const { page } = await stand();
    await serve(page);
    await page.goto(`${site.address}catalogue.json`);
    await page.goBack();
    await atStart(page);
    expect(hits(await page.evaluate(residue))).toEqual([]);
    // And where a browser kept the page whole, it is loaded anew as soon as it is shown.
    await page.locator('[data-begin]').click();
    await page.locator('#called').fill(canaries.name);
    const gone = anew(page);
    await page.evaluate(() => window.dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true })));
    await gone;
    await atStart(page);
    expect(hits(await page.evaluate(residue))).toEqual([]);
  });

  test('fields bear other names for each customer, and ask no browser to remember, correct or spell', async () => {
    const { page } = await stand();
    const names = async () => {
      await serve(page);
      const found = await page.evaluate(() => [...document.querySelector('acre-counter')!.shadowRoot!.querySelectorAll('.intake :is(input[type="text"], textarea)')].map((each) => ({
        name: each.getAttribute('name'), asks: ['autocomplete', 'spellcheck', 'autocorrect'].map((attribute) => each.getAttribute(attribute)),
      })));
      expect(found.length).toBeGreaterThan(4);
      expect(found.filter(({ asks }) => asks.join() !== 'off,false,off')).toEqual([]);
      const gone = anew(page);
      await page.locator('[data-next]').click();
      await gone;
      await atStart(page);
      return found.map(({ name }) => name);
    };
    const first = await names();
    const second = await names();
    expect(first.filter((name) => name === null || second.includes(name))).toEqual([]);
  });
});

describe('when nobody is there', () => {
  const places: readonly [string, (page: Page) => Promise<unknown>][] = [
    ['the sheet', async () => undefined],
    ['step by step', (page) => show(page, 'steps')],
    ['sending', (page) => show(page, 'send')],
    ['taking along', (page) => show(page, 'take')],
  ];

  test.each(places)('on %s it is asked after 90 s, and 20 s later all is thrown away and covered', async (_where, go) => {
    const { page } = await stand();
    const clock = await ownClock(page);
    await page.locator('[data-begin]').click();
    await page.locator('#called').fill(canaries.name);
    await go(page);
    await clock.go(89_000);
    expect(await page.locator('dialog.idle').count()).toBe(0);
    await clock.go(1_000);
    expect(await page.locator('dialog.idle .left').textContent()).toMatch(/^20 seconds/);
    await clock.go(19_000);
    expect(await page.locator('dialog.idle .left').textContent()).toMatch(/^1 second /);
    const gone = anew(page);
    await clock.go(1_000);
    await gone;
    await page.locator('[data-uncover]').waitFor();
    expect(hits(await page.evaluate(residue))).toEqual([]);
    await page.locator('[data-uncover]').click();
    await atStart(page);
  });

  test('who says that he is there goes on, as often as he likes', async () => {
    const { page } = await stand();
    const clock = await ownClock(page);
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'mow-lawn').check();
    for (let time = 0; time < 12; time++) {
      await clock.go(105_000);
      // The button has the focus, so that a key does: success criterion 2.2.1 asks for a simple action.
      await page.keyboard.press('Enter');
      await expect.poll(() => page.locator('dialog.idle').count()).toBe(0);
    }
    expect(await chip(page, 'tasks', 'mow-lawn').isChecked()).toBe(true);
    // Whoever works on isn't asked at all.
    for (let time = 0; time < 4; time++) {
      await clock.go(60_000);
      await page.keyboard.press('Shift');
      expect(await page.locator('dialog.idle').count()).toBe(0);
    }
  });

  test('a device that slept over the end finds it passed when it wakes, and one that slept into the question asks for the rest', async () => {
    const { page } = await stand();
    const clock = await ownClock(page);
    await serve(page);
    await clock.sleep(95_000);
    expect(await page.locator('dialog.idle .left').textContent()).toMatch(/^15 seconds/);
    const gone = anew(page);
    await clock.sleep(8 * 3_600_000);
    await gone;
    await page.locator('[data-uncover]').waitFor();
    expect(hits(await page.evaluate(residue))).toEqual([]);
  });

  test('at the start nobody is asked, nor where the dealer turned it off', async () => {
    const { page } = await stand();
    await (await ownClock(page)).go(10 * 60_000);
    expect(await page.locator('dialog.idle').count()).toBe(0);
    site.settings({ idle: false });
    const off = await stand();
    const clock = await ownClock(off.page);
    await off.page.locator('[data-begin]').click();
    await clock.go(60 * 60_000);
    expect(await off.page.locator('dialog.idle').count()).toBe(0);
  });
});

describe('several customers', () => {
  const pin = '314159';

  async function typePin(page: Page, both: boolean) {
    await page.locator('#pin').fill(pin);
    if (both) await page.locator('#pin-again').fill(pin);
    await page.locator('dialog.pin [type="submit"]').click();
  }

  test('are parked, sealed, found again with the PIN alone, and turned between by keys', async () => {
    const { page, complaints } = await stand();
    await serve(page);
    await page.locator('[data-park]').click();
    const gone = anew(page);
    await typePin(page, true);
    await gone;
    await atStart(page);
    expect(hits(await page.evaluate(residue))).toEqual([]);
    // A second one, while the first is parked.
    await page.locator('[data-begin]').click();
    await page.locator('#called').fill('Second');
    await chip(page, 'tasks', 'dig').check();
    const again = anew(page);
    await page.locator('[data-park]').click();
    await again;
    await atStart(page);
    expect(await page.locator('#parked-heading').textContent()).toMatch(/2/);
    await page.locator('[data-show-parked]').click();
    await page.locator('#pin').fill('000000');
    await page.locator('dialog.pin [type="submit"]').click();
    await expect.poll(() => page.locator('#pin-fault').textContent()).toMatch(/4 tries left/);
    await typePin(page, false);
    await page.locator('[data-resume]').first().waitFor();
    await page.locator('[data-resume]').getByText(canaries.name).or(page.getByRole('button', { name: `Go on with ${canaries.name}` })).first().click();
    expect([await page.locator('#called').inputValue(), await page.locator('#notes').inputValue(), await page.locator('[data-box="tasks.lift-pallets.weight"] input').inputValue()]).toEqual([canaries.name, canaries.note, '913 lb']);
    await page.keyboard.press('Alt+PageDown');
    await expect.poll(() => page.locator('#called').inputValue()).toBe('Second');
    expect(await chip(page, 'tasks', 'dig').isChecked()).toBe(true);
    await page.keyboard.press('Alt+PageUp');
    await expect.poll(() => page.locator('#called').inputValue()).toBe(canaries.name);
    expect(ofOurs(complaints)).toEqual([]);
  });

  test('a covered screen opens with the PIN where there is one', async () => {
    const { page } = await stand();
    await page.locator('[data-begin]').click();
    await page.locator('#called').fill('First');
    await page.locator('[data-park]').click();
    const gone = anew(page);
    await typePin(page, true);
    await gone;
    await page.locator('[data-cover]').click();
    await page.reload();
    await page.locator('[data-uncover]').click();
    await page.locator('#pin').waitFor();
    expect(await page.locator('[data-begin]').count()).toBe(0);
    await typePin(page, false);
    await atStart(page);
  });
});

describe('one sheet and step by step', () => {
  test('hold the same answers: what is said in one stands in the other, read or unread', async () => {
    const { page, complaints } = await stand();
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'lift-bales').check();
    await page.locator('[data-box="tasks.lift-bales.height"] input').fill('six');
    await page.locator('[data-box="budget.limit"] input').fill('19,500');
    await show(page, 'steps');
    const wizard = page.locator('acre-to-axle');
    await wizard.locator('[data-question="musts"]').waitFor();
    await wizard.locator('input[value="lift-bales"]').check();
    await wizard.locator('[part="continue"]').click();
    await wizard.locator('[data-question="bales"]').waitFor();
    await wizard.locator('[data-field="tasks.lift-bales.weight"]').fill('heavy');
    // What can't be read stays where it was typed.
    await show(page, 'sheet');
    await show(page, 'steps');
    expect(await wizard.locator('[data-field="tasks.lift-bales.weight"]').inputValue()).toBe('heavy');
    await wizard.locator('[data-field="tasks.lift-bales.weight"]').fill('700 lb');
    // Typed and not gone on with: the sheet has it all the same.
    await show(page, 'sheet');
    await page.locator('[data-box="tasks.lift-bales.weight"] input').waitFor();
    expect(await page.locator('[data-box="tasks.lift-bales.weight"] input').inputValue()).toBe('700 lb');
    expect(await chip(page, 'tasks.must', 'lift-bales').isChecked()).toBe(true);
    expect(await page.locator('[data-box="budget.limit"] input').inputValue()).toBe('19500');
    await expect.poll(() => standing(page)).toMatch(/of 12/);
    await expect.poll(() => page.locator('.outcome [aria-busy]').count()).toBe(0);
    const before = await machines(page);
    await page.locator('[data-whole]').click();
    await wizard.locator('[part="result"]').waitFor();
    expect(await wizard.evaluate((element) => (element as unknown as { shortlist: { shortlist: { machine: string }[]; askDealer: { machine: string }[] } }).shortlist).then(({ shortlist, askDealer }) => [...shortlist, ...askDealer].map(({ machine }) => machine))).toEqual(before);
    expect(ofOurs(complaints)).toEqual([]);
  });

  test('each change shows at once, and typing isn’t held up by the reckoning', async () => {
    const { page } = await stand();
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'lift-pallets').check();
    await expect.poll(() => machines(page)).not.toEqual([]);
    const field = page.locator('[data-box="tasks.lift-pallets.weight"] input');
    await field.focus();
    const longest = await page.evaluate(async () => {
      const tasks: number[] = [];
      const watch = new PerformanceObserver((list) => { tasks.push(...list.getEntries().map(({ duration }) => duration)); });
      watch.observe({ entryTypes: ['longtask'] });
      const input = document.querySelector('acre-counter')!.shadowRoot!.querySelector<HTMLInputElement>('[data-box="tasks.lift-pallets.weight"] input')!;
      for (const text of ['1', '12', '120', '1200', '1200 ', '1200 l', '1200 lb']) {
        input.value = text;
        input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
        await new Promise(requestAnimationFrame);
      }
      await new Promise((resolve) => { setTimeout(resolve, 0); });
      watch.disconnect();
      return Math.max(0, ...tasks);
    });
    // What is reckoned takes longer than this on any machine; it is done elsewhere.
    expect(longest).toBeLessThan(200);
    await expect.poll(() => page.locator('[data-box="tasks.lift-pallets.weight"] .below').textContent()).toMatch(/1,200\slb/);
    await field.fill('5000 lb');
    await expect.poll(() => page.locator('.outcome').textContent()).toMatch(/5,000\slb/);
  });

  test('a change of units or language loses nothing that was typed', async () => {
    const { page } = await stand();
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'lift-pallets').check();
    await page.locator('[data-box="tasks.lift-pallets.weight"] input').fill('900');
    await page.locator('[data-box="tasks.lift-pallets.height"] input').fill('about six');
    await page.locator('[data-box="tasks.lift-pallets.height"] input').blur();
    await show(page, 'metric' as 'sheet');
    await page.locator('[data-language]').selectOption('de');
    await expect.poll(() => page.locator('#section-work').textContent()).toMatch(/Arbeit/);
    expect(await page.locator('[data-box="tasks.lift-pallets.weight"] input').inputValue()).toBe('900 lb');
    expect(await page.locator('[data-box="tasks.lift-pallets.height"] input').inputValue()).toBe('about six');
  });
});

describe('to read and to press', () => {
  const found = (page: Page) => page.evaluate(async () => (await axe.run(document, { resultTypes: ['violations'] })).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`));
  const wide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  /** At a counter nothing to press is smaller than this [CSS pixels]. */
  const least = 48;
  const small = (page: Page) => page.evaluate((most) => [...document.querySelector('acre-counter')!.shadowRoot!.querySelectorAll<HTMLElement>('button, select, label.chip, label.option, .switch label, input[type="text"], summary')]
    .filter((each) => each.checkVisibility() && !each.closest('svg, .line-up, .folded') && each.getBoundingClientRect().height < most - 0.5).map((each) => `${each.tagName} ${each.textContent.trim().slice(0, 30)} ${each.getBoundingClientRect().height}`), least);

  // All of it with AXE=all: what differs between them is little, and a tablet with long words has most of it.
  const every = [[820, 'dark', 'de-DE'], [1280, 'light', 'en-US'], [390, 'light', 'fr-FR'], [390, 'dark', 'es-ES'], [1280, 'dark', 'de-DE']] as const;
  test.each(process.env.AXE === 'all' ? every : every.slice(0, 1))('at %i px, %s, in %s: every place passes axe, nothing is too wide or too small to press', async (width, colorScheme, locale) => {
    const { page, complaints } = await stand({ viewport: { width, height: 900 }, colorScheme, locale });
    const session = await page.context().newCDPSession(page);
    const prepare = () => session.send('Runtime.evaluate', { expression: axeSource });
    await prepare();
    const clock = await ownClock(page);
    const wrong: string[] = [];
    const look = async (where: string) => {
      wrong.push(...(await found(page)).map((each) => `${where}: ${each}`), ...(await small(page)).map((each) => `${where}: too small: ${each}`));
      const over = await wide(page);
      if (over > 0) wrong.push(`${where}: ${over} pixels too wide`);
    };
    await look('start');
    await page.locator('[data-open]').click();
    await page.locator('#opening-field').waitFor();
    await look('opening');
    await page.locator('[data-back]').click();
    await page.locator('[data-queue]').click();
    await look('waiting');
    await page.locator('[data-back]').click();
    await page.locator('[data-begin]').click();
    for (const task of ['mow-lawn', 'lift-pallets', 'handle-logs']) await chip(page, 'tasks', task).check();
    await chip(page, 'more', 'haul').check();
    const weight = page.locator('[data-box="tasks.lift-pallets.weight"] input');
    await weight.fill('heavy');
    await weight.blur();
    await chip(page, 'land.slope', 'steep').check();
    await page.locator('.fits').first().waitFor();
    await page.locator('.folded > summary').click();
    await look('sheet');
    await show(page, 'send');
    await page.locator('[data-consent="dealerCopy"]').check();
    await page.locator('[data-send]').click();
    await page.locator('#mail-fault').waitFor();
    await look('sending');
    await show(page, 'take');
    await page.locator('[data-print]:enabled').waitFor();
    await look('taking');
    await page.locator('[data-park]').click();
    await page.locator('#pin').waitFor();
    await look('pin');
    await page.keyboard.press('Escape');
    await clock.go(91_000);
    await page.locator('dialog.idle').waitFor();
    await look('idle');
    expect(wrong).toEqual([]);
    expect(ofOurs(complaints).filter((each) => !/unsafe-eval|Trusted|axe/i.test(each))).toEqual([]);
  });

  test('printing prints the sheet alone', async () => {
    const { page, complaints } = await stand();
    await serve(page);
    await show(page, 'take');
    await page.locator('[data-print]:enabled').waitFor();
    const printed = page.evaluate(() => new Promise<{ seen: string; pages: number }>((resolve) => {
      window.print = () => {
        const papers = [...document.querySelectorAll('[data-on-paper]')];
        resolve({ seen: papers.map((each) => each.shadowRoot!.textContent).join(), pages: papers[0]!.shadowRoot!.querySelectorAll('.page').length });
        window.dispatchEvent(new Event('afterprint'));
      };
    }));
    await page.locator('[data-print]').click();
    const { seen, pages } = await printed;
    expect(pages).toBeLessThanOrEqual(2);
    expect(seen).toMatch(/913\slb/);
    expect(hits(seen)).toEqual([]);
    await expect.poll(() => page.locator('[data-on-paper]').count()).toBe(0);
    expect(ofOurs(complaints)).toEqual([]);
  });
});
