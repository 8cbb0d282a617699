import type { DemandOf } from '../../needs/need.ts';
import { frontAxleLoad, frontBallast, rearAxleLoad } from '../../trade/formulas/axle-loads.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import { cite } from '../../trade/working.ts';
import { atLeast, atMost } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import { hungFor, type Build } from '../build.ts';
import type { World } from '../candidate.ts';
import { absent, failed, met, moot, unknown, wantsAtLeast, type Spec, type Verdict } from '../verdict.ts';
import { leastLimit } from './axle-limits.ts';
import { behindAxle, hitchLift } from './hitch-lift.ts';
import type { Judge } from './judging.ts';
import { massAtWork } from './tool.ts';

type Length = Quantity<'length'>;
type Mass = Quantity<'mass'>;

export const judgeHitchLift: Judge<DemandOf<'hitch.lift'>> = ({ load, behind }, { machine }, world) => {
  const rated = machine.hitch?.lift610;
  if (rated === undefined) return unknown('hitch.lift610');
  const working = hitchLift(rated, behind, world);
  return wantsAtLeast(working.result.value, load, { unit: 'kg', workings: [working] });
};

/** What hangs behind: its mass, and its centre behind the rear axle. */
export interface Hung {
  mass: Mass;
  behindAxle: Length;
  /** With a backhoe the loader is on, for it is the counterweight its maker reckons with. */
  loaderOn?: boolean;
  estimated?: readonly Spec[];
}

/**
 * With a load behind the front axle keeps enough to steer, if need be by front weights, and the rear axle and
 * its tyres bear what is on them. What the whole may weigh is judged with all that is on it.
 */
export function judgeAxlesWith(hung: Hung, need: string, build: Build, { book }: World): Verdict {
  const { machine, loader } = build;
  const { mass, frontAxleShare, wheelbase } = machine;
  if (mass === undefined || frontAxleShare === undefined || wheelbase === undefined) {
    return unknown(...absent({ mass, frontAxleShare, wheelbase }));
  }
  // A loader that nobody weighed doesn't help to keep the front down.
  const frame = (loader?.have === 'has' || hung.loaderOn ? (loader?.part.mass ?? 0) : 0) as Mass;
  const bareFront = (mass * frontAxleShare) as Mass;
  const working = frontAxleLoad(bareFront, { mass: frame, ahead: 0 as Length }, { mass: hung.mass, behind: hung.behindAxle }, wheelbase);
  const wants = book.value('hitch.front-share') * mass;
  const has = working.result.value;
  const told = { unit: 'kg', bound: 'at-least', ...(hung.estimated && { estimated: hung.estimated }) } as const;
  const steers = atLeast(has, wants);
  const weights = steers ? undefined : cite(frontBallast({
    tractor: mass, bareFront: (bareFront + frame) as Mass, back: hung.mass, behind: hung.behindAxle,
    ahead: book.value('front-weights.ahead') as Length, wheelbase, share: book.value('hitch.front-share'),
  }), { ahead: 'front-weights.ahead', share: 'hitch.front-share' });
  const added = (weights?.result.value ?? 0) as Mass;
  const total = totalMass({ machine: mass, loader: frame, load: hung.mass, ballast: added }, 'mass.aboard');
  const workings = [working, ...(weights ? [weights, total] : [])];
  const onRear = rearAxleLoad(total.result.value as Mass, (has + added) as Mass);
  const bears = leastLimit('rear', build);
  if (bears && !atMost(onRear.result.value, bears.result.value)) {
    return failed({ ...told, has: bears.result.value, wants: onRear.result.value, workings: [...workings, onRear, bears] });
  }
  if (steers) return met({ ...told, has, wants, workings });
  return met({ ...told, has, wants, workings, additions: [{ what: 'front-ballast', mass: added, for: [need] }] });
}

export const judgeFrontAxle: Judge<DemandOf<'hitch.front-axle'>> = (need, build, world) =>
  judgeAxlesWith({ mass: need.load, behindAxle: behindAxle(need.behind, world) }, need.id, build, world);

/** The axles with the backhoe on, its centre taken far back where nobody gave it. */
function judgeBackhoeAxles(need: string, build: Build, world: World): Verdict {
  const { backhoe } = build;
  if (!backhoe) return moot();
  const { mass, centreBehind } = backhoe.part;
  if (mass === undefined) return unknown('backhoe.mass');
  return judgeAxlesWith({
    mass, loaderOn: true,
    behindAxle: centreBehind ?? (world.book.value('backhoe.centre-behind') as Length),
    ...(centreBehind === undefined && { estimated: ['backhoe.centreBehind'] }),
  }, need, build, world);
}

/** The axles with the implement of a task lifted; without one there is nothing to judge. */
export const judgeImplementAxles: Judge<DemandOf<'implement.axles'>> = ({ task, id }, build, world) => {
  if (task === 'dig') return judgeBackhoeAxles(id, build, world);
  const implement = hungFor(task!, build)?.implement;
  if (!implement) return moot();
  const mass = massAtWork(implement);
  // The need for the implement says so; the axles of a thing nobody weighed are not told twice.
  if (mass === undefined) return unknown('implements.mass');
  const behind = implement.centreDistance ?? world.book.value('hitch.rated-behind');
  return judgeAxlesWith({
    mass, behindAxle: behindAxle(behind, world),
    ...(implement.centreDistance === undefined && { estimated: ['implements.centreDistance'] }),
  }, id, build, world);
};
