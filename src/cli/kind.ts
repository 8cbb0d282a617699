import { answersFormat } from '../answers/schema.ts';
import { catalogueFormat } from '../catalogue/schema.ts';
import { shown, type Fault } from '../documents/fault.ts';
import { nearest } from '../documents/nearest.ts';
import { shortlistFormat } from '../reasons/schema.ts';

/** The two documents people write. */
export type Kind = 'catalogue' | 'answers';

const formats: Readonly<Record<Kind, string>> = { catalogue: catalogueFormat, answers: answersFormat };
const called: Readonly<Record<Kind, string>> = { catalogue: 'a catalogue', answers: 'answers' };
/** Keys that only one of them has: they tell what was meant where `format` is missing. */
const tellingKeys: Readonly<Record<Kind, readonly string[]>> = {
  catalogue: ['dealer', 'machines', 'frames', 'units'],
  answers: ['tasks', 'land', 'drivers', 'storage', 'haul', 'budget', 'comfort', 'priorities'],
};
const ofOurs = /^(acre-to-axle\/[a-z]+)\/(\d+)$/;

const quoted = (kinds: readonly Kind[]) => kinds.map((kind) => JSON.stringify(formats[kind])).join(' or ');
const fault = (place: string, read: unknown, expected: string) => ({ fault: { place, read: shown(read), expected } });

const meantByKeys = (document: object, among: readonly Kind[]) =>
  among.find((kind) => tellingKeys[kind].some((key) => Object.hasOwn(document, key)));

/** The kind whose name is nearest to a misspelt one; a name that is right means another document. */
function meantByName(format: string, among: readonly Kind[]): Kind | undefined {
  if ([...Object.values(formats), shortlistFormat].includes(format)) return undefined;
  const near = nearest(format, among.map((kind) => formats[kind]));
  return among.find((kind) => formats[kind] === near);
}

/**
 * Which of the documents this is, or is meant to be: its own check then names a slip in `format` with all
 * the rest. One of another kind or version is refused as a whole, for every line of it would look wrong.
 */
export function kindOf(document: unknown, among: readonly Kind[]): { kind: Kind } | { fault: Fault } {
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return fault('', document, `${among.map((kind) => called[kind]).join(' or ')}: an object with "format": ${quoted(among)}`);
  }
  const { format } = document as { format?: unknown };
  const exact = among.find((kind) => formats[kind] === format);
  if (exact) return { kind: exact };
  const other = typeof format === 'string' ? ofOurs.exec(format) : null;
  const sameName = other && among.find((kind) => formats[kind].startsWith(`${other[1]}/`));
  if (sameName) return fault('format', format, `${JSON.stringify(formats[sameName])}, the only version this program reads`);
  const kind = format === undefined ? meantByKeys(document, among) : typeof format === 'string' ? meantByName(format, among) : undefined;
  return kind ? { kind } : fault('format', format, quoted(among));
}
