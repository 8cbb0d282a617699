import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import type { AcreErrorCode } from '../../src/widget/events.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { openDemo, type Demo } from './browser.ts';
import { serveFaults, type FaultServer } from './fault-server.ts';

// What may happen to a catalogue on its way: what the buyer reads, what the page is told, and how often it is tried.

const good = readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8');

let demo: Demo;
let faults: FaultServer;
beforeAll(async () => { [demo, faults] = await Promise.all([openDemo(), serveFaults(good)]); });
afterAll(async () => {
  await demo.close();
  await faults.close();
});

/** A page of the demo with the script on it and nothing else; served, for what a test hands in may not ask other hosts. */
const emptyPage = async (prepare?: (page: Page) => Promise<unknown>) => {
  const visit = await demo.visit('embed/', prepare);
  await visit.page.evaluate(() => document.body.replaceChildren());
  await visit.page.addScriptTag({ type: 'module', url: '/widget/acre-to-axle.js' });
  await visit.page.evaluate(() => customElements.whenDefined('acre-to-axle'));
  return visit;
};

interface Told {
  codes: string[];
  /** What the buyer is told in place of a question, and whether he still sees the dealer's words in the tag. */
  alert: string | undefined;
  fallback: boolean;
  machines: number;
}

/** Puts a wizard on the page for an address and waits until it is known what becomes of it. */
const put = (page: Page, catalogue: string, attributes: Record<string, string> = {}) => page.evaluate(async ([address, given]) => {
  const element = document.createElement('acre-to-axle') as AcreToAxle;
  const codes: string[] = [];
  element.addEventListener('acre-error', ({ detail }) => { codes.push(detail.code); });
  for (const [name, value] of Object.entries(given)) element.setAttribute(name, value);
  element.innerHTML = '<p>Call us</p>';
  element.setAttribute('catalogue', address);
  document.body.append(element);
  await element.ready;
  const told = {
    codes, alert: element.shadowRoot!.querySelector('[role="alert"]')?.textContent ?? undefined,
    fallback: (element.firstElementChild as HTMLElement).offsetHeight > 0, machines: element.shortlist?.shortlist.length ?? 0,
  };
  element.remove();
  return told;
}, [catalogue, attributes] as const) as Promise<Told>;

const call = /call|write/i;

describe('in the way of the catalogue', () => {
  test.each<[string, AcreErrorCode, number]>([
    ['not-there', 'catalogue.missing', 1],
    ['server-error', 'catalogue.missing', 2],
    ['no-cors', 'catalogue.missing', 2],
    ['broken-off', 'catalogue.missing', 2],
    ['log-in', 'catalogue.wrong-type', 1],
    ['wrong-type', 'catalogue.wrong-type', 1],
    ['truncated', 'catalogue.not-json', 1],
    ['trailing-comma', 'catalogue.not-json', 1],
    ['empty', 'catalogue.not-json', 1],
    ['utf-16', 'catalogue.not-json', 1],
    ['empty-list', 'catalogue.faulty', 1],
    ['not-one', 'catalogue.faulty', 1],
    ['bad-machine', 'catalogue.faulty', 1],
    ['no-machines', 'catalogue.empty', 1],
    ['newer', 'catalogue.newer', 1],
    ['too-many-rows', 'catalogue.too-large', 1],
    ['too-large', 'catalogue.too-large', 1],
    ['gzip-bomb', 'catalogue.too-large', 1],
  ])('“%s” is told as %s, in words for the buyer, with the dealer’s own beside them; tried %i times', async (fault, code, tries) => {
    const { page, complaints } = await shared();
    complaints.length = 0;
    const told = await put(page, `${faults.address}/${fault}`);
    expect(told.codes).toEqual([code]);
    expect(told.alert).toMatch(call);
    expect(told.alert).not.toMatch(/catalogue|json|http|\d{3}/i);
    expect(told.fallback).toBe(true);
    expect(told.machines).toBe(0);
    expect(faults.asked.get(fault)).toBe(tries);
    expect(complaints.filter((each) => each.startsWith('acre-to-axle: '))).toHaveLength(1);
    expect(complaints.join('\n')).toContain(`acre-to-axle: ${code}\n`);
  });

  test.each<[string, readonly AcreErrorCode[]]>([
    ['good', []],
    ['as-text', []],
    ['byte-order-mark', []],
    ['error-once', []],
    ['sold', ['catalogue.no-stock']],
    ['old', ['catalogue.stale']],
    ['bad-unit', ['catalogue.mended']],
  ])('with “%s” the wizard works, and the page is told %j', async (kind, codes) => {
    const { page } = await shared();
    const told = await put(page, `${faults.address}/${kind}`);
    expect(told).toEqual({ codes, alert: undefined, fallback: false, machines: expect.any(Number) as number });
    expect(told.machines).toBeGreaterThan(0);
  });

  let page: ReturnType<typeof emptyPage> | undefined;
  const shared = () => (page ??= emptyPage());
});

describe('slow', () => {
  test.each(['stalled', 'no-answer'])('“%s”: the first question is there; after 8 s it is tried once more, after 16 s it is told', async (fault) => {
    const { page, requests, complaints } = await emptyPage((opened) => opened.clock.install());
    const address = `${faults.address}/${fault}`;
    await page.evaluate((address) => {
      const element = document.createElement('acre-to-axle') as AcreToAxle;
      element.addEventListener('acre-error', ({ detail }) => { document.title = detail.code; });
      element.setAttribute('loading', 'eager');
      element.setAttribute('catalogue', address);
      document.body.append(element);
    }, address);
    const wizard = page.locator('acre-to-axle');
    const asked = async (times: number) => {
      await expect.poll(async () => {
        await page.clock.runFor(300);
        return requests.filter((url) => url === address).length;
      }).toBe(times);
    };
    await asked(1);
    await wizard.locator('h2').waitFor();
    await page.clock.fastForward(8_100);
    await asked(2);
    expect(await page.title()).not.toBe('catalogue.slow');
    await page.clock.fastForward(8_100);
    await expect.poll(async () => {
      await page.clock.runFor(300);
      return page.title();
    }).toBe('catalogue.slow');
    expect(await wizard.locator('[role="alert"]').textContent()).toMatch(call);
    expect(complaints).toEqual([expect.stringMatching(/^acre-to-axle: catalogue\.slow/)]);
  });
});

describe('the last good list', () => {
  const seen = async (attributes: Record<string, string>, path: string) => {
    const { page } = await emptyPage();
    const first = await put(page, `${faults.address}/${path}`, attributes);
    const second = await put(page, `${faults.address}/${path}`, attributes);
    return { first, second, stored: await page.evaluate(() => caches.keys()) };
  };

  test.each([['gone-later', 'catalogue.missing'], ['bad-later', 'catalogue.faulty']])('“%s”: where the page wants it kept, it steps in and is said to', async (path, code) => {
    const { first, second } = await seen({ 'keep-catalogue': '' }, path);
    expect(first.codes).toEqual([]);
    expect(second.codes).toEqual([code, 'catalogue.kept']);
    expect(second.machines).toBe(first.machines);
  });

  test('where the page doesn’t ask for it, nothing is kept', async () => {
    const { stored } = await seen({}, 'good');
    expect(stored).toEqual([]);
  });
});

test('a catalogue written inside the tag is read, whether it is there before the element or put in later; one with faults is told of', async () => {
  const { page, requests } = await emptyPage();
  const told = await page.evaluate(async (document_) => {
    const inside = (text: string) => Object.assign(document.createElement('script'), { type: 'application/json', textContent: text });
    const settled = async (element: AcreToAxle) => {
      await element.ready;
      return element.shortlist?.shortlist.length;
    };
    const before = document.createElement('acre-to-axle') as AcreToAxle;
    before.append(inside(document_));
    document.body.append(before);
    const later = document.createElement('acre-to-axle') as AcreToAxle;
    document.body.append(later);
    await later.updateComplete;
    later.append(inside(document_));
    await new Promise((passed) => { requestAnimationFrame(() => setTimeout(passed)); });
    const faulty = document.createElement('acre-to-axle') as AcreToAxle;
    const codes: string[] = [];
    faulty.addEventListener('acre-error', ({ detail }) => { codes.push(detail.code); });
    faulty.append(inside('{'));
    document.body.append(faulty);
    return [await settled(before), await settled(later), await settled(faulty), codes];
  }, good);
  expect(told).toEqual([expect.any(Number), expect.any(Number), undefined, ['catalogue.not-json']]);
  expect(requests.filter((url) => url.includes('catalogue'))).toEqual([]);
});

test('an empty lot and an old list head the result, with how to reach the dealer; so does the version of the list below', async () => {
  const { page } = await emptyPage();
  const resultOf = (fault: string) => page.evaluate(async (address) => {
    const element = document.createElement('acre-to-axle') as AcreToAxle;
    element.setAttribute('catalogue', address);
    document.body.append(element);
    await element.ready;
    const root = element.shadowRoot!;
    root.querySelector<HTMLElement>('[part="see-result"]')!.click();
    await element.updateComplete;
    const text = (part: string) => root.querySelector(`[part="${part}"]`)?.textContent ?? '';
    const told = { stock: text('stock'), terms: text('terms'), units: root.querySelectorAll('.unit').length };
    element.remove();
    return told;
  }, `${faults.address}/${fault}`);
  const sold = await resultOf('sold');
  expect(sold.stock).toMatch(/Nothing is for sale.*555-555-0142/s);
  expect(sold.units).toBe(0);
  const old = await resultOf('old');
  expect(old.stock).toMatch(/March 1, 2021.*555-555-0142/s);
  expect(old.terms).toContain('March 1, 2021');
  expect((await resultOf('good')).stock).toBe('');
});

test('photos come in a box of a fixed size, one that can’t be had leaves the page where it was, and none is asked for that isn’t one', async () => {
  const { page } = await emptyPage();
  const asked: string[] = [];
  let refuse = () => {};
  const refused = new Promise<void>((resolve) => { refuse = resolve; });
  await page.route('https://photos.example/**', async (route) => {
    asked.push(`${route.request().url()} ${route.request().headers()['referer'] ?? 'no referrer'}`);
    await refused;
    await route.fulfill({ status: 404 });
  });
  const document = JSON.parse(good) as CatalogueDocument;
  const [first, second] = document.units!.filter(({ machine }) => machine === document.units![0]!.machine);
  first!.photo = 'https://photos.example/7.jpg';
  second!.photo = 'https://user:pw@photos.example/8.jpg';
  await page.evaluate((catalogue) => {
    const element = Object.assign(globalThis.document.createElement('acre-to-axle'), { catalogue });
    globalThis.document.body.append(element);
  }, document);
  const wizard = page.locator('acre-to-axle');
  await wizard.evaluate((element) => (element as AcreToAxle).ready);
  await wizard.locator('[part="see-result"]').click();
  const more = wizard.getByRole('button', { name: /more machines/ });
  await more.click();
  await wizard.evaluate((element) => element.shadowRoot!.querySelectorAll<HTMLDetailsElement>('details.printed').forEach((each) => { each.open = true; }));
  const photo = wizard.locator('.photo');
  expect(await photo.count()).toBe(1);
  await photo.scrollIntoViewIfNeeded();
  await expect.poll(() => asked).toEqual(['https://photos.example/7.jpg no referrer']);
  const places = () => wizard.evaluate((element) => [...element.shadowRoot!.querySelectorAll('.unit, .photo')].map((each) => JSON.stringify(each.getBoundingClientRect())));
  const before = await places();
  refuse();
  await expect.poll(() => photo.getAttribute('data-bare')).toBe('');
  expect(await places()).toEqual(before);
  expect(await photo.isVisible()).toBe(false);
});

test('a list that changes between question and result: the answers stay, what was sold meanwhile is gone, and the result says which list it is of', async () => {
  const { page } = await emptyPage();
  const document = JSON.parse(good) as CatalogueDocument;
  const result = await page.evaluate(async (catalogue) => {
    const element = Object.assign(globalThis.document.createElement('acre-to-axle'), { catalogue: { ...catalogue, version: 'first' } });
    globalThis.document.body.append(element);
    await element.ready;
    const root = element.shadowRoot!;
    root.querySelector<HTMLElement>('input[value="dig"]')!.click();
    await element.updateComplete;
    root.querySelector<HTMLElement>('[part="continue"]')!.click();
    await element.updateComplete;
    const offered = () => element.shortlist!.shortlist.flatMap(({ units }) => units.map(({ unit }) => unit));
    const [best] = offered();
    element.catalogue = { ...catalogue, version: 'second', asOf: '2026-11-23', units: catalogue.units!.map((unit) => (unit.id === best ? { ...unit, status: 'sold' as const } : unit)) };
    await element.ready;
    root.querySelector<HTMLElement>('[part="see-result"]')!.click();
    await element.updateComplete;
    return { best: best!, now: offered(), terms: root.querySelector('[part="terms"]')!.textContent, tasks: element.answers.tasks, of: element.shortlist!.catalogue };
  }, document);
  expect(result.now).not.toContain(result.best);
  expect(result.now.length).toBeGreaterThan(0);
  expect(result.tasks).toEqual([{ task: 'dig' }]);
  expect(result.of).toEqual({ id: document.id, version: 'second', asOf: '2026-11-23' });
  expect(result.terms).toMatch(/November 23, 2026 · second/);
});

test('tried again by the buyer, it works once the list is there', async () => {
  const { page } = await emptyPage();
  let there = false;
  await page.route('**/comes-back.json', (route) => (there ? route.fulfill({ contentType: 'application/json', body: good }) : route.fulfill({ status: 404 })));
  await page.evaluate(() => {
    const element = document.createElement('acre-to-axle');
    element.setAttribute('catalogue', '/comes-back.json');
    document.body.append(element);
  });
  const wizard = page.locator('acre-to-axle');
  await wizard.locator('[role="alert"]').waitFor();
  there = true;
  await wizard.locator('[part="try-again"]').click();
  await wizard.locator('h2').waitFor();
  await expect.poll(() => wizard.evaluate((element) => (element as AcreToAxle).shortlist?.shortlist.length)).toBeGreaterThan(0);
});

test('a page that names no list at all is told so, and the buyer isn’t left waiting', async () => {
  const { page } = await emptyPage((opened) => opened.clock.install());
  const heard = page.evaluate(() => new Promise((resolve) => {
    const element = document.createElement('acre-to-axle');
    element.addEventListener('acre-error', (event) => resolve((event as CustomEvent<{ code: string }>).detail.code));
    document.body.append(element);
  }));
  await page.locator('acre-to-axle').waitFor();
  await expect.poll(async () => {
    await page.clock.runFor(2_000);
    return page.locator('acre-to-axle').locator('[role="alert"]').count();
  }).toBe(1);
  expect(await heard).toBe('catalogue.unnamed');
});
