/** Halvings after which hours a year are told apart no more. */
const halvings = 60;
/** Steps between the fewest and the most hours in which a change of order is looked for. */
const steps = 128;

/** Cost of a year by the hours run in it. */
export type YearlyCost = (hoursPerYear: number) => number;

export interface Crossing {
  hoursPerYear: number;
  /** Which of the two costs less with fewer hours, and which with more. */
  below: 'a' | 'b';
  above: 'a' | 'b';
}

/** Where the order of two by cost changes, within bounds; `cheaper` where it never does. */
export interface Crossings {
  from: number;
  to: number;
  crossings: readonly Crossing[];
  /** The one that costs less over the whole range, or that they cost the same. */
  throughout?: 'a' | 'b' | 'same';
}

const cheaper = (difference: number): 'a' | 'b' | undefined => (difference < 0 ? 'a' : difference > 0 ? 'b' : undefined);

/**
 * The hours a year at which the cheaper of two changes, looked for step by step and then by halving, the same
 * each time. Two changes within one step cancel out and are missed: there the two cost as good as the same.
 *
 * @param from  fewest hours a year, > 0
 * @param to    most hours a year, > from
 */
export function crossingsOf(a: YearlyCost, b: YearlyCost, from: number, to: number): Crossings {
  const difference = (hours: number) => a(hours) - b(hours);
  const crossings: Crossing[] = [];
  let [low, before] = [from, cheaper(difference(from))];
  for (let step = 1; step <= steps; step++) {
    const high = from + ((to - from) * step) / steps;
    const after = cheaper(difference(high));
    if (after === undefined) continue;
    if (before !== undefined && before !== after) {
      crossings.push({ hoursPerYear: between(difference, before, low, high), below: before, above: after });
    }
    [low, before] = [high, after];
  }
  return { from, to, crossings, ...(crossings.length === 0 && { throughout: before ?? 'same' }) };
}

/** The place between two where a difference leaves the side it is on at the lower. */
function between(difference: YearlyCost, below: 'a' | 'b', from: number, to: number): number {
  let [low, high] = [from, to];
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (low + high) / 2;
    if (cheaper(difference(middle)) === below) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
