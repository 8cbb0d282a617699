import type { Field, Keys } from './fields.ts';

/** Which units most of a document's amounts are typed in: they then cost least. */
export type System = 'us' | 'metric';
type Tree = Readonly<Record<string, unknown>>;

/** Whether a field takes what it is given: the value was looked through before. */
export function takes(field: Field, value: unknown): boolean {
  if (field.is === 'choice') return field.of.includes(value as string);
  return field.is === 'amount' && field.units.includes((value as Tree).unit as string);
}

/** For each amount that only one system would type so, which of them. */
function* leanings(field: Field, value: unknown): Generator<System> {
  if (field.is === 'amount' && field.us !== field.metric) {
    const { unit } = value as { unit: string };
    if (unit === field.us) yield 'us';
    else if (unit === field.metric) yield 'metric';
  } else if (field.is === 'either') yield* leanings(field.of.find((each) => takes(each, value))!, value);
  else if (field.is === 'record') yield* leaningsIn(field.keys, value as Tree);
  else if (field.is === 'records') for (const each of value as Tree[]) yield* leaningsIn(field.keys, each);
  else if (field.is === 'kinds') for (const each of value as Tree[]) yield* leaningsIn(field.of[each[field.key] as string]!, each);
}

function* leaningsIn(keys: Keys, value: Tree): Generator<System> {
  for (const [key, inner] of Object.entries(value)) if (Object.hasOwn(keys, key)) yield* leanings(keys[key]!.field, inner);
}

/** Whether more of a document's amounts are typed in metric units than not. */
export function isMetric(keys: Keys, value: Tree): boolean {
  const all = [...leaningsIn(keys, value)];
  return all.filter((system) => system === 'metric').length * 2 > all.length;
}
