import type { DemandOf } from '../../needs/need.ts';
import { tieDownsWanted, tongueLoad } from '../../trade/formulas/securing.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import { cite, type Working } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build } from '../build.ts';
import { massParts } from '../mass.ts';
import type { World } from '../candidate.ts';
import { unknown, wantsAtMost, type Spec } from '../verdict.ts';
import type { Judge } from './judging.ts';

/** Everything that travels along [kg], or what of it isn't known. */
function aboard(build: Build, world: World): Working | readonly Spec[] {
  const { parts, missing } = massParts(build);
  if (missing.length > 0) return missing;
  return cite(totalMass({ ...parts, reserve: world.book.value('haul.reserve') as Quantity<'mass'> }, 'mass.aboard'), { reserve: 'haul.reserve' });
}

export const judgePayload: Judge<DemandOf<'trailer.payload'>> = ({ atMost: payload }, build, world) => {
  const load = aboard(build, world);
  if (!('formula' in load)) return unknown(...load);
  const tieDowns = cite(
    tieDownsWanted(load.result.value as Quantity<'mass'>, world.book.value('haul.tie-down-share')), { share: 'haul.tie-down-share' },
  );
  return wantsAtMost(load.result.value, payload, { unit: 'kg', workings: [load, tieDowns] });
};

/** What the vehicle tows: the trailer and all that is on it; or what of it isn't known. */
function towed(trailer: Quantity<'mass'>, build: Build, world: World): readonly [load: Working, towed: Working] | readonly Spec[] {
  const load = aboard(build, world);
  return 'formula' in load ? [load, totalMass({ trailer, load: load.result.value as Quantity<'mass'> }, 'haul.behind')] : load;
}

const isWorked = (towing: readonly [Working, Working] | readonly Spec[]): towing is readonly [Working, Working] => typeof towing[0] === 'object';

/** What should rest on the tow ball at the least must not be more than it may bear. */
export const judgeTongue: Judge<DemandOf<'trailer.tongue'>> = ({ atMost: rating, trailer }, build, world) => {
  const towing = towed(trailer, build, world);
  if (!isWorked(towing)) return unknown(...towing);
  const tongue = cite(
    tongueLoad(towing[1].result.value as Quantity<'mass'>, world.book.value('haul.tongue.least')), { share: 'haul.tongue.least' },
  );
  return wantsAtMost(tongue.result.value, rating, { unit: 'kg', workings: [...towing, tongue] });
};

export const judgeTowRating: Judge<DemandOf<'trailer.tow-rating'>> = ({ atMost: rating, trailer }, build, world) => {
  const towing = towed(trailer, build, world);
  return isWorked(towing) ? wantsAtMost(towing[1].result.value, rating, { unit: 'kg', workings: towing }) : unknown(...towing);
};
