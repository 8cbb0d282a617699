import { asking } from './en/asking.ts';
import { telling } from './en/telling.ts';
import type { Words } from './words.ts';

export const en: Words = { ...asking, ...telling };
