import { readAnswers } from '../answers/read-answers.ts';
import { taskIds, type AnswersDocument } from '../answers/schema.ts';
import { readCatalogue } from '../catalogue/read-catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { shown, type Fault } from '../documents/fault.ts';
import { nearest } from '../documents/nearest.ts';
import { complaintLine, faultLine } from './fault-line.ts';
import type { Io } from './io.ts';
import { kindOf, type Kind } from './kind.ts';
import { readJson, type PlacedFault, type Position } from './read-json.ts';
import { readText } from './read-text.ts';

export type OurDocument =
  | { kind: 'catalogue'; value: CatalogueDocument; warnings: readonly string[] }
  | { kind: 'answers'; value: AnswersDocument; unknownTasks: readonly string[] };

/** A fault as a line ready to print, and where in the file it stands. */
interface FaultLine {
  offset: number;
  line: string;
}

/** A file read as one of our documents. */
export interface DocumentReading {
  document: OurDocument | undefined;
  faults: readonly FaultLine[];
  /** What this version doesn't know: a fault to whoever writes the file, no hindrance to whoever reckons with it. */
  unknown: readonly FaultLine[];
  /** What the file holds as JSON, whatever is wrong with it as a document. */
  parsed: unknown;
  /** Where a place of the document stands in the file. */
  positionOf(place: string): Position;
}

/** Lines in the order of the file. */
export const inOrder = (faults: readonly FaultLine[]) => [...faults].sort((a, b) => a.offset - b.offset).map(({ line }) => line);

/** Tasks of a newer version, where they stand in the answers. */
function unknownTaskFaults(value: unknown, unknownTasks: readonly string[]): Fault[] {
  const { tasks } = value as { tasks?: unknown };
  if (!Array.isArray(tasks)) return [];
  return (tasks as ({ task?: unknown } | null)[]).flatMap((each, index) => {
    const task = each?.task;
    if (typeof task !== 'string' || !unknownTasks.includes(task)) return [];
    const near = nearest(task, taskIds);
    return [{ place: `tasks[${index}].task`, read: shown(task), expected: 'a task this version knows', ...(near && { nearest: near }) }];
  });
}

function readAs(kind: Kind, value: unknown) {
  if (kind === 'catalogue') {
    const { value: read, faults, unknownKeys, warnings } = readCatalogue(value);
    return { document: read && { kind, value: read, warnings }, faults, unknownKeys, unknownTasks: [] };
  }
  const { value: read, faults, unknownKeys, unknownTasks } = readAnswers(value);
  return { document: read && { kind, value: read, unknownTasks }, faults, unknownKeys, unknownTasks: unknownTaskFaults(value, unknownTasks) };
}

/** Reads a file, or standard input for `-`, as one of some kinds of document. */
export async function readDocumentFile(path: string, among: readonly Kind[], io: Io): Promise<DocumentReading> {
  const nothing = (...faults: FaultLine[]): DocumentReading => ({ document: undefined, faults, unknown: [], parsed: undefined, positionOf: () => ({ line: 1, column: 1 }) });
  const text = await readText(path, io);
  if ('complaint' in text) return nothing({ offset: 0, line: complaintLine(path, text.complaint) });

  const json = readJson(text.text);
  const told = (fault: PlacedFault): FaultLine => ({ offset: fault.offset, line: faultLine(path, fault, json) });
  const syntax = json.faults.map(told);
  if (!json.document) return nothing(...syntax);
  const { value } = json.document;
  const kind = kindOf(value, among);
  if ('fault' in kind) return nothing(...syntax, told(json.placed(kind.fault)));

  const { document, faults, unknownKeys, unknownTasks } = readAs(kind.kind, value);
  const all = [...syntax, ...faults.map((fault) => told(json.placed(fault)))];
  return {
    document: all.length === 0 ? document : undefined,
    faults: all,
    unknown: [...unknownKeys.map((fault) => told(json.placedKey(fault))), ...unknownTasks.map((fault) => told(json.placed(fault)))],
    parsed: value,
    positionOf: (place) => json.positionOf(json.placed({ place, read: '', expected: '' })),
  };
}
