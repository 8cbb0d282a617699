import type { Reader } from '../units/show.ts';
import type { AskingWords } from './words/words.ts';

/** What questions are asked with: a language and the reader's units. */
export interface AskingVoice {
  words: AskingWords;
  reader: Reader;
}

export const readerFor = (words: AskingWords, units: 'us' | 'metric', locale: string, currency: string): Reader => ({
  units, currency, unitWords: words.units,
  // The language of the words, the region of the dealer: "de-US" counts in German and pays in dollars.
  locale: `${words.language}-${new Intl.Locale(locale).region ?? 'US'}`,
});
