import { byCodeUnit } from '../units/compare.ts';
import { bestOf, coverageOf, picksOf, type Best, type Bringing, type Coverage } from './cover.ts';
import type { Outcome } from './outcome.ts';
import type { Tally } from './tally.ts';

/** A count is told from here up: fewer buyers than these might be known by what they asked for. */
export const fewest = 5;

/** A machine or a need, and for how many buyers; most first, and by code unit where as many. */
export type Ordered = readonly (readonly [id: string, buyers: number])[];

/** What requests came to, in counts alone, wherever they were counted. */
export interface Counted {
  counted: number;
  served: Record<Outcome['served'], number>;
  /** Whom no machine at all would serve. */
  beyond: number;
  first: Ordered;
  lacked: Ordered;
  would: readonly Coverage[];
  /** Machines to bring in, those alone that serve at least {@link fewest} more. */
  picks: readonly Bringing[];
  /** What as many machines could serve at the most, where it can be found by trying all. */
  best?: Best;
}

const ordered = (counts: Record<string, number>): Ordered => Object.entries(counts).sort(([a, m], [b, n]) => n - m || byCodeUnit(a, b));

/** @param toBring  machines to bring in to name at the most */
export function countedOf(tally: Tally, toBring: number): Counted {
  const picks = picksOf(tally, toBring, fewest);
  const best = bestOf(tally, picks.length);
  return {
    counted: tally.counted, served: tally.served, beyond: tally.would[''] ?? 0,
    first: ordered(tally.first), lacked: ordered(tally.lacked), would: coverageOf(tally), picks, ...(best && { best }),
  };
}
