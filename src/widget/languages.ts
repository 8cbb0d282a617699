import { asking } from '../reasons/words/en/asking.ts';
import type { AskingWords, TellingWords } from '../reasons/words/words.ts';

/** The two parts of a language; each is fetched when it is wanted, but for the English questions, which come with the widget. */
export interface Parts {
  asking(): Promise<AskingWords>;
  telling(): Promise<TellingWords>;
}

const languages: Readonly<Record<string, Parts>> = {
  en: { asking: async () => asking, telling: async () => (await import('../reasons/words/en/telling.ts')).telling },
  de: { asking: async () => (await import('../reasons/words/de/asking.ts')).asking, telling: async () => (await import('../reasons/words/de/telling.ts')).telling },
  es: { asking: async () => (await import('../reasons/words/es/asking.ts')).asking, telling: async () => (await import('../reasons/words/es/telling.ts')).telling },
  fr: { asking: async () => (await import('../reasons/words/fr/asking.ts')).asking, telling: async () => (await import('../reasons/words/fr/telling.ts')).telling },
};

/** The languages there are, by their tag. */
export const languageTags = Object.keys(languages);

/** Where the words are for a language tag such as `de-CH`: the English ones where there are none. */
export const partsFor = (tag: string): Parts => languages[tag.toLowerCase().split('-')[0]!] ?? languages.en!;
