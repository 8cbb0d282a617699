/** Stands in for `language-parts.ts` and `later-parts.ts` of the widget in a script of one file: one language comes with it, the others lie beside it. */
import { asking } from '../reasons/words/en/asking.ts';
import { telling } from '../reasons/words/en/telling.ts';
import type { AskingWords } from '../reasons/words/words.ts';
import { handOn } from '../widget/hand-on/words/en.ts';
import type { LanguageTag, Parts } from '../widget/language-parts.ts';
import type { LaterParts } from '../widget/later-parts.ts';
import { mail } from '../widget/mail/words/en.ts';
import { unit } from '../widget/unit/words/en.ts';
import { siblingsOf } from './siblings.ts';

/** Put in by the build, which also takes the words of this language for the English above. */
declare const LANGUAGE: LanguageTag;
declare const SIBLINGS: Readonly<Record<LanguageTag, { file: string; integrity: string }>>;

export const ownLanguage = LANGUAGE;
export const ownAsking: AskingWords = asking;

const beside = siblingsOf(import.meta.url, SIBLINGS);
const own: Parts & LaterParts = { asking: async () => asking, telling: async () => telling, handOn: async () => handOn, mail: async () => mail, unit: async () => unit };

export const languages = Object.fromEntries(
  Object.keys(SIBLINGS).map((tag) => [tag, tag === LANGUAGE ? own : beside(tag)]),
) as Readonly<Record<LanguageTag, Parts & LaterParts>>;

export const laterParts = languages;
