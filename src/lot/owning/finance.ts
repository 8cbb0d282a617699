import type { Answers } from '../../answers/answers.ts';
import type { World } from '../../ranking/candidate.ts';
import { loanOn, mayTellLoans, type LoanTerms } from '../../ranking/price.ts';
import { atMost } from '../../units/compare.ts';

/** The dealer's terms that may be told of, the shortest first. */
export const termsOffered = (dealer: World['dealer']): readonly LoanTerms[] =>
  (mayTellLoans(dealer) ? [...(dealer.finance ?? [])].sort((a, b) => a.months - b.months || a.annualRate - b.annualRate) : []);

/**
 * How a buyer pays who said that he borrows: the shortest of the dealer's terms by which no package is beyond what he
 * would pay a month, else those with the lowest instalment; the shortest where he named none. `ask` where the dealer has no terms
 * that may be told of. One set of terms for all that are compared.
 *
 * @param prices  of the packages, in the dealer's currency
 * @returns undefined where he pays with his own money
 */
export function financeFor({ budget }: Answers, dealer: World['dealer'], prices: readonly number[]): LoanTerms | 'ask' | undefined {
  if (budget?.pay !== 'loan') return undefined;
  const offered = termsOffered(dealer).filter((terms) => prices.every((price) => loanOn(price, terms) !== undefined));
  const { monthly } = budget;
  if (monthly?.currency !== dealer.currency) return offered[0] ?? 'ask';
  const dearest = (terms: LoanTerms) => Math.max(0, ...prices.map((price) => loanOn(price, terms)!.instalment));
  return offered.find((terms) => atMost(dearest(terms), monthly.value)) ?? [...offered].sort((a, b) => dearest(a) - dearest(b))[0] ?? 'ask';
}
