import type { PrintedWords } from '../reasons/words/words.ts';
import type { SheetWords } from '../sheets/sheets.ts';
import { en as sheetsEn } from '../sheets/words/en.ts';
import { en } from './words/en.ts';
import type { SetUpWords } from './words/words.ts';

/** All that is said on the page in one language; the rule book's own words come when they are wanted. */
export interface Spoken {
  own: SetUpWords;
  sheets: SheetWords;
  rules(): Promise<PrintedWords>;
}

export const english: Spoken = { own: en, sheets: sheetsEn, rules: async () => (await import('../reasons/words/en.ts')).en };

/** What a dealer who reads a language is likely to write in, until he says otherwise. */
export interface Usual {
  currency: string;
  units: 'us' | 'metric';
  locale: string;
}
const euros = { currency: 'EUR', units: 'metric' } as const;

/** One entry a language; its words are fetched when it is chosen. */
export const languages = {
  en: { usual: { currency: 'USD', units: 'us', locale: 'en-US' }, speak: async () => english },
  de: {
    usual: { ...euros, locale: 'de-DE' },
    speak: async () => ({ own: (await import('./words/de.ts')).de, sheets: (await import('../sheets/words/de.ts')).de, rules: async () => (await import('../reasons/words/de.ts')).de }),
  },
  es: {
    usual: { ...euros, locale: 'es-ES' },
    speak: async () => ({ own: (await import('./words/es.ts')).es, sheets: (await import('../sheets/words/es.ts')).es, rules: async () => (await import('../reasons/words/es.ts')).es }),
  },
  fr: {
    usual: { ...euros, locale: 'fr-FR' },
    speak: async () => ({ own: (await import('./words/fr.ts')).fr, sheets: (await import('../sheets/words/fr.ts')).fr, rules: async () => (await import('../reasons/words/fr.ts')).fr }),
  },
} as const satisfies Readonly<Record<string, { usual: Usual; speak(): Promise<Spoken> }>>;

export { languageNames } from '../widget/language-names.ts';
export type LanguageTag = keyof typeof languages;
export const languageTags = Object.keys(languages) as LanguageTag[];
