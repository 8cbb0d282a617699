import { en } from '../reasons/words/en.ts';
import type { Words } from '../reasons/words/words.ts';

/** The languages a sheet can be had in. */
export const languages: Readonly<Record<string, Words>> = { en };
