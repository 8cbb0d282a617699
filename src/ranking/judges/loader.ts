import type { Implement, Loader } from '../../catalogue/catalogue.ts';
import type { TaskId } from '../../answers/schema.ts';
import type { DemandOf, Lift, Need, WeighedLift } from '../../needs/need.ts';
import type { FigureId } from '../../trade/book.ts';
import { frontAxleLoad, rearBallast } from '../../trade/formulas/axle-loads.ts';
import { greatestLoad, type Carried } from '../../trade/formulas/greatest-load.ts';
import { heapVolume } from '../../trade/formulas/bucket.ts';
import { armFromOneRating, armFromTwoRatings, liftAt, type LoaderArm } from '../../trade/formulas/loader-arm.ts';
import { loadsWanted, timeForLoads } from '../../trade/formulas/loads.ts';
import { cite, isRefusal, type Working } from '../../trade/working.ts';
import { atMost, byCodeUnit } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build, Tool } from '../build.ts';
import { have, type World } from '../candidate.ts';
import { absent, failed, met, moot, unknown, wantsAtLeast, worst, type Spec, type Verdict } from '../verdict.ts';
import { leastLimit } from './axle-limits.ts';
import { judgeAxlesWith } from './hitch.ts';
import { behindAxle, hitchLift } from './hitch-lift.ts';
import type { Judge } from './judging.ts';
import { judgeCategory } from './tool.ts';

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
function estimated(lift: Lift, build: Build): Pick<Verdict, 'estimated'> {
  const specs: Spec[] = [
    ...(build.loader && build.loader.part.ratings.length < 2 ? ['loaders.bothRatings' as const] : []),
    ...(toolFor(lift, build)?.implement.mass === undefined ? ['implements.mass' as const] : []),
  ];
  return specs.length > 0 ? { estimated: specs } : {};
}

/** What holds a load on the loader: the implement chosen for the task, or the loader's own bucket. */
const toolFor = ({ holder, task }: Lift, { tools, loader }: Build): Tool | undefined =>
  (holder === 'bucket'
    ? loader && { implement: { ...(loader.part.bucketMass !== undefined && { mass: loader.part.bucketMass }) }, owned: true }
    : tools?.[task]);

const typicalHolders = {
  'pallet-forks': ['forks.mass', 'forks.own-centre'],
  'bale-spear': ['spear.mass', 'spear.own-centre'],
  grapple: ['grapple.mass', 'grapple.own-centre'],
  bucket: ['bucket.mass', 'bucket.load-centre'],
} as const;

interface Holding {
  mass: Mass;
  ahead: Length;
  rules: { attachment?: FigureId; attachmentAhead?: FigureId };
}

/**
 * What holds the load, at its own arm: by its own figures, or the rule book's typical ones. A bucket that was
 * on when the lift was measured has had its share already.
 */
function holderOf(lift: Lift, build: Build, { book }: World): Holding {
  const [typicalMass, typicalAhead] = typicalHolders[lift.holder];
  const { mass, centreDistance } = toolFor(lift, build)?.implement ?? {};
  const ahead = centreDistance ?? (book.value(typicalAhead) as Length);
  const rules = { ...(centreDistance === undefined && { attachmentAhead: typicalAhead }) };
  if (lift.holder === 'bucket' && build.loader?.part.ratings.every(({ bucketOn }) => bucketOn)) return { mass: 0 as Mass, ahead, rules };
  return mass === undefined ? { mass: book.value(typicalMass) as Mass, ahead, rules: { ...rules, attachment: typicalMass } } : { mass, ahead, rules };
}

/** The greatest of such loads the loader takes up: its arm, its whole lift there, and what is left for the load. */
function greatest(need: Lift, build: Build, world: World): readonly [arm: Working, lift: Working, load: Working] | undefined {
  const arm = build.loader && armOf(build.loader.part, world);
  if (!arm) return undefined;
  const { mass, ahead, rules } = holderOf(need, build, world);
  const carried: Carried = {
    attachment: mass, attachmentAhead: ahead, loadAhead: need.loadAhead, margin: world.book.value('loader.margin'),
  };
  return [arm.working, liftAt(arm, need.loadAhead), cite(greatestLoad(arm, carried), { margin: 'loader.margin', ...rules })];
}

const noLoader = ({ machine, unit }: Build) =>
  machine.loaders === undefined || (unit && machine.loaders.length > 0 && unit.fitted?.loader === undefined)
    ? unknown('loaders')
    : failed();

export const judgeAnyLoader: Judge<DemandOf<'loader.any'>> = (_need, build) => {
  if (!build.loader) return noLoader(build);
  return build.loader.have === 'unknown' ? unknown('loaders') : met();
};

/** A load on a spear behind: what of it the hitch lifts, and how far behind the ball ends its centre is. */
export function ridden({ load = 0 as Mass, loadAhead }: Lift, { implement }: Tool, { book }: World): { mass: Mass; behind: Length } {
  const spear = implement.mass ?? book.value('rear-spear.mass');
  // The spear's own mass is nearer than the bale's; taken at the bale's distance it errs on the safe side.
  return { mass: (load + spear) as Mass, behind: (book.value('rear-spear.face') + (loadAhead - book.value('spear.face'))) as Length };
}

/** A load that needn't go up rides on a spear behind: the hitch lifts it with the spear, at its own distance. */
function judgeRide(lift: WeighedLift, tool: Tool, build: Build, world: World): Verdict {
  const rated = build.machine.hitch?.lift610;
  if (rated === undefined) return unknown('hitch.lift610');
  const { mass, behind } = ridden(lift, tool, world);
  const working = hitchLift(rated, behind, world);
  const lifted = wantsAtLeast(working.result.value, mass, { unit: 'kg', workings: [working] });
  return { ...worst([lifted, judgeCategory(tool.implement, build.machine)]), ...(tool.implement.mass === undefined && { estimated: ['implements.mass' as const] }) };
}

/** Whether a load rides behind. */
export const ridesBehind = (task: TaskId, { tools }: Build) => tools?.[task]?.implement.kind === 'rear-bale-spear';

export const judgeLoaderLift: Judge<DemandOf<'loader.lift'>> = (need, build, world) => {
  const tool = toolFor(need, build);
  if (tool && ridesBehind(need.task, build)) return { ...judgeRide(need, tool, build, world), by: 'hitch' };
  if (!build.loader) return noLoader(build);
  // Only wished for, and gone without: nothing is bought to hold the load.
  if (!tool) return failed();
  if (!interfaceFits(tool, build)) return failed({ by: 'coupling' });
  const workings = greatest(need, build, world);
  if (!workings || build.loader.have === 'unknown') return unknown('loaders.ratings');
  return { ...wantsAtLeast(workings[2].result.value, need.load, { unit: 'kg', workings }), ...estimated(need, build) };
};

/** A holder goes on the coupling it was made for; where either isn't said, the dealer sees to it. */
const interfaceFits = ({ implement }: Tool, { machine }: Build) =>
  implement.attachmentInterface === undefined || machine.attachmentInterface === undefined
  || implement.attachmentInterface === machine.attachmentInterface;

/** The axles with bale and spear behind. */
function judgeRideAxles(lift: Need & Lift, build: Build, world: World): Verdict {
  const { mass, behind } = ridden(lift, build.tools![lift.task]!, world);
  return judgeAxlesWith({ mass, behindAxle: behindAxle(behind, world) }, lift.id, build, world);
}

/** A third function works a grapple; a field kit is added. */
export const judgeThirdFunction: Judge<DemandOf<'third-function'>> = ({ id, task }, build, { asOfYear }) => {
  // Without a loader, or where the job is left undone, there is no grapple to work.
  if (!build.loader || build.leftOut?.some((left) => left.startsWith(`${task}.`))) return moot();
  const part = build.machine.thirdFunction;
  const state = have(build, 'thirdFunction', part, asOfYear);
  if (state === 'unknown') return unknown('thirdFunction');
  if (state === 'never' || !part) return failed();
  return state === 'has' ? met() : met({ additions: [{
    what: 'feature', id: 'thirdFunction', for: [id],
    ...(part.price && { price: part.price.value }), ...(part.labourHours !== undefined && { labourHours: part.labourHours }),
  }] });
};

/** What a bucket holds, heaped: as it is published, or struck with the heap above it. */
function bucketVolumeOf({ bucketVolume, bucketStruck, bucketWidth, bucketOpening }: Loader): { volume: Quantity<'volume'>; workings: Working[] } | undefined {
  if (bucketVolume !== undefined) return { volume: bucketVolume, workings: [] };
  if (bucketStruck === undefined || bucketWidth === undefined || bucketOpening === undefined) return undefined;
  const heap = heapVolume(bucketWidth, bucketOpening);
  return isRefusal(heap) ? undefined : { volume: (bucketStruck + heap.result.value) as Quantity<'volume'>, workings: [heap] };
}

/** How long it takes to move a heap by the bucketful: as much as the bucket holds, and no more than the loader lifts. */
export const judgeLoose: Judge<DemandOf<'loader.loose'>> = (need, build, world) => {
  const { loader } = build;
  if (!loader) return moot();
  const { book } = world;
  const lift: Lift = { task: need.task!, holder: 'bucket', bulk: need.bulk, loadAhead: book.value('bucket.load-centre') as Length };
  const workings = greatest(lift, build, world);
  if (!workings || loader.have === 'unknown') return unknown('loaders.ratings');
  const bucket = bucketVolumeOf(loader.part);
  if (!bucket) return unknown('loaders.bucketVolume');
  const each = Math.min(bucket.volume, workings[2].result.value / need.bulk) as Quantity<'volume'>;
  if (!(each > 0)) return failed();
  const loads = loadsWanted(need.volume, each);
  const time = cite(timeForLoads(loads.result.value, book.value('bucket.cycle') as Quantity<'time'>), { cycle: 'bucket.cycle' });
  return met({ has: time.result.value, unit: 's', bound: 'at-most', workings: [...bucket.workings, workings[2], loads, time] });
};

export const judgeLoaderHeight: Judge<DemandOf<'loader.height'>> = (need, build) => {
  if (!build.loader) return noLoader(build);
  const { fullHeight } = build.loader.part;
  if (fullHeight === undefined || build.loader.have === 'unknown') return unknown('loaders.fullHeight');
  return wantsAtLeast(fullHeight, need.atLeast, { unit: 'm', workings: [] });
};

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
export const lifts = (lift: Lift, build: Build) =>
  build.loader !== undefined && toolFor(lift, build) !== undefined && !ridesBehind(lift.task, build);

/** A way to ballast a machine: a box the dealer sells at its own distance, or what is wanted where one usually sits. */
interface Ballasted {
  ballast: Mass;
  box: Implement | undefined;
  /** Centre of the ballast behind the ball ends. */
  ballastBehind: Length;
  working: Working;
}

/** The ways there are, the lightest first; none where none is wanted, and the boxes after it, for the front axle may want one. */
function ballastings(at: (behind: number) => Working, { book, implements: sold }: World): readonly Ballasted[] {
  const typical = book.value('ballast.behind-ball-ends') as Length;
  const plain = { ballastBehind: typical, working: at(typical), box: undefined };
  const boxes = sold
    .filter(({ kind, mass }) => kind === 'ballast-box' && mass !== undefined)
    .map((box) => ({ ballast: box.mass!, box, ballastBehind: box.centreDistance ?? typical, working: at(box.centreDistance ?? typical) }))
    .filter(({ ballast, working }) => atMost(working.result.value, ballast))
    .sort((a, b) => a.ballast - b.ballast || byCodeUnit(a.box.id, b.box.id));
  const wanted = plain.working.result.value as Mass;
  return wanted === 0 || boxes.length === 0 ? [{ ...plain, ballast: wanted }, ...boxes] : boxes;
}

/** What a way of ballasting runs into: the front axle still bears too much, or the hitch can't lift it. */
function hindrance(state: Loaded, build: Build, world: World): Verdict | undefined {
  const { machine: { mass, hitch, frontAxleShare, wheelbase } } = build;
  const onFront = frontAxleLoad(
    (mass! * frontAxleShare!) as Mass,
    { mass: state.front, ahead: state.ahead },
    { mass: state.ballast, behind: behindAxle(state.ballastBehind, world) },
    wheelbase!,
  );
  const bears = leastLimit('front', build);
  if (bears && !atMost(onFront.result.value, bears.result.value)) {
    return failed({ has: bears.result.value, wants: onFront.result.value, unit: 'kg', bound: 'at-least', workings: [...state.workings, onFront, bears] });
  }
  if (state.ballast === 0) return undefined;
  if (hitch?.lift610 === undefined) return unknown('hitch.lift610');
  const lift = hitchLift(hitch.lift610, state.ballastBehind, world);
  return atMost(state.ballast, lift.result.value) ? undefined
    : failed({ has: lift.result.value, wants: state.ballast, unit: 'kg', bound: 'at-least', workings: [...state.workings, lift] });
}

/** A machine with a load on the loader, ballasted the lightest way that serves, or the figures that are missing. */
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
  const holder = holderOf(lift, build, world);
  const bucket = lift.bulk === undefined ? undefined : bucketVolumeOf(part);
  const bucketful = bucket ? lift.bulk! * bucket.volume : Infinity;
  const load = Math.min(lift.load ?? bucketful, lifting[2].result.value) as Mass;
  // The frame stands over the front axle; what it holds, at the pins and ahead of them.
  const frame = (part.mass - (part.bucketMass ?? 0)) as Mass;
  const front = (frame + holder.mass + load) as Mass;
  const ahead = ((holder.mass * (part.pinsAhead + holder.ahead) + load * (part.pinsAhead + lift.loadAhead)) / front) as Length;
  const ballastAt = (behind: number) => cite(rearBallast(
    { tractor: mass, rear: (mass * (1 - frontAxleShare)) as Mass, front, ahead, wheelbase },
    behindAxle(behind, world),
    book.value('loader.rear-share'),
  ), { share: 'loader.rear-share' });
  const states = ballastings(ballastAt, world).map(({ working, ...way }): Loaded => ({
    load, holder: holder.mass, frame, front, ahead, ...way, workings: [lifting[2], working],
  }));
  return states.find((state) => hindrance(state, build, world) === undefined) ?? states[0]!;
}

/**
 * The rear axle keeps its share with the loader loaded and furthest forward, if need be by rear ballast
 * that the hitch can lift, and the front axle carries no more than it may where its limit is published. A
 * loader too small for the load lifts what it can. What the whole may weigh is judged with all that is on it.
 */
export const judgeRearAxle: Judge<DemandOf<'loader.rear-axle'>> = (need, build, world) => {
  if (ridesBehind(need.task, build)) return { ...judgeRideAxles(need, build, world), by: 'hitch' };
  if (!build.loader) return noLoader(build).outcome === 'unknown' ? unknown('loaders') : moot();
  if (!toolFor(need, build)) return moot();
  const state = loaded(need, build, world);
  if (!('ballast' in state)) return unknown(...state);
  const hindered = hindrance(state, build, world);
  if (hindered) return hindered;
  const { ballast, box, workings } = state;
  if (ballast === 0) return met({ workings });
  return met({
    workings,
    additions: [{
      what: 'rear-ballast', ...(box && { id: box.id }), mass: ballast,
      ...(box?.price && { price: box.price.value }), ...(box?.labourHours !== undefined && { labourHours: box.labourHours }),
      for: [need.id],
    }],
  });
};
