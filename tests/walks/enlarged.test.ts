import { afterAll, beforeAll, expect, test } from 'vitest';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { openDemo, type Demo } from './browser.ts';
import { unsure, wizardOn } from './buyer.ts';
import { atEveryStep } from './every-step.ts';

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

/** The spacing of WCAG 2.2, success criterion 1.4.12, which a page must bear without loss. */
const spacing = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-block-end: 2em !important; }';

/** A window of 1280 × 1024 at 400 %, as of success criterion 1.4.10: a fourth of the pixels in each direction. */
const enlarged = { viewport: { width: 320, height: 256 }, deviceScaleFactor: 4 };

/** Runs in the page: texts that are cut off, and things to press that are too small or lie over one another. */
function lost(element: Element): string[] {
  const seen = [...element.shadowRoot!.querySelectorAll<HTMLElement>('*')].filter((each) => each.checkVisibility() && !each.closest('svg'));
  const told = (each: Element) => `${each.tagName.toLowerCase()} “${each.textContent.trim().slice(0, 40)}”`;
  const cut = seen.filter((each) => {
    const { overflowX, overflowY } = getComputedStyle(each);
    const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
    return (hides(overflowX) && each.scrollWidth > each.clientWidth + 1) || (hides(overflowY) && each.scrollHeight > each.clientHeight + 1);
  }).filter((each) => getComputedStyle(each).clipPath === 'none').map((each) => `cut off: ${told(each)}`);
  // What runs with a text is excepted by success criterion 2.5.8.
  const pressed = seen.filter((each) => each.matches('button, summary, select, input[type="text"], label.option, fieldset.units label') && getComputedStyle(each).display !== 'inline');
  const small = pressed.filter((each) => each.getBoundingClientRect().height < 24 || each.getBoundingClientRect().width < 24).map((each) => `too small: ${told(each)}`);
  const below = document.documentElement.scrollWidth - document.documentElement.clientWidth;
  return [...cut, ...small, ...(below > 0 ? [`${below} pixels wider than the window`] : [])];
}

test('at four times the size and with text spaced out nothing is cut off, wider than the window or too small to press', async () => {
  // The language with the longest words.
  const lang = 'de';
  const { page } = await demo.open(enlarged);
  const wizard = wizardOn(page);
  await wizard.evaluate(async (element, [said, sheet]) => {
    (element as AcreToAxle).lang = said;
    await (element as AcreToAxle).ready;
    const spaced = new CSSStyleSheet();
    spaced.replaceSync(sheet);
    element.shadowRoot!.adoptedStyleSheets = [...element.shadowRoot!.adoptedStyleSheets, spaced];
  }, [lang, spacing] as const);
  const found: string[] = [];
  await atEveryStep(wizard, async (stop) => { found.push(...(await wizard.evaluate(lost)).map((each) => `${stop}: ${each}`)); });
  expect(found).toEqual([]);
}, 60_000);

test('control: a text that is cut off, and a button too small, are found', async () => {
  const { page } = await demo.open(enlarged);
  const wizard = wizardOn(page);
  await wizard.evaluate((element) => {
    const form = element.shadowRoot!.querySelector('form')!;
    form.insertAdjacentHTML('beforeend', '<p class="c">A sentence that has no room here at all</p><button class="c" type="button">x</button>');
    for (const each of form.querySelectorAll<HTMLElement>('.c')) Object.assign(each.style, { inlineSize: '20px', blockSize: '20px', minBlockSize: '0', padding: '0', overflow: 'hidden' });
  });
  expect(new Set((await wizard.evaluate(lost)).map((each) => each.split(':')[0]))).toEqual(new Set(['cut off', 'too small']));
});

test.each([{ asked: 'reduce', moves: false }, { asked: 'no-preference', moves: true }] as const)('of those who asked for “$asked”, something moves: $moves', async ({ asked, moves }) => {
  const { page } = await demo.open({ reducedMotion: asked });
  await unsure(wizardOn(page));
  const moving = await wizardOn(page).evaluate((element) => [...element.shadowRoot!.querySelectorAll('*')].some((each) => {
    const { transitionDuration, animationName } = getComputedStyle(each);
    return transitionDuration !== '0s' || animationName !== 'none';
  }));
  expect(moving).toBe(moves);
});
