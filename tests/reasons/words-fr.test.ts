import { expect, test } from 'vitest';
import { fr as sheet } from '../../src/cli/words/fr.ts';
import { fr } from '../../src/reasons/words/fr.ts';

/** Stands for whatever is handed in: as a text it is `text`, and so is each of its fields but those of `but`. */
const handedIn = (text: string, but: Readonly<Record<string, unknown>> = {}) => new Proxy({}, {
  get: (_, key) => (key === Symbol.toPrimitive || key === 'replace' ? () => text : Object.hasOwn(but, key) ? but[key as string] : text),
});

const variants = [{}, { noCoupling: false, onHitch: false, typical: false, passage: 'door' }, { noCoupling: false, has: '', price: '', part: '', task: '' }];

/** Every sentence of a language, with `text` wherever something is handed in. */
function sentences(words: unknown, text: string, but: Readonly<Record<string, unknown>> = {}): string[] {
  if (typeof words === 'string') return [words];
  if (typeof words === 'function') return variants.map((variant) => { const said = handedIn(text, { ...variant, ...but }); return String(words(said, said, said, said, said)); });
  return Object.values(words as object).flatMap((each) => sentences(each, text, but));
}

const { list: _list, ...asked } = fr;
const all = [...sentences(asked, 'Aube'), ...sentences(sheet, 'Aube')];

/** A high mark without the space French sets before it, a no-break one before a colon and a narrow one before the others, or a quotation mark without the one inside. */
const illSet = /(?<!\u00a0)[:»]|(?<!\u202f)[;?!]|«(?!\u00a0)/;

test('French sets a no-break space before high marks and within quotation marks', () => {
  expect(all.length).toBeGreaterThan(1000);
  expect(all.filter((sentence) => illSet.test(sentence))).toEqual([]);
});

test.each(['Que faire ?', 'Que faire\u00a0?', 'Source : Aube', 'Source: Aube', 'Source\u202f: Aube', '«Aube\u00a0»', '« Aube »'])('control: “%s” would be found ill set', (sentence) => {
  expect(sentence).toMatch(illSet);
});

/** A short word that would have to lose its vowel before this name; what follows “à partir de” is a price. */
const unelided = /(?:^|[^\p{L}])(?<!à partir )(?:de|que|jusque|le|la|ne|se|je) Aube/iu;

test('no name that is handed in asks for an elision', () => {
  const { reasons, additions, cautions, notCleared, result, contrast, robustness, waysOut, wizard } = fr;
  const figures = Object.fromEntries(['has', 'wants', 'apart', 'best', 'worst', 'price', 'mass', 'year', 'deposit', 'months', 'rate', 'from', 'to', 'more'].map((name) => [name, '12']));
  const { weightChange: _weights, ...firm } = robustness;
  const { packageRange: _range, owning: _owning, ...told } = result;
  const { figures: _figures, ...compared } = contrast;
  const said = [reasons, additions, notCleared, told, compared, firm, waysOut, wizard.skipped].flatMap((words) => sentences(words, 'Aube', figures));
  expect([...said, ...Object.values(cautions).map((say) => say('Aube', {}))].filter((sentence) => unelided.test(sentence))).toEqual([]);
});

test.each(['derrière celui de Aube', 'Que Aube vienne'])('control: “%s” would be found unelided', (sentence) => {
  expect(sentence).toMatch(unelided);
});

test.each([['0,5', 'point'], ['1', 'point'], ['1,9', 'point'], ['2', 'points'], ['17,1', 'points']])('%s is told with “%s”', (shown, word) => {
  expect(fr.contrast.points(shown, true)).toBe(`${shown}\u00a0${word} d’avance`);
});
