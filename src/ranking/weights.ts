import { criteria, type Criterion } from '../answers/schema.ts';
import { rankOrderCentroid } from '../trade/formulas/rank-order-centroid.ts';

export type Weights = Partial<Record<Criterion, number>>;

/** The criteria that apply: those the buyer ranked, in his order, and the rest, among which he said nothing. */
export function ranksOf(order: readonly Criterion[], applying: readonly Criterion[]) {
  const ranked = [...new Set(order)].filter((criterion) => applying.includes(criterion));
  return { ranked, rest: criteria.filter((criterion) => applying.includes(criterion) && !ranked.includes(criterion)) };
}

/**
 * Weights of the criteria that apply, from the buyer's order by rank-order centroid. Criteria he didn't
 * rank come after those he did and share what their ranks would weigh, for he said no more.
 */
export function weightsOf(order: readonly Criterion[], applying: readonly Criterion[]): Weights {
  const { ranked, rest } = ranksOf(order, applying);
  const byRank = rankOrderCentroid(ranked.length + rest.length);
  const shared = byRank.slice(ranked.length).reduce((sum, weight) => sum + weight, 0) / (rest.length || 1);
  return Object.fromEntries([
    ...ranked.map((criterion, rank) => [criterion, byRank[rank]!] as const),
    ...rest.map((criterion) => [criterion, shared] as const),
  ]);
}
