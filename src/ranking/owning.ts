import type { Answers } from '../answers/answers.ts';
import { capitalRecovery } from '../trade/formulas/capital-recovery.ts';
import { fuelCost, fuelUse, lubricants } from '../trade/formulas/fuel.ts';
import { costPerHour, depreciation, housing, labourCost, sumOfCosts, valueKept } from '../trade/formulas/owning-costs.ts';
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

/**
 * Loss of value with interest, insurance and housing, repairs, fuel and lubricants over the buyer's own
 * years and hours (Iowa State A3-29); or the figures that are missing. A comparison under assumptions.
 */
export function owningOf(evaluation: Evaluation, answers: Answers, world: World): Owning | readonly Spec[] {
  const { price, build: { machine }, judged } = evaluation;
  const { book } = world;
  const hoursPerYear = yearlyHours(answers, judged, book);
  // Less than a year can't be spread over years.
  const years = Math.max(1, answers.budget?.keepYears ?? book.value('keep.years'));
  const kept = keptOver(evaluation, years, hoursPerYear, world);
  const { engine, listPrice } = machine;
  if (!price || !listPrice || engine?.ptoPower === undefined || !('share' in kept)) {
    return [...absent({ price, listPrice, 'engine.ptoPower': engine?.ptoPower }), ...('share' in kept ? [] : kept)];
  }
  const { share, hours, workings } = kept;
  const paid = (price.low + price.high) / 2;
  // Tax and delivery are spent, and what is fitted is sold with the machine at the best.
  const end = valueKept((price.goods[0] + price.goods[1]) / 2, share);
  const capital = cite(capitalRecovery(paid, end.result.value, book.value('own.interest'), years), { annualRate: 'own.interest' });
  const housed = cite(housing(paid, end.result.value, book.value('own.housing')), { share: 'own.housing' });
  const repaired = cite(
    repairs(listPrice.price.value, hours, hours + hoursPerYear * years, book.value('own.repair.rf1'), book.value('own.repair.rf2')),
    { rf1: 'own.repair.rf1', rf2: 'own.repair.rf2' },
  );
  const perEnergy = engine.fuel === 'petrol' ? 'own.fuel.petrol' as const : 'own.fuel.diesel' as const;
  const use = cite(fuelUse(engine.ptoPower, book.value(perEnergy) as Quantity<'fuelPerEnergy'>), { perEnergy });
  const fuel = cite(fuelCost(use.result.value as Quantity<'flow'>, book.value('own.fuel-price')), { price: 'own.fuel-price' });
  const oil = cite(lubricants(fuel.result.value, book.value('own.lubricant')), { share: 'own.lubricant' });
  const loss = depreciation(paid, end.result.value, years);
  const labour = cite(labourCost(book.value('own.wage'), book.value('mow.labour')), { wage: 'own.wage', factor: 'mow.labour' });
  const parts = {
    depreciation: loss.result.value, interest: capital.result.value - loss.result.value, housing: housed.result.value, repairs: repaired.result.value / years,
    fuel: fuel.result.value * hoursPerYear, lubricants: oil.result.value * hoursPerYear, labour: labour.result.value * hoursPerYear,
  };
  const total = sumOfCosts(parts);
  const hour = costPerHour(total.result.value, hoursPerYear);
  if (isRefusal(hour)) return ['units.hours'];
  return {
    years, hoursPerYear, perYear: total.result.value, perHour: hour.result.value, parts,
    workings: [...workings, end, loss, capital, housed, repaired, use, fuel, oil, labour, total, hour],
  };
}
