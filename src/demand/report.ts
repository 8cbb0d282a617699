import { fewest, type Counted, type Ordered } from './counted.ts';
import type { Bringing } from './cover.ts';
import { keptBackOf } from './kept-back.ts';
import { shareWithin } from './share.ts';

/**
 * A count, and what it stands for where not all were counted. Fewer than {@link fewest} is told as that, and one from which
 * such a one could be worked out is kept back.
 */
export type Told = { few: true } | { keptBack: true } | { count: number; share: number; within?: { low: number; high: number } };

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
export function reportOf(all: Counted, { seen, unreadable }: { seen: number; unreadable: number }): DemandReport {
  const { counted, served, beyond, first, lacked, would, picks, best } = all;
  const isDrawn = counted + unreadable < seen;
  const told = (count: number): Told => (count < fewest ? { few: true }
    : { count, share: count / counted, ...(isDrawn && { within: shareWithin(count, counted) }) });
  const rows = (counts: Ordered): Row[] => counts.map(([id, many]) => ({ id, told: told(many) }));
  const kept = keptBackOf(all);
  const unlessKept = (isKept: boolean, count: number): Told => (isKept && count >= fewest ? { keptBack: true } : told(count));
  return {
    requests: seen, counted, unreadable,
    served: unlessKept(kept.served.has('stands'), served.stands), toAsk: unlessKept(kept.served.has('ask'), served.ask),
    unserved: unlessKept(kept.served.has('none'), served.none), beyond: unlessKept(kept.beyond, beyond),
    first: first.map(([id, many], place) => ({ id, told: unlessKept(kept.first === place, many) })),
    lacked: rows(lacked), would: would.map(({ machine, serves }) => ({ id: machine, told: told(serves) })),
    bring: picks.map(({ machine, more, alone }) => ({ machine, more: told(more), alone: told(alone) })),
    ...(best && { best: { machines: best.machines, told: told(best.serves), isBring: best.serves === picks.reduce((sum, { more }) => sum + more, 0) } }),
  };
}
