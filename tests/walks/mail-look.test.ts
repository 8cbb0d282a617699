import { readFileSync } from 'node:fs';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import type { Composed } from '../../src/relay/sender/composed.ts';
import { buyers } from '../handoff/buyers.ts';
import { demo, mailOf } from '../relay/mail-scene.ts';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';

const horses = buyers.find(({ name }) => name === 'horses')!.answers;
const axe = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

let browser: Browser;
beforeAll(async () => { browser = await chromium.launch({ ...(await findChromium()) }); });
afterAll(() => browser.close());

/** A mail as a reader of mail shows it, without pictures, and what it asked for over the network. */
async function shown({ html }: Composed, { width, scheme }: { width: number; scheme: 'light' | 'dark' }): Promise<{ page: Page; requests: string[] }> {
  const page = await (await browser.newContext({ viewport: { width, height: 1_000 }, colorScheme: scheme })).newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.route('**/*', (route) => route.abort());
  await page.setContent(html!);
  return { page, requests };
}

/** Elements that stick out of the window, by their text. */
const sticksOut = (page: Page) => page.evaluate(() => [
  ...(document.documentElement.scrollWidth > innerWidth ? ['the page itself'] : []),
  ...[...document.querySelectorAll('p, h1, h2, h3, h4, a, td')].filter((element) => element.getBoundingClientRect().right > innerWidth + 0.5).map((element) => element.textContent!.slice(0, 40)),
]);

/** What a check of accessibility finds, contrast included, as lines. */
async function findings(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    type Found = { id: string; nodes: { html: string; any: { data?: { messageKey?: string } }[] }[] }[];
    const { violations, incomplete } = await (globalThis as unknown as { axe: { run(options: object): Promise<Record<'violations' | 'incomplete', Found>> } }).axe
      .run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'], rules: { 'target-size': { enabled: false } } });
    // Between two lines of one paragraph the cell around it is hit: the paragraph's own ground all the same.
    const isOwnCell = (any: Found[number]['nodes'][number]['any']) => any.some(({ data }) => data?.messageKey === 'elmPartiallyObscured');
    return [...violations, ...incomplete].flatMap(({ id, nodes }) => nodes.filter(({ any }) => !isOwnCell(any)).map(({ html }) => `${id}: ${html.slice(0, 120)}`));
  });
}

const ways = (['en', 'de'] as const).flatMap((language) => ([320, 700] as const).flatMap((width) => (['light', 'dark'] as const).map((scheme) => ({ language, width, scheme }))));

describe('a buyer’s mail with pictures off', () => {
  test.each(ways)('in $language at $width px, $scheme, fits its width, fetches nothing and can be read', async ({ language, ...way }) => {
    const { page, requests } = await shown(mailOf(horses, { request: { language, units: language === 'de' ? 'metric' : 'us' } }), way);
    expect(await sticksOut(page)).toEqual([]);
    expect(await findings(page)).toEqual([]);
    expect(requests).toEqual([]);
    const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor.match(/\d+/g)!.map(Number));
    expect(Math.max(...ground) < 60).toBe(way.scheme === 'dark');
    await page.context().close();
  });

  test('draws all its bars to one scale', async () => {
    const { page } = await shown(mailOf(horses), { width: 700, scheme: 'light' });
    const bars = await page.evaluate(() => [...document.querySelectorAll('td.solid, td.open')].map((bar) => ({
      pixels: bar.getBoundingClientRect().width, said: bar.closest('table')!.parentElement!.querySelector('p')!.textContent!.replace(/\s+/g, ' '),
    })));
    const inches = (said: string) => {
      const [, feet, more] = /: (\d+) ft(?: (\d+) in)?/.exec(said) ?? [];
      return feet === undefined ? Number(/: (\d+) in/.exec(said)![1]) : Number(feet) * 12 + Number(more ?? 0);
    };
    expect(bars.length).toBeGreaterThan(15);
    const scales = bars.map(({ pixels, said }) => pixels / inches(said));
    // Bars are rounded to a hundredth of the longest, sizes to an inch.
    expect(Math.max(...scales) / Math.min(...scales)).toBeLessThan(1.04);
    await page.context().close();
  });
});

describe('fault 61: text that tricks the eye, in a mail', () => {
  const tricky = ['x'.repeat(200), '👩‍👩‍👧‍👦'.repeat(12), 'טרקטור משומש מאוד 42', '\u202eevil\u2066', `Z${'\u0351'.repeat(30)}`, 'W'.repeat(180), 'ﷺ'.repeat(40)];
  const catalogue: CatalogueDocument = {
    ...demo, machines: demo.machines.map((machine, index) => ({ ...machine, name: `${tricky[index % tricky.length]} ${index}` })),
    dealer: { ...demo.dealer, name: 'Überlangerhändlernamemitgarkeinemleerzeichen'.repeat(4), address: 'y'.repeat(190) },
  };

  test.each(['buyer', 'dealer', 'confirm'] as const)('goes on over lines within 320 px, for the %s', async (role) => {
    const { page } = await shown(mailOf(horses, { role, catalogue, request: { contact: { name: 'N'.repeat(80), phone: '5'.repeat(30) } } }), { width: 320, scheme: 'light' });
    expect(await sticksOut(page)).toEqual([]);
    expect(await page.evaluate(() => document.body.innerText)).not.toMatch(/[\u202a-\u202e\u2066\u2067]|\p{M}{5}/u);
    await page.context().close();
  });
});

describe('control', () => {
  const of = async (style: string) => (await shown({ fromName: '', subject: '', text: '', html: `<html lang="en"><title>x</title><p style="${style}">A line that is far too long for a telephone, or much too pale</p></html>` }, { width: 320, scheme: 'light' })).page;
  test('what sticks out is found', async () => expect(await sticksOut(await of('white-space:nowrap'))).toContain('the page itself'));
  test('what is too pale is found', async () => expect(await findings(await of('color:#ccc;background:#fff'))).toEqual([expect.stringContaining('color-contrast')]));
});
