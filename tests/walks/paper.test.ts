import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import jsqr from 'jsqr';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { questions, type Question } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { isSaidBySecondBoxes } from '../../src/counter/paper/form/musts.ts';
import { extents } from '../../src/counter/paper/sheet/extent.ts';
import { gathered, planOf } from '../../src/counter/paper/sheet/plan.ts';
import { sheets } from '../../src/counter/paper/sizes.ts';
import { checkIds } from '../../src/counter/paper/words/words.ts';
import { layout1 } from '../../src/handoff/layout-1.ts';
import { readHandedOn } from '../../src/handoff/link.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { saidOf } from '../../src/widget/say-answer.ts';
import { openPaperBrowser, pagesOf, pixelsOf, sizesOf, type PaperBrowser } from '../counter/paper-browser.ts';
import { pageOfAnswers, paperLanguages, viewOf, type As } from '../counter/paper-page.ts';
import { answersWithEveryWord } from '../handoff/any-carried.ts';
import { buyers } from '../handoff/buyers.ts';
import { anyAnswers, anyCatalogue, aMinute } from '../support/arbitraries.ts';

const catalogue = JSON.parse(readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8')) as CatalogueDocument;
/** The two sheets in two languages; in all of them with PAPERS=all. */
const languages = process.env.PAPERS === 'all' ? paperLanguages : (['en', 'de'] as const);
const ways: readonly As[] = languages.flatMap((language) => (['letter', 'a4'] as const).map((size): As => ({ language, size, units: size === 'a4' ? 'metric' : 'us' })));
const told = buyers.map(({ name, answers }) => ({ name, answers, shortlist: shortlist(catalogue, answers) }));
const horses = told.find(({ name }) => name === 'horses')!;

let counter: PaperBrowser;
beforeAll(async () => {
  counter = await openPaperBrowser();
  await counter.page.emulateMedia({ media: 'print' });
});
afterAll(() => counter.close());

const tell = (of: { answers: AnswersDocument; catalogue?: CatalogueDocument; shortlist?: (typeof told)[number]['shortlist'] }) => {
  const all = { catalogue, ...of };
  return counter.page.evaluate((given) => globalThis.papers.tell(given), { ...all, shortlist: of.shortlist ?? shortlist(all.catalogue, all.answers) });
};
const sheet = (as: As) => counter.page.evaluate((given) => globalThis.papers.sheet(given), as);
const form = (as: As) => counter.page.evaluate((given) => globalThis.papers.form(given), as);
const pdf = () => counter.page.pdf({ preferCSSPageSize: true });
const onPaper = () => counter.page.locator('[data-acre-paper]');

const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
/** All that is printed, as one line of text. */
const textOf = async () => plain(await onPaper().evaluate((host) => host.shadowRoot!.textContent!));

/** Each thing that is told with where it ends, and where its page's foot begins [CSS px]; the least text there is. */
const measured = () => onPaper().evaluate((host) => {
  const pages = [...host.shadowRoot!.querySelectorAll('.page')];
  const walker = document.createTreeWalker(host.shadowRoot!, NodeFilter.SHOW_TEXT);
  const styles: { size: number; color: string; text: string }[] = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const around = node.parentElement!;
    if (!node.textContent!.trim() || around.closest('title, desc, style')) continue;
    const { fontSize, color, fill } = getComputedStyle(around);
    styles.push({ size: Number.parseFloat(fontSize), color: around instanceof SVGElement ? fill : color, text: node.textContent! });
  }
  return {
    styles,
    pages: pages.map((page) => ({
      foot: page.querySelector('footer')!.getBoundingClientRect().top, number: page.querySelector('footer')!.lastElementChild!.textContent,
      right: page.getBoundingClientRect().right, ground: getComputedStyle(page).backgroundColor,
      parts: [...page.querySelectorAll('.part')].map((part) => ({ id: part.getAttribute('data-part')!, bottom: part.getBoundingClientRect().bottom, right: part.scrollWidth + part.getBoundingClientRect().left })),
    })),
  };
});

/** Points of a sheet's sides: 72 to the inch. */
const points = (size: As['size']) => [sheets[size].width, sheets[size].height].map((millimetres) => (millimetres / 25.4) * 72) as [number, number];

describe.each(ways)('the sheet in $language on $size', (as) => {
  test.each(told)('of the buyer $name: two pages as the printer has them, all of it on them', async (of) => {
    await tell(of);
    const fitted = await sheet(as);
    const printed = await pdf();
    expect(fitted.fits).toBe(true);
    expect(pagesOf(printed)).toBe(fitted.pages);
    expect(fitted.pages).toBeLessThanOrEqual(2);
    // A hair of a point is lost to whole units.
    const [width, height] = points(as.size);
    for (const [w, h] of sizesOf(printed)) expect(Math.hypot(w - width, h - height)).toBeLessThan(1.5);

    const { pages } = await measured();
    expect(pages.map(({ number }) => number)).toEqual(pages.map((_, page) => `${page + 1}/${pages.length}`));
    for (const { foot, parts, right } of pages) for (const part of parts) {
      expect(part.bottom, part.id).toBeLessThanOrEqual(foot);
      expect(part.right, part.id).toBeLessThanOrEqual(right + 1);
    }

    const text = await textOf();
    const view = viewOf({ catalogue, ...of }, as);
    const extent = extents[fitted.telling]!;
    const { machines } = planOf(gathered(view), extent);
    const sentences = [
      ...machines.flatMap(({ reasons, drawbacks }) => [...reasons, ...drawbacks].map((point) => point.text)), ...machines.flatMap(({ units }) => units),
      ...machines.flatMap(({ sums }) => sums.flatMap(({ result, source }) => [view.own.gives(result), view.own.source(source)])),
      ...(questions as readonly Question[]).flatMap(({ id }) => saidOf(id as never, of.answers, view.voice).map((each) => each.text)),
      ...checkIds.map((id) => view.own.checks[id]), view.voice.words.cautions.manual(''), catalogue.dealer.name, catalogue.dealer.phone!,
    ];
    expect(machines.length).toBeGreaterThan(0);
    expect(sentences.filter((sentence) => !text.includes(plain(sentence)))).toEqual([]);
  });
});

describe('the sheet of the buyer who keeps horses', () => {
  beforeAll(() => tell(horses));

  test.each(['letter', 'a4'] as const)('on %s: its code is read by another library and holds his answers', async (size) => {
    await sheet({ language: 'en', units: 'us', size });
    const picture = await onPaper().locator('.qr').screenshot();
    const { pixels, width, height } = await pixelsOf(counter.browser, picture);
    const read = jsqr(pixels, width, height)?.data;
    expect(read?.startsWith(pageOfAnswers)).toBe(true);
    expect(readHandedOn(read!)).toEqual({ answers: horses.answers });
    const typed = await onPaper().locator('.typed').textContent();
    expect(readHandedOn(typed!)).toEqual({ answers: horses.answers });
  });

  // 1 in is 25.4 mm and 1 ft is 304.8 mm, exactly (NIST SP 811, appendix B); he typed a door of 10 ft.
  test.each([
    { language: 'en', units: 'us', size: 'letter' }, { language: 'de', units: 'metric', size: 'a4' },
  ] as const)('in $language on $size: bar and door are drawn to the scale that is said', async (as) => {
    await sheet(as);
    const drawn = await onPaper().evaluate((host) => {
      const root = host.shadowRoot!;
      const wide = (selector: string) => Math.max(...[...root.querySelectorAll<SVGGraphicsElement>(selector)].map((each) => each.getBoundingClientRect().width));
      const bar = root.querySelector<SVGGraphicsElement>('.scale path')!;
      const { a } = bar.getScreenCTM()!;
      // Its posts have no width; its lintel has all of it.
      const doors = [...root.querySelectorAll<SVGGraphicsElement>('path.door')].map((each) => each.getBBox().width * a);
      return { bar: bar.getBBox().width * a, said: root.querySelector('.scale text')!.textContent!, door: Math.max(...doors), wide: wide('.drawing svg') };
    });
    const [, ratio] = /1:(\d+)/.exec(await textOf())!;
    const millimetres = (pixels: number) => (pixels / 96) * 25.4;
    const [, count, unit] = /^([\d.,]+)\s*(\S+)$/.exec(plain(drawn.said))!;
    const stated = Number(count!.replace(',', '.')) * { ft: 304.8, m: 1000, cm: 10, in: 25.4 }[unit as 'ft']!;
    expect(Math.abs((millimetres(drawn.bar) * Number(ratio)) / stated - 1)).toBeLessThan(0.01);
    expect(Math.abs((millimetres(drawn.door) * Number(ratio)) / (10 * 304.8) - 1)).toBeLessThan(0.01);
    expect(millimetres(drawn.wide)).toBeLessThanOrEqual(sheets[as.size].width);
  });

  test('black on white and nine points at the least, on a dark page with a look of its own', async () => {
    await sheet({ language: 'en', units: 'us', size: 'letter' });
    const { styles, pages } = await measured();
    expect(styles.length).toBeGreaterThan(50);
    // 9 pt are 12 px (CSS Values and Units 4, 6.2).
    expect(styles.filter(({ size }) => size < 12 - 1e-6)).toEqual([]);
    const darkest = styles.filter(({ color }) => Math.max(...color.match(/[\d.]+/g)!.slice(0, 3).map(Number)) > 0x55);
    expect(darkest).toEqual([]);
    expect(new Set(pages.map(({ ground }) => ground))).toEqual(new Set(['rgb(255, 255, 255)']));
    expect(await counter.page.locator('main').evaluate((main) => getComputedStyle(main).display)).toBe('none');
  });

  test('on the screen nothing of it is seen, and once it is printed nothing of it is left', async () => {
    await counter.page.emulateMedia({ media: 'screen' });
    await sheet({ language: 'en', units: 'us', size: 'a4' });
    expect(await onPaper().evaluate((host) => [getComputedStyle(host).visibility, document.documentElement.scrollWidth > document.documentElement.clientWidth])).toEqual(['hidden', false]);
    expect(await counter.page.locator('main').isVisible()).toBe(true);
    const { fits } = await counter.page.evaluate(async () => {
      window.print = () => { dispatchEvent(new Event('afterprint')); };
      return globalThis.papers.print({ language: 'en', units: 'us', size: 'a4' });
    });
    expect(fits).toBe(true);
    expect(await counter.page.evaluate(() => [document.querySelectorAll('[data-acre-paper]').length, document.adoptedStyleSheets.length])).toEqual([0, 0]);
    await counter.page.emulateMedia({ media: 'print' });
  });

  test('nothing the staff noted, no serial number, and no text that somebody typed', async () => {
    const private_ = 'Ms Holloway, 12 Larch Lane';
    await tell({
      catalogue: { ...catalogue, units: catalogue.units!.map((unit) => ({ ...unit, notes: private_, serial: private_ })) },
      answers: {
        ...horses.answers, haul: { ...horses.answers.haul, delivery: private_ }, budget: { ...horses.answers.budget, tradeIn: { kind: private_ } },
        tasks: horses.answers.tasks!.map((task) => (task.task === 'move-loose' ? { ...task, material: private_ } : task)),
      },
    });
    await sheet({ language: 'en', units: 'us', size: 'letter' });
    expect(await textOf()).not.toContain(private_);
    await tell(horses);
  });
});

describe('two pages whatever is told', () => {
  const as: As = { language: 'de', units: 'metric', size: 'letter' };

  test('every question answered, by all words there are', async () => {
    for (const answers of answersWithEveryWord(layout1).slice(0, 3)) {
      await tell({ answers });
      expect(await sheet(as)).toMatchObject({ fits: true });
      expect(pagesOf(await pdf())).toBeLessThanOrEqual(2);
    }
  });

  test('any answers, any catalogue with gaps', async () => {
    await fc.assert(fc.asyncProperty(anyAnswers, anyCatalogue, async (answers, given) => {
      await tell({ answers, catalogue: given });
      expect(await sheet(as)).toMatchObject({ fits: true });
      expect(pagesOf(await pdf())).toBeLessThanOrEqual(2);
    }), { numRuns: Number(process.env.SHEETS ?? 8), seed: Number(process.env.SEED ?? 1), endOnFailure: true });
  }, 2 * aMinute);

  test('nobody’s answers, and a lot with nothing on it', async () => {
    await tell({ answers: { format: 'acre-to-axle/answers/1' }, catalogue: { ...catalogue, units: [] } });
    expect(await sheet(as)).toMatchObject({ fits: true });
    expect(pagesOf(await pdf())).toBeLessThanOrEqual(2);
  });

  test('terms as long as a contract are not cut off: that it takes more pages is said to who prints', async () => {
    const clause = 'The buyer has looked at the machine and at all that comes with it. ';
    const last = 'This is the last clause of all.';
    await tell({ answers: horses.answers, catalogue: { ...catalogue, dealer: { ...catalogue.dealer, terms: { de: { guidance: clause.repeat(200) + last } } } } });
    const fitted = await sheet(as);
    expect(fitted.fits).toBe(false);
    expect(fitted.telling).toBe(extents.length - 1);
    expect(await textOf()).toContain(last);
    // A control of the counting too.
    const printed = pagesOf(await pdf());
    expect(printed).toBe(fitted.pages);
    expect(printed).toBeGreaterThan(2);
  });
});

describe.each(paperLanguages)('the blank form in %s', (language) => {
  test.each(['letter', 'a4'] as const)('on %s: all questions in their order on two pages', async (size) => {
    await tell(horses);
    const fitted = await form({ language, units: size === 'a4' ? 'metric' : 'us', size });
    expect(fitted).toMatchObject({ fits: true });
    expect(pagesOf(await pdf())).toBe(fitted.pages);
    expect(fitted.pages).toBeLessThanOrEqual(2);
    const there = await onPaper().evaluate((host) => ({
      parts: [...host.shadowRoot!.querySelectorAll('[data-part^="question-"]')].map((part) => part.getAttribute('data-part')!.replace('question-', '')),
      fields: [...host.shadowRoot!.querySelectorAll('[data-field]')].map((field) => ({
        at: field.getAttribute('data-field')!, options: [...field.querySelectorAll('[data-option]')].map((option) => option.getAttribute('data-option')!), lines: field.querySelectorAll('.line').length,
      })),
    }));
    const asked = (questions as readonly Question[]).map(({ id, fields }) => ({ id, fields: fields.filter((field) => !isSaidBySecondBoxes(field)) })).filter(({ fields }) => fields.length > 0);
    expect(there.parts).toEqual(asked.map(({ id }) => id));
    expect(there.fields.map(({ at }) => at)).toEqual(asked.flatMap(({ fields }) => fields.map(({ at }) => at)));
    expect(there.fields.filter(({ options, lines }) => options.length === 0 && lines === 0)).toEqual([]);
    const { pages, styles } = await measured();
    for (const { foot, parts } of pages) for (const { bottom } of parts) expect(bottom).toBeLessThanOrEqual(foot);
    expect(styles.filter(({ size: px }) => px < 12 - 1e-6)).toEqual([]);
  });
});

test('a strict page has nothing to complain of', () => expect(counter.complaints).toEqual([]));
