import { oneLine } from './one-line.ts';
import type { JsonReading, PlacedFault } from './read-json.ts';

/** How a file is called in what we print. */
export const fileName = (path: string) => (path === '-' ? '(standard input)' : path);

/** A place as one word, so that a key with a blank in it isn't taken for something else. */
const placeWord = (place: string) => (/\s/.test(place) ? JSON.stringify(place) : place || 'document');

/** One fault, one line: where, what was read, what was expected. */
export function faultLine(path: string, fault: PlacedFault, json: JsonReading): string {
  const { line, column } = json.positionOf(fault);
  const near = fault.nearest ? ` (nearest: ${fault.nearest})` : '';
  return oneLine(`${fileName(path)}:${line}:${column} ${placeWord(fault.place)}: read ${fault.read}, expected ${fault.expected}${near}`);
}

export const complaintLine = (path: string, complaint: string) => oneLine(`${fileName(path)}: ${complaint}`);
