import type { Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { additionsOf } from './additions.ts';
import type { Addition } from './addition.ts';
import { keyOf, type Build } from './build.ts';
import type { Candidate, World } from './candidate.ts';
import { isMoneyNeed, isPriceNeed, judge } from './judge.ts';
import { buildsOf, choicesOf, isOfTheWhole, type Choice, type Scope } from './options.ts';
import { judgeMoney, packagePrice, type PackagePrice } from './price.ts';
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

const isHauled = ({ capability }: Need) => capability === 'trailer.payload' || capability === 'trailer.tow-rating' || capability === 'trailer.tongue';

/** The heaviest ballast each end asks for. */
function ballastIn(judged: readonly (Judged | undefined)[]) {
  const heaviest = (what: Addition['what']) => Math.max(0, ...judged.flatMap((each) =>
    (each?.verdict.additions ?? []).flatMap((addition) => (addition.what === what ? [addition.mass ?? 0] : []))));
  return { rear: heaviest('rear-ballast'), front: heaviest('front-ballast') };
}

function evaluateBuild({ build, judged: settled }: Choice, needs: readonly Need[], world: World): Evaluation {
  const verdicts = new Map(settled.map(({ need, verdict }) => [need, verdict]));
  const asked = needs.flatMap((need) => (isMoneyNeed(need) ? [] : [need]));
  const verdictOn = (need: (typeof asked)[number], on: Build): Judged =>
    ({ need, verdict: build.unmet?.[need.id] ?? verdicts.get(need) ?? judge(need, on, world) });
  const before = asked.map((need) => (isHauled(need) ? undefined : verdictOn(need, build)));
  // What a trailer carries is known when all ballast is: it travels along.
  const loaded = asked.some(isHauled) ? { ...build, ballast: ballastIn(before) } : build;
  const physical = asked.map((need, index) => before[index] ?? verdictOn(need, loaded));
  const additions = additionsOf(build, physical, needs);
  const limit = needs.find(isPriceNeed);
  const price = packagePrice(build, additions, limit, world);
  const judged = [...physical, ...needs.filter(isMoneyNeed).map((need) => ({ need, verdict: judgeMoney(need, price, world) }))];
  const standing = judged.some(isFailedGate) ? 'ruled-out' : judged.some(isOpenGate) ? 'ask' : 'stands';
  return { build, judged, additions, price, standing };
}

/**
 * Fewer failed gates, fewer musts unknown, fewer wishes failed, then cheaper, then by id: never by chance. A
 * wish whose safety is unknown is not left out for that: it is asked about.
 */
function compare(a: Evaluation, b: Evaluation): number {
  const wishes = ({ judged }: Evaluation) => judged.filter(({ need, verdict }) => !need.must && verdict.outcome === 'failed').length;
  const gates = ({ judged }: Evaluation, of: (each: Judged) => boolean) => judged.filter(of).length;
  const low = ({ price }: Evaluation) => price?.low ?? Infinity;
  return gates(a, isFailedGate) - gates(b, isFailedGate)
    || gates(a, isOpenMust) - gates(b, isOpenMust)
    || wishes(a) - wishes(b)
    || (low(a) === low(b) ? 0 : low(a) - low(b))
    || byCodeUnit(keyOf(a.build), keyOf(b.build));
}

/**
 * The best way to make a candidate serve. A wish that could be met is left out only where a must of the
 * whole, such as its price or its mass on the trailer, fails with it.
 */
export function evaluate(candidate: Candidate, needs: readonly Need[], world: World): Evaluation {
  const choices = choicesOf(candidate, needs, world);
  const best = (scope: Scope) => buildsOf(candidate, choices, scope).map((choice) => evaluateBuild(choice, needs, world)).sort(compare)[0]!;
  const whole = best('all-wishes');
  const hinders = (judged: Judged) => (isFailedGate(judged) || isOpenMust(judged)) && isOfTheWhole(judged.need, needs);
  if (!whole.judged.some(hinders)) return whole;
  const lean = best('leaving-out');
  return compare(lean, whole) < 0 ? lean : whole;
}
