import type { Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { heaviest, type Addition } from './addition.ts';
import { additionsOf } from './additions.ts';
import { askedOf, type Asked } from './asked.ts';
import { keyOf, type Build } from './build.ts';
import type { Candidate, World } from './candidate.ts';
import { judge, type Judgeable } from './judge.ts';
import { choicesOf, combinationsOf, type Choice, type Scope } from './options.ts';
import { agreedOn, asOf, otherGenerations } from './generations.ts';
import { byPrice, type Standing } from './order.ts';
import { billOf, costOf, judgeMoney, ownPrices, packagePrice, withBill, type Bill, type PackagePrice } from './price.ts';
import { remembered } from './remember.ts';
import { isFailedGate, isFailedWish, isOpenGate, isOpenMust, type Judged, type Verdict } from './verdict.ts';

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
function ballastIn(verdicts: readonly (Verdict | undefined)[]) {
  const additions = verdicts.flatMap((each) => each?.additions ?? []);
  return { rear: heaviest(additions, 'rear-ballast'), front: heaviest(additions, 'front-ballast') };
}

/** A way to make a candidate serve, judged on all but money, which alone tells units apart that are otherwise alike. */
export interface Way {
  /** Without the unit: it may be that of any that is read alike. */
  build: Omit<Build, 'unit'>;
  /** On all that is judged before money, in its order. */
  verdicts: readonly Verdict[];
  additions: readonly Addition[];
  bill: Bill;
  /** What is added costs, whether or not the buyer's limit is to include it. */
  cost: number;
  failedGates: number;
  openMusts: number;
  openGates: number;
  wishesFailed: number;
  /** A must of the whole fails or is open: leaving out a wish might help. */
  hindered: boolean;
  key: string;
}

function wayOf({ option: { unmet, ...option }, verdicts: settled }: Choice, candidate: Candidate, asked: Asked): Way {
  const { world, needs, judged: judgeables, price, settledAt } = asked;
  const build: Build = { ...candidate, ...option };
  const verdictOn = (need: Judgeable, index: number, on: Build): Verdict => unmet?.[need.id] ?? settled[settledAt[index]!] ?? judge(need, on, world);
  const before = judgeables.map((need, index) => (waitsForBallast(need) ? undefined : verdictOn(need, index, build)));
  // What a trailer or the axles carry in all is known when all ballast is.
  const loaded = before.includes(undefined) ? { ...build, ballast: ballastIn(before) } : build;
  const verdicts = judgeables.map((need, index) => before[index] ?? verdictOn(need, index, loaded));
  const additions = additionsOf(build, verdicts, needs);
  const way = {
    build: { machine: candidate.machine, ...option, ...(unmet && { unmet }) }, verdicts, additions, bill: billOf(additions, price, world), cost: costOf(additions, world.dealer), key: keyOf(option),
    failedGates: 0, openMusts: 0, openGates: 0, wishesFailed: 0, hindered: false,
  };
  for (const [index, need] of judgeables.entries()) {
    const each = { need, verdict: verdicts[index]! };
    if (isFailedGate(each)) way.failedGates++;
    if (isOpenMust(each)) way.openMusts++;
    if (isOpenGate(each)) way.openGates++;
    // A job gone without is one wish failed, though it is told of each of its demands what came nearest.
    if (isFailedWish({ need, verdict: settled[settledAt[index]!] ?? each.verdict })) way.wishesFailed++;
    if ((isFailedGate(each) || isOpenMust(each)) && settledAt[index]! < 0) way.hindered = true;
  }
  return way;
}

/** Every way worth comparing to make a candidate serve; the same list for all that are read alike. */
const waysOf = (candidate: Candidate, asked: Asked, scope: Scope): readonly Way[] =>
  remembered(asked.ways[scope](candidate.machine), candidate, (read) =>
    combinationsOf(choicesOf(read, asked), asked, scope).map((choice) => wayOf(choice, read, asked)));

/** A way chosen at a price, and how it stands. */
export interface Chosen {
  way: Way;
  standing: Standing;
  /** Lowest price of the package, or infinite where none is known. */
  low: number;
  /** How it would serve as each other generation it may be of; absent where its generation is settled. */
  asOthers?: readonly Chosen[];
}

interface Counted extends Chosen {
  failedGates: number;
  openMusts: number;
  wishesFailed: number;
  moneyHinders: boolean;
}

function counted(way: Way, price: number | undefined, { money, world }: Asked): Counted {
  let { failedGates, openMusts, openGates, wishesFailed } = way;
  const before = failedGates + openMusts;
  const low = price === undefined ? undefined : withBill(price, way.bill);
  for (const need of money) {
    const { outcome } = judgeMoney(need, low, way.bill, world);
    if (outcome === 'failed' && need.must) failedGates++;
    else if (outcome === 'failed') wishesFailed++;
    else if (outcome === 'unknown' && need.must) {
      openMusts++;
      openGates++;
    }
  }
  return {
    way, failedGates, openMusts, wishesFailed, low: low ?? Infinity, moneyHinders: failedGates + openMusts > before,
    standing: failedGates > 0 ? 'ruled-out' : openGates > 0 ? 'ask' : 'stands',
  };
}

/**
 * Fewer failed gates, fewer musts unknown, fewer wishes failed, then cheaper by the buyer's limit and in all,
 * then by id: never by chance. A wish whose safety is unknown is not left out for that: it is asked about.
 */
const compare = (a: Counted, b: Counted) =>
  a.failedGates - b.failedGates || a.openMusts - b.openMusts || a.wishesFailed - b.wishesFailed
  || byPrice(a.low, b.low) || a.way.cost - b.way.cost || byCodeUnit(a.way.key, b.way.key);

function best(ways: readonly Way[], price: number | undefined, asked: Asked): Counted {
  const [first, ...others] = ways;
  let least = counted(first!, price, asked);
  for (const each of others) {
    const other = counted(each, price, asked);
    if (compare(other, least) < 0) least = other;
  }
  return least;
}

/** Every way a candidate has, by its own price and at any other. */
export interface Prepared {
  all: readonly Way[];
  lean: () => readonly Way[];
  /** The same of each other generation it may be of. */
  asOthers: readonly Prepared[];
}

const prepareAlone = (candidate: Candidate, asked: Asked): Prepared =>
  ({ all: waysOf(candidate, asked, 'all-wishes'), lean: () => waysOf(candidate, asked, 'leaving-out'), asOthers: [] });

/** Judges a candidate on all but money. */
export const prepare = (candidate: Candidate, asked: Asked): Prepared => ({
  ...prepareAlone(candidate, asked),
  asOthers: otherGenerations(candidate, asked.world).map((machine) => prepareAlone(asOf(machine, candidate.unit!), asked)),
});

/** Every need on a chosen way, money last. */
function judgedOn({ way: { build, verdicts, bill }, low, asOthers = [] }: Chosen, asked: Asked): readonly Judged[] {
  const { judged, money, world } = asked;
  const own = [
    ...judged.map((need, index): Judged => ({ need, verdict: verdicts[index]! })),
    ...money.map((need): Judged => ({ need, verdict: judgeMoney(need, low === Infinity ? undefined : low, bill, world) })),
  ];
  if (asOthers.length === 0) return own;
  const others = asOthers.map((other) => ({ of: judgedOn(other, asked), leftOut: other.way.build.leftOut ?? [] }));
  return own.map((each, index) => {
    const { id } = each.need;
    // What is left out for the sake of a must says nothing of what could be had.
    return build.leftOut?.includes(id) ? each : agreedOn(each, others.flatMap(({ of, leftOut }) => (leftOut.includes(id) ? [] : [of[index]!.verdict])));
  });
}

const standingOf = (judged: readonly Judged[]): Standing => (judged.some(isFailedGate) ? 'ruled-out' : judged.some(isOpenGate) ? 'ask' : 'stands');

/** The best way at a price, of the generation a candidate is listed in and of each other it may be of. */
export function choose({ asOthers, ...own }: Prepared, price: number | undefined, asked: Asked): Chosen {
  const chosen = chooseAlone(own, price, asked);
  if (asOthers.length === 0) return chosen;
  const all = { ...chosen, asOthers: asOthers.map((other) => chooseAlone(other, price, asked)) };
  return { ...all, standing: standingOf(judgedOn(all, asked)) };
}

/**
 * The best way at a machine's own price. A wish that could be met is left out only where a must of the whole,
 * such as the price or the mass on the trailer, fails with it.
 */
function chooseAlone({ all, lean }: Omit<Prepared, 'asOthers'>, price: number | undefined, asked: Asked): Chosen {
  const whole = best(all, price, asked);
  if (!whole.way.hindered && !whole.moneyHinders) return whole;
  const other = best(lean(), price, asked);
  return compare(other, whole) < 0 ? other : whole;
}

/** A chosen way of one candidate, with its verdicts on money. */
export function settle(chosen: Chosen, { unit }: Pick<Candidate, 'unit'>, asked: Asked): Evaluation {
  const { way: { build, additions, bill }, standing } = chosen;
  const own: Build = unit ? { ...build, unit } : build;
  return { build: own, additions, price: packagePrice(own, bill), standing, judged: judgedOn(chosen, asked) };
}

/** The best way to make a candidate serve. */
export function evaluate(candidate: Candidate, needs: readonly Need[], world: World): Evaluation {
  const asked = askedOf(needs, world);
  return settle(choose(prepare(candidate, asked), ownPrices(candidate)?.[0], asked), candidate, asked);
}
