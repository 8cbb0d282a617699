import { de } from './words/de.ts';
import { en } from './words/en.ts';
import { es } from './words/es.ts';
import { fr } from './words/fr.ts';
import type { PageWords } from './words/words.ts';

const languages: readonly PageWords[] = [en, de, es, fr];
/** Beyond so many ranges nobody's browser goes. */
const mostRanges = 20;

/** The words of the language a browser would rather have (RFC 9110, section 12.5.4); English where it wants none of ours. */
export function wordsFor(acceptLanguage: string | undefined): PageWords {
  const wanted = (acceptLanguage ?? '').split(',').slice(0, mostRanges).map((range) => {
    const [tag = '', ...parameters] = range.trim().toLowerCase().split(';');
    const quality = parameters.map((each) => /^\s*q=([01](?:\.\d{0,3})?)\s*$/.exec(each)?.[1]).find((each) => each !== undefined);
    return { primary: tag.split('-')[0], quality: Number(quality ?? 1) };
  });
  const best = wanted.filter(({ quality }) => quality > 0).sort((a, b) => b.quality - a.quality).map(({ primary }) => languages.find(({ language }) => language === primary)).find((each) => each !== undefined);
  return best ?? en;
}
