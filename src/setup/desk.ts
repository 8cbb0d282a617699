import type { CatalogueDocument } from '../catalogue/schema.ts';
import {
  assembling, csvOf, decode, headingText, mappingOf, matchColumns, parsing, queriesOf, readBase, readingRows, tableOf, unknownsOf,
  type Base, type ColumnMatch, type Finding, type Mapping, type RowsReading, type SheetKind, type Slices, type Table, type Unknown,
} from '../sheets/sheets.ts';
import { groupsOf, type Group } from './groups.ts';
import { withFrames } from './frames.ts';

export const sheetKinds = ['machines', 'units'] as const satisfies readonly SheetKind[];

/** A table on the desk: its cells as they stand now, what its columns are taken for, and what was read of it. */
interface Sheet {
  name: string;
  table: Table & { sheet: SheetKind };
  matches: readonly ColumnMatch[];
  mapping: Mapping;
  /** Of the file, before any row was read. */
  found: readonly Finding[];
  reading: RowsReading | undefined;
}

/** What is shown of a table. */
export interface SheetView {
  name: string;
  rows: number;
  headings: readonly string[];
  matches: readonly ColumnMatch[];
  mapping: Mapping;
  /** The first cells of each column that aren't blank, to know it by. */
  samples: readonly (readonly string[])[];
}

/** All that a page shows of the desk; plain data. */
export interface View {
  sheets: Partial<Record<SheetKind, SheetView>>;
  base: Base;
  groups: readonly Group[];
  unknowns: readonly Unknown[];
  catalogue: CatalogueDocument | undefined;
  canUndo: boolean;
}

/** Cells as they were before a change. */
interface Before {
  sheet: SheetKind;
  cells: readonly { row: number; column: number; text: string }[];
}

/** The headings are row 1 of a spreadsheet. */
const firstRow = 2;
const samplesShown = 3;

const samplesOf = ({ headings, rows }: Table) =>
  headings.map((_, column) => rows.flatMap((row) => (row[column]?.trim() ? [row[column]] : [])).slice(0, samplesShown));

/** A catalogue to begin with: nobody's, with nothing in it. */
export const blankBase: Base = { format: 'acre-to-axle/catalogue/1', id: 'my-lot', dealer: { name: 'My lot', currency: 'USD', units: 'us', locale: 'en-US' }, frames: [] };

/**
 * The dealer's work: two tables, what is in neither, and the catalogue they make. It holds no page and asks for no
 * clock, so that a worker can keep it.
 */
export class Desk {
  private base: Base = blankBase;
  private readonly sheets: { [S in SheetKind]?: Sheet } = {};
  private readonly changes: Before[] = [];
  private asOf: string;
  private readonly languages: readonly string[];

  /**
   * @param asOf       day that ages count from, such as 2026-04-30
   * @param languages  those the buyers may read in
   */
  constructor(asOf: string, languages: readonly string[]) {
    this.asOf = asOf;
    this.languages = languages;
  }

  /** Takes the bytes of a CSV file as a table; the one that was there before stays until this one is read. */
  *open(sheet: SheetKind, name: string, bytes: Uint8Array): Slices<readonly Finding[]> {
    const { text, findings } = decode(bytes, sheet);
    if (text === undefined) return findings;
    const table = (yield* parsing(sheet, text)) as Table & { sheet: SheetKind };
    this.put(sheet, name, table, [...findings, ...table.findings]);
    return [];
  }

  /** Takes a catalogue, or a dealer's JSON without machines; gives what keeps it from being one. */
  openDocument(name: string, document: unknown): readonly Finding[] {
    const { base, findings } = readBase(document);
    if (!base) return findings;
    this.base = base;
    this.changes.length = 0;
    for (const sheet of sheetKinds) {
      delete this.sheets[sheet];
      const entries = base[sheet];
      const { rows: [headings = [], ...rows], notHeld } = tableOf(sheet, entries ?? []);
      // What no table can hold as it is stays as it is, and isn't to be mended here.
      if (!entries || notHeld.length > 0) continue;
      this.put(sheet, name, {
        sheet, headings: headings.map(String), rows: rows.map((row) => row.map(String)), findings: [],
        dialect: { separator: ',', decimalMark: '.', decimalMarkFrom: 'given' },
      }, []);
    }
    return [];
  }

  map(sheet: SheetKind, mapping: Mapping) {
    const held = this.sheets[sheet];
    if (held) Object.assign(held, { mapping, reading: undefined });
  }

  /**
   * Writes one text into cells of a column.
   *
   * @param rows    as a spreadsheet numbers them
   * @param column  from 1
   */
  mend(sheet: SheetKind, column: number, rows: readonly number[], text: string) {
    const held = this.sheets[sheet];
    if (!held) return;
    this.changes.push({ sheet, cells: rows.map((row) => ({ row, column, text: held.table.rows[row - firstRow]?.[column - 1] ?? '' })) });
    for (const row of rows) this.write(held, row, column, text);
  }

  undo() {
    const last = this.changes.pop();
    const held = last && this.sheets[last.sheet];
    for (const { row, column, text } of held ? last.cells : []) this.write(held!, row, column, text);
  }

  /** A row more, by the fields of an entry; columns that aren't there yet are made. */
  add(sheet: SheetKind, values: Readonly<Record<string, string>>) {
    const held = this.sheets[sheet] ?? this.put(sheet, '', {
      sheet, headings: [], rows: [], findings: [], dialect: { separator: ',', decimalMark: '.', decimalMarkFrom: 'given' },
    }, []);
    const { table } = held;
    for (const field of Object.keys(values)) {
      if (held.mapping.some((taken) => taken?.field === field)) continue;
      table.headings.push(headingText(sheet, field));
      held.mapping = [...held.mapping, { field }];
    }
    table.rows.push(held.mapping.map((taken) => (taken && values[taken.field]) ?? ''));
    Object.assign(held, { matches: matchColumns(table), reading: undefined });
  }

  /** What is in neither table: the dealer, his frames, implements and figures. */
  set(base: Pick<Base, 'id' | 'dealer'> & Partial<Base>, asOf: string) {
    this.base = { ...this.base, ...base };
    this.asOf = asOf;
    for (const sheet of Object.values(this.sheets)) sheet.reading = undefined;
  }

  /** What lies on the desk now; the same again, whatever was opened since. */
  mark(): () => void {
    const [sheets, base, changes] = [{ ...this.sheets }, this.base, [...this.changes]];
    return () => {
      for (const sheet of sheetKinds) delete this.sheets[sheet];
      Object.assign(this.sheets, sheets);
      this.base = base;
      this.changes.splice(0, Infinity, ...changes);
    };
  }

  /** A table as CSV, as it stands now. */
  csv(sheet: SheetKind): string {
    const { headings = [], rows = [] } = this.sheets[sheet]?.table ?? {};
    return csvOf([headings, ...rows.map((row) => headings.map((_, column) => row[column] ?? ''))]);
  }

  /** Reads what has changed and makes the catalogue of it. */
  *view(): Slices<View> {
    const { dealer } = this.base;
    for (const held of Object.values(this.sheets)) {
      held.reading ??= yield* readingRows(held.table, held.mapping, { currency: dealer.currency, units: dealer.units, locale: dealer.locale });
    }
    const { machines, units } = this.sheets;
    const readings = {
      ...(machines?.reading && { machines: machines.reading as RowsReading<'machines'> }), ...(units?.reading && { units: units.reading as RowsReading<'units'> }),
    };
    const base = withFrames(this.base, (readings.machines?.entries ?? []).map(({ entry }) => entry.frame));
    const { catalogue, findings } = yield* assembling({ base, asOf: this.asOf, ...readings });
    const all = [
      ...Object.values(this.sheets).flatMap(({ found, reading }) => [...found, ...(reading?.findings ?? [])]),
      ...findings, ...(catalogue ? queriesOf(catalogue, readings, this.languages) : []),
    ];
    return {
      sheets: Object.fromEntries(Object.entries(this.sheets).map(([kind, { name, table, matches, mapping }]) =>
        [kind, { name, rows: table.rows.length, headings: table.headings, matches, mapping, samples: samplesOf(table) } satisfies SheetView])),
      base, groups: groupsOf(all), unknowns: catalogue ? unknownsOf(catalogue) : [], catalogue, canUndo: this.changes.length > 0,
    };
  }

  private put(sheet: SheetKind, name: string, table: Table & { sheet: SheetKind }, found: readonly Finding[]): Sheet {
    const matches = matchColumns(table);
    return (this.sheets[sheet] = { name, table, matches, mapping: mappingOf(matches), found, reading: undefined });
  }

  private write(held: Sheet, row: number, column: number, text: string) {
    const cells = held.table.rows[row - firstRow];
    if (!cells) return;
    while (cells.length < column) cells.push('');
    cells[column - 1] = text;
    held.reading = undefined;
  }
}
