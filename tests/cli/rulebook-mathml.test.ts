import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mathOf } from '../../src/cli/rulebook/mathml.ts';
import { sayFormula, sayToken } from '../../src/reasons/say-formula.ts';
import { formulaRules } from '../../src/trade/figures/formulas.ts';
import { everyLanguage } from '../support/languages.ts';

/** The elements of MathML Core that a formula may be set with, and how many children each must have. */
const children: Readonly<Record<string, number | undefined>> = {
  math: undefined, mrow: undefined, msqrt: undefined, mi: 0, mn: 0, mo: 0, mtext: 0, mspace: 0, mfrac: 2, mroot: 2, msup: 2, munderover: 3,
};

/** What is wrong with a text as MathML: each element closed where it should be, with its number of children. */
function faultIn(mathml: string): string | undefined {
  const open: { name: string; children: number }[] = [{ name: '', children: 0 }];
  for (const [, closing, name, text] of mathml.matchAll(/<(\/?)([a-z]+)[^<>]*>|([^<>]+|[<>])/g)) {
    const here = open.at(-1)!;
    if (text !== undefined) {
      if (children[here.name] !== 0) return `text "${text}" in <${here.name}>`;
      if (/[<>]|&(?!amp;|lt;|gt;)/.test(text)) return `"${text}" is not escaped`;
    } else if (closing === '') {
      if (!Object.hasOwn(children, name!)) return `<${name}> is not of MathML Core`;
      here.children += 1;
      open.push({ name: name!, children: 0 });
    } else {
      if (here.name !== name) return `</${name}> closes <${here.name}>`;
      const wanted = children[here.name];
      if (wanted !== undefined && wanted !== here.children) return `<${name}> has ${here.children} children`;
      open.pop();
    }
  }
  return open.length === 1 ? undefined : `<${open.at(-1)!.name}> is not closed`;
}

const decode = (text: string) => text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
const wordsIn = (text: string) => text.match(/[\p{L}\p{N}]+/gu) ?? [];
/** What MathML says by its elements is said by a sign or a small word in the text. */
const wordsOfSource = (formula: string) =>
  wordsIn(formula.replaceAll('Σ', ' Σ ').replaceAll('²', ' 2 ').replaceAll('³', ' 3 ').replace(/Σ  ?from (.+?) to (.+?) of\b/g, 'Σ $1 $2'));
const wordsOfMath = (mathml: readonly string[]) =>
  wordsIn(decode(mathml.join(' ').replaceAll('<mn>3</mn></mroot>', '</mroot>').replaceAll(/<[^>]+>/g, ' ')));

const formulas = Object.entries(formulaRules).map(([id, { formula }]) => ({ id, formula }));

test.each(formulas)('$id is set as MathML with the words of its text, in their order', ({ formula }) => {
  const set = mathOf(formula);
  expect(set.map(faultIn)).toEqual(set.map(() => undefined));
  expect(set).toHaveLength(formula.split(';').length);
  expect(wordsOfMath(set)).toEqual(wordsOfSource(formula));
});

test.each(everyLanguage)('formulas are set with the names and decimal marks of a language, in the order of their text: $tag', ({ words }) => {
  for (const { id, formula } of formulas.filter((each) => !each.formula.includes('Σ'))) {
    const set = mathOf(formula, (token) => sayToken(token, words));
    expect(set.map(faultIn), id).toEqual(set.map(() => undefined));
    expect(wordsOfMath(set), id).toEqual(wordsOfSource(sayFormula(formula, words)));
  }
  const [sum] = mathOf(formulaRules['weights.rank-order-centroid'].formula, (token) => sayToken(token, words));
  expect(sum).toContain(`<mi>${words.formulaNames['weight of rank i']}</mi>`);
  expect(sum).toContain('<munderover><mo>Σ</mo>');
});

test.each(formulas)('$id has no fraction without a part, and no mark that belongs to nothing', ({ formula }) => {
  expect(mathOf(formula).join('')).not.toContain('<mrow></mrow>');
});

describe('control', () => {
  test.each([
    ['an element left open', '<math><mrow></math>'],
    ['elements that cross', '<math><mfrac><mi>a</mi><mrow></mfrac></mrow></math>'],
    ['a fraction with one part', '<math><mfrac><mi>a</mi></mfrac></math>'],
    ['a fraction with three', '<math><mfrac><mi>a</mi><mi>b</mi><mi>c</mi></mfrac></math>'],
    ['bare text', '<math>a</math>'],
    ['an element of another language', '<math><b></b></math>'],
    ['a sign that is not escaped', '<math><mo>&</mo></math>'],
  ])('%s would be found', (_what, mathml) => expect(faultIn(mathml)).toBeDefined());

  test('words that are lost or change places would be found', () => {
    const set = mathOf('rate = speed × width / time');
    expect(wordsOfMath(set)).not.toEqual(wordsOfSource('rate = width × speed / time'));
    expect(wordsOfMath(set)).not.toEqual(wordsOfSource('rate = speed × width / time, at best'));
    expect(wordsOfMath(mathOf('a = b'))).not.toEqual(wordsOfSource('a = b²'));
  });
});

/** A formula without what is only there to hold things together. */
const core = (formula: string) => mathOf(formula).join('').replace(/<math[^>]*>|<\/math>/g, '');
const [a, b, c, d, n, x] = ['a', 'b', 'c', 'd', 'n', 'x'].map((name) => `<mi>${name}</mi>`) as [string, string, string, string, string, string];
const fraction = (above: string, below: string) => `<mfrac>${above}${below}</mfrac>`;
const row = (...parts: string[]) => `<mrow>${parts.join('')}</mrow>`;
const [plus, minus, times] = ['<mo>+</mo>', '<mo>−</mo>', '<mo>×</mo>'];
const inBrackets = (inside: string) => row('<mo>(</mo>', inside, '<mo>)</mo>');

test.each([
  ['a / b / c', fraction(fraction(a, b), c)],
  ['a/b/c', fraction(fraction(a, b), c)],
  ['a / b × c', row(fraction(a, b), times, c)],
  ['a / (b × c)', fraction(a, row(b, times, c))],
  ['a × (b + c) / d', fraction(row(a, times, inBrackets(row(b, plus, c))), d)],
  ['a + b / c', row(a, plus, fraction(b, c))],
  ['(a + b) / c', fraction(row(a, plus, b), c)],
  ['((a + b)) / c', fraction(inBrackets(row(a, plus, b)), c)],
  ['√(x)', `<msqrt>${x}</msqrt>`],
  ['a × √n × b', row(row(a, times, `<msqrt>${n}</msqrt>`), times, b)],
  ['√a / b', fraction(`<msqrt>${a}</msqrt>`, b)],
  ['∛(a / b)', `<mroot>${fraction(a, b)}<mn>3</mn></mroot>`],
  ['x²', `<msup>${x}<mn>2</mn></msup>`],
  ['√x²', `<msqrt><msup>${x}<mn>2</mn></msup></msqrt>`],
  ['a × x²', row(a, times, `<msup>${x}<mn>2</mn></msup>`)],
  ['(a − b × √n)²', `<msup>${inBrackets(row(a, minus, row(b, times, `<msqrt>${n}</msqrt>`)))}<mn>2</mn></msup>`],
  ['a^(b / c)', `<msup>${a}${fraction(b, c)}</msup>`],
  ['a^b / c', fraction(`<msup>${a}${b}</msup>`, c)],
  ['a^−b', `<msup>${a}${row(minus, b)}</msup>`],
  ['Σ a / b', row('<mo>Σ</mo>', fraction(a, b))],
  ['Σ from x = a to n of 1/x', row(`<munderover><mo>Σ</mo>${row(x, '<mo>=</mo>', a)}${n}</munderover>`, fraction('<mn>1</mn>', x))],
  ['⌈a / b⌉', row('<mo>⌈</mo>', fraction(a, b), '<mo>⌉</mo>')],
  ['⌈a⌉ / b', fraction(row('<mo>⌈</mo>', a, '<mo>⌉</mo>'), b)],
  ['atan(a)', row('<mi>atan</mi>', '<mo>\u2061</mo>', inBrackets(a))],
  ['hours a year × a', row('<mi>hours a year</mi>', times, a)],
  ['a < b', row(a, '<mo>&lt;</mo>', b)],
  ['a, never above rated', `${a}<mo>,</mo><mtext>\u00a0never above rated</mtext>`],
])('%s is read as a person reads it', (formula, set) => expect(core(formula)).toBe(set));

test('; parts two formulas, each set by itself', () => expect(mathOf('a = b; c = d')).toHaveLength(2));

/** A power of nothing stays the small digit it is. */
const plainDigits = (text: string) => text.replaceAll('²', '2');

test('whatever is written, it never throws, stays well-formed and keeps the words in order', () => {
  const bits = fc.constantFrom('a', 'far lift', '2', '1.5', '+', '−', '×', '/', '=', '(', ')', '√', '∛', '²', '^', 'Σ', '⌈', '⌉', ',', '<', '&', '%', '"', 'Σ from k = i to n of ');
  const written = fc.oneof(fc.array(bits, { maxLength: 40 }).map((some) => some.join(' ')), fc.array(bits, { maxLength: 40 }).map((some) => some.join('')));
  fc.assert(fc.property(written, (formula) => {
    const set = mathOf(formula);
    expect(set.map(faultIn)).toEqual(set.map(() => undefined));
    expect(plainDigits(wordsOfMath(set).join(''))).toBe(plainDigits(wordsOfSource(formula).join('')));
  }), { numRuns: 2000 });
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (formula) => {
    const set = mathOf(formula);
    expect(set.map(faultIn)).toEqual(set.map(() => undefined));
  }));
});

test.each(['(', '√', '^', 'a^', 'Σ', '−', '('.repeat(3) + '√^'])('a depth that nobody writes is set all the same: %s', (opening) => {
  expect(mathOf(opening.repeat(2000)).map(faultIn)).toEqual([undefined]);
});
