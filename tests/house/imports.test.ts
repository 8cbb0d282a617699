import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { mayImport } from './rooms.ts';
import { lineAt, nodesOf, sources, syntaxOf, type SourceFile } from '../support/sources.ts';

/** Which rooms may go through the only door to Zod. */
const throughZodDoor = ['documents', 'catalogue', 'answers', 'reasons', 'request', 'relay'];

/** Where a package may be imported: a room, or one file of `src`. One that isn't listed, nowhere. */
const mayUse: Record<string, readonly string[]> = {
  'zod': ['zod.ts'],
  'fastest-levenshtein': ['documents'],
  'lit': ['widget', 'counter', 'setup'],
  'xstate': ['guide', 'widget', 'counter'],
  'jsonc-parser': ['cli'],
  'papaparse': ['sheets'],
  'lean-qr': ['handoff'],
  '@noble/hashes': ['sheets'],
  '@hpke/core': ['request'],
  'idb': ['counter'],
  'ml-matrix': ['lot'],
  'better-sqlite3': ['relay'],
  'fastify': ['relay'],
  'nodemailer': ['relay'],
  'pg': ['relay'],
  'pg-boss': ['relay'],
  'pino': ['relay'],
  'prom-client': ['relay'],
  'mjml': ['relay'],
  'node:': ['cli', 'relay', 'release'],
  'vite': ['release'],
  'custom-elements-manifest': ['release'],
};

const packageOf = (specifier: string) =>
  specifier.startsWith('node:') ? 'node:' : specifier.split('/').slice(0, specifier.startsWith('@') ? 2 : 1).join('/');

/** Languages beside a script of one file are loaded by address, each held to its hash before it runs: here and nowhere else. */
const loadsByAddress = 'embed/siblings.ts';

/** Everything a file imports, exports on or loads later, types too. */
function* specifiersOf(source: SourceFile) {
  for (const { node } of nodesOf(syntaxOf(source))) {
    const loads = /^(Import|Export(Named|All))Declaration$|^ImportExpression$|^TSImportType$|^TSExternalModuleReference$/.test(node.type);
    const named = (node.source ?? node.expression) as { type?: string; value?: unknown } | undefined;
    if (source.file === loadsByAddress && named?.type === 'Identifier') continue;
    if (loads && named) yield { specifier: String(named.value), line: lineAt(source.text, node.start) };
  }
}

function breachOf(file: string, specifier: string) {
  const [room, inRoom] = file.split('/');
  const here = inRoom === undefined ? file : room!;
  if (!specifier.startsWith('.')) {
    if (file.endsWith('.config.ts')) return undefined;
    const places = mayUse[packageOf(specifier)] ?? [];
    return places.includes(here) ? undefined : `only ${places.join(', ') || 'nobody'} may use it`;
  }
  if (!specifier.endsWith('.ts')) return 'a relative import carries its .ts ending';
  const to = posix.join(posix.dirname(file), specifier);
  if (to === 'zod.ts') return throughZodDoor.includes(here) ? undefined : 'this room has no need of Zod';
  const target = to.split('/')[0]!;
  return target === here || mayImport[here]?.includes(target) ? undefined : `${here} may not import ${target}`;
}

const breachesIn = (source: SourceFile) => [...specifiersOf(source)].flatMap(({ specifier, line }) => {
  const breach = breachOf(source.file, specifier);
  return breach ? [`${source.file}:${line} '${specifier}': ${breach}`] : [];
});

test('every file of src lies in a room of the table, or is the door to Zod', () => {
  expect(sources().map(({ file }) => file).filter((file) => !mayImport[file.split('/')[0]!] && file !== 'zod.ts')).toEqual([]);
});

test.each(['zod.ts', ...Object.keys(mayImport)])('%s imports only what it may', (room) => {
  expect(sources([room]).flatMap(breachesIn)).toEqual([]);
});

test('control: the imports are really read', () => {
  const read = sources().flatMap((source) => [...specifiersOf(source)]);
  expect(read.length).toBeGreaterThan(100);
  expect(read.filter(({ specifier }) => specifier === 'undefined')).toEqual([]);
});

test.each([
  ['a later room', 'needs/x.ts', "import { a } from '../widget/step.ts';"],
  ['a room beside it', 'trade/x.ts', "import { a } from '../documents/read.ts';"],
  ['a type of a later room', 'units/x.ts', "import type { A } from '../trade/book.ts';"],
  ['an import over several lines', 'units/x.ts', "import {\n  a,\n  b,\n} from '../trade/book.ts';"],
  ['an import below a folder', 'ranking/judges/x.ts', "import { a } from '../../reasons/x.ts';"],
  ['an import for its effect', 'units/x.ts', "import '../trade/book.ts';"],
  ['names passed on', 'units/x.ts', "export { a } from '../trade/book.ts';"],
  ['all passed on', 'units/x.ts', "export * from '../trade/book.ts';"],
  ['a file loaded later', 'units/x.ts', "export const a = () => import('../trade/book.ts');"],
  ['a file loaded later, by a reckoned name', 'units/x.ts', "const place = 'book'; export const a = () => import(`../trade/${place}.ts`);"],
  ['a type taken from a file', 'units/x.ts', "export type A = import('../trade/book.ts').Rule;"],
  ['a file loaded later, by an address', 'widget/x.ts', "export const a = (address: string) => import(address);"],
  ['a server that carries the widget', 'relay/x.ts', "import { a } from '../widget/step.ts';"],
  ['a hand-over that knows the counter', 'handoff/x.ts', "import { a } from '../counter/page.ts';"],
  ['a way out of src', 'cli/x.ts', "import { a } from '../../demo/lot.ts';"],
  ['an import without its ending', 'trade/x.ts', "import { a } from '../units/quantity';"],
  ['Zod itself', 'catalogue/x.ts', "import * as z from 'zod/mini';"],
  ['Zod through the door, in a room without documents', 'trade/x.ts', "import * as z from '../zod.ts';"],
  ['Lit in the core', 'reasons/x.ts', "import { html } from 'lit';"],
  ['a part of Lit in the guide', 'guide/x.ts', "import { html } from 'lit/static-html.js';"],
  ['XState in the core', 'ranking/x.ts', "import { setup } from 'xstate';"],
  ['XState in the relay', 'relay/x.ts', "import { setup } from 'xstate';"],
  ['Node in the core', 'catalogue/x.ts', "import { readFileSync } from 'node:fs';"],
  ['Node without its prefix', 'handoff/x.ts', "import { readFileSync } from 'fs';"],
  ['a package nobody was given', 'widget/x.ts', "import { a } from 'left-pad';"],
  ['a package with an owner that nobody was given', 'widget/x.ts', "import { a } from '@lit/task';"],
  ['a room that is not in the table', 'attic/x.ts', "import { a } from '../units/quantity.ts';"],
])('control: %s is a breach', (_what, file, text) => expect(breachesIn({ file, text })).toHaveLength(1));

test.each([
  ['an earlier room', 'needs/x.ts', "import { a } from '../trade/book.ts';"],
  ['its own room', 'ranking/judges/x.ts', "import { a } from '../verdict.ts';"],
  ['Zod in its door', 'zod.ts', "import * as z from 'zod/mini';"],
  ['the door to Zod in a room with documents', 'catalogue/x.ts', "import * as z from '../zod.ts';"],
  ['Lit in the widget', 'widget/x.ts', "import { html } from 'lit/static-html.js';"],
  ['XState in the guide', 'guide/x.ts', "import { setup } from 'xstate';"],
  ['Node on the command line', 'cli/x.ts', "import { readFileSync } from 'node:fs';"],
  ['the builder in its settings', 'widget/vite.config.ts', "import { defineConfig } from 'vite';"],
  ['a language loaded by its address, where its hash is held', 'embed/siblings.ts', "export const a = (address: string) => import(address);"],
  ['an import in a comment', 'units/x.ts', "// import { a } from '../widget/step.ts';\n/* export * from 'lit'; */"],
  ['an import in a text', 'units/x.ts', "export const a = \"import { a } from '../widget/step.ts'\";"],
])('control: %s is no breach', (_what, file, text) => expect(breachesIn({ file, text })).toEqual([]));
