import type { TellingWords } from '../../reasons/words/words.ts';

/** What the pictures beside a question say: a part of every language. */
export type PictureWords = TellingWords['pictures'];
