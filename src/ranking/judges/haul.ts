import type { DemandOf } from '../../needs/need.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import type { Working } from '../../trade/working.ts';
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
  return totalMass({ ...parts, reserve: world.book.value('haul.reserve') as Quantity<'mass'> }, 'mass.aboard');
}

export const judgePayload: Judge<DemandOf<'trailer.payload'>> = ({ atMost: payload }, build, world) => {
  const load = aboard(build, world);
  if (!('formula' in load)) return unknown(...load);
  return wantsAtMost(load.result.value, payload, { unit: 'kg', workings: [load] });
};

export const judgeTowRating: Judge<DemandOf<'trailer.tow-rating'>> = ({ atMost: rating, trailer }, build, world) => {
  const load = aboard(build, world);
  if (!('formula' in load)) return unknown(...load);
  const behind = totalMass({ trailer, load: load.result.value as Quantity<'mass'> }, 'haul.behind');
  return wantsAtMost(behind.result.value, rating, { unit: 'kg', workings: [load, behind] });
};
