import papa from 'papaparse';
import type { Finding, SheetKind } from './finding.ts';
import { limits } from './limits.ts';
import { countKnown } from './match.ts';
import type { Slices } from './slices.ts';
import { unescaped } from './write.ts';

/** How a file writes its cells. */
export interface Dialect {
  separator: string;
  decimalMark: '.' | ',';
  /** `given` by whoever asked for the reading; then "1.500" is no riddle. */
  decimalMarkFrom: 'given' | 'found' | 'assumed';
}

/** A file as cells, before anyone says what they mean. */
export interface Table {
  sheet: SheetKind;
  dialect: Dialect;
  headings: string[];
  /** Every row below the headings, blank ones too: row 0 is row 2 of the spreadsheet. Cells as written. */
  rows: string[][];
  /** Faults here mean that nothing, or not all, can be read; the rows that are there are good. */
  findings: Finding[];
}

export const separators = [',', ';', '\t', '|'] as const;
const sampleLength = 65_536;
/** Characters between two signs of life: some hundred rows. */
const sliceLength = 65_536;
/** What a spreadsheet writes above the headings to say how it separates. */
const separatorLine = /^"?sep=(.)"?\r?\n/i;

/** The one by which most headings are documented ones; where none are, the one that makes most of them. */
function separatorOf(sheet: SheetKind, sample: string): string {
  const tried = separators.map((separator) => {
    const [headings = []] = papa.parse(sample, { preview: 1, delimiter: separator }).data;
    return { separator, known: countKnown(sheet, headings), all: headings.length };
  });
  return tried.sort((a, b) => b.known - a.known || b.all - a.all)[0]!.separator;
}

/** A number that can be read in one way only, whatever the language: its mark tells. */
const commaDecimals = /^\d{1,3}(\.\d{3})+,\d+$|^\d+,(\d{1,2}|\d{4,})$|^0,\d+$/;
const pointDecimals = /^\d{1,3}(,\d{3})+\.\d+$|^\d+\.(\d{1,2}|\d{4,})$|^0\.\d+$/;

function decimalMarkOf(rows: readonly (readonly string[])[], separator: string): Pick<Dialect, 'decimalMark' | 'decimalMarkFrom'> {
  let commas = 0;
  let points = 0;
  for (const row of rows) {
    for (const cell of row) {
      const [number = ''] = cell.trim().split(/\s|(?<=\d)(?=[^\d.,])/, 1);
      if (commaDecimals.test(number)) commas += 1;
      else if (pointDecimals.test(number)) points += 1;
    }
  }
  if (commas !== points) return { decimalMark: commas > points ? ',' : '.', decimalMarkFrom: 'found' };
  return { decimalMark: separator === ';' ? ',' : '.', decimalMarkFrom: 'assumed' };
}

interface Told {
  code: string;
  row: number;
}

/** The rows, a slice of the text at a time: papaparse is paused between two of them. */
function* rowsOf(text: string, delimiter: string, newline: string): Slices<{ rows: string[][]; told: Told[] }> {
  const rows: string[][] = [];
  const told: Told[] = [];
  let cursor = 0;
  let paused: { resume(): void } | undefined;
  papa.parse(text, {
    delimiter, newline,
    chunkSize: sliceLength,
    chunk({ data, errors, meta }, parser) {
      for (const { code, row } of errors) told.push({ code, row: rows.length + (row ?? 0) });
      for (const row of data) rows.push(row);
      ({ cursor } = meta);
      paused = parser;
      parser.pause();
    },
  });
  let read = 0;
  while (cursor < text.length && rows.length <= limits.rows + 1 && read < text.length) {
    yield { done: cursor, of: text.length };
    read += sliceLength;
    paused!.resume();
  }
  // What ends with a line's end has no row behind it.
  if (rows.at(-1)?.join('') === '' && /[\r\n]$/.test(text)) rows.pop();
  return { rows, told };
}

export const isBlank = (row: readonly string[]) => row.every((cell) => cell.trim() === '');

/**
 * A text as a table.
 *
 * @param given  what is known of how it was written; what isn't is found from the text
 */
export function* parsing(sheet: SheetKind, text: string, given: Partial<Pick<Dialect, 'separator' | 'decimalMark'>> = {}): Slices<Table> {
  const findings: Finding[] = [];
  const fault = <F extends Omit<Finding, 'sheet' | 'weight'>>(finding: F, weight: Finding['weight'] = 'fault') =>
    findings.push({ ...finding, weight, sheet } as unknown as Finding);
  const named = separatorLine.exec(text);
  const body = named ? text.slice(named[0].length) : text;
  const sample = body.slice(0, sampleLength);
  const delimiter = given.separator ?? named?.[1] ?? separatorOf(sheet, sample);
  const { linebreak } = papa.parse(sample, { preview: 1, delimiter }).meta;
  const { rows: all, told } = yield* rowsOf(body, delimiter, linebreak);
  const rows = all.map((row) => row.map(unescaped));
  const headings = rows.shift() ?? [];
  const spoilt = new Set<number>();
  for (const { code, row } of told) {
    if (spoilt.has(row)) continue;
    spoilt.add(row);
    fault({ code: code === 'MissingQuotes' ? 'file.unclosed-quote' : 'file.quote', facts: {}, row: row + 1, dropsRow: true });
  }
  const blank = rows.filter(isBlank).length;
  if (headings.length > limits.columns) fault({ code: 'file.too-many-columns', facts: { limit: limits.columns }, read: String(headings.length) });
  if (rows.length > limits.rows) fault({ code: 'file.too-many-rows', facts: { limit: limits.rows }, read: String(rows.length) });
  else if (rows.length === blank) fault({ code: 'file.no-rows', facts: {} });
  else if (blank > 0) fault({ code: 'file.blank-rows', facts: { count: blank } }, 'notice');
  const refused = headings.length > limits.columns || rows.length > limits.rows;
  return {
    sheet, headings, rows: refused ? [] : rows, findings,
    dialect: {
      separator: delimiter,
      ...(given.decimalMark ? { decimalMark: given.decimalMark, decimalMarkFrom: 'given' } : decimalMarkOf(rows, delimiter)),
    },
  };
}
