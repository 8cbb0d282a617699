import type { Finding } from '../sheets/sheets.ts';

/** Findings that say the same of the same text in the same column: mended in one go. */
export interface Group {
  /** The first of them; its words serve for all. */
  finding: Finding;
  /** Every row it stands in, as a spreadsheet numbers them; none where it is of the file or of a column. */
  rows: readonly number[];
  /** Whether it is mended by writing something else into its cells. */
  inCells: boolean;
}

const weights = ['fault', 'query', 'notice'] as const;

/** Faults first, then what to look at again; among them by table and column. */
export function groupsOf(findings: readonly Finding[]): Group[] {
  const groups = new Map<string, { finding: Finding; rows: number[] }>();
  for (const finding of findings) {
    const { code, sheet, column, row, read, facts } = finding;
    const key = JSON.stringify([code, sheet, column, read, row === undefined || column === undefined ? row : 0, column === undefined ? 0 : facts]);
    const group = groups.get(key) ?? { finding, rows: [] };
    if (row !== undefined) group.rows.push(row);
    groups.set(key, group);
  }
  const rank = ({ finding: { weight, sheet, column = 0 } }: Group) => [weights.indexOf(weight), ['dealer', 'machines', 'units'].indexOf(sheet), column] as const;
  return [...groups.values()].map((group): Group => ({ ...group, inCells: group.finding.column !== undefined && group.rows.length > 0 }))
    .sort((a, b) => {
      const [one, other] = [rank(a), rank(b)];
      return one[0] - other[0] || one[1] - other[1] || one[2] - other[2];
    });
}
