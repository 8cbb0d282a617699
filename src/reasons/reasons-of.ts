import type { Criterion } from '../answers/schema.ts';
import type { Unit } from '../catalogue/catalogue.ts';
import { hungFor } from '../ranking/build.ts';
import type { World } from '../ranking/candidate.ts';
import { onEdge, otherGenerations } from '../ranking/generations.ts';
import { clashesIn } from '../ranking/not-together.ts';
import type { Ranking, Weighed } from '../ranking/rank.ts';
import { boundOf } from '../ranking/relax.ts';
import type { Judged } from '../ranking/verdict.ts';
import type { Weights } from '../ranking/weights.ts';
import { atMost, byCodeUnit, toMillionth } from '../units/compare.ts';
import type { Reason } from './schema.ts';

type Figures = Reason['figures'];

/**
 * Open safety is told before musts, musts before wishes, then what only weighs; last what is settled, such
 * as an addition, which the package lists anyway.
 */
const ranks = { safety: 4, must: 3, wish: 2, weighs: 1, settled: 0 } as const;

/**
 * Needs of every machine or of every implement: met, they are no reason for this one. Weights they ask for
 * are told with what must be added.
 */
const everyones = ['rops', 'seat-belt', 'exhaust.intact', 'recall', 'implement.axles'];

/** The figures a need is told with. */
export function figuresOf({ verdict }: Judged): Figures {
  const { has, wants, unit, loan } = verdict;
  return {
    ...(has !== undefined && unit && { has: { value: has, unit } }),
    ...(wants !== undefined && unit && { wants: { value: wants, unit } }),
    ...(loan && {
      deposit: { value: loan.deposit, unit: 'money' }, months: { value: loan.months, unit: 'months' }, rate: { value: loan.rate, unit: 'annual-rate' },
    }),
  };
}

/** What the words of a need speak of besides its figures. */
export function aboutOf({ need, verdict }: Judged, build: Weighed['build']): Pick<Reason, 'about'> {
  const { unit } = build;
  const tool = need.capability === 'implement' ? hungFor(need.task!, build)?.implement : undefined;
  const about = {
    ...(tool && { id: tool.id ?? tool.kind! }),
    ...(verdict.by && { by: verdict.by }),
    ...(need.task && { task: need.task }),
    ...(need.capability === 'width' && { passage: need.passage }),
    ...(need.capability === 'price' && !unit && { typical: 'price' }),
  };
  return Object.keys(about).length > 0 ? { about } : {};
}

/** What a reason is about, and that it is a near miss, by the rule that says what is near. */
const withNear = ({ about }: Pick<Reason, 'about'>, near: boolean): Pick<Reason, 'about'> =>
  (near ? { about: { ...about, near: 'near-miss.share' } } : { ...(about && { about }) });

/** Whether a machine that stands misses a bound the buyer gave, and called no must, by a little. */
function isNear({ need, verdict: { outcome, has, wants } }: Judged, { standing, build }: Weighed, { book }: World): boolean {
  if (standing !== 'stands' || need.must || outcome !== 'failed' || has === undefined || !wants) return false;
  return boundOf(need) !== undefined && !build.leftOut?.includes(need.id) && atMost(Math.abs(has - wants) / wants, book.value('near-miss.share'));
}

function reasonOfNeed(judged: Judged, weighed: Weighed, { failing, world }: Ranking): Reason[] {
  const { build } = weighed;
  const { leftOut = [] } = build;
  const { need, verdict } = judged;
  const { outcome } = verdict;
  if (verdict.moot || (outcome === 'met' && everyones.includes(need.capability))) return [];
  const kind = outcome === 'met' ? 'for' : outcome === 'failed' ? 'against' : 'unknown';
  const base = need.safety ? (outcome === 'met' ? ranks.weighs : ranks.safety) : need.must ? ranks.must : ranks.wish;
  return [{
    id: outcome === 'failed' && leftOut.includes(need.id) ? 'wish.left-out' : `${need.capability}.${outcome}`,
    kind,
    need: need.id,
    // A need that rules out many decides more than one that all meet.
    weight: toMillionth(base + (failing.get(need.id) ?? 0)),
    figures: figuresOf(judged),
    ...withNear(aboutOf(judged, build), isNear(judged, weighed, world)),
    ...(verdict.workings.length > 0 && { working: [...verdict.workings] }),
    ...(verdict.missing && { missing: [...verdict.missing] }),
  }];
}

/** A figure estimated for want of a better one is said to be so, once. */
const reasonsOfEstimates = (judged: readonly Judged[]): Reason[] =>
  [...new Set(judged.flatMap(({ verdict }) => verdict.estimated ?? []))].map((spec) => ({
    id: 'figure.estimated', kind: 'unknown', weight: ranks.wish, figures: {}, missing: [spec],
  }));

const reasonOfAddition = ({ what, id, price, mass, for: needs }: Weighed['additions'][number]): Reason => ({
  id: `addition.${what}`,
  kind: 'against',
  ...(needs[0] && { need: needs[0] }),
  weight: ranks.settled,
  figures: {
    ...(price !== undefined && { price: { value: price, unit: 'money' } }),
    ...(mass !== undefined && { mass: { value: mass, unit: 'kg' } }),
  },
  ...(id !== undefined && { about: { id } }),
});

interface Part {
  criterion: Criterion;
  earned: number;
  lost: number;
}

/** The criterion that earns most of the score, and the one that costs most of it. */
function reasonsOfScore(weighed: Weighed, weights: Weights): Reason[] {
  const parts = Object.entries(weighed.values).map(([criterion, { value = 0 }]): Part => {
    const weight = weights[criterion as Criterion] ?? 0;
    return { criterion: criterion as Criterion, earned: weight * value, lost: weight * (1 - value) };
  }).sort((a, b) => byCodeUnit(a.criterion, b.criterion));
  const made = (part: Part, side: 'strong' | 'weak'): Reason => {
    const { figure, unit, anchors, missing, workings } = weighed.values[part.criterion]!;
    const unknownOne = weighed.values[part.criterion]!.value === undefined;
    return {
      id: unknownOne ? `criterion.${part.criterion}.unknown` : `criterion.${part.criterion}.${side}`,
      kind: unknownOne ? 'unknown' : side === 'strong' ? 'for' : 'against',
      criterion: part.criterion,
      weight: toMillionth(ranks.weighs + (side === 'strong' ? part.earned : part.lost)),
      figures: {
        ...(figure !== undefined && unit && { has: { value: figure, unit } }),
        ...(anchors && unit && { best: { value: anchors[0], unit }, worst: { value: anchors[1], unit } }),
      },
      ...(workings && { working: [...workings] }),
      ...(missing && { missing: [...missing] }),
    };
  };
  const [strong] = [...parts].sort((a, b) => b.earned - a.earned);
  // What helps most isn't also told as what costs most.
  const [weak] = parts.filter((part) => part !== strong || part.earned === 0).sort((a, b) => b.lost - a.lost);
  return [
    ...(strong && strong.earned > 0 ? [made(strong, 'strong')] : []),
    ...(weak && weak.lost > 0 ? [made(weak, 'weak')] : []),
  ];
}

/** What is known, or not known, of one unit besides the needs. */
function reasonsOfUnit(unit: Unit, weighed: Weighed, world: World): Reason[] {
  const note = (id: string, kind: Reason['kind'], about?: Record<string, string>): Reason => ({
    id, kind, weight: ranks.wish, figures: {}, ...(about && { about }),
  });
  const { machine } = weighed.build;
  const open = onEdge({ machine, unit }, world) || otherGenerations({ machine, unit }, world).length > 0;
  return [
    ...(unit.lienOpen === true ? [note('unit.lien-open', 'against')] : []),
    ...(unit.imported === true ? [note('unit.imported', 'caution')] : []),
    ...(unit.ptoShield === false ? [note('unit.pto-shield-missing', 'caution')] : []),
    ...(unit.meterVerified === false ? [note('unit.meter-unverified', 'unknown')] : []),
    ...(unit.status === 'held' ? [note('unit.held', 'against')] : []),
    ...(unit.serviceRecord === true ? [note('unit.service-record', 'for')] : []),
    ...(unit.serviceRecord === undefined ? [note('unit.service-record-unknown', 'unknown')] : []),
    ...(open ? [note('unit.generation-edge', 'unknown', { year: String(unit.year) })] : []),
  ];
}

const byDecision = (a: Reason, b: Reason) =>
  b.weight - a.weight || byCodeUnit(a.id, b.id) || byCodeUnit(a.need ?? '', b.need ?? '');

/**
 * Reasons for, against and unknown of one candidate, the decisive first. There is always one against or
 * unknown: at the least the criterion that costs it most, or that its condition is yet to be seen.
 */
export function reasonsOf(weighed: Weighed, ranking: Ranking): Reason[] {
  const { weights, world } = ranking;
  const { unit } = weighed.build;
  const reasons = [
    ...weighed.judged.flatMap((judged) => reasonOfNeed(judged, weighed, ranking)),
    ...reasonsOfEstimates(weighed.judged),
    ...weighed.additions.map(reasonOfAddition),
    ...clashesIn(weighed.build).map(([id = '', other = '']): Reason => ({
      id: 'parts.not-together', kind: 'against', weight: ranks.wish, figures: {}, about: { id, other },
    })),
    ...reasonsOfScore(weighed, weights),
    ...(unit
      ? reasonsOfUnit(unit, weighed, world)
      : [{ id: 'lot.typical-price', kind: 'unknown', weight: ranks.weighs, figures: {} } as const]),
    ...(weighed.standing === 'ruled-out' ? [] : [{
      id: weighed.standing === 'stands' ? 'standing.musts-met' : 'standing.none-failed', kind: 'for', weight: ranks.settled, figures: {},
    } as const]),
    { id: 'condition.unseen', kind: 'unknown', weight: ranks.settled, figures: {} } as const,
  ];
  return reasons.sort(byDecision);
}
