import { remainingShare, remainingValue } from '../trade/formulas/remaining-value.ts';
import { cite, type Working } from '../trade/working.ts';
import type { Candidate, World } from './candidate.ts';
import type { Evaluation } from './evaluate.ts';
import type { Spec } from './verdict.ts';

/** What of today's price is left after the buyer's years, and the hours on it today. */
export interface Kept {
  share: number;
  hours: number;
  workings: readonly Working[];
}

const coefficients = { c1: 'resale.c1', c2: 'resale.c2', c3: 'resale.c3' } as const;

type Coefficients = readonly [number, number, number];

export const coefficientsOf = ({ book }: World): Coefficients => [book.value('resale.c1'), book.value('resale.c2'), book.value('resale.c3')];

/** Age and hours today: a unit's own, or those of the middle of a machine's typical prices. */
export function ageAndHours({ machine, unit }: Candidate, asOfYear: number): { age: number | undefined; hours: number | undefined } {
  if (unit) return { age: unit.year === undefined ? undefined : Math.max(0, asOfYear - unit.year), hours: unit.hours };
  const byAge = [...(machine.typicalPrices ?? [])].sort((a, b) => a.age - b.age || a.hours - b.hours);
  const middle = byAge[Math.floor((byAge.length - 1) / 2)];
  return { age: middle?.age, hours: middle?.hours };
}

/** Share of today's price left after the buyer's years: the sum of {@link keptOver} alone. */
export function keptShare(age: number, hours: number, years: number, perYear: number, c: Coefficients): number {
  const now = remainingShare(age, hours / Math.max(1, age), c);
  const later = remainingShare(age + years, (hours + perYear * years) / Math.max(1, age + years), c);
  return now > 0 ? later / now : 0;
}

/** What is left of a price, with the sums; or what isn't known of the candidate. */
export function keptOver({ build }: Evaluation, years: number, perYear: number, world: World): Kept | readonly Spec[] {
  const { age, hours } = ageAndHours(build, world.asOfYear);
  if (age === undefined || hours === undefined) return [build.unit ? 'units.hours' : 'typicalPrices'];
  const c = coefficientsOf(world);
  const now = cite(remainingValue(age, hours / Math.max(1, age), c), coefficients);
  const later = cite(remainingValue(age + years, (hours + perYear * years) / Math.max(1, age + years), c), coefficients);
  return { share: keptShare(age, hours, years, perYear, c), hours, workings: [now, later] };
}
