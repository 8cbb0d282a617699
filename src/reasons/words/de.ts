import { asking } from './de/asking.ts';
import { figures } from './de/figures.ts';
import { telling } from './de/telling.ts';
import type { PrintedWords } from './words.ts';

export const de: PrintedWords = { ...asking, ...telling, figures };
