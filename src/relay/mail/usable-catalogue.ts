import { catalogueOf, type Catalogue } from '../../catalogue/catalogue.ts';
import { readMended } from '../../catalogue/read-mended.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import type { StoredCatalogue } from '../store/store.ts';

/** Characters of a label in a mail. */
const longestLabel = 200;
/** Catalogues that stay read: parsing one takes longer than making a mail. */
const mostKept = 8;

export interface Usable {
  document: CatalogueDocument;
  inSi: Catalogue;
}

/**
 * A dealer's catalogue from its text, its own texts made harmless and units with faults in them set aside as a page does it.
 *
 * @throws Error where it can't be used
 */
export function usableCatalogue(text: string): Usable {
  const read = readMended(JSON.parse(text) as unknown, longestLabel);
  if (!('value' in read)) throw new Error('The catalogue can’t be used.');
  return { document: read.value, inSi: catalogueOf(read.value) };
}

/** The last few catalogues, by the hash of their text. */
export class ReadCatalogues {
  readonly #read = new Map<string, Usable>();

  /** @throws Error where it can't be used */
  of({ hash, text }: Pick<StoredCatalogue, 'hash' | 'text'>): Usable {
    const found = this.#read.get(hash) ?? usableCatalogue(text);
    this.#read.delete(hash);
    this.#read.set(hash, found);
    for (const oldest of [...this.#read.keys()].slice(0, -mostKept)) this.#read.delete(oldest);
    return found;
  }
}
