import { byCodeUnit } from '../units/compare.ts';

/** How a candidate comes out: its musts are met, or one of them is unknown, or one fails. */
export type Standing = 'stands' | 'ask' | 'ruled-out';

/** Best first. */
export const standings: readonly Standing[] = ['stands', 'ask', 'ruled-out'];

const depth: Readonly<Record<Standing, number>> = { stands: 0, ask: 1, 'ruled-out': 2 };

/** Whether one standing is as good as another. */
export const standsAsWell = (standing: Standing, wanted: Standing) => depth[standing] <= depth[wanted];

/** The cheaper first; what has no price, given as infinite, last. */
export const byPrice = (a: number, b: number) => (a === b ? 0 : a - b);

/** What the order of two goes by. */
export interface Place {
  id: string;
  standing: Standing;
  score: number;
  /** Lowest price of the package, infinite where none is known. */
  low: number;
}

/** The steps of the order: each decides where all before it leave two alike. */
export const steps = {
  standing: (a: Place, b: Place) => depth[a.standing] - depth[b.standing],
  score: (a: Place, b: Place) => b.score - a.score,
  price: (a: Place, b: Place) => byPrice(a.low, b.low),
  id: (a: Place, b: Place) => byCodeUnit(a.id, b.id),
} as const;

/** Who stands above whom: by standing, score, price, and last by id, never by chance. */
export const byPlace = (a: Place, b: Place) => steps.standing(a, b) || steps.score(a, b) || steps.price(a, b) || steps.id(a, b);

/** Puts something among the first of its kind, where it belongs there. */
export function keepFirst<T>(kept: T[], each: T, most: number, compare: (a: T, b: T) => number) {
  if (kept.length === most && compare(each, kept[most - 1]!) >= 0) return;
  const at = kept.findIndex((other) => compare(each, other) < 0);
  kept.splice(at < 0 ? kept.length : at, 0, each);
  if (kept.length > most) kept.pop();
}
