import { readCatalogue } from '../catalogue/read-catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';

/** Why a catalogue can't be used; `missing` may pass, `faulty` wants the dealer. */
export type CatalogueTrouble = { code: 'catalogue.missing' | 'catalogue.faulty'; details: string[] };

/** Checks a catalogue handed in or fetched; the details are for whoever embeds, not for the buyer. */
export function usable(document: unknown): CatalogueDocument | CatalogueTrouble {
  const { value, faults, unknownKeys } = readCatalogue(document);
  if (value) return value;
  return {
    code: 'catalogue.faulty',
    details: [...faults, ...unknownKeys].map(({ place, read, expected }) => `${place}: read ${read}, expected ${expected}`),
  };
}

/** Fetches a catalogue from where the page says it is. */
export async function loadCatalogue(address: string, signal: AbortSignal): Promise<CatalogueDocument | CatalogueTrouble> {
  try {
    const answer = await fetch(address, { signal, credentials: 'omit' });
    if (!answer.ok) return { code: 'catalogue.missing', details: [`${address}: ${answer.status}`] };
    return usable(await answer.json());
  } catch (trouble) {
    if (signal.aborted) throw trouble;
    return { code: 'catalogue.missing', details: [`${address}: ${String(trouble)}`] };
  }
}

export const isTrouble = (outcome: CatalogueDocument | CatalogueTrouble): outcome is CatalogueTrouble => 'code' in outcome;
