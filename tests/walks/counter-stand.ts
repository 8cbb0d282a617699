import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import type { AcreCounter } from '../../src/counter/page.ts';
import { counterSite, type CounterSite } from './counter-site.ts';

/** Keeps pages whole for Back, as people's browsers do. */
const openBrowser = async (): Promise<Browser> => chromium.launch({ ...(await findChromium()), ignoreDefaultArgs: ['--disable-back-forward-cache'] });

export interface Stand {
  page: Page;
  /** Errors, warnings, and what breaches the policy. */
  complaints: string[];
}

export const atStart = (page: Page) => page.locator('[data-begin]').waitFor();
/** Whether the page's files are on the device, and it is they that are shown. */
export const kept = (page: Page) => expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state), { timeout: 15_000 }).toBe('activated');

export async function watched(page: Page): Promise<Stand> {
  const complaints: string[] = [];
  page.on('console', (message) => { if (message.type() !== 'log') complaints.push(message.text()); });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.addInitScript(() => document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => console.error(`policy: ${violatedDirective} ${blockedURI}`)));
  return { page, complaints };
}

export interface Walk {
  readonly browser: Browser;
  readonly site: CounterSite;
  /** Opens the counter in a browser window of its own. */
  stand(options?: BrowserContextOptions): Promise<Stand>;
}

/** A browser for all tests of a file, and a dealer's site for each: as they stand when they are asked for. */
export function counterWalk(): Walk {
  let browser: Browser;
  let site: CounterSite;
  beforeAll(async () => { browser = await openBrowser(); });
  afterAll(() => browser.close());
  beforeEach(async () => { site = await counterSite(); });
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
    await site.close();
  });
  return {
    get browser() { return browser; },
    get site() { return site; },
    async stand(options = {}) {
      const opened = await watched(await (await browser.newContext({ locale: 'en-US', ...options })).newPage());
      await opened.page.goto(`${site.address}counter/`);
      await atStart(opened.page);
      return opened;
    },
  };
}

/** What a browser itself says of a request that failed is no complaint of ours. */
export const ofOurs = (complaints: readonly string[]) => complaints.filter((each) => !each.startsWith('Failed to load resource'));

const part = (page: Page, value: string) => page.locator(`.head input[value="${value}"]`);
/** What stands in the wizard is taken along first, so that it may take a moment until the other way is chosen. */
export async function show(page: Page, value: 'ask' | 'send' | 'take' | 'sheet' | 'steps') {
  await part(page, value).click({ force: true });
  await expect.poll(() => part(page, value).isChecked()).toBe(true);
}
export const chip = (page: Page, at: string, value: string) => page.locator(`[data-box="${at}"] input[value="${value}"]`);
export const standing = (page: Page) => page.locator('.outcome [role="status"]').textContent();
export const machines = (page: Page) => page.locator('.fits').evaluateAll((fits) => fits.map((each) => (each as HTMLElement).dataset.machine));

/** Goes on with the Tab key alone until something has the focus. */
export async function tabTo(page: Page, selector: string) {
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

export const type = (page: Page, text: string) => page.keyboard.type(text);

/** A clock of a test's own, put into the page: it goes when it is told to, and sleeps when its timers aren't run. */
export async function ownClock(page: Page) {
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

export const canaries = { name: 'Canaryname', note: 'canarynote', address: 'canary@birdmail.example', contact: 'Canarycontact', phone: '+1 555 555 0177' };
const told = Object.values(canaries);

/** Fills in all that is somebody's own: as staff would, on the sheet and in the form. */
export async function serve(page: Page) {
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

export const anew = (page: Page) => page.waitForEvent('framenavigated');

/** Runs in the page: everything a page can get at of what was before, as one text. */
export async function residue(): Promise<string> {
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

export const hits = (text: string) => told.filter((each) => text.toLowerCase().includes(each.toLowerCase()));

/** Everything a browser wrote of a profile, as bytes are: one or two of them a letter. */
export function inFolder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)).filter((path) => statSync(path, { throwIfNoEntry: false })?.isFile()).flatMap((path) => {
    const bytes = readFileSync(path);
    return told.filter((each) => bytes.includes(each) || bytes.includes(Buffer.from(each, 'utf16le'))).map((each) => `${path.slice(folder.length)}: ${each}`);
  });
}

