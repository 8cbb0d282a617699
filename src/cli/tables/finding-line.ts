import { lineOfFinding, sayFinding, type Finding, type Weight } from '../../sheets/sheets.ts';
import type { SheetWords } from '../../sheets/words/words.ts';
import { fileName } from '../fault-line.ts';
import { oneLine } from '../one-line.ts';
import type { CliWords } from '../words/words.ts';

/** Before the place of what is no fault. */
export const weightWord = (weight: Weight, own: CliWords) => (weight === 'fault' ? '' : `${own.weights[weight]}: `);

/**
 * A finding of a table on one line, as faults of a document are told: file, row, column, heading, what was read.
 *
 * @example units.csv:5:3 price: read "12x", expected a figure such as 14250: write the figure alone or with its unit
 */
export function findingLine(path: string, finding: Finding, words: SheetWords, own: CliWords): string {
  const { row = 1, column = 1 } = finding;
  return oneLine(`${weightWord(finding.weight, own)}${fileName(path)}:${row}:${column} ${sayFinding(finding, words).of || '""'}: ${lineOfFinding(finding, words)}`);
}
