import { catalogueOf, type Catalogue } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { isTrouble } from '../widget/trouble.ts';
import { usable } from '../widget/usable.ts';
import { bring, keep, parsed } from './brought.ts';

/** Days after which a copy is told of loudly, and after which it is asked about before use. */
const [oldFrom, askedFrom] = [7, 30];
const aDay = 86_400_000;

/** A dealer's line-up and lot as they are at the counter. */
export interface StockList {
  document: CatalogueDocument;
  inSi: Catalogue;
  /** A copy is from the last time there was a network. */
  from: 'network' | 'copy';
  age: 'fresh' | 'old' | 'asked';
}

/** Ages count for a copy alone: what the dealer's site gives today is what he has to say today. */
const ageOf = ({ asOf }: CatalogueDocument, from: StockList['from'], now: number): StockList['age'] => {
  const days = (now - Date.parse(asOf)) / aDay;
  if (from === 'network' || days <= oldFrom) return 'fresh';
  return days > askedFrom ? 'asked' : 'old';
};

/** @returns undefined where there is none, neither now nor from before */
export async function stockList(address: string, now: number): Promise<StockList | undefined> {
  for await (const brought of bring(address)) {
    const read = usable(parsed(brought.text));
    if (isTrouble(read)) {
      console.warn(`acre-to-axle: ${read.code}\n${read.details.join('\n')}`);
      continue;
    }
    await keep(address, brought);
    return { document: read.value, inSi: catalogueOf(read.value), from: brought.from, age: ageOf(read.value, brought.from, now) };
  }
  return undefined;
}
