import { atLeast } from '../../units/compare.ts';
import { power } from '../../units/transcendental.ts';
import { term, type Refusal, type Working } from '../working.ts';

const monthsInYear = 12;
/** Smallest step in the search for a monthly rate: 1e-10 a year and finer. */
const finest = 1e-12;

/**
 * Worth today of one unit of money at the end of each month, by doubling: it adds nothing but positive terms,
 * so it loses no digits at the lowest rates, and at a rate of 0 it is the number of months.
 */
function annuity(monthlyRate: number, months: number): number {
  let [worth, discount] = [0, 1];
  for (const digit of months.toString(2)) {
    worth *= 1 + discount;
    discount *= discount;
    if (digit === '1') {
      discount /= 1 + monthlyRate;
      worth += discount;
    }
  }
  return worth;
}

const termsRefused = (annualRate: number, months: number): Refusal | undefined => {
  if (!(annualRate >= 0 && annualRate < Infinity)) return { refused: 'the rate must be 0 or above' };
  if (!(Number.isSafeInteger(months) && months >= 1)) return { refused: 'the months must be a whole number of at least 1' };
  return undefined;
};

/**
 * Monthly instalment that repays a loan: A = P·r / (1 − (1 + r)^−N), r being the twelfth of the yearly rate.
 *
 * @param principal   P, what is lent, in the dealer's currency, ≥ 0
 * @param annualRate  nominal rate a year, ≥ 0; at 0 the instalment is P / N [ratio]
 * @param months      N, a whole number, ≥ 1
 * @returns instalment in the dealer's currency, with its working, or a refusal outside these ranges
 * @see rule `loan.instalment`
 */
export function instalment(principal: number, annualRate: number, months: number): Working | Refusal {
  if (!(principal >= 0 && principal < Infinity)) return { refused: 'the amount lent must be 0 or above' };
  return termsRefused(annualRate, months) ?? {
    formula: 'loan.instalment',
    inputs: { principal: term('dealer-currency', principal), annualRate: term('ratio', annualRate), months: term('months', months) },
    result: term('dealer-currency', principal / annuity(annualRate / monthsInYear, months)),
  };
}

/**
 * Amount that a monthly instalment repays: P = A·(1 − (1 + r)^−N) / r.
 *
 * @param monthly     A, the instalment in the dealer's currency, ≥ 0
 * @param annualRate  nominal rate a year, ≥ 0; at 0 the amount is A·N [ratio]
 * @param months      N, a whole number, ≥ 1
 * @returns amount in the dealer's currency, with its working, or a refusal outside these ranges
 * @see rule `loan.principal`
 */
export function principalFor(monthly: number, annualRate: number, months: number): Working | Refusal {
  if (!(monthly >= 0 && monthly < Infinity)) return { refused: 'the instalment must be 0 or above' };
  return termsRefused(annualRate, months) ?? {
    formula: 'loan.principal',
    inputs: { instalment: term('dealer-currency', monthly), annualRate: term('ratio', annualRate), months: term('months', months) },
    result: term('dealer-currency', monthly * annuity(annualRate / monthsInYear, months)),
  };
}

/**
 * Annual percentage rate of a loan repaid in equal monthly instalments, the first after a month: twelve times
 * the monthly rate at which the instalments are worth what was financed. The rate is found by halving.
 *
 * @param financed  amount financed, in the dealer's currency, > 0
 * @param monthly   instalment in the dealer's currency
 * @param months    a whole number, ≥ 1
 * @returns rate a year [ratio], right to 1e-10, with its working, or a refusal where the instalments don't
 *   repay the amount
 * @see rule `loan.apr`: 12 CFR 1026, appendix J, the actuarial method
 */
export function annualPercentageRate(financed: number, monthly: number, months: number): Working | Refusal {
  if (!(financed > 0 && financed < Infinity)) return { refused: 'the amount financed must be above 0' };
  const refusal = termsRefused(0, months);
  if (refusal) return refusal;
  if (!(monthly / financed < Infinity && atLeast(monthly * months, financed))) return { refused: 'the instalments must repay the amount financed' };
  let rate = 0;
  // Instalments without end would be worth monthly / rate, so the rate lies below monthly / financed.
  for (let step = monthly / financed / 2; step > finest; step /= 2) {
    if (monthly * annuity(rate + step, months) >= financed) rate += step;
  }
  return {
    formula: 'loan.apr',
    inputs: { financed: term('dealer-currency', financed), instalment: term('dealer-currency', monthly), months: term('months', months) },
    result: term('ratio', rate * monthsInYear),
  };
}

/**
 * What borrowing costs more than one's own money, worth today. Below 0 where the loan is cheaper.
 *
 * @param worth       of the instalments today, in the dealer's currency
 * @param rest        left to repay after them, in the dealer's currency
 * @param annualRate  what one's own money would bring a year, ≥ 0 [ratio]
 * @param months      after which the rest is repaid, a whole number
 * @param financed    what was lent, in the dealer's currency
 * @see rule `own.loan`
 */
export const loanExtra = (worth: number, rest: number, annualRate: number, months: number, financed: number): Working => ({
  formula: 'own.loan',
  inputs: {
    worth: term('dealer-currency', worth), rest: term('dealer-currency', rest), annualRate: term('ratio', annualRate),
    months: term('months', months), financed: term('dealer-currency', financed),
  },
  result: term('dealer-currency', worth + rest / power(1 + annualRate / monthsInYear, months) - financed),
});
