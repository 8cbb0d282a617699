import type { Answers } from '../answers/answers.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Ranking } from '../ranking/rank.ts';
import { waysOutOf, type WayOut } from '../ranking/ways-out.ts';
import { relaxedEntry } from './changes.ts';
import type { Shortlist, WayOutEntry } from './schema.ts';

const wayEntry = ({ give, stands, asks, low }: WayOut): WayOutEntry => ({
  give: give.map(({ relaxed, ...each }) => ({ ...each, ...(relaxed && { relaxed: relaxedEntry(relaxed) }) })),
  stands: [...stands],
  asks: [...asks],
  ...(low !== undefined && { price: low }),
});

/** Where nothing stands and there is nothing to ask about: which needs conflict, and every way out. */
export function waysOut(ranking: Ranking, catalogue: Catalogue, answers: Answers): Pick<Shortlist, 'conflicts' | 'waysOut'> {
  const { sets, complete, ways } = waysOutOf(ranking, catalogue, answers);
  return { conflicts: { sets, complete }, waysOut: ways.map(wayEntry) };
}
