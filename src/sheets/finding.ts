import type { Figure } from './plausible.ts';

/** The two tables of a catalogue that may be kept in a spreadsheet. */
export type SheetKind = 'machines' | 'units';

/**
 * `fault`: what was read is left out, by cell or by row. `query`: it is kept, but look again.
 * `notice`: it is kept, and this is how it was taken.
 */
export type Weight = 'fault' | 'query' | 'notice';

/** What each finding tells besides its place and what was read. Its words are one function a code in `words/<language>.ts`. */
export interface FindingFacts {
  // of the file
  'file.empty': object;
  'file.too-large': { limit: number };
  'file.not-utf-8': object;
  'file.utf-16': object;
  'file.nul': object;
  'file.no-rows': object;
  'file.too-many-rows': { limit: number };
  'file.too-many-columns': { limit: number };
  'file.unclosed-quote': object;
  'file.quote': object;
  'file.blank-rows': { count: number };
  // of the columns
  'column.blank-heading': object;
  'column.twice': { first: number };
  'column.not-taken': { nearest: readonly string[] };
  'column.unit-assumed': { unit: string };
  'column.missing': { heading: string };
  // of a row
  'row.ragged-short': { cells: number; headings: number };
  'row.ragged-long': { cells: number; headings: number };
  'row.without': { headings: readonly string[] };
  'row.same-id': { id: string; first: number };
  // of a cell
  'cell.too-long': { limit: number };
  'cell.control': object;
  'cell.not-a-number': { example: string };
  'cell.negative': object;
  'cell.zero': object;
  'cell.whole': object;
  'cell.range': { from: number; to: number };
  'cell.ambiguous': { either: readonly [string, string] };
  'cell.unit': { unit: string; nearest: string | undefined; units: readonly string[] };
  'cell.currency': { currency: string };
  'cell.word': { words: readonly string[]; nearest: string | undefined };
  'cell.yes-no': object;
  'cell.day': object;
  'cell.error': object;
  'cell.said-unknown': object;
  'cell.id': { nearest: string | undefined };
  'cell.id-mangled': object;
  'cell.id-changed': { id: string };
  'cell.id-date': { id: string };
  'cell.day-assumed': { day: string };
  'cell.none-and-more': { heading: string };
  'cell.link': object;
  'cell.pair': object;
  'cell.formula': object;
  'cell.needs': { headings: readonly string[] };
  // between rows, and between cells of one
  'row.no-frame': { nearest: string | undefined };
  'row.no-machine': { nearest: string | undefined };
  'row.no-part': { nearest: string | undefined };
  'row.years-overlap': object;
  'row.years-turned': object;
  'cell.no-implement': { nearest: string | undefined };
  'cell.year-outside': { expected: string };
  'cell.folded-higher': object;
  'cell.pto-above-engine': object;
  'cell.ratings': object;
  // of the whole
  'dealer.faulty': { expected: string; nearest: string | undefined };
  'catalogue.faulty': { expected: string; nearest: string | undefined };
  'catalogue.no-machines': object;
  'catalogue.terms': { languages: readonly string[] };
  'catalogue.exhaust': { id: string };
  // of figures that can hardly be
  'query.range': { id: string; least: Figure | undefined; most: Figure; meant: Figure | undefined };
  'query.ratio': { id: string; least: Figure | undefined; most: Figure; by: { heading: string; read: Figure }; meant: Figure | undefined };
}
export type FindingCode = keyof FindingFacts;

/** One thing to say of what was read; plain data, so that a worker can hand it on. */
export type Finding<Code extends FindingCode = FindingCode> = {
  [C in Code]: {
    code: C;
    weight: Weight;
    facts: FindingFacts[C];
    /** Where it stands; `dealer` is what comes from the dealer's JSON. */
    sheet: SheetKind | 'dealer';
    /** As the spreadsheet numbers them: the headings are row 1. Absent where it is of the file or a column. */
    row?: number;
    /** From 1. */
    column?: number;
    /** The heading of that column as the file has it. */
    heading?: string;
    /** The place in the catalogue, as `machines[3].mass`, where it is in one. */
    place?: string;
    /** What stood there, shortened to one line. */
    read?: string;
    /** The whole row is left out of the catalogue, not the cell alone. */
    dropsRow?: boolean;
  };
}[Code];
