import { byCodeUnit } from '../units/compare.ts';
import { coverageOf, picksOf, type Bringing } from './cover.ts';
import { shareWithin } from './share.ts';
import type { Tally } from './tally.ts';

/** A count is told from here up: fewer buyers than these might be known by what they asked for. */
export const fewest = 5;

/** A count, and what it stands for where not all were counted; fewer than {@link fewest} is told as that. */
export type Told = { few: true } | { count: number; share: number; within?: { low: number; high: number } };

export interface Row {
  id: string;
  told: Told;
}

/** What a dealer reads of what his buyers ask for. */
export interface DemandReport {
  requests: number;
  counted: number;
  unreadable: number;
  served: Told;
  toAsk: Told;
  unserved: Told;
  /** Whom nothing of the line-up would serve, nor anything typed in. */
  beyond: Told;
  first: Row[];
  lacked: Row[];
  /** What each machine would serve alone of those who aren't served. */
  would: Row[];
  /** To bring in one after the other. */
  bring: (Omit<Bringing, 'more' | 'alone'> & { more: Told; alone: Told })[];
}

/**
 * @param seen  requests there were, of which those in the tally were counted
 * @param unreadable  of those seen, what was no answers document
 * @param most  machines to bring in to name
 */
export function reportOf(tally: Tally, { seen, unreadable, most }: { seen: number; unreadable: number; most: number }): DemandReport {
  const { counted } = tally;
  const isDrawn = counted + unreadable < seen;
  const told = (count: number): Told => (count < fewest ? { few: true }
    : { count, share: count / counted, ...(isDrawn && { within: shareWithin(count, counted) }) });
  const rows = (counts: Record<string, number>): Row[] => Object.entries(counts).sort(([a, m], [b, n]) => n - m || byCodeUnit(a, b)).map(([id, many]) => ({ id, told: told(many) }));
  return {
    requests: seen, counted, unreadable,
    served: told(tally.served.stands), toAsk: told(tally.served.ask), unserved: told(tally.served.none), beyond: told(tally.would[''] ?? 0),
    first: rows(tally.first), lacked: rows(tally.lacked),
    would: coverageOf(tally).map(({ machine, serves }) => ({ id: machine, told: told(serves) })),
    // Brought in for fewer than are told, a machine would tell of them.
    bring: picksOf(tally, most).filter(({ more }) => more >= fewest).map(({ machine, more, alone }) => ({ machine, more: told(more), alone: told(alone) })),
  };
}
