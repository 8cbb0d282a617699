import { parseJson } from './parse-json.ts';
import type { Fault } from '../../documents/fault.ts';
import { faultAt, faultsOf, isObject, readRecord } from './read-record.ts';
import type { Waiting } from './record.ts';

/** Intakes that wait, in a file: sealed, for another device or for the relay's owner to send. */
export const waitingFormat = 'acre-to-axle/waiting/1';

const mostRecords = 10_000;

/** @param records  as they were found: a later page reads what this one can't */
export const writeWaitingFile = (records: readonly unknown[]) => `${JSON.stringify({ format: waitingFormat, records }, undefined, 1)}\n`;

/**
 * Reads a file of intakes that wait. What is sound in it is had, whatever is the matter with the rest, and each fault
 * is told by its place. Never throws.
 */
export function readWaitingFile(text: string): { records: readonly Waiting[]; faults: readonly Fault[] } {
  const document = parseJson(text);
  if (!isObject(document)) return { records: [], faults: [faultAt([], text, `a file of ${waitingFormat}`)] };
  if (document.format !== waitingFormat) return { records: [], faults: [faultAt(['format'], document.format, `“${waitingFormat}”`)] };
  const { records } = document;
  if (!Array.isArray(records) || records.length > mostRecords) return { records: [], faults: [faultAt(['records'], records, `a list of at most ${mostRecords} records`)] };
  const read = records.map((record: unknown, index) => readRecord(record, ['records', index]));
  return {
    records: read.flatMap((each) => ('waiting' in each ? [each.waiting] : [])),
    faults: [...faultsOf(document, known, []), ...read.flatMap((each) => ('faults' in each ? each.faults : []))],
  };
}

const known = { format: { expected: waitingFormat, holds: () => true }, records: { expected: 'a list', holds: () => true } };
