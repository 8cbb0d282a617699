import type { Spec } from '../ranking/verdict.ts';
import type { Words } from './words/words.ts';

/** Specs that are missing, in words; one the language has no word for goes by its own name. */
export const saySpecs = (missing: readonly string[], { list, specs }: Words) => list(missing.map((spec) => specs[spec as Spec] ?? spec));
