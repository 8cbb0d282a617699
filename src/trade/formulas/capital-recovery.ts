import { power } from '../../units/transcendental.ts';
import { term, type Working } from '../working.ts';

/** Interest over all the years below which their difference from 1 has too few digits, and the first terms of its series serve. */
const hardly = 1e-4;

/**
 * What the loss of value and the interest on the money tied up come to in equal yearly amounts:
 * (P − S)·i(1 + i)^n / ((1 + i)^n − 1) + S·i.
 *
 * @param price     P, paid at the start, in the dealer's currency
 * @param endValue  S, left at the end, in the dealer's currency
 * @param rate      i, interest a year, ≥ 0; at 0 the loss is spread evenly [ratio]
 * @param years     n, > 0, whole or not
 * @returns yearly cost in the dealer's currency, with its working
 * @see rule `own.capital-recovery`
 */
export function capitalRecovery(price: number, endValue: number, rate: number, years: number): Working {
  const growth = power(1 + rate, years);
  const factor = growth - 1 > hardly ? (rate * growth) / (growth - 1) : 1 / years + (rate * (1 + 1 / years)) / 2;
  return {
    formula: 'own.capital-recovery',
    inputs: {
      price: term('dealer-currency', price), endValue: term('dealer-currency', endValue),
      annualRate: term('ratio', rate), years: term('years', years),
    },
    result: term('dealer-currency', (price - endValue) * factor + endValue * rate),
  };
}
