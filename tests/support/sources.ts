import { readFileSync, readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface SourceFile {
  /** Path below `src`, with forward slashes. */
  file: string;
  text: string;
}

/** Every TypeScript file of `src`, or of some of its rooms. */
export const sources = (rooms?: readonly string[]): SourceFile[] =>
  readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .map((path) => path.split(sep).join('/'))
    .filter((file) => file.endsWith('.ts') && (!rooms || rooms.includes(file.split('/')[0]!)))
    .sort()
    .map((file) => ({ file, text: readFileSync(join(root, 'src', file), 'utf8') }));

export interface SyntaxNode {
  type: string;
  start: number;
  [field: string]: unknown;
}

const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === 'object' && value !== null && typeof (value as SyntaxNode).type === 'string';

/** Every node below one, each with its parent and the field of the parent that holds it. */
export function* nodesOf(node: SyntaxNode): Generator<{ node: SyntaxNode; parent: SyntaxNode; field: string }> {
  for (const [field, held] of Object.entries(node)) {
    for (const child of Array.isArray(held) ? held : [held]) {
      if (!isNode(child)) continue;
      yield { node: child, parent: node, field };
      yield* nodesOf(child);
    }
  }
}

/** A file as syntax: comments are gone, and words inside strings are no names. */
export function syntaxOf({ file, text }: SourceFile): SyntaxNode {
  const { program, errors } = parseSync(file, text);
  if (errors.length > 0) throw new Error(`${file}: ${errors[0]!.message}`);
  return program as unknown as SyntaxNode;
}

/** @example lineAt('a\nb', 2) // 2 */
export const lineAt = (text: string, offset: number) => text.slice(0, offset).split('\n').length;
