import { byCodeUnit } from '../units/compare.ts';
import type { Tally } from './tally.ts';

/** A machine to bring in, and how many more buyers are served with it than with those before it. */
export interface Bringing {
  machine: string;
  more: number;
  /** How many it would serve by itself, whatever is brought in before it. */
  alone: number;
}

/** How many of those who aren't served a machine would serve by itself. */
export interface Coverage {
  machine: string;
  serves: number;
}

/** The machines that serve the most together, in code-unit order. */
export interface Best {
  machines: readonly string[];
  serves: number;
}

type Unserved = Pick<Tally, 'would'>;

interface Group {
  would: readonly string[];
  buyers: number;
}

const groupsOf = ({ would }: Unserved): Group[] => Object.entries(would).filter(([key]) => key !== '').map(([key, buyers]) => ({ would: key.split(' '), buyers }));

const buyersOf = (groups: readonly Group[]) => groups.reduce((sum, { buyers }) => sum + buyers, 0);

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
 * @param least  a machine that serves fewer more isn't named
 * @see Nemhauser, Wolsey and Fisher 1978, An analysis of approximations for maximizing submodular set functions I
 */
export function picksOf(tally: Unserved, most: number, least = 1): Bringing[] {
  let groups = groupsOf(tally);
  const alone = gains(groups);
  const picks: Bringing[] = [];
  while (picks.length < most) {
    const next = best(gains(groups));
    if (!next || next[1] < least) break;
    const [machine, more] = next;
    picks.push({ machine, more, alone: alone.get(machine)! });
    groups = groups.filter(({ would }) => !would.includes(machine));
  }
  return picks;
}

/** For each machine how many of those who aren't served it would serve by itself, most first. */
export const coverageOf = (tally: Unserved): Coverage[] =>
  [...gains(groupsOf(tally))].map(([machine, serves]) => ({ machine, serves })).sort((a, b) => b.serves - a.serves || byCodeUnit(a.machine, b.machine));

/** Combinations of machines that are tried at the most: seconds. A database counts with sets that are the bits of one number, which bounds the machines. */
const [mostTried, mostMachines] = [5_000, 62];

/** Whether so few combinations of so many machines there are that all can be tried. */
export function canTryAll(machines: number, together: number): boolean {
  let combinations = 1;
  for (let each = 1; each <= together; each += 1) combinations = (combinations * (machines - together + each)) / each;
  return machines <= mostMachines && combinations <= mostTried;
}

/**
 * What so many machines could serve at the most of those who aren't served, by trying all there are; the first in
 * code-unit order of those that serve as many.
 *
 * @param together  no more than machines there are that serve anybody
 * @returns undefined for less than two, where the first pick is the best, and where there are too many to try
 */
export function bestOf(tally: Unserved, together: number): Best | undefined {
  const groups = groupsOf(tally);
  const machines = [...gains(groups).keys()].sort(byCodeUnit);
  if (together < 2 || !canTryAll(machines.length, together)) return undefined;
  let best: Best = { machines: [], serves: 0 };
  const tryWith = (chosen: readonly string[], from: number, left: readonly Group[], serves: number) => {
    if (chosen.length === together) {
      if (serves > best.serves) best = { machines: chosen, serves };
      return;
    }
    for (const [place, machine] of machines.entries()) {
      if (place < from) continue;
      const rest = left.filter(({ would }) => !would.includes(machine));
      tryWith([...chosen, machine], place + 1, rest, serves + buyersOf(left) - buyersOf(rest));
    }
  };
  tryWith([], 0, groups, 0);
  return best;
}
