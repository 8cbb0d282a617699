import { jsonSchemaOf } from '../../documents/json-schema.ts';
import { readRequest, readSealed } from '../../request/read-request.ts';
import { request, type RequestDocument, type SealedRequest } from '../../request/schema.ts';
import { requestFormat, sealedFormat } from '../../request/names.ts';
import type { Fault } from '../../documents/fault.ts';
import { Refusal, type PlacedFault } from '../problems.ts';

const kilobyte = 1024;
/** Most bytes of a body: plain, and sealed with its wrapping. */
export const mostBytes = { plain: 64 * kilobyte, sealed: 96 * kilobyte } as const;

/** How many pairs of key and value a text of JSON has, whether or not two keys are alike. */
function pairsIn(text: string): number {
  let pairs = 0;
  let inText = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (inText && sign === '\\') at += 1;
    else if (sign === '"') inText = !inText;
    else if (sign === ':' && !inText) pairs += 1;
  }
  return pairs;
}

/** Keys of a parsed document; without a stack of calls, for a stranger says how deep it is. */
function keysOf(document: unknown): number {
  let keys = 0;
  const waiting = [document];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null) continue;
    if (!Array.isArray(next)) keys += Object.keys(next).length;
    for (const each of Object.values(next) as unknown[]) waiting.push(each);
  }
  return keys;
}

/** @throws Refusal `not-json`: no UTF-8, a mark at the beginning, no JSON (RFC 8259), or a key twice in one object */
export function parseBody(bytes: Uint8Array): unknown {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    const document: unknown = JSON.parse(text);
    if (keysOf(document) === pairsIn(text)) return document;
  } catch {
    // Told below, in our words: the parser's would say again what stood there.
  }
  throw new Refusal('not-json');
}

function namesIn(schema: unknown, into = new Set<string>()): Set<string> {
  if (typeof schema !== 'object' || schema === null) return into;
  for (const [key, held] of Object.entries(schema)) {
    if (key === 'properties') Object.keys(held as object).forEach((name) => into.add(name));
    namesIn(held, into);
  }
  return into;
}
let ownNames: ReadonlySet<string> | undefined;
const mostFaults = 20;

/** Where something was wrong, as far as it is in names of ours: a stranger's key is not told again. */
function placedOf({ place, expected }: Fault): PlacedFault {
  const parts = place.split('.');
  // Made for the first fault, as a start needn't wait for it.
  const known = ownNames ??= namesIn(jsonSchemaOf(request, requestFormat, 'request'));
  const strange = parts.findIndex((part) => !known.has(part.replace(/\[\d+\]$/, '')));
  return { place: (strange === -1 ? parts : parts.slice(0, strange)).join('.'), expected };
}

function refused(faults: readonly Fault[]): Refusal {
  // Several checks of one text say the same.
  const told = new Map(faults.slice(0, mostFaults).map(placedOf).map((fault) => [`${fault.place} ${fault.expected}`, fault]));
  return new Refusal('not-a-request', { faults: [...told.values()] });
}

/** @throws Refusal `not-a-request` */
export function readPlain(document: unknown): RequestDocument {
  const { value, faults } = readRequest(document);
  if (!value) throw refused(faults);
  return value;
}

/** A sealed request, still sealed, or undefined where it isn't one. @throws Refusal `not-a-request`, `too-large` */
export function readIfSealed(document: unknown, bytes: number): SealedRequest | undefined {
  if ((document as { format?: unknown } | null)?.format !== sealedFormat) {
    if (bytes > mostBytes.plain) throw new Refusal('too-large');
    return undefined;
  }
  const { value, faults } = readSealed(document);
  if (!value) throw refused(faults);
  return value;
}
