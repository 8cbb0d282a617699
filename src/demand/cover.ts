import { byCodeUnit } from '../units/compare.ts';
import type { Tally } from './tally.ts';

/** A machine to bring in, and how many more buyers are served with it than with those before it. */
export interface Bringing {
  machine: string;
  more: number;
  /** How many it would serve by itself, whatever is brought in before it. */
  alone: number;
}

type Unserved = Pick<Tally, 'would'>;

interface Group {
  would: readonly string[];
  buyers: number;
}

const groupsOf = ({ would }: Unserved): Group[] => Object.entries(would).filter(([key]) => key !== '').map(([key, buyers]) => ({ would: key.split(' '), buyers }));

function gains(groups: readonly Group[]): Map<string, number> {
  const gain = new Map<string, number>();
  for (const { would, buyers } of groups) for (const machine of would) gain.set(machine, (gain.get(machine) ?? 0) + buyers);
  return gain;
}

const best = (gain: ReadonlyMap<string, number>) => [...gain].sort(([a, m], [b, n]) => n - m || byCodeUnit(a, b))[0];

/**
 * Which machines to bring in so that the most buyers are served who aren't: each time the one that serves the most of
 * those left. One alone is the best there is; of several, together they serve at least 1 − 1/e of the most that as many
 * could.
 *
 * @param most  machines to name
 * @see Nemhauser, Wolsey and Fisher 1978, An analysis of approximations for maximizing submodular set functions I
 */
export function picksOf(tally: Unserved, most: number): Bringing[] {
  let groups = groupsOf(tally);
  const alone = gains(groups);
  const picks: Bringing[] = [];
  while (picks.length < most) {
    const next = best(gains(groups));
    if (!next) break;
    const [machine, more] = next;
    picks.push({ machine, more, alone: alone.get(machine)! });
    groups = groups.filter(({ would }) => !would.includes(machine));
  }
  return picks;
}

/** For each machine how many of those who aren't served it would serve by itself, most first. */
export const coverageOf = (tally: Unserved): { machine: string; serves: number }[] =>
  [...gains(groupsOf(tally))].map(([machine, serves]) => ({ machine, serves })).sort((a, b) => b.serves - a.serves || byCodeUnit(a.machine, b.machine));
