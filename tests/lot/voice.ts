import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { namesIn, type Voice } from '../../src/reasons/say.ts';
import type { Words } from '../../src/reasons/words/words.ts';
import { en } from '../../src/reasons/words/en.ts';

/** A voice that speaks of a catalogue in a language, in US units. */
export function voiceOf(catalogue: CatalogueDocument, words: Words = en, locale = 'en-US'): Voice {
  const reader = { units: 'us', locale, currency: catalogue.dealer.currency, unitWords: words.units } as const;
  return { words, reader, nameOf: namesIn(catalogue, reader) };
}
