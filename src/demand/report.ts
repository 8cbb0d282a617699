import { fewest, type Counted, type Ordered } from './counted.ts';
import type { Bringing } from './cover.ts';
import { shareWithin } from './share.ts';

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
  /** The most that as many machines could serve, which these may be, where all were tried. */
  best?: { machines: readonly string[]; told: Told; isBring: boolean };
}

/**
 * @param seen  requests there were, of which those in the counts were counted
 * @param unreadable  of those seen, what was no answers document
 */
export function reportOf({ counted, served, beyond, first, lacked, would, picks, best }: Counted, { seen, unreadable }: { seen: number; unreadable: number }): DemandReport {
  const isDrawn = counted + unreadable < seen;
  const told = (count: number): Told => (count < fewest ? { few: true }
    : { count, share: count / counted, ...(isDrawn && { within: shareWithin(count, counted) }) });
  const rows = (counts: Ordered): Row[] => counts.map(([id, many]) => ({ id, told: told(many) }));
  return {
    requests: seen, counted, unreadable,
    served: told(served.stands), toAsk: told(served.ask), unserved: told(served.none), beyond: told(beyond),
    first: rows(first), lacked: rows(lacked), would: would.map(({ machine, serves }) => ({ id: machine, told: told(serves) })),
    bring: picks.map(({ machine, more, alone }) => ({ machine, more: told(more), alone: told(alone) })),
    ...(best && { best: { machines: best.machines, told: told(best.serves), isBring: best.serves === picks.reduce((sum, { more }) => sum + more, 0) } }),
  };
}
