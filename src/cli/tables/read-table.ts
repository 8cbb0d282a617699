import { decode, parsing, readingRows, type Conventions, type Finding, type Progress, type RowsReading, type SheetKind, type Slices, type Table } from '../../sheets/sheets.ts';
import { complaintLine } from '../fault-line.ts';
import type { Io } from '../io.ts';
import { readBytes } from '../read-text.ts';
import { mappingWith, type OwnHeadings } from './columns-file.ts';

/** How a file of cells is read, as far as the command was told. */
export interface TableOptions {
  separator?: string;
  decimalMark?: '.' | ',';
  own: OwnHeadings;
}

/** So many rows between two signs of life: a long file takes seconds, and a short one should say nothing. */
const rowsBetweenSigns = 10_000;

/** Runs long work to its end and tells how far it is, every so many rows. */
export function withProgress<T>(work: Slices<T>, told: (progress: Progress) => void): T {
  let next = rowsBetweenSigns;
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    if (step.value.done < next) continue;
    told(step.value);
    next = step.value.done + rowsBetweenSigns;
  }
}

/** A table of a file with what was found in it; undefined, and told, where there is no such file. */
export async function readTable<S extends SheetKind>(
  path: string, sheet: S, conventions: Conventions, { own, ...given }: TableOptions, io: Io, progress: (progress: Progress) => void,
): Promise<{ rows: RowsReading<S> | undefined; findings: Finding[] } | undefined> {
  const read = await readBytes(path, io);
  if (!('bytes' in read)) {
    io.err(complaintLine(path, read.complaint));
    return undefined;
  }
  const { text, findings } = decode(read.bytes, sheet);
  if (text === undefined) return { rows: undefined, findings };
  const table = withProgress(parsing(sheet, text, given), () => undefined) as Table & { sheet: S };
  const rows = withProgress(readingRows(table, mappingWith(table, own), conventions), progress);
  return { rows, findings: [...findings, ...table.findings, ...rows.findings] };
}
