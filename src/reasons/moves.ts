import type { Shortlist } from './schema.ts';

/** Where a machine stands in a shortlist: its rank, to be asked about, or ruled out. */
export type Spot = number | 'ask' | 'out';

export interface Move {
  machine: string;
  from: Spot;
  to: Spot;
}

const spotsOf = ({ shortlist, askDealer, ruledOut }: Shortlist): [machine: string, spot: Spot][] => [
  ...shortlist.map(({ machine, rank }): [string, Spot] => [machine, rank]),
  ...askDealer.map(({ machine }): [string, Spot] => [machine, 'ask']),
  ...ruledOut.map(({ machine }): [string, Spot] => [machine, 'out']),
];

/** What stands elsewhere in a second shortlist of the same line-up than in a first, in the order of the second. */
export function movesBetween(before: Shortlist, after: Shortlist): Move[] {
  const spots = new Map(spotsOf(before));
  return spotsOf(after).flatMap(([machine, to]) => {
    const from = spots.get(machine);
    return from === undefined || from === to ? [] : [{ machine, from, to }];
  });
}
