import type { Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { additionsOf } from './additions.ts';
import type { Addition } from './addition.ts';
import { keyOf, type Build } from './build.ts';
import type { Unit } from '../catalogue/catalogue.ts';
import type { Candidate, World } from './candidate.ts';
import { isMoneyNeed, isPriceNeed, judge, type MoneyNeed } from './judge.ts';
import { buildsOf, choicesOf, isOfTheWhole, type Choice, type Scope } from './options.ts';
import { billOf, judgeMoney, moneyOutcome, packagePrice, withBill, type Bill, type PackagePrice } from './price.ts';
import { isFailedGate, isOpenGate, isOpenMust, type Judged } from './verdict.ts';

export type Standing = 'stands' | 'ask' | 'ruled-out';

/** A candidate in its best build: every need judged, what must be bought, what it costs. */
export interface Evaluation {
  build: Build;
  judged: readonly Judged[];
  additions: readonly Addition[];
  price: PackagePrice | undefined;
  standing: Standing;
}

/** Needs that are judged with all ballast on. */
const weighedLast: readonly Need['capability'][] = ['trailer.payload', 'trailer.tow-rating', 'trailer.tongue', 'gross-mass'];
const waitsForBallast = ({ capability }: Need) => weighedLast.includes(capability);

/** The heaviest ballast each end asks for. */
function ballastIn(judged: readonly (Judged | undefined)[]) {
  const heaviest = (what: Addition['what']) => Math.max(0, ...judged.flatMap((each) =>
    (each?.verdict.additions ?? []).flatMap((addition) => (addition.what === what ? [addition.mass ?? 0] : []))));
  return { rear: heaviest('rear-ballast'), front: heaviest('front-ballast') };
}

/** A build judged on all but money, which alone tells units apart that are otherwise alike. */
interface Made {
  build: Build;
  judged: readonly Judged[];
  additions: readonly Addition[];
  bill: Bill;
  failedGates: number;
  openMusts: number;
  openGates: number;
  wishesFailed: number;
  /** A must of the whole fails or is open: leaving out a wish might help. */
  hindered: boolean;
  key: string;
}

function made({ build, judged: settled }: Choice, needs: readonly Need[], world: World): Made {
  const verdicts = new Map(settled.map(({ need, verdict }) => [need, verdict]));
  const asked = needs.flatMap((need) => (isMoneyNeed(need) ? [] : [need]));
  const verdictOn = (need: (typeof asked)[number], on: Build): Judged =>
    ({ need, verdict: build.unmet?.[need.id] ?? verdicts.get(need) ?? judge(need, on, world) });
  const before = asked.map((need) => (waitsForBallast(need) ? undefined : verdictOn(need, build)));
  // What a trailer or the axles carry in all is known when all ballast is.
  const loaded = asked.some(waitsForBallast) ? { ...build, ballast: ballastIn(before) } : build;
  const judged = asked.map((need, index) => before[index] ?? verdictOn(need, loaded));
  const additions = additionsOf(build, judged, needs);
  const count = (of: (each: Judged) => boolean) => judged.filter(of).length;
  return {
    build, judged, additions, bill: billOf(additions, needs.find(isPriceNeed), world), key: keyOf(build),
    failedGates: count(isFailedGate), openMusts: count(isOpenMust), openGates: count(isOpenGate), wishesFailed: count(isFailedWish),
    hindered: judged.some((each) => (isFailedGate(each) || isOpenMust(each)) && isOfTheWhole(each.need, needs)),
  };
}

const isFailedWish = ({ need, verdict }: Judged) => !need.must && verdict.outcome === 'failed';

/** Every way to make candidates serve that are alike in all but price, year and hours. */
export interface Prepared {
  all: readonly Made[];
  /** The same with wishes left out, where that is asked for. */
  lean(): readonly Made[];
}

/** Judges a candidate on all but money. */
export function prepare(candidate: Candidate, needs: readonly Need[], world: World): Prepared {
  const choices = choicesOf(candidate, needs, world);
  const ways = (scope: Scope) => buildsOf(candidate, choices, scope).map((choice) => made(choice, needs, world));
  let lean: readonly Made[] | undefined;
  return { all: ways('all-wishes'), lean: () => (lean ??= ways('leaving-out')) };
}

/** A way chosen at a price, and how it stands. */
export interface Chosen {
  made: Made;
  standing: Standing;
  /** Lowest price of the package, or infinite where none is known. */
  low: number;
}

interface Counted extends Chosen {
  failedGates: number;
  openMusts: number;
  wishesFailed: number;
  moneyHinders: boolean;
}

function counted(each: Made, price: number | undefined, money: readonly MoneyNeed[], world: World): Counted {
  let { failedGates, openMusts, openGates, wishesFailed } = each;
  const before = failedGates + openMusts;
  const low = price === undefined ? undefined : withBill(price, each.bill);
  for (const need of money) {
    const outcome = moneyOutcome(need, low, each.bill, world);
    if (outcome === 'failed' && need.must) failedGates++;
    else if (outcome === 'failed') wishesFailed++;
    else if (outcome === 'unknown' && need.must) {
      openMusts++;
      openGates++;
    }
  }
  return {
    made: each, failedGates, openMusts, wishesFailed, low: low ?? Infinity, moneyHinders: failedGates + openMusts > before,
    standing: failedGates > 0 ? 'ruled-out' : openGates > 0 ? 'ask' : 'stands',
  };
}

/**
 * Fewer failed gates, fewer musts unknown, fewer wishes failed, then cheaper, then by id: never by chance. A
 * wish whose safety is unknown is not left out for that: it is asked about.
 */
const compare = (a: Counted, b: Counted) =>
  a.failedGates - b.failedGates || a.openMusts - b.openMusts || a.wishesFailed - b.wishesFailed
  || (a.low === b.low ? 0 : a.low - b.low) || byCodeUnit(a.made.key, b.made.key);

function best(ways: readonly Made[], price: number | undefined, money: readonly MoneyNeed[], world: World): Counted {
  const [first, ...others] = ways;
  let least = counted(first!, price, money, world);
  for (const each of others) {
    const other = counted(each, price, money, world);
    if (compare(other, least) < 0) least = other;
  }
  return least;
}

/**
 * The best way at a machine's own price. A wish that could be met is left out only where a must of the whole,
 * such as the price or the mass on the trailer, fails with it.
 */
export function choose(prepared: Prepared, price: number | undefined, money: readonly MoneyNeed[], world: World): Chosen {
  const whole = best(prepared.all, price, money, world);
  if (!whole.made.hindered && !whole.moneyHinders) return whole;
  const lean = best(prepared.lean(), price, money, world);
  return compare(lean, whole) < 0 ? lean : whole;
}

/** A chosen way of one candidate, with its verdicts on money. */
export function settle({ made: { build, judged, additions, bill }, standing }: Chosen, unit: Unit | undefined, money: readonly MoneyNeed[], world: World): Evaluation {
  const own = unit ? { ...build, unit } : build;
  const price = packagePrice(own, bill);
  return { build: own, judged: [...judged, ...money.map((need) => ({ need, verdict: judgeMoney(need, price, world) }))], additions, price, standing };
}

/** The machine's own price a choice goes by: a unit's, or the lowest typical one. */
export function ownPrice({ machine, unit }: Candidate): number | undefined {
  if (unit) return unit.price?.value;
  const typical = (machine.typicalPrices ?? []).map(({ price }) => price.value);
  return typical.length > 0 ? Math.min(...typical) : undefined;
}

/** The best way to make a candidate serve. */
export function evaluate(candidate: Candidate, needs: readonly Need[], world: World): Evaluation {
  const money = needs.filter(isMoneyNeed);
  return settle(choose(prepare(candidate, needs, world), ownPrice(candidate), money, world), candidate.unit, money, world);
}
