import { de as handoffDe } from '../../handoff/words/de.ts';
import { en as handoffEn } from '../../handoff/words/en.ts';
import { es as handoffEs } from '../../handoff/words/es.ts';
import { fr as handoffFr } from '../../handoff/words/fr.ts';
import type { HandoffWords } from '../../handoff/words/words.ts';
import { de as wordsDe } from '../../reasons/words/de.ts';
import { en as wordsEn } from '../../reasons/words/en.ts';
import { es as wordsEs } from '../../reasons/words/es.ts';
import { fr as wordsFr } from '../../reasons/words/fr.ts';
import type { Words } from '../../reasons/words/words.ts';
import { de } from './words/de.ts';
import { en } from './words/en.ts';
import { es } from './words/es.ts';
import { fr } from './words/fr.ts';
import type { MailWords } from './words/words.ts';

export interface MailLanguage {
  words: Words;
  own: HandoffWords;
  mail: MailWords;
}

/** The languages mails are written in. */
export const mailLanguages = {
  en: { words: wordsEn, own: handoffEn, mail: en },
  de: { words: wordsDe, own: handoffDe, mail: de },
  es: { words: wordsEs, own: handoffEs, mail: es },
  fr: { words: wordsFr, own: handoffFr, mail: fr },
} as const satisfies Readonly<Record<string, MailLanguage>>;

/** The language of a tag (BCP 47) by its first part; English where it is none of ours. */
export function mailLanguage(tag: string): MailLanguage {
  const [primary = ''] = tag.toLowerCase().split('-');
  return Object.hasOwn(mailLanguages, primary) ? mailLanguages[primary as keyof typeof mailLanguages] : mailLanguages.en;
}

/** The language a mail of that tag is in, as it calls itself. */
export function nameOfLanguage(tag: string): string {
  const { language } = mailLanguage(tag).words;
  return new Intl.DisplayNames([language], { type: 'language' }).of(language)!;
}
