/** Takes the pictures of the dealer's guide anew, from the built demo: `node demo/docs/take-pictures.mjs` after `npm run build`. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium } from '../../tests/support/chromium.mjs';
import { serve } from '../serve.mjs';

const beside = (path) => fileURLToPath(new URL(path, import.meta.url));
const { address, close } = await serve(0);
const browser = await chromium.launch(await findChromium());
const page = await (await browser.newContext({ viewport: { width: 1000, height: 800 } })).newPage();
await page.goto(`${address}setup/`);
const setUp = page.locator('acre-set-up');
await setUp.locator('h1').waitFor();

const settled = () => setUp.evaluate((element) => element.settled);
const choose = async (input, name, text) => {
  await setUp.locator(input).setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  await setUp.locator('section#look').waitFor();
  await settled();
};
const take = (section, name) => setUp.locator(`section#${section}`).screenshot({ path: beside(`pictures/${name}.png`) });
const csv = (name) => readFileSync(beside(`../csv/${name}`), 'utf8');

await setUp.locator('input[data-document]').setInputFiles(beside('../csv/dealer.json'));
await choose('input[data-sheet="machines"]', 'machines.csv', csv('machines.csv'));
// What a lot looks like that nobody has looked through yet.
await choose('input[data-sheet="units"]', 'units.csv', csv('units.csv').replace(',hours,', ',meter says,').replace(/^rill-2021,rill,/m, 'rill-2021,rilll,'));
await take('files', 'tables');
await take('columns', 'columns');
await take('look', 'mending');
await setUp.locator('section#columns select[data-column="units 6"]').selectOption('hours');
await settled();
await setUp.locator('[data-code="row.no-machine"] input').fill('rill');
await setUp.locator('[data-code="row.no-machine"] button[type="submit"]').click();
await settled();
await take('save', 'saving');
await browser.close();
await close();
