import type { Capability, DemandOf, Need } from '../needs/need.ts';
import type { Build } from './build.ts';
import type { World } from './candidate.ts';
import { judgeBackhoe } from './judges/backhoe.ts';
import { judgeCutter, judgeCutterHours } from './judges/cutter.ts';
import { judgeCab, judgeFitting, judgeTransmission } from './judges/fittings.ts';
import { judgeGrossMass } from './judges/gross-mass.ts';
import { judgeGroundPressure, judgeTyres } from './judges/ground.ts';
import { judgePayload, judgeTongue, judgeTowRating } from './judges/haul.ts';
import { judgeFrontAxle, judgeHitchLift, judgeImplementAxles } from './judges/hitch.ts';
import { judgeImplement, judgeImplementHours, judgePtoPower, judgePull } from './judges/implement.ts';
import { judgeAnyLoader, judgeLoaderHeight, judgeLoaderLift, judgeLoose, judgeRearAxle, judgeThirdFunction } from './judges/loader.ts';
import { judgeMower, judgeMowerHours } from './judges/mowing.ts';
import { judgeExhaustIntact, judgeNoise, judgeRecall, judgeRops, judgeSeatBelt, judgeServiced, judgeVibration } from './judges/operator.ts';
import { judgeDeckLength, judgeDeckWidth, judgeLength, judgeStoredHeight, judgeWidth, judgeWorkingHeight } from './judges/place.ts';
import { judgeDrivenWheels, judgeTipAngle } from './judges/slope.ts';
import { judgeDrawbar, judgeTowMass, judgeTowPull } from './judges/towing.ts';
import { demandOf, memoriesOf, type Memories } from './memories.ts';
import { remembered } from './remember.ts';
import type { Verdict } from './verdict.ts';
import type { Judge } from './judges/judging.ts';

/** Money is judged last, when all additions are known. */
type Judged = Exclude<Capability, 'price' | 'instalment'>;

const judges: { [C in Judged]: Judge<DemandOf<C>> } = {
  'loader.any': judgeAnyLoader,
  'loader.lift': judgeLoaderLift,
  'loader.height': judgeLoaderHeight,
  'loader.rear-axle': judgeRearAxle,
  'loader.loose': judgeLoose,
  'third-function': judgeThirdFunction,
  mower: judgeMower,
  'mower.hours': judgeMowerHours,
  'rotary-cutter': judgeCutter,
  'rotary-cutter.hours': judgeCutterHours,
  backhoe: judgeBackhoe,
  implement: judgeImplement,
  'implement.axles': judgeImplementAxles,
  'gross-mass': judgeGrossMass,
  'pto.power': judgePtoPower,
  'implement.pull': judgePull,
  'implement.hours': judgeImplementHours,
  drawbar: judgeDrawbar,
  'tow.mass': judgeTowMass,
  'tow.pull': judgeTowPull,
  tyres: judgeTyres,
  'ground-pressure': judgeGroundPressure,
  'hitch.lift': judgeHitchLift,
  'hitch.front-axle': judgeFrontAxle,
  width: judgeWidth,
  'height.stored': judgeStoredHeight,
  'height.working': judgeWorkingHeight,
  length: judgeLength,
  'trailer.payload': judgePayload,
  'trailer.tow-rating': judgeTowRating,
  'trailer.tongue': judgeTongue,
  'trailer.deck-width': judgeDeckWidth,
  'trailer.deck-length': judgeDeckLength,
  cab: judgeCab,
  transmission: judgeTransmission,
  fitting: judgeFitting,
  noise: judgeNoise,
  vibration: judgeVibration,
  serviced: judgeServiced,
  rops: judgeRops,
  'seat-belt': judgeSeatBelt,
  'exhaust.intact': judgeExhaustIntact,
  recall: judgeRecall,
  'slope.tip-angle': judgeTipAngle,
  'slope.driven-wheels': judgeDrivenWheels,
};

export type Judgeable = Need & DemandOf<Judged>;

const memories = new WeakMap<World, WeakMap<Need, Memories<Verdict>>>();

/** What was judged of machines for a demand; the same for any need that demands the same, wherever it comes from. */
function memoriesFor(need: Need, world: World): Memories<Verdict> {
  const ofWorld = memories.get(world) ?? new WeakMap<Need, Memories<Verdict>>();
  memories.set(world, ofWorld);
  const own = ofWorld.get(need) ?? memoriesOf<Verdict>(world, demandOf(need));
  ofWorld.set(need, own);
  return own;
}

/** Judged so quickly that to remember takes longer. */
const quick: ReadonlySet<Capability> = new Set<Judged>([
  'rops', 'seat-belt', 'recall', 'exhaust.intact', 'serviced', 'transmission', 'fitting', 'cab', 'tyres', 'drawbar', 'loader.any', 'slope.driven-wheels', 'noise', 'vibration',
]);

/** Judges any need but those of money on a build. */
export function judge(need: Judgeable, build: Build, world: World): Verdict {
  const judgeOn = judges[need.capability] as Judge<Judgeable>;
  if (quick.has(need.capability)) return judgeOn(need, build, world);
  return remembered(memoriesFor(need, world)(build.machine), build, (read) => judgeOn(need, read, world));
}

export const isPriceNeed = (need: Need): need is Need & DemandOf<'price'> => need.capability === 'price';
export type MoneyNeed = Need & DemandOf<'price' | 'instalment'>;
export const isMoneyNeed = (need: Need): need is MoneyNeed => isPriceNeed(need) || need.capability === 'instalment';
