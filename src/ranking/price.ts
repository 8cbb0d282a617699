import type { Taxable } from '../catalogue/schema.ts';
import type { Need, DemandOf } from '../needs/need.ts';
import { annualPercentageRate, instalment, principalFor } from '../trade/formulas/instalments.ts';
import { isRefusal, type Working } from '../trade/working.ts';
import { atMost } from '../units/compare.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Addition } from './addition.ts';
import type { Candidate, World } from './candidate.ts';
import { failed, met, unknown, type Verdict } from './verdict.ts';

/** What machine and additions cost together, in the dealer's currency. */
export interface PackagePrice {
  /** Lowest and highest: one figure for a unit, the typical range for a machine. */
  low: number;
  high: number;
  /** Price of the machine or unit alone, low and high. */
  machine: readonly [number, number];
  /** The same with what is added, without tax and delivery: what one owns of it. */
  goods: readonly [number, number];
  /** Additions whose price must be asked, so that the package costs more than it says. */
  unpriced: readonly Addition[];
}

/** What additions cost with their fitting, as far as their prices are known, in the dealer's currency. */
export const costOf = (additions: readonly Addition[], { labourRate }: World['dealer']) =>
  additions.reduce((sum, { price = 0, labourHours = 0 }) => sum + price + labourHours * (labourRate?.value ?? 0), 0);

/** What delivery costs over a distance, in the dealer's currency; undefined where he named no rate. Whether he goes so far is another matter. */
export const deliveryCost = (distance: Quantity<'length'>, { delivery }: World['dealer']): number | undefined =>
  delivery && (delivery.freeWithin !== undefined && atMost(distance, delivery.freeWithin) ? 0 : (delivery.perDistance.value * distance) / delivery.per);

/** What the tax is on: as the dealer says, else all but delivery and fees. */
export const isTaxed = ({ taxed }: World['dealer'], what: Taxable): boolean => (taxed ? taxed.includes(what) : what !== 'delivery' && what !== 'fees');

/** What comes on top of a machine's own price, whatever that is. */
export interface Bill {
  extra: number;
  /** What the machine's own price is multiplied by for the tax on it. */
  tax: number;
  /** What is added, with the tax on it. */
  added: number;
  delivered: number;
  unpriced: readonly Addition[];
}

/** The bill of what is added: its price, fitting labour at the dealer's rate, and what the buyer's limit is to include besides. */
export function billOf(additions: readonly Addition[], need: DemandOf<'price'> | undefined, { dealer }: World): Bill {
  const counted = additions.filter(
    ({ what }) => what !== 'implement' || !need?.includes || need.includes.includes('implements'),
  );
  const unpriced = counted.filter(
    ({ price, labourHours, labourAsked }) => price === undefined || labourAsked || (labourHours !== undefined && labourHours > 0 && !dealer.labourRate),
  );
  const delivered = need?.includes?.includes('delivery') && need.delivery !== undefined ? (deliveryCost(need.delivery, dealer) ?? 0) : 0;
  const withTax = need?.includes?.includes('tax') ? 1 + (dealer.taxShare ?? 0) : 1;
  const taxOn = (what: Taxable) => (isTaxed(dealer, what) ? withTax : 1);
  const added = counted.reduce((sum, { what, price = 0, labourHours = 0 }) =>
    sum + price * taxOn(what === 'implement' ? 'implements' : 'machine') + labourHours * (dealer.labourRate?.value ?? 0) * taxOn('fitting'), 0);
  return { extra: costOf(counted, dealer), tax: taxOn('machine'), added, delivered: delivered * taxOn('delivery'), unpriced };
}

/** A machine's own price with the bill on top. */
export const withBill = (price: number, { tax, added, delivered }: Bill) => price * tax + added + delivered;

/** A candidate's own price, low and high: a unit's, or the range of its machine's typical ones. Undefined where none is known. */
export function ownPrices({ machine, unit }: Candidate): readonly [low: number, high: number] | undefined {
  const prices = unit ? (unit.price ? [unit.price.value] : []) : (machine.typicalPrices ?? []).map(({ price }) => price.value);
  return prices.length > 0 ? [Math.min(...prices), Math.max(...prices)] : undefined;
}

/** Price of a candidate with its bill, undefined where its own isn't known. */
export function packagePrice(candidate: Candidate, bill: Bill): PackagePrice | undefined {
  const own = ownPrices(candidate);
  if (!own) return undefined;
  const [low, high] = own;
  return { low: withBill(low, bill), high: withBill(high, bill), machine: own, goods: [low + bill.extra, high + bill.extra], unpriced: bill.unpriced };
}

type Unpriced = Pick<Bill, 'unpriced'>;

/** The limit against the lowest price the package can have: over it is over it, whatever must be asked. */
function judgePrice(need: Need & DemandOf<'price'>, low: number | undefined, { unpriced }: Unpriced, { dealer }: World): Verdict {
  if (need.currency !== dealer.currency) return unknown('dealer.currency');
  if (low === undefined) return unknown('price');
  const figures = { has: low, wants: need.atMost, unit: 'money', bound: 'at-most' } as const;
  if (!atMost(low, need.atMost)) return failed(figures);
  return unpriced.length > 0 ? { ...unknown('additions.price'), ...figures } : met(figures);
}

/** Whether instalments may be told at all: in the United States, elsewhere only where the dealer gave his own words for them. */
export const mayTellLoans = ({ currency, terms }: World['dealer']) =>
  currency === 'USD' || Object.values(terms ?? {}).some(({ finance }) => finance !== undefined);

export type LoanTerms = NonNullable<World['dealer']['finance']>[number];

/** A loan with all that is told of one: none of it is told without the rest (12 CFR 1026.24(d)). */
export interface Loan {
  deposit: number;
  financed: number;
  months: number;
  instalment: number;
  /** Annual percentage rate [ratio]. */
  rate: number;
  workings: readonly Working[];
}

/** A loan on a price by a dealer's terms; undefined where these make none. */
export function loanOn(price: number, { annualRate, months, depositShare }: LoanTerms): Loan | undefined {
  const financed = price * (1 - depositShare);
  const monthly = instalment(financed, annualRate, months);
  if (isRefusal(monthly)) return undefined;
  const rate = annualPercentageRate(financed, monthly.result.value, months);
  return isRefusal(rate) ? undefined : {
    deposit: price * depositShare, financed, months, instalment: monthly.result.value, rate: rate.result.value, workings: [monthly, rate],
  };
}

/** The lowest instalment of the dealer's own terms against what the buyer would pay a month. Told only with deposit, months and rate. */
function judgeInstalment(need: Need & DemandOf<'instalment'>, low: number | undefined, { unpriced }: Unpriced, { dealer }: World): Verdict {
  if (need.currency !== dealer.currency) return unknown('dealer.currency');
  if (!mayTellLoans(dealer) || !dealer.finance || dealer.finance.length === 0) return unknown('dealer.finance');
  if (low === undefined) return unknown('price');
  const verdicts = dealer.finance.flatMap((terms): Verdict[] => {
    const loan = loanOn(low, terms);
    const carried = principalFor(need.atMost, terms.annualRate, terms.months);
    if (!loan || isRefusal(carried)) return [];
    const { deposit, months, rate, workings } = loan;
    const figures = { has: loan.instalment, wants: need.atMost, unit: 'money', bound: 'at-most', workings: [...workings, carried] } as const;
    return [{ ...(atMost(figures.has, need.atMost) ? met(figures) : failed(figures)), loan: { deposit, months, rate } }];
  }).sort((a, b) => a.has! - b.has!);
  const [least] = verdicts;
  if (!least) return unknown('dealer.finance');
  return least.outcome === 'met' && unpriced.length > 0 ? { ...least, outcome: 'unknown', missing: ['additions.price'] } : least;
}

/** Judges a need of money by the lowest price a package can have, undefined where that isn't known. */
export const judgeMoney = (need: Need & DemandOf<'price' | 'instalment'>, low: number | undefined, bill: Unpriced, world: World): Verdict =>
  (need.capability === 'price' ? judgePrice(need, low, bill, world) : judgeInstalment(need, low, bill, world));
