import { asking } from './fr/asking.ts';
import { figures } from './fr/figures.ts';
import { telling } from './fr/telling.ts';
import type { Words } from './words.ts';

export const fr: Words = { ...asking, ...telling, rules: { ...telling.rules, ...figures } };
