/**
 * Reads what lies in the queue, or in a file of it: strictly, and without the library of schemas, for a page that only
 * keeps and sends has no other use for it.
 */
import { placeOf, shown, type Fault, type Path } from '../../documents/fault.ts';
import { sealedFormat } from '../../request/names.ts';
import { isInitials, recordVersion, waitingStates, type Found, type Waiting } from './record.ts';

type Check = { expected: string; holds: (value: unknown) => boolean; optional?: true };
type Checks = Readonly<Record<string, Check>>;

const text = (expected: string, pattern: RegExp): Check => ({ expected, holds: (value) => typeof value === 'string' && pattern.test(value) });
const whole = (expected: string): Check => ({ expected, holds: (value) => Number.isSafeInteger(value) && (value as number) >= 0 });
const optional = (check: Check): Check => ({ ...check, optional: true });
const word = text('an id of letters, digits, dots and hyphens', /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/);

const sealedChecks: Checks = {
  format: { expected: `“${sealedFormat}”`, holds: (value) => value === sealedFormat },
  key: word,
  dealer: word,
  enc: text('base64url, at most 200 signs', /^[A-Za-z0-9_-]{1,200}$/),
  box: text('base64url, at most 90000 signs', /^[A-Za-z0-9_-]{1,90000}$/),
};

const recordChecks: Checks = {
  id: text('a UUID', /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/),
  v: { expected: String(recordVersion), holds: (value) => value === recordVersion },
  createdAt: whole('milliseconds since 1970'),
  dealer: word,
  sealed: { expected: 'a sealed request', holds: isObject },
  tries: whole('how often it was tried'),
  nextAt: whole('milliseconds since 1970'),
  state: { expected: waitingStates.join(', '), holds: (value) => (waitingStates as readonly unknown[]).includes(value) },
  code: optional(text('a code of the relay', /^[a-z0-9.-]{1,60}$/)),
  label: optional({ expected: 'initials', holds: (value) => typeof value === 'string' && isInitials(value) }),
};

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export const faultAt = (path: Path, read: unknown, expected: string): Fault => ({ place: placeOf(path), read: shown(read), expected });

/** Every fault of an object's own keys, and of keys nobody knows. */
export function faultsOf(value: Record<string, unknown>, checks: Checks, path: Path): Fault[] {
  const known = Object.entries(checks)
    .filter(([key, { holds, optional }]) => !(optional && value[key] === undefined) && !holds(value[key]))
    .map(([key, { expected }]) => faultAt([...path, key], value[key], expected));
  const unknown = Object.keys(value).filter((key) => !Object.hasOwn(checks, key)).map((key) => faultAt([...path, key], value[key], 'no such key'));
  return [...known, ...unknown];
}

/** Whether a later page wrote it. */
export const isNewer = (value: unknown) => isObject(value) && Number.isSafeInteger(value.v) && (value.v as number) > recordVersion;

/**
 * Reads a record as it stands in a file.
 *
 * @param path  where it stands there
 */
export function readRecord(value: unknown, path: Path): { waiting: Waiting } | { faults: Fault[] } {
  if (!isObject(value)) return { faults: [faultAt(path, value, 'a record of the queue')] };
  if (isNewer(value)) return { faults: [faultAt([...path, 'v'], value.v, `${recordVersion} or earlier: a later page wrote it, and a later page reads it`)] };
  const faults = [...faultsOf(value, recordChecks, path), ...(isObject(value.sealed) ? faultsOf(value.sealed, sealedChecks, [...path, 'sealed']) : [])];
  if (faults.length === 0 && (value.sealed as { dealer: string }).dealer !== value.dealer) faults.push(faultAt([...path, 'dealer'], value.dealer, 'the dealer it is sealed for'));
  return faults.length > 0 ? { faults } : { waiting: value as unknown as Waiting };
}

/** Says what lies in a place of the queue. What is damaged is never sent, and never thrown away either. */
export function findIn(value: unknown): Found {
  if (isNewer(value)) return { is: 'newer' };
  const read = readRecord(value, []);
  return 'waiting' in read ? { is: 'waiting', waiting: read.waiting } : { is: 'damaged' };
}
