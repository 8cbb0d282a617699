import { describe, expect, test } from 'vitest';
import { languages, type LanguageTag } from '../../src/cli/languages.ts';
import { modulesOf } from '../../src/cli/rulebook/module.ts';
import { themeOf } from '../../src/cli/rulebook/theme.ts';
import { trustOf } from '../../src/cli/rulebook/trust.ts';
import { de } from '../../src/cli/rulebook/words/de.ts';
import type { RuleBookWords } from '../../src/cli/rulebook/words/words.ts';
import { sayFormula } from '../../src/reasons/say-formula.ts';
import { sayRule } from '../../src/reasons/say.ts';
import { figureRules, ruleIds, rules, type FigureId } from '../../src/trade/book.ts';
import { plainUnits } from '../../src/trade/record.ts';
import { changedCatalogue, runWith } from './fake-io.ts';

const tags = Object.keys(languages) as LanguageTag[];
const others = tags.filter((tag) => tag !== 'en');
const english = languages.en.ruleBook;

/** Every text of a language by its place, `text` wherever something is handed in. */
function textsOf(words: unknown, text: string, place = ''): [string, string][] {
  if (words === undefined) return [];
  if (typeof words === 'string') return [[place, words]];
  if (typeof words === 'function') return [[place, String(words(text, text, text))]];
  return Object.entries(words as object).flatMap(([name, each]) => textsOf(each, text, place === '' ? name : `${place}.${name}`));
}

const inEnglish = new Map(textsOf(english, '7'));
const alike = (words: RuleBookWords) => textsOf(words, '7').filter(([place, text]) => text !== '' && inEnglish.get(place) === text).map(([place]) => place).sort();
/** Words that are the same in both languages. */
const sameWord: Readonly<Record<string, readonly string[]>> = { de: ['themes.ballast'], fr: ['source', 'version'] };

describe.each(others)('the words of %s', (tag) => {
  const { ruleBook: own, words } = languages[tag];

  test('are all there, and none is English', () => {
    expect(textsOf(own, '7').map(([place]) => place).filter((place) => place !== 'sourcesNote').sort()).toEqual([...inEnglish.keys()].sort());
    expect(alike(own)).toEqual(sameWord[tag] ?? []);
    expect(textsOf(own, '7').filter(([place, text]) => /undefined|\s{2}|^\s|\s$/.test(text) || (text === '' && place !== 'units.ratio'))).toEqual([]);
  });

  test('name every theme, place, kind and trust of the book, and no two themes or places alike that English tells apart', () => {
    for (const id of ruleIds) {
      const rule = rules[id];
      expect([own.themes[themeOf(id)], own.kinds[rule.kind], own.trust[trustOf(rule.source)].name, ...modulesOf(id).map((module) => own.places[module])].filter((said) => !said), id).toEqual([]);
    }
    const themes = Object.values(own.themes);
    expect(themes.filter((theme, index) => themes.indexOf(theme) !== index)).toEqual([]);
    expect(new Set(Object.values(own.places)).size).toBe(new Set(Object.values(english.places)).size);
  });

  test('keep what the page’s script fills in, and what is handed in', () => {
    expect(own.found).toContain('{shown}');
    expect(own.found).toContain('{all}');
    const handedIn = (words_: RuleBookWords) => textsOf(words_, '§').filter(([, text]) => text.includes('§')).map(([place]) => place);
    expect(handedIn(own)).toEqual(handedIn(english));
  });

  test('write numbers as its formulas do, and go by its own tag', () => {
    expect([own.language, words.language]).toEqual([tag, tag]);
    expect(new Intl.NumberFormat(own.locale).format(0.5)).toBe(`0${words.decimalMark}5`);
  });
});

test('control: words left in English would be found, and what is missing is no words by type', () => {
  expect(alike({ ...de, title: english.title, places: { ...de.places, 'ranking/rank': english.places['ranking/rank'] } })).toEqual(['places.ranking/rank', 'themes.ballast', 'title']);
  const { title: _title, ...rest } = de;
  // @ts-expect-error: the title is missing
  const incomplete: RuleBookWords = rest;
  // @ts-expect-error: a place is missing
  const placeless: RuleBookWords['places'] = { 'ranking/rank': '' };
  expect([Object.keys(incomplete).length, Object.keys(placeless).length]).toEqual([Object.keys(de).length - 1, 1]);
});

/** French sets a no-break space before a colon, a narrow one before the other high marks. */
test('French is set as French is', () => {
  const illSet = /(?<!\u00a0)[:»]|(?<!\u202f)[;?!]|«(?!\u00a0)/;
  expect(textsOf(languages.fr.ruleBook, 'Aube').filter(([, text]) => illSet.test(text))).toEqual([]);
  expect('Attendu : Aube').toMatch(illSet);
});

const refusedRules = { 'overhead.clearance': { value: 6, unit: 'in' }, 'slope.flat': 7, 'haul.reserve': { value: 10, unit: 'gal' }, 'mow.per-year': 500, 'mow.by-moonlight': 1, 'mow.overlap': { value: 1, unit: 'kg' } };
const lot = changedCatalogue((catalogue) => { catalogue.rules = { ...refusedRules, 'haul.deck-side': 3.5 }; });
const printed = async (...argv: string[]) => (await runWith({ lot }, 'rulebook', ...argv)).out.join('\n');
const decode = (text: string) => text.replaceAll(/<[^>]*>/g, ' ').replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&');
/** What a reader reads of a page that is not said to be English: names of sources are. */
const readIn = (page: string) => decode(page.replaceAll(/<style>.*?<\/style>|<script>.*?<\/script>|<code.*?<\/code>|<span lang="en">.*?<\/span>/gs, ' '));
const englishPhrases = [...new Set([...inEnglish].filter(([place, text]) => place !== 'name' && text.length > 9).map(([, text]) => text))];
const englishIn = (text: string) => [...englishPhrases, ...ruleIds.map((id) => rules[id].statement)].filter((phrase) => text.includes(phrase));

/** The weight of a yard of clay and standard gravity, as each language writes them. */
const marks: Readonly<Record<string, { thousands: string; fraction: string }>> = {
  de: { thousands: '2.800', fraction: '9,80665' },
  es: { thousands: '2,800', fraction: '9.80665' },
  fr: { thousands: '2\u202f800', fraction: '9,80665' },
};

describe.each(others)('the book in %s', async (tag) => {
  const { ruleBook: own, words } = languages[tag];
  const page = await printed('--format', 'html', '--language', tag, '--catalogue', 'lot');

  test('is said to be in it, and nothing of it is English but what is said to be', () => {
    expect(page).toContain(`<html lang="${tag}" dir="${words.direction}">`);
    expect(englishIn(readIn(page))).toEqual([]);
  });

  test('says each rule whole in it', () => {
    const articles = new Map([...page.matchAll(/<article id="([^"]+)".*?<\/article>/gs)].map(([article, id]) => [id!, decode(article)]));
    for (const id of ruleIds) {
      const rule = rules[id];
      const said = articles.get(id)!;
      for (const part of [sayRule(id, words), own.kinds[rule.kind], own.trust[trustOf(rule.source)].name, ...modulesOf(id).map((module) => own.places[module])]) expect(said, id).toContain(part);
      if (rule.kind === 'formula') expect(said).toContain(sayFormula(rule.formula, words));
    }
  });

  test('gives each value in the marks and unit words of it', () => {
    const { thousands, fraction } = marks[tag]!;
    expect(page).toContain(`<strong>${thousands}\u00a0`);
    expect(page).toContain(`<strong>${fraction}\u00a0m/s²</strong>`);
    // A year is no amount.
    expect(page).toContain('<strong>2013</strong>');
    for (const unit of [...plainUnits, 'h'].filter((each) => each !== 'dB(A)' && each !== 'ratio' && each !== 'count')) {
      const [id, { value }] = Object.entries(figureRules).find(([, rule]) => rule.unit === unit)! as [FigureId, { value: number }];
      expect(page, id).not.toContain(`>${value}\u00a0${unit}<`);
    }
  });

  test('says of each value that is refused why, and of the one that isn’t that it counts', () => {
    const { refusals, kinds } = own;
    const read = readIn(page);
    for (const why of [refusals['no-figure'], refusals['not-to-change'](kinds.definition), refusals['other-unit'](''), refusals['other-unit']('lb')]) expect(read).toContain(why);
    expect(read).toContain(own.inPlaceOf('').trim());
    expect(read).toContain(own.dealers);
  });

  test('as text has every rule, within the columns, in it', async () => {
    const text = await printed('--language', tag, '--catalogue', 'lot');
    const oneLine = text.replaceAll(/\s+/g, ' ');
    for (const id of ruleIds) expect(oneLine).toContain(`${id} ${sayRule(id, words)}`.replaceAll(/\s+/g, ' '));
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(englishIn(oneLine)).toEqual([]);
  });

  test('as JSON is the same as in English', async () => {
    expect(await printed('--format', 'json', '--language', tag)).toBe(await printed('--format', 'json'));
  });
});

test('control: the English page is full of English', async () => {
  const found = englishIn(readIn(await printed('--format', 'html', '--catalogue', 'lot')));
  expect(found.length).toBeGreaterThan(ruleIds.length);
});

describe('with translations', () => {
  const at = (language: string) => `book/${language}/rules.html?a=1&amp;b=2`;

  test('the page links to itself in each language, and marks the one it is in', async () => {
    const page = await printed('--format', 'html', '--language', 'fr', '--translations', 'book/{language}/rules.html?a=1&b=2');
    for (const tag of tags) {
      expect(page).toContain(`<link rel="alternate" hreflang="${tag}" href="${at(tag)}">`);
      expect(page).toContain(`<a href="${at(tag)}" lang="${tag}" hreflang="${tag}"${tag === 'fr' ? ' aria-current="page"' : ''}>${languages[tag].ruleBook.name}</a>`);
    }
    expect(page.match(/aria-current=/g)).toHaveLength(1);
  });

  test('without them it links to nothing outside itself', async () => {
    expect([...(await printed('--format', 'html')).matchAll(/(?:href|hreflang|src)="([^#"][^"]*)"/g)].map(([, to]) => to)).toEqual(['data:,']);
  });

  test.each([
    ['no place for the language', ['--format', 'html', '--translations', 'rules.html'], '{language}'],
    ['an address that is none of a page', ['--format', 'html', '--translations', 'javascript:{language}'], '{language}'],
    ['a text', ['--translations', 'rules.{language}.html'], '--format html'],
    ['a language nobody knows', ['--language', 'deu'], '(nearest: de)'],
  ])('%s is refused with 2', async (_what, argv, expected) => {
    const { code, out, err } = await runWith({}, 'rulebook', ...argv);
    expect({ code, out }).toEqual({ code: 2, out: [] });
    expect(err[0]).toContain(expected);
  });
});
