import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { en } from '../../src/counter/words/en.ts';
import { catalogueText, type CounterSite } from './counter-site.ts';
import { anew, atStart, chip, counterWalk, kept, machines, ofOurs, serve, tabTo, type, watched } from './counter-stand.ts';

const walk = counterWalk();
const { stand } = walk;

/** A new version has taken over. Nothing is fetched to see it: the one before goes only once it has no work. */
async function changed(page: Page) {
  const isLast = () => page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return registration?.installing === null && registration.waiting === null && registration.active?.state === 'activated';
  }).catch(() => false);
  await expect.poll(async () => { await atStart(page); return isLast(); }).toBe(true);
  await atStart(page);
}

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
    await expect.poll(() => walk.site.asked.includes('/relay/v1/keys')).toBe(true);
    walk.site.cut(true);
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
    expect(walk.site.taken).toEqual([]);

    walk.site.cut(false);
    await tabTo(page, '[data-queue]');
    await page.keyboard.press('Enter');
    await tabTo(page, '[data-send-now]');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('[data-queue]').getAttribute('data-queue')).toBe('0');
    expect(walk.site.taken).toMatchObject([{ kind: 'shortlist', dealer: 'hollowmere', address: 'customer@canary.example', consent: { mail: true, dealerCopy: false, statistics: false }, language: 'en', units: 'us' }]);
    expect(walk.site.taken[0]!.answers.tasks).toMatchObject([{ task: 'mow-lawn', must: false }, { task: 'lift-pallets', must: true, weight: { value: 900, unit: 'lb' } }]);
    expect(walk.site.taken[0]!.contact).toBeUndefined();
    expect(ofOurs(complaints)).toEqual([]);
  });

  test('a new version waits while a customer is served, in another window too, and takes over when nobody is', async () => {
    const { page } = await stand();
    await kept(page);
    const shown = () => page.evaluate(async () => (await (await fetch('counter.css')).text()).includes('second'));
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'mow-lawn').check();
    walk.site.deploy('second');
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await page.locator('[data-update]').waitFor();
    // The intake is unhurt, the old files are still in use.
    expect(await chip(page, 'tasks', 'mow-lawn').isChecked()).toBe(true);
    expect(await shown()).toBe(false);
    const other = await page.context().newPage();
    await other.goto(`${walk.site.address}counter/`);
    await atStart(other);
    await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.waiting?.state)).toBe('installed');
    expect(await chip(page, 'tasks', 'mow-lawn').isChecked()).toBe(true);
    await other.close();
    await page.locator('[data-next]').click();
    await changed(page);
    expect(await shown()).toBe(true);
  });

  test('a window at its start changes once the one in which a customer was served is gone', async () => {
    const { page } = await stand();
    await kept(page);
    const other = await page.context().newPage();
    await other.goto(`${walk.site.address}counter/`);
    await other.locator('[data-begin]').click();
    await chip(other, 'tasks', 'mow-lawn').check();
    walk.site.deploy('later');
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await page.locator('[data-update]').waitFor();
    await expect.poll(() => page.evaluate(async () => (await navigator.locks.query()).pending?.length)).toBe(1);
    const gone = anew(page);
    await other.close();
    await gone;
    await atStart(page);
    expect(await page.evaluate(async () => (await (await fetch('counter.css')).text()).includes('later'))).toBe(true);
  });

  test('staff may change to it at once, and are asked first where a customer is served', async () => {
    const { page } = await stand();
    await kept(page);
    await page.locator('[data-begin]').click();
    walk.site.deploy('wished');
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await page.locator('[data-update]').click();
    expect(await page.locator('.questions').count()).toBe(1);
    await page.locator('[data-update]').click();
    await atStart(page);
    await changed(page);
    expect(await page.evaluate(async () => (await (await fetch('counter.css')).text()).includes('wished'))).toBe(true);
  });

  test.each([
    ['isn’t there', (files: CounterSite['files']) => files.delete('/counter/icon-512.png')],
    ['is another than was built', (files: CounterSite['files']) => files.set('/counter/icon.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>')],
  ])('of a version of which one file %s nothing is installed, and the one before goes on', async (_what, spoil) => {
    const { page } = await stand();
    await kept(page);
    walk.site.deploy('broken');
    spoil(walk.site.files);
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
    walk.site.cut(true);
    await page.reload();
    await atStart(page);
  });

  test('one the relay takes nothing from any more looks for a newer one, keeps what is sealed meanwhile, and says so', async () => {
    walk.site.wants('99.0.0');
    const { page, complaints } = await stand();
    await kept(page);
    await expect.poll(() => page.locator('[data-outdated]').textContent()).toMatch(/nothing is lost/);
    await serve(page);
    await page.locator('[data-consent="mail"]').check();
    await page.locator('[data-send]').click();
    await expect.poll(() => page.locator('.sending [role="status"]').textContent()).toMatch(/Saved on this device/);
    await page.locator('[data-queue="1"]').click();
    await expect.poll(() => page.locator('.counter').textContent()).toContain(en.waiting.way.outdated);
    expect(walk.site.taken).toEqual([]);
    await page.locator('[data-back]').click();
    // A newer one is put up: it is found without anybody's doing, and taken once the customer is done.
    walk.site.deploy('newer');
    walk.site.wants('0.1.0');
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await expect.poll(() => walk.site.taken.length, { timeout: 10_000 }).toBe(1);
    await expect.poll(() => page.locator('[data-outdated]').count()).toBe(0);
    expect(ofOurs(complaints)).toEqual([]);
  });

  test('one the relay wants newer changes between two customers as soon as there is a newer', async () => {
    const { page } = await stand();
    await kept(page);
    walk.site.wants('99.0.0');
    walk.site.deploy('newer');
    await page.locator('[data-begin]').click();
    const asked = walk.site.asked.filter((path) => path === '/counter/worker.js').length;
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await page.locator('[data-outdated]').waitFor();
    await page.locator('[data-update]').waitFor();
    expect(walk.site.asked.filter((path) => path === '/counter/worker.js').length).toBeGreaterThan(asked);
    const gone = anew(page);
    await page.locator('[data-next]').click();
    await gone;
    await changed(page);
    expect(await page.evaluate(async () => (await (await fetch('counter.css')).text()).includes('newer'))).toBe(true);
  });

  test('where it has gone wrong beyond help, the other worker takes itself and its files out, and what waits stays', async () => {
    const { page } = await stand();
    await kept(page);
    const databases = () => page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
    await expect.poll(databases).toEqual(['acre-to-axle-counter']);
    walk.site.files.set('/counter/worker.js', walk.site.files.get('/counter/kill-switch.js')!);
    await page.evaluate(async () => { await (await navigator.serviceWorker.ready).update(); });
    await expect.poll(() => page.evaluate(async () => [(await navigator.serviceWorker.getRegistrations()).length, (await caches.keys()).filter((name) => name.startsWith('acre-to-axle-counter-')).length])).toEqual([0, 0]);
    expect(await databases()).toEqual(['acre-to-axle-counter']);
  });

  test('nothing but the page’s own files and the dealer’s list is kept by it', async () => {
    const { page } = await stand();
    await kept(page);
    const held = await page.evaluate(async () => (await Promise.all((await caches.keys()).map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname)))).flat());
    const own = [...walk.site.files.keys()].filter((path) => !/\/(?:worker|kill-switch)\.js$/.test(path));
    expect(held.sort()).toEqual(own.sort());
  });

  test.each([
    [6, 'fresh'], [8, 'old'], [31, 'asked'],
  ] as const)('a copy of the list %i days old is %s', async (days, is) => {
    const asOf = new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10);
    walk.site.files.set('/catalogue.json', JSON.stringify({ ...JSON.parse(catalogueText) as object, asOf }));
    const { page } = await stand();
    await kept(page);
    expect(await page.locator('[data-old], [data-accept]').count()).toBe(0);
    walk.site.cut(true);
    await page.reload();
    await page.locator('[data-begin], [data-accept]').first().waitFor();
    expect([await page.locator('[data-old]').count(), await page.locator('[data-accept]').count()]).toEqual({ fresh: [0, 0], old: [1, 0], asked: [1, 1] }[is]);
    if (is === 'asked') await page.locator('[data-accept]').click();
    await page.locator('[data-begin]').click();
    await chip(page, 'tasks', 'mow-lawn').waitFor();
  });

  test('a device that leaves the counter keeps nothing of it, once nothing would be lost', async () => {
    const { page } = await stand();
    await kept(page);
    const left = () => page.evaluate(async () => ({
      caches: await caches.keys(), databases: (await indexedDB.databases()).map(({ name }) => name), workers: (await navigator.serviceWorker.getRegistrations()).length,
    }));
    const before = await left();
    expect([before.caches.length, before.databases.length, before.workers].every((count) => count > 0)).toBe(true);
    await page.locator('[data-queue]').click();
    await page.getByText('This device leaves the counter').click();
    await page.locator('[data-retire]').click();
    await page.getByText('nothing of the counter is left here').waitFor();
    expect(await left()).toEqual({ caches: [], databases: [], workers: 0 });
    expect(await page.locator('[data-retire]').count()).toBe(0);
  });

  test('without settings or without any list it says so, and goes on once they are there', async () => {
    walk.site.files.delete('/catalogue.json');
    const { page } = await watched(await (await walk.browser.newContext({ locale: 'en-US' })).newPage());
    await page.goto(`${walk.site.address}counter/`);
    await page.locator('[data-try-again]').waitFor();
    expect(await page.locator('[role="alert"]').textContent()).toMatch(/no stock list/);
    walk.site.files.set('/catalogue.json', catalogueText);
    await page.locator('[data-try-again]').click();
    await atStart(page);
  });
});
