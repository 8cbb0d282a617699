import type { HandOnWords } from '../widget/hand-on/words/words.ts';
import { languageFor, languageNames, languageTags, partsOf, type LanguageTag } from '../widget/languages.ts';
import { laterParts } from '../widget/later-parts.ts';
import type { Words } from '../reasons/words/words.ts';
import type { OpeningWords } from './opening/words/words.ts';
import type { PaperWords } from './paper/words/words.ts';
import type { CounterWords } from './words/words.ts';

export { languageFor, languageNames, languageTags, type LanguageTag };

/** All that is said in a language: by the counter, of a result, on paper, of opening and taking along. */
export interface Spoken {
  own: CounterWords;
  words: Words;
  opening: OpeningWords;
  paper: PaperWords;
  handOn: HandOnWords;
}

interface OwnParts {
  own(): Promise<CounterWords>;
  opening(): Promise<OpeningWords>;
  paper(): Promise<PaperWords>;
}

const ownParts: Readonly<Record<LanguageTag, OwnParts>> = {
  en: { own: async () => (await import('./words/en.ts')).en, opening: async () => (await import('./opening/words/en.ts')).opening, paper: async () => (await import('./paper/words/en.ts')).en },
  de: { own: async () => (await import('./words/de.ts')).de, opening: async () => (await import('./opening/words/de.ts')).opening, paper: async () => (await import('./paper/words/de.ts')).de },
  es: { own: async () => (await import('./words/es.ts')).es, opening: async () => (await import('./opening/words/es.ts')).opening, paper: async () => (await import('./paper/words/es.ts')).es },
  fr: { own: async () => (await import('./words/fr.ts')).fr, opening: async () => (await import('./opening/words/fr.ts')).opening, paper: async () => (await import('./paper/words/fr.ts')).fr },
};

/** At a counter all of a language comes at once: there is no network to fetch the rest by later. */
export async function speak(tag: LanguageTag): Promise<Spoken> {
  const parts = partsOf(tag);
  const [own, opening, paper, asking, telling, handOn] = await Promise.all([
    ownParts[tag].own(), ownParts[tag].opening(), ownParts[tag].paper(), parts.asking(), parts.telling(), laterParts[tag].handOn(),
  ]);
  return { own, opening, paper, handOn, words: { ...asking, ...telling } };
}
