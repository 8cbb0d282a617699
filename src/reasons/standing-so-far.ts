import type { Placed, Ranking } from '../ranking/rank.ts';
import { becauseOf } from './because.ts';
import { packageEntry } from './package-entry.ts';
import type { Because, PackageEntry } from './schema.ts';

/** How one machine stands that isn't ruled out, without the reasons that take time to gather. */
export interface StandingEntry {
  machine: string;
  unit?: string | undefined;
  package: PackageEntry;
  /** Each gate that is unknown. */
  because: Because[];
}

/** How all machines stand after an answer: as much of the shortlist as a picture of them needs. */
export interface StandingSoFar {
  shortlist: StandingEntry[];
  askDealer: StandingEntry[];
  ruledOut: { machine: string; because: Because[] }[];
}

export function standingSoFar({ standing, toAsk, ruledOut, world }: Ranking): StandingSoFar {
  const entry = ({ machine, best }: Placed): StandingEntry => ({
    machine: machine.id, ...(best.build.unit && { unit: best.build.unit.id }), package: packageEntry(best, world), because: becauseOf(best.judged, 'unknown'),
  });
  return {
    shortlist: standing.map(entry), askDealer: toAsk.map(entry),
    ruledOut: ruledOut.map(({ machine, inGeneral }) => ({ machine: machine.id, because: becauseOf(inGeneral.judged, 'failed') })),
  };
}
