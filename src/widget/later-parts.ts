import type { HandOnWords } from './hand-on/words/words.ts';
import type { LanguageTag } from './language-parts.ts';

/** Words of what only some buyers unfold; each part is fetched when it is wanted. */
export interface LaterParts {
  handOn(): Promise<HandOnWords>;
}

export const laterParts: Readonly<Record<LanguageTag, LaterParts>> = {
  en: { handOn: async () => (await import('./hand-on/words/en.ts')).handOn },
  de: { handOn: async () => (await import('./hand-on/words/de.ts')).handOn },
  es: { handOn: async () => (await import('./hand-on/words/es.ts')).handOn },
  fr: { handOn: async () => (await import('./hand-on/words/fr.ts')).handOn },
};
