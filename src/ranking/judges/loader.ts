import type { Implement, Loader } from '../../catalogue/catalogue.ts';
import type { DemandOf, Holder, Lift } from '../../needs/need.ts';
import { frontAxleLoad, rearBallast } from '../../trade/formulas/axle-loads.ts';
import { greatestLoad, type Carried } from '../../trade/formulas/greatest-load.ts';
import { armFromOneRating, armFromTwoRatings, liftAt, type LoaderArm } from '../../trade/formulas/loader-arm.ts';
import { hitchLiftAt } from '../../trade/formulas/hitch-lift-at.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import { isRefusal, type Working } from '../../trade/working.ts';
import { atMost, byCodeUnit } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build, Tool } from '../build.ts';
import type { World } from '../candidate.ts';
import { absent, failed, met, moot, unknown, wantsAtLeast, type Spec, type Verdict } from '../verdict.ts';
import type { Judge } from './judging.ts';

type Length = Quantity<'length'>;
type Mass = Quantity<'mass'>;

/** The lever of a loader by its ratings, or undefined where it has none that can be used. */
function armOf({ ratings }: Loader, { book }: World): LoaderArm | undefined {
  const [near, far] = [...ratings].sort((a, b) => a.ahead - b.ahead);
  if (!near) return undefined;
  if (far) {
    const arm = armFromTwoRatings(near, far);
    return isRefusal(arm) ? undefined : arm;
  }
  return armFromOneRating(near, book.value('loader.one-rating-share'), book.value('loader.rated-ahead') as Length, 'loader.one-rating-share');
}

/** What is estimated on the safe side, and said to be: the fall with distance, the mass of what holds. */
function estimated(holder: Holder, build: Build): Pick<Verdict, 'estimated'> {
  const specs: Spec[] = [
    ...(build.loader && build.loader.part.ratings.length < 2 ? ['loaders.ratings' as const] : []),
    ...(toolFor(holder, build)?.implement.mass === undefined ? ['implements.mass' as const] : []),
  ];
  return specs.length > 0 ? { estimated: specs } : {};
}

const toolFor = (holder: Holder, { forks, spear }: Build): Tool | undefined => (holder === 'pallet-forks' ? forks : spear);

/** What holds the load, at its own arm: by its own figures, or the rule book's typical ones. */
function holderOf(holder: Holder, build: Build, { book }: World): { mass: Mass; ahead: Length } {
  const { mass, centreDistance } = toolFor(holder, build)?.implement ?? {};
  const typical = holder === 'pallet-forks' ? ['forks.mass', 'forks.own-centre'] as const : ['spear.mass', 'spear.own-centre'] as const;
  return { mass: mass ?? (book.value(typical[0]) as Mass), ahead: centreDistance ?? (book.value(typical[1]) as Length) };
}

/** The greatest of such loads the loader takes up: its arm, its whole lift there, and what is left for the load. */
function greatest(need: Lift, build: Build, world: World): readonly [arm: Working, lift: Working, load: Working] | undefined {
  const arm = build.loader && armOf(build.loader.part, world);
  if (!arm) return undefined;
  const { mass, ahead } = holderOf(need.holder, build, world);
  const carried: Carried = {
    attachment: mass, attachmentAhead: ahead, loadAhead: need.loadAhead, margin: world.book.value('loader.margin'),
  };
  return [arm.working, liftAt(arm, need.loadAhead), greatestLoad(arm, carried)];
}

const noLoader = ({ machine, unit }: Build) =>
  machine.loaders === undefined || (unit && machine.loaders.length > 0 && unit.fitted?.loader === undefined)
    ? unknown('loaders')
    : failed();

export const judgeAnyLoader: Judge<DemandOf<'loader.any'>> = (_need, build) => {
  if (!build.loader) return noLoader(build);
  return build.loader.have === 'unknown' ? unknown('loaders') : met();
};

export const judgeLoaderLift: Judge<DemandOf<'loader.lift'>> = (need, build, world) => {
  if (!build.loader) return noLoader(build);
  // Only wished for, and gone without: nothing is bought to hold the load.
  if (!toolFor(need.holder, build)) return failed();
  const workings = greatest(need, build, world);
  if (!workings || build.loader.have === 'unknown') return unknown('loaders.ratings');
  return { ...wantsAtLeast(workings[2].result.value, need.load, { unit: 'kg', workings }), ...estimated(need.holder, build) };
};

export const judgeLoaderHeight: Judge<DemandOf<'loader.height'>> = (need, build) => {
  if (!build.loader) return noLoader(build);
  const { fullHeight } = build.loader.part;
  if (fullHeight === undefined || build.loader.have === 'unknown') return unknown('loaders.fullHeight');
  return wantsAtLeast(fullHeight, need.atLeast, { unit: 'm', workings: [] });
};

/** The ballast box a dealer sells that is heavy enough, the lightest first. */
const ballastBox = (wanted: number, { implements: sold }: World) =>
  sold
    .filter(({ kind, mass }) => kind === 'ballast-box' && mass !== undefined && atMost(wanted, mass))
    .sort((a, b) => a.mass! - b.mass! || byCodeUnit(a.id, b.id))[0];

/** A machine at loader work: what it carries in front, and the ballast that keeps its rear axle down. */
export interface Loaded {
  /** What it lifts of the buyer's load: all, or as much as it can. */
  load: Mass;
  holder: Mass;
  frame: Mass;
  /** Everything in front of the machine, and the centre of it ahead of the front axle. */
  front: Mass;
  ahead: Length;
  ballast: Mass;
  box: Implement | undefined;
  /** Centre of the ballast behind the ball ends. */
  ballastBehind: Length;
  workings: readonly Working[];
}

/** Whether a load is lifted at all: there is a loader, and something to hold it. */
export const lifts = ({ holder }: Lift, build: Build) => build.loader !== undefined && toolFor(holder, build) !== undefined;

/** A machine with its heaviest load on the loader, or the figures that are missing. */
export function loaded(lift: Lift, build: Build, world: World): Loaded | readonly Spec[] {
  const { machine: { mass, frontAxleShare, wheelbase }, loader } = build;
  const part = loader?.part;
  const lifting = greatest(lift, build, world);
  if (mass === undefined || frontAxleShare === undefined || wheelbase === undefined || part?.pinsAhead === undefined || part.mass === undefined || !lifting) {
    return absent({
      mass, frontAxleShare, wheelbase,
      'loaders.pinsAhead': part?.pinsAhead, 'loaders.mass': part?.mass, 'loaders.ratings': lifting,
    });
  }
  const { book } = world;
  const holder = holderOf(lift.holder, build, world);
  const load = Math.min(lift.load, lifting[2].result.value) as Mass;
  // The frame stands over the front axle; what it holds, at the pins and ahead of them.
  const frame = (part.mass - (part.bucketMass ?? 0)) as Mass;
  const front = (frame + holder.mass + load) as Mass;
  const ahead = ((holder.mass * (part.pinsAhead + holder.ahead) + load * (part.pinsAhead + lift.loadAhead)) / front) as Length;
  const ballastAt = (behind: number) => rearBallast(
    { tractor: mass, rear: (mass * (1 - frontAxleShare)) as Mass, front, ahead, wheelbase },
    (book.value('hitch.ball-ends-behind-axle') + behind) as Length,
    book.value('loader.rear-share'),
  );
  const typical = book.value('ballast.behind-ball-ends') as Length;
  const wanted = ballastAt(typical);
  const none = wanted.result.value === 0;
  const box = none ? undefined : ballastBox(wanted.result.value, world);
  const ballastBehind = box?.centreDistance ?? typical;
  const final = box ? ballastAt(ballastBehind) : wanted;
  return {
    load, holder: holder.mass, frame, front, ahead, box, ballastBehind,
    ballast: (box?.mass ?? final.result.value) as Mass, workings: [lifting[2], final],
  };
}

/**
 * The rear axle keeps its share with the loader loaded and furthest forward, if need be by rear ballast
 * that the hitch can lift and the machine may weigh, and the front axle carries no more than it may where
 * its limit is published. A loader too small for the load lifts what it can.
 */
export const judgeRearAxle: Judge<DemandOf<'loader.rear-axle'>> = (need, build, world) => {
  if (!build.loader) return noLoader(build).outcome === 'unknown' ? unknown('loaders') : moot();
  if (!toolFor(need.holder, build)) return moot();
  const state = loaded(need, build, world);
  if (!('ballast' in state)) return unknown(...state);
  const { ballast, box, ballastBehind, load, holder, frame } = state;
  const { machine: { mass, hitch, grossMass, frontAxleShare, frontAxleLimit, wheelbase } } = build;
  const { book } = world;
  const onFront = frontAxleLoad(
    (mass! * frontAxleShare!) as Mass,
    { mass: state.front, ahead: state.ahead },
    { mass: ballast, behind: (book.value('hitch.ball-ends-behind-axle') + ballastBehind) as Length },
    wheelbase!,
  );
  if (frontAxleLimit !== undefined && !atMost(onFront.result.value, frontAxleLimit)) {
    return failed({ has: frontAxleLimit, wants: onFront.result.value, unit: 'kg', bound: 'at-least', workings: [...state.workings, onFront] });
  }
  if (ballast === 0) return met({ workings: state.workings });
  if (hitch?.lift610 === undefined) return unknown('hitch.lift610');
  const lift = hitchLiftAt(hitch.lift610, book.value('hitch.rated-behind') as Length, ballastBehind, book.value('hitch.link-length') as Length);
  const total = totalMass({ machine: mass!, loader: frame, attachment: holder, load, ballast }, 'mass.aboard');
  const workings = [...state.workings, lift, total];
  if (!atMost(ballast, lift.result.value)) {
    return failed({ has: lift.result.value, wants: ballast, unit: 'kg', bound: 'at-least', workings });
  }
  if (grossMass === undefined) return unknown('grossMass');
  if (!atMost(total.result.value, grossMass)) {
    return failed({ has: total.result.value, wants: grossMass, unit: 'kg', bound: 'at-most', workings });
  }
  return met({
    workings,
    additions: [{
      what: 'rear-ballast', ...(box && { id: box.id }), mass: ballast,
      ...(box?.price && { price: box.price.value }), ...(box?.labourHours !== undefined && { labourHours: box.labourHours }),
      for: [need.id],
    }],
  });
};
