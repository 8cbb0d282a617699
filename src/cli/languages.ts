import { de as demandDe } from '../demand/words/de.ts';
import { en as demandEn } from '../demand/words/en.ts';
import { es as demandEs } from '../demand/words/es.ts';
import { fr as demandFr } from '../demand/words/fr.ts';
import type { DemandWords } from '../demand/words/words.ts';
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
import { de as ruleBookDe } from './rulebook/words/de.ts';
import { en as ruleBookEn } from './rulebook/words/en.ts';
import { es as ruleBookEs } from './rulebook/words/es.ts';
import { fr as ruleBookFr } from './rulebook/words/fr.ts';
import type { RuleBookWords } from './rulebook/words/words.ts';
import { de } from './words/de.ts';
import { en } from './words/en.ts';
import { es } from './words/es.ts';
import { fr } from './words/fr.ts';
import type { CliWords } from './words/words.ts';

export interface Language {
  words: PrintedWords;
  own: CliWords;
  sheets: SheetWords;
  ruleBook: RuleBookWords;
  demand: DemandWords;
}

/** The languages a sheet can be had in. */
export const languages = {
  en: { words: wordsEn, own: en, sheets: sheetsEn, ruleBook: ruleBookEn, demand: demandEn },
  de: { words: wordsDe, own: de, sheets: sheetsDe, ruleBook: ruleBookDe, demand: demandDe },
  es: { words: wordsEs, own: es, sheets: sheetsEs, ruleBook: ruleBookEs, demand: demandEs },
  fr: { words: wordsFr, own: fr, sheets: sheetsFr, ruleBook: ruleBookFr, demand: demandFr },
} as const satisfies Record<string, Language>;

export type LanguageTag = keyof typeof languages;
export const languageTags = Object.keys(languages) as LanguageTag[];
