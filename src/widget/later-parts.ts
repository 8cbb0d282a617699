import type { HandOnWords } from './hand-on/words/words.ts';
import type { LanguageTag } from './language-parts.ts';
import type { MailWords } from './mail/words/words.ts';
import type { UnitWords } from './unit/words/words.ts';

/** Words of what only some buyers unfold; each part is fetched when it is wanted. */
export interface LaterParts {
  handOn(): Promise<HandOnWords>;
  mail(): Promise<MailWords>;
  unit(): Promise<UnitWords>;
}

export const laterParts: Readonly<Record<LanguageTag, LaterParts>> = {
  en: {
    handOn: async () => (await import('./hand-on/words/en.ts')).handOn, mail: async () => (await import('./mail/words/en.ts')).mail,
    unit: async () => (await import('./unit/words/en.ts')).unit,
  },
  de: {
    handOn: async () => (await import('./hand-on/words/de.ts')).handOn, mail: async () => (await import('./mail/words/de.ts')).mail,
    unit: async () => (await import('./unit/words/de.ts')).unit,
  },
  es: {
    handOn: async () => (await import('./hand-on/words/es.ts')).handOn, mail: async () => (await import('./mail/words/es.ts')).mail,
    unit: async () => (await import('./unit/words/es.ts')).unit,
  },
  fr: {
    handOn: async () => (await import('./hand-on/words/fr.ts')).handOn, mail: async () => (await import('./mail/words/fr.ts')).mail,
    unit: async () => (await import('./unit/words/fr.ts')).unit,
  },
};
