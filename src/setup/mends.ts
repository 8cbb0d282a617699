import { headingOf, matchColumns, readYesNo, type Finding, type Heading, type SheetKind } from '../sheets/sheets.ts';
import { nearest as nearestOf } from '../documents/nearest.ts';
import { unitsOf } from '../units/quantity.ts';
import { usualFrames } from './frames.ts';
import { yearsIn } from './years.ts';

/** How a finding is mended where it is told. */
export type Mend =
  /**
   * Another text in its cells: one of some words, or any. `options` are what may be meant, `isSpan` that it is a first year
   * with its last, `better` a field that its whole column fits better.
   */
  | { how: 'cells'; words: readonly string[] | undefined; options: readonly string[]; mayBeBlank: boolean; isSpan: boolean; better: string | undefined }
  /** What is missing in its rows, by field. */
  | { how: 'fields'; fields: readonly string[] }
  /** The row, written anew as a line of the file. */
  | { how: 'line' }
  /** What its column is. */
  | { how: 'column' }
  /** What the bare numbers of its column are in. */
  | { how: 'unit'; units: readonly string[]; taken: string }
  /** A column that is missing: from another, or the same in every row. */
  | { how: 'missing'; field: string; words: readonly string[] | undefined }
  | { how: 'terms' };

const yesAndNo = ['yes', 'no'];

/** The words a cell may hold, where it may hold no other. */
export function wordsOf({ takes }: Heading): readonly string[] | undefined {
  if (takes.as === 'choice') return takes.words;
  return takes.as === 'yes-no' ? yesAndNo : undefined;
}

/** What was read, without the quotes it is shown in. */
export const unquoted = (read = '') => read.replace(/^"(.*)"$/s, '$1');

const fieldOf = (sheet: SheetKind, heading: string) => matchColumns({ sheet, headings: [heading] })[0]!.field;

/** What a finding says may have been meant, most likely first. */
function optionsOf({ code, facts, read }: Finding): string[] {
  const { nearest, either, meant } = facts as { nearest?: unknown; either?: readonly string[]; meant?: { value: number; unit: string } };
  const usual = code === 'row.no-frame' ? nearestOf(unquoted(read), usualFrames) : undefined;
  const near = [usual, nearest].filter((each) => typeof each === 'string');
  return [...new Set([...near, ...(either ?? []), ...(meant ? [`${meant.value} ${meant.unit}`] : [])])];
}

/** Whether a unit has a thing is often told under the name of the thing, where its id is expected. */
function betterThan(field: string | undefined, { code, read }: Finding): string | undefined {
  const isFitted = code === 'row.no-part' && field !== undefined && headingOf('units', `fitted.${field}`) !== undefined && readYesNo(unquoted(read)).value !== undefined;
  return isFitted ? `fitted.${field}` : undefined;
}

/**
 * How a finding can be mended in place; undefined where it can't, as of a file that is no table.
 *
 * @param field  what its column is taken for, where it has one
 */
export function mendOf(finding: Finding, field: string | undefined): Mend | undefined {
  const { code, sheet, row, column, weight, read } = finding;
  if (code === 'catalogue.terms') return { how: 'terms' };
  if (sheet === 'dealer') return undefined;
  const fieldsNamed = (headings: readonly string[]): Mend => ({ how: 'fields', fields: headings.flatMap((heading) => fieldOf(sheet, heading) ?? []) });
  const heading = field === undefined ? undefined : headingOf(sheet, field);
  switch (finding.code) {
    case 'column.not-taken': case 'column.blank-heading': case 'column.twice': return { how: 'column' };
    case 'column.missing': {
      const missing = fieldOf(sheet, finding.facts.heading);
      return missing === undefined ? undefined : { how: 'missing', field: missing, words: wordsOf(headingOf(sheet, missing)!) };
    }
    case 'column.unit-assumed': return heading?.takes.as === 'amount' ? { how: 'unit', units: unitsOf(heading.takes.of), taken: finding.facts.unit } : undefined;
    case 'row.without': case 'cell.needs': return fieldsNamed(finding.facts.headings);
    case 'row.ragged-short': case 'row.ragged-long': case 'file.quote': case 'file.unclosed-quote': return { how: 'line' };
    default:
      if (row === undefined || column === undefined || weight === 'notice') return undefined;
      return { how: 'cells', words: heading && wordsOf(heading), options: optionsOf(finding), mayBeBlank: !heading?.needed, isSpan: field === 'years.from' && yearsIn(unquoted(read)) !== undefined, better: betterThan(field, finding) };
  }
}

