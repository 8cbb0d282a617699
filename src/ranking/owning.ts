import type { Answers } from '../answers/answers.ts';
import { capitalRecovery } from '../trade/formulas/capital-recovery.ts';
import { fuelCost, fuelUse, lubricants } from '../trade/formulas/fuel.ts';
import { costPerHour, depreciation, housing, labourCost, spreadOf, sumOfCosts, valueKept } from '../trade/formulas/owning-costs.ts';
import { repairs } from '../trade/formulas/repairs.ts';
import { cite, isRefusal, type Working } from '../trade/working.ts';
import type { Quantity } from '../units/quantity.ts';
import type { World } from './candidate.ts';
import type { Evaluation } from './evaluate.ts';
import { keptOver } from './kept-value.ts';
import { absent, type Spec } from './verdict.ts';
import { yearlyHours } from './yearly-hours.ts';

export const owningParts = ['depreciation', 'interest', 'housing', 'repairs', 'fuel', 'lubricants', 'labour'] as const;
export type OwningPart = (typeof owningParts)[number];

/** What a package costs to own and run a year, in the dealer's currency, if all goes by the rule book. */
export interface Owning {
  years: number;
  hoursPerYear: number;
  perYear: number;
  perHour: number;
  parts: Readonly<Record<OwningPart, number>>;
  workings: readonly Working[];
}

/** How long a buyer keeps a machine, and how much he runs it. */
export interface Use {
  /** Less than a year can't be spread over years, and counts as one. */
  years: number;
  hoursPerYear: number;
}

/** What may turn out otherwise than the rule book reckons: each a multiple of it. */
export interface Otherwise {
  /** Of the price a machine typically has, its lowest or highest in place of the middle. */
  price?: 'low' | 'high';
  endValue?: number;
  repairs?: number;
  fuel?: number;
}

const spread = (working: Working, multiple = 1): readonly [figure: number, ...workings: Working[]] => {
  if (multiple === 1) return [working.result.value, working];
  const outcome = spreadOf(working.result.value, multiple);
  return [outcome.result.value, working, outcome];
};

/**
 * Loss of value with interest, insurance and housing, repairs, fuel and lubricants over the buyer's own
 * years and hours (Iowa State A3-29); or the figures that are missing. A comparison under assumptions.
 */
export const owningOf = (evaluation: Evaluation, answers: Answers, world: World): Owning | readonly Spec[] => owningOver(evaluation, {
  years: answers.budget?.keepYears ?? world.book.value('keep.years'),
  hoursPerYear: yearlyHours(answers, evaluation.judged, world.book),
}, world);

/** The same over any years and hours, and with what may turn out otherwise. */
export function owningOver(evaluation: Evaluation, use: Use, world: World, otherwise: Otherwise = {}): Owning | readonly Spec[] {
  const { price, build: { machine } } = evaluation;
  const { book } = world;
  const { hoursPerYear } = use;
  const years = Math.max(1, use.years);
  const kept = keptOver(evaluation, years, hoursPerYear, world);
  const { engine, listPrice } = machine;
  if (!price || !listPrice || engine?.ptoPower === undefined || !('share' in kept)) {
    return [...absent({ price, listPrice, 'engine.ptoPower': engine?.ptoPower }), ...('share' in kept ? [] : kept)];
  }
  const { share, hours, workings } = kept;
  const { low, high, goods } = price;
  const at = otherwise.price === 'low' ? 0 : otherwise.price === 'high' ? 1 : undefined;
  const paid = at === undefined ? (low + high) / 2 : [low, high][at]!;
  // Tax and delivery are spent, and what is fitted is sold with the machine at the best.
  const [endValue, ...ended] = spread(valueKept(at === undefined ? (goods[0] + goods[1]) / 2 : goods[at]!, share), otherwise.endValue);
  const capital = cite(capitalRecovery(paid, endValue, book.value('own.interest'), years), { annualRate: 'own.interest' });
  const housed = cite(housing(paid, endValue, book.value('own.housing')), { share: 'own.housing' });
  const [repaired, ...repairing] = spread(cite(
    repairs(listPrice.price.value, hours, hours + hoursPerYear * years, book.value('own.repair.rf1'), book.value('own.repair.rf2')),
    { rf1: 'own.repair.rf1', rf2: 'own.repair.rf2' },
  ), otherwise.repairs);
  const perEnergy = engine.fuel === 'petrol' ? 'own.fuel.petrol' as const : 'own.fuel.diesel' as const;
  const taken = cite(fuelUse(engine.ptoPower, book.value(perEnergy) as Quantity<'fuelPerEnergy'>), { perEnergy });
  const [fuel, ...fuelling] = spread(cite(fuelCost(taken.result.value as Quantity<'flow'>, book.value('own.fuel-price')), { price: 'own.fuel-price' }), otherwise.fuel);
  const oil = cite(lubricants(fuel, book.value('own.lubricant')), { share: 'own.lubricant' });
  const loss = depreciation(paid, endValue, years);
  const labour = cite(labourCost(book.value('own.wage'), book.value('mow.labour')), { wage: 'own.wage', factor: 'mow.labour' });
  const parts = {
    depreciation: loss.result.value, interest: capital.result.value - loss.result.value, housing: housed.result.value, repairs: repaired / years,
    fuel: fuel * hoursPerYear, lubricants: oil.result.value * hoursPerYear, labour: labour.result.value * hoursPerYear,
  };
  const total = sumOfCosts(parts);
  const hour = costPerHour(total.result.value, hoursPerYear);
  if (isRefusal(hour)) return ['units.hours'];
  return {
    years, hoursPerYear, perYear: total.result.value, perHour: hour.result.value, parts,
    workings: [...workings, ...ended, loss, capital, housed, ...repairing, taken, ...fuelling, oil, labour, total, hour],
  };
}
