import { describe, expect, test } from 'vitest';
import { sayFormula } from '../../src/reasons/say-formula.ts';
import { sayRule, saySource, saySourceOfRule } from '../../src/reasons/say.ts';
import { en } from '../../src/reasons/words/en.ts';
import type { PrintedWords } from '../../src/reasons/words/words.ts';
import { figureIds, ruleIds, rules, type FormulaId } from '../../src/trade/book.ts';
import { formulaRules } from '../../src/trade/figures/formulas.ts';
import { plainUnits } from '../../src/trade/record.ts';
import { namesOf, tokensOf } from '../../src/trade/read-formula.ts';
import { showAmount } from '../../src/units/show.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { everyLanguage } from '../support/languages.ts';

const formulaIds = Object.keys(formulaRules) as FormulaId[];
const others = everyLanguage.filter(({ tag }) => tag !== 'en');
const names = [...new Set(formulaIds.flatMap((id) => namesOf(formulaRules[id].formula)))].sort();

/** A statement that a language hasn't got, or has only in English. */
const unsaid = (words: PrintedWords) => ruleIds.filter((id) => (sayRule(id, words) ?? '').trim() === '' || sayRule(id, words) === rules[id].statement);

describe.each(others)('$tag', ({ words }) => {
  test('states every rule of the book, and none in English', () => {
    expect(unsaid(words)).toEqual([]);
    expect(Object.keys(words.figures).sort()).toEqual([...figureIds].sort());
    expect(Object.keys(words.formulas).sort()).toEqual([...formulaIds].sort());
  });

  test('no two rules of the book are stated alike', () => {
    const stated = ruleIds.map((id) => sayRule(id, words));
    expect(stated.filter((each, index) => stated.indexOf(each) !== index)).toEqual([]);
  });

  test('says where every rule comes from, and of what is derived nothing in English', () => {
    for (const id of ruleIds) {
      const { source } = rules[id];
      const said = saySource(source, words);
      expect(said, id).not.toMatch(/undefined|^\s*$/);
      if (source.basis === 'published' || source.basis === 'memory') expect(said).toContain(source.title);
      else expect(said, id).not.toBe(saySource(source, en));
      if (source.basis === 'derived') expect(said, id).not.toContain(source.from);
    }
    expect(saySourceOfRule('mow.speed', words)).not.toBe('');
  });
});

test('control: a statement that is missing or left in English would be found', () => {
  const { words } = others[0]!;
  const { 'mow.speed': _gone, ...rest } = words.figures;
  expect(unsaid({ ...words, figures: rest as PrintedWords['figures'] })).toEqual(['mow.speed']);
  expect(unsaid({ ...words, formulas: { ...words.formulas, 'mow.rate': en.formulas['mow.rate'] } })).toEqual(['mow.rate']);
});

/** What of a formula is the same in every language: its marks, and its numbers but for the decimal mark. */
const skeleton = (formula: string, decimalMark: string) => {
  const numbers = formula.match(/\d+(?:[.,]\d+)?/g) ?? [];
  return {
    numbers: numbers.map((each) => each.replace(decimalMark, '.')),
    marks: tokensOf(formula.replace(/\d+(?:[.,]\d+)?/g, '1')).filter(({ kind, text }) => kind === 'mark' || (kind === 'number' && text === '1')).map(({ text }) => text),
  };
};

describe.each(everyLanguage)('the formulas: $tag', ({ tag, words }) => {
  test('has a word for every name in a formula, and none for what is in no formula', () => {
    expect(Object.keys(words.formulaNames).sort()).toEqual(names);
    // A mark in a name would read as one of the sum.
    expect(Object.values(words.formulaNames).filter((name) => !/^[\p{L}][\p{L}\d’ -]*$/u.test(name))).toEqual([]);
  });

  test.each(formulaIds.filter((id) => !formulaRules[id].formula.includes('Σ')))('%s keeps its marks and its numbers', (id) => {
    const { formula } = formulaRules[id];
    const said = sayFormula(formula, words).replaceAll(words.joins.semicolon, '; ');
    expect(said).not.toContain('undefined');
    expect(skeleton(said, words.decimalMark)).toEqual(skeleton(formula, '.'));
    if (tag === 'en') expect(said).toBe(formula);
  });

  test('a sum is said with its bounds', () => {
    expect(sayFormula('weight of rank i = (1/n) × Σ from k = i to n of 1/k', words)).toBe(`${words.formulaNames['weight of rank i']} = (1/n) × ${words.formulaSum('k = i', 'n')} 1/k`);
    expect(words.formulaSum('k = i', 'n')).toMatch(/^Σ \S+ k = i \S+ n \S+$/);
  });

  test('no two names in one formula are called alike', () => {
    for (const id of formulaIds) {
      const called = [...new Set(namesOf(formulaRules[id].formula))].map((name) => words.formulaNames[name]);
      expect(new Set(called).size, `${id}: ${called.join(', ')}`).toBe(called.length);
    }
  });
});

test.each([
  ['de', 'Zugkraftbedarf = Bodenfaktor × (a + b × 3,6 × Geschwindigkeit + c × (3,6 × Geschwindigkeit)²) × Breite × 100 × Tiefe'],
  ['es', 'tiro necesario = factor del suelo × (a + b × 3.6 × velocidad + c × (3.6 × velocidad)²) × ancho × 100 × profundidad'],
  ['fr', 'traction demandée = facteur du sol × (a + b × 3,6 × vitesse + c × (3,6 × vitesse)²) × largeur × 100 × profondeur'],
])('a formula in the marks and names of %s', (language, said) => {
  const { words } = everyLanguage.find(({ tag }) => tag === language)!;
  expect(sayFormula(formulaRules['draft.tool'].formula, words)).toBe(said);
});

test('a name within a longer one, or within a word, is left alone', () => {
  const words = { ...en, formulaNames: { ...en.formulaNames, lift: 'RAISE', rate: 'PACE', load: 'BURDEN' } };
  expect(sayFormula('lift = lift at the pins × (rated + load) / annual rate', words)).toBe('RAISE = lift at the pins × (rated + BURDEN) / annual rate');
});

/** Terms that say more than a name can, or that read before their figure as "kept for 7 years" does. */
const calledOtherwise = ['efficiency', 'exchange', 'months', 'years', 'hours a year'];
const termOf = (name: string) => name.replace(/^C(?=\d)/, 'c').replace(/ (\p{L})/gu, (_, letter: string) => letter.toUpperCase());
const plain = (text: string) => text.replaceAll(',', '');
const agree = (name: string, term: string) => plain(term).startsWith(plain(name)) || plain(name).startsWith(plain(term));

describe.each(others)('the terms of a working: $tag', ({ words }) => {
  test('are those of English', () => expect(Object.keys(words.terms).sort()).toEqual(Object.keys(en.terms).sort()));

  test('go by the names of the formula where they are the same thing', () => {
    const strays = names.filter((name) => !calledOtherwise.includes(name) && words.terms[termOf(name)] !== undefined && !agree(words.formulaNames[name], words.terms[termOf(name)]!));
    expect(strays.map((name) => [name, words.formulaNames[name], words.terms[termOf(name)]])).toEqual([]);
  });
});

test.each(everyLanguage)('what is counted has a word, for one and for several: $tag', ({ words }) => {
  const reader = readerFor(words, 'metric', 'en-US', 'USD');
  for (const unit of plainUnits.filter((each) => !['ratio', 'dealer-currency', 'count', 'dB(A)'].includes(each))) {
    const word = words.units[unit];
    expect(word, unit).toEqual({ one: expect.stringMatching(/\p{L}/u), other: expect.stringMatching(/\p{L}/u) });
    expect(showAmount(2, unit, reader)).not.toContain('-');
  }
});
