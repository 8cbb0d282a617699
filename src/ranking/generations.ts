import type { Machine, Unit } from '../catalogue/catalogue.ts';
import { inYears, type Candidate, type World } from './candidate.ts';
import { once } from './once.ts';
import type { Judged, Verdict } from './verdict.ts';

/** Where a unit's year lies to the years of a machine, which may be taken some wider at both ends. */
const whereIn = ({ unit }: Candidate, machine: Machine, asOfYear: number, wider = 0) => {
  const { from, to } = machine.years;
  return inYears({ machine, ...(unit && { unit }) }, { from: from - wider, ...(to !== undefined && { to: to + wider }) }, asOfYear);
};

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
    // As far as a year may be off from the one edge it may be off from the other.
    return own === 'unknown' ? whereIn(candidate, other, asOfYear, 1) !== 'outside' : whereIn(candidate, other, asOfYear) === 'inside';
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
