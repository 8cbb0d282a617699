import { de as wordsDe } from '../reasons/words/de.ts';
import { en as wordsEn } from '../reasons/words/en.ts';
import { es as wordsEs } from '../reasons/words/es.ts';
import { fr as wordsFr } from '../reasons/words/fr.ts';
import type { PrintedWords } from '../reasons/words/words.ts';
import { de as sheetsDe } from '../sheets/words/de.ts';
import { en as sheetsEn } from '../sheets/words/en.ts';
import { es as sheetsEs } from '../sheets/words/es.ts';
import { fr as sheetsFr } from '../sheets/words/fr.ts';
import type { SheetWords } from '../sheets/words/words.ts';
import { de } from './words/de.ts';
import { en } from './words/en.ts';
import { es } from './words/es.ts';
import { fr } from './words/fr.ts';
import type { CliWords } from './words/words.ts';

export interface Language {
  words: PrintedWords;
  own: CliWords;
  sheets: SheetWords;
}

/** The languages a sheet can be had in. */
export const languages = {
  en: { words: wordsEn, own: en, sheets: sheetsEn },
  de: { words: wordsDe, own: de, sheets: sheetsDe },
  es: { words: wordsEs, own: es, sheets: sheetsEs },
  fr: { words: wordsFr, own: fr, sheets: sheetsFr },
} as const satisfies Record<string, Language>;

export type LanguageTag = keyof typeof languages;
export const languageTags = Object.keys(languages) as LanguageTag[];
