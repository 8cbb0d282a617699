import { catalogueOf, type Catalogue } from '../../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import type { Said, Told } from './calls.ts';
import { reckoned } from './steps.ts';

/** What of a worker is used here; the types of a page and of a worker don't go together. */
interface Scope {
  postMessage(message: Said): void;
  onmessage: ((event: { data: Told }) => void) | null;
}
const scope = globalThis as unknown as Scope;

let lot: { document: CatalogueDocument; inSi: Catalogue } | undefined;
let last = 0;

/** Messages that have come meanwhile are taken before this resolves. */
const pause = () => new Promise<void>((resolve) => { setTimeout(resolve, 0); });

scope.onmessage = async ({ data }) => {
  if ('catalogue' in data) {
    lot = { document: data.catalogue, inSi: catalogueOf(data.catalogue) };
    return;
  }
  last = data.id;
  await pause();
  if (!lot) return;
  for (const said of reckoned(data.id, data.answers, lot.document, lot.inSi)) {
    scope.postMessage(said);
    await pause();
    // Whoever types on wants nothing of what he has typed over.
    if (last !== data.id) return;
  }
};
