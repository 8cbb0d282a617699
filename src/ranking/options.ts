import type { Deck, Implement } from '../catalogue/catalogue.ts';
import type { ComfortWish, Need } from '../needs/need.ts';
import type { Build, Fitted, Mower, Tool } from './build.ts';
import { have, type Candidate, type Have, type World } from './candidate.ts';
import { isPriceNeed, judge } from './judge.ts';

const isWish = (need: Need, ...wishes: ComfortWish[]) => need.capability === 'fitting' && wishes.includes(need.wish);

/** The places of a build where there is a choice, and the needs that depend on that choice. */
const slots = {
  lifting: (need: Need) => need.capability.startsWith('loader.') || isWish(need, 'loaderOff', 'levelLift'),
  mowing: (need: Need) => need.capability === 'mower' || need.capability === 'mower.hours' || isWish(need, 'mowerLiftAlone'),
  cutting: (need: Need) => need.capability === 'rotary-cutter',
  digging: (need: Need) => need.capability === 'backhoe',
  shelter: (need: Need) => need.capability === 'cab',
} as const;

type Slot = keyof typeof slots;
type Option = Partial<Build>;

const wantsAny = (needs: readonly Need[], slot: Slot) => needs.some(slots[slot]);

const obtainable = <T>(part: T, state: Have): Fitted<T>[] => (state === 'never' ? [] : [{ part, have: state }]);

/** Implements of a kind: the buyer's own, which cost him nothing more, and what the dealer sells. */
const toolsOf = (kind: Implement['kind'], { owned, implements: sold }: World): Tool[] => [
  ...owned.filter((each) => each.kind === kind).map((implement) => ({ implement, owned: true })),
  ...sold.filter((each) => each.kind === kind).map((implement) => ({ implement, owned: false })),
];

const orNone = <T>(options: readonly T[]): (T | undefined)[] => (options.length > 0 ? [...options] : [undefined]);

function loadersOf(candidate: Candidate, { asOfYear }: World): Fitted<NonNullable<Build['loader']>['part']>[] {
  const { machine, unit } = candidate;
  return (machine.loaders ?? []).flatMap((loader) => {
    if (unit?.fitted?.loader === true) {
      const one = unit.loader ?? (machine.loaders!.length === 1 ? loader.id : undefined);
      return one === undefined ? [{ part: loader, have: 'unknown' as const }] : one === loader.id ? [{ part: loader, have: 'has' as const }] : [];
    }
    return obtainable(loader, have(candidate, 'loader', loader, asOfYear));
  });
}

function liftingOptions(candidate: Candidate, needs: readonly Need[], world: World): Option[] {
  const holds = (holder: string) => needs.some((need) => need.capability === 'loader.lift' && need.holder === holder);
  const wanted = wantsAny(needs, 'lifting');
  const all = loadersOf(candidate, world);
  // A loader nobody asked for is taken along where it is on the machine, and never bought.
  const loaders = wanted ? all : all.filter(({ have: state }) => state === 'has').slice(0, 1);
  return orNone(loaders).flatMap((loader) =>
    orNone(holds('pallet-forks') ? toolsOf('pallet-forks', world) : []).flatMap((forks) =>
      orNone(holds('bale-spear') ? toolsOf('bale-spear', world) : []).map((spear) => ({
        ...(loader && { loader }), ...(forks && { forks }), ...(spear && { spear }),
      })),
    ),
  );
}

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

function mowingOptions(candidate: Candidate, needs: readonly Need[], world: World): Option[] {
  const need = needs.find((each) => each.capability === 'mower');
  if (need?.capability !== 'mower') return [{}];
  const belly = need.deck === 'rear' ? [] : bellyMowers(candidate, world);
  const rear = need.deck === 'belly' ? [] : toolsOf('finish-mower', world).map((mower): Mower => ({ kind: 'rear', mower }));
  return orNone([...belly, ...rear]).map((mower) => (mower ? { mower } : {}));
}

const cuttingOptions = (needs: readonly Need[], world: World): Option[] =>
  orNone(wantsAny(needs, 'cutting') ? toolsOf('rotary-cutter', world) : []).map((cutter) => (cutter ? { cutter } : {}));

function diggingOptions(candidate: Candidate, needs: readonly Need[], { asOfYear }: World): Option[] {
  const { backhoe } = candidate.machine;
  const state = have(candidate, 'backhoe', backhoe, asOfYear);
  const wanted = wantsAny(needs, 'digging') || state === 'has';
  return backhoe && wanted && state !== 'never' ? [{ backhoe: { part: backhoe, have: state } }] : [{}];
}

function shelterOptions(candidate: Candidate, needs: readonly Need[], { asOfYear }: World): Option[] {
  const { machine, unit } = candidate;
  const need = needs.find((each) => each.capability === 'cab');
  const fits = (machine.cabs ?? []).flatMap((cab) => {
    if (unit?.fitted?.cab === true && unit.cab !== undefined) return unit.cab === cab.id ? [{ part: cab, have: 'has' as const }] : [];
    return obtainable(cab, have(candidate, 'cab', cab, asOfYear));
  });
  const onIt = fits.filter(({ have: state }) => state === 'has');
  if (onIt.length > 0) return onIt.map((cab) => ({ cab }));
  if (need?.capability !== 'cab') return [{}];
  const serving = fits.filter(({ part }) => (!need.heat || part.heat) && (!need.airConditioning || part.airConditioning));
  const cabs = serving.map((cab) => ({ cab }));
  return need.must && cabs.length > 0 ? cabs : [{}, ...cabs];
}

/** How an option stands to the needs of its own slot: fewer failures first, then fewer unknowns. */
function standing(option: Option, candidate: Candidate, slot: Slot, needs: readonly Need[], world: World) {
  const own = needs.filter(slots[slot]);
  const outcomes = own.flatMap((need) => (isPriceNeed(need) ? [] : [{ need, ...judge(need, { ...candidate, ...option }, world) }]));
  const count = (outcome: string, must: boolean) => outcomes.filter((each) => each.outcome === outcome && each.need.must === must).length;
  return [count('failed', true), count('unknown', true), count('failed', false), count('unknown', false)] as const;
}

/** The options of a slot that stand best; among them price, mass and size decide later. */
function best(options: Option[], candidate: Candidate, slot: Slot, needs: readonly Need[], world: World): Option[] {
  if (options.length <= 1) return options;
  const standings = options.map((option) => standing(option, candidate, slot, needs, world));
  const key = (each: readonly number[]) => each.map((count) => String(count).padStart(2, '0')).join();
  const least = standings.map(key).sort()[0];
  return options.filter((_, index) => key(standings[index]!) === least);
}

/**
 * Every build of a candidate worth comparing: for each slot the options that serve its needs best, in
 * all combinations, since mass, size and price add up across slots.
 */
export function buildsOf(candidate: Candidate, needs: readonly Need[], world: World): Build[] {
  const choices = [
    best(liftingOptions(candidate, needs, world), candidate, 'lifting', needs, world),
    best(mowingOptions(candidate, needs, world), candidate, 'mowing', needs, world),
    best(cuttingOptions(needs, world), candidate, 'cutting', needs, world),
    diggingOptions(candidate, needs, world),
    best(shelterOptions(candidate, needs, world), candidate, 'shelter', needs, world),
  ];
  return choices.reduce<Build[]>(
    (builds, options) => builds.flatMap((build) => options.map((option) => ({ ...build, ...option }))),
    [candidate],
  );
}
