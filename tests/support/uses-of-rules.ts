import { posix } from 'node:path';
import { nodesOf, sources, syntaxOf, type SourceFile, type SyntaxNode } from './sources.ts';

/** Rooms and folders that hold, say or show rules, and read none. */
const silent = ['trade/figures/', 'trade/book.ts', 'trade/record.ts', 'trade/working.ts', 'reasons/words/', 'widget/', 'cli/', 'counter/'];
const inFormulas = (file: string) => file.startsWith('trade/formulas/');

const escaped = (text: string) => text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
const nameOf = (node: unknown) => (node as { name?: string } | null | undefined)?.name ?? '';

/** The ids a literal or template is: one with a hole is completed by a word of the answers. */
function idsOf({ type, value, quasis }: SyntaxNode, ids: readonly string[]): readonly string[] {
  if (type === 'Literal') return ids.filter((id) => id === value);
  if (type !== 'TemplateLiteral') return [];
  const parts = (quasis as { value: { cooked: string } }[]).map((part) => part.value.cooked);
  // One that begins with a hole could be anything.
  if (!parts[0]!.includes('.')) return [];
  const form = new RegExp(`^${parts.map(escaped).join('[a-z0-9.-]+')}$`);
  return ids.filter((id) => form.test(id));
}

/** Needs and capabilities have ids that look the same, and a type only says what may come. */
const namesAnother = ({ parent, field }: { parent: SyntaxNode; field: string }) =>
  parent.type === 'TSLiteralType' || (parent.type === 'Property' && field === 'value' && ['id', 'need', 'capability'].includes(nameOf(parent.key)));

/** Ids of rules in a piece of code. */
const idsIn = (node: SyntaxNode, ids: readonly string[]) =>
  [...new Set([...nodesOf(node)].filter((sight) => !namesAnother(sight)).flatMap((sight) => idsOf(sight.node, ids)))];

/** Ids handed to one of some functions. */
const idsHandedTo = (functions: readonly string[], node: SyntaxNode, ids: readonly string[]) =>
  [...nodesOf(node)].filter(({ node: call }) => call.type === 'CallExpression' && functions.includes(nameOf(call.callee)))
    .flatMap(({ node: call }) => (call.arguments as SyntaxNode[]).flatMap((argument) => idsOf(argument, ids)));

interface Declared { names: string[]; node: SyntaxNode; text: string }

/** What stands at the top of a file, with the comment before it. */
function declaredIn(source: SourceFile): Declared[] {
  let end = 0;
  return (syntaxOf(source).body as SyntaxNode[]).map((statement) => {
    const text = source.text.slice(end, statement.end as number);
    end = statement.end as number;
    const inner = (statement.declaration ?? statement) as SyntaxNode;
    const named = (inner.declarations as SyntaxNode[] | undefined) ?? [inner];
    return { names: named.map(({ id }) => nameOf(id)), node: statement, text };
  });
}

const importsOf = (source: SourceFile) => (syntaxOf(source).body as SyntaxNode[]).filter(({ type }) => type === 'ImportDeclaration')
  .flatMap(({ source: from, specifiers }) => (specifiers as SyntaxNode[]).map(({ imported }) => ({
    file: posix.join(posix.dirname(source.file), String((from as SyntaxNode).value)), name: nameOf(imported),
  })));

/**
 * Which ids each function of `trade/formulas` brings to whoever calls it: those in its own code, and those
 * of what it calls. A function that gives no working points to its rule in its comment.
 */
function idsOfFunctions(files: readonly SourceFile[], ids: readonly string[]): Map<string, string[]> {
  const all = files.flatMap((source) => {
    const imports = importsOf(source);
    return declaredIn(source).map(({ names, node, text }) => {
      const pointed = [...text.matchAll(/@see rules? .*/g)].flatMap(([line]) => ids.filter((id) => line.includes(`\`${id}\``)));
      const called = [...nodesOf(node)].flatMap((sight) => (sight.node.type === 'Identifier' ? [nameOf(sight.node)] : []));
      const own = idsIn(node, ids);
      return {
        keys: names.map((name) => `${source.file} ${name}`),
        brings: own.length > 0 || text.includes('formula') ? own : pointed,
        calls: called.map((name) => `${imports.find((one) => one.name === name)?.file ?? source.file} ${name}`),
      };
    });
  });
  const found = new Map<string, string[]>();
  const bring = (key: string, seen: readonly string[] = []): string[] => {
    if (seen.includes(key)) return [];
    return all.filter(({ keys }) => keys.includes(key)).flatMap(({ brings, calls }) => [...brings, ...calls.flatMap((call) => bring(call, [...seen, key]))]);
  };
  for (const { keys } of all) for (const key of keys) found.set(key, [...new Set(bring(key))]);
  return found;
}

export interface Ids {
  figures: readonly string[];
  formulas: readonly string[];
}

/**
 * Which modules read each rule: a figure where its id stands; a formula where a function that works it
 * out is called, for the working of a formula is its use.
 */
export function usesOfRules({ figures, formulas }: Ids, files: readonly SourceFile[] = sources()): Record<string, string[]> {
  const functions = idsOfFunctions(files.filter(({ file }) => inFormulas(file)), [...figures, ...formulas]);
  const uses = new Map([...figures, ...formulas].sort().map((id) => [id, new Set<string>()]));
  for (const source of files) {
    if (inFormulas(source.file) || source.file.endsWith('.config.ts') || silent.some((place) => source.file.startsWith(place))) continue;
    const imports = importsOf(source).filter(({ file }) => inFormulas(file));
    const code = syntaxOf(source);
    const read = [
      ...idsIn(code, figures),
      ...imports.flatMap(({ file, name }) => functions.get(`${file} ${name}`) ?? []),
      ...idsHandedTo(imports.map(({ name }) => name), code, formulas),
    ];
    for (const id of read) uses.get(id)!.add(source.file.replace(/\.ts$/, ''));
  }
  return Object.fromEntries([...uses].map(([id, modules]) => [id, [...modules].sort()]));
}
