import type { MachineDocument, UnitDocument } from '../catalogue/schema.ts';
import { shown } from '../documents/fault.ts';
import type { CellContext } from './cells/cell.ts';
import { readCell, saysNone } from './cells/read-cell.ts';
import { entryOf } from './entry.ts';
import type { Finding, SheetKind } from './finding.ts';
import { headingOf, headingsOf, headingText, noneIn, type Heading } from './headings/headings.ts';
import { matchColumns, type Mapping } from './match.ts';
import type { Slices } from './slices.ts';
import { isBlank, type Table } from './table.ts';

export interface RowOf {
  machines: MachineDocument;
  units: UnitDocument;
}

/**
 * What the rows of a table say. Every row that isn't blank is an entry or in a fault with `dropsRow`; a fault without a row
 * that has `dropsRow` is of all rows.
 */
export interface RowsReading<S extends SheetKind = SheetKind> {
  sheet: S;
  /** Each with its row in the spreadsheet. */
  entries: { row: number; entry: RowOf[S] }[];
  /** Where the fields stand, so that what is found later can be told by its column. */
  columns: { column: number; heading: string; field: string }[];
  findings: Finding[];
}

/** What the dealer's own document says that a bare cell needs. */
export type Conventions = Pick<CellContext, 'currency' | 'units' | 'locale'>;

interface Column {
  index: number;
  heading: string;
  field: string;
  documented: Heading;
  context: CellContext;
}

/** Notices that would be the same in every row are told once a column, at the first. */
const oncePerColumn: readonly string[] = ['column.unit-assumed', 'cell.id-changed', 'cell.day-assumed'];
const rowsASlice = 100;
/** The row below the headings, as a spreadsheet numbers them. */
export const firstRow = 2;

/**
 * Reads the rows of a table by a mapping of its columns.
 *
 * @param mapping  one entry a column, as `mappingOf` makes it or a person corrected it; a field that isn't documented is left out
 */
export function* readingRows<S extends SheetKind>(table: Table & { sheet: S }, mapping: Mapping, conventions: Conventions): Slices<RowsReading<S>> {
  const { sheet, headings, rows, dialect } = table;
  const findings: Finding[] = [];
  const note = (finding: Omit<Finding, 'sheet'>) => findings.push({ ...finding, sheet } as Finding);

  const columns: Column[] = [];
  headings.forEach((heading, index) => {
    const taken = mapping[index];
    const documented = taken && headingOf(sheet, taken.field);
    const place = { column: index + 1, heading };
    const twice = taken && columns.find(({ field }) => field === taken.field);
    if (!taken || !documented) {
      if (rows.every((row) => (row[index] ?? '').trim() === '')) return;
      const near = matchColumns({ sheet, headings: [heading] })[0]!.nearest.map((each) => each.heading);
      if (heading.trim() === '') note({ ...place, code: 'column.blank-heading', weight: 'query', facts: {} });
      else note({ ...place, code: 'column.not-taken', weight: near.length > 0 ? 'query' : 'notice', facts: { nearest: near }, read: shown(heading) });
    } else if (twice) {
      note({ ...place, code: 'column.twice', weight: 'fault', facts: { first: twice.index + 1 }, read: shown(heading) });
    } else {
      columns.push({ index, heading, field: taken.field, documented, context: { dialect, unit: taken.unit, ...conventions } });
    }
  });
  const reading = { sheet, entries: [] as { row: number; entry: RowOf[S] }[], columns: columns.map(({ index, heading, field }) => ({ column: index + 1, heading, field })), findings };
  const missing = headingsOf(sheet).filter(({ needed, field }) => needed && !columns.some((column) => column.field === field));
  if (rows.length > 0) for (const { heading } of missing) note({ code: 'column.missing', weight: 'fault', facts: { heading }, dropsRow: true });
  if (missing.length > 0) return reading;

  const told = new Set<string>();
  const rowOfId = new Map<string, number>();
  const needed = columns.filter(({ documented }) => documented.needed);
  const isPart = (field: string) => headingOf(sheet, field)?.ifBad === 'part';

  const spoilt = new Set(table.findings.filter(({ dropsRow }) => dropsRow).map(({ row }) => row));

  for (const [index, cells] of rows.entries()) {
    if (index % rowsASlice === 0) yield { done: index, of: rows.length };
    const row = index + firstRow;
    if (isBlank(cells) || spoilt.has(row)) continue;
    const ragged = { cells: cells.length, headings: headings.length };
    if (cells.slice(headings.length).some((cell) => cell.trim() !== '')) {
      note({ row, code: 'row.ragged-long', weight: 'fault', facts: ragged, read: shown(cells.slice(headings.length).join(dialect.separator)), dropsRow: true });
      continue;
    }
    if (cells.length < headings.length) note({ row, code: 'row.ragged-short', weight: 'query', facts: ragged });

    const values = new Map<string, unknown>();
    const bad = new Set<string>();
    const none = new Set<string>();
    let drops = false;
    for (const { index: at, heading, field, documented, context } of columns) {
      const raw = cells[at] ?? '';
      if (raw === '') continue;
      const [list = ''] = field.split('[', 1);
      if (noneIn[list] === field && sheet === 'machines' && saysNone(raw)) {
        none.add(list);
        continue;
      }
      const { value, told: said } = readCell(raw, documented, context);
      if (value !== undefined) values.set(field, value);
      if (!said) continue;
      const once = `${said.code} ${at}`;
      if (oncePerColumn.includes(said.code) && told.has(once)) continue;
      told.add(once);
      const isFault = said.weight === 'fault';
      const dropsRow = isFault && documented.ifBad === 'row';
      if (isFault) bad.add(field);
      drops ||= dropsRow;
      note({ ...said, row, column: at + 1, heading, read: shown(raw), ...(dropsRow && { dropsRow }) } as Omit<Finding, 'sheet'>);
    }
    const blank = needed.filter(({ field }) => !values.has(field) && !bad.has(field));
    if (blank.length > 0) {
      drops = true;
      note({ row, code: 'row.without', weight: 'fault', facts: { headings: blank.map(({ field }) => headingText(sheet, field)) }, dropsRow: true });
    }
    if (drops) continue;

    const { entry, incomplete } = entryOf(sheet, { values, bad, none }, isPart);
    for (const { field, headings: lacks } of incomplete) {
      const column = columns.find((each) => each.field === field);
      const place = { row, ...(column && { column: column.index + 1, heading: column.heading, read: shown(cells[column.index] ?? '') }) };
      if (lacks.length > 0) note({ ...place, code: 'cell.needs', weight: 'fault', facts: { headings: lacks } });
      else note({ ...place, code: 'cell.none-and-more', weight: 'fault', facts: { heading: headingText(sheet, field) } });
    }
    const id = String(entry.id);
    const first = rowOfId.get(id);
    if (first === undefined) {
      rowOfId.set(id, row);
      reading.entries.push({ row, entry: entry as RowOf[S] });
    } else {
      const column = columns.find(({ field }) => field === 'id')!;
      note({ row, column: column.index + 1, heading: column.heading, code: 'row.same-id', weight: 'fault', facts: { id, first }, read: shown(cells[column.index]), dropsRow: true });
    }
  }
  return reading;
}
