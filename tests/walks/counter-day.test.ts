import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { anew, atStart, canaries, chip, counterWalk, hits, kept, ofOurs, ownClock, residue, serve, watched } from './counter-stand.ts';

const walk = counterWalk();
const { stand } = walk;
const pin = '314159';
const hour = 3_600_000;

async function typePin(page: Page, both = false) {
  await page.locator('#pin').fill(pin);
  if (both) await page.locator('#pin-again').fill(pin);
  await page.locator('dialog.pin [type="submit"]').click();
}

async function parkOne(page: Page, name: string, isFirst: boolean) {
  await page.locator('[data-begin]').click();
  await page.locator('#called').fill(name);
  const gone = anew(page);
  await page.locator('[data-park]').click();
  if (isFirst) await typePin(page, true);
  await gone;
  await atStart(page);
}

/** Changes what lies in the counter's storage, as the time that passes would. */
const older = (page: Page, table: 'parked' | 'kept', field: 'parkedAt' | 'at', milliseconds: number) => page.evaluate(([store, name, much]) => new Promise<void>((resolve, reject) => {
  const opening = indexedDB.open('acre-to-axle-counter');
  opening.addEventListener('error', () => reject(opening.error!));
  opening.addEventListener('success', () => {
    const database = opening.result;
    const transaction = database.transaction(store, 'readwrite');
    const walking = transaction.objectStore(store).openCursor();
    walking.addEventListener('success', () => {
      const cursor = walking.result;
      if (!cursor) return;
      const value = cursor.value as Record<string, unknown>;
      if (typeof value[name] === 'number') cursor.update({ ...value, [name]: value[name] - much });
      cursor.continue();
    });
    transaction.addEventListener('complete', () => { database.close(); resolve(); });
  });
}), [table, field, milliseconds] as const);

const drafts = (page: Page) => page.evaluate(() => new Promise<number>((resolve) => {
  const opening = indexedDB.open('acre-to-axle-counter');
  opening.addEventListener('success', () => {
    const asking = opening.result.transaction('kept').objectStore('kept').getAllKeys(IDBKeyRange.bound('draft ', 'draft ~'));
    asking.addEventListener('success', () => { opening.result.close(); resolve(asking.result.length); });
  });
}));

describe('at the end of the working day', () => {
  test('who is parked is told of before he goes, goes while the page is open, and it is said', async () => {
    walk.site.settings({ parkedHours: 2, idle: false });
    const { page, complaints } = await stand();
    await parkOne(page, 'First', true);
    await parkOne(page, 'Second', false);
    const clock = await ownClock(page);
    expect(await page.locator('main [data-going]').textContent()).toMatch(/^2 parked intakes are deleted by \d/);
    expect(await page.locator('header [data-going]').count()).toBe(0);
    await page.locator('[data-begin]').click();
    await clock.sleep(hour + 60_000);
    await expect.poll(() => page.locator('header [data-going]').textContent()).toMatch(/^2 parked/);
    await clock.sleep(hour);
    await expect.poll(() => page.locator('header [data-going]').count()).toBe(0);
    expect(ofOurs(complaints)).toEqual([]);
  });

  test('who is parked goes while the page is shut, and how many is said at the start', async () => {
    const { page } = await stand();
    await parkOne(page, canaries.name, true);
    await older(page, 'parked', 'parkedAt', 11 * hour);
    await page.reload();
    await expect.poll(() => page.locator('header [data-going]').textContent()).toMatch(/^1 parked intake is deleted by/);
    await older(page, 'parked', 'parkedAt', hour);
    await page.reload();
    await expect.poll(() => page.locator('[data-thrown]').textContent()).toMatch(/^1 parked intake was deleted/);
    expect(await page.locator('#parked-heading').textContent()).toBe('Nobody is parked.');
    expect(await page.locator('[data-show-parked]').count()).toBe(0);
  });
});

describe('a page that went away under a customer', () => {
  test('gives him back with the PIN alone, after a crash; in the clear he is nowhere', async () => {
    const { page, complaints } = await stand();
    await kept(page);
    await parkOne(page, 'First', true);
    await serve(page);
    await expect.poll(() => drafts(page)).toBe(1);
    // As a crash does it: nobody is asked, and nothing is said to the page.
    const session = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent('crash');
    void session.send('Page.crash').catch(() => undefined);
    await crashed;
    const after = await watched(await page.context().newPage());
    await after.page.goto(`${walk.site.address}counter/`);
    await atStart(after.page);
    await after.page.locator('[data-bring-back]').waitFor();
    expect(hits(await after.page.evaluate(residue))).toEqual([]);
    await after.page.locator('[data-bring-back]').click();
    await after.page.locator('#pin').fill('000000');
    await after.page.locator('dialog.pin [type="submit"]').click();
    await expect.poll(() => after.page.locator('#pin-fault').textContent()).toMatch(/4 tries left/);
    expect(await after.page.locator('#called').count()).toBe(0);
    await typePin(after.page);
    await expect.poll(() => after.page.locator('#called').inputValue()).toBe(canaries.name);
    expect([await after.page.locator('#notes').inputValue(), await after.page.locator('[data-box="tasks.lift-pallets.weight"] input').inputValue()]).toEqual([canaries.note, '913 lb']);
    expect(ofOurs([...complaints, ...after.complaints])).toEqual([]);
  });

  test('gives nobody back after five minutes, nor after “Next customer”', async () => {
    const { page } = await stand();
    await parkOne(page, 'First', true);
    page.on('dialog', (dialog) => void dialog.accept());
    await serve(page);
    await expect.poll(() => drafts(page)).toBe(1);
    await page.reload();
    await page.locator('[data-left]').waitFor();
    await older(page, 'kept', 'at', 5 * 60_000);
    await page.reload();
    await atStart(page);
    await expect.poll(() => drafts(page)).toBe(0);
    expect(await page.locator('[data-left]').count()).toBe(0);
    await serve(page);
    await expect.poll(() => drafts(page)).toBe(1);
    const gone = anew(page);
    await page.locator('[data-next]').click();
    await gone;
    await atStart(page);
    expect(await drafts(page)).toBe(0);
    expect(await page.locator('[data-left]').count()).toBe(0);
  });

  test('keeps nothing where there is no PIN', async () => {
    const { page } = await stand();
    await serve(page);
    await page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await expect.poll(() => page.evaluate(async () => (await navigator.locks.query()).held!.some(({ name }) => name!.startsWith('acre-to-axle-counter-draft')))).toBe(true);
    expect(await drafts(page)).toBe(0);
  });
});

describe('once it was sent', () => {
  async function sent(page: Page) {
    await serve(page);
    await page.locator('[data-consent="mail"]').check();
    await page.locator('[data-send]').click();
    await page.locator('[data-another]').waitFor();
  }

  test('only the end of its number is to be seen, and after 15 s the page makes room for the next customer', async () => {
    const { page } = await stand();
    const clock = await ownClock(page);
    await sent(page);
    expect(hits(await page.evaluate(() => document.querySelector('acre-counter')!.shadowRoot!.innerHTML))).toEqual([]);
    expect(await page.locator('.outcome, .notes, #called').count()).toBe(0);
    expect(await page.locator('[data-clears]').textContent()).toBe('15 seconds');
    await clock.go(14_000);
    expect(await page.locator('[data-clears]').textContent()).toBe('1 second');
    const gone = anew(page);
    await clock.go(1_000);
    await gone;
    await atStart(page);
    expect(hits(await page.evaluate(residue))).toEqual([]);
  });

  test('whoever touches anything stops that, and nothing is lost', async () => {
    const { page } = await stand();
    const clock = await ownClock(page);
    await sent(page);
    await clock.go(10_000);
    // Nothing moves under the finger that stops it.
    const places = () => page.evaluate(() => [...document.querySelector('acre-counter')!.shadowRoot!.querySelectorAll('button, input')].map((each) => each.getBoundingClientRect().y));
    const before = await places();
    await page.keyboard.press('Shift');
    await expect.poll(() => page.locator('[data-clears]').count()).toBe(0);
    expect(await places()).toEqual(before);
    await clock.go(60_000);
    await page.locator('.head input[value="ask"]').check({ force: true });
    expect(await page.locator('#called').inputValue()).toBe(canaries.name);
    expect(await chip(page, 'tasks', 'lift-pallets').isChecked()).toBe(true);
  });

  test('nothing clears itself where the dealer turned off that the page watches for quiet', async () => {
    walk.site.settings({ idle: false });
    const { page } = await stand();
    const clock = await ownClock(page);
    await sent(page);
    expect(await page.locator('[data-clears]').count()).toBe(0);
    await clock.go(hour);
    expect(await page.locator('[data-another]').count()).toBe(1);
  });
});
