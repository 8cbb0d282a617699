import { asking } from './de/asking.ts';
import { figures } from './de/figures.ts';
import { telling } from './de/telling.ts';
import type { Words } from './words.ts';

export const de: Words = { ...asking, ...telling, rules: { ...telling.rules, ...figures } };
