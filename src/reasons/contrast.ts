import { criteria, type Criterion } from '../answers/schema.ts';
import type { Need } from '../needs/need.ts';
import type { Placed, Ranking, Weighed } from '../ranking/rank.ts';
import { steps, type Place } from '../ranking/order.ts';
import { isFailedGate, isOpenGate, type Judged } from '../ranking/verdict.ts';
import { byCodeUnit, toMillionth } from '../units/compare.ts';
import { aboutOf, figuresOf } from './reasons-of.ts';
import type { Contrast, CriterionState, NeedState } from './schema.ts';

/** One of the two that are compared: a machine as the shortlist places it, or a unit. */
export interface Side {
  id: string;
  weighed: Weighed;
}

/** A machine that is ruled out is told in general, as the shortlist tells it, and not by one unit of it. */
export const sideOf = ({ machine, standing, best, inGeneral }: Placed): Side =>
  ({ id: machine.id, weighed: standing === 'ruled-out' ? inGeneral : best });

const outcomes = { met: 0, unknown: 1, failed: 2 } as const;

/** How a gate stands; a wish that isn't safe is left undone and shuts nothing. */
const gateOutcome = (judged: Judged) => (isFailedGate(judged) ? 'failed' : isOpenGate(judged) ? 'unknown' : 'met');

function needState(judged: Judged, { weighed: { build } }: Side): NeedState {
  const { outcome, missing, moot } = judged.verdict;
  return {
    outcome, figures: figuresOf(judged), ...aboutOf(judged, build), ...(missing && { missing: [...missing] }), ...(moot && { moot }),
  };
}

function criterionState({ weighed: { values } }: Side, criterion: Criterion, weight: number): CriterionState {
  const { value, figure, unit, anchors, missing } = values[criterion]!;
  return {
    points: toMillionth(weight * (value ?? 0)),
    ...(value !== undefined && { value: toMillionth(value) }),
    ...(figure !== undefined && { figure }),
    ...(unit && { unit }),
    ...(anchors && { anchors: [...anchors] as [number, number] }),
    ...(missing && missing.length > 0 && { missing: [...missing] }),
  };
}

/** Which of the two stands above, and by which step of the order. */
function order([a, b]: readonly [Side, Side]): Pick<Contrast, 'above' | 'by'> {
  const placeOf = ({ id, weighed: { standing, score, price } }: Side): Place => ({ id, standing, score, low: price?.low ?? Infinity });
  const [one, other] = [placeOf(a), placeOf(b)];
  const by = (Object.keys(steps) as (keyof typeof steps)[]).find((step) => steps[step](one, other) !== 0)!;
  return { above: steps[by](one, other) < 0 ? a.id : b.id, by };
}

/** The fewest differences whose vanishing brings the lower level with the upper. */
function fewestToLevel(gaps: readonly Contrast['criteria'][number][], upper: Side, lower: Side): Criterion[] {
  let behind = toMillionth(upper.weighed.score - lower.weighed.score);
  // Points are rounded one by one, so their sum may miss the score by a millionth each.
  const rounding = 1e-6 * criteria.length;
  return gaps.filter(({ favours }) => favours === upper.id).flatMap(({ criterion, points }) => {
    if (behind <= rounding) return [];
    behind -= points;
    return [criterion];
  });
}

/** The gates that keep the lower from standing as the upper does. */
const shutting = ({ weighed: { standing } }: Side, { weighed: { judged } }: Side) => judged.filter((each) => {
  const outcome = gateOutcome(each);
  return standing === 'stands' ? outcome !== 'met' : standing === 'ask' && outcome === 'failed';
});

/**
 * Why this rather than that: the gates one meets better than the other, then the criteria, the largest
 * difference first; what neither has; and what would have to go for the lower to stand level with the upper.
 */
export function contrast(a: Side, b: Side, { needs, weights, failing }: Pick<Ranking, 'needs' | 'weights' | 'failing'>): Contrast {
  const sides = [a, b] as const;
  const { above, by } = order(sides);
  const [upper, lower] = above === a.id ? [a, b] : [b, a];

  // Safety before musts, and what rules out many before what rules out few.
  const first = (need: Need) => (need.safety ? 1 : 0) + (failing.get(need.id) ?? 0);
  const judged = [...needs].sort((one, other) => first(other) - first(one)).flatMap((need) => {
    const of = sides.map(({ weighed }) => weighed.judged.find((each) => each.need.id === need.id));
    return of[0] && of[1] ? [{ need, of: of as [Judged, Judged] }] : [];
  });
  const told = ({ need, of }: (typeof judged)[number]) => ({
    need: need.id, capability: need.capability, of: [needState(of[0], a), needState(of[1], b)] as [NeedState, NeedState],
  });
  const gates = judged.flatMap((each) => {
    const [ours, theirs] = [outcomes[gateOutcome(each.of[0])], outcomes[gateOutcome(each.of[1])]];
    return ours === theirs ? [] : [{ ...told(each), favours: ours < theirs ? a.id : b.id }];
  });

  const weighing = criteria.filter((criterion) => weights[criterion] !== undefined && sides.every(({ weighed }) => weighed.values[criterion]));
  const gaps = weighing.flatMap((criterion) => {
    const of = [criterionState(a, criterion, weights[criterion]!), criterionState(b, criterion, weights[criterion]!)] as [CriterionState, CriterionState];
    const points = toMillionth(of[0].points - of[1].points);
    return points === 0 ? [] : [{ criterion, favours: points > 0 ? a.id : b.id, points: Math.abs(points), of }];
  }).sort((one, other) => other.points - one.points || byCodeUnit(one.criterion, other.criterion));

  return {
    sides: sides.map(({ id, weighed: { standing, score, price } }) => ({ id, standing, score, ...(price && { price: { low: price.low, high: price.high } }) })) as Contrast['sides'],
    above, by, gates, criteria: gaps,
    lacking: {
      needs: judged.filter(({ of }) => of.every(({ verdict }) => verdict.outcome === 'failed') || of.every((each) => gateOutcome(each) === 'unknown')).map(told),
      criteria: weighing.filter((criterion) => sides.every(({ weighed }) => !weighed.values[criterion]!.value)),
    },
    lift: {
      gates: by === 'standing' ? shutting(upper, lower).map(({ need }) => need.id) : [],
      criteria: fewestToLevel(gaps, upper, lower),
    },
  };
}

/** Why not the lower of two: what costs it its place, what it has all the same, and what would lift it. */
export function whyNot({ above, sides, gates, criteria: gaps, lift }: Contrast) {
  const below = sides.find(({ id }) => id !== above)!.id;
  return {
    above, below, lift,
    gates: gates.filter(({ favours }) => favours === above),
    costs: gaps.filter(({ favours }) => favours === above),
    despite: gaps.filter(({ favours }) => favours === below),
  };
}
