import { firstRow, headingText, mappingOf, matchColumns, type ColumnMatch, type Finding, type Mapping, type RowsReading, type SheetKind, type Table } from '../sheets/sheets.ts';

/** A table on the desk: its cells as they stand now, and what its columns are taken for. A change makes another. */
export interface Held {
  name: string;
  table: Table & { sheet: SheetKind };
  matches: readonly ColumnMatch[];
  mapping: Mapping;
  /** Of the file, before any row was read. */
  found: readonly Finding[];
  /** The file as it was opened, for when it is to be parted otherwise; none where it wasn't a table. */
  text?: string;
  /** What was read of it, and by which conventions: made when it is asked for. */
  reading?: { of: RowsReading; by: string };
}

export function heldOf(name: string, table: Table & { sheet: SheetKind }, found: readonly Finding[], text?: string): Held {
  const matches = matchColumns(table);
  return { name, table, matches, mapping: mappingOf(matches), found, ...(text !== undefined && { text }) };
}

/** A table with nothing in it yet. */
export const emptyTable = (sheet: SheetKind, headings: readonly string[] = [], rows: readonly (readonly string[])[] = []): Table & { sheet: SheetKind } => ({
  sheet, headings: [...headings], rows: rows.map((row) => [...row]), findings: [], dialect: { separator: ',', decimalMark: '.', decimalMarkFrom: 'given' },
});

const changed = (held: Held, change: Partial<Held>): Held => ({ ...held, reading: undefined, ...change });

export const cellsOf = ({ table }: Held, row: number): readonly string[] => table.rows[row - firstRow] ?? [];

export const withMapping = (held: Held, mapping: Mapping): Held => changed(held, { mapping });

/** How numbers are to be read from now on; then none of them is a riddle. */
export const withDecimalMark = (held: Held, decimalMark: '.' | ','): Held =>
  changed(held, { table: { ...held.table, dialect: { ...held.table.dialect, decimalMark, decimalMarkFrom: 'given' } } });

/**
 * Other cells in some rows.
 *
 * @param rows  as a spreadsheet numbers them; those that aren't there are passed over
 */
export function withRows(held: Held, rows: readonly number[], cells: (before: readonly string[], row: number) => readonly string[]): Held {
  const all = [...held.table.rows];
  for (const row of rows) {
    const before = all[row - firstRow];
    if (before) all[row - firstRow] = [...cells(before, row)];
  }
  return changed(held, { table: { ...held.table, rows: all } });
}

/** @param column  from 1 */
export const withCells = (held: Held, rows: readonly number[], column: number, text: (row: number) => string): Held =>
  withRows(held, rows, (before, row) => Array.from({ length: Math.max(before.length, column) }, (_, at) => (at === column - 1 ? text(row) : (before[at] ?? ''))));

/** With a column for each field; those that aren't there yet are made. */
export function withColumns(held: Held, fields: readonly string[]): Held {
  const missing = fields.filter((field) => !held.mapping.some((taken) => taken?.field === field));
  if (missing.length === 0) return held;
  const { table, mapping } = held;
  const headings = [...table.headings, ...missing.map((field) => headingText(table.sheet, field))];
  const last = table.headings.length;
  // What stands behind the last column is in none, and must not slip into a new one; a row that is too short stays so.
  const rows = table.rows.map((row) => (row.length < last ? row : [...row.slice(0, last), ...missing.map(() => ''), ...row.slice(last)]));
  return changed(held, { table: { ...table, headings, rows }, matches: matchColumns({ sheet: table.sheet, headings }), mapping: [...mapping, ...missing.map((field) => ({ field }))] });
}

export const columnOfField = ({ mapping }: Held, field: string): number => mapping.findIndex((taken) => taken?.field === field) + 1;

/** Texts into the cells of some rows, by field. */
export const withFields = (held: Held, rows: readonly number[], values: Readonly<Record<string, string>>): Held =>
  Object.entries(values).reduce((now, [field, text]) => withCells(now, rows, columnOfField(now, field), () => text), withColumns(held, Object.keys(values)));

export const rowNumbers = ({ table }: Held): number[] => table.rows.map((_, index) => index + firstRow);

/** A row more, with nothing in it yet. */
export const withRow = (held: Held): Held => changed(held, { table: { ...held.table, rows: [...held.table.rows, held.table.headings.map(() => '')] } });

/** Other rows in the place of some; what was said of how those were written is settled. */
function replaced(held: Held, rows: readonly number[], cells: readonly string[]): Held {
  const now = withRows(held, rows, () => cells);
  const gone = new Set(rows);
  const other = ({ row }: Finding) => row === undefined || !gone.has(row);
  return changed(now, { table: { ...now.table, findings: now.table.findings.filter(other) }, found: held.found.filter(other) });
}

export const rewritten = (held: Held, row: number, cells: readonly string[]): Held => replaced(held, [row], cells);

/** Without some rows: they are blank from now on, so that the others keep their numbers. */
export const withoutRows = (held: Held, rows: readonly number[]): Held => replaced(held, rows, []);
