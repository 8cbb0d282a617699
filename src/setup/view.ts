import type { Base, ColumnMatch, Dialect, Mapping, SheetKind, Table, Unknown } from '../sheets/sheets.ts';
import type { Group } from './groups.ts';
import type { Held } from './held.ts';

export const sheetKinds = ['machines', 'units'] as const satisfies readonly SheetKind[];

/** What is shown of a table. */
export interface SheetView {
  name: string;
  rows: number;
  /** As a spreadsheet numbers it. */
  lastRow: number;
  headings: readonly string[];
  matches: readonly ColumnMatch[];
  mapping: Mapping;
  dialect: Dialect;
  /** Whether it is a file that may be parted otherwise. */
  isText: boolean;
  /** The first cells of each column that aren't blank, to know it by. */
  samples: readonly (readonly string[])[];
}

/** All that a page shows of the desk; plain data. The catalogue itself is asked for when it is wanted: it may be large. */
export interface View {
  sheets: Partial<Record<SheetKind, SheetView>>;
  base: Base;
  groups: readonly Group[];
  unknowns: readonly Unknown[];
  /** To choose from where a unit names its machine. */
  machineIds: readonly string[];
  made: { version: string; asOf: string; machines: number; units: number; sold: number; implements: number } | undefined;
  canUndo: boolean;
}

const samplesShown = 3;

const samplesOf = ({ headings, rows }: Table) => {
  const found: string[][] = headings.map(() => []);
  for (const row of rows) {
    if (found.every((samples) => samples.length >= samplesShown)) break;
    row.forEach((cell, column) => { if (cell.trim() && (found[column]?.length ?? samplesShown) < samplesShown) found[column]!.push(cell); });
  }
  return found;
};

export const sheetViewOf = ({ name, table, matches, mapping, text }: Held): SheetView => ({
  name, rows: table.rows.filter((row) => row.length > 0).length, lastRow: table.rows.length + 1,
  headings: table.headings, matches, mapping, dialect: table.dialect, isText: text !== undefined, samples: samplesOf(table),
});
