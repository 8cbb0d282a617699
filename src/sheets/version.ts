import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { byCodeUnit } from '../units/compare.ts';

/**
 * A document as the one text it has after RFC 8785 (JSON Canonicalization Scheme): no blanks, keys in the order of their
 * UTF-16 code units, numbers and texts as ECMAScript writes them. What is undefined isn't there.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((each) => canonicalJson(each)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).filter(([, held]) => held !== undefined).sort(([a], [b]) => byCodeUnit(a, b));
  return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${canonicalJson(held)}`).join(',')}}`;
}

/**
 * The version of a catalogue: SHA-256 (FIPS 180-4) over the UTF-8 bytes of its canonical JSON without `version` itself,
 * as `sha256-` and 64 hexadecimal digits. Two catalogues have one version only if they say the same.
 */
export function versionOf(catalogue: object): string {
  const { version: _, ...rest } = catalogue as { version?: unknown };
  return `sha256-${bytesToHex(sha256(utf8ToBytes(canonicalJson(rest))))}`;
}
