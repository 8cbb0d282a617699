import { readDocument, type Reading } from '../documents/read.ts';
import { checkCatalogue } from './check.ts';
import { catalogue, type CatalogueDocument } from './schema.ts';

export interface CatalogueReading extends Reading<CatalogueDocument> {
  /** What is no fault, but costs the buyer an answer or the dealer his safety. */
  warnings: string[];
}

/**
 * Reads a parsed catalogue: its shape by the schema, then what no schema can say (references, ratings
 * that fall with distance, generations that overlap by a year at most). All faults together; never throws.
 */
export function readCatalogue(document: unknown): CatalogueReading {
  const reading = readDocument(catalogue, document);
  if (!reading.value) return { ...reading, warnings: [] };
  const { faults, warnings } = checkCatalogue(reading.value);
  return { ...reading, value: faults.length > 0 ? undefined : reading.value, faults, warnings };
}
