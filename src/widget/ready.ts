import type { Catalogue } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { VisitActor } from '../guide/guide.ts';

export type Reckoner = typeof import('./reckoner.ts');

/** What there is once everything has come. */
export interface Ready {
  visit: VisitActor;
  document: CatalogueDocument;
  /** The same in SI, kept as long, so that what was judged of it is remembered from answer to answer. */
  inSi: Catalogue;
  reckoner: Reckoner;
}
