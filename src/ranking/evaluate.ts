import type { Need } from '../needs/need.ts';
import { byCodeUnit } from '../units/compare.ts';
import { additionsOf } from './additions.ts';
import type { Addition, Build } from './build.ts';
import type { Candidate, World } from './candidate.ts';
import { isPriceNeed, judge } from './judge.ts';
import { buildsOf } from './options.ts';
import { judgePrice, packagePrice, type PackagePrice } from './price.ts';
import type { Judged } from './verdict.ts';

export type Standing = 'stands' | 'ask' | 'ruled-out';

/** A candidate in its best build: every need judged, what must be bought, what it costs. */
export interface Evaluation {
  build: Build;
  judged: readonly Judged[];
  additions: readonly Addition[];
  price: PackagePrice | undefined;
  standing: Standing;
}

const gates = (judged: readonly Judged[], outcome: string) =>
  judged.filter(({ need, verdict }) => need.must && verdict.outcome === outcome);

function evaluateBuild(build: Build, needs: readonly Need[], world: World): Evaluation {
  const physical = needs.flatMap((need) => (isPriceNeed(need) ? [] : [{ need, verdict: judge(need, build, world) }]));
  const additions = additionsOf(build, physical, needs);
  const limit = needs.find(isPriceNeed);
  const price = packagePrice(build, additions, limit, world);
  const judged = limit ? [...physical, { need: limit, verdict: judgePrice(limit, price, world) }] : physical;
  const standing = gates(judged, 'failed').length > 0 ? 'ruled-out' : gates(judged, 'unknown').length > 0 ? 'ask' : 'stands';
  return { build, judged, additions, price, standing };
}

/** Fewer failed gates, fewer unknown ones, more wishes met, then cheaper, then by id: never by chance. */
function compare(a: Evaluation, b: Evaluation): number {
  const wishes = ({ judged }: Evaluation) => judged.filter(({ need, verdict }) => !need.must && verdict.outcome !== 'met').length;
  const key = ({ build }: Evaluation) =>
    [build.loader?.part.id, build.mower?.kind === 'belly' ? build.mower.deck.part.id : build.mower?.mower.implement.id, build.cab?.part.id, build.cutter?.implement.id, build.forks?.implement.id, build.spear?.implement.id].join(' ');
  return gates(a.judged, 'failed').length - gates(b.judged, 'failed').length
    || gates(a.judged, 'unknown').length - gates(b.judged, 'unknown').length
    || wishes(a) - wishes(b)
    || (a.price?.low ?? Infinity) - (b.price?.low ?? Infinity) || 0
    || byCodeUnit(key(a), key(b));
}

/** The best way to make a candidate serve. */
export function evaluate(candidate: Candidate, needs: readonly Need[], world: World): Evaluation {
  return buildsOf(candidate, needs, world).map((build) => evaluateBuild(build, needs, world)).sort(compare)[0]!;
}
