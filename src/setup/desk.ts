import type { CatalogueDocument } from '../catalogue/schema.ts';
import {
  allAtOnce, assembling, csvOf, decode, parsing, queriesOf, readingRows, unknownsOf, versionOf,
  type Base, type Finding, type Mapping, type RowsReading, type SheetKind, type Slices, type Table,
} from '../sheets/sheets.ts';
import { blankBase } from './blank.ts';
import { withFrames } from './frames.ts';
import { groupsOf } from './groups.ts';
import {
  cellsOf, columnOfField, emptyTable, heldOf, rewritten, rowNumbers, withCells, withColumns, withDecimalMark, withFields, withMapping, withoutRows, withRow, type Held,
} from './held.ts';
import { idsFrom } from './ids.ts';
import { fromJson, kindOf } from './json-rows.ts';
import { sheetKinds, sheetViewOf, type View } from './view.ts';
import { yearsIn } from './years.ts';

type Sheets = { readonly [S in SheetKind]?: Held | undefined };

const tablesOf = (sheets: Sheets): Held[] => sheetKinds.flatMap((sheet) => sheets[sheet] ?? []);

const mostIdsNamed = 500;
/** Of a file whose kind isn't said, so much is read to know it by its headings. */
const headLength = 65_536;
/** Changes that can be taken back. */
const mostChanges = 200;

/**
 * The dealer's work: two tables, what is in neither, and the catalogue they make. It holds no page and asks for no
 * clock, so that a worker can keep it.
 */
export class Desk {
  private base: Base = blankBase;
  private sheets: Sheets = {};
  /** The tables before each change, the last one at the end. */
  private before: Sheets[] = [];
  private asOf: string;
  private withoutSold = false;
  private made: CatalogueDocument | undefined;
  private readonly languages: readonly string[];

  /**
   * @param asOf       day that ages count from, such as 2026-04-30
   * @param languages  those the buyers may read in
   */
  constructor(asOf: string, languages: readonly string[]) {
    this.asOf = asOf;
    this.languages = languages;
  }

  /**
   * Takes the bytes of a CSV file as a table; the one that was there before stays until this one is read.
   *
   * @param sheet  which of the two it is; without it, what more of its headings say
   */
  *open(sheet: SheetKind | undefined, name: string, bytes: Uint8Array): Slices<readonly Finding[]> {
    const { text, findings } = decode(bytes, sheet ?? 'machines');
    if (text === undefined) return findings;
    const head = text.slice(0, headLength);
    const kind = sheet ?? kindOf(sheetKinds.flatMap((each) => allAtOnce(parsing(each, head)).headings), this.sheets.machines ? 'units' : 'machines');
    return yield* this.parted(kind, name, text, findings.map((finding) => ({ ...finding, sheet: kind })));
  }

  /** The same file, with its cells parted by another sign; what was mended in it is gone. */
  *part(sheet: SheetKind, separator: string): Slices<readonly Finding[]> {
    const { name, text, found } = this.sheets[sheet] ?? {};
    if (name === undefined || text === undefined) return [];
    return yield* this.parted(sheet, name, text, found!.filter(({ code }) => code === 'file.not-utf-8' || code === 'file.utf-16'), separator);
  }

  /** Takes a catalogue, a dealer's JSON without machines, or bare rows; gives what keeps it from being one. */
  openDocument(name: string, document: unknown): readonly Finding[] {
    const { base, tables, findings } = fromJson(document);
    if (!base && Object.keys(tables).length === 0) return findings;
    if (base) this.base = base;
    for (const sheet of sheetKinds) {
      const cells = tables[sheet];
      // A table that the document says nothing of was brought by another file, and stays.
      if (base?.[sheet]) this.sheets = { ...this.sheets, [sheet]: undefined };
      if (cells) this.put(sheet, heldOf(name, emptyTable(sheet, cells.headings, cells.rows), []));
    }
    return [];
  }

  /** Takes a table for the other one. */
  swap(sheet: SheetKind) {
    const { [sheet]: held, ...others } = this.sheets;
    if (!held) return;
    const other = sheet === 'machines' ? 'units' : 'machines';
    this.change({ ...others, [other]: heldOf(held.name, { ...held.table, sheet: other }, held.found.map((finding) => ({ ...finding, sheet: other })), held.text) });
  }

  map(sheet: SheetKind, mapping: Mapping) {
    this.changeSheet(sheet, (held) => withMapping(held, mapping));
  }

  decimals(sheet: SheetKind, mark: '.' | ',') {
    this.changeSheet(sheet, (held) => withDecimalMark(held, mark));
  }

  /**
   * Writes one text into cells of a column.
   *
   * @param rows    as a spreadsheet numbers them
   * @param column  from 1
   */
  mend(sheet: SheetKind, column: number, rows: readonly number[], text: string) {
    this.changeSheet(sheet, (held) => withCells(held, rows, column, () => text));
  }

  /**
   * Writes texts into rows by field; columns that aren't there yet are made.
   *
   * @param rows  as a spreadsheet numbers them; all of them where none are named
   */
  fill(sheet: SheetKind, rows: readonly number[] | undefined, values: Readonly<Record<string, string>>) {
    this.changeSheet(sheet, (held) => withFields(held, rows ?? rowNumbers(held), values));
  }

  /**
   * Fills a field of all rows from what stands in a column; ids made of it are told apart by a number.
   *
   * @param column  from 1; 0 for the number of the row
   */
  fillFrom(sheet: SheetKind, field: string, column: number) {
    this.changeSheet(sheet, (held) => {
      const rows = rowNumbers(held);
      const texts = rows.map((row) => (column === 0 ? `${sheet === 'machines' ? 'machine' : 'unit'}-${row}` : (cellsOf(held, row)[column - 1] ?? '').trim()));
      const made = field === 'id' ? idsFrom(texts) : texts;
      const wider = withColumns(held, [field]);
      return withCells(wider, rows, columnOfField(wider, field), (row) => made[row - rows[0]!]!);
    });
  }

  /** Parts first and last year where a column has both in one cell; the last ones go into the column of last years. */
  partYears(sheet: SheetKind, column: number) {
    this.changeSheet(sheet, (held) => {
      const both = new Map(rowNumbers(held).flatMap((row) => {
        const years = yearsIn(cellsOf(held, row)[column - 1] ?? '');
        return years ? [[row, years] as const] : [];
      }));
      const rows = [...both.keys()];
      const wider = withColumns(held, ['years.to']);
      return withCells(withCells(wider, rows, column, (row) => both.get(row)!.from), rows, columnOfField(wider, 'years.to'), (row) => both.get(row)!.to);
    });
  }

  /** A row as a line of a file, cells parted by commas; to be changed and given to {@link rewrite}. */
  line(sheet: SheetKind, row: number): string {
    const held = this.sheets[sheet];
    return held ? csvOf([[...cellsOf(held, row)]]).trimEnd() : '';
  }

  rewrite(sheet: SheetKind, row: number, line: string) {
    const { headings } = allAtOnce(parsing(sheet, line, { separator: ',' }));
    this.changeSheet(sheet, (held) => rewritten(held, row, headings));
  }

  /** Leaves rows out; the others keep their numbers. */
  drop(sheet: SheetKind, rows: readonly number[]) {
    this.changeSheet(sheet, (held) => withoutRows(held, rows));
  }

  /** A row more, by the fields of an entry; columns that aren't there yet are made. */
  add(sheet: SheetKind, values: Readonly<Record<string, string>>) {
    const held = withRow(this.sheets[sheet] ?? heldOf('', emptyTable(sheet), []));
    const row = rowNumbers(held).at(-1)!;
    const id = { id: values.id ?? freeId(held, values.name ?? values.machine ?? sheet) };
    this.change({ ...this.sheets, [sheet]: withFields(held, [row], { ...id, ...values }) });
  }

  undo() {
    this.sheets = this.before.pop() ?? this.sheets;
  }

  /** What is in neither table: the dealer, his frames, implements and figures; and whether what is sold stays away. */
  set(base: Pick<Base, 'id' | 'dealer'> & Partial<Base>, asOf: string, withoutSold = false) {
    this.base = { ...this.base, ...base };
    this.asOf = asOf;
    this.withoutSold = withoutSold;
  }

  /** What lies on the desk now; the same again, whatever was done since. */
  mark(): () => void {
    const { sheets, base, asOf, withoutSold } = this;
    const before = [...this.before];
    return () => { Object.assign(this, { sheets, base, asOf, withoutSold, before }); };
  }

  /** A table as CSV, as it stands now; rows that were left out aren't in it. */
  csv(sheet: SheetKind): string {
    const { headings = [], rows = [] } = this.sheets[sheet]?.table ?? {};
    const filled = rows.filter((row) => row.some((cell) => cell.trim() !== ''));
    return csvOf([headings, ...filled.map((row) => headings.map((_, column) => row[column] ?? ''))]);
  }

  /** The catalogue as it was shown last. */
  get catalogue(): CatalogueDocument | undefined {
    return this.made;
  }

  /** Reads what has changed and makes the catalogue of it. */
  *view(): Slices<View> {
    const { currency, units, locale } = this.base.dealer;
    const by = JSON.stringify([currency, units, locale]);
    const readings: { machines?: RowsReading<'machines'>; units?: RowsReading<'units'> } = {};
    for (const sheet of sheetKinds) {
      const held = this.sheets[sheet];
      if (!held) continue;
      if (held.reading?.by !== by) held.reading = { of: yield* readingRows(held.table, held.mapping, { currency, units, locale }), by };
      Object.assign(readings, { [sheet]: held.reading.of });
    }
    const base = withFrames(this.base, (readings.machines?.entries ?? []).map(({ entry }) => entry.frame));
    const { catalogue, findings } = yield* assembling({ base, asOf: this.asOf, ...readings });
    const held = tablesOf(this.sheets);
    const all = [
      ...held.flatMap(({ found, reading }) => [...found, ...(reading?.of.findings ?? [])]),
      ...findings, ...(catalogue ? queriesOf(catalogue, readings, this.languages) : []),
    ];
    this.made = catalogue && this.withoutSold ? withVersion({ ...catalogue, units: unsold(catalogue) }) : catalogue;
    return {
      sheets: Object.fromEntries(held.map((each) => [each.table.sheet, sheetViewOf(each)])),
      base, groups: groupsOf(all, (sheet, column) => this.sheets[sheet]?.mapping[column - 1]?.field), unknowns: catalogue ? unknownsOf(catalogue) : [],
      machineIds: (readings.machines?.entries ?? []).slice(0, mostIdsNamed).map(({ entry }) => entry.id),
      made: catalogue && this.made && {
        version: this.made.version!, asOf: this.asOf, machines: catalogue.machines.length, units: this.made.units?.length ?? 0,
        sold: (catalogue.units?.length ?? 0) - unsold(catalogue).length, implements: catalogue.implements?.length ?? 0,
      },
      canUndo: this.before.length > 0,
    };
  }

  private *parted(sheet: SheetKind, name: string, text: string, findings: readonly Finding[], separator?: string): Slices<readonly Finding[]> {
    const table = (yield* parsing(sheet, text, separator === undefined ? {} : { separator })) as Table & { sheet: SheetKind };
    this.put(sheet, heldOf(name, table, [...findings, ...table.findings], text));
    return [];
  }

  /** Another table in its place, which no change led to: what was changed before can't be taken back. */
  private put(sheet: SheetKind, held: Held) {
    this.sheets = { ...this.sheets, [sheet]: held };
    this.before = [];
  }

  private change(sheets: Sheets) {
    this.before = [...this.before, this.sheets].slice(-mostChanges);
    this.sheets = sheets;
  }

  private changeSheet(sheet: SheetKind, changed: (held: Held) => Held) {
    const held = this.sheets[sheet];
    if (held) this.change({ ...this.sheets, [sheet]: changed(held) });
  }
}

/** An id from a name that no row has yet. */
function freeId(held: Held, name: string): string {
  const column = columnOfField(held, 'id');
  const taken = held.table.rows.map((row) => (row[column - 1] ?? '').trim());
  return idsFrom([...taken, name]).at(-1) ?? '';
}

const unsold = ({ units = [] }: CatalogueDocument) => units.filter(({ status }) => status !== 'sold');
const withVersion = (catalogue: CatalogueDocument): CatalogueDocument => ({ ...catalogue, version: versionOf(catalogue) });
