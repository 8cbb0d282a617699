import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { simpleParser } from 'mailparser';
import type { Locator, Page } from 'playwright-core';
import PostalMime from 'postal-mime';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { fragmentOf, readHandedOn } from '../../src/handoff/link.ts';
import { pack } from '../../src/handoff/pack.ts';
import { longestMailto } from '../../src/handoff/mail/mailto.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { openDemo, type Demo } from './browser.ts';
import { isResult, wizardOn } from './buyer.ts';

// From a buyer's phone to another and back, over the built demo in a real browser.

/** Reads QR codes; put into the page as a script, it is there by this name. */
declare const jsQR: (pixels: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
const jsqrSource = readFileSync(createRequire(import.meta.url).resolve('jsqr'), 'utf8');
declare const axe: { run(root: Element, options: object): Promise<AxeResult> };
const rules = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] };

const farm = JSON.parse(readFileSync('demo/answers/hay-and-barn.json', 'utf8')) as AnswersDocument;
const subjects = { en: 'Tractors that fit', de: 'Traktoren, die' };
/** Marks in a link to a mail are those a typewriter has. */
const typewritten = (text: string) => text.replace(/[‘’]/g, "'").replace(/[“”„]/g, '"').replace(/[–—]/g, '-').replace(/[\u00a0\u202f]/g, ' ');
const phone = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2 };

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

const answersOf = (wizard: Locator) => wizard.evaluate((element) => (element as AcreToAxle).answers);
const shortlistOf = (wizard: Locator) => wizard.evaluate((element) => JSON.stringify((element as AcreToAxle).shortlist));

async function toResult(page: Page, { lang = 'en', theme = 'auto' }: { lang?: string; theme?: string } = {}) {
  const wizard = wizardOn(page);
  await wizard.evaluate(async (element, [said, language, colours]) => {
    const it = element as AcreToAxle;
    Object.assign(it, { lang: language, theme: colours });
    await it.ready;
    it.answers = said;
    await it.updateComplete;
  }, [farm, lang, theme] as const);
  if (!(await isResult(wizard))) await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="result"]').waitFor();
  return wizard;
}

async function unfold(wizard: Locator) {
  await wizard.locator('[part="hand-on"] > summary').click();
  await wizard.locator('[part="hand-on"] .code svg').waitFor();
}

/** What another library reads from the page as it is seen. */
async function seen(page: Page, code: Locator) {
  const picture = (await code.screenshot()).toString('base64');
  await page.addScriptTag({ content: jsqrSource });
  return page.evaluate(async (png) => {
    const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${png}`)).blob());
    const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
    context.drawImage(image, 0, 0);
    return jsQR(context.getImageData(0, 0, image.width, image.height).data, image.width, image.height)?.data;
  }, picture);
}

test('the code on a phone’s screen, read by another, opens the same answers and the same result, and is there shown the same', async () => {
  const { page, complaints } = await demo.open({ ...phone, colorScheme: 'dark' });
  const wizard = await toResult(page);
  await unfold(wizard);
  const link = (await seen(page, wizard.locator('.code svg')))!;
  expect(link).toBe(await wizard.locator('#hand-on-link').inputValue());
  expect(link.startsWith(`${demo.address}#a1=`)).toBe(true);

  const other = await demo.visit(link);
  const there = wizardOn(other.page);
  await there.locator('[part="result"]').waitFor();
  await there.locator('[part="opened"]').waitFor();
  expect(await answersOf(there)).toEqual(farm);
  expect(await shortlistOf(there)).toBe(await shortlistOf(wizard));
  await unfold(there);
  expect(await seen(other.page, there.locator('.code svg'))).toBe(link);
  expect(readHandedOn(await there.locator('#hand-on-typed').inputValue())).toEqual({ answers: farm });
  expect([...complaints, ...other.complaints]).toEqual([]);
});

test('nothing of it is fetched before it is unfolded, nothing of it is kept, and the page keeps title, history and address', async () => {
  const { page, requests } = await demo.open();
  const wizard = await toResult(page);
  const state = () => page.evaluate(() => [document.title, history.length, location.href, JSON.stringify(history.state)]);
  const before = await state();
  await wizard.evaluate((element) => (element as AcreToAxle).ready);
  const fetched = requests.length;
  await unfold(wizard);
  const besides = requests.slice(fetched).map((url) => new URL(url).pathname);
  expect(besides.length).toBeGreaterThan(0);
  expect(besides.every((path) => path.startsWith('/widget/'))).toBe(true);
  await wizard.locator('[part="hand-on"] button').first().click();
  expect(await state()).toEqual(before);
  expect(await page.evaluate(async () => [document.cookie, localStorage.length, sessionStorage.length, (await indexedDB.databases()).length, (await caches.keys()).length])).toEqual(['', 0, 0, 0, 0]);
});

test('the mail is saved, and opened by a link: other libraries read from both the shortlist and the answers, in two languages', async () => {
  const { page } = await demo.open({ acceptDownloads: true });
  const wizard = await toResult(page);
  await unfold(wizard);
  const writes = wizard.locator('[part="hand-on"] a.button');
  for (const [lang, name] of [['en', 'tractor-shortlist.eml'], ['de', 'traktor-auswahl.eml']] as const) {
    await wizard.evaluate((element, language) => { (element as AcreToAxle).lang = language; }, lang);
    await wizard.locator(`.sheet[lang="${lang}"] [part="hand-on"] a.button[href*="${encodeURIComponent(subjects[lang])}"]`).waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), writes.locator('xpath=preceding-sibling::button').click()]);
    expect(download.suggestedFilename()).toBe(name);
    const text = readFileSync(await download.path(), 'utf8');
    const [one, two] = await Promise.all([PostalMime.parse(text), simpleParser(text)]);
    const machine = await wizard.locator('.machine h3').first().textContent();
    const link = await wizard.locator('#hand-on-link').inputValue();
    for (const body of [one.text!, two.text!]) {
      expect(body).toContain(machine);
      expect(body.split(/\r?\n/).map((line) => line.trim())).toContain(link);
    }
    expect([one.subject, two.subject].map((subject) => subject!.startsWith(subjects[lang]))).toEqual([true, true]);
    expect([one.to, one.from, one.attachments.length]).toEqual([undefined, undefined, 0]);

    const href = (await writes.getAttribute('href'))!;
    expect(href.length).toBeLessThanOrEqual(longestMailto);
    const mail = new URL(href);
    expect([mail.protocol, mail.pathname, [...mail.searchParams.keys()]]).toEqual(['mailto:', '', ['subject', 'body']]);
    const lines = mail.searchParams.get('body')!.split('\r\n');
    expect(lines).toContain(typewritten((await wizard.locator('[part="terms"] p').first().textContent())!));
    expect(readHandedOn(lines.at(-1)!)).toEqual({ answers: farm });
  }
});

test('the page runs under a strict policy while a link is opened and the section unfolded', async () => {
  const policy = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src data:; base-uri 'none'; trusted-types lit-html; require-trusted-types-for 'script'";
  const { page, complaints } = await demo.visit(`index.html#${fragmentOf(pack(farm))}`, (opened) => opened.route('**/index.html', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': policy } });
  }));
  const wizard = wizardOn(page);
  await wizard.locator('[part="opened"]').waitFor();
  await unfold(wizard);
  await wizard.locator('[part="hand-on"] button').nth(1).click();
  await wizard.locator('[part="hand-on"] [role="status"]:not(:empty)').first().waitFor();
  expect(complaints).toEqual([]);
});

test.each([['light', 1280, 'en'], ['dark', 320, 'de']] as const)('axe finds nothing in it, and nothing is wider than the screen: %s, %i px, %s', async (theme, width, lang) => {
  const { page } = await demo.open({ viewport: { width, height: 800 } });
  await page.addScriptTag({ content: axeSource });
  const wizard = await toResult(page, { lang, theme });
  await unfold(wizard);
  const found = await wizard.evaluate((element, options) => axe.run(element.shadowRoot!.querySelector('[part="hand-on"]')!, options), rules);
  expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
  const small = await wizard.evaluate((element) => [...element.shadowRoot!.querySelectorAll('[part="hand-on"] :is(button, a, summary, textarea)')].filter((each) => each.getBoundingClientRect().height < 24).length);
  expect(small, 'targets below 24 px (WCAG 2.2, 2.5.8)').toBe(0);
});

test('where its file can’t be had it is said, and unfolding again tries again', async () => {
  const { page } = await demo.open();
  const wizard = await toResult(page);
  await page.route(/hand-on/, (route) => route.abort());
  await wizard.locator('[part="hand-on"] > summary').click();
  await wizard.locator('[part="hand-on"] [role="alert"]').waitFor();
  await page.unroute(/hand-on/);
  await wizard.locator('[part="hand-on"] > summary').click();
  await wizard.locator('[part="hand-on"] > summary').click();
  await wizard.locator('[part="hand-on"] .code svg').waitFor();
});
