import { languages } from '../languages.ts';

/** The page in one of its languages. */
export interface Translation {
  language: string;
  /** The language's own name for itself. */
  name: string;
  address: string;
}

const place = '{language}';

/**
 * The page in every language there is, by an address with `{language}` in the place of the tag; undefined where that is
 * missing, or where it is no address of a page (`https:`, `http:` or relative).
 *
 * @example translationsAt('rulebook.{language}.html') // [{ language: 'en', name: 'English', address: 'rulebook.en.html' }, …]
 */
export function translationsAt(pattern: string): Translation[] | undefined {
  const base = 'https://page.example/';
  if (!pattern.includes(place) || !URL.canParse(pattern, base) || !/^https?:$/.test(new URL(pattern, base).protocol)) return undefined;
  return Object.values(languages).map(({ ruleBook: { language, name } }) => ({ language, name, address: pattern.replaceAll(place, language) }));
}
