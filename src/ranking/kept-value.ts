import { remainingValue } from '../trade/formulas/remaining-value.ts';
import { cite, type Working } from '../trade/working.ts';
import type { World } from './candidate.ts';
import type { Evaluation } from './evaluate.ts';
import type { Spec } from './verdict.ts';

/** What of today's price is left after the buyer's years, and the hours on it today. */
export interface Kept {
  share: number;
  hours: number;
  workings: readonly Working[];
}

const coefficients = { c1: 'resale.c1', c2: 'resale.c2', c3: 'resale.c3' } as const;

/** A unit goes by its own year and hours, a machine by the middle of its typical prices. */
export function keptOver({ build }: Evaluation, years: number, perYear: number, { book, asOfYear }: World): Kept | readonly Spec[] {
  const { machine, unit } = build;
  const byAge = [...(machine.typicalPrices ?? [])].sort((a, b) => a.age - b.age || a.hours - b.hours);
  const middle = byAge[Math.floor((byAge.length - 1) / 2)];
  const age = unit ? (unit.year === undefined ? undefined : Math.max(0, asOfYear - unit.year)) : middle?.age;
  const hours = unit ? unit.hours : middle?.hours;
  if (age === undefined || hours === undefined) return [unit ? 'units.hours' : 'typicalPrices'];
  const c = [book.value('resale.c1'), book.value('resale.c2'), book.value('resale.c3')] as const;
  const now = cite(remainingValue(age, hours / Math.max(1, age), c), coefficients);
  const later = cite(remainingValue(age + years, (hours + perYear * years) / Math.max(1, age + years), c), coefficients);
  return { share: now.result.value > 0 ? later.result.value / now.result.value : 0, hours, workings: [now, later] };
}
