import type { TaskId } from '../answers/schema.ts';
import type { Deck } from '../catalogue/catalogue.ts';
import type { ImplementKind } from '../catalogue/schema.ts';
import type { ComfortWish, Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { joined, type Build, type Fitted, type Mower, type Option, type Tool } from './build.ts';
import { once } from './once.ts';
import { have, inYears, type Candidate, type Have, type World } from './candidate.ts';

/** A place of a build where there is a choice: the needs that depend on it, and what can be chosen. */
export interface Slot {
  name: string;
  /** What of its kind is on a unit stays there, whatever else is chosen. */
  replaces?: true;
  serves: (need: Need) => boolean;
  options: (candidate: Candidate, needs: readonly Need[], world: World) => Option[];
}

const isWish = (need: Need, ...wishes: ComfortWish[]) => need.capability === 'fitting' && wishes.includes(need.wish);

const obtainable = <T extends object>(part: T, state: Have): Fitted<T>[] => (state === 'never' ? [] : [once(part, state, () => ({ part, have: state }))]);

const idsOf = (needs: readonly Need[]) => needs.map(({ id }) => id);

/** What is only wished for may be left out, where it would cost a gate. */
function orWithout<T>(options: readonly T[], needs: readonly Need[], chosen: (each: T) => Option): Option[] {
  if (options.length === 0) return [{}];
  const all = options.map(chosen);
  return needs.some(({ must }) => must) ? all : [{ leftOut: idsOf(needs) }, ...all];
}

/** Implements of some kinds: the buyer's own, which cost him nothing more, and what the dealer sells. */
const toolsOf = (kinds: readonly ImplementKind[], { owned, implements: sold }: World): Tool[] => [
  ...owned.filter(({ kind }) => kind && kinds.includes(kind)).map((implement) => once(implement, 'owned', () => ({ implement, owned: true }))),
  ...sold.filter(({ kind }) => kinds.includes(kind)).map((implement) => once(implement, 'sold', () => ({ implement, owned: false }))),
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

const unlisted = {
  'pallet-forks': { implement: { kind: 'pallet-forks' }, owned: false },
  'bale-spear': { implement: { kind: 'bale-spear' }, owned: false },
  grapple: { implement: { kind: 'grapple' }, owned: false },
} as const;

/** What may hold a load on the loader: the implements there are, else one to be asked for. */
function holdersOf({ holder }: LiftNeed, world: World): Tool[] {
  if (holder === 'bucket') return [];
  const tools = toolsOf([holder], world);
  return tools.length > 0 ? tools : [unlisted[holder]];
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
  name: 'lifting',
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
    obtainable(deck, deckState(candidate, deck)).map((fitted) => once(fitted, midPto, (): Mower => ({ kind: 'belly', deck: fitted, midPto }))),
  );
}

const mowing: Slot = {
  name: 'mowing',
  replaces: true,
  serves: (need) => need.capability === 'mower' || need.capability === 'mower.hours' || isWish(need, 'mowerLiftAlone'),
  options(candidate, needs, world) {
    const need = needs.find((each) => each.capability === 'mower');
    if (need?.capability !== 'mower') return [{}];
    const belly = need.deck === 'rear' ? [] : bellyMowers(candidate, world);
    const rear = need.deck === 'belly' ? [] : toolsOf(['finish-mower'], world).map((mower) => once(mower, 'rear', (): Mower => ({ kind: 'rear', mower })));
    return orWithout([...belly, ...rear], needs.filter(mowing.serves), (mower) => ({ mower }));
  },
};

const digging: Slot = {
  name: 'digging',
  serves: (need) => need.capability === 'backhoe',
  options(candidate, needs, { asOfYear }) {
    const { backhoe } = candidate.machine;
    const said = have(candidate, 'backhoe', backhoe, asOfYear);
    // One that somebody has put on a machine of other years is no proof that it belongs there.
    const state = said === 'has' && inYears(candidate, backhoe?.years, asOfYear) !== 'inside' ? 'unknown' : said;
    const own = needs.filter(digging.serves);
    if (!backhoe || state === 'never' || (own.length === 0 && state !== 'has')) return [{}];
    const chosen = { backhoe: once(backhoe, state, () => ({ part: backhoe, have: state })) };
    return state === 'has' ? [chosen] : orWithout([chosen], own, (each) => each);
  },
};

const shelter: Slot = {
  name: 'shelter',
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

const ofTheTool: readonly Need['capability'][] = ['implement.pull', 'implement.hours', 'rotary-cutter.hours'];

/** A job with an implement behind: one of the kinds that do it. */
function working(need: WorkNeed): Slot {
  const task = need.task!;
  const kinds = need.capability === 'implement' ? need.kinds : (['rotary-cutter', 'flail-mower'] as const);
  const slot: Slot = {
    name: `working ${task}`,
    // The axles wait for the whole build: a loader in front weighs against what hangs behind.
    serves: (each) => each.task === task && (isWork(each) || ofTheTool.includes(each.capability)),
    options: (_candidate, needs, world) => orWithout(toolsOf(kinds, world), needs.filter(slot.serves), withTool(task)),
  };
  return slot;
}

/** The places of a build, by what is asked. */
export const slotsFor = (needs: readonly Need[]): readonly Slot[] => [lifting, mowing, ...needs.filter(isWork).map(working), digging, shelter];

/** Needs that hang on the machine itself, whatever is added to it. */
const ofTheMachine: readonly Need['capability'][] = [
  'rops', 'seat-belt', 'exhaust.intact', 'recall', 'drawbar', 'tow.mass', 'tow.pull', 'hitch.lift', 'transmission', 'slope.driven-wheels',
];

/**
 * Whether a failed gate could be met were some needs not asked: by another choice in a place they share, or
 * by a package that is lighter, cheaper or narrower without them. Sound, not sharp: where it says no, the
 * gate fails still.
 */
export function hangsOn(gate: Need, dropped: readonly Need[], places: readonly Slot[]): boolean {
  if (dropped.includes(gate)) return true;
  const own = places.filter(({ serves }) => serves(gate));
  return own.length === 0
    ? !ofTheMachine.includes(gate.capability)
    : own.some(({ serves }) => dropped.some(serves));
}
