/**
 * Makes a typed function of an MJML template. In its text `{{name}}` is a slot; `{{#name}}` to `{{/name}}` stands once for each
 * entry of a list, and slots within belong to that entry. What is compiled is kept beside the sources, so that a relay needs
 * no MJML and a slot that isn't filled is a type error.
 */
// @ts-expect-error: a module without types
import mjml2html from 'mjml';

type Node = { is: 'text'; text: string } | { is: 'slot'; name: string } | { is: 'list'; name: string; nodes: Node[] };

const tag = /\{\{([#/]?)([a-z][A-Za-z]*)\}\}/g;

function parsed(html: string): Node[] {
  const open: { name: string; nodes: Node[] }[] = [{ name: '', nodes: [] }];
  let from = 0;
  for (const { 0: whole, 1: sign, 2: name = '', index } of html.matchAll(tag)) {
    const here = open.at(-1)!;
    here.nodes.push({ is: 'text', text: html.slice(from, index) });
    from = index + whole.length;
    if (sign === '#') open.push({ name, nodes: [] });
    else if (sign === '') here.nodes.push({ is: 'slot', name });
    else if (here.name !== name || open.length === 1) throw new Error(`{{/${name}}} closes what isn't open.`);
    else open.at(-2)!.nodes.push({ is: 'list', name, nodes: open.pop()!.nodes });
  }
  if (open.length > 1) throw new Error(`{{#${open.at(-1)!.name}}} isn't closed.`);
  return [...open[0]!.nodes, { is: 'text', text: html.slice(from) }];
}

const capital = (word: string) => word[0]!.toUpperCase() + word.slice(1);
const literal = (text: string) => text.replace(/[\\`]|\$(?=\{)/g, '\\$&');

/** The types of what fills a list, the innermost first. */
function typesOf(nodes: readonly Node[], name: string): string[] {
  const slots = new Map<string, string>();
  const inner: string[] = [];
  for (const node of nodes) {
    if (node.is === 'text') continue;
    if (node.is === 'list') inner.push(...typesOf(node.nodes, `${name}${capital(node.name)}`));
    slots.set(node.name, node.is === 'slot' ? 'string' : `readonly ${name}${capital(node.name)}[]`);
  }
  return [...inner, `export interface ${name} {\n${[...slots].map(([slot, type]) => `  ${slot}: ${type};\n`).join('')}}`];
}

const writerOf = (nodes: readonly Node[], its: string, depth: number): string => nodes.map((node) => {
  if (node.is === 'text') return literal(node.text);
  if (node.is === 'slot') return `\${escaped(${its}.${node.name})}`;
  const each = `each${depth}`;
  return `\${${its}.${node.name}.map((${each}) => \`${writerOf(node.nodes, each, depth + 1)}\`).join('')}`;
}).join('');

/**
 * @param source  of the template
 * @param name  of the function it becomes
 * @returns the text of a TypeScript module
 * @throws Error where the template is none
 */
export async function compiled(source: string, name: string): Promise<string> {
  // Without a font of its own nothing is fetched for one.
  const { html, errors } = await mjml2html(source, { validationLevel: 'strict', fonts: {} }) as { html: string; errors: readonly { formattedMessage: string }[] };
  if (errors.length > 0) throw new Error(errors.map(({ formattedMessage }) => formattedMessage).join('\n'));
  const nodes = parsed(html.replace(/[ \t]*\n\s*/g, '\n').replace(/ {2,}/g, ' ').trim());
  return [
    `/** Made of templates/${name}.mjml: change that, and see to it with REGEN=1 in tests/relay/mail-template.test.ts. */`,
    "import { escaped } from './escaped.ts';",
    '',
    ...typesOf(nodes, `${capital(name)}Slots`).flatMap((type) => [type, '']),
    `export const ${name}Html = (its: ${capital(name)}Slots): string => \`${writerOf(nodes, 'its', 0)}\n\`;`,
    '',
  ].join('\n');
}
