import type { CatalogueDocument } from '../catalogue/schema.ts';
import { ruleBook } from '../trade/book.ts';
import type { Found } from './delivery.ts';
import { keepCatalogue, keptCatalogue } from './last-good.ts';
import { isTrouble, type CatalogueTrouble } from './trouble.ts';
import { usable, type Usable } from './usable.ts';

/** What a page has of the dealer's stock, and all that is the matter with it. */
export interface Stock {
  document: CatalogueDocument | undefined;
  troubles: readonly CatalogueTrouble[];
}

/** A document handed in, or the text of one: fetched, or from inside the tag. */
export type Delivered = Found | { json: unknown } | CatalogueTrouble;

function read(delivered: Delivered): Usable | CatalogueTrouble {
  if (isTrouble(delivered)) return delivered;
  if ('json' in delivered) return usable(delivered.json);
  try {
    return usable(JSON.parse(delivered.text));
  } catch (trouble) {
    const why = delivered.text.trim() === '' ? 'the file is empty' : String(trouble);
    return { code: 'catalogue.not-json', details: [why] };
  }
}

function isStale({ asOf, rules }: CatalogueDocument, now: Date): boolean {
  const until = new Date(asOf);
  until.setUTCMonth(until.getUTCMonth() + ruleBook(rules).value('lot.fresh'));
  return until < now;
}

const isOnLot = ({ status }: { status?: string | undefined }) => status !== 'sold';

/** What the buyer should know of a stock that can be used all the same. */
const flaws = ({ value, setAside }: Usable, now: Date): CatalogueTrouble[] => [
  ...(setAside.length > 0 ? [{ code: 'catalogue.mended', details: setAside } as const] : []),
  ...(value.units && !value.units.some(isOnLot) ? [{ code: 'catalogue.no-stock', details: ['units: none that isn’t sold'] } as const] : []),
  ...(isStale(value, now) ? [{ code: 'catalogue.stale', details: [`asOf: ${value.asOf}`] } as const] : []),
];

/**
 * Reads what was delivered. Where it can't be used, the last copy that could steps in, if the page keeps one.
 *
 * @param keptAt  address the page's copies are kept under; undefined where it keeps none
 */
export async function stockOf(delivered: Delivered, keptAt: string | undefined, now: Date): Promise<Stock> {
  const found = read(delivered);
  if (!isTrouble(found)) {
    if (keptAt !== undefined && 'text' in delivered) await keepCatalogue(keptAt, delivered.text);
    return { document: found.value, troubles: flaws(found, now) };
  }
  const text = keptAt === undefined ? undefined : await keptCatalogue(keptAt);
  const last = text === undefined ? found : read({ text });
  if (isTrouble(last)) return { document: undefined, troubles: [found] };
  return { document: last.value, troubles: [found, { code: 'catalogue.kept', details: [`the copy of ${last.value.asOf} is used`] }, ...flaws(last, now)] };
}
