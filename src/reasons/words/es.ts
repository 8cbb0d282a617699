import { asking } from './es/asking.ts';
import { figures } from './es/figures.ts';
import { telling } from './es/telling.ts';
import type { PrintedWords } from './words.ts';

export const es: PrintedWords = { ...asking, ...telling, figures };
