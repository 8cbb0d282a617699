import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Finding } from './finding.ts';
import type { RowsReading } from './read-rows.ts';
import type { Slices } from './slices.ts';

/** The dealer's JSON: a catalogue that may lack machines, units and the day it is as of. */
export type Base = Omit<CatalogueDocument, 'machines' | 'asOf'> & Partial<Pick<CatalogueDocument, 'machines' | 'asOf'>>;

export interface Parts {
  base: Base;
  /** Day the ages count from, as 2026-04-30. The core has no clock: the caller gives it. */
  asOf: string;
  /** Stands for the machines of `base`, where given. */
  machines?: RowsReading<'machines'>;
  /** Stands for the units of `base`, where given. */
  units?: RowsReading<'units'>;
}

export interface Assembled {
  /** With its `version`; undefined where nothing is left that makes a catalogue. */
  catalogue: CatalogueDocument | undefined;
  findings: Finding[];
}

/** Reads the dealer's JSON, already parsed. */
export function readBase(_document: unknown): { base: Base | undefined; findings: Finding[] } {
  return { base: undefined, findings: [] };
}

/** Puts the parts together and checks what stands between them; what a check refuses is left out and told by row and column. */
export function* assembling(_parts: Parts): Slices<Assembled> {
  yield { done: 0, of: 1 };
  return { catalogue: undefined, findings: [] };
}
