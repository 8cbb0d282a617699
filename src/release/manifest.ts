import type { Attribute, ClassMethod, CssCustomProperty, CustomElementDeclaration, CustomElementField, Event, Package } from 'custom-elements-manifest';
import { exportedAs, membersOf, sourceOf, valueOf, type Doc, type Node, type Source } from './read-source.ts';

/** The texts of the sources that the public surface is read from: `element.ts`, `events.ts` and `look.ts` of the widget. */
export interface Sources {
  element: string;
  events: string;
  look: string;
}

const nameOf = (member: Node) => member.key?.name ?? '';
const isPublic = ({ accessibility, override, key }: Node) => !accessibility && !override && key?.name !== undefined;

const typeOf = (source: Source, annotation: Node | undefined) => (annotation ? { type: { text: source.slice(annotation).replace(/^:\s*/, '') } } : {});
const saying = ({ text }: Pick<Doc, 'text'>) => (text === '' ? {} : { description: text });

/** What a tag says of a name; the unnamed slot has none. */
function told(text: string): { name: string; description: string } {
  const [, name = '', description = ''] = /^(\S*?)\s*(?:- |\s)(.*)$/.exec(text) ?? [];
  return { name, description };
}

const toldBy = ({ tags }: Doc, tag: string) => tags.filter((each) => each.tag === tag).map(({ text }) => told(text));

interface Attributed {
  attribute: string;
  reflects: boolean;
}

/** What can be set as an attribute too, by the name of its property; what isn't told otherwise goes by that name in small letters. */
function attributed(members: readonly Node[]): ReadonlyMap<string, Attributed> {
  const held = members.find((member) => member.static && nameOf(member) === 'properties');
  const options = (node: Node | undefined) => (node && valueOf(node)?.properties) ?? [];
  const told = (node: Node, option: string) => options(node).flatMap((each) => (nameOf(each) === option ? [valueOf(each)?.value] : []))[0];
  return new Map(options(held).filter((each) => told(each, 'state') !== true && told(each, 'attribute') !== false).map((each) => {
    const name = told(each, 'attribute');
    return [nameOf(each), { attribute: typeof name === 'string' ? name : nameOf(each).toLowerCase(), reflects: told(each, 'reflect') === true }];
  }));
}

function fieldsOf(source: Source, members: readonly Node[]): CustomElementField[] {
  const attributes = attributed(members);
  const isGetter = ({ kind }: Node) => kind === 'get';
  return members.filter((member) => isPublic(member) && (member.type === 'PropertyDefinition' || isGetter(member))).map((member) => {
    const name = nameOf(member);
    const attribute = attributes.get(name);
    const fixed = isGetter(member) ? !members.some((other) => other.kind === 'set' && nameOf(other) === name) : member.readonly;
    return {
      kind: 'field', name, ...typeOf(source, isGetter(member) ? valueOf(member)!.returnType : member.typeAnnotation), ...saying(source.docOf(member)),
      ...(attribute && { attribute: attribute.attribute }), ...(attribute?.reflects && { reflects: true }),
      ...(member.static && { static: true }), ...(fixed && { readonly: true }),
    };
  });
}

const methodsOf = (source: Source, members: readonly Node[]): ClassMethod[] =>
  members.filter((member) => isPublic(member) && member.kind === 'method').map((member) => ({
    kind: 'method', name: nameOf(member), ...saying(source.docOf(member)),
    parameters: (valueOf(member)!.params ?? []).map((each) => ({ name: each.name ?? source.slice(each), ...typeOf(source, each.typeAnnotation) })),
    return: typeOf(source, valueOf(member)!.returnType),
  }));

/** An attribute that every element of a page has is no field of ours, and has a tag instead. */
function attributesOf(fields: readonly CustomElementField[], doc: Doc): Attribute[] {
  const own = fields.flatMap(({ attribute, name, type, description }): Attribute[] =>
    (attribute ? [{ name: attribute, fieldName: name, ...(type && { type }), ...(description && { description }) }] : []));
  return [...own, ...toldBy(doc, 'attr')];
}

/** A type that the file names is written out, for whoever reads the manifest has no file. */
function writtenOut(source: Source, node: Node): string {
  const aliases = source.exported.flatMap(({ declaration }) => (declaration!.type === 'TSTypeAliasDeclaration' ? [declaration!] : []));
  const text = source.slice(node).replace(/^:\s*/, '');
  return aliases.reduce((said, { id, typeAnnotation }) => said.replace(
    new RegExp(`\\b${id!.name}\\b`), () => source.slice(typeAnnotation!).replace(/\s+/g, ' ').replace(/^\s*\| /, ''),
  ), text);
}

function eventsOf(text: string): Event[] {
  const source = sourceOf('events.ts', text);
  return membersOf(exportedAs(source, 'AcreEventDetails').declaration!).map((detail) => ({
    name: String(detail.key!.value), type: { text: `CustomEvent<${writtenOut(source, detail.typeAnnotation!)}>` }, ...saying(source.docOf(detail)),
  }));
}

/** Each with what stands for it by day where the page sets nothing. */
function tokensOf(text: string): CssCustomProperty[] {
  const source = sourceOf('look.ts', text);
  return toldBy(source.docOf(source.exported.at(-1)!), 'cssproperty').map((token) => {
    const standing = new RegExp(`var\\(${token.name}, ([^)]+)\\)`).exec(text)?.[1];
    return { ...token, ...(standing && { default: standing }) };
  });
}

/**
 * The public surface of the element, read from its sources, in the form of the Custom Elements Manifest, schema
 * 2.1.0. What is private or protected, and what is taken over from the base class, is left out.
 */
export function manifestOf({ element, events, look }: Sources): Package {
  const source = sourceOf('element.ts', element);
  const name = 'AcreToAxle';
  const exported = exportedAs(source, name);
  const members = membersOf(exported.declaration!);
  const doc = source.docOf(exported);
  const fields = fieldsOf(source, members);
  const declaration: CustomElementDeclaration & { kind: 'class' } = {
    kind: 'class', customElement: true, name, tagName: 'acre-to-axle', description: doc.text, superclass: { name: 'LitElement', package: 'lit' },
    attributes: attributesOf(fields, doc), members: [...fields, ...methodsOf(source, members)], events: eventsOf(events),
    slots: toldBy(doc, 'slot'), cssParts: toldBy(doc, 'csspart'), cssProperties: tokensOf(look),
  };
  const path = 'dist/package/embed/main.js';
  return {
    schemaVersion: '2.1.0',
    readme: 'README.md',
    modules: [
      { kind: 'javascript-module', path, declarations: [declaration], exports: [{ kind: 'js', name, declaration: { name } }] },
      {
        kind: 'javascript-module', path: 'dist/package/widget/define.js',
        exports: [{ kind: 'custom-element-definition', name: 'acre-to-axle', declaration: { name, module: path } }],
      },
    ],
  };
}
