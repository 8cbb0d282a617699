import { en } from '../reasons/words/en.ts';
import type { Words } from '../reasons/words/words.ts';

/** English comes with the widget; any other language is fetched when it is asked for. */
const languages: Readonly<Record<string, () => Promise<Words>>> = {
  en: async () => en,
  de: async () => (await import('../reasons/words/de.ts')).de,
};

/** The languages there are, by their tag. */
export const languageTags = Object.keys(languages);

/** The words for a language tag such as `de-CH`, or the English ones where there are none. */
export const wordsFor = (tag: string): Promise<Words> => (languages[tag.toLowerCase().split('-')[0]!] ?? languages.en!)();
