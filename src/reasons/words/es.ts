import { asking } from './es/asking.ts';
import { figures } from './es/figures.ts';
import { telling } from './es/telling.ts';
import type { Words } from './words.ts';

export const es: Words = { ...asking, ...telling, rules: { ...telling.rules, ...figures } };
