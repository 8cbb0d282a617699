import type { Need } from '../needs/need.ts';
import type { Working } from '../trade/working.ts';
import { atLeast, atMost } from '../units/compare.ts';
import type { Unit } from '../units/quantity.ts';
import type { Addition } from './addition.ts';

/** What a catalogue may leave unsaid, by its path without ids: the words for it stand with the languages. */
export type Spec =
  | 'mass' | 'frontAxleShare' | 'wheelbase' | 'centreOfMassHeight' | 'rearTrack' | 'frontPivotHeight' | 'grossMass'
  | 'drivenWheels' | 'engine.ptoPower' | 'exhaust' | 'rearPto' | 'midPto' | 'hitch.lift610'
  | 'height.ropsUp' | 'height.ropsFolded' | 'height.cab' | 'length' | 'lengthWithLoader' | 'tyres' | 'turningRadius'
  | 'loaders' | 'loaders.ratings' | 'loaders.bothRatings' | 'loaders.fullHeight' | 'loaders.pinsAhead' | 'loaders.mass' | 'loaders.detaching'
  | 'loaders.selfLevelling' | 'decks' | 'decks.lift' | 'decks.mass' | 'mower.width' | 'backhoe' | 'backhoe.digDepth' | 'backhoe.mass'
  | 'cabs' | 'cabs.mass' | 'transmissions' | 'suspensionSeat' | 'tiltWheel' | 'cruise' | 'rops.kind' | 'rops.certified'
  | 'implements.rotary-cutter' | 'implements.finish-mower' | 'implements.width' | 'implements.mass' | 'price' | 'listPrice' | 'additions.price' | 'typicalPrices'
  | 'dealer.currency' | 'dealer.finance' | 'dealer.makesServiced' | 'drawbar' | 'towedMass' | 'thirdFunction' | 'hitch.category' | 'hydraulics.flow'
  | 'tyres.inflation' | 'tyres.fillMass' | 'noiseAtEarDecibels' | 'seatVibration' | 'loaders.bucketVolume' | 'backhoe.centreBehind'
  | 'implements.centreDistance' | 'implements.listed' | 'implements.hitchCategory' | 'implements.capacity' | 'implements.fullMass' | 'units.tyres.type' | 'units.seatBelt' | 'units.transmission' | 'units.hours' | 'units.generation';

/** The specs of a record whose values are not known. */
export const absent = (specs: { readonly [S in Spec]?: unknown }) =>
  (Object.keys(specs) as Spec[]).filter((spec) => specs[spec] === undefined);

/** What a judge finds: met, failed, or unknown for want of a figure. Three values, never two. */
export interface Verdict {
  outcome: 'met' | 'failed' | 'unknown';
  /** What the machine has and what is wanted of it, in SI, where that can be said in figures. */
  has?: number;
  wants?: number;
  unit?: Unit | 'ratio' | 'money';
  /** Whether more is better: a lift, or less: a width. */
  bound?: 'at-least' | 'at-most';
  workings: readonly Working[];
  missing?: readonly Spec[];
  /** What was estimated on the safe side for want of a figure; the verdict stands. */
  estimated?: readonly Spec[];
  /** What must be bought for the need to be met. */
  additions?: readonly Addition[];
  /** What carries the load where it isn't the loader; or that its coupling takes nothing that holds it. */
  by?: 'hitch' | 'coupling';
  /** Terms of a loan, so that no instalment is told without them. */
  loan?: { deposit: number; months: number; rate: number };
  /** There is nothing to judge: without a loader no rear axle lifts off. No reason is made of it. */
  moot?: boolean;
}

export interface Judged {
  need: Need;
  verdict: Verdict;
}

/** A gate that rules out: a must that fails. A job only wished for, and not safe here, is left undone. */
export const isFailedGate = ({ need, verdict }: Judged) => need.must && verdict.outcome === 'failed';

/** A must nobody can judge for want of a figure. */
export const isOpenMust = ({ need, verdict }: Judged) => need.must && verdict.outcome === 'unknown';

/** A gate nobody can judge for want of a figure: a must, or a safety need of any job, wished for or not. */
export const isOpenGate = ({ need, verdict }: Judged) => (need.must || need.safety) && verdict.outcome === 'unknown';

/** What was only wished for, and isn't to be had. */
export const isFailedWish = ({ need, verdict }: Judged) => !need.must && verdict.outcome === 'failed';

/** Met for want of anything to judge. */
export const moot = (): Verdict => ({ outcome: 'met', workings: [], moot: true });
export const met = (more: Partial<Verdict> = {}): Verdict => ({ outcome: 'met', workings: [], ...more });
export const failed = (more: Partial<Verdict> = {}): Verdict => ({ outcome: 'failed', workings: [], ...more });
export const unknown = (...missing: Spec[]): Verdict => ({ outcome: 'unknown', workings: [], missing });

type Measure = Pick<Verdict, 'workings' | 'additions'> & { unit: Verdict['unit'] };

export const wantsAtLeast = (has: number, wants: number, measure: Measure): Verdict => ({
  ...measure, has, wants, bound: 'at-least', outcome: atLeast(has, wants) ? 'met' : 'failed',
});
export const wantsAtMost = (has: number, wants: number, measure: Measure): Verdict => ({
  ...measure, has, wants, bound: 'at-most', outcome: atMost(has, wants) ? 'met' : 'failed',
});

/** The worst of several verdicts: failed before unknown before met, then the one with the least in hand. */
export function worst(verdicts: readonly Verdict[]): Verdict {
  const order = ['failed', 'unknown', 'met'] as const;
  // What fails without a figure, fails whatever the figures.
  const inHand = ({ outcome, has, wants, bound }: Verdict) =>
    has === undefined || !wants ? (outcome === 'failed' ? 0 : Infinity) : bound === 'at-most' ? wants / has : has / wants;
  return [...verdicts].sort(
    (a, b) => order.indexOf(a.outcome) - order.indexOf(b.outcome) || (inHand(a) === inHand(b) ? 0 : inHand(a) - inHand(b)),
  )[0] ?? met();
}
