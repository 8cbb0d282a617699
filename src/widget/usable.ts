import { readCatalogue } from '../catalogue/read-catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { CatalogueTrouble } from './fetch-json.ts';

/** Checks a catalogue handed in or fetched. */
export function usable(document: unknown): CatalogueDocument | CatalogueTrouble {
  const { value, faults, unknownKeys } = readCatalogue(document);
  if (value) return value;
  return {
    code: 'catalogue.faulty',
    details: [...faults, ...unknownKeys].map(({ place, read, expected }) => `${place}: read ${read}, expected ${expected}`),
  };
}
