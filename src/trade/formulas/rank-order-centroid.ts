/**
 * Weights from a ranking alone: the centre of all weightings that agree with it.
 * w_i = (1/n) Σ_{k=i..n} 1/k.
 *
 * @param ranks  how many criteria are ranked, ≥ 1
 * @returns weights by rank, most important first, adding up to 1
 * @see rule `weights.rank-order-centroid`: Barron and Barrett 1996
 */
export function rankOrderCentroid(ranks: number): number[] {
  const weights: number[] = [];
  let sum = 0;
  for (let k = ranks; k >= 1; k--) {
    sum += 1 / k;
    weights.unshift(sum / ranks);
  }
  return weights;
}
