import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { considered } from '../../src/lot/considered.ts';
import { inspectionOf } from '../../src/lot/inspection/inspection.ts';
import { compareOwning } from '../../src/lot/owning/compare.ts';
import { sayComparison } from '../../src/lot/owning/say.ts';
import { quotation } from '../../src/lot/quotation/quotation.ts';
import { toSi } from '../../src/units/quantity.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { everyLanguage } from '../support/languages.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { openDemo, type Demo } from './browser.ts';
import { isResult, wizardOn } from './buyer.ts';
import { voiceOf } from '../lot/voice.ts';
import { unit as unitEn } from '../../src/widget/unit/words/en.ts';
import { unit as unitDe } from '../../src/widget/unit/words/de.ts';
import { unit as unitEs } from '../../src/widget/unit/words/es.ts';
import { unit as unitFr } from '../../src/widget/unit/words/fr.ts';

// From a unit on the lot to its price delivered, what to look at on it, and what it costs beside another, over the built demo.

declare const axe: { run(root: Element, options: object): Promise<AxeResult> };
const rules = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] };

const json = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as unknown;
const document_ = json('demo/catalogue.json') as CatalogueDocument;
const farm = json('demo/answers/hay-and-barn.json') as AnswersDocument;
const inSi = catalogueOf(document_);
const read = answersOf(farm);
const before = considered(inSi, read);
const candidate = (id: string) => {
  const unit = inSi.units!.find((each) => each.id === id)!;
  return { unit, machine: inSi.machines.find((each) => each.id === unit.machine)! };
};
/** Two of the demo that change places within the hours looked at. */
const [own, other] = ['comfrey-first-2014', 'burdock-second-2021'];
const voice = voiceOf(document_);

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

async function toUnit(page: Page, id: string, { lang = 'en', answers = farm, catalogue }: { lang?: string; answers?: AnswersDocument; catalogue?: CatalogueDocument } = {}) {
  page.setDefaultTimeout(8000);
  const wizard = wizardOn(page);
  await wizard.evaluate(async (element, [said, language, lot]) => {
    const it = element as AcreToAxle;
    Object.assign(it, { lang: language, ...(lot && { catalogue: lot }) });
    await it.ready;
    it.answers = said;
    await it.updateComplete;
  }, [answers, lang, catalogue] as const);
  if (!(await isResult(wizard))) await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="result"]').waitFor();
  const fold = wizard.locator(`[part="closer"][data-of$="/${id}"]`);
  await wizard.locator('.machine details.printed').filter({ has: page.locator(`[part="closer"][data-of$="/${id}"]`) }).locator('> summary').click();
  return { wizard, fold };
}

const closer = (fold: Locator, id: string) => fold.locator(`[data-closer="${id}"]`);
const opened = async (fold: Locator, ...ids: string[]) => {
  if ((await fold.getAttribute('open')) === null) await fold.locator('> summary').click();
  for (const id of ids) {
    await closer(fold, id).locator('> summary').click();
    await closer(fold, id).locator('> [part]').waitFor();
  }
};
const cents = (text: string) => Math.round(Number(text.replace(/[^\d.]/g, '')) * 100);

/** What would come out of a printer, by the page as it stands for print. */
async function printed(page: Page, button: Locator) {
  await page.evaluate(() => { window.print = () => {}; });
  await button.click();
  await page.emulateMedia({ media: 'print' });
  const seen = await page.evaluate(() => {
    const shown = [...document.body.children].filter((each) => getComputedStyle(each).display !== 'none');
    return { others: shown.filter(({ shadowRoot, localName }) => !shadowRoot || localName.includes('-')).length, text: shown.map((each) => (each as HTMLElement).shadowRoot?.querySelector('article')?.innerText ?? '').join(' ') };
  });
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => { window.dispatchEvent(new Event('afterprint')); });
  return { ...seen, size: /\/MediaBox\s*\[([^\]]*)\]/.exec(pdf)![1]!.trim().split(/\s+/).map(Number), left: await page.locator('[data-acre-paper]').count() };
}

test('a unit: nothing is fetched before it is unfolded; its price adds up to the cent, says what is missing, and is printed alone', async () => {
  const { page, requests, complaints } = await demo.open();
  const { fold } = await toUnit(page, own);
  const fetched = requests.length;
  await opened(fold, 'price');
  expect(requests.slice(fetched).map((url) => new URL(url).pathname).filter((path) => !path.startsWith('/widget/'))).toEqual([]);
  expect(requests.length).toBeGreaterThan(fetched);

  const price = closer(fold, 'price');
  const quoted = (distance?: number) => quotation({
    evaluation: before.evaluationOf(candidate(own)), world: before.world, asOf: inSi.asOf, delivered: true, ...(distance !== undefined && { distance: toSi({ value: distance, unit: 'mi' }) }),
  });
  const told = async () => ({ total: cents(await price.locator('tfoot td').innerText()), lines: await price.locator('tbody td').allInnerTexts() });
  const sum = (lines: string[]) => lines.filter((line) => /\d/.test(line)).reduce((all, line) => all + cents(line), 0);
  const first = await told();
  expect(first.total).toBe(Math.round(quoted().total!.low * 100));
  expect(sum(first.lines)).toBe(first.total);
  expect(first.lines.filter((line) => line === 'ask')).toHaveLength(1);
  await expect.poll(() => price.locator('tfoot th').innerText()).toContain('Delivery');

  await price.locator('input[type="text"]').fill('20 miles');
  await price.locator('select').selectOption('lawn-tractor');
  const second = await told();
  // 20 miles at the demo dealer's 3.75 dollars a mile.
  expect(second.total).toBe(first.total + 7500);
  expect(second.total).toBe(Math.round(quoted(20).total!.low * 100));
  expect(sum(second.lines)).toBe(second.total);
  expect(await price.locator('tbody tr').last().innerText()).toContain('a lawn tractor');
  expect(second.lines.at(-1)).toBe('ask');

  await price.locator('input[type="text"]').fill('far');
  expect(await price.locator('.fault').count()).toBe(1);
  await price.locator('input[type="text"]').fill('20');
  const text = await price.innerText();
  expect(text).toContain('This is no offer');
  const loan = quoted(20).loans!.find(({ months }) => months === 60)!;
  for (const amount of [loan.deposit, loan.instalment, loan.total]) expect(text).toContain(amount.toLocaleString('en-US', { style: 'currency', currency: 'USD' }));
  expect(text.match(/APR/g)!.length).toBe(document_.dealer.finance!.length);

  const paper = await printed(page, price.locator('[part="print-price"]'));
  expect(paper).toMatchObject({ others: 0, left: 0, size: [0, 0, 612, 792] });
  for (const said of ['This is no offer', document_.dealer.terms!['en']!.guidance, document_.dealer.name, 'a lawn tractor', await price.locator('tfoot td').innerText()]) expect(paper.text).toContain(said);

  await price.locator('input[type="radio"]').nth(1).check();
  expect((await told()).total).toBe(first.total);
  expect(await price.locator('tfoot th').innerText()).not.toContain('Delivery');
  expect(complaints).toEqual([]);
});

test('an inspection is ticked off on a phone, counted, rules out what is found bad, is printed bare, and is forgotten with the answers', async () => {
  const { page, complaints } = await demo.open({ viewport: { width: 390, height: 844 } });
  const { wizard, fold } = await toUnit(page, own);
  await opened(fold, 'look');
  const look = closer(fold, 'look');
  const { items } = inspectionOf(candidate(own).unit, candidate(own).machine, before.needs, before.world);
  const boxes = look.locator('[data-which="done"]');
  expect(await boxes.evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['item']))).toEqual(items.map(({ id }) => id));
  // WCAG 2.2, success criterion 2.5.5 (AAA): targets of 44 by 44 CSS pixels.
  const sizes = await look.locator('.ticks label').evaluateAll((all) => all.map((each) => each.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)));
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
  const count = look.locator('.counted');
  expect(await count.innerText()).toBe(unitEn.look.count(0, items.length));
  await boxes.nth(2).focus();
  await page.keyboard.press('Space');
  await look.locator('[data-which="bad"][data-item="seat-belt"]').check();
  expect(await count.innerText()).toBe(unitEn.look.count(2, items.length));
  expect(await look.locator('.notice').innerText()).toContain(unitEn.lot.inspection.ruledOut);
  await look.locator('[data-which="bad"][data-item="seat-belt"]').uncheck();
  expect(await look.locator('.notice').count()).toBe(0);
  await look.locator('[data-which="bad"][data-item="front-axle"]').check();
  expect(await look.locator('.notice').innerText()).not.toContain(unitEn.lot.inspection.ruledOut);
  expect(await look.locator('li').first().innerText()).toContain('operator’s manual');

  const paper = await printed(page, look.locator('[part="print-inspection"]'));
  expect(paper).toMatchObject({ others: 0, left: 0 });
  for (const { id } of items) expect(paper.text).toContain(unitEn.lot.inspection.items[id].name);
  expect(paper.text).toContain(document_.dealer.terms!['en']!.guidance);
  expect(await page.evaluate(async () => [document.cookie, localStorage.length, sessionStorage.length, (await indexedDB.databases()).length])).toEqual(['', 0, 0, 0]);

  await wizard.locator('[part="start-again"]').click();
  const again = await toUnit(page, own);
  expect(await again.fold.getAttribute('open')).toBeNull();
  await opened(again.fold, 'look');
  expect(await closer(again.fold, 'look').locator('.counted').innerText()).toBe(unitEn.look.count(0, items.length));
  expect(complaints).toEqual([]);
});

test('beside another the page tells what src/lot reckons, the hours at which they change places among it, and follows what is typed', async () => {
  const { page } = await demo.open();
  const { fold } = await toUnit(page, own);
  await opened(fold, 'costs');
  const costs = closer(fold, 'costs');
  await costs.locator('select').selectOption(`unit ${other}`);
  const reckoned = (use: { years?: number; hoursPerYear?: number } = {}) => compareOwning({ catalogue: inSi, answers: read, candidates: [candidate(own), candidate(other)], ...use });
  const pairs = (use = {}) => sayComparison(reckoned(use), { voice, lot: unitEn.lot }).pairs[0]!;
  const told = () => costs.locator('[role="status"] li').allInnerTexts();
  const plain = (texts: readonly string[]) => texts.map((text) => text.replaceAll(' ', ' '));
  const [crossing] = reckoned().pairs[0]!.crossing.crossings;
  expect(crossing).toBeDefined();
  await expect.poll(async () => plain(await told())).toEqual(plain(pairs()));
  expect((await told()).join(' ')).toMatch(new RegExp(`Under about ${Math.round(crossing!.hoursPerYear)}\\b`));
  expect(await costs.locator('svg .crossing').count()).toBe(1);

  const [years, hours] = [costs.locator('input').nth(0), costs.locator('input').nth(1)];
  await years.fill('3');
  await hours.fill('400');
  await expect.poll(async () => plain(await told())).toEqual(plain(pairs({ years: 3, hoursPerYear: 400 })));
  expect(await told()).not.toEqual(pairs());
  await hours.fill('many');
  expect(await costs.locator('.fault').count()).toBe(1);
  expect(await costs.innerText()).toContain('It is no valuation');
});

test('what the dealer didn’t switch on is nowhere in the page and isn’t fetched; what he did is', async () => {
  const { page, requests } = await demo.open();
  const { shows: _shows, ...dealer } = document_.dealer;
  const { fold } = await toUnit(page, own, { catalogue: { ...document_, dealer } });
  const fetched = requests.length;
  await opened(fold, 'price', 'look');
  expect(await fold.locator('[data-closer]').evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['closer']))).toEqual(['price', 'look']);
  expect(await fold.innerText()).not.toContain(unitEn.costs.open);
  const off = requests.slice(fetched).length;

  const on = await toUnit(page, own, { catalogue: { ...document_, dealer: { ...dealer, shows: { askingContext: true } } } });
  await opened(on.fold, 'asking');
  expect(requests.slice(fetched).length).toBeGreaterThan(off);
  await expect.poll(() => closer(on.fold, 'asking').innerText()).toContain('From 27 other units');
  const few = await toUnit(page, own, { catalogue: { ...document_, units: document_.units!.filter(({ machine, id }) => id === own || machine === 'rill'), dealer: { ...dealer, shows: { askingContext: true } } } });
  await opened(few.fold);
  await expect.poll(() => closer(few.fold, 'asking').innerText()).toContain('Under');
});

test.each([['en', unitEn], ['de', unitDe], ['es', unitEs], ['fr', unitFr]] as const)('in %s: whole in that language, no wider than a small phone, without a breach axe finds', async (lang, words) => {
  expect(everyLanguage.map(({ tag }) => tag)).toContain(lang);
  const { page } = await demo.open({ viewport: { width: 320, height: 800 }, colorScheme: lang === 'de' ? 'dark' : 'light' });
  const { wizard, fold } = await toUnit(page, own, { lang });
  await opened(fold, 'price', 'look', 'costs');
  for (const details of await closer(fold, 'costs').locator('details > summary').all()) await details.click();
  const text = await fold.evaluate((element) => (element as HTMLElement).textContent!);
  for (const said of [words.price.open, words.price.tradeInHint, words.lot.quotation.noOffer, words.look.notKept, words.lot.inspection.explained, words.costs.explained, words.lot.owning.noValuation]) expect(text).toContain(said);
  if (lang !== 'en') for (const english of [unitEn.price.how, unitEn.lot.quotation.noOffer, unitEn.look.done, unitEn.costs.beside, unitEn.lot.inspection.explained]) expect(text).not.toContain(english);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  await page.addScriptTag({ content: axeSource });
  const { violations } = await wizard.evaluate((element, options) => axe.run(element, options), rules);
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
});

test('a unit sold in the year its series changed: a lift only one of the two has must be asked for by the plate, and another unit of its machine stands', async () => {
  const { page } = await demo.open();
  // Of the demo, on the hitch 2,385 lb lift the second series and 2,230 lb the first; burdock-sold-2015 was sold in the year between.
  const carrier: AnswersDocument = {
    format: farm.format, land: { slope: 'flat', overhead: 'open' }, drivers: { least: 'experienced', under18: false },
    tasks: [{ task: 'carry-implement', must: true, weight: { value: 2300, unit: 'lb' }, distance: { value: 24, unit: 'in' } }],
  };
  const { fold } = await toUnit(page, 'burdock-sold-2015', { answers: carrier });
  const units = await wizardOn(page).evaluate((element) => {
    const { shortlist, askDealer, ruledOut } = (element as AcreToAxle).shortlist!;
    return [...shortlist, ...askDealer, ...ruledOut].flatMap(({ units: all }) => all).filter(({ unit }) => unit.startsWith('burdock-'))
      .map(({ unit, verdict, because }) => [unit, verdict, because.filter(({ need }) => need === 'carry-implement.lift').map(({ missing }) => missing)]);
  });
  expect(units).toContainEqual(['burdock-sold-2015', 'ask', [['units.generation']]]);
  expect(units).toContainEqual(['burdock-second-2021', 'stands', []]);
  await opened(fold, 'look');
  const plate = await closer(fold, 'look').locator('li').filter({ hasText: unitEn.lot.inspection.items['serial-plate'].name }).innerText();
  expect(plate).toContain('2015 is a year in which it changed');
  expect(await fold.locator('xpath=..').innerText()).toContain('which series it is, by the number on its plate');
});

test('whoever pays by the month has the loan in the comparison, by terms he may change, and who pays at once is told of none', async () => {
  const { page } = await demo.open();
  const paying = (pay: 'loan' | 'cash'): AnswersDocument => ({ ...farm, budget: { ...farm.budget, pay } });
  const { fold } = await toUnit(page, own, { answers: paying('loan') });
  await opened(fold, 'costs');
  const costs = closer(fold, 'costs');
  await costs.locator('select').selectOption(`unit ${other}`);
  const said = (more: object) => sayComparison(compareOwning({ catalogue: inSi, answers: answersOf(paying('loan')), candidates: [candidate(own), candidate(other)], ...more }), { voice, lot: unitEn.lot });
  const plain = (texts: readonly string[]) => texts.map((text) => text.replaceAll(' ', ' '));
  const told = async () => plain(await costs.locator('[role="status"] li').allInnerTexts());
  await expect.poll(told).toEqual(plain(said({}).pairs[0]!));
  const text = (await costs.innerText()).replaceAll(' ', ' ');
  for (const each of [...plain(said({}).sides.flatMap(({ says }) => says)), unitEn.lot.owning.financed, unitEn.lot.quotation.lender]) expect(text).toContain(each);

  const ways = costs.locator('input[type="radio"]');
  expect(await ways.evaluateAll((all) => all.map((each) => (each as HTMLInputElement).checked))).toEqual([false, true, false, false]);
  await ways.nth(3).check();
  await expect.poll(told).toEqual(plain(said({ finance: inSi.dealer.finance![2]! }).pairs[0]!));
  await ways.nth(0).check();
  await expect.poll(told).toEqual(plain(said({ finance: 'own-money' }).pairs[0]!));
  expect(await costs.innerText()).not.toContain(unitEn.lot.owning.financed);

  const cash = await toUnit(page, own, { answers: paying('cash') });
  await opened(cash.fold);
  if (!(await closer(cash.fold, 'costs').locator('> [part]').count())) await opened(cash.fold, 'costs');
  expect(await closer(cash.fold, 'costs').innerText()).not.toMatch(/APR|How you pay/);
});
