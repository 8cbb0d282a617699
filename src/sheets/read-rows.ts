import type { MachineDocument, UnitDocument } from '../catalogue/schema.ts';
import type { Finding, SheetKind } from './finding.ts';
import type { Mapping } from './match.ts';
import type { Slices } from './slices.ts';
import type { Table } from './table.ts';

export interface RowOf {
  machines: MachineDocument;
  units: UnitDocument;
}

/** What the rows of a table say. Every row that isn't blank is either an entry or in a fault with `dropsRow`. */
export interface RowsReading<S extends SheetKind = SheetKind> {
  sheet: S;
  /** Each with its row in the spreadsheet. */
  entries: { row: number; entry: RowOf[S] }[];
  /** Where the fields stand, so that what is found later can be told by its column. */
  columns: { column: number; heading: string; field: string }[];
  findings: Finding[];
}

/** What the dealer's own document says that a bare number needs. */
export interface Conventions {
  currency: string;
  units: 'us' | 'metric';
  locale: string;
}

/** Reads the rows of a table by a mapping of its columns. */
export function* readingRows<S extends SheetKind>(table: Table & { sheet: S }, _mapping: Mapping, _conventions: Conventions): Slices<RowsReading<S>> {
  yield { done: 0, of: table.rows.length };
  return { sheet: table.sheet, entries: [], columns: [], findings: [] };
}
