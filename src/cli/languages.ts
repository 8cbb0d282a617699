import { de as wordsDe } from '../reasons/words/de.ts';
import { en as wordsEn } from '../reasons/words/en.ts';
import { es as wordsEs } from '../reasons/words/es.ts';
import { fr as wordsFr } from '../reasons/words/fr.ts';
import type { PrintedWords } from '../reasons/words/words.ts';
import { de } from './words/de.ts';
import { en } from './words/en.ts';
import { es } from './words/es.ts';
import { fr } from './words/fr.ts';
import type { CliWords } from './words/words.ts';

export interface Language {
  words: PrintedWords;
  own: CliWords;
}

/** The languages a sheet can be had in. */
export const languages = {
  en: { words: wordsEn, own: en },
  de: { words: wordsDe, own: de },
  es: { words: wordsEs, own: es },
  fr: { words: wordsFr, own: fr },
} as const satisfies Record<string, Language>;

export type LanguageTag = keyof typeof languages;
export const languageTags = Object.keys(languages) as LanguageTag[];
