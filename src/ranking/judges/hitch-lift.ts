import { hitchLiftAt } from '../../trade/formulas/hitch-lift-at.ts';
import { cite } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { World } from '../candidate.ts';

type Length = Quantity<'length'>;

/** Hitch lift at a distance behind the ball ends, by the machine's own rating; where nobody gave it, where it is rated. */
export function hitchLift(rated: Quantity<'mass'>, behind: Length | undefined, { book }: World) {
  const ratedAt = book.value('hitch.rated-behind') as Length;
  return cite(hitchLiftAt(rated, ratedAt, behind ?? ratedAt, book.value('hitch.link-length') as Length), {
    ratedAt: 'hitch.rated-behind', link: 'hitch.link-length', ...(behind === undefined && { behindBallEnds: 'hitch.rated-behind' }),
  });
}

/** How far behind the rear axle lies what lies behind the ball ends. */
export const behindAxle = (behindBallEnds: number, { book }: World) => (book.value('hitch.ball-ends-behind-axle') + behindBallEnds) as Length;
