import type { Deck, Implement } from '../catalogue/catalogue.ts';
import type { ComfortWish, Holder, Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { additionsOf } from './additions.ts';
import { keyOf, type Build, type Fitted, type Mower, type Tool } from './build.ts';
import { have, inYears, type Candidate, type Have, type World } from './candidate.ts';
import { isPriceNeed, judge } from './judge.ts';
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
  return { ...build, ...option, ...(leftOut.length > 0 && { leftOut }), ...(Object.keys(unmet).length > 0 && { unmet }) };
};

/** Implements of a kind: the buyer's own, which cost him nothing more, and what the dealer sells. */
const toolsOf = (kind: Implement['kind'], { owned, implements: sold }: World): Tool[] => [
  ...owned.filter((each) => each.kind === kind).map((implement) => ({ implement, owned: true })),
  ...sold.filter((each) => each.kind === kind).map((implement) => ({ implement, owned: false })),
];

function loadersOf(candidate: Candidate, { asOfYear }: World): Fitted<NonNullable<Build['loader']>['part']>[] {
  const { machine, unit } = candidate;
  return (machine.loaders ?? []).flatMap((loader) => {
    if (unit?.fitted?.loader !== true) return obtainable(loader, have(candidate, 'loader', loader, asOfYear));
    const on = unit.loader ?? (machine.loaders?.length === 1 ? loader.id : undefined);
    return on === undefined ? obtainable(loader, 'unknown') : on === loader.id ? obtainable(loader, 'has') : [];
  });
}

/** What may hold a load: the implements there are, else one to be asked for; nothing where nobody asked. */
function holdersOf(holder: Holder, chosen: (tool: Tool) => Option, needs: readonly Need[], world: World): Option[] {
  const asking = needs.filter((need) => need.capability === 'loader.lift' && need.holder === holder);
  if (asking.length === 0) return [{}];
  const tools = toolsOf(holder, world);
  return orWithout(tools.length > 0 ? tools : [{ implement: { kind: holder }, owned: false }], asking, chosen);
}

const lifting: Slot = {
  serves: (need) => need.capability.startsWith('loader.') || isWish(need, 'loaderOff', 'levelLift'),
  options(candidate, needs, world) {
    const own = needs.filter(lifting.serves);
    const all = loadersOf(candidate, world);
    const onIt = all.filter(({ have: state }) => state === 'has' || candidate.unit?.fitted?.loader === true);
    const chosen = (loader: (typeof all)[number]): Option => ({ loader });
    // A loader nobody asked for is taken along where it is on the machine, and never bought.
    const [first] = [...onIt].sort((a, b) => byCodeUnit(a.part.id, b.part.id));
    const loaders = own.length === 0 ? [first ? chosen(first) : {}] : onIt.length > 0 ? all.map(chosen) : orWithout(all, own, chosen);
    const forks = holdersOf('pallet-forks', (tool) => ({ forks: tool }), needs, world);
    const spears = holdersOf('bale-spear', (tool) => ({ spear: tool }), needs, world);
    return loaders.flatMap((loader) => (loader.loader ? forks.flatMap((each) => spears.map((other) => joined(joined(loader, each), other))) : [loader]));
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
    const rear = need.deck === 'belly' ? [] : toolsOf('finish-mower', world).map((mower): Mower => ({ kind: 'rear', mower }));
    return orWithout([...belly, ...rear], needs.filter(mowing.serves), (mower) => ({ mower }));
  },
};

const cutting: Slot = {
  serves: (need) => need.capability === 'rotary-cutter',
  options(_candidate, needs, world) {
    const own = needs.filter(cutting.serves);
    return own.length === 0 ? [{}] : orWithout(toolsOf('rotary-cutter', world), own, (cutter) => ({ cutter }));
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

const slots: readonly Slot[] = [lifting, mowing, cutting, digging, shelter];

interface Standing {
  option: Option;
  judged: readonly Judged[];
  failedGates: number;
  openMusts: number;
  /** What may count against an option elsewhere: wishes not met, price, mass, width. */
  costs: readonly number[];
}

function standingOf(option: Option, candidate: Candidate, needs: readonly Need[], own: readonly Need[], world: World): Standing {
  const build = { ...candidate, ...option };
  const judged = own.flatMap((need): Judged[] => (isPriceNeed(need) ? [] : [{ need, verdict: judge(need, build, world) }]));
  const count = (of: (each: Judged) => boolean) => judged.filter(of).length;
  const additions = additionsOf(build, judged, needs);
  const { parts, missing } = massParts(build);
  return {
    option,
    judged,
    failedGates: count(isFailedGate),
    openMusts: count(isOpenMust),
    costs: [
      count(({ need, verdict }) => !need.must && verdict.outcome === 'failed'),
      count(({ need, verdict }) => !need.must && verdict.outcome === 'unknown'),
      costOf(additions, world.dealer),
      additions.filter(({ price }) => price === undefined).length,
      totalOf(parts),
      missing.length,
      build.mower?.kind === 'belly' ? build.mower.deck.part.width : 0,
      build.cab ? 1 : 0,
    ],
  };
}

/** Whether one option is nowhere worse than another, and somewhere better; of two alike the first by id. */
const beats = (a: Standing, b: Standing) =>
  a.costs.every((cost, index) => cost <= b.costs[index]!)
  && (a.costs.some((cost, index) => cost < b.costs[index]!) || byCodeUnit(keyOf(a.option), keyOf(b.option)) < 0);

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

/**
 * The options of a slot worth trying: those that meet its gates best, less those another beats in every
 * way that counts beyond the slot.
 */
function worthTrying(options: Option[], candidate: Candidate, needs: readonly Need[], slot: Slot, world: World): Option[] {
  if (options.length <= 1) return options;
  const own = needs.filter(slot.serves);
  const all = options.map((option) => standingOf(option, candidate, needs, own, world));
  const least = Math.min(...all.map(({ failedGates }) => failedGates));
  const fewest = Math.min(...all.filter(({ failedGates }) => failedGates === least).map(({ openMusts }) => openMusts));
  const top = all.filter(({ failedGates, openMusts }) => failedGates === least && openMusts === fewest);
  return top.filter((each) => !top.some((other) => other !== each && beats(other, each))).map(({ option }) => leavingOut(option, all));
}

/**
 * Every build of a candidate worth comparing: for each slot the options worth trying, in all combinations,
 * since mass, size and price add up across slots.
 */
export function buildsOf(candidate: Candidate, needs: readonly Need[], world: World): Build[] {
  return slots.reduce<Build[]>((builds, slot) => {
    const options = worthTrying(slot.options(candidate, needs, world), candidate, needs, slot, world);
    return builds.flatMap((build) => options.map((option) => joined(build, option)));
  }, [candidate]);
}
