import type { Machine, Unit } from '../../catalogue/catalogue.ts';
import type { Need } from '../../needs/need.ts';
import { inYears, type Candidate, type World } from '../../ranking/candidate.ts';
import { onEdge, otherGenerations } from '../../ranking/generations.ts';
import type { RuleBook } from '../../trade/book.ts';

/** A unit that is to be looked at, with what the buyer wants of it. */
export interface Look {
  unit: Unit;
  machine: Machine;
  needs: readonly Need[];
  book: RuleBook;
  asOfYear: number;
  /** Whether its year leaves open of which generation it is. */
  generationOpen: boolean;
}

export const lookOf = (unit: Unit, machine: Machine, needs: readonly Need[], world: World): Look => ({
  unit, machine, needs, book: world.book, asOfYear: world.asOfYear,
  generationOpen: onEdge({ machine, unit }, world) || otherGenerations({ machine, unit }, world).length > 0,
});

/** Years since it was new, by its own year; undefined where nobody gave that. */
export const ageOf = ({ unit: { year }, asOfYear }: Look) => (year === undefined ? undefined : Math.max(0, asOfYear - year));

/** Hours a year over its life, a first year counted whole. */
export function hoursAYear(look: Look): number | undefined {
  const age = ageOf(look);
  return age === undefined || look.unit.hours === undefined ? undefined : look.unit.hours / Math.max(1, age);
}

const windowed = ['midPto', 'backhoe', 'suspensionSeat', 'tiltWheel', 'cruise', 'thirdFunction'] as const;

/** What hangs on the year of a unit that stands on an edge: its generation, and parts that only some years have. */
export function openByYear({ unit, machine, asOfYear, generationOpen }: Look): string[] {
  const candidate: Candidate = { unit, machine };
  const isOpen = (years: Parameters<typeof inYears>[1]) => years !== undefined && inYears(candidate, years, asOfYear) === 'unknown';
  return [
    ...(generationOpen ? ['generation'] : []),
    ...windowed.filter((part) => isOpen(machine[part]?.years)),
    ...(['loaders', 'cabs'] as const).filter((parts) => machine[parts]?.some(({ years }) => isOpen(years))),
  ];
}

/** Whether it has a part, as far as anyone said: on the unit, or on every such machine. */
export const mayHave = ({ unit, machine }: Look, part: 'loader' | 'backhoe' | 'cab' | 'deck' | 'midPto'): boolean => {
  const said = unit.fitted?.[part];
  if (said !== undefined) return said;
  const parts = { loader: machine.loaders, cab: machine.cabs, deck: machine.decks, backhoe: machine.backhoe && [machine.backhoe], midPto: machine.midPto && [machine.midPto] }[part] ?? [];
  return parts.some(({ availability }) => availability === 'fitted');
};

/** Kinds of drive it may have: its own, or any its machine comes with. */
export const drivesOf = ({ unit, machine }: Look): readonly string[] =>
  (unit.transmission ? [unit.transmission] : (machine.transmissions ?? []).map(({ kind }) => kind));
