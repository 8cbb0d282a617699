import { distance } from 'fastest-levenshtein';
import { byCodeUnit } from '../units/compare.ts';

const abbreviates = (a: string, b: string) => {
  const [short, long] = [a, b].sort((one, other) => one.length - other.length) as [string, string];
  return short.length > 1 && long.toLowerCase().startsWith(short.toLowerCase());
};

/** The known word nearest to what was written, or undefined where none is near enough to be meant. */
export function nearest(written: string, known: readonly string[]): string | undefined {
  const near = known
    .map((word) => ({ word, away: distance(written.toLowerCase(), word.toLowerCase()) }))
    .filter(({ word, away }) => away <= Math.ceil(Math.max(word.length, written.length) / 3) || abbreviates(word, written))
    .sort((a, b) => a.away - b.away || byCodeUnit(a.word, b.word));
  return near[0]?.word;
}
