import type { CustomElementDeclaration, Package } from 'custom-elements-manifest';

/** Marks in the README between which the tables stand; they are written by `node src/release/run.mjs document`. */
export const marks = { begin: '<!-- The tables below are written from the sources: node src/release/run.mjs document -->', end: '<!-- End of the tables. -->' };

interface Told {
  name: string;
  description?: string;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const ended = (text: string) => (/[.!?]$/.test(text) ? text : `${text}.`);
const code = (text: string) => `\`${text.replaceAll('|', '\\|')}\``;
const saying = ({ description = '' }: Told) => ended(capital(description));

const table = (heads: readonly string[], rows: readonly (readonly string[])[]) => [
  `| ${heads.join(' | ')} |`, `|${' --- |'.repeat(heads.length)}`, ...rows.map((cells) => `| ${cells.join(' | ')} |`), '',
];

/** A type without what goes without saying: whatever may be set may be left out. */
const settable = (type: string) => type.replace(/ \| undefined$/, '');

/** @returns the tables of the public surface as Markdown, marks included */
export function apiTables({ modules }: Package): string {
  const element = modules[0]!.declarations![0] as CustomElementDeclaration;
  const { attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = element;
  const fields = members.filter((member) => member.kind === 'field');
  const methods = members.filter((member) => member.kind === 'method');
  const alone = fields.filter(({ name }) => !attributes.some(({ fieldName }) => fieldName === name));
  const whose = ({ static: isStatic, readonly }: typeof alone[number]) => [isStatic && 'of the class', readonly && 'read only'].filter(Boolean).join(', ');
  return [
    marks.begin, '',
    ...table(['attribute and property', 'type', 'what it is'], attributes.map((each) => [`${code(each.name)}${each.fieldName && each.fieldName !== each.name ? `, property ${code(each.fieldName)}` : ''}`, code(settable(each.type?.text ?? 'string')), saying(each)])),
    ...table(['property alone', 'type', 'what it is'], alone.map((each) => [`${code(each.name)}${whose(each) && ` (${whose(each)})`}`, code(each.type?.text ?? ''), saying(each)])),
    ...(methods.length > 0 ? table(['method', 'gives', 'what it does'], methods.map((each) => [
      code(`${each.name}(${(each.parameters ?? []).map(({ name, type }) => `${name}: ${type?.text ?? 'unknown'}`).join(', ')})`), code(each.return?.type?.text ?? 'void'), saying(each),
    ])) : []),
    ...table(['event', 'its kind', 'when'], events.map((each) => [code(each.name), code(each.type.text), saying(each)])),
    ...table(['slot', 'for'], slots.map((each) => [each.name ? code(each.name) : 'unnamed', saying(each)])),
    ...table(['part', 'what it is'], cssParts.map((each) => [code(each.name), saying(each)])),
    ...table(['custom property', 'by day', 'what it is'], cssProperties.map((each) => [code(each.name), code(each.default ?? ''), saying(each)])),
    marks.end,
  ].join('\n');
}

/**
 * A document with the tables in their place.
 *
 * @throws where it has no place for them
 */
export function withTables(document: string, tables: string): string {
  const [from, to] = [document.indexOf(marks.begin), document.indexOf(marks.end)];
  if (from < 0 || to < from) throw new Error(`The document has no place for the tables, between «${marks.begin}» and «${marks.end}».`);
  return document.slice(0, from) + tables + document.slice(to + marks.end.length);
}
