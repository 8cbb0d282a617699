import { parseSync } from 'vite';

/** The parts of a syntax tree that are read here; what a node hasn't got is undefined. */
export interface Node {
  type: string;
  start: number;
  end: number;
  kind?: string;
  key?: Node;
  name?: string;
  /** A node of its own, or what a literal stands for. */
  value?: Node | string | number | boolean;
  id?: Node;
  body?: Node | Node[];
  declaration?: Node;
  properties?: Node[];
  typeAnnotation?: Node;
  returnType?: Node;
  params?: Node[];
  accessibility?: string | null;
  static?: boolean;
  readonly?: boolean;
  override?: boolean;
}

/** What a comment before a declaration says: its text, and its tags in their order. */
export interface Doc {
  text: string;
  tags: readonly { tag: string; text: string }[];
}

export interface Source {
  /** What the file exports. */
  exported: readonly Node[];
  slice(node: Node): string;
  docOf(node: Node): Doc;
}

/** What a node holds, where that is a node. */
export const valueOf = ({ value }: Node): Node | undefined => (typeof value === 'object' ? value : undefined);

/** The members of a class or an interface. */
export function membersOf({ body }: Node): readonly Node[] {
  if (body === undefined) return [];
  return Array.isArray(body) ? body : membersOf(body);
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

function docIn(comment: string): Doc {
  const [text = '', ...tags] = comment.replace(/^\s*\* ?/gm, '').split(/^@/m);
  return {
    text: oneLine(text.replace(/\{@link (\w+)\}/g, '`$1`')),
    tags: tags.map((each) => ({ tag: /^\w+/.exec(each)![0], text: oneLine(each.replace(/^\w+/, '')) })),
  };
}

/** @throws where the text is no TypeScript */
export function sourceOf(file: string, text: string): Source {
  const { program, comments, errors } = parseSync(file, text);
  if (errors[0]) throw new Error(`${file}: ${errors[0].message}`);
  return {
    exported: (program.body as unknown as Node[]).filter(({ type, declaration }) => type === 'ExportNamedDeclaration' && declaration),
    slice: ({ start, end }) => text.slice(start, end),
    docOf({ start }) {
      const before = comments.findLast(({ end, value }) => end <= start && value.startsWith('*') && text.slice(end, start).trim() === '');
      return docIn(before?.value ?? '');
    },
  };
}

/** @throws where nothing of that name is exported */
export function exportedAs(source: Source, name: string): Node {
  const found = source.exported.find(({ declaration }) => declaration!.id?.name === name);
  if (!found) throw new Error(`${name} is exported no more`);
  return found;
}
