import { distance } from 'fastest-levenshtein';
import { byCodeUnit } from '../units/compare.ts';

/** The known word nearest to what was written, or undefined where none is near enough to be meant. */
export function nearest(written: string, known: readonly string[]): string | undefined {
  const near = known
    .map((word) => ({ word, away: distance(written.toLowerCase(), word.toLowerCase()) }))
    .filter(({ word, away }) => away <= Math.ceil(Math.max(word.length, written.length) / 2))
    .sort((a, b) => a.away - b.away || byCodeUnit(a.word, b.word));
  return near[0]?.word;
}
