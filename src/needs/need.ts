import type { TaskId, comfortWishes } from '../answers/schema.ts';
import type { ImplementKind } from '../catalogue/schema.ts';
import type { FigureId, RuleId } from '../trade/book.ts';
import type { Working } from '../trade/working.ts';
import type { Quantity } from '../units/quantity.ts';

type Length = Quantity<'length'>;
type Mass = Quantity<'mass'>;

/** What holds a load on the loader. */
export type Holder = 'pallet-forks' | 'bale-spear' | 'grapple' | 'bucket';
export type Growth = 'grass' | 'brush';
export type Obstacles = 'open' | 'some' | 'many';
export type Passage = 'gate' | 'door';
export type Ground = 'firm' | 'soft' | 'wet';
export type Soil = 'clay' | 'loam' | 'sand';

/** A load on the loader: what holds it, what it weighs, its centre ahead of the pins. */
export interface Lift {
  task: TaskId;
  holder: Holder;
  /** Absent for a bucket: it takes as much of the material as it holds and the loader lifts. */
  load?: Mass;
  /** Density of what a bucket takes. */
  bulk?: Quantity<'density'>;
  loadAhead: Length;
}

/** A load with a weight of its own. */
export type WeighedLift = Lift & { load: Mass };

/** What is asked of a machine, by the capability that answers it. */
export type Demand =
  | { capability: 'loader.any' }
  | ({ capability: 'loader.lift' } & WeighedLift)
  | { capability: 'loader.height'; atLeast: Length }
  | ({ capability: 'loader.rear-axle' } & Lift)
  | { capability: 'loader.loose'; bulk: Quantity<'density'>; volume: Quantity<'volume'> }
  | { capability: 'third-function' }
  | { capability: 'mower'; deck: 'belly' | 'rear' | 'either' }
  | { capability: 'mower.hours'; area: Quantity<'area'>; atMost?: Quantity<'time'>; obstacles: Obstacles }
  | { capability: 'rotary-cutter'; growth: Growth }
  | { capability: 'rotary-cutter.hours'; area: Quantity<'area'> }
  | { capability: 'backhoe'; atLeast?: Length }
  /** An implement of one of these kinds, and a machine that turns, carries and holds it. */
  | { capability: 'implement'; kinds: readonly ImplementKind[]; capacity?: Length }
  /** With the implement of the task lifted, the front axle still steers and the rear one isn't overloaded. */
  | { capability: 'implement.axles' }
  /** With all that it carries at work it weighs no more than it may. */
  | { capability: 'gross-mass'; lifts: readonly Lift[]; carried: Mass | undefined }
  /** Power at the PTO for something towed. */
  | { capability: 'pto.power'; power: FigureId }
  | { capability: 'implement.pull'; ground: Ground; soil: Soil }
  | { capability: 'implement.hours'; area: Quantity<'area'> }
  | { capability: 'drawbar' }
  | { capability: 'tow.mass'; towed: Mass; braked: boolean }
  | { capability: 'tow.pull'; towed: Mass; grade: number; ground: Ground }
  | { capability: 'tyres'; ground: Ground | undefined; lawn: boolean }
  | { capability: 'ground-pressure'; bears: 'turf' | 'soft' | 'wet' }
  | { capability: 'hitch.lift'; load: Mass; behind: Length }
  | { capability: 'hitch.front-axle'; load: Mass; behind: Length }
  | { capability: 'width'; passage: Passage; atMost: Length }
  | { capability: 'height.stored'; atMost: Length }
  | { capability: 'height.working'; atMost: Length }
  | { capability: 'length'; atMost: Length }
  | { capability: 'trailer.payload'; atMost: Mass }
  | { capability: 'trailer.tow-rating'; atMost: Mass; trailer: Mass }
  | { capability: 'trailer.tongue'; atMost: Mass; trailer: Mass }
  | { capability: 'trailer.deck-width'; atMost: Length }
  | { capability: 'trailer.deck-length'; atMost: Length }
  | { capability: 'price'; atMost: number; currency: string; includes?: readonly string[]; delivery?: Length }
  | { capability: 'instalment'; atMost: number; currency: string }
  | { capability: 'serviced' }
  | { capability: 'noise'; day: Quantity<'time'> }
  | { capability: 'vibration'; day: Quantity<'time'> }
  | { capability: 'cab'; heat: boolean; airConditioning: boolean }
  | { capability: 'transmission'; kinds: readonly string[] }
  | { capability: 'fitting'; wish: ComfortWish }
  | { capability: 'rops' }
  | { capability: 'seat-belt' }
  | { capability: 'exhaust.intact' }
  | { capability: 'recall' }
  | { capability: 'slope.tip-angle'; slope: Quantity<'angle'>; carried: Length; lifts: readonly Lift[] }
  | { capability: 'slope.driven-wheels' };

export type Capability = Demand['capability'];
export type DemandOf<C extends Capability> = Extract<Demand, { capability: C }>;
export type ComfortWish = (typeof comfortWishes)[number];

/** What the answers demand of a machine, and the sum that led to it. */
export type Need = Demand & {
  /** Unique in a reckoning, dotted: the task or theme, then what is asked. */
  id: string;
  /** Rules out where it fails: physics, safety, or the buyer's "must". Otherwise it only weighs. */
  must: boolean;
  /**
   * Never relaxed, never bought back. Of a job only wished for it doesn't rule out where it fails, for the
   * job is then not done with this machine; but unknown it still has to be asked about.
   */
  safety: boolean;
  task?: TaskId;
  /** Paths of the answers it comes from. */
  from: readonly string[];
  /** The rule it rests on, where it is one of ours. */
  rule?: RuleId;
  working: readonly Working[];
};

/** Something the buyer left unsaid, or a slope, because of which tasks don't count as cleared. */
export interface NotCleared {
  id: 'slope.unsaid' | 'slope.steep-unsaid' | 'slope.over-limit' | 'drivers.unsaid' | 'overhead.unsaid' | 'wagon.unsaid';
  tasks: readonly TaskId[];
  from: readonly string[];
  rule?: RuleId;
}
