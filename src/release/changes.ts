import type { Surface } from './surface.ts';

/** How far a version has to move: for what breaks those who rely on it, for what is new or otherwise, for neither. */
export type Step = 'major' | 'minor' | 'patch';

export interface Change {
  entry: string;
  /** Undefined where it is new. */
  before: string | undefined;
  /** Undefined where it is gone. */
  now: string | undefined;
  step: Step;
}

const alternatives = (said: string) => said.split('|').map((each) => each.trim());

/** A type that takes, or tells, at least what it did. */
const widened = (before: string, now: string) => alternatives(before).every((each) => alternatives(now).includes(each));

/** The object a field belongs to, as an entry; the format itself for a field at the top. */
const ownerOf = (field: string) => (field.includes('.') ? field.slice(0, field.lastIndexOf('.')).replace(/(?:\[\]|\.\*)+$/, '') : `format ${field.split(' ', 1)[0]}`);

/** What a writer must add breaks him, and so does what a reader may no longer count on; what only some need breaks nobody. */
function stepOf(entry: string, surface: Surface, now: string | undefined): Step {
  const before = surface[entry];
  if (now === undefined) return 'major';
  const isWritten = /^acre-to-axle\/(?:catalogue|answers)\//.test(entry);
  if (before === undefined) return isWritten && now === 'required' && ownerOf(entry) in surface ? 'major' : 'minor';
  if (entry.startsWith('rule ')) return 'minor';
  if (isWritten) return now === 'required' ? 'major' : 'minor';
  return now === 'required' || widened(before, now) ? 'minor' : 'major';
}

/** All that differs, by entry. */
export function changesBetween(before: Surface, now: Surface): Change[] {
  const entries = [...new Set([...Object.keys(before), ...Object.keys(now)])].sort();
  return entries.filter((entry) => before[entry] !== now[entry])
    .map((entry) => ({ entry, before: before[entry], now: now[entry], step: stepOf(entry, before, now[entry]) }));
}

const order: readonly Step[] = ['patch', 'minor', 'major'];

/** The largest step that any of them asks for. */
export const stepFor = (changes: readonly Change[]): Step => order[Math.max(0, ...changes.map(({ step }) => order.indexOf(step)))]!;

type Version = readonly [major: number, minor: number, patch: number];

/** @throws where it isn't three numbers */
export function versionOf(text: string): Version {
  const found = /^(\d+)\.(\d+)\.(\d+)$/.exec(text);
  if (!found) throw new Error(`${text} is no version: expected three numbers, as in 1.2.3`);
  return [Number(found[1]), Number(found[2]), Number(found[3])];
}

/** The least version that may follow; before 1.0.0 what breaks is a minor step, as Semantic Versioning 2.0.0 leaves open (item 4). */
export function leastAfter(last: string, step: Step): string {
  const [major, minor, patch] = versionOf(last);
  if (step === 'patch') return `${major}.${minor}.${patch + 1}`;
  return step === 'major' && major > 0 ? `${major + 1}.0.0` : `${major}.${minor + 1}.0`;
}

/** Whether a version is another or a later one. */
export function isAtLeast(version: string, least: string): boolean {
  const [a, b] = [versionOf(version), versionOf(least)];
  const at = a.findIndex((number, index) => number !== b[index]);
  return at < 0 || a[at]! > b[at]!;
}
