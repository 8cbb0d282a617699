import type { PrintedWords } from '../../reasons/words/words.ts';
import type { RuleBookWords } from './words/words.ts';

/** The two sets of words the book is printed with: that of the result, and its own. */
export interface Voice {
  words: PrintedWords;
  own: RuleBookWords;
}
