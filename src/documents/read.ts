import * as z from '../zod.ts';
import { placeOf, shown, type Fault, type Path } from './fault.ts';
import { nearest } from './nearest.ts';
import { expectation, keysAt, schemasAt, wordsAt, type Schema } from './shape.ts';

/** A document that was read: its value where no fault forbids it, and all that was wrong at once. */
export interface Reading<T> {
  value: T | undefined;
  faults: Fault[];
  /** Keys this version doesn't know. A writer faults them; a reader of the same version goes on. */
  unknownKeys: Fault[];
}

interface Issue {
  code: string;
  path: PropertyKey[];
  keys?: string[];
  errors?: Issue[][];
}

const at = (document: unknown, path: Path): unknown =>
  path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], document);

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A copy without the keys that begin with `x-`, which are free for anyone to use. */
function withoutFreeKeys(document: unknown): unknown {
  if (Array.isArray(document)) return document.map(withoutFreeKeys);
  if (!isObject(document)) return document;
  return Object.fromEntries(
    Object.entries(document).filter(([key]) => !key.startsWith('x-')).map(([key, value]) => [key, withoutFreeKeys(value)]),
  );
}

/** A union fails on every branch: the branch that got furthest is the one that was meant. */
function flattened(issues: Issue[], path: PropertyKey[] = []): Issue[] {
  return issues.flatMap((issue) => {
    const here = { ...issue, path: [...path, ...issue.path] };
    if (!issue.errors?.length) return [here];
    const depth = (branch: Issue[]) => Math.max(...branch.map(({ path: inside, code }) => inside.length + (code === 'unrecognized_keys' ? 1 : 0)));
    const [best] = [...issue.errors].sort((a, b) => depth(b) - depth(a) || a.length - b.length);
    return best && depth(best) > 0 ? flattened(best, here.path) : [here];
  });
}

function faultsOf(issue: Issue, schema: Schema, document: unknown): Fault[] {
  if (issue.code === 'unrecognized_keys') {
    const known = keysAt(schema, issue.path);
    return (issue.keys ?? []).map((key) => {
      const near = nearest(key, known);
      return {
        place: placeOf([...issue.path, key]),
        read: `the key ${JSON.stringify(key)}`,
        expected: 'a key this version knows',
        ...(near && { nearest: near }),
      };
    });
  }
  const read = at(document, issue.path);
  const near = typeof read === 'string' ? nearest(read, wordsAt(schema, issue.path)) : undefined;
  const expected = [...new Set(schemasAt(schema, issue.path).map(expectation))].join(', or ');
  return [{ place: placeOf(issue.path), read: shown(read), expected, ...(near && { nearest: near }) }];
}

const isUnknownKey = ({ code }: Issue) => code === 'unrecognized_keys';

/**
 * Reads a parsed document against its schema. Never throws: all faults come back together. Unknown
 * keys alone don't hold the value back; they are left out of it and listed.
 */
export function readDocument<S extends Schema>(schema: S, document: unknown): Reading<z.infer<S>> {
  const plain = withoutFreeKeys(document);
  const first = z.safeParse(schema, plain);
  if (first.success) return { value: first.data, faults: [], unknownKeys: [] };

  const issues = flattened(first.error.issues as unknown as Issue[]);
  const listed = (some: Issue[]) => some.flatMap((issue) => faultsOf(issue, schema, plain));
  const unknownKeys = listed(issues.filter(isUnknownKey));
  const others = issues.filter((issue) => !isUnknownKey(issue));
  if (others.length > 0) return { value: undefined, faults: listed(others), unknownKeys };

  for (const { path, keys } of issues) {
    const holder = at(plain, path);
    if (isObject(holder)) for (const key of keys ?? []) delete holder[key];
  }
  const second = readDocument(schema, plain);
  return { ...second, unknownKeys: [...unknownKeys, ...second.unknownKeys] };
}
