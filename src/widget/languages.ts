import { languageNames } from './language-names.ts';
import { languages, ownAsking, ownLanguage, type LanguageTag, type Parts } from './language-parts.ts';

export { languageNames, ownAsking, ownLanguage, type LanguageTag, type Parts };

export const languageTags = Object.keys(languageNames) as LanguageTag[];

/** The language that is spoken for a tag such as `de-CH`: the script's own where that isn't one of ours. */
export const languageFor = (tag: string): LanguageTag => languageTags.find((each) => each === tag.toLowerCase().split('-')[0]) ?? ownLanguage;

export const partsOf = (language: LanguageTag): Parts => languages[language];
