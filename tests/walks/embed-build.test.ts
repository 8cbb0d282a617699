import { readFileSync } from 'node:fs';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test, vi } from 'vitest';
import { policyFor, snippet } from '../../src/embed/snippet.ts';
import { integrityOf, singleFiles } from '../../src/release/single-files.ts';
import { packageFile } from '../../src/release/project.ts';
import type { HandOnWords } from '../../src/widget/hand-on/words/words.ts';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import { servePaths, type Served } from '../support/serve-paths.ts';

// The wizard as one file a language, on the page of a dealer with a strict policy, the script from a host of its own.

const catalogue = readFileSync('demo/catalogue.json', 'utf8');
const phone = 'Call us: we ask the same questions.';
let files: ReadonlyMap<string, string>;
let browser: Browser;
let scripts: Served;
let dealer: Served;
let lenient: Served;

beforeAll(async () => {
  vi.stubEnv('NODE_ENV', 'production');
  files = await singleFiles();
  browser = await chromium.launch(await findChromium());
  scripts = await servePaths({ 'access-control-allow-origin': '*' });
  const policy = `default-src 'none'; img-src 'self'; ${policyFor({ script: scripts.address, catalogue: '/catalogue.json', ownFile: true })}`;
  dealer = await servePaths({ 'content-security-policy': policy });
  lenient = await servePaths({ 'content-security-policy': `${policy} 'allow-duplicates'` });
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await browser?.close();
  await Promise.all([scripts?.close(), dealer?.close(), lenient?.close()]);
});
afterEach(async () => { await Promise.all(browser.contexts().map((context) => context.close())); });

const scriptOf = (tag: string) => `acre-to-axle.${tag}.js`;

interface Visit {
  page: Page;
  requests: string[];
  complaints: string[];
}

/** Opens a dealer's page with the snippet in it; the hosts serve what was built, but for what is said otherwise. */
async function open(tag: string, { lang = tag, instead = {}, more = '', on = dealer }: { lang?: string; instead?: Record<string, string>; more?: string; on?: Served } = {}): Promise<Visit> {
  for (const [file, text] of Object.entries({ ...Object.fromEntries(files), ...instead })) scripts.put(`/${file}`, text);
  const embedded = snippet({
    script: `${scripts.address}/${scriptOf(tag)}`, integrity: integrityOf(files.get(scriptOf(tag))!), attributes: { catalogue: '/catalogue.json' }, fallback: [{ text: phone }],
  });
  on.put('/catalogue.json', catalogue);
  on.put('/icon.png', '');
  on.put('/lot.html', `<!doctype html><html lang="${lang}"><head><meta charset="utf-8"><title>Lot</title><link rel="icon" href="/icon.png"></head><body>${embedded}${more}</body></html>`);
  const page = await (await browser.newContext()).newPage();
  const visit: Visit = { page, requests: [], complaints: [] };
  page.on('request', (request) => visit.requests.push(new URL(request.url()).pathname));
  page.on('console', (message) => { if (message.type() !== 'log') visit.complaints.push(message.text()); });
  page.on('pageerror', (error) => visit.complaints.push(error.message));
  await page.goto(`${on.address}/lot.html`);
  return visit;
}

const heading = (page: Page) => page.locator('acre-to-axle').locator('h2').first();
/** The language the wizard speaks: that of the choice the buyer sees. */
const spoken = (page: Page) => page.locator('acre-to-axle').locator('.language select').inputValue();
const sheetIn = (page: Page, tag: string) => page.locator('acre-to-axle').locator(`.sheet[lang="${tag}"]`);
/** Waits until all is there that a language brings. */
const settled = (page: Page) => page.evaluate(() => document.querySelector('acre-to-axle')!.ready);
const choose = (page: Page, tag: string) => page.locator('acre-to-axle').locator('.language select').selectOption(tag);
/** The codes of the errors that the page will hear of. */
const errorsOf = (page: Page) => page.evaluate(() => {
  const heard: string[] = [];
  document.addEventListener('acre-error', ({ detail }) => heard.push(detail.code));
  Object.assign(globalThis, { heard });
});
const heard = (page: Page) => page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);

test.each(['en', 'de', 'es', 'fr'])('the script of %s is all there is to fetch, speaks its language, finds a result and makes a code of it', async (tag) => {
  const { page, requests, complaints } = await open(tag);
  await heading(page).waitFor();
  await settled(page);
  const entries = await page.evaluate((answers) => {
    const wizard = document.querySelector('acre-to-axle')!;
    wizard.answers = answers;
    return wizard.shortlist!.shortlist.length;
  }, JSON.parse(readFileSync('demo/answers/first-acre.json', 'utf8')) as never);
  expect(await sheetIn(page, tag).count()).toBe(1);
  expect(entries).toBeGreaterThan(0);
  const wizard = page.locator('acre-to-axle');
  await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="hand-on"] > summary').click();
  await wizard.locator('[part="hand-on"] .code svg').waitFor();
  const { handOn } = (await import(`../../src/widget/hand-on/words/${tag}.ts`)) as { handOn: HandOnWords };
  expect(await wizard.locator('[part="hand-on"]').textContent()).toContain(handOn.explained);
  expect(requests.filter((path) => path !== '/icon.png').sort()).toEqual([`/${scriptOf(tag)}`, '/catalogue.json', '/lot.html']);
  expect(complaints).toEqual([]);
});

test('another language is fetched once, from beside the script, and checked', async () => {
  const { page, requests, complaints } = await open('de');
  await settled(page);
  const before = requests.length;
  await choose(page, 'fr');
  await sheetIn(page, 'fr').waitFor();
  await settled(page);
  await choose(page, 'de');
  await sheetIn(page, 'de').waitFor();
  await choose(page, 'fr');
  await sheetIn(page, 'fr').waitFor();
  expect(requests.slice(before)).toEqual(['/acre-to-axle.words.fr.js']);
  expect(complaints).toEqual([]);
  expect(await page.evaluate(() => document.head.querySelectorAll('script').length)).toBe(0);
});

test('words that were altered on their way are refused, do nothing, and the wizard goes on in its own language', async () => {
  const words = files.get('acre-to-axle.words.fr.js')!;
  const { page, complaints } = await open('de', { instead: { 'acre-to-axle.words.fr.js': `${words}globalThis.altered = true;` } });
  await settled(page);
  await errorsOf(page);
  await choose(page, 'fr');
  await expect.poll(() => heard(page)).toEqual(['language.missing']);
  await expect.poll(() => spoken(page)).toBe('de');
  expect(await sheetIn(page, 'de').count()).toBe(1);
  expect(await page.evaluate(() => 'altered' in globalThis)).toBe(false);
  expect(complaints.some((line) => line.includes('acre-to-axle: language.missing'))).toBe(true);
  // As it was built it is taken, though it was refused before.
  scripts.put('/acre-to-axle.words.fr.js', words);
  await choose(page, 'fr');
  await sheetIn(page, 'fr').waitFor();
});

test('control: words that are altered and go by no hash would run', async () => {
  const words = files.get('acre-to-axle.words.fr.js')!;
  const { page } = await open('de', { instead: { 'acre-to-axle.words.fr.js': `${words}globalThis.altered = true;` } });
  await settled(page);
  await page.evaluate(`import('${scripts.address}/acre-to-axle.words.fr.js')`);
  expect(await page.evaluate(() => 'altered' in globalThis)).toBe(true);
});

test('words that are of another build are refused', async () => {
  const { page } = await open('de', { instead: { 'acre-to-axle.words.es.js': files.get('acre-to-axle.words.en.js')! } });
  await settled(page);
  await errorsOf(page);
  await choose(page, 'es');
  await expect.poll(() => heard(page)).toEqual(['language.missing']);
});

test('a script that was altered is refused by the hash in the snippet, and what stands inside the tag stays', async () => {
  const { page, complaints } = await open('de', { instead: { [scriptOf('de')]: `${files.get(scriptOf('de'))!}globalThis.altered = true;` } });
  await page.waitForLoadState('load');
  expect(complaints.some((line) => line.includes('integrity'))).toBe(true);
  expect(await page.evaluate(() => ['altered' in globalThis, customElements.get('acre-to-axle')])).toEqual([false, undefined]);
  expect(await page.getByText(phone).isVisible()).toBe(true);
});

const second = (file: string) => `<script type="module" src="${scripts.address}/${file}"></script>`;

test('a second script leaves the first in place: in silence where it is the same version, else naming both', async () => {
  const { version } = packageFile();
  const other = files.get(scriptOf('en'))!.replaceAll(`\`${version}\``, '`0.0.0-other`');
  expect(other).not.toBe(files.get(scriptOf('en')));
  const { page, complaints } = await open('de', { instead: { 'other.js': other }, more: second(scriptOf('en')) + second('other.js'), on: lenient });
  await settled(page);
  expect(await spoken(page)).toBe('de');
  expect(complaints).toEqual([expect.stringMatching(new RegExp(`0\\.0\\.0-other.*${version.replaceAll('.', '\\.')}`))]);
});

test('where the policy lets nobody have a second copy of Lit, the first goes on', async () => {
  const { page, complaints } = await open('de', { more: second(scriptOf('en')) });
  await settled(page);
  expect(complaints.join()).toContain('lit-html');
  expect(await spoken(page)).toBe('de');
  await choose(page, 'fr');
  await sheetIn(page, 'fr').waitFor();
});

test('a page in another language than the script is spoken to in its own', async () => {
  const { page, requests, complaints } = await open('de', { lang: 'es-MX' });
  await sheetIn(page, 'es').waitFor();
  expect(requests).toContain('/acre-to-axle.words.es.js');
  expect(complaints).toEqual([]);
});
