import type { TaskId } from '../answers/schema.ts';
import type { Deck } from '../catalogue/catalogue.ts';
import type { ImplementKind } from '../catalogue/schema.ts';
import type { ComfortWish, Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import type { Addition } from './addition.ts';
import { additionsOf } from './additions.ts';
import { hungFor, keyOf, type Build, type Fitted, type Mower, type Tool } from './build.ts';
import { have, inYears, type Candidate, type Have, type World } from './candidate.ts';
import { isMoneyNeed, judge } from './judge.ts';
import { massParts, totalOf } from './mass.ts';
import { costOf } from './price.ts';
import { isFailedGate, isOpenMust, worst, type Judged, type Verdict } from './verdict.ts';

type Option = Partial<Build>;

/** A place of a build where there is a choice: the needs that depend on it, and what can be chosen. */
interface Slot {
  serves: (need: Need) => boolean;
  options: (candidate: Candidate, needs: readonly Need[], world: World) => Option[];
}

const isWish = (need: Need, ...wishes: ComfortWish[]) => need.capability === 'fitting' && wishes.includes(need.wish);

const obtainable = <T>(part: T, state: Have): Fitted<T>[] => (state === 'never' ? [] : [{ part, have: state }]);

const idsOf = (needs: readonly Need[]) => needs.map(({ id }) => id);

/** What is only wished for may be left out, where it would cost a gate. */
function orWithout<T>(options: readonly T[], needs: readonly Need[], chosen: (each: T) => Option): Option[] {
  if (options.length === 0) return [{}];
  const all = options.map(chosen);
  return needs.some(({ must }) => must) ? all : [{ leftOut: idsOf(needs) }, ...all];
}

/** Two choices of one build, with what each leaves out or can't meet. */
const joined = <B extends Option>(build: B, option: Option): B => {
  const leftOut = [...(build.leftOut ?? []), ...(option.leftOut ?? [])];
  const unmet = { ...build.unmet, ...option.unmet };
  const tools = { ...build.tools, ...option.tools };
  return { ...build, ...option, ...(Object.keys(tools).length > 0 && { tools }), ...(leftOut.length > 0 && { leftOut }), ...(Object.keys(unmet).length > 0 && { unmet }) };
};

/** Implements of some kinds: the buyer's own, which cost him nothing more, and what the dealer sells. */
const toolsOf = (kinds: readonly ImplementKind[], { owned, implements: sold }: World): Tool[] => [
  ...owned.filter(({ kind }) => kind && kinds.includes(kind)).map((implement) => ({ implement, owned: true })),
  ...sold.filter(({ kind }) => kinds.includes(kind)).map((implement) => ({ implement, owned: false })),
];

const withTool = (task: TaskId) => (tool: Tool): Option => ({ tools: { [task]: tool } });

function loadersOf(candidate: Candidate, { asOfYear }: World): Fitted<NonNullable<Build['loader']>['part']>[] {
  const { machine, unit } = candidate;
  return (machine.loaders ?? []).flatMap((loader) => {
    if (unit?.fitted?.loader !== true) return obtainable(loader, have(candidate, 'loader', loader, asOfYear));
    const on = unit.loader ?? (machine.loaders?.length === 1 ? loader.id : undefined);
    return on === undefined ? obtainable(loader, 'unknown') : on === loader.id ? obtainable(loader, 'has') : [];
  });
}

/** Whether a bale may ride behind: nobody asked to have it stacked. */
const mayRide = (task: TaskId | undefined, needs: readonly Need[]) =>
  task === 'lift-bales' && !needs.some((need) => need.task === task && need.capability === 'loader.height');

const riding = (task: TaskId, needs: readonly Need[], world: World): Option[] =>
  (mayRide(task, needs) ? toolsOf(['rear-bale-spear'], world).map(withTool(task)) : []);

type LiftNeed = Extract<Need, { capability: 'loader.lift' }>;
const isLift = (need: Need): need is LiftNeed => need.capability === 'loader.lift';

/** What may hold a load on the loader: the implements there are, else one to be asked for. */
function holdersOf({ holder }: LiftNeed, world: World): Tool[] {
  if (holder === 'bucket') return [];
  const tools = toolsOf([holder], world);
  return tools.length > 0 ? tools : [{ implement: { kind: holder }, owned: false }];
}

/** For each load that somebody weighed what holds it; on a machine without a loader only what rides behind. */
function holding(loader: Option, needs: readonly Need[], world: World): Option[] {
  return needs.filter(isLift).reduce<Option[]>((chosen, need) => {
    const behind = riding(need.task, needs, world);
    const onIt = loader.loader ? holdersOf(need, world).map(withTool(need.task)) : [];
    const own = needs.filter((each) => each.id === need.id);
    const all = [...onIt, ...behind];
    const options = need.must || all.length === 0 ? (all.length > 0 ? all : [{}]) : [{ leftOut: idsOf(own) }, ...all];
    return chosen.flatMap((each) => options.map((option) => joined(each, option)));
  }, [loader]);
}

const lifting: Slot = {
  serves: (need) => need.capability.startsWith('loader.') || need.capability === 'third-function' || isWish(need, 'loaderOff', 'levelLift'),
  options(candidate, needs, world) {
    const own = needs.filter(lifting.serves);
    const asks = own.filter(({ capability }) => capability.startsWith('loader.'));
    const all = loadersOf(candidate, world);
    const onIt = all.filter(({ have: state }) => state === 'has' || candidate.unit?.fitted?.loader === true);
    const chosen = (loader: (typeof all)[number]): Option => ({ loader });
    // A loader nobody asked for is taken along where it is on the machine, and never bought.
    const [first] = [...onIt].sort((a, b) => byCodeUnit(a.part.id, b.part.id));
    const onlyRides = asks.length > 0 && asks.every(({ task }) => mayRide(task, needs));
    const loaders = own.length === 0 ? [first ? chosen(first) : {}]
      : onIt.length > 0 ? all.map(chosen)
        : [...(onlyRides && all.length > 0 ? [{}] : []), ...orWithout(all, own, chosen)];
    return loaders.flatMap((loader) => holding(loader, needs, world));
  },
};

/** A deck comes off and goes on: one that isn't there can be bought, whoever fitted the first. */
function deckState({ machine, unit }: Candidate, deck: Deck): Have {
  const onIt = unit?.fitted?.deck === true ? (unit.deck ?? (machine.decks?.length === 1 ? deck.id : undefined)) : undefined;
  if (onIt === deck.id || (deck.availability === 'fitted' && unit?.fitted?.deck !== false)) return 'has';
  return deck.availability === 'none' ? 'never' : deck.availability === 'unknown' ? 'unknown' : 'can-add';
}

function bellyMowers(candidate: Candidate, { asOfYear }: World): Mower[] {
  const { machine } = candidate;
  const midPto = have(candidate, 'midPto', machine.midPto, asOfYear);
  if (midPto === 'never') return [];
  return (machine.decks ?? []).flatMap((deck) =>
    obtainable(deck, deckState(candidate, deck)).map((fitted): Mower => ({ kind: 'belly', deck: fitted, midPto })),
  );
}

const mowing: Slot = {
  serves: (need) => need.capability === 'mower' || need.capability === 'mower.hours' || isWish(need, 'mowerLiftAlone'),
  options(candidate, needs, world) {
    const need = needs.find((each) => each.capability === 'mower');
    if (need?.capability !== 'mower') return [{}];
    const belly = need.deck === 'rear' ? [] : bellyMowers(candidate, world);
    const rear = need.deck === 'belly' ? [] : toolsOf(['finish-mower'], world).map((mower): Mower => ({ kind: 'rear', mower }));
    return orWithout([...belly, ...rear], needs.filter(mowing.serves), (mower) => ({ mower }));
  },
};

const digging: Slot = {
  serves: (need) => need.capability === 'backhoe',
  options(candidate, needs, { asOfYear }) {
    const { backhoe } = candidate.machine;
    const said = have(candidate, 'backhoe', backhoe, asOfYear);
    // One that somebody has put on a machine of other years is no proof that it belongs there.
    const state = said === 'has' && inYears(candidate, backhoe?.years, asOfYear) !== 'inside' ? 'unknown' : said;
    const own = needs.filter(digging.serves);
    if (!backhoe || state === 'never' || (own.length === 0 && state !== 'has')) return [{}];
    const chosen = { backhoe: { part: backhoe, have: state } };
    return state === 'has' ? [chosen] : orWithout([chosen], own, (each) => each);
  },
};

const shelter: Slot = {
  serves: (need) => need.capability === 'cab',
  options(candidate, needs, { asOfYear }) {
    const { machine, unit } = candidate;
    const own = needs.filter(shelter.serves);
    const cabs = (machine.cabs ?? []).flatMap((cab) => {
      if (unit?.fitted?.cab === true && unit.cab !== undefined) return unit.cab === cab.id ? obtainable(cab, 'has') : [];
      return obtainable(cab, have(candidate, 'cab', cab, asOfYear));
    });
    const onIt = cabs.filter(({ have: state }) => state === 'has');
    if (onIt.length > 0) return onIt.map((cab) => ({ cab }));
    return own.length === 0 ? [{}] : orWithout(cabs, own, (cab) => ({ cab }));
  },
};

type WorkNeed = Extract<Need, { capability: 'implement' | 'rotary-cutter' }>;
const isWork = (need: Need): need is WorkNeed => need.capability === 'implement' || need.capability === 'rotary-cutter';

/** A job with an implement behind: one of the kinds that do it. */
function working(need: WorkNeed): Slot {
  const task = need.task!;
  const kinds = need.capability === 'implement' ? need.kinds : (['rotary-cutter', 'flail-mower'] as const);
  const slot: Slot = {
    // The axles wait for the whole build: a loader in front weighs against what hangs behind.
    serves: (each) => each.task === task && (isWork(each) || each.capability === 'implement.pull'),
    options: (_candidate, needs, world) => orWithout(toolsOf(kinds, world), needs.filter(slot.serves), withTool(task)),
  };
  return slot;
}

const slotsFor = (needs: readonly Need[]): readonly Slot[] => [lifting, mowing, ...needs.filter(isWork).map(working), digging, shelter];

/** One option of a slot judged by itself, with what may count against it elsewhere. */
interface Standing {
  option: Option;
  judged: readonly Judged[];
  failedGates: number;
  openMusts: number;
  /** What adds up across slots: wishes failed and unknown, price, prices to be asked, mass, masses unknown, cabs. */
  sums: readonly number[];
  /** Of what is there once for all the greatest counts: ballast, what hangs behind, what holds a load, the widest deck. */
  peaks: readonly number[];
  /** Price of implements another job may use as well, by id: they cost only once. */
  shared: ReadonlyMap<string, number>;
}

const heaviest = (additions: readonly Addition[], what: Addition['what']) =>
  Math.max(0, ...additions.map((each) => (each.what === what ? (each.mass ?? 0) : 0)));

const once = ['rear-ballast', 'front-ballast'];

/** Kinds of implement that more than one of the buyer's jobs may be done with. */
function sharedKinds(needs: readonly Need[]): ReadonlySet<ImplementKind> {
  const kinds = needs.flatMap((need) => (need.capability === 'implement' ? need.kinds : []));
  return new Set(kinds.filter((kind, index) => kinds.indexOf(kind) < index));
}

/** Tools that a bare machine couldn't carry as they are, and by how much: a loader in front, or weights, may help. */
function axleRisk(build: Build, needs: readonly Need[], world: World): readonly [count: number, short: number] {
  const { loader: _loader, ...bare } = build;
  const verdicts = needs.filter(({ capability, task }) => capability === 'implement.axles' && task !== undefined && hungFor(task, build) !== undefined)
    .map((need) => judge(need as Parameters<typeof judge>[0], bare, world));
  const risky = verdicts.filter(({ outcome, additions }) => outcome !== 'met' || additions !== undefined);
  return [risky.length, risky.reduce((sum, { has = 0, wants = 0 }) => sum + Math.abs(wants - has), 0)];
}

function standingOf(option: Option, candidate: Candidate, needs: readonly Need[], own: readonly Need[], world: World): Standing {
  const build = { ...candidate, ...option };
  const judged = own.map((need): Judged => ({ need, verdict: judge(need as Parameters<typeof judge>[0], build, world) }));
  const count = (of: (each: Judged) => boolean) => judged.filter(of).length;
  const additions = additionsOf(build, judged, needs);
  const kinds = sharedKinds(needs);
  const shared = new Map(Object.values(option.tools ?? {}).flatMap(({ implement: { id, kind } }): [string, number][] =>
    (id !== undefined && kind !== undefined && kinds.has(kind)
      ? [[id, costOf(additions.filter((each) => each.id === id), world.dealer)]] : [])));
  const bought = additions.filter(({ what, id }) => !once.includes(what) && !(id !== undefined && shared.has(id)));
  const { parts, missing } = massParts(build);
  const { hung = 0, attachment = 0 } = parts;
  return {
    option, judged, shared,
    failedGates: count(isFailedGate), openMusts: count(isOpenMust),
    sums: [
      count(({ need, verdict }) => !need.must && verdict.outcome === 'failed'),
      count(({ need, verdict }) => !need.must && verdict.outcome === 'unknown'),
      costOf(bought, world.dealer),
      bought.filter(({ price }) => price === undefined).length,
      totalOf(parts) - hung - attachment,
      missing.length,
      build.cab ? 1 : 0,
      ...axleRisk(build, needs, world),
    ],
    peaks: [
      heaviest(additions, 'rear-ballast'), heaviest(additions, 'front-ballast'), hung, attachment,
      build.mower?.kind === 'belly' ? build.mower.deck.part.width : 0,
    ],
  };
}

/** Two standings in two slots, taken together. */
const together = (a: Standing, b: Standing): Standing => ({
  option: joined(a.option, b.option),
  judged: [...a.judged, ...b.judged],
  failedGates: a.failedGates + b.failedGates,
  openMusts: a.openMusts + b.openMusts,
  sums: a.sums.map((sum, index) => sum + b.sums[index]!),
  peaks: a.peaks.map((peak, index) => Math.max(peak, b.peaks[index]!)),
  shared: b.shared.size === 0 ? a.shared : new Map([...a.shared, ...b.shared]),
});

const price = 2;
const sharedCost = ({ shared }: Standing) => [...shared.values()].reduce((sum, each) => sum + each, 0);

/**
 * Whether one standing is nowhere worse than another, and somewhere better; of two alike the first by id.
 * What it beats now it still beats with the same added to both.
 */
function beats(a: Standing, b: Standing): boolean {
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

const unbeaten = (all: readonly Standing[]) => all.filter((each) => !all.some((other) => other !== each && beats(other, each)));

/**
 * What is left out is either a wish that could be met, or one that no choice meets: then the verdict that
 * came nearest is kept, so that the reason told is the true one.
 */
function leavingOut(option: Option, all: readonly Standing[]): Option {
  const { leftOut = [], ...rest } = option;
  const nearest = leftOut.map((id) => {
    const tried = all.flatMap(({ option: { leftOut: gone = [] }, judged }) =>
      (gone.includes(id) ? [] : judged.flatMap(({ need, verdict }) => (need.id === id ? [verdict] : []))));
    return [id, tried.reduce<Verdict | undefined>((best, each) => (best && worst([best, each]) === each ? best : each), undefined)] as const;
  });
  const unmet = nearest.filter((each): each is readonly [string, Verdict] => each[1]?.outcome === 'failed');
  const gone = leftOut.filter((id) => !unmet.some(([other]) => other === id));
  return { ...rest, ...(gone.length > 0 && { leftOut: gone }), ...(unmet.length > 0 && { unmet: Object.fromEntries(unmet) }) };
}

/** Whether wishes that could be met may be left out, for the sake of a must elsewhere. */
export type Scope = 'all-wishes' | 'leaving-out';

/** Every option of every slot, judged by itself. */
export type Choices = readonly (readonly Standing[])[];

/** What a candidate can be made of: each slot's options, judged once. */
export const choicesOf = (candidate: Candidate, needs: readonly Need[], world: World): Choices =>
  slotsFor(needs).map((slot) => {
    const own = needs.filter((need) => !isMoneyNeed(need) && slot.serves(need));
    return slot.options(candidate, needs, world).map((option) => standingOf(option, candidate, needs, own, world));
  });

/**
 * The options of a slot worth trying: those that meet its gates best, and its wishes if none is to be left
 * out, less those another beats in every way that counts beyond the slot.
 */
function worthTrying(all: readonly Standing[], scope: Scope): readonly Standing[] {
  if (all.length === 1) return all;
  const least = Math.min(...all.map(({ failedGates }) => failedGates));
  const fewest = Math.min(...all.filter(({ failedGates }) => failedGates === least).map(({ openMusts }) => openMusts));
  const gated = all.filter(({ failedGates, openMusts }) => failedGates === least && openMusts === fewest);
  const met = Math.min(...gated.map(({ sums: [wishesFailed = 0] }) => wishesFailed));
  const top = scope === 'leaving-out' ? gated : gated.filter(({ sums: [wishesFailed = 0] }) => wishesFailed === met);
  return unbeaten(top).map((each) => ({ ...each, option: leavingOut(each.option, all) }));
}

/** Whether a need waits for the whole build: no choice in one place settles it. */
export const isOfTheWhole = (need: Need, needs: readonly Need[]) => !slotsFor(needs).some(({ serves }) => serves(need));

/** Needs that hang on the machine itself, whatever is added to it. */
const ofTheMachine: readonly Need['capability'][] = [
  'rops', 'seat-belt', 'exhaust.intact', 'recall', 'drawbar', 'tow.mass', 'tow.pull', 'hitch.lift', 'transmission', 'slope.driven-wheels',
];

/**
 * Whether a failed gate could be met were some needs not asked: by another choice in a place they share, or
 * by a package that is lighter, cheaper or narrower without them. Sound, not sharp: where it says no, the
 * gate fails still.
 */
export function hangsOn(gate: Need, dropped: readonly Need[], needs: readonly Need[]): boolean {
  if (dropped.includes(gate)) return true;
  const places = slotsFor(needs).filter(({ serves }) => serves(gate));
  return places.length === 0
    ? !ofTheMachine.includes(gate.capability)
    : places.some(({ serves }) => dropped.some(serves));
}

/** A build with the verdicts on the needs that its choices settle. */
export interface Choice {
  build: Build;
  judged: readonly Judged[];
}

/**
 * Every build of a candidate worth comparing: for each slot the options worth trying, in all combinations,
 * since mass, size and price add up across slots; those another beats so far are dropped on the way.
 */
export function buildsOf(candidate: Candidate, choices: Choices, scope: Scope): Choice[] {
  const [first = [], ...others] = choices.map((all) => worthTrying(all, scope));
  const all = others.reduce((sofar, options) => {
    const combined = sofar.flatMap((each) => options.map((other) => together(each, other)));
    return options.length === 1 || combined.length < 2 ? combined : unbeaten(combined);
  }, first);
  return all.map(({ option, judged }) => ({ build: { ...candidate, ...option }, judged }));
}
