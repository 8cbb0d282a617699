import { languages } from '../../src/cli/languages.ts';

/** Every language there is, with its tag: a test that says something of all of them needs no list of its own. */
export const everyLanguage = Object.entries(languages).map(([tag, { words }]) => ({ tag, words }));
export const everyWords = everyLanguage.map(({ words }) => words);
