import type { Answers } from '../answers/answers.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { rank, type Placed, type Weighed } from '../ranking/rank.ts';
import { isFailedGate } from '../ranking/verdict.ts';

/** How one buyer is served by a lot. */
export interface Outcome {
  /** By a unit that stands; by one with a figure to ask for; or by none. */
  served: 'stands' | 'ask' | 'none';
  /** The machine whose unit stands first. */
  first?: string;
  /** What the nearest unit of each buyer who isn't served lacked: ids of needs. */
  lacked: readonly string[];
  /** Machines that would stand for him at their typical price, in code-unit order; told where he isn't served. */
  would: readonly string[];
}

const isOnLot = ({ units }: Placed, standing: Weighed['standing']) => units.some(({ weighed }) => weighed.standing === standing);

/** The unit with the fewest gates failed, the first of them in the ranking's own order. */
function nearestOf(placed: readonly Placed[]): Weighed | undefined {
  const units = placed.flatMap((each) => each.units.map(({ weighed }) => weighed));
  const failed = ({ judged }: Weighed) => judged.filter(isFailedGate).length;
  return units.reduce<Weighed | undefined>((best, each) => (best === undefined || failed(each) < failed(best) ? each : best), undefined);
}

/**
 * Judges one buyer's answers by a lot and by the whole line-up.
 *
 * @param lineUp  the dealer's machines, and any he thinks of, in SI; those without units are judged at their typical price
 */
export function outcomeOf(lineUp: Catalogue, answers: Answers): Outcome {
  const { standing, toAsk, ruledOut } = rank(lineUp, answers);
  const first = standing.find((each) => isOnLot(each, 'stands'));
  if (first) return { served: 'stands', first: first.machine.id, lacked: [], would: [] };
  const all = [...standing, ...toAsk, ...ruledOut];
  const would = standing.filter(({ inGeneral }) => inGeneral.standing === 'stands').map(({ machine }) => machine.id).sort();
  if (all.some((each) => isOnLot(each, 'ask'))) return { served: 'ask', lacked: [], would };
  const lacked = nearestOf(all)?.judged.filter(isFailedGate).map(({ need }) => need.id) ?? [];
  return { served: 'none', lacked: [...new Set(lacked)].sort(), would };
}
