import { capitalRecovery } from '../../../src/trade/formulas/capital-recovery.ts';
import { fuelCost, fuelUse, lubricants } from '../../../src/trade/formulas/fuel.ts';
import { annualPercentageRate, instalment, loanExtra, principalFor } from '../../../src/trade/formulas/instalments.ts';
import { noiseTime } from '../../../src/trade/formulas/noise.ts';
import { costPerHour, depreciation, housing, labourCost, spreadOf, sumOfCosts, valueKept } from '../../../src/trade/formulas/owning-costs.ts';
import { repairs } from '../../../src/trade/formulas/repairs.ts';
import { dailyExposure, timeToExposure } from '../../../src/trade/formulas/vibration.ts';
import type { Working } from '../../../src/trade/working.ts';
import { known, type Given } from '../given.ts';

/** Names of inputs that only these examples use. */
export type MoneyInput =
  | 'acceleration' | 'action' | 'annualRate' | 'capital' | 'cost' | 'endValue' | 'exchange' | 'factor' | 'financed' | 'fuel' | 'fuelCost'
  | 'hours' | 'hoursFrom' | 'hoursTo' | 'housing' | 'instalment' | 'level' | 'limit' | 'list' | 'months' | 'multiple' | 'operating' | 'overhead'
  | 'ownership' | 'perEnergy' | 'price' | 'principal' | 'repairs' | 'rest' | 'rf1' | 'rf2' | 'time' | 'use' | 'wage' | 'worth' | 'yearly' | 'years';

/** Each formula with its working. */
export const workingsOfMoney = {
  'loan.instalment': (g) => known(instalment(g.principal, g.annualRate, g.months)),
  'loan.principal': (g) => known(principalFor(g.instalment, g.annualRate, g.months)),
  'loan.apr': (g) => known(annualPercentageRate(g.financed, g.instalment, g.months)),
  'own.capital-recovery': (g) => capitalRecovery(g.price, g.endValue, g.rate, g.years),
  'own.depreciation': (g) => depreciation(g.price, g.endValue, g.years),
  'resale.amount': (g) => valueKept(g.price, g.share),
  'own.housing-cost': (g) => housing(g.price, g.endValue, g.share),
  'own.per-hour': (g) => known(costPerHour(g.yearly, g.hours)),
  'own.sum': (g) => sumOfCosts({ ...g }),
  'own.spread': (g) => spreadOf(g.cost, g.multiple),
  'own.loan': (g) => loanExtra(g.worth, g.rest, g.annualRate, g.months, g.financed),
  'own.labour': (g) => labourCost(g.wage, g.factor),
  'own.repairs': (g) => repairs(g.list, g.hoursFrom, g.hoursTo, g.rf1, g.rf2),
  'own.fuel': (g) => fuelUse(g.power, g.perEnergy),
  'own.fuel-cost': (g) => fuelCost(g.use, g.price),
  'own.lubricants': (g) => lubricants(g.fuelCost, g.share),
  'vibration.daily': (g) => dailyExposure(g.acceleration, g.time),
  'vibration.time-to': (g) => known(timeToExposure(g.acceleration, g.limit)),
  'noise.time': (g) => noiseTime(g.level, g.action, g.exchange),
} satisfies Record<string, (given: Given) => Working>;

/** Money has no unit that an expectation could be written in, so its examples give the bare amount. */
const asExpected = (working: Working) => (working.result.unit === 'dealer-currency' ? working.result.value : working);

export const moneyAndOperator = Object.fromEntries(
  Object.entries(workingsOfMoney).map(([id, call]) => [id, (given: Given) => asExpected(call(given))]),
) as Record<keyof typeof workingsOfMoney, (given: Given) => Working | number>;
