import type { Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { heaviest, type Addition } from './addition.ts';
import { additionsOf } from './additions.ts';
import type { Asked, Place } from './asked.ts';
import { hungFor, joined, keyOf, type Build, type Option } from './build.ts';
import type { Candidate } from './candidate.ts';
import { judge } from './judge.ts';
import { massParts, totalOf } from './mass.ts';
import { once } from './once.ts';
import { remembered } from './remember.ts';
import { costOf } from './price.ts';
import { isFailedGate, isFailedWish, isOpenMust, worst, type Judged, type Verdict } from './verdict.ts';

/** One option of a slot judged by itself, with what may count against it elsewhere. */
export interface Tried {
  option: Option;
  /** The verdicts on the needs it settles, in their order. */
  verdicts: readonly Verdict[];
  failedGates: number;
  openMusts: number;
  /** What adds up across slots: wishes failed and unknown, price, prices to be asked, mass, masses unknown, cabs. */
  sums: readonly number[];
  /** Of what is there once for all the greatest counts: ballast, what hangs behind, what holds a load, the widest deck. */
  peaks: readonly number[];
  /** Price of implements another job may use as well, by id: they cost only once. */
  shared: ReadonlyMap<string, number>;
}

const ballast = ['rear-ballast', 'front-ballast'];

/** Tools that a bare machine couldn't carry as they are, and by how much: a loader in front, or weights, may help. */
function axleRisk(build: Build, { judged, world }: Asked): readonly [count: number, short: number] {
  const { loader: _loader, ...bare } = build;
  const verdicts = judged.filter(({ capability, task }) => capability === 'implement.axles' && task !== undefined && hungFor(task, build) !== undefined)
    .map((need) => judge(need, bare, world));
  const risky = verdicts.filter(({ outcome, additions }) => outcome !== 'met' || additions !== undefined);
  return [risky.length, risky.reduce((sum, { has = 0, wants = 0 }) => sum + Math.abs(wants - has), 0)];
}

/** What implements that more than one job may use cost, by id. */
function sharedCosts({ tools = {} }: Option, additions: readonly Addition[], { sharedKinds, world }: Asked): ReadonlyMap<string, number> {
  return new Map(Object.values(tools).flatMap(({ implement: { id, kind } }): [string, number][] =>
    (id !== undefined && kind !== undefined && sharedKinds.has(kind)
      ? [[id, costOf(additions.filter((each) => each.id === id), world.dealer)]] : [])));
}

function tried(option: Option, candidate: Candidate, { own, slot }: Place, asked: Asked): Tried {
  const { needs, world } = asked;
  const build = { ...candidate, ...option };
  const verdicts = own.map((need) => judge(need, build, world));
  const count = (of: (each: Judged) => boolean) => own.filter((need, index) => of({ need, verdict: verdicts[index]! })).length;
  const additions = additionsOf(build, verdicts, needs);
  const shared = sharedCosts(option, additions, asked);
  const bought = additions.filter(({ what, id }) => !ballast.includes(what) && !(id !== undefined && shared.has(id)));
  // What is on a unit in any case makes no difference between options.
  const { parts, missing } = massParts(slot.replaces ? build : { ...option, machine: candidate.machine });
  // Left out, not taken off again: that would leave a hair of difference where there is none.
  const { hung = 0, attachment = 0, ...aboard } = parts;
  return {
    option, verdicts, shared,
    failedGates: count(isFailedGate), openMusts: count(isOpenMust),
    sums: [
      count(isFailedWish),
      count(({ need, verdict }) => !need.must && verdict.outcome === 'unknown'),
      costOf(bought, world.dealer),
      bought.filter(({ price }) => price === undefined).length,
      totalOf(aboard),
      missing.length,
      build.cab ? 1 : 0,
      ...axleRisk(build, asked),
    ],
    peaks: [
      heaviest(additions, 'rear-ballast'), heaviest(additions, 'front-ballast'), hung, attachment,
      build.mower?.kind === 'belly' ? build.mower.deck.part.width : 0,
    ],
  };
}

/** The options of two places, taken together. */
const together = (a: Tried, b: Tried): Tried => ({
  option: joined(a.option, b.option),
  verdicts: [...a.verdicts, ...b.verdicts],
  failedGates: a.failedGates + b.failedGates,
  openMusts: a.openMusts + b.openMusts,
  sums: a.sums.map((sum, index) => sum + b.sums[index]!),
  peaks: a.peaks.map((peak, index) => Math.max(peak, b.peaks[index]!)),
  shared: b.shared.size === 0 ? a.shared : new Map([...a.shared, ...b.shared]),
});

const price = 2;
const sharedCost = ({ shared }: Tried) => [...shared.values()].reduce((sum, each) => sum + each, 0);

/**
 * Whether one option is nowhere worse than another, and somewhere better; of two alike the first by id.
 * What it beats now it still beats with the same added to both.
 */
function beats(a: Tried, b: Tried): boolean {
  for (const id of b.shared.keys()) if (!a.shared.has(id)) return false;
  let better = false;
  const extra = a.shared.size + b.shared.size > 0 ? sharedCost(a) - sharedCost(b) : 0;
  for (const [index, sum] of a.sums.entries()) {
    const difference = sum - b.sums[index]! + (index === price ? extra : 0);
    if (difference > 0) return false;
    if (difference < 0) better = true;
  }
  for (const [index, peak] of a.peaks.entries()) {
    if (peak > b.peaks[index]!) return false;
    if (peak < b.peaks[index]!) better = true;
  }
  return better || byCodeUnit(keyOf(a.option), keyOf(b.option)) < 0;
}

const unbeaten = (all: readonly Tried[]) => all.filter((each) => !all.some((other) => other !== each && beats(other, each)));

/**
 * What is left out is either a wish that could be met, or one that no choice meets: then the verdict that
 * came nearest is kept, so that the reason told is the true one.
 */
function leavingOut(option: Option, all: readonly Tried[], own: readonly Need[]): Option {
  const { leftOut = [], ...rest } = option;
  const nearest = leftOut.map((id) => {
    const at = own.findIndex((need) => need.id === id);
    const verdicts = all.flatMap(({ option: { leftOut: gone = [] }, verdicts: of }) => (gone.includes(id) ? [] : (of[at] ?? [])));
    return [id, verdicts.reduce<Verdict | undefined>((best, each) => (best && worst([best, each]) === each ? best : each), undefined)] as const;
  });
  const unmet = nearest.filter((each): each is readonly [string, Verdict] => each[1]?.outcome === 'failed');
  const gone = leftOut.filter((id) => !unmet.some(([other]) => other === id));
  return { ...rest, ...(gone.length > 0 && { leftOut: gone }), ...(unmet.length > 0 && { unmet: Object.fromEntries(unmet) }) };
}

/** Whether wishes that could be met may be left out, for the sake of a must elsewhere. */
export type Scope = 'all-wishes' | 'leaving-out';

/** Every option of every place, judged by itself. */
export type Choices = readonly (readonly Tried[])[];

/** What a candidate can be made of: the options of each place, judged once. */
export const choicesOf = (candidate: Candidate, asked: Asked): Choices =>
  asked.places.map((place) => remembered(place.memories(candidate.machine), candidate, (read) =>
    place.slot.options(read, asked.needs, asked.world).map((option) => tried(option, read, place, asked))));

/**
 * The options of a slot worth trying: those that meet its gates best, and its wishes if none is to be left
 * out, less those another beats in every way that counts beyond the slot.
 */
function worthTrying(all: readonly Tried[], own: readonly Need[], scope: Scope): readonly Tried[] {
  if (all.length === 1) return all;
  const least = Math.min(...all.map(({ failedGates }) => failedGates));
  const fewest = Math.min(...all.filter(({ failedGates }) => failedGates === least).map(({ openMusts }) => openMusts));
  const gated = all.filter(({ failedGates, openMusts }) => failedGates === least && openMusts === fewest);
  const met = Math.min(...gated.map(({ sums: [wishesFailed = 0] }) => wishesFailed));
  const top = scope === 'leaving-out' ? gated : gated.filter(({ sums: [wishesFailed = 0] }) => wishesFailed === met);
  return unbeaten(top).map((each) => ({ ...each, option: leavingOut(each.option, all, own) }));
}

/** What is chosen in every place, with the verdicts on the needs that this settles, place by place. */
export type Choice = Pick<Tried, 'option' | 'verdicts'>;

const combined = (sofar: readonly Tried[], options: readonly Tried[]) => once(sofar, options, () => {
  const all = sofar.flatMap((each) => options.map((other) => together(each, other)));
  return options.length === 1 || all.length < 2 ? all : unbeaten(all);
});

/**
 * Every build worth comparing: for each place the options worth trying, in all combinations, since mass, size
 * and price add up across places; those another beats so far are dropped on the way.
 */
export function combinationsOf(choices: Choices, { places }: Asked, scope: Scope): readonly Choice[] {
  const [first = [], ...others] = choices.map((all, index) => once(all, scope, () => worthTrying(all, places[index]!.own, scope)));
  return others.reduce(combined, first);
}
