/// <reference types="mocha" />
import { assert } from 'chai';
import { render } from 'lit';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { asking } from '../../src/reasons/words/en/asking.ts';
import { telling } from '../../src/reasons/words/en/telling.ts';
import { printAlone, sheetOf } from '../../src/widget/unit/print.ts';
import { Closer } from '../../src/widget/unit/unit.ts';
import '../../src/widget/unit/compare.ts';
import { unit as english } from '../../src/widget/unit/words/en.ts';
import { closing, opening, pseudoWords } from '../support/pseudo-words.ts';

const json = async (path: string) => (await fetch(path)).json() as Promise<unknown>;
const demo = (await json('/demo/catalogue.json')) as CatalogueDocument;
const farm = (await json('/demo/answers/hay-and-barn.json')) as AnswersDocument;
const catalogue: CatalogueDocument = { ...demo, dealer: { ...demo.dealer, shows: { owningComparison: true } } };
const inSi = catalogueOf(catalogue);
const words = pseudoWords({ ...asking, ...telling });
const own = pseudoWords(english);

/** One unit with all of it unfolded, in a language nobody speaks. */
async function shown(of: { machine: string; unit?: string }, lot = catalogue, answers = farm) {
  const page = document.createElement('div');
  page.dir = 'rtl';
  document.body.append(page);
  const reader = readerFor(words, 'us', 'en-US', 'USD');
  const si = lot === catalogue ? inSi : catalogueOf(lot);
  const view = { answers, shortlist: shortlist(lot, answers, [], si), catalogue: lot, inSi: si, voice: { words, reader, nameOf: namesIn(lot, reader) }, width: 400 };
  const closer = new Closer(() => show());
  const show = () => render(closer.template(of, true, own, view), page);
  show();
  for (const details of page.querySelectorAll<HTMLDetailsElement>('[data-closer]')) details.open = true;
  while ([...page.querySelectorAll('[data-closer]')].some((each) => !each.querySelector('[part]'))) {
    await new Promise((passed) => { requestAnimationFrame(passed); });
  }
  return page;
}

/** Names and texts of the dealer's own, and symbols of units. */
const theirs = [...catalogue.machines, ...(catalogue.implements ?? [])].map(({ name }) => name);
const symbols = /\b(?:ft|in|lb|kg|cm|m|mi|hp|kW|USD)\b/g;

const untranslated = (page: Element) => {
  const walker = document.createTreeWalker(page, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const text = node.textContent!.trim();
    if (!/\p{L}{2}/u.test(text.replaceAll(symbols, '')) || theirs.some((name) => text === name) || node.parentElement!.closest('style')) continue;
    if (!text.includes(opening) || !text.includes(closing)) found.push(text);
  }
  return found;
};

afterEach(() => { document.body.replaceChildren(); });

it('everything said of a unit comes from the words, and a chart stays as it is where the page is read from the right', async function () {
  this.timeout(20_000);
  const page = await shown({ machine: 'comfrey-first', unit: 'comfrey-first-2014' });
  assert.deepEqual([...page.querySelectorAll<HTMLElement>('[data-closer]')].map(({ dataset }) => dataset['closer']), ['price', 'look', 'costs']);
  assert.deepEqual(untranslated(page), []);
  page.append('Next step');
  assert.deepEqual(untranslated(page), ['Next step']);
});

it('of a machine none of which is on the lot, the price is a range and there is nothing to look at', async function () {
  this.timeout(20_000);
  const page = await shown({ machine: 'comfrey-first' }, { ...catalogue, units: [] });
  assert.deepEqual([...page.querySelectorAll<HTMLElement>('[data-closer]')].map(({ dataset }) => dataset['closer']), ['price', 'costs']);
  assert.match(page.querySelector('tfoot td')!.textContent!, /\$[\d,.]+ to \$[\d,.]+/);
});

it('who pays at once is told of no loan, and neither is anyone where the dealer gave no words for it abroad', async function () {
  this.timeout(20_000);
  const of = { machine: 'comfrey-first', unit: 'comfrey-first-2014' };
  assert.isNotNull((await shown(of)).querySelector('.loans'));
  assert.isNull((await shown(of, catalogue, { ...farm, budget: { ...farm.budget, pay: 'cash' } })).querySelector('.loans'));
  const abroad = JSON.parse(JSON.stringify(catalogue).replaceAll('"currency":"USD"', '"currency":"EUR"')) as CatalogueDocument;
  assert.isNull((await shown(of, abroad)).querySelector('.loans'));
});

it('a sheet is that of the place, and what was put on the page to be printed is gone afterwards', () => {
  // ISO 216 outside North America and a few others.
  assert.deepEqual(['en-US', 'fr-CA', 'de-DE', 'en-GB', 'es-MX'].map(sheetOf), ['letter', 'letter', 'A4', 'A4', 'letter']);
  const { print } = window;
  const sheets = document.adoptedStyleSheets.length;
  let during = 0;
  window.print = () => { during = document.querySelectorAll('[data-acre-paper]').length; };
  const voice = { words, reader: readerFor(words, 'us', 'en-US', 'USD'), nameOf: () => '' };
  printAlone(new Closer(() => {}).template({ machine: 'comfrey-first' }, false, own, { answers: farm, shortlist: shortlist(catalogue, farm, [], inSi), catalogue, inSi, voice, width: 400 }) as never, voice);
  assert.equal(during, 1);
  window.dispatchEvent(new Event('afterprint'));
  window.print = print;
  assert.equal(document.querySelectorAll('[data-acre-paper]').length, 0);
  assert.equal(document.adoptedStyleSheets.length, sheets);
});
