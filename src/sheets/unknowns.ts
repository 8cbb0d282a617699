import type { CatalogueDocument } from '../catalogue/schema.ts';

/** A figure that is missing, on how many, and which: its words say what that costs. */
export interface Unknown {
  figure: string;
  sheet: 'machines' | 'units';
  ids: readonly string[];
  /** Of how many. */
  of: number;
}

/** What is unknown in a catalogue, what costs most first. */
export function unknownsOf(_catalogue: CatalogueDocument): Unknown[] {
  return [];
}
