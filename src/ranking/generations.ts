import type { Machine, Unit } from '../catalogue/catalogue.ts';
import { inYears, type Candidate, type World } from './candidate.ts';
import { once } from './once.ts';
import type { Judged, Verdict } from './verdict.ts';

const whereIn = ({ unit }: Candidate, machine: Machine, asOfYear: number) =>
  inYears({ machine, ...(unit && { unit }) }, { from: machine.years.from, ...(machine.years.to !== undefined && { to: machine.years.to }) }, asOfYear);

/** Whether a unit's year leaves open of which generation it is, whatever else the catalogue lists. */
export const onEdge = (candidate: Candidate, { asOfYear }: Pick<World, 'asOfYear'>): boolean =>
  candidate.unit?.year !== undefined && whereIn(candidate, candidate.machine, asOfYear) === 'unknown';

/**
 * The other generations of its line a unit may be of: its year stands on the edge of two, or in the year in
 * which one followed the other, and nobody read its serial number. None where nothing speaks against the
 * row it is listed in.
 */
export function otherGenerations(candidate: Candidate, { machines, asOfYear }: Pick<World, 'machines' | 'asOfYear'>): readonly Machine[] {
  const { machine, unit } = candidate;
  if (machine.line === undefined || unit?.year === undefined) return [];
  const own = whereIn(candidate, machine, asOfYear);
  if (own === 'inside' && unit.yearKind === 'serial') return [];
  return machines.filter((other) => {
    if (other.id === machine.id || other.line !== machine.line) return false;
    const where = whereIn(candidate, other, asOfYear);
    return own === 'unknown' ? where !== 'outside' : where === 'inside';
  });
}

/** A unit as one of another generation: which of that one's loaders, decks or cabs is on it nobody said. */
export const asOf = (machine: Machine, unit: Unit): Candidate => ({
  machine,
  unit: once(unit, machine, (): Unit => {
    const { loader: _loader, deck: _deck, cab: _cab, ...rest } = unit;
    return { ...rest, machine: machine.id };
  }),
});

/** What a unit that may be of several generations is judged: what they agree in, else unknown until its serial number is read. */
export function agreedOn({ need, verdict }: Judged, others: readonly Verdict[]): Judged {
  if (others.every(({ outcome }) => outcome === verdict.outcome)) return { need, verdict };
  return {
    need,
    verdict: {
      outcome: 'unknown', workings: [], missing: [...(verdict.missing ?? []), 'units.generation'],
      ...(verdict.additions && { additions: verdict.additions }),
    },
  };
}
