import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Words } from './words/words.ts';

/** The dealer's own terms in the language of the words; ours where he has none in it. */
export const sayTerms = ({ terms }: CatalogueDocument['dealer'], words: Pick<Words, 'language' | 'guidance'>) => terms?.[words.language]?.guidance ?? words.guidance;
