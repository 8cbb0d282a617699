import type { DemandOf, Lift } from '../../needs/need.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import type { Working } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import { isHolder, type Build } from '../build.ts';
import type { World } from '../candidate.ts';
import { massParts } from '../mass.ts';
import { unknown, wantsAtMost, worst, type Spec } from '../verdict.ts';
import type { Judge } from './judging.ts';
import { lifts, loaded, ridden, ridesBehind } from './loader.ts';
import { massAtWork } from './tool.ts';

type Mass = Quantity<'mass'>;

/** What hangs behind at work, hoppers full and a bale on its spear: the heaviest of it. */
function heaviestBehind(build: Build, carried: Mass | undefined, riding: readonly Lift[], world: World): Mass | Spec {
  const { mower, tools = {}, backhoe } = build;
  const hung = [...(mower?.kind === 'rear' ? [mower.mower] : []), ...Object.values(tools).filter((tool) => !isHolder(tool))].map(({ implement }) => massAtWork(implement));
  if (hung.includes(undefined)) return 'implements.mass';
  if (backhoe && backhoe.part.mass === undefined) return 'backhoe.mass';
  const bales = riding.map((lift) => ridden(lift, tools[lift.task]!, world).mass);
  return Math.max(carried ?? 0, backhoe?.part.mass ?? 0, ...hung.map((mass) => mass!), ...bales) as Mass;
}

/**
 * The whole machine at work: with the heaviest load on the loader and its rear ballast, and with the heaviest
 * thing behind and its front weights; cab, deck and liquid in the tyres are on it either way.
 */
export const judgeGrossMass: Judge<DemandOf<'gross-mass'>> = (need, build, world) => {
  const { grossMass } = build.machine;
  const { parts, missing } = massParts({ ...build, tools: {}, ...(build.mower?.kind === 'rear' && { mower: undefined }), backhoe: undefined, ballast: undefined } as Build);
  if (missing.length > 0) return unknown(...missing);
  const { loader: frame = 0 as Mass, ...base } = parts;
  const ballast = build.ballast ?? { rear: 0, front: 0 };
  const sums: Working[] = [];
  for (const lift of need.lifts.filter((each) => lifts(each, build))) {
    const state = loaded(lift, build, world);
    // What isn't known of a load is told by the need for its own rear axle.
    if (!('ballast' in state)) continue;
    sums.push(totalMass({ ...base, loader: state.frame, attachment: state.holder, load: state.load, ballast: ballast.rear as Mass }, 'mass.aboard'));
  }
  const behind = heaviestBehind(build, need.carried, need.lifts.filter(({ task }) => ridesBehind(task, build)), world);
  if (typeof behind === 'string') return unknown(behind);
  if (behind > 0) sums.push(totalMass({ ...base, loader: frame, hung: behind, frontWeights: ballast.front as Mass }, 'mass.aboard'));
  if (sums.length === 0) sums.push(totalMass({ ...base, loader: frame }, 'mass.aboard'));
  if (grossMass === undefined) return unknown('grossMass');
  return worst(sums.map((sum) => wantsAtMost(sum.result.value, grossMass, { unit: 'kg', workings: [sum] })));
};
