import type { CustomElementDeclaration } from 'custom-elements-manifest';
import { answers, answersFormat } from '../answers/schema.ts';
import { catalogue, catalogueFormat } from '../catalogue/schema.ts';
import { commands } from '../cli/run.ts';
import { jsonSchemaOf } from '../documents/json-schema.ts';
import { shortlistFormat, shortlistSchema } from '../reasons/schema.ts';
import { headingsOf } from '../sheets/headings/headings.ts';
import { rules } from '../trade/book.ts';
import { readText } from './project.ts';
import { publicManifest } from './public-manifest.ts';

/**
 * All that somebody outside may rely on, entry by entry: its kind and name, and what is said of it (a type, a value
 * with its unit, whether it has to be there). Semantic versions are reckoned from this.
 */
export type Surface = Readonly<Record<string, string>>;

type Entries = (readonly [entry: string, said: string])[];

function tag(): Entries {
  const { attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = publicManifest().modules[0]!.declarations![0] as CustomElementDeclaration;
  return [
    ...attributes.map(({ name, type }) => [`attribute ${name}`, type?.text ?? ''] as const),
    ...members.map((member) => [`${member.kind === 'field' ? 'property' : 'method'} ${member.name}`, (member.kind === 'field' ? member.type?.text : member.return?.type?.text) ?? ''] as const),
    ...events.map(({ name, type }) => [`event ${name}`, type.text] as const),
    ...slots.map(({ name }) => [`slot ${name || '(unnamed)'}`, ''] as const),
    ...[...cssParts.map(({ name }) => `part ${name}`), ...cssProperties.map(({ name }) => `token ${name}`)].map((entry) => [entry, ''] as const),
  ];
}

interface JsonSchema {
  properties?: Readonly<Record<string, JsonSchema>>;
  required?: readonly string[];
  enum?: readonly unknown[];
  const?: unknown;
  items?: JsonSchema | boolean;
  anyOf?: readonly JsonSchema[];
  oneOf?: readonly JsonSchema[];
  prefixItems?: readonly JsonSchema[];
  additionalProperties?: JsonSchema | boolean;
}

/** Every field and every word of a document, by its path. */
function* fieldsOf(schema: JsonSchema | boolean | undefined, path: string): Generator<readonly [string, string]> {
  if (typeof schema !== 'object') return;
  const { properties = {}, required = [], items, anyOf = [], oneOf = [], prefixItems = [], additionalProperties } = schema;
  for (const word of schema.enum ?? ('const' in schema ? [schema.const] : [])) yield [`${path} = ${String(word)}`, ''];
  for (const [name, field] of Object.entries(properties)) {
    const place = path.endsWith(' ') ? `${path}${name}` : `${path}.${name}`;
    yield [place, required.includes(name) ? 'required' : 'optional'];
    yield* fieldsOf(field, place);
  }
  for (const each of [...anyOf, ...oneOf, ...prefixItems]) yield* fieldsOf(each, path);
  yield* fieldsOf(items, `${path}[]`);
  yield* fieldsOf(additionalProperties, `${path}.*`);
}

const formats: readonly (readonly [Parameters<typeof jsonSchemaOf>[0], string])[] = [[catalogue, catalogueFormat], [answers, answersFormat], [shortlistSchema, shortlistFormat]];

const documents = (): Entries => formats.flatMap(([schema, format]) =>
  [[`format ${format}`, ''] as const, ...fieldsOf(jsonSchemaOf(schema, format, '') as JsonSchema, `${format} `)]);

const commandLine = (): Entries => commands.flatMap(({ name, options, rest }) => [
  [`command ${name}`, rest?.shown ?? ''] as const,
  ...options.map((option) => [`command ${name} --${option.name}`, `${option.takes}${option.required ? ', required' : ''}`] as const),
]);

const ruleBook = (): Entries => Object.entries(rules).map(([id, rule]) => [`rule ${id}`, rule.kind === 'formula' ? rule.formula : `${rule.value} ${rule.unit}`]);

const headings = (): Entries => (['machines', 'units'] as const).flatMap((sheet) => headingsOf(sheet).map(({ heading }) => [`heading ${sheet}: ${heading}`, ''] as const));

const packaged = (): Entries => Object.keys((JSON.parse(readText('package.json')) as { exports: object }).exports).map((path) => [`import acre-to-axle${path.slice(1)}`, '']);

/** What is public now. Another way in (a link, requests over HTTP) is one row more here. */
export const surfaceNow = (): Surface => Object.fromEntries([tag, documents, commandLine, ruleBook, headings, packaged].flatMap((of) => of()));
