import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ruleIds, rules } from '../../src/trade/book.ts';
import { fr as own } from '../../src/cli/rulebook/words/fr.ts';
import { fr } from '../../src/reasons/words/fr.ts';
import { sayRule } from '../../src/reasons/say.ts';
import { axeSource, type AxeResult } from './axe.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { openDemo, type Demo, type Visit } from './browser.ts';
import { wizardOn } from './buyer.ts';

declare const axe: { run(options: object): Promise<AxeResult> };

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

/** The rule book, come to by the link on the dealer's page. */
async function openBook(options: BrowserContextOptions = {}): Promise<Visit> {
  const visit = await demo.open(options);
  // What that page itself asks for late isn't the rule book's.
  await wizardOn(visit.page).evaluate((element) => (element as AcreToAxle).ready);
  visit.requests.length = 0;
  await visit.page.locator('a[href$="rulebook.html"]').click();
  await visit.page.getByRole('search').waitFor();
  return visit;
}

const shownIds = (page: Page) => page.locator('article:visible').evaluateAll((all) => all.map(({ id }) => id));
const status = (page: Page) => page.getByRole('status').textContent();
const having = (...words: string[]) => ruleIds.filter((id) => {
  const { statement, source } = rules[id];
  const from = source.basis === 'common-practice' ? '' : source.basis === 'derived' ? source.from : `${source.title} ${source.where ?? ''}`;
  return words.every((word) => `${id} ${statement} ${from}`.toLowerCase().includes(word));
});

test('asks for nothing but itself, and nothing is complained of', async () => {
  const { page, requests, complaints } = await openBook();
  expect(requests.filter((url) => !url.startsWith('data:'))).toEqual([`${demo.address}rulebook.html`]);
  expect(await shownIds(page)).toHaveLength(ruleIds.length);
  expect(complaints).toEqual([]);
  // The control: its own policy does report what it forbids.
  await page.evaluate(() => { document.body.append(Object.assign(new Image(), { src: 'https://elsewhere.example/x.png' })); });
  await expect.poll(() => complaints.length).toBeGreaterThan(0);
});

test('is searched with the keyboard alone, and says how many it found', async () => {
  const { page, complaints } = await openBook();
  const { keyboard } = page;
  const focused = () => page.evaluate(() => document.activeElement!.id);
  await keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement!.getAttribute('href'))).toBe('#rules');
  for (let step = 0; step < 40 && (await focused()) !== 'words'; step++) await keyboard.press('Tab');
  expect(await focused()).toBe('words');

  await keyboard.type('LOADER  share');
  const found = having('loader', 'share');
  expect(found.length).toBeGreaterThan(1);
  expect((await shownIds(page)).sort()).toEqual(found);
  expect(await status(page)).toBe(`${found.length} of ${ruleIds.length} rules`);
  await keyboard.press('Enter');
  expect(page.url()).toBe(`${demo.address}rulebook.html`);

  await keyboard.type(' by moonlight');
  expect(await shownIds(page)).toEqual([]);
  expect(await status(page)).toMatch(/^No rule/);

  await keyboard.press('Tab');
  await keyboard.press('Tab');
  await keyboard.press('Tab');
  await keyboard.press('Enter');
  await expect.poll(() => shownIds(page)).toHaveLength(ruleIds.length);
  expect(complaints).toEqual([]);
});

test('a source can be searched for too', async () => {
  const { page } = await openBook();
  await page.locator('#words').fill('d497');
  expect((await shownIds(page)).sort()).toEqual(having('d497'));
});

test('is narrowed by what a dealer may do and by how far it can be trusted, and by both', async () => {
  const { page } = await openBook();
  await page.locator('#trust').selectOption('memory');
  const fromMemory = ruleIds.filter((id) => rules[id].source.basis === 'memory');
  expect((await shownIds(page)).sort()).toEqual(fromMemory);
  await page.locator('#kind').selectOption('definition');
  expect((await shownIds(page)).sort()).toEqual(fromMemory.filter((id) => rules[id].kind === 'definition'));
  expect(await page.locator('main > section:visible').count()).toBe(await page.locator('nav[aria-labelledby] li:visible').count());
});

test('an address leads to a rule, and a link to one that was searched away shows it again', async () => {
  const { page } = await openBook();
  await page.goto(`${demo.address}rulebook.html#loader.margin`);
  const rule = page.locator('[id="loader.margin"]');
  const isInView = () => rule.evaluate((element) => { const { top } = element.getBoundingClientRect(); return top >= 0 && top < innerHeight; });
  await expect.poll(isInView).toBe(true);
  await page.locator('#words').fill('snow');
  expect(await rule.isVisible()).toBe(false);
  await page.evaluate(() => { location.hash = ''; location.hash = 'loader.margin'; });
  await expect.poll(isInView).toBe(true);
});

test('is whole without its script', async () => {
  const { page } = await demo.open();
  const still = await (await page.context().browser()!.newContext({ javaScriptEnabled: false })).newPage();
  await still.goto(`${demo.address}rulebook.html`);
  expect(await still.locator('article:visible').count()).toBe(ruleIds.length);
  expect(await still.getByRole('search').count()).toBe(0);
});

test('a browser reads each formula as MathML, wider than nothing and without an error', async () => {
  const { page } = await openBook();
  const sums = await page.locator('math').evaluateAll((all) => all.map((math) => ({
    namespace: math.namespaceURI, width: math.getBoundingClientRect().width, strangers: math.querySelectorAll('merror, :not(mrow, mfrac, msqrt, mroot, msup, munderover, mi, mn, mo, mtext, mspace)').length,
  })));
  expect(sums.length).toBeGreaterThan(20);
  expect(sums.filter(({ namespace, width, strangers }) => namespace !== 'http://www.w3.org/1998/Math/MathML' || width < 10 || strangers > 0)).toEqual([]);
});

const ways: [string, BrowserContextOptions][] = [
  ['on a phone, light', { viewport: { width: 320, height: 640 } }],
  ['on a desk, dark', { viewport: { width: 1200, height: 900 }, colorScheme: 'dark' }],
];
const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const tooWide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
/** What axe finds, on a page it has been let into. */
async function violationsOn(page: Page, ...looked: string[]): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async (runOnly) => {
    const { violations } = await axe.run({ runOnly, resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).slice(0, 3).join(' ')}`);
  }, looked);
}

describe.each(ways)('%s', (_way, options) => {
  test('axe has nothing to say, and nothing is wider than the screen', async () => {
    // The page's own policy would keep the checker out.
    const { page } = await openBook({ ...options, bypassCSP: true });
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await violationsOn(page, ...levels)).toEqual([]);
    // The control: a field without a name would be found.
    await page.evaluate(() => document.querySelector('label')!.remove());
    expect((await violationsOn(page, 'label')).join(' ')).toMatch(/^label/);
  });
});

test('the other languages are a link away, and French is searched in French on a phone, with axe', async () => {
  const { page, complaints } = await openBook({ viewport: { width: 320, height: 640 }, bypassCSP: true });
  await page.getByRole('link', { name: own.name, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: own.title }).waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('fr');
  expect(await page.locator('a[aria-current]').textContent()).toBe(own.name);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);

  // Typed as it is in haste: no accents, a straight apostrophe.
  await page.locator('#words').fill("L'essieu arriere");
  const found = ruleIds.filter((id) => ['l’essieu', 'arrière'].every((word) => sayRule(id, fr).includes(word)));
  expect(found.length).toBeGreaterThan(1);
  expect((await shownIds(page)).sort()).toEqual(found);
  expect(await status(page)).toBe(own.found.replace('{shown}', String(found.length)).replace('{all}', String(ruleIds.length)));
  expect(await violationsOn(page, ...levels)).toEqual([]);
  await page.locator('#words').fill('tracteur au clair de lune');
  expect(await status(page)).toBe(own.foundNone);
  expect(complaints).toEqual([]);
});
