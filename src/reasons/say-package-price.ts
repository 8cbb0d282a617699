import { showAmount } from '../units/show.ts';
import type { Voice } from './say.ts';

interface Priced {
  /** Absent where nobody knows it. */
  price?: { low: number; high: number } | undefined;
  /** What must be asked about and comes on top. */
  unpriced?: readonly unknown[];
}

/** The price of a package in words. */
export function sayPackagePrice({ price, unpriced = [] }: Priced, { words: { result }, reader }: Voice): string {
  if (!price) return result.priceUnknown;
  const money = (value: number) => showAmount(value, 'money', reader);
  const known = price.low === price.high ? result.packageFrom(money(price.low)) : result.packageRange(money(price.low), money(price.high));
  return unpriced.length > 0 ? `${known}, ${result.pricePlus}` : known;
}
