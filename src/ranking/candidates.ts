import type { Catalogue, Machine, Unit } from '../catalogue/catalogue.ts';
import type { Candidate } from './candidate.ts';
import { unitsOf } from './lot.ts';

/** The cheapest of some units, and one whose price isn't known: what they meet at all, one of these meets. */
function telling(units: readonly Unit[]): Unit[] {
  const priced = units.filter(({ price }) => price !== undefined);
  const [cheapest] = [...priced].sort((a, b) => a.price!.value - b.price!.value);
  const unpriced = units.find(({ price }) => price === undefined);
  return [...(cheapest ? [cheapest] : []), ...(unpriced ? [unpriced] : [])];
}

/** As what a machine could be bought today: as any unit of it might be, or as one that is free on the lot. */
export const candidatesOf = (machine: Machine, lot: Catalogue): Candidate[] => [
  { machine },
  // A unit held for someone else brings nothing back.
  ...unitsOf(lot, machine).flatMap((alike) => telling(alike.filter(({ status }) => status !== 'held')).map((unit) => ({ machine, unit }))),
];
