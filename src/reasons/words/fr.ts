import { asking } from './fr/asking.ts';
import { figures } from './fr/figures.ts';
import { telling } from './fr/telling.ts';
import type { PrintedWords } from './words.ts';

export const fr: PrintedWords = { ...asking, ...telling, figures };
