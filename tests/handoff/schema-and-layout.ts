import { materials, questions, species } from '../../src/answers/questions.ts';
import { answers } from '../../src/answers/schema.ts';
import type { Schema } from '../../src/documents/shape.ts';
import { record, type Field, type Keys } from '../../src/handoff/fields.ts';

interface Definition { type: string; shape?: Record<string, Schema>; innerType?: Schema; element?: Schema; options?: Schema[]; entries?: Record<string, string>; values?: unknown[] }
const definitionOf = (schema: Schema): Definition => {
  const { def } = (schema as unknown as { _zod: { def: Definition } })._zod;
  return def.innerType ? definitionOf(def.innerType) : def;
};

/** Texts of the schema that a buyer of the wizard chooses from a list, by their place. */
export const listed: Readonly<Record<string, readonly string[]>> = {
  'tasks.move-loose.material': materials, 'tasks.handle-logs.species': species, unsure: questions.map(({ id }) => id),
};
type Lists = typeof listed;

const missing = (words: readonly string[], of: readonly string[], place: string, what: string) =>
  words.filter((word) => !of.includes(word)).map((word) => `${place}: the newest layout has no ${what} ${JSON.stringify(word)}: append it`);
const otherwise = (place: string, wanted: string, field: Field) => [`${place}: the schema has ${wanted} there, the newest layout ${field.is}: lay it out anew`];

function inShape(shape: Record<string, Schema>, keys: Keys, place: string, lists: Lists): string[] {
  const here = (key: string) => (place ? `${place}.${key}` : key);
  return [
    ...Object.entries(shape).flatMap(([key, inner]) => (Object.hasOwn(keys, key)
      ? lacking(inner, keys[key]!.field, here(key), lists)
      : [`${here(key)}: the answers have it and the newest layout doesn't: append it, or keep it back`])),
    ...Object.keys(keys).filter((key) => !Object.hasOwn(shape, key)).map((key) => `${here(key)}: the newest layout has it and the answers don't`),
  ];
}

/** What a layout lacks of what a schema takes, each with what to do; nothing where it carries or keeps back all of it. */
function lacking(schema: Schema, field: Field, place: string, lists: Lists): string[] {
  const { type, shape, element, options, entries, values } = definitionOf(schema);
  if (field.is === 'kept-back') return [];
  if (field.is === 'either') {
    const all = options ?? [schema];
    return all.flatMap((option) => {
      const each = field.of.map((one) => lacking(option, one, place, lists));
      const best = each.sort((a, b) => a.length - b.length)[0]!;
      // A text is carried where it is one of a list, and kept back where it isn't.
      return best.length === 0 && definitionOf(option).type === 'string' ? missing(lists[place] ?? [], field.of.flatMap((one) => (one.is === 'choice' ? one.of : [])), place, 'word') : best;
    });
  }
  const words = entries ? Object.values(entries) : values?.map(String);
  if (words) return field.is === 'choice' ? missing(words, field.of, place, 'word') : otherwise(place, 'words', field);
  if (shape?.value && shape.unit) {
    const { entries: units = {}, values: only = [] } = definitionOf(shape.unit);
    return field.is === 'amount' ? missing([...Object.values(units), ...only.map(String)], field.units, place, 'unit') : otherwise(place, 'an amount', field);
  }
  if (shape?.value && shape.currency) return field.is === 'money' ? [] : otherwise(place, 'money', field);
  if (shape) return field.is === 'record' ? inShape(shape, field.keys, place, lists) : otherwise(place, 'a record', field);
  if (type === 'boolean') return field.is === 'yes-no' ? [] : otherwise(place, 'yes or no', field);
  if (type === 'number' || type === 'int') return field.is === 'number' ? [] : otherwise(place, 'a number', field);
  if (element) return inElement(element, field, place, lists);
  return otherwise(place, `a ${type}`, field);
}

function inElement(element: Schema, field: Field, place: string, lists: Lists): string[] {
  const { shape, options, entries } = definitionOf(element);
  if (field.is === 'several') return missing(entries ? Object.values(entries) : (lists[place] ?? []), field.of, place, 'word');
  if (field.is === 'records' && shape) return inShape(shape, field.keys, place, lists);
  if (field.is !== 'kinds' || !options) return otherwise(place, 'a list', field);
  return options.flatMap((option) => {
    const { [field.key]: name, ...rest } = definitionOf(option).shape!;
    const [kind] = definitionOf(name!).values!.map(String);
    return Object.hasOwn(field.of, kind!) ? inShape(rest, field.of[kind!]!, `${place}.${kind}`, lists) : missing([kind!], [], place, 'kind');
  });
}

/** What the newest layout lacks of the answers. */
export function lackingOf(keys: Keys, lists: Lists = listed, schema: Schema = answers): string[] {
  const { format: _format, ...shape } = definitionOf(schema).shape!;
  return lacking({ _zod: { def: { type: 'object', shape } } } as unknown as Schema, record(keys), '', lists);
}
