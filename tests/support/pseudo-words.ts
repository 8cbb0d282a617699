import type { AskingWords, Words } from '../../src/reasons/words/words.ts';
import type { HandOnWords } from '../../src/widget/hand-on/words/words.ts';
import type { UnitWords } from '../../src/widget/unit/words/words.ts';

/** What every text of the pseudo-language begins and ends with: a text on the page without them was never translated. */
export const [opening, closing] = ['⟦', '⟧'];

const spoken = (text: string) => (text === '' ? '' : `${opening}${text}${closing}`);

/** Values of the words that are no texts to be read. */
const kept = ['language', 'decimalMark'];

function pseudo<T>(words: T, key = ''): T {
  if (kept.includes(key)) return words;
  if (typeof words === 'string') return spoken(words) as T;
  if (typeof words === 'function') {
    const say = words as (...said: unknown[]) => unknown;
    return ((...said: unknown[]) => pseudo(say(...said), key)) as T;
  }
  if (Array.isArray(words)) return words.map((each: unknown) => pseudo(each, key)) as T;
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([name, value]) => [name, pseudo(value, name)])) as T;
}

/** A language that nobody speaks, read from right to left: the English one with its texts bracketed. */
export const pseudoWords = <W extends AskingWords | Words | HandOnWords | UnitWords>(words: W): W => ({ ...pseudo(words), direction: 'rtl' });
