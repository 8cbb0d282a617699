import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fragmentOf, linkTo, readFragment, readHandedOn } from '../../src/handoff/link.ts';
import { pack, unpack } from '../../src/handoff/pack.ts';
import { longestTyped, readTypedForm, typedForm } from '../../src/handoff/typed-form.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { runs } from '../support/arbitraries.ts';
import { buyers } from './buyers.ts';

const page = 'https://www.dealer-of-used-tractors.example/used-tractors/which-one-fits/index.html';
const most = 200;
const linkOf = (answers: AnswersDocument) => linkTo(page, pack(answers))!;
const typedOf = (answers: AnswersDocument) => {
  const form = typedForm(pack(answers));
  return 'text' in form ? form.text : '';
};

test('the links of ten scripted buyers, page and fragment and all, are within 200 bytes', () => {
  const links = buyers.map(({ answers }) => linkOf(answers));
  expect(links.map((link) => link.length).filter((length) => length > most)).toEqual([]);
  // Of signs that take one byte each and none to be escaped (RFC 3986, section 3.5).
  for (const link of links) expect(link).toMatch(/^https:[\w./-]+#a1=[\w-]+$/);
});

test('each of them may be typed: at most 60 characters', () => {
  expect(buyers.map(({ answers }) => typedForm(pack(answers))).filter((form) => !('text' in form) || form.text.length > longestTyped)).toEqual([]);
});

describe('a link', () => {
  const { answers } = buyers[2]!;
  const packed = pack(answers);
  const fragment = fragmentOf(packed);
  const link = linkOf(answers);

  test.each([
    ['with the #', `#${fragment}`], ['without it', fragment], ['among others', `#top&${fragment}&x=1`], ['whole', link], ['of a page that had a fragment', linkTo(`${page}#top`, packed)!],
    ['broken by a mail program', `${link.slice(0, 105)}\r\n ${link.slice(105)}`], ['within blanks', `  ${link}\n`],
    ['between angle brackets', `<${link}>`], ['at the end of a sentence', `See ${link}.`],
  ])('is read %s', (_how, text) => expect(readHandedOn(text)).toEqual({ answers }));

  test('of a page on a plain visit holds nothing of ours', () => {
    for (const plain of ['', '#', '#top', '#a=1', '#data1=x', '#section-a1', '?a1=b']) expect(readFragment(plain)).toBeUndefined();
  });

  test('that would be longer than is read back isn’t made', () => {
    const owned = (count: number) => ({ ...answers, owned: Array.from({ length: count }, (_, index) => ({ kind: 'tiller' as const, mass: { value: 401.25 + index, unit: 'lb' as const } })) });
    expect(linkTo(page, pack(owned(500)))).toBeUndefined();
    expect(readHandedOn(linkOf(owned(100)))).toEqual({ answers: owned(100) });
  });

  test.each([
    ['nothing', ' ', { code: 'nothing' }],
    ['another page', page, { code: 'not-ours' }],
    ['an address of mail', 'ann@dealer.example', { code: 'not-ours' }],
    ['a later way of writing', `#a2=${fragment.slice(3)}`, { code: 'newer' }],
    ['no way of writing there is', `#a0=${fragment.slice(3)}`, { code: 'damaged' }],
    ['cut off', fragment.slice(0, -4), { code: 'damaged' }],
    ['longer than any', `#a1=${'A'.repeat(2000)}`, { code: 'too-long' }],
    ['a typed form longer than any', 'A'.repeat(61), { code: 'too-long' }],
    ['an essay', 'x'.repeat(5000), { code: 'not-ours' }],
    ['a sign no typed form has', '2HX1E-WKCUY', { code: 'sign', sign: 'U', group: 2 }],
    ['a picture', '2HX1E-🚜', { code: 'sign', sign: '🚜', group: 2 }],
  ])('is refused by name: %s', (_what, text, refused) => expect(readHandedOn(text)).toEqual({ refused }));

  test('is refused, whatever it is, without a throw', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 80 }), fc.uint16Array({ maxLength: 40 }).map((units) => String.fromCharCode(...units)), fc.stringMatching(/^#a1=[\w-]{0,60}$/)), (text) => {
      const read = readHandedOn(text);
      if ('answers' in read) expect(unpack(pack(read.answers).bytes)).toEqual(read);
      else expect(read.refused.code).not.toBe('');
    }), runs(800));
  });
});

describe('a typed form', () => {
  const { answers } = buyers[2]!;
  const form = typedOf(answers);

  test('is groups of five of the signs of Base 32 by D. Crockford: without I, L, O, U', () => {
    expect(form).toMatch(/^([0-9A-HJKMNP-TV-Z]{5}-)*[0-9A-HJKMNP-TV-Z]{1,5}$/);
  });

  test.each([
    ['small', form.toLowerCase()], ['without hyphens', form.replaceAll('-', '')], ['with blanks', form.replaceAll('-', ' ')], ['with O for 0', form.replaceAll('0', 'o')],
    ['with I for 1', form.replaceAll('1', 'I')], ['with l for 1', form.replaceAll('1', 'l')], ['with dashes', form.replaceAll('-', ' – ')], ['over lines', form.replaceAll('-', '\n')],
    ['in full width', [...form].map((sign) => String.fromCodePoint(sign.codePointAt(0)! + 0xfee0)).join('')],
  ])('is read %s', (_how, text) => {
    expect(text).not.toBe(form);
    expect(readHandedOn(text)).toEqual({ answers });
  });

  test('with any one sign wrong, or any two neighbours changed about, is refused as damaged', () => {
    const signs = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
    const plain = form.replaceAll('-', '');
    const put = (at: number, some: string) => plain.slice(0, at) + some + plain.slice(at + some.length);
    const wrong = [...plain].flatMap((right, at) => [...signs].filter((sign) => sign !== right).map((sign) => put(at, sign)));
    const swapped = [...plain].slice(1).flatMap((next, at) => (next === plain[at] ? [] : [put(at, next + plain[at])]));
    expect(wrong.length).toBeGreaterThan(1500);
    expect(swapped.length).toBeGreaterThan(35);
    expect([...wrong, ...swapped].filter((each) => { const read = readTypedForm(each); return !('refused' in read) || read.refused.code !== 'damaged'; })).toEqual([]);
  });

  test('that would be too long for typing says by how much, and none is cut off', () => {
    const much: AnswersDocument = { ...answers, owned: Array.from({ length: 6 }, (_, index) => ({ kind: 'tiller' as const, mass: { value: 401 + index, unit: 'lb' as const } })) };
    const tooLong = typedForm(pack(much));
    expect(tooLong).toMatchObject({ tooLong: { most: longestTyped } });
    expect('tooLong' in tooLong && tooLong.tooLong.length).toBeGreaterThan(longestTyped);
    expect(readFragment(fragmentOf(pack(much)))).toEqual({ answers: much });
  });
});
