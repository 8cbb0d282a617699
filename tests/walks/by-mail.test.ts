import { createHash } from 'node:crypto';
import type { Page, Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { readRequest } from '../../src/request/read-request.ts';
import type { RequestDocument } from '../../src/request/schema.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { answers, goToResult, lot } from './at-result.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { openDemo, type Demo } from './browser.ts';
import { wizardOn } from './buyer.ts';

const relay = 'https://mail.relay.example/';
const address = 'ann@buyer.example';

interface Handed {
  key: string | undefined;
  body: RequestDocument;
}

/** A relay of a few lines: what it was handed, and what it answers next. */
interface Stub {
  handed: Handed[];
  answer: (handed: Handed, count: number) => { status: number; body?: unknown; headers?: Record<string, string> };
  ticket: unknown;
}

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

async function atResult(catalogue: CatalogueDocument = lot) {
  const stub: Stub = { handed: [], answer: ({ key }) => ({ status: 202, body: { id: key } }), ticket: { ticket: 'given.out' } };
  const allow = { 'access-control-allow-origin': '*', 'access-control-allow-headers': '*', 'access-control-allow-methods': '*' };
  const shortlists = async (route: Route) => {
    const request = route.request();
    if (request.method() === 'OPTIONS') return route.fulfill({ status: 204, headers: allow });
    const handed: Handed = { key: request.headers()['idempotency-key'], body: request.postDataJSON() as RequestDocument };
    stub.handed.push(handed);
    const { status, body, headers } = stub.answer(handed, stub.handed.length);
    return route.fulfill({ status, headers: { ...allow, 'access-control-expose-headers': 'retry-after', ...headers }, contentType: 'application/json', body: JSON.stringify(body ?? {}) });
  };
  const visit = await demo.visit('', async (page: Page) => {
    await page.clock.install();
    await page.route(`${relay}v1/ticket?*`, (route) => route.fulfill({ status: 200, headers: allow, contentType: 'application/json', body: JSON.stringify(stub.ticket) }));
    await page.route(`${relay}v1/shortlists`, shortlists);
  });
  const wizard = await goToResult(visit.page, relay, catalogue);
  return { ...visit, wizard, stub };
}

declare const axe: { run(root: Element, options: object): Promise<AxeResult> };

async function axeOn(page: Page): Promise<unknown[]> {
  await page.addScriptTag({ content: axeSource });
  const found = await wizardOn(page).evaluate((element, runOnly) => axe.run(element.shadowRoot!.querySelector('[part="mail"]')!, { runOnly }), ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']);
  return found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
}

const status = '[part="mail"] [role="status"]';

test('nothing is offered, and nothing asked for, where the page names no relay', async () => {
  const { wizard, requests } = await atResult();
  await wizard.evaluate((element) => { (element as AcreToAxle).relay = undefined; });
  await expect.poll(() => wizard.locator('[part="by-mail"]').count()).toBe(0);
  expect(requests.filter((url) => url.startsWith(relay))).toEqual([]);
});

test('what is sent is a request of the contract, with no consent that wasn’t ticked, and the address is forgotten', async () => {
  const { wizard, stub, page, complaints } = await atResult();
  await wizard.locator('[part="by-mail"]').click();
  expect(await wizard.locator('#mail-heading').evaluate((heading) => (heading.getRootNode() as ShadowRoot).activeElement === heading)).toBe(true);
  expect(await axeOn(page)).toEqual([]);
  await wizard.getByLabel('Your mail address').fill(`  ${address} `);
  await page.keyboard.press('Enter');
  await wizard.getByText(`It goes to ${address}.`).waitFor();
  const [{ key, body }] = stub.handed as [Handed];
  expect(key).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(readRequest(body).faults).toEqual([]);
  expect(body).toMatchObject({ kind: 'shortlist', dealer: lot.id, address, consent: { mail: true, dealerCopy: false, statistics: false }, language: 'en', ticket: 'given.out' });
  expect(body.answers).toEqual(answers);
  expect(body).not.toHaveProperty('contact');
  await wizard.locator('[part="mail"]').getByRole('button', { name: 'Close' }).click();
  // Whoever wants it once more gets an empty form.
  await wizard.locator('[part="by-mail"]').click();
  expect(await wizard.getByLabel('Your mail address').inputValue()).toBe('');
  expect(await page.evaluate((said) => document.documentElement.outerHTML.includes(said) || JSON.stringify({ ...localStorage, ...sessionStorage }).includes(said) || location.href.includes(said), address)).toBe(false);
  expect(complaints).toEqual([]);
});

test('what is wrong is told at its field, and nothing is sent', async () => {
  const { wizard, stub } = await atResult();
  await wizard.locator('[part="by-mail"]').click();
  await wizard.locator('[part="send-mail"]').click();
  await wizard.getByText('Type the address it should go to').waitFor();
  await wizard.getByLabel('Your mail address').fill('ann@buyer.example, bob@buyer.example');
  await wizard.getByText('have a copy').click();
  await wizard.getByLabel('Your name').fill('Cheap at www.cheap.example');
  await wizard.locator('[part="send-mail"]').click();
  await wizard.getByText('Type one whole address').waitFor();
  await wizard.getByText('Type a name of letters').waitFor();
  expect(await wizard.locator('input[name="address"]').evaluate((field) => (field.getRootNode() as ShadowRoot).activeElement === field)).toBe(true);
  expect(stub.handed).toEqual([]);
});

test('a likely slip is asked about, never mended unasked', async () => {
  const { wizard } = await atResult();
  await wizard.locator('[part="by-mail"]').click();
  await wizard.getByLabel('Your mail address').fill('ann@buyer.con');
  await wizard.getByRole('button', { name: 'Did you mean ann@buyer.com?' }).click();
  expect(await wizard.getByLabel('Your mail address').inputValue()).toBe('ann@buyer.com');
});

test('the dealer gets name, phone and time only with the box ticked', async () => {
  const { wizard, stub } = await atResult();
  await wizard.locator('[part="by-mail"]').click();
  await wizard.getByLabel('Your mail address').fill(address);
  await wizard.getByText('have a copy').click();
  await wizard.getByLabel('Your name').fill('Ann O’Neill');
  await wizard.getByLabel('Phone').fill('+1 555 010 0199');
  await wizard.getByLabel('Good time to call').selectOption('evening');
  await wizard.locator('[part="send-mail"]').click();
  await wizard.getByText('on its way').waitFor();
  expect(stub.handed[0]!.body).toMatchObject({ consent: { dealerCopy: true }, contact: { name: 'Ann O’Neill', phone: '+1 555 010 0199', goodTime: 'evening' } });
});

// The faults of a network and a relay that a buyer may meet; the numbers are those of our list.
describe('what can go wrong on the way', () => {
  test('fault 1: a relay that isn’t there is told, the answers stay, and it is tried again with the same key', async () => {
    const { wizard, stub, page } = await atResult();
    await page.route(`${relay}v1/shortlists`, (route) => route.abort('connectionrefused'), { times: 1 });
    await wizard.locator('[part="by-mail"]').click();
    await wizard.getByLabel('Your mail address').fill(address);
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText('can’t be reached').waitFor();
    await wizard.getByText('Nothing is lost').waitFor();
    await page.clock.runFor(10_000);
    await wizard.getByText('on its way').waitFor();
    expect(stub.handed).toHaveLength(1);
  });

  test('fault 3: where the answer was lost it goes again under the same key', async () => {
    const { wizard, stub, page } = await atResult();
    stub.answer = ({ key }, count) => (count === 1 ? { status: 502 } : { status: 202, body: { id: key } });
    await wizard.locator('[part="by-mail"]').click();
    await wizard.getByLabel('Your mail address').fill(address);
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText('can’t be taken just now').waitFor();
    await page.clock.runFor(10_000);
    await wizard.getByText('on its way').waitFor();
    expect(new Set(stub.handed.map(({ key }) => key)).size).toBe(1);
  });

  test('fault 4: a page to log in with, sent as 200, is never taken for success', async () => {
    const { wizard, stub } = await atResult();
    stub.answer = () => ({ status: 200, body: '<html>' });
    await wizard.locator('[part="by-mail"]').click();
    await wizard.getByLabel('Your mail address').fill(address);
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText('can’t be reached').waitFor();
  });

  test('fault 7: it waits as long as it is told, comes again at most three times by itself, and then waits to be asked', async () => {
    const { wizard, stub, page } = await atResult();
    stub.answer = () => ({ status: 503, headers: { 'retry-after': '20' } });
    await wizard.locator('[part="by-mail"]').click();
    await wizard.getByLabel('Your mail address').fill(address);
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText(/Trying again in 2\d s/).waitFor();
    // From here on time goes only as it is told to.
    await page.clock.pauseAt(await page.evaluate(() => Date.now()) + 3_000);
    await page.clock.runFor(7_000);
    expect(stub.handed).toHaveLength(1);
    // Run no further than to the next attempt: its own deadline of ten seconds goes by this clock too.
    let seconds = 17;
    for (const [attempt, least, most] of [[2, 20, 26], [3, 45, 59], [4]] as const) {
      await page.clock.runFor(seconds * 1000);
      await expect.poll(() => stub.handed.length).toBe(attempt);
      await wizard.locator(status).getByText('can’t be taken').waitFor();
      if (least === undefined) break;
      seconds = Number(/Trying again in (\d+) s/.exec(await wizard.locator(status).innerText())![1]);
      expect(seconds).toBeGreaterThanOrEqual(least);
      expect(seconds).toBeLessThanOrEqual(most);
    }
    await page.clock.runFor(600_000);
    expect(stub.handed).toHaveLength(4);
    stub.answer = ({ key }) => ({ status: 202, body: { id: key } });
    await wizard.getByRole('button', { name: 'Try again' }).click();
    await wizard.getByText('on its way').waitFor();
    expect(new Set(stub.handed.map(({ key }) => key)).size).toBe(1);
  });

  test('what the relay refuses is told by its code, the form stays, and what is changed goes under a key of its own', async () => {
    const { wizard, stub } = await atResult();
    stub.answer = ({ key }, count) => (count === 1 ? { status: 400, body: { code: 'not-a-request' } } : { status: 202, body: { id: key } });
    await wizard.locator('[part="by-mail"]').click();
    await wizard.getByLabel('Your mail address').fill(address);
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText('wasn’t taken as it is').waitFor();
    await wizard.getByLabel('Your mail address').fill(`other.${address}`);
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText('on its way').waitFor();
    expect(new Set(stub.handed.map(({ key }) => key)).size).toBe(2);
  });

  test('fault 47: what a relay wants reckoned is reckoned, and a field no person sees refuses nobody', async () => {
    const { wizard, stub } = await atResult();
    stub.ticket = { ticket: 'given.out', work: { bits: 12 } };
    await wizard.locator('[part="by-mail"]').click();
    await wizard.getByLabel('Your mail address').fill(address);
    await wizard.locator('.bait input').evaluate((field: HTMLInputElement) => {
      field.value = 'filled in by a helper';
      field.dispatchEvent(new Event('input'));
    });
    await wizard.locator('[part="send-mail"]').click();
    await wizard.getByText('on its way').waitFor();
    const { work, leftEmpty } = stub.handed[0]!.body;
    expect(leftEmpty).toBe('filled in by a helper');
    expect(createHash('sha256').update(`given.out:${work}`).digest().readUInt16BE(0) >> 4).toBe(0);
  });
});

test('a page may keep it from being sent, and hears of it without the address', async () => {
  const { wizard, stub, page } = await atResult();
  await page.evaluate(() => {
    const heard: unknown[] = [];
    Object.assign(window, { heard });
    for (const type of ['acre-before-submit', 'acre-submitted'] as const) {
      document.addEventListener(type, (event) => {
        heard.push([type, (event as CustomEvent).detail]);
        if (heard.length === 1) event.preventDefault();
      });
    }
  });
  await wizard.locator('[part="by-mail"]').click();
  await wizard.getByLabel('Your mail address').fill(address);
  await wizard.locator('[part="send-mail"]').click();
  await expect.poll(() => page.evaluate(() => (window as unknown as { heard: unknown[] }).heard.length)).toBe(1);
  expect(stub.handed).toEqual([]);
  await wizard.locator('[part="send-mail"]').click();
  await wizard.getByText('on its way').waitFor();
  expect(await page.evaluate(() => (window as unknown as { heard: unknown[] }).heard)).toEqual([
    ['acre-before-submit', { kind: 'shortlist' }], ['acre-before-submit', { kind: 'shortlist' }], ['acre-submitted', { kind: 'shortlist' }],
  ]);
});

test('with nothing on the lot that does, word of one is offered first, and the dealer gets the address for it', async () => {
  const { wizard, stub } = await atResult({ ...lot, units: [] });
  await wizard.getByRole('button', { name: 'Tell me when one comes in' }).click();
  await wizard.getByText(`${lot.dealer.name} gets your address`).waitFor();
  await wizard.getByLabel('Your mail address').fill(address);
  await wizard.getByLabel('Your name').fill('Cheap at www.cheap.example');
  await wizard.getByRole('button', { name: 'Ask for it' }).click();
  await wizard.getByText('Type a name of letters').waitFor();
  expect(stub.handed).toEqual([]);
  await wizard.getByLabel('Your name').fill('');
  await wizard.getByRole('button', { name: 'Ask for it' }).click();
  await wizard.getByText('knows what you are looking for').waitFor();
  expect(stub.handed[0]!.body).toMatchObject({ kind: 'notify', consent: { mail: true, dealerCopy: true, statistics: false } });
});
