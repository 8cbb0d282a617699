import type { Need, DemandOf } from '../needs/need.ts';
import { annualPercentageRate, instalment, principalFor } from '../trade/formulas/instalments.ts';
import { isRefusal } from '../trade/working.ts';
import { atMost } from '../units/compare.ts';
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

/** What comes on top of a machine's own price, whatever that is. */
export interface Bill {
  extra: number;
  tax: number;
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
  const delivered = need?.includes?.includes('delivery') && need.delivery !== undefined && dealer.delivery
    ? (dealer.delivery.perDistance.value * need.delivery) / dealer.delivery.per
    : 0;
  return { extra: costOf(counted, dealer), tax: need?.includes?.includes('tax') ? 1 + (dealer.taxShare ?? 0) : 1, delivered, unpriced };
}

/** A machine's own price with the bill on top. */
export const withBill = (price: number, { extra, tax, delivered }: Bill) => (price + extra) * tax + delivered;

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

/**
 * The lowest instalment of the dealer's own terms against what the buyer would pay a month. Told only with
 * deposit, months and rate, and outside the United States only where the dealer gave his own words for it.
 */
function judgeInstalment(need: Need & DemandOf<'instalment'>, low: number | undefined, { unpriced }: Unpriced, { dealer }: World): Verdict {
  if (need.currency !== dealer.currency) return unknown('dealer.currency');
  const allowed = dealer.currency === 'USD' || Object.values(dealer.terms ?? {}).some(({ finance }) => finance !== undefined);
  if (!allowed || !dealer.finance || dealer.finance.length === 0) return unknown('dealer.finance');
  if (low === undefined) return unknown('price');
  const verdicts = dealer.finance.flatMap(({ annualRate, months, depositShare }): Verdict[] => {
    const financed = low * (1 - depositShare);
    const working = instalment(financed, annualRate, months);
    if (isRefusal(working)) return [];
    const rate = annualPercentageRate(financed, working.result.value, months);
    const carried = principalFor(need.atMost, annualRate, months);
    if (isRefusal(rate) || isRefusal(carried)) return [];
    const figures = { has: working.result.value, wants: need.atMost, unit: 'money', bound: 'at-most', workings: [working, rate, carried] } as const;
    const loan = { deposit: low * depositShare, months, rate: rate.result.value };
    return [{ ...(atMost(figures.has, need.atMost) ? met(figures) : failed(figures)), loan }];
  }).sort((a, b) => a.has! - b.has!);
  const [least] = verdicts;
  if (!least) return unknown('dealer.finance');
  return least.outcome === 'met' && unpriced.length > 0 ? { ...least, outcome: 'unknown', missing: ['additions.price'] } : least;
}

/** Judges a need of money by the lowest price a package can have, undefined where that isn't known. */
export const judgeMoney = (need: Need & DemandOf<'price' | 'instalment'>, low: number | undefined, bill: Unpriced, world: World): Verdict =>
  (need.capability === 'price' ? judgePrice(need, low, bill, world) : judgeInstalment(need, low, bill, world));
