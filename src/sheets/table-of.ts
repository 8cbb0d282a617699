import type { MachineDocument, UnitDocument } from '../catalogue/schema.ts';
import type { SheetKind } from './finding.ts';

export interface TableOfRows {
  /** The headings first, then a row an entry; ready for `csvOf`. */
  rows: (string | number)[][];
  /** Ids of entries that a table can't hold as they are. */
  notHeld: string[];
}

/** Entries of a catalogue as a table that reads back as the same entries. */
export function tableOf(_sheet: SheetKind, _entries: readonly (MachineDocument | UnitDocument)[]): TableOfRows {
  return { rows: [], notHeld: [] };
}
