import { placeOf, type Path } from '../documents/fault.ts';
import type { Field, Keys } from './fields.ts';

/** What isn't handed on, and why: a text somebody wrote may say who he is; what a layout doesn't know it can't carry. */
export interface LeftOut {
  /** Path inside the document, as `tasks[1].material`. */
  place: string;
  why: 'written' | 'unknown';
}

/** What of a value is handed on; undefined where nothing is. */
export interface Carried {
  value: unknown;
  leftOut: readonly LeftOut[];
}

type Tree = Readonly<Record<string, unknown>>;

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value);
const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value) && value >= 0;
const isCurrency = (value: unknown) => typeof value === 'string' && /^[A-Z]{3}$/.test(value);

const refused = (value: unknown, path: Path): Carried =>
  ({ value: undefined, leftOut: [{ place: placeOf(path), why: typeof value === 'string' ? 'written' : 'unknown' }] });
const whole = (value: unknown): Carried => ({ value, leftOut: [] });
const whereFits = (fits: boolean, value: unknown, path: Path) => (fits ? whole(value) : refused(value, path));

/** The keys of a record, each with what of it is handed on; `own` are known besides. */
function inKeys(keys: Keys, value: Tree, path: Path, own: Tree = {}): Carried {
  const kept: Record<string, unknown> = { ...own };
  const leftOut: LeftOut[] = [];
  for (const [key, inner] of Object.entries(value)) {
    if (inner === undefined || Object.hasOwn(own, key)) continue;
    const here = Object.hasOwn(keys, key) ? carried(keys[key]!.field, inner, [...path, key]) : refused(undefined, [...path, key]);
    leftOut.push(...here.leftOut);
    if (here.value !== undefined) kept[key] = here.value;
  }
  return { value: kept, leftOut };
}

function inList(values: readonly unknown[], path: Path, item: (value: unknown, path: Path) => Carried): Carried {
  const items = values.map((value, index) => item(value, [...path, index]));
  return { value: items.flatMap(({ value }) => (value === undefined ? [] : [value])), leftOut: items.flatMap(({ leftOut }) => leftOut) };
}

/** A pair of keys, both of them needed: an amount, or money. */
function inPair(value: Tree, word: 'unit' | 'currency', fits: (said: unknown) => boolean, path: Path): Carried {
  if (!isNumber(value.value) || !fits(value[word])) return refused(undefined, path);
  const others = Object.keys(value).filter((key) => key !== 'value' && key !== word);
  return { value: { value: value.value, [word]: value[word] }, leftOut: others.flatMap((key) => refused(undefined, [...path, key]).leftOut) };
}

/** What of a value a field carries, and what it leaves out. Never throws, whatever the value is. */
export function carried(field: Field, value: unknown, path: Path): Carried {
  switch (field.is) {
    case 'choice':
      return whereFits(field.of.includes(value as string), value, path);
    case 'yes-no':
      return whereFits(typeof value === 'boolean', value, path);
    case 'number':
      return whereFits(isNumber(value), value, path);
    case 'amount':
      return isTree(value) ? inPair(value, 'unit', (unit) => field.units.includes(unit as string), path) : refused(value, path);
    case 'money':
      return isTree(value) ? inPair(value, 'currency', isCurrency, path) : refused(value, path);
    case 'several':
      return Array.isArray(value) ? inList(value, path, (item, at) => whereFits(field.of.includes(item as string), item, at)) : refused(value, path);
    case 'record':
      return isTree(value) ? inKeys(field.keys, value, path) : refused(value, path);
    case 'records':
      return Array.isArray(value) ? inList(value, path, (item, at) => (isTree(item) ? inKeys(field.keys, item, at) : refused(item, at))) : refused(value, path);
    case 'kinds':
      return Array.isArray(value) ? inList(value, path, (item, at) => {
        const kind = isTree(item) ? item[field.key] : undefined;
        return typeof kind === 'string' && Object.hasOwn(field.of, kind) ? inKeys(field.of[kind]!, item as Tree, at, { [field.key]: kind }) : refused(undefined, at);
      }) : refused(value, path);
    case 'either':
      return field.of.map((each) => carried(each, value, path)).find((each) => each.value !== undefined) ?? refused(value, path);
    default:
      return { value: undefined, leftOut: [{ place: placeOf(path), why: 'written' }] };
  }
}
