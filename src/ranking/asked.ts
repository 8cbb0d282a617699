import type { ImplementKind } from '../catalogue/schema.ts';
import type { DemandOf, Need } from '../needs/need.ts';
import type { World } from './candidate.ts';
import { isMoneyNeed, isPriceNeed, type Judgeable, type MoneyNeed } from './judge.ts';
import type { Way } from './evaluate.ts';
import { demandOf, memoriesOf, type Memories } from './memories.ts';
import type { Scope, Tried } from './options.ts';
import { slotsFor, type Slot } from './slots.ts';

/** A place of a build, with the needs that what is chosen there settles. */
export interface Place {
  slot: Slot;
  own: readonly Judgeable[];
  /** Its options, as they were judged where the same was asked. */
  memories: Memories<readonly Tried[]>;
}

/** What is asked in one reckoning, with what of it is the same for every candidate. */
export interface Asked {
  world: World;
  needs: readonly Need[];
  money: readonly MoneyNeed[];
  price: (Need & DemandOf<'price'>) | undefined;
  /** All that is judged before money. */
  judged: readonly Judgeable[];
  places: readonly Place[];
  /** For each that is judged, where among the needs that places settle, one after the other, it is; -1 where no place settles it. */
  settledAt: readonly number[];
  /** Kinds of implement that more than one of the buyer's jobs may be done with. */
  sharedKinds: ReadonlySet<ImplementKind>;
  /** The ways to serve, as they were judged where the same was asked. */
  ways: Readonly<Record<Scope, Memories<readonly Way[]>>>;
}

const known = new WeakMap<World, WeakMap<readonly Need[], Asked>>();

function gather(needs: readonly Need[], world: World): Asked {
  const judged = needs.flatMap((need) => (isMoneyNeed(need) ? [] : [need]));
  const kinds = needs.flatMap((need) => (need.capability === 'implement' ? need.kinds : []));
  const shared = kinds.filter((kind, index) => kinds.indexOf(kind) < index);
  // What hangs behind in one place is weighed against the axles in any other.
  const besides = [...judged.filter(({ capability }) => capability === 'implement.axles').map(demandOf), ...shared];
  const places = slotsFor(needs).map((slot): Place => {
    const own = judged.filter(slot.serves);
    return { slot, own, memories: memoriesOf(world, [slot.name, ...own.map(demandOf), ...besides].join('\n')) };
  });
  const settled = places.flatMap(({ own }) => own);
  const demands = needs.map(demandOf).join('\n');
  return {
    world, needs, judged, places,
    money: needs.filter(isMoneyNeed),
    price: needs.find(isPriceNeed),
    settledAt: judged.map((need) => settled.indexOf(need)),
    sharedKinds: new Set(shared),
    ways: { 'all-wishes': memoriesOf(world, `all ways\n${demands}`), 'leaving-out': memoriesOf(world, `lean ways\n${demands}`) },
  };
}

/** The same for the same list of needs, gathered once. */
export function askedOf(needs: readonly Need[], world: World): Asked {
  const ofWorld = known.get(world) ?? new WeakMap<readonly Need[], Asked>();
  known.set(world, ofWorld);
  const asked = ofWorld.get(needs) ?? gather(needs, world);
  ofWorld.set(needs, asked);
  return asked;
}
