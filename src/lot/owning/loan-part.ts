import { isRefusal, cite, type Working } from '../../trade/working.ts';
import { capitalRecovery } from '../../trade/formulas/capital-recovery.ts';
import { loanExtra, principalFor } from '../../trade/formulas/instalments.ts';
import type { RuleBook } from '../../trade/book.ts';
import { loanOn, type Loan, type LoanTerms } from '../../ranking/price.ts';

const monthsInYear = 12;

/** What a loan costs a year more than one's own money, in the dealer's currency: below 0 where it is cheaper. */
export interface LoanPart {
  perYear: number;
  loan: Loan;
  workings: readonly Working[];
}

/**
 * A loan on what a package costs, set against one's own money at the rule book's interest. Whoever sells
 * before the last instalment repays the rest then.
 *
 * @param price  of the package, in the dealer's currency
 * @param years  it is kept, ≥ 1
 * @returns undefined where the terms make no loan
 */
export function loanPartOf(price: number, terms: LoanTerms, years: number, book: RuleBook): LoanPart | undefined {
  const loan = loanOn(price, terms);
  if (!loan) return undefined;
  const own = book.value('own.interest');
  const paid = Math.min(loan.months, Math.floor(years * monthsInYear));
  const worth = principalFor(loan.instalment, own, paid);
  const rest = paid < loan.months ? principalFor(loan.instalment, terms.annualRate, loan.months - paid) : undefined;
  if (isRefusal(worth) || (rest && isRefusal(rest))) return undefined;
  const extra = cite(loanExtra(worth.result.value, rest?.result.value ?? 0, own, paid, loan.financed), { annualRate: 'own.interest' });
  const yearly = cite(capitalRecovery(extra.result.value, 0, own, years), { annualRate: 'own.interest' });
  return {
    perYear: yearly.result.value, loan,
    workings: [...loan.workings, cite(worth, { annualRate: 'own.interest' }), ...(rest ? [rest] : []), extra, yearly],
  };
}
