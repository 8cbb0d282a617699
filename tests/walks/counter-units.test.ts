import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { considered } from '../../src/lot/considered.ts';
import { inspectionOf } from '../../src/lot/inspection/inspection.ts';
import { quotation } from '../../src/lot/quotation/quotation.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { catalogueText } from './counter-site.ts';
import { counterWalk, hits, kept, ofOurs, serve, show } from './counter-stand.ts';

// A unit's own papers at the counter, without a network.

declare const axe: { run(root: Element, options: object): Promise<AxeResult> };

const walk = counterWalk();
const { stand } = walk;
const document_ = JSON.parse(catalogueText) as CatalogueDocument;
const inSi = catalogueOf(document_);

/** Presses a button that prints, and gives what lay on the page then, and the sheet it was for. */
async function printed(page: Page, button: Locator) {
  const told = page.evaluate(() => new Promise<{ text: string; size: string; papers: number }>((resolve) => {
    window.print = () => {
      const papers = [...document.querySelectorAll('[data-acre-paper]')];
      const size = document.adoptedStyleSheets.flatMap((sheet) => [...sheet.cssRules]).map(({ cssText }) => /size: ([^;]+);/.exec(cssText)?.[1]).find((each) => each !== undefined);
      resolve({ text: papers.map((each) => each.shadowRoot!.textContent).join(' ').replaceAll(/\s+/g, ' '), size: size ?? '', papers: papers.length });
      window.dispatchEvent(new Event('afterprint'));
    };
  }));
  await button.click();
  return told;
}

test('each unit has its price delivered and its list of what to look at, on paper too, and a counter needs no network for it', async () => {
  walk.site.settings({ paper: 'a4' });
  const { page, complaints } = await stand({ viewport: { width: 1280, height: 900 } });
  await kept(page);
  await serve(page);
  await show(page, 'ask');
  await expect.poll(() => page.locator('.outcome [aria-busy]').count()).toBe(0);
  const units = page.locator('.fits details:has([part="closer"])').first();
  await units.locator('> summary').click();
  const fold = units.locator('[part="closer"]').first();
  const [machineId, unitId] = (await fold.getAttribute('data-of'))!.split('/') as [string, string];
  walk.site.cut(true);
  await fold.locator('> summary').click();
  await fold.locator('[data-closer="price"] > summary').click();
  await fold.locator('[part="print-price"]').waitFor();

  const answers = await page.evaluate(() => {
    const { parts: { customer } } = document.querySelector('acre-counter') as unknown as { parts: { customer: { intake: { answers: unknown } } } };
    return customer.intake.answers;
  }) as AnswersDocument;
  const before = considered(inSi, answersOf(answers));
  const candidate = { machine: inSi.machines.find(({ id }) => id === machineId)!, unit: inSi.units!.find(({ id }) => id === unitId)! };
  const total = quotation({ evaluation: before.evaluationOf(candidate), world: before.world, asOf: inSi.asOf, delivered: true }).total!.low;
  const money = total.toLocaleString('en-US', { style: 'currency', currency: 'USD' });
  const quoted = await printed(page, fold.locator('[part="print-price"]'));
  expect(quoted).toMatchObject({ size: 'a4', papers: 1 });
  expect(quoted.text).toContain(money);
  expect(quoted.text).toContain('no offer');
  expect(hits(quoted.text)).toEqual([]);

  await fold.locator('[data-closer="look"] > summary').click();
  const wanted = inspectionOf(candidate.unit, candidate.machine, before.needs, before.world).items.length;
  await expect.poll(() => fold.locator('.looks > li').count()).toBe(wanted);
  const list = await printed(page, fold.locator('[part="print-inspection"]'));
  expect(list.papers).toBe(1);
  expect(hits(list.text)).toEqual([]);
  expect(await page.locator('[data-acre-paper]').count()).toBe(0);

  // Unfolding it changes nothing else of the page: the way through the sections stands as it did.
  expect(await page.locator('nav .topics').evaluate((list_) => getComputedStyle(list_).display)).toBe('flex');
  // Not as a script of the page: its policy forbids that, as it should.
  await (await page.context().newCDPSession(page)).send('Runtime.evaluate', { expression: axeSource });
  const found = await page.evaluate(async () => (await axe.run(document.body, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] })).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`));
  expect(found).toEqual([]);
  walk.site.cut(false);
  expect(ofOurs(complaints).filter((each) => !/unsafe-eval|Trusted|axe/i.test(each))).toEqual([]);
});
