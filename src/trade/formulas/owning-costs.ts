import { term, type Refusal, type Working } from '../working.ts';

/**
 * Loss of value a year, spread evenly.
 *
 * @param price     at the start, in the dealer's currency
 * @param endValue  left at the end, in the dealer's currency
 * @param years     > 0
 * @returns yearly loss in the dealer's currency, with its working
 * @see rule `own.depreciation`
 */
export const depreciation = (price: number, endValue: number, years: number): Working => ({
  formula: 'own.depreciation',
  inputs: { price: term('dealer-currency', price), endValue: term('dealer-currency', endValue), years: term('years', years) },
  result: term('dealer-currency', (price - endValue) / years),
});

/**
 * What is left of a price, in the dealer's currency.
 *
 * @param price  list price, or price paid, to which the share refers, in the dealer's currency
 * @param share  kept, 0 to 1 [ratio]
 * @see rule `resale.amount`
 */
export const valueKept = (price: number, share: number): Working => ({
  formula: 'resale.amount',
  inputs: { price: term('dealer-currency', price), share: term('ratio', share) },
  result: term('dealer-currency', price * share),
});

/**
 * Taxes, insurance and housing a year, as a share of the value in the middle of the years.
 *
 * @param price     at the start, in the dealer's currency
 * @param endValue  left at the end, in the dealer's currency
 * @param share     a year [ratio]
 * @returns yearly cost in the dealer's currency, with its working
 * @see rules `own.housing-cost` and `own.housing`
 */
export const housing = (price: number, endValue: number, share: number): Working => ({
  formula: 'own.housing-cost',
  inputs: { price: term('dealer-currency', price), endValue: term('dealer-currency', endValue), share: term('ratio', share) },
  result: term('dealer-currency', (share * (price + endValue)) / 2),
});

/**
 * Cost of an hour.
 *
 * @param yearly  cost of a year, in the dealer's currency
 * @param hours   in that year, > 0
 * @returns cost in the dealer's currency, with its working, or a refusal where there are no hours
 * @see rule `own.per-hour`
 */
export function costPerHour(yearly: number, hours: number): Working | Refusal {
  if (!(hours > 0)) return { refused: 'the hours must be above 0' };
  return {
    formula: 'own.per-hour',
    inputs: { yearly: term('dealer-currency', yearly), hours: term('hours', hours) },
    result: term('dealer-currency', yearly / hours),
  };
}

/**
 * Sum of costs by name, in the dealer's currency, with its working.
 * @see rule `own.sum`
 */
export const sumOfCosts = (parts: Readonly<Record<string, number>>): Working => ({
  formula: 'own.sum',
  inputs: Object.fromEntries(Object.entries(parts).map(([name, cost]) => [name, term('dealer-currency', cost)])),
  result: term('dealer-currency', Object.values(parts).reduce((sum, cost) => sum + cost, 0)),
});

/**
 * Cost of the driver for each hour of the machine, in the dealer's currency.
 *
 * @param wage    of an hour, in the dealer's currency
 * @param factor  hours of a person for each hour of the machine, ≥ 1 [ratio]
 * @see rule `own.labour`
 */
export const labourCost = (wage: number, factor: number): Working => ({
  formula: 'own.labour',
  inputs: { wage: term('dealer-currency', wage), factor: term('ratio', factor) },
  result: term('dealer-currency', wage * factor),
});

/**
 * What a cost or a value may turn out as, in the dealer's currency.
 *
 * @param cost      by the rule book, in the dealer's currency
 * @param multiple  of it, ≥ 0 [ratio]
 * @see rule `own.spread`
 */
export const spreadOf = (cost: number, multiple: number): Working => ({
  formula: 'own.spread',
  inputs: { cost: term('dealer-currency', cost), multiple: term('ratio', multiple) },
  result: term('dealer-currency', cost * multiple),
});
