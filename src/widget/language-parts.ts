import { asking } from '../reasons/words/en/asking.ts';
import type { AskingWords, TellingWords } from '../reasons/words/words.ts';

/** The two parts of a language; each is fetched when it is wanted, but for the questions in the script's own language, which come with it. */
export interface Parts {
  asking(): Promise<AskingWords>;
  telling(): Promise<TellingWords>;
}

/** The language that comes with the script. */
export const ownLanguage = 'en' as const;
export const ownAsking: AskingWords = asking;

export const languages = {
  en: { asking: async () => asking, telling: async () => (await import('../reasons/words/en/telling.ts')).telling },
  de: { asking: async () => (await import('../reasons/words/de/asking.ts')).asking, telling: async () => (await import('../reasons/words/de/telling.ts')).telling },
  es: { asking: async () => (await import('../reasons/words/es/asking.ts')).asking, telling: async () => (await import('../reasons/words/es/telling.ts')).telling },
  fr: { asking: async () => (await import('../reasons/words/fr/asking.ts')).asking, telling: async () => (await import('../reasons/words/fr/telling.ts')).telling },
} as const satisfies Readonly<Record<string, Parts>>;

export type LanguageTag = keyof typeof languages;
