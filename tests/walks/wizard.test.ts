import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { openDemo, type Demo } from './browser.ts';
import { answer, isCheck, isResult, questionOn, walk, wizardOn } from './buyer.ts';

const file = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const buyers = ['first-acre', 'hay-and-barn', 'steep-and-careful'] as const;
const answersOf = (buyer: string) => JSON.parse(readFileSync(file(`demo/answers/${buyer}.json`), 'utf8')) as AnswersDocument;

const onCommandLine = (answers: string) =>
  spawnSync(process.execPath, [file('dist/cli/acre-to-axle.js'), 'shortlist', '--catalogue', file('demo/catalogue.json'), '--answers', '-', '--format', 'json'], { input: answers, encoding: 'utf8', maxBuffer: 2 ** 26 });

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

describe.each(buyers)('the buyer of %s', (buyer) => {
  test('walks the whole wizard to a shortlist, which the command line computes to the same bytes', async () => {
    const { page, complaints } = await demo.open();
    const wizard = wizardOn(page);
    const asked = await walk(wizard, answersOf(buyer));
    expect(new Set(asked).size).toBe(asked.length);

    const { answers, shortlist } = await wizard.evaluate((element) => {
      const { answers: said, shortlist: found } = element as AcreToAxle;
      return { answers: JSON.stringify(said), shortlist: JSON.stringify(found) };
    });
    const { stdout, status } = onCommandLine(answers);
    expect(status).toBe(0);
    expect(stdout).toBe(`${shortlist}\n`);
    expect(await wizard.locator('.machine').count()).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
  });

  test('set as a document, gives the same bytes as on the command line', async () => {
    const { page } = await demo.open();
    const written = readFileSync(file(`demo/answers/${buyer}.json`), 'utf8');
    const shortlist = await wizardOn(page).evaluate(async (element, said) => {
      await (element as AcreToAxle).ready;
      (element as AcreToAxle).answers = JSON.parse(said) as AnswersDocument;
      return JSON.stringify((element as AcreToAxle).shortlist);
    }, written);
    expect(onCommandLine(written).stdout).toBe(`${shortlist}\n`);
  });
});

test('can be walked with the keyboard alone', async () => {
  const { page } = await demo.open();
  const wizard = wizardOn(page);
  const press = (...keys: string[]) => keys.reduce<Promise<void>>((before, key) => before.then(() => page.keyboard.press(key)), Promise.resolve());
  const focused = () => wizard.evaluate((element) => {
    const at = element.shadowRoot!.activeElement;
    return at ? `${at.tagName} ${(at as HTMLInputElement).value ?? ''} ${at.textContent.trim()}`.trim() : '';
  });
  const tabTo = async (what: RegExp) => {
    for (let step = 0; step < 40 && !what.test(await focused()); step++) await press('Tab');
    expect(await focused()).toMatch(what);
  };

  await wizard.locator('input').first().focus();
  await press('Space');
  await tabTo(/^BUTTON.*Continue/);
  await press('Enter');
  expect(await focused()).toMatch(/^H2/);
  while (!(await isCheck(wizard))) {
    if ((await wizard.getByRole('button', { name: 'Not sure', exact: true }).count()) > 0) {
      await tabTo(/^BUTTON.*Not sure/);
    } else {
      // One stop for all options of a group; the arrow up from the first goes round to the last.
      await tabTo(/^INPUT/);
      await press('ArrowUp');
      expect(await focused()).toMatch(/^INPUT not-sure/);
      await tabTo(/^BUTTON.*Continue/);
    }
    await press('Enter');
    expect(await focused()).toMatch(/^H2/);
  }
  await tabTo(/^BUTTON.*See what fits/);
  await press('Enter');
  await tabTo(/^SUMMARY/);
  await press('Enter');
  expect(await wizard.locator('details[open]').count()).toBe(1);
});

test('asks nothing of anyone but the page it came from, and keeps nothing', async () => {
  const { page, requests } = await demo.open();
  const wizard = wizardOn(page);
  await walk(wizard, answersOf('first-acre'));
  expect(requests.filter((url) => !url.startsWith(demo.address) && !url.startsWith('data:'))).toEqual([]);
  expect(await page.context().cookies()).toEqual([]);
  const kept = await page.evaluate(async () => [localStorage.length, sessionStorage.length, (await indexedDB.databases()).length, (await caches.keys()).length]);
  expect(kept).toEqual([0, 0, 0, 0]);
});

test('leaves the page its title, its history and its place', async () => {
  const { page } = await demo.open();
  const before = await page.evaluate(() => [document.title, history.length, location.href]);
  await walk(wizardOn(page), answersOf('hay-and-barn'));
  expect(await page.evaluate(() => [document.title, history.length, location.href])).toEqual(before);
});

test('runs under a strict content security policy with Trusted Types, with nothing reported', async () => {
  const policy = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src data:; base-uri 'none'; trusted-types lit-html; require-trusted-types-for 'script'";
  const { page, complaints } = await demo.open();
  await page.route('**/index.html', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': policy } });
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => console.error(`policy: ${violatedDirective} ${blockedURI}`));
  });
  await page.goto(`${demo.address}index.html`);
  const wizard = wizardOn(page);
  await wizard.locator('h2').waitFor();
  await walk(wizard, answersOf('steep-and-careful'));
  expect(complaints).toEqual([]);
  // The control: the same policy does report what it forbids.
  await page.evaluate(() => { document.body.append(Object.assign(new Image(), { src: 'https://elsewhere.example/x.png' })); });
  await expect.poll(() => complaints.filter((each) => each.startsWith('policy: ')).length).toBeGreaterThan(0);
});

test('goes back, changes one answer from the result, and lands where the answer leaves', async () => {
  const { page } = await demo.open();
  const wizard = wizardOn(page);
  await walk(wizard, answersOf('first-acre'));
  const before = await wizard.evaluate((element) => (element as AcreToAxle).shortlist!.shortlist.map(({ machine }) => machine));
  await wizard.getByRole('button', { name: 'Change: What do you want to spend?' }).click();
  expect(await questionOn(wizard)).toBe('budget');
  await answer(wizard, { ...answersOf('first-acre'), budget: { limit: { value: 14_000, currency: 'USD' }, firm: true } });
  expect(await isResult(wizard)).toBe(true);
  const after = await wizard.evaluate((element) => (element as AcreToAxle).shortlist!.shortlist.map(({ machine }) => machine));
  expect(after.length).toBeLessThan(before.length);
});

test('fits a phone: nothing is wider than the screen on any step', async () => {
  const { page } = await demo.open({ viewport: { width: 320, height: 640 } });
  const wizard = wizardOn(page);
  const tooWide = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  while (!(await isCheck(wizard))) {
    expect(await tooWide(), await wizard.locator('h2').textContent() ?? '').toBeLessThanOrEqual(0);
    await answer(wizard, answersOf('hay-and-barn'));
  }
  expect(await tooWide(), 'check').toBeLessThanOrEqual(0);
  await wizard.locator('[part="continue"]').click();
  await wizard.evaluate((element) => element.shadowRoot!.querySelectorAll('details').forEach((each) => { each.open = true; }));
  expect(await tooWide(), 'result').toBeLessThanOrEqual(0);
});
