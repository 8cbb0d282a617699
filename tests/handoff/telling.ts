import { readFileSync } from 'node:fs';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import type { Telling } from '../../src/handoff/letter/telling.ts';
import { linkTo } from '../../src/handoff/link.ts';
import { pack } from '../../src/handoff/pack.ts';
import { de } from '../../src/handoff/words/de.ts';
import { en } from '../../src/handoff/words/en.ts';
import { es } from '../../src/handoff/words/es.ts';
import { fr } from '../../src/handoff/words/fr.ts';
import type { HandoffWords } from '../../src/handoff/words/words.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { everyLanguage } from '../support/languages.ts';

/** The words of this room by language; whoever adds a language of the tool adds them here. */
export const ownWords: Readonly<Record<string, HandoffWords>> = { en, de, es, fr };

export const page = 'https://www.dealer-of-used-tractors.example/used/';
export const demo = () => JSON.parse(readFileSync('demo/catalogue.json', 'utf8')) as CatalogueDocument;

/** All a letter is made from, in a language. */
export function tellingOf(catalogue: CatalogueDocument, answers: AnswersDocument, tag = 'en', result: Shortlist = shortlist(catalogue, answers)): Telling {
  const { words } = everyLanguage.find((each) => each.tag === tag)!;
  const reader = readerFor(words, 'us', catalogue.dealer.locale, catalogue.dealer.currency);
  return { shortlist: result, catalogue, voice: { words, reader, nameOf: namesIn(catalogue, reader) }, own: ownWords[tag]!, link: linkTo(page, pack(answers))! };
}
