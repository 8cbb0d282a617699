import { asking } from '../reasons/words/en/asking.ts';
import type { AskingWords, TellingWords } from '../reasons/words/words.ts';

/** The two parts of a language; each is fetched when it is wanted, but for the English questions, which come with the widget. */
export interface Parts {
  asking(): Promise<AskingWords>;
  telling(): Promise<TellingWords>;
}

const languages = {
  en: { asking: async () => asking, telling: async () => (await import('../reasons/words/en/telling.ts')).telling },
  de: { asking: async () => (await import('../reasons/words/de/asking.ts')).asking, telling: async () => (await import('../reasons/words/de/telling.ts')).telling },
  es: { asking: async () => (await import('../reasons/words/es/asking.ts')).asking, telling: async () => (await import('../reasons/words/es/telling.ts')).telling },
  fr: { asking: async () => (await import('../reasons/words/fr/asking.ts')).asking, telling: async () => (await import('../reasons/words/fr/telling.ts')).telling },
} as const satisfies Readonly<Record<string, Parts>>;

export type LanguageTag = keyof typeof languages;

/** What each language calls itself, for whoever reads no other. */
export const languageNames: Readonly<Record<LanguageTag, string>> = { en: 'English', de: 'Deutsch', es: 'Español', fr: 'Français' };
export const languageTags = Object.keys(languageNames) as LanguageTag[];

/** The language that is spoken for a tag such as `de-CH`: English where that isn't one of ours. */
export const languageFor = (tag: string): LanguageTag => languageTags.find((each) => each === tag.toLowerCase().split('-')[0]) ?? 'en';

export const partsOf = (language: LanguageTag): Parts => languages[language];
