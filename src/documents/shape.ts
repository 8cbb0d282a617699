import type * as z from '../zod.ts';
import type { Path } from './fault.ts';

/** The little of a Zod definition that a fault's words are made from. */
interface Definition {
  type: string;
  shape?: Record<string, Schema>;
  innerType?: Schema;
  element?: Schema;
  valueType?: Schema;
  items?: Schema[];
  options?: Schema[];
  entries?: Record<string, string>;
  values?: unknown[];
  checks?: { _zod: { def: { check: string; value?: number; inclusive?: boolean; minimum?: number; pattern?: RegExp } } }[];
}
export type Schema = z.ZodMiniType;
const definitionOf = (schema: Schema) => (schema as unknown as { _zod: { def: Definition } })._zod.def;

const unwrapped = (schema: Schema): Schema => {
  const { innerType } = definitionOf(schema);
  return innerType ? unwrapped(innerType) : schema;
};

/** Every schema that may stand at a path (a union gives several). */
export function schemasAt(schema: Schema, path: Path): Schema[] {
  const here = unwrapped(schema);
  const { options, shape, element, valueType, items } = definitionOf(here);
  if (options) return options.flatMap((option) => schemasAt(option, path));
  const [key, ...rest] = path;
  if (key === undefined) return [here];
  const next = shape?.[String(key)] ?? items?.[Number(key)] ?? element ?? valueType;
  return next && (shape === undefined || Object.hasOwn(shape, key)) ? schemasAt(next, rest) : [];
}

/** The keys an object may have at a path. */
export const keysAt = (schema: Schema, path: Path) => [
  ...new Set(schemasAt(schema, path).flatMap((at) => Object.keys(definitionOf(at).shape ?? {}))),
];

/** The words a choice may have at a path. */
export const wordsAt = (schema: Schema, path: Path) => [
  ...new Set(
    schemasAt(schema, path).flatMap((at) => {
      const { entries, values } = definitionOf(at);
      return entries ? Object.values(entries) : (values ?? []).map(String);
    }),
  ),
];

const formats: Record<string, string> = {
  '/^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$/': 'a day such as 2026-04-30',
  '/^[A-Z]{3}$/': 'a currency of three capitals such as USD',
  '/^https:\\/\\//': 'an address that begins with https://',
  '/^https?:\\/\\//': 'an address that begins with https:// or http://',
  '/^[a-z0-9]+(-[a-z0-9]+)*$/': 'an id of small letters, digits and single hyphens',
};

/** What a schema expects, in words. */
export function expectation(schema: Schema): string {
  const here = unwrapped(schema);
  const { type, options, shape, entries, values, checks = [] } = definitionOf(here);
  if (options) return [...new Set(options.map(expectation))].join(', or ');
  if (entries) return `one of ${Object.values(entries).join(', ')}`;
  if (values) return values.length === 1 ? JSON.stringify(values[0]) : `one of ${values.join(', ')}`;
  if (shape?.value && shape.unit) {
    const units = wordsAt(shape.unit, []);
    if (units.length === 0) return 'an amount with value and unit';
    return `an amount such as {"value": 1, "unit": "${units[0]}"} in ${units.join(', ')}`;
  }
  if (shape?.value && shape.currency) return 'an amount of money such as {"value": 100, "currency": "USD"}';
  if (shape) return `an object with ${Object.keys(shape).slice(0, 4).join(', ')}${Object.keys(shape).length > 4 ? ', …' : ''}`;
  const bounds = checks.map(({ _zod: { def } }) => {
    if (def.check === 'greater_than') return `${def.inclusive ? 'at least' : 'more than'} ${def.value}`;
    if (def.check === 'less_than') return `at most ${def.value}`;
    if (def.check === 'min_length') return def.minimum === 1 ? 'not empty' : `at least ${def.minimum} long`;
    if (def.pattern) return formats[String(def.pattern)] ?? `text like ${String(def.pattern)}`;
    return undefined;
  }).filter((bound) => bound !== undefined);
  const whole = checks.some(({ _zod: { def } }) => def.check === 'number_format') || 'format' in definitionOf(here);
  const noun = { number: whole ? 'a whole number' : 'a number', string: 'text', boolean: 'true or false', array: 'a list', record: 'an object', tuple: 'a pair' }[type] ?? type;
  return bounds.some((bound) => bound.startsWith('a')  && !bound.startsWith('at')) ? bounds.join(', ') : [noun, ...bounds].join(', ');
}
