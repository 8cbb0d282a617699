import type { LanguageTag } from './language-parts.ts';

/** What each language calls itself, for whoever reads no other. */
export const languageNames: Readonly<Record<LanguageTag, string>> = { en: 'English', de: 'Deutsch', es: 'Español', fr: 'Français' };
