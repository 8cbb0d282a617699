import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { AcreSetUp } from '../../src/setup/page.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { servePaths, type Served } from '../support/serve-paths.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { openDemo, type Demo, type Visit } from './browser.ts';
import { walk, wizardOn } from './buyer.ts';

const file = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url));
const buyer = JSON.parse(file('demo/answers/first-acre.json').toString()) as AnswersDocument;
declare const axe: { run(root: Element, options: object): Promise<AxeResult> };

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

async function open(options = {}): Promise<Visit & { setUp: Locator }> {
  const visit = await demo.visit('setup/', undefined, options);
  const setUp = visit.page.locator('acre-set-up');
  await setUp.locator('h1').waitFor();
  return { ...visit, setUp };
}

const settled = (setUp: Locator) => setUp.evaluate((element) => (element as AcreSetUp).settled);

const csv = (name: string, text: string | Buffer) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

async function choose(setUp: Locator, sheet: 'machines' | 'units', text: string | Buffer) {
  await setUp.locator(`input[data-sheet="${sheet}"]`).setInputFiles(csv(`${sheet}.csv`, text));
  await setUp.locator(`section#look`).waitFor();
  await settled(setUp);
}

async function saved(page: Page, setUp: Locator, button: string): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), setUp.locator(button).click()]);
  return readFileSync(await download.path(), 'utf8');
}

/** The dealer's own site: what he saved, the built widget, and a page with what he pasted. */
async function site(page: string, catalogue?: string): Promise<Served> {
  const served = await servePaths();
  for (const name of readdirSync(fileURLToPath(new URL('../../dist/widget', import.meta.url)))) served.put(`/acre-to-axle/${name}`, file(`dist/widget/${name}`));
  if (catalogue !== undefined) served.put('/acre-to-axle/catalogue.json', catalogue);
  served.put('/page.html', page);
  return served;
}

/** What was pasted, in a page of the dealer's: without the hash of a single file, for the site has the build of several. */
const pageWith = (pasted: string) =>
  `<!doctype html><html lang="en"><link rel="icon" href="data:,"><body>${pasted.replace(/ integrity="[^"]*" crossorigin="[^"]*"/, '').replace(/acre-to-axle\.\w\w\.js/, 'acre-to-axle.js')}</body></html>`;

const pastedOf = (setUp: Locator) => setUp.locator('[data-snippet]').textContent() as Promise<string>;
const focused = (setUp: Locator) => setUp.evaluate((element) => element.shadowRoot!.activeElement?.closest('section')?.id);

/** The demo's lot with things wrong in it: a heading nobody documented, hours that are none, a unit whose machine isn't there. */
const faulty = file('demo/csv/units.csv').toString()
  .replace(',hours,', ',meter says,')
  .replace(/^(rill-2024,rill,2024,model,"[^"]*"),74,/m, '$1,seventy-four,')
  .replace(/^rill-2021,rill,/m, 'rill-2021,rilll,');

test('from tables with faults to the mended catalogue, to what is pasted, to a page that shows a shortlist', async () => {
  const { page, setUp, complaints, requests } = await open();
  await setUp.locator('input[data-document]').setInputFiles({ name: 'dealer.json', mimeType: 'application/json', buffer: file('demo/csv/dealer.json') });
  await choose(setUp, 'machines', file('demo/csv/machines.csv'));
  await choose(setUp, 'units', faulty);

  // A column that wasn't known is said to be what it is.
  const columns = setUp.locator('section#columns tr', { has: page.getByText('meter says', { exact: true }) });
  await columns.locator('select').selectOption('hours');
  await settled(setUp);

  const finding = (code: string) => setUp.locator(`[data-code="${code}"]`);
  expect(await finding('cell.not-a-number').textContent()).toMatch(/seventy-four/);
  await finding('cell.not-a-number').locator('input').fill('74');
  await finding('cell.not-a-number').locator('input').press('Enter');
  await finding('cell.not-a-number').waitFor({ state: 'detached' });
  await settled(setUp);
  // Whoever mends with the keyboard goes on where he was.
  expect(await focused(setUp)).toBe('look');
  await finding('row.no-machine').locator('[data-option]', { hasText: 'rill' }).click();
  await finding('row.no-machine').waitFor({ state: 'detached' });
  await settled(setUp);
  expect(await focused(setUp)).toBe('look');
  expect(await setUp.locator('.of-fault').count()).toBe(0);

  await setUp.locator('textarea[data-terms="de"]').fill('Unsere Bedingungen.');
  await setUp.locator('textarea[data-terms="de"]').blur();
  await settled(setUp);

  const text = await saved(page, setUp, '[data-save]');
  const { value, faults } = readCatalogue(JSON.parse(text));
  expect(faults).toEqual([]);
  expect(value!.dealer.terms?.['de']?.guidance).toBe('Unsere Bedingungen.');
  const own = JSON.parse(file('demo/catalogue.json').toString()) as { units: { id: string; hours: number }[] };
  expect(value!.units!.map(({ id, hours }) => [id, hours])).toEqual(own.units.map(({ id, hours }) => [id, hours]));
  expect(value!.version).toMatch(/^sha256-[0-9a-f]{64}$/);

  const html = pageWith(await pastedOf(setUp));
  const { address, close } = await site(html, text);
  try {
    const there = await page.context().newPage();
    await there.goto(`${address}/page.html`);
    const wizard = wizardOn(there);
    await wizard.locator('h2').waitFor();
    await walk(wizard, buyer);
    expect(await wizard.locator('[part="machine"]').count()).toBeGreaterThan(0);
  } finally {
    await close();
  }
  expect(complaints).toEqual([]);
  expect(requests.filter((url) => !url.startsWith(demo.address) && !url.startsWith('data:') && !url.startsWith('blob:'))).toEqual([]);
});

test('a line-up typed by hand stands in the lines to paste, where a site takes no files', async () => {
  const { page, setUp, complaints } = await open();
  const form = setUp.locator('[data-add="machines"]');
  await form.locator('summary').click();
  const row = { name: '</script><b>Plum', make: 'Orchard', frame: 'small', 'years.from': '2015', mass: '1500 lb' };
  for (const [field, text] of Object.entries(row)) await form.locator(`[name="${field}"]`).fill(text);
  await form.locator('[name="tier"]').selectOption('economy');
  await form.locator('[name="years.meant"]').selectOption('model');
  await form.locator('button[type="submit"]').click();
  await setUp.locator('[data-way="lines"]').check();
  await setUp.locator('[data-offered="fr"]').uncheck();
  await setUp.locator('[data-dealer="name"]').fill('Orchard Yard');
  await setUp.locator('[data-dealer="name"]').blur();
  await settled(setUp);
  await setUp.locator('[data-snippet]', { hasText: '"name":"Orchard Yard"' }).waitFor();

  const { address, close } = await site(pageWith(await pastedOf(setUp)));
  try {
    const there = await page.context().newPage();
    await there.goto(`${address}/page.html`);
    await wizardOn(there).locator('h2').waitFor();
    const machines = await wizardOn(there).evaluate(async (element) => {
      const wizard = element as AcreToAxle;
      await wizard.ready;
      return wizard.shortlist?.shortlist.concat(wizard.shortlist.askDealer).map(({ machine }) => machine);
    });
    expect(machines).toEqual(['script-b-plum']);
    expect(await wizardOn(there).locator('option[lang]').evaluateAll((options) => options.map((each) => each.getAttribute('lang')))).toEqual(['en', 'de', 'es']);
    expect(await there.locator('body > b').count()).toBe(0);
  } finally {
    await close();
  }
  expect(complaints).toEqual([]);
});

test('a lot of ten thousand is read while the page goes on, the reading can be stopped, and what is too much is told', async () => {
  const { setUp } = await open();
  const [head, ...rows] = file('demo/csv/units.csv').toString().trim().split(/\r?\n(?=[a-z0-9-]+,)/);
  const many = [head, ...Array.from({ length: 10_000 }, (_, at) => rows[at % rows.length]!.replace(/^[^,]+/, `u-${at}`))].join('\n');
  const folder = mkdtempSync(join(tmpdir(), 'acre-to-axle-lot-'));
  const lot = join(folder, 'lot.csv');
  writeFileSync(lot, many);
  try {
    await setUp.locator('[data-demo]').click();
    await setUp.locator('section#look').waitFor();
    await settled(setUp);
    await setUp.locator('input[data-sheet="units"]').setInputFiles(lot);
    await setUp.locator('progress').waitFor();
    // Frames that were drawn while the reading went on: none, were it done where the page is.
    const frames = await setUp.evaluate((element) => new Promise<number>((resolve) => {
      let drawn = 0;
      const count = () => {
        drawn += 1;
        if (element.shadowRoot!.querySelector('progress')) requestAnimationFrame(count);
        else resolve(drawn);
      };
      count();
    }));
    expect(frames).toBeGreaterThan(10);
    await settled(setUp);
    expect(await setUp.locator('section#save').textContent()).toContain('10000 units');
    expect(await setUp.locator('[data-too-many]').textContent()).toMatch(/5000 .* at most/);
    expect(await setUp.locator('section#look .finding').count()).toBeLessThanOrEqual(50);

    await setUp.locator('input[data-sheet="units"]').setInputFiles({ ...csv('lot-2.csv', many) });
    await setUp.locator('.progress button').click();
    await setUp.locator('progress').waitFor({ state: 'detached' });
    await settled(setUp);
    expect(await setUp.locator('[data-held="units"]').textContent()).toContain('lot.csv: 10000 rows');
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('whoever leaves is asked only where something he did would be lost', async () => {
  const { page, setUp } = await open();
  let asked = 0;
  page.on('dialog', (dialog) => { asked += 1; void dialog.accept(); });
  await setUp.locator('[data-demo]').click();
  await setUp.locator('section#look').waitFor();
  await page.reload();
  expect(asked).toBe(0);
  await setUp.locator('[data-demo]').click();
  await setUp.locator('section#look').waitFor();
  const name = setUp.locator('[data-dealer="name"]');
  await name.fill('Orchard Yard');
  await name.blur();
  await settled(setUp);
  await page.reload();
  expect(asked).toBe(1);
});

test('hostile cells run nothing, lead nowhere, and leave as text', async () => {
  const { page, setUp, complaints } = await open();
  await setUp.locator('[data-demo]').click();
  await setUp.locator('section#look').waitFor();
  await choose(setUp, 'units', [
    'id,machine,"<img src=x onerror=""window.ran=1"">",notes,photo', 'u-1,rill,"<script>window.ran=1</script>","=HYPERLINK(""https://elsewhere.example"")",javascript:window.ran=1',
    'u-2,"<svg onload=window.ran=1>",@SUM(1),+1,data:text/html,x',
  ].join('\n'));
  expect(await page.evaluate(() => (window as unknown as { ran?: number }).ran)).toBe(undefined);
  expect(await setUp.evaluate((element) => [...element.shadowRoot!.querySelectorAll('a[href], img, script, iframe')].length)).toBe(0);
  const table = await saved(page, setUp, '[data-save-table="units"]');
  expect(table).toContain(`"'=HYPERLINK(""https://elsewhere.example"")"`);
  expect(table).toContain(`'@SUM(1)`);
  expect(complaints).toEqual([]);
});

test('files dropped together find their places, whatever they are called and in whatever order', async () => {
  const { page, setUp, complaints } = await open();
  const files = ['units.csv', 'machines.csv', 'dealer.json'].map((name, at) => ({ name: `${at}.${name.split('.')[1]}`, text: file(`demo/csv/${name}`).toString() }));
  const data = await page.evaluateHandle((dropped) => {
    const transfer = new DataTransfer();
    for (const { name, text } of dropped) transfer.items.add(new File([text], name));
    return transfer;
  }, files);
  await setUp.locator('.drop').dispatchEvent('drop', { dataTransfer: data });
  await setUp.locator('[data-held="machines"]', { hasText: '1.csv: 12 rows' }).waitFor();
  await settled(setUp);
  expect(await setUp.locator('[data-held="units"]').textContent()).toBe('0.csv: 28 rows');
  expect(await setUp.locator('[data-dealer="phone"]').inputValue()).toBe('555-555-0142');
  expect(complaints).toEqual([]);
});

test('what is no table is refused in words, and what was there stays', async () => {
  const { setUp } = await open();
  await setUp.locator('[data-demo]').click();
  await setUp.locator('section#look').waitFor();
  await settled(setUp);
  await setUp.locator('input[data-sheet="units"]').setInputFiles(csv('book.xlsx', Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0, 0])));
  await setUp.locator('[role="alert"]', { hasText: 'can’t be read' }).waitFor();
  expect(await setUp.locator('section#save').textContent()).toContain('28 units');
});

test.each([['light', 1200, 'en'], ['dark', 320, 'de']] as const)('axe finds nothing, and nothing is wider than the window: %s, %i, %s', async (colorScheme, width, language) => {
  const { page, setUp } = await open({ colorScheme, viewport: { width, height: 800 } });
  await page.evaluate(axeSource);
  const look = async () => {
    const { violations } = await setUp.evaluate((element) => axe.run(element, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] }));
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
  };
  await setUp.locator('[data-language]').selectOption(language);
  await setUp.locator('[data-demo]').click();
  await setUp.locator('section#look').waitFor();
  await settled(setUp);
  // What is usual where German is read doesn't stand in for what the catalogue says.
  expect(await setUp.locator('[data-dealer="currency"]').inputValue()).toBe('USD');
  // A finding of each kind: of a cell, a column, a row too long, a row without, a number in two ways, what can hardly be.
  await choose(setUp, 'units', `${faulty.trimEnd()}\nodd,rill,2021,model\n,rill\nold,rill,2021,model,"x",1.500\n`);
  await setUp.locator('[data-figure]').first().fill('much');
  await setUp.locator('[data-figure]').first().blur();
  await setUp.evaluate((element) => element.shadowRoot!.querySelectorAll('details').forEach((each) => { each.open = true; }));
  await setUp.locator('[data-show]').first().click();
  await setUp.locator('[name="text"]').first().waitFor();
  await look();
  await setUp.locator('[data-try]').click();
  await setUp.locator('acre-to-axle h2').waitFor();
  await setUp.locator('[data-way="lines"]').check();
  await look();
});
