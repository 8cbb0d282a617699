import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Finding } from './finding.ts';
import type { RowsReading } from './read-rows.ts';

/**
 * Figures that can hardly be, each by the rule book's bounds, with what may have been meant.
 *
 * @param sources  the tables it was made from, so that a query names row and column
 */
export function queriesOf(_catalogue: CatalogueDocument, _sources: { machines?: RowsReading<'machines'>; units?: RowsReading<'units'> } = {}): Finding[] {
  return [];
}
