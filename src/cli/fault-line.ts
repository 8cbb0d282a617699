import { oneLine } from './one-line.ts';
import type { JsonReading, PlacedFault } from './read-json.ts';

/** How a file is called in what we print. */
export const fileName = (path: string) => (path === '-' ? '(standard input)' : path);

/** One fault, one line: where, what was read, what was expected. */
export function faultLine(path: string, fault: PlacedFault, json: JsonReading): string {
  const { line, column } = json.positionOf(fault);
  const near = fault.nearest ? ` (nearest: ${fault.nearest})` : '';
  return oneLine(`${fileName(path)}:${line}:${column} ${fault.place || 'document'}: read ${fault.read}, expected ${fault.expected}${near}`);
}

export const complaintLine = (path: string, complaint: string) => oneLine(`${fileName(path)}: ${complaint}`);
