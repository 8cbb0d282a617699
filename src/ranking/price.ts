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

/** Price of a candidate with its bill: a unit's own, or the range of its machine's typical ones. Undefined where none is known. */
export function packagePrice({ machine, unit }: Candidate, bill: Bill): PackagePrice | undefined {
  const typical = (machine.typicalPrices ?? []).map(({ price }) => price.value);
  const range = unit ? (unit.price ? [unit.price.value] : []) : typical;
  if (range.length === 0) return undefined;
  const [low, high] = [Math.min(...range), Math.max(...range)];
  return { low: withBill(low, bill), high: withBill(high, bill), machine: [low, high], goods: [low + bill.extra, high + bill.extra], unpriced: bill.unpriced };
}

/** The limit against the lowest price the package can have: over it is over it, whatever must be asked. */
function judgePrice(need: Need & DemandOf<'price'>, price: PackagePrice | undefined, { dealer }: World): Verdict {
  if (need.currency !== dealer.currency) return unknown('dealer.currency');
  if (!price) return unknown('price');
  const figures = { has: price.low, wants: need.atMost, unit: 'money', bound: 'at-most' } as const;
  if (!atMost(price.low, need.atMost)) return failed(figures);
  return price.unpriced.length > 0 ? { ...unknown('additions.price'), ...figures } : met(figures);
}

/**
 * The lowest instalment of the dealer's own terms against what the buyer would pay a month. Told only with
 * deposit, months and rate, and outside the United States only where the dealer gave his own words for it.
 */
function judgeInstalment(need: Need & DemandOf<'instalment'>, price: PackagePrice | undefined, { dealer }: World): Verdict {
  if (need.currency !== dealer.currency) return unknown('dealer.currency');
  const allowed = dealer.currency === 'USD' || Object.values(dealer.terms ?? {}).some(({ finance }) => finance !== undefined);
  if (!allowed || !dealer.finance || dealer.finance.length === 0) return unknown('dealer.finance');
  if (!price) return unknown('price');
  const verdicts = dealer.finance.flatMap(({ annualRate, months, depositShare }): Verdict[] => {
    const working = instalment(price.low * (1 - depositShare), annualRate, months);
    if (isRefusal(working)) return [];
    const financed = price.low * (1 - depositShare);
    const rate = annualPercentageRate(financed, working.result.value, months);
    const carried = principalFor(need.atMost, annualRate, months);
    if (isRefusal(rate) || isRefusal(carried)) return [];
    const figures = { has: working.result.value, wants: need.atMost, unit: 'money', bound: 'at-most', workings: [working, rate, carried] } as const;
    const loan = { deposit: price.low * depositShare, months, rate: rate.result.value };
    return [{ ...(atMost(figures.has, need.atMost) ? met(figures) : failed(figures)), loan }];
  }).sort((a, b) => a.has! - b.has!);
  const [least] = verdicts;
  if (!least) return unknown('dealer.finance');
  return least.outcome === 'met' && price.unpriced.length > 0 ? { ...least, outcome: 'unknown', missing: ['additions.price'] } : least;
}

export const judgeMoney = (need: Need & DemandOf<'price' | 'instalment'>, price: PackagePrice | undefined, world: World): Verdict =>
  (need.capability === 'price' ? judgePrice(need, price, world) : judgeInstalment(need, price, world));

/** The outcome of {@link judgeMoney} alone, by the lowest price of a package, for a lot with very many units. */
export function moneyOutcome(need: Need & DemandOf<'price' | 'instalment'>, low: number | undefined, bill: Bill, world: World): Verdict['outcome'] {
  if (need.capability === 'instalment') {
    return judgeInstalment(need, low === undefined ? undefined : { low, high: low, machine: [low, low], goods: [low, low], unpriced: bill.unpriced }, world).outcome;
  }
  if (need.currency !== world.dealer.currency || low === undefined) return 'unknown';
  return !atMost(low, need.atMost) ? 'failed' : bill.unpriced.length > 0 ? 'unknown' : 'met';
}
