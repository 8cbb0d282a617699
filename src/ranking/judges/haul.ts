import type { DemandOf } from '../../needs/need.ts';
import { tieDownsWanted, tongueLoad } from '../../trade/formulas/securing.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import { cite, type Working } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build } from '../build.ts';
import { massParts } from '../mass.ts';
import type { World } from '../candidate.ts';
import { unknown, wantsAtMost, type Spec, type Verdict } from '../verdict.ts';
import type { Judge } from './judging.ts';

type Mass = Quantity<'mass'>;

/** Everything that travels along [kg], as far as it was weighed, and what of it wasn't. */
function aboard(build: Build, world: World): { load: Working; missing: readonly Spec[] } {
  const { parts, missing } = massParts(build);
  return { load: cite(totalMass({ ...parts, reserve: world.book.value('haul.reserve') as Mass }, 'mass.aboard'), { reserve: 'haul.reserve' }), missing };
}

/** What is too heavy as far as it was weighed is too heavy; what isn't, has to be weighed first. */
const toBeWeighed = (verdict: Verdict, missing: readonly Spec[]) => (missing.length > 0 && verdict.outcome === 'met' ? unknown(...missing) : verdict);

export const judgePayload: Judge<DemandOf<'trailer.payload'>> = ({ atMost: payload }, build, world) => {
  const { load, missing } = aboard(build, world);
  const tieDowns = cite(tieDownsWanted(load.result.value as Mass, world.book.value('haul.tie-down-share')), { share: 'haul.tie-down-share' });
  return toBeWeighed(wantsAtMost(load.result.value, payload, { unit: 'kg', workings: [load, tieDowns] }), missing);
};

/** What the vehicle tows: the trailer and all that is on it. */
function towed(trailer: Mass, build: Build, world: World) {
  const { load, missing } = aboard(build, world);
  return { load, missing, behind: totalMass({ trailer, load: load.result.value as Mass }, 'haul.behind') };
}

/** What should rest on the tow ball at the least must not be more than it may bear. */
export const judgeTongue: Judge<DemandOf<'trailer.tongue'>> = ({ atMost: rating, trailer }, build, world) => {
  const { load, missing, behind } = towed(trailer, build, world);
  const tongue = cite(tongueLoad(behind.result.value as Mass, world.book.value('haul.tongue.least')), { share: 'haul.tongue.least' });
  return toBeWeighed(wantsAtMost(tongue.result.value, rating, { unit: 'kg', workings: [load, behind, tongue] }), missing);
};

export const judgeTowRating: Judge<DemandOf<'trailer.tow-rating'>> = ({ atMost: rating, trailer }, build, world) => {
  const { load, missing, behind } = towed(trailer, build, world);
  return toBeWeighed(wantsAtMost(behind.result.value, rating, { unit: 'kg', workings: [load, behind] }), missing);
};
