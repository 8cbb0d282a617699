import { shown } from '../documents/fault.ts';
import { readDocument, type Reading } from '../documents/read.ts';
import { request, sealed, type RequestDocument, type SealedRequest } from './schema.ts';

/** How deep a request may be nested, and how much may stand in one part of it: beyond what any buyer can say. */
const [deepest, mostKeys, mostItems, longestText] = [8, 200, 50, 500];

/** Half of a pair of surrogates, without its other half: no sign at all. */
const loneHalf = /\p{Cs}/u;

type Depth = { place: string; expected: string };

/** What is too much, before anything looks at what it means: a schema, a copy or a log could break on it. */
function tooMuch(value: unknown, place: string, depth: number, counted: { keys: number }): Depth | undefined {
  if (typeof value === 'string') return value.length > longestText || loneHalf.test(value) ? { place, expected: `a text of at most ${longestText} whole signs` } : undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  if (depth >= deepest) return { place, expected: `at most ${deepest} levels` };
  if (Array.isArray(value) && value.length > mostItems) return { place, expected: `at most ${mostItems} entries` };
  for (const [key, each] of Object.entries(value)) {
    counted.keys += 1;
    if (counted.keys > mostKeys) return { place, expected: `at most ${mostKeys} keys` };
    const found = tooMuch(each, place === '' ? key : `${place}.${key}`, depth + 1, counted);
    if (found) return found;
  }
  return undefined;
}

function strict<T>(reading: Reading<T>): Reading<T> {
  const faults = [...reading.faults, ...reading.unknownKeys];
  return { value: faults.length > 0 ? undefined : reading.value, faults, unknownKeys: [] };
}

/**
 * Reads what was handed in, already parsed. Strict, for a stranger wrote it: a key it doesn't know is a fault.
 * Never throws.
 */
export function readRequest(document: unknown): Reading<RequestDocument> {
  const much = tooMuch(document, '', 0, { keys: 0 });
  if (much) return { value: undefined, faults: [{ place: much.place, read: shown(undefined), expected: much.expected }], unknownKeys: [] };
  return strict(readDocument(request, document));
}

/** Reads a sealed request, still sealed. Never throws. */
export const readSealed = (document: unknown): Reading<SealedRequest> => strict(readDocument(sealed, document));
