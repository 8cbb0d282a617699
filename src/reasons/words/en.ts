import { asking } from './en/asking.ts';
import { figures } from './en/figures.ts';
import { telling } from './en/telling.ts';
import type { PrintedWords } from './words.ts';

export const en: PrintedWords = { ...asking, ...telling, figures };
