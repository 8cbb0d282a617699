import type { Addition } from '../ranking/addition.ts';
import type { World } from '../ranking/candidate.ts';
import type { Evaluation } from '../ranking/evaluate.ts';
import type { AdditionEntry, PackageEntry } from './schema.ts';

const entryOf = ({ for: needs, ...addition }: Addition): AdditionEntry => ({ ...addition, for: [...needs] });

/** What machine and additions cost together, as the shortlist carries it. */
export const packageEntry = ({ price, additions }: Evaluation, { dealer }: World): PackageEntry => ({
  ...(price && {
    price: {
      low: price.low, high: price.high, currency: dealer.currency,
      machineLow: price.machine[0], machineHigh: price.machine[1],
    },
  }),
  additions: additions.map(entryOf),
  unpriced: (price?.unpriced ?? []).map(entryOf),
});
