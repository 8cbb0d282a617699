/// <reference types="mocha" />
import { assert } from 'chai';
import '../../src/widget/define.ts';
// Fetched file by file here, it takes longer than a test may.
import '../../src/widget/reckoner.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { asking } from '../../src/reasons/words/en/asking.ts';
import { telling } from '../../src/reasons/words/en/telling.ts';
import type { AcreToAxle } from '../../src/widget/define.ts';
import { all, settled } from './on-page.ts';
import { closing, opening, pseudoWords } from '../support/pseudo-words.ts';

const catalogue = (await (await fetch('/demo/catalogue.json')).json()) as CatalogueDocument;
const words = pseudoWords({ ...asking, ...telling });

/** The wizard in a language that is no file of the project, as wide as asked. */
async function shown(width: number) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  const wizard = document.createElement('acre-to-axle');
  wizard.catalogue = catalogue;
  frame.append(wizard);
  document.body.append(frame);
  await wizard.ready;
  Object.assign(wizard, { words, telling: words });
  await settled(wizard);
  return wizard;
}

/** Texts that the dealer wrote, or that are names of languages, and stand in no language of ours. */
const theirs = (wizard: AcreToAxle) => {
  const names = [...catalogue.machines, ...(catalogue.implements ?? []), ...catalogue.frames].map(({ name }) => name);
  const written = [...names, ...catalogue.machines.map(({ make }) => make), ...(catalogue.units ?? []).map(({ location }) => location ?? ''), catalogue.dealer.name, catalogue.dealer.phone, catalogue.dealer.email];
  return (text: string, parent: Element) => parent.closest('.language select') !== null || parent.closest('code, a[href^="mailto"], a[href^="tel"], a[href^="https"]') !== null
    || written.some((each) => each !== undefined && each !== '' && text.includes(each)) || wizard === undefined;
};

/** Symbols of units are the same in every language. */
const symbols = /\b(?:ft|in|lb|kg|cm|m|hp|kW)\b/g;

/** Texts on the page with a letter in them that don't come from the words; what is drawn breaks them into lines; of rules and terms the catalogue and the rule book give the English, and what is taken along and a unit, closer, have words and tests of their own. */
function untranslated(wizard: AcreToAxle): string[] {
  const isTheirs = theirs(wizard);
  const walker = document.createTreeWalker(wizard.shadowRoot!, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const text = node.textContent!.trim();
    const parent = node.parentElement!;
    if (!/\p{L}{2}/u.test(text.replaceAll(symbols, '')) || parent.closest('style, slot, text, .working, .terms') || parent.matches(':is(.along, .fold) > :not(summary), :is(.along, .fold) > :not(summary) *') || isTheirs(text, parent)) continue;
    if (!text.includes(opening) || !text.includes(closing)) found.push(text);
  }
  return found;
}

async function press(wizard: AcreToAxle, selector: string) {
  all<HTMLElement>(wizard, selector)[0]!.click();
  await settled(wizard);
}

/** From step to step with every job ticked, to the result with all of it unfolded. */
async function walk(wizard: AcreToAxle, look: (where: string) => void) {
  while (!all(wizard, '[part="check"]')[0]) {
    const { question } = all<HTMLElement>(wizard, '[data-question]')[0]!.dataset;
    const boxes = question === 'tasks' || question === 'more' ? all<HTMLInputElement>(wizard, 'input[type=checkbox]') : [];
    for (const box of boxes) {
      box.click();
      await wizard.updateComplete;
    }
    look(question!);
    if (boxes.length > 0) {
      await press(wizard, '[part="continue"]');
      continue;
    }
    for (const value of ['steep', 'low', 'garage', 'own-trailer', 'heat']) all<HTMLInputElement>(wizard, `input[value="${value}"]`)[0]?.click();
    await settled(wizard);
    const unsure = all<HTMLElement>(wizard, '[part="unsure"]')[0];
    const chosen = all<HTMLInputElement>(wizard, 'input[name^="field"]:checked')[0] && !all(wizard, 'input[type=text]')[0];
    if (chosen) await press(wizard, '[part="continue"]');
    else if (unsure) await press(wizard, '[part="unsure"]');
    else {
      await press(wizard, 'input[value="not-sure"]');
      await press(wizard, '[part="continue"]');
    }
  }
  look('check');
  await press(wizard, '[part="continue"]');
  for (const details of all<HTMLDetailsElement>(wizard, 'details')) details.open = true;
  await settled(wizard);
  look('result');
}

afterEach(() => { document.body.replaceChildren(); });

it('nothing on any step or on the result is said in words of the code’s own', async function () {
  this.timeout(60_000);
  const wizard = await shown(700);
  const seen = new Map<string, string[]>();
  await walk(wizard, (where) => { seen.set(where, untranslated(wizard)); });
  assert.isAbove(seen.size, 30);
  assert.deepEqual([...seen].filter(([, texts]) => texts.length > 0), []);
});

it('control: a text of the code’s own is found', async () => {
  const wizard = await shown(700);
  all(wizard, 'form')[0]!.append('Next step');
  assert.deepEqual(untranslated(wizard), ['Next step']);
});

it('from right to left, nothing is wider than a phone, options begin at the right and drawings stay as they are', async function () {
  this.timeout(60_000);
  const wizard = await shown(320);
  assert.equal(all(wizard, '.sheet')[0]!.getAttribute('dir'), 'rtl');
  await walk(wizard, (where) => {
    const sheet = all<HTMLElement>(wizard, '.sheet')[0]!;
    assert.isAtMost(sheet.scrollWidth - sheet.clientWidth, 0, where);
    for (const option of all<HTMLElement>(wizard, '.option')) {
      const [box, text] = [option.querySelector('input')!.getBoundingClientRect(), option.querySelector('span')!.getBoundingClientRect()];
      assert.isAbove(box.left, text.left, where);
    }
  });
  assert.equal(getComputedStyle(all(wizard, 'svg')[0]!).direction, 'ltr');
});
