import { formatNumber } from '../units/formats.ts';
import type { Finding, FindingCode, FindingFacts } from './finding.ts';
import type { Figure } from './plausible.ts';
import type { Unknown } from './unknowns.ts';
import type { Said, SheetWords } from './words/words.ts';

/** A finding in words: where it stands, what was read, what was expected, how to mend it. */
export interface SaidFinding {
  /** As a spreadsheet names a cell: `C5`, a column `C`, a row `5`; empty where it is of the file. */
  cell: string;
  /** The heading as the file has it, or the place in the catalogue. */
  of: string;
  read: string;
  expected: string;
  mend: string;
}

/** The letters a spreadsheet gives a column: 1 is A, 27 is AA. */
export const lettersOf = (column: number): string => {
  const [letters, rest] = [26, column - 1];
  return `${rest >= letters ? lettersOf(Math.floor(rest / letters)) : ''}${String.fromCodePoint('A'.codePointAt(0)! + (rest % letters))}`;
};

const figureIn = (language: string) => ({ value, unit }: Figure) => `${formatNumber(value, language, { maximumSignificantDigits: 4 })} ${unit}`;

/** What is said of a finding in a language. */
export function sayFinding(finding: Finding, words: SheetWords): SaidFinding {
  const { code, facts, row, column, heading, place, read, sheet, dropsRow } = finding;
  const say = words.findings[code] as (facts: FindingFacts[FindingCode], show: (figure: Figure) => string) => Said;
  const { expected, mend } = say(facts, figureIn(words.language));
  return {
    cell: `${column === undefined ? '' : lettersOf(column)}${row ?? ''}`,
    of: heading ?? place ?? sheet,
    read: read ?? words.nothing, expected,
    mend: dropsRow && row !== undefined ? `${mend}; ${words.rowLeftOut}` : mend,
  };
}

/**
 * The same on one line, without its place.
 *
 * @example 'read "12x", expected a figure such as 14250: write the figure alone or with its unit'
 */
export function lineOfFinding(finding: Finding, words: SheetWords): string {
  const { read, expected, mend } = sayFinding(finding, words);
  return words.line(read, expected, mend);
}

/** What is missing and what it costs, as a sentence. */
export const sayUnknown = ({ figure, ids, of }: Unknown, words: SheetWords): string => words.unknowns[figure](ids.length, of);
