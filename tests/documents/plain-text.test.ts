import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainText, withPlainText } from '../../src/documents/plain-text.ts';

// Character names and classes: the Unicode Standard, UAX #9 (bidirectional text), UAX #15 (normalization), UAX #29 (clusters).

test.each([
  ['a name as names are', 'Rill Plus, 2nd series', 'Rill Plus, 2nd series'],
  ['letters with marks', 'Señor Müller, Gagné', 'Señor Müller, Gagné'],
  ['RIGHT-TO-LEFT OVERRIDE, with which "gpj.exe" shows as "exe.jpg"', 'photo\u202Egpj.exe', 'photogpj.exe'],
  ['an embedding that is never closed', '\u202Btext', 'text'],
  ['an isolate that is closed too often', 'a\u2069\u2069b', 'ab'],
  ['ZERO WIDTH SPACE in a word', 'pri\u200Bce', 'price'],
  ['ZERO WIDTH JOINER between Latin letters', 'pay\u200Dload', 'payload'],
  ['a mark for the order of bytes inside', 'a\uFEFFb', 'ab'],
  ['SOFT HYPHEN', 'trac\u00ADtor', 'tractor'],
  ['tags that are not seen', `plain${String.fromCodePoint(0xE0041, 0xE0042)}`, 'plain'],
  ['bell, escape and delete', 'a\u0007b\u001B[31mc\u007F', 'ab[31mc'],
  ['a line break', 'two\nlines', 'two\nlines'],
  ['letters composed and not, which are the same', 'Cafe\u0301', 'Caf\u00E9'],
  ['half of a character', 'a\uD800b', 'a\uFFFDb'],
  ['a family, which joiners make one of', '👩\u200D👩\u200D👧', '👩\u200D👩\u200D👧'],
  ['Persian, where a non-joiner is spelling', 'می\u200Cخواهم', '\u2068می\u200Cخواهم\u2069'],
  ['a name from right to left, set apart from what stands around it', 'טרקטור 42', '\u2068טרקטור 42\u2069'],
  ['marks piled up', `T${'\u0300\u0301\u0302\u0303\u0316\u0317'.repeat(9)}`, 'T\u0316\u0317\u0316\u0317'],
])('%s', (_, written, plain) => expect(plainText(written)).toBe(plain));

test('what is too long is cut, and says so', () => {
  expect(plainText('long '.repeat(1000))).toHaveLength(2_001);
  expect(plainText('long '.repeat(1000)).endsWith('…')).toBe(true);
});

describe('whatever is written', () => {
  const anything = fc.array(fc.oneof(
    fc.string({ unit: 'binary', maxLength: 5 }), fc.constantFrom('\u202E', '\u2066', '\u200D', '\u200B', '\u0300', '\u0301', '\u0335', '\uD800', '\u05D0', 'e', '👩', '\u0000'),
  ), { maxLength: 40 }).map((parts) => parts.join(''));

  test('what comes out turns nothing, hides nothing and piles nothing up', () => {
    fc.assert(fc.property(anything, (written) => {
      const plain = plainText(written);
      const inner = plain.replace(/^\u2068(.*)\u2069$/su, '$1');
      expect(inner).not.toMatch(/[\u202A-\u202E\u2066-\u2069\u200B\u200E\u200F\uFEFF]|(?![\t\n])\p{Cc}|\p{Cs}|\p{M}{5}/u);
    }), { numRuns: 2_000 });
  });

  test('made plain twice, it is what it was made once', () => {
    fc.assert(fc.property(anything, (written) => { expect(plainText(plainText(written))).toBe(plainText(written)); }), { numRuns: 2_000 });
  });
});

test('a document is made plain in all its texts, keeps its keys and figures, and what the law wants said stays whole', () => {
  const terms = 'x'.repeat(5_000);
  const made = withPlainText({ name: 'a\u202Eb', list: ['\u0007', 4, null, true], 'k\u200Bey': { deep: 'c\u200Bd' }, terms: { en: { guidance: terms } } }, ['terms']);
  expect(made).toEqual({ name: 'ab', list: ['', 4, null, true], 'k\u200Bey': { deep: 'cd' }, terms: { en: { guidance: terms } } });
});
