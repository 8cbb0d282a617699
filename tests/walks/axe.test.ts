import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { questions } from '../../src/answers/questions.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { axeSource, type AxeResult } from './axe.ts';
import { openDemo, type Demo } from './browser.ts';
import { wizardOn } from './buyer.ts';
import { atEveryStep, type Stop } from './every-step.ts';

/** Rules of WCAG 2.2 at levels A and AA, as axe-core 4.14 checks them. */
const rules = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] };
declare const axe: { run(root: Element, options: object): Promise<AxeResult> };

const themes = ['light', 'dark', 'contrast', 'forced-colors'] as const;
const widths = [1200, 700, 320] as const;
const languages = ['en', 'de', 'es', 'fr'] as const;
type Case = [theme: (typeof themes)[number], width: number, language: string];

/** Each theme, width and language once, the others as usual; all of them with each other on demand. */
const cases: Case[] = process.env['AXE'] === 'all'
  ? themes.flatMap((theme) => widths.flatMap((width) => languages.map((language): Case => [theme, width, language])))
  : [
    ...themes.map((theme): Case => [theme, 1200, 'en']), ...widths.slice(1).map((width): Case => ['light', width, 'en']),
    ...languages.slice(1).map((language): Case => ['light', 1200, language]),
  ];

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

async function open([theme, width, language]: Case): Promise<Page> {
  const options: BrowserContextOptions = { viewport: { width, height: 800 }, ...(theme === 'forced-colors' && { forcedColors: 'active' }) };
  const { page } = await demo.open(options);
  await page.addScriptTag({ content: axeSource });
  await wizardOn(page).evaluate(async (element, [chosenTheme, lang]) => {
    const wizard = element as AcreToAxle;
    if (chosenTheme !== 'forced-colors') wizard.theme = chosenTheme as 'light';
    wizard.lang = lang!;
    await wizard.ready;
  }, [theme, language] as const);
  return page;
}

/** Rules that go by colour. */
const ofColour = ['color-contrast', 'link-in-text-block'];
/** What hangs on colour hangs on the theme alone, and nothing else does. */
type Checked = 'all' | 'colours' | 'all-but-colours';
const options: Record<Checked, object> = {
  all: rules, colours: { runOnly: { type: 'rule', values: ofColour }, resultTypes: rules.resultTypes },
  'all-but-colours': { ...rules, rules: Object.fromEntries(ofColour.map((rule) => [rule, { enabled: false }])) },
};
const found = async (page: Page, checked: Checked = 'all') => (await wizardOn(page).evaluate((element, how) => axe.run(element, how), options[checked])).violations;
const checkedOf = ([theme, width, language]: Case): Checked => (process.env['AXE'] === 'all' ? 'all' : theme !== 'light' ? 'colours' : width === 1200 && language === 'en' ? 'all' : 'all-but-colours');

test.each(cases)('axe finds nothing on any step: %s, %i px, %s', async (...each) => {
  const page = await open(each);
  const stops = new Set<Stop>();
  await atEveryStep(wizardOn(page), async (stop) => {
    stops.add(stop);
    expect((await found(page, checkedOf(each))).map(({ id, nodes }) => `${stop}: ${id}: ${nodes[0]!.html}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), `${stop}: wider than the screen`).toBeLessThanOrEqual(0);
  });
  expect([...stops].sort()).toEqual(['faults', 'check', 'result', ...questions.map(({ id }) => id)].sort());
  await page.context().close();
}, 240_000);

test('control: axe does find what is wrong here', async () => {
  const page = await open(['light', 700, 'en']);
  await wizardOn(page).evaluate((element) => { element.shadowRoot!.querySelector('form')!.insertAdjacentHTML('beforeend', '<input type="text" /><p class="lesser">too faint</p>'); });
  await wizardOn(page).evaluate((element) => { element.shadowRoot!.querySelector<HTMLElement>('p.lesser:last-child')!.style.color = '#ddd'; });
  expect((await found(page)).map(({ id }) => id).sort()).toEqual(['color-contrast', 'label']);
  expect((await found(page, 'colours')).map(({ id }) => id)).toEqual(['color-contrast']);
  expect((await found(page, 'all-but-colours')).map(({ id }) => id)).toEqual(['label']);
});
