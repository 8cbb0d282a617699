import type { Outcome } from './outcome.ts';

type Counts = Record<string, number>;

/** What many buyers came to, in counts alone: nothing of any one of them is kept. */
export interface Tally {
  counted: number;
  served: Record<Outcome['served'], number>;
  /** By machine: for how many its unit stands first. */
  first: Counts;
  /** By need: of how many who aren't served the nearest unit lacks it. */
  lacked: Counts;
  /** By what would serve them, its ids joined by a blank: how many who aren't served. Sets, for one machine may make another superfluous; those whom nothing would serve stand under the empty one. */
  would: Counts;
}

export const emptyTally = (): Tally => ({ counted: 0, served: { stands: 0, ask: 0, none: 0 }, first: {}, lacked: {}, would: {} });

// Ids are a dealer's own words and may be any: a plain object would take one of them for its ancestor.
const add = (counts: Counts, key: string, many: number) =>
  Object.defineProperty(counts, key, { value: (Object.hasOwn(counts, key) ? counts[key]! : 0) + many, enumerable: true, configurable: true, writable: true });

/** Counts what so many buyers, who said the same, came to. */
export function count(tally: Tally, { served, first, lacked, would }: Outcome, many = 1) {
  tally.counted += many;
  tally.served[served] += many;
  if (first !== undefined) add(tally.first, first, many);
  for (const need of lacked) add(tally.lacked, need, many);
  if (served === 'none') add(tally.would, would.join(' '), many);
}
