import type { Finding, SheetKind } from '../sheets/sheets.ts';
import { mendOf, type Mend } from './mends.ts';

/** Findings that say the same of the same text in the same column: mended in one go. */
export interface Group {
  /** The same for the same finding, whatever else has changed. */
  key: string;
  /** The first of them; its words serve for all. */
  finding: Finding;
  /** Every row it stands in, as a spreadsheet numbers them; none where it is of the file or of a column. */
  rows: readonly number[];
  mend: Mend | undefined;
}

export const weights = ['fault', 'query', 'notice'] as const;
const sheets = ['dealer', 'machines', 'units'];

/**
 * Faults first, then what to look at again; among them by table and column.
 *
 * @param fieldOf  what a column is taken for
 */
export function groupsOf(findings: readonly Finding[], fieldOf: (sheet: SheetKind, column: number) => string | undefined = () => undefined): Group[] {
  const groups = new Map<string, { key: string; finding: Finding; rows: number[] }>();
  for (const finding of findings) {
    const { code, sheet, column, row, read, facts, place } = finding;
    // What is of a whole row is told by itself; where the same is missing, it is the same.
    const ofRow = row !== undefined && column === undefined && code !== 'row.without';
    // What goes without saying beside it is the same, whatever stands in the cell.
    const said = code === 'cell.needs' ? '' : read;
    const key = JSON.stringify([code, sheet, column, said, ofRow ? row : 0, row === undefined ? place : 0, facts]);
    const group = groups.get(key) ?? { key, finding, rows: [] };
    if (row !== undefined) group.rows.push(row);
    groups.set(key, group);
  }
  const rank = ({ finding: { weight, sheet, column = 0 } }: { finding: Finding }) => [weights.indexOf(weight), sheets.indexOf(sheet), column] as const;
  return [...groups.values()]
    .map((group): Group => {
      const { sheet, column } = group.finding;
      return { ...group, mend: mendOf(group.finding, sheet === 'dealer' || column === undefined ? undefined : fieldOf(sheet, column)) };
    })
    .sort((a, b) => {
      const [one, other] = [rank(a), rank(b)];
      return one[0] - other[0] || one[1] - other[1] || one[2] - other[2];
    });
}
