import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import {
  allAtOnce, assembling, decode, mappingOf, matchColumns, parsing, readBase, readingRows, type Assembled, type Finding, type RowsReading, type SheetKind, type Table,
} from '../../src/sheets/sheets.ts';
import { demoCatalogue } from '../cli/fake-io.ts';

export const demo = JSON.parse(demoCatalogue) as CatalogueDocument & { units: NonNullable<CatalogueDocument['units']> };
export const { base } = readBase(demo) as { base: NonNullable<ReturnType<typeof readBase>['base']> };

const bytes = (text: string) => new TextEncoder().encode(text);

export interface Given {
  decimalMark?: '.' | ',';
  separator?: string;
  units?: 'us' | 'metric';
  currency?: string;
  locale?: string;
}

/** A text, or bytes, as a table; faults of the file thrown away. */
export function tableOfText<S extends SheetKind>(sheet: S, text: string | Uint8Array, given: Given = {}): Table & { sheet: S } {
  const decoded = decode(typeof text === 'string' ? bytes(text) : text, sheet);
  return allAtOnce(parsing(sheet, decoded.text ?? '', given)) as Table & { sheet: S };
}

/** A table read by its own headings. */
export function read<S extends SheetKind>(sheet: S, text: string | Uint8Array, given: Given = {}): RowsReading<S> {
  const table = tableOfText(sheet, text, given);
  const { units = 'us', currency = 'USD', locale = 'en-US' } = given;
  const rows = allAtOnce(readingRows(table, mappingOf(matchColumns(table)), { units, currency, locale }));
  return { ...rows, findings: [...table.findings, ...rows.findings] };
}

export const assembled = (rows: { machines?: RowsReading<'machines'>; units?: RowsReading<'units'> }): Assembled =>
  allAtOnce(assembling({ base, asOf: demo.asOf, ...rows }));

/** Codes of what was found, each with its place as a spreadsheet names it by numbers: row, column. */
export const codes = (findings: readonly Finding[]) => findings.map(({ code, row, column }) => [code, row, column]);

export const neededOfMachine = 'id,name,make,frame,tier,from year,years are';
export const aMachine = 'rill,Rill,Millrace,subcompact,economy,2016,model';
/** One machine with some more columns. */
export const machineWith = (headings: string, cells: string) => `${neededOfMachine},${headings}\n${aMachine},${cells}\n`;
/** One cell of a machine, quoted so that it may hold anything. */
export const cellOf = (heading: string, cell: string, given: Given = {}) => read('machines', machineWith(heading, `"${cell.replaceAll('"', '""')}"`), given);
