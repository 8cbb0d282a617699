import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lineAt, nodesOf, root, sources, syntaxOf, type SourceFile, type SyntaxNode } from '../support/sources.ts';

const pure = ['units', 'documents', 'trade', 'catalogue', 'answers', 'sheets', 'needs', 'ranking', 'reasons', 'drawing', 'guide', 'handoff', 'demand', 'lot'];

const compile = (project: string) => new Promise<{ code: number; out: string }>((done) => {
  execFile(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '--noEmit', '--pretty', 'false', '-p', project],
    (error, stdout) => done({ code: error ? Number(error.code) : 0, out: stdout }));
});

const project = join(root, 'tests/house/core.tsconfig.json');
const aMinute = 60_000;

test('the core, the guide and the hand-over compile where there is no page and no Node', async () => {
  expect(await compile(project)).toEqual({ code: 0, out: '' });
}, aMinute);

/** Compiled beside the core, so that no package the core imports brings these names in by the back door. */
test('control: every name of the page or of Node is unknown there', async () => {
  const names = [
    'window', 'document.body', 'HTMLElement', 'navigator', 'localStorage', 'sessionStorage', 'location', 'customElements',
    'console', 'process', 'Buffer', 'fetch', 'setTimeout', 'performance', 'crypto', 'requestAnimationFrame',
  ];
  const folder = mkdtempSync(join(tmpdir(), 'core-'));
  writeFileSync(join(folder, 'trap.ts'), names.map((name, line) => `export const a${line} = ${name};\n`).join(''));
  const include = ['trap.ts', ...pure.map((room) => join(root, 'src', room))];
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ extends: project, include }));
  const { code, out } = await compile(folder);
  rmSync(folder, { recursive: true });
  expect(code).not.toBe(0);
  const caught = [...out.matchAll(/trap\.ts\((\d+),/g)].map(([, line]) => names[Number(line) - 1]);
  expect(caught).toEqual(names);
}, aMinute);

interface Sight { node: SyntaxNode; parent: SyntaxNode; field: string }
type Finds = (sight: Sight) => boolean;

const isName = (node: unknown, name: string) => (node as SyntaxNode | undefined)?.type === 'Identifier' && (node as SyntaxNode).name === name;
/** A name that stands for itself, not one behind a dot nor a key of an object or a type. */
const refersTo = (...names: string[]): Finds => ({ node, parent, field }) =>
  names.some((name) => isName(node, name)) && !(field === 'property' && !parent.computed) && !(field === 'key' && !parent.computed);
const calls = (holder: string, ...names: string[]): Finds => ({ node }) =>
  node.type === 'MemberExpression' && isName(node.object, holder) && names.some((name) => isName(node.property, name) || (node.property as SyntaxNode).value === name);
const hasOperator = (...operators: string[]): Finds => ({ node }) => operators.includes(node.operator as string);

const found = (source: SourceFile, finds: Finds) =>
  [...nodesOf(syntaxOf(source))].filter(finds).map(({ node }) => `${source.file}:${lineAt(source.text, node.start)} ${source.text.slice(node.start, node.end as number).split('\n')[0]}`);

/** Names that a file may well give its own things, as `window` or `document`, are left to the compiler above. */
interface Absence { what: string; finds: Finds; rooms: readonly string[] | undefined; but?: string; trap: string; innocent: string }
const absences: Absence[] = [
  { what: 'the clock', finds: refersTo('Date', 'performance'), rooms: pure, trap: 'export const now = new Date();', innocent: 'export const day = { Date: 1 }.Date; // new Date()' },
  { what: 'the clock by its type', finds: refersTo('Date'), rooms: pure, trap: 'export const a = (now: Date) => now;', innocent: "export const a = 'Date';" },
  { what: 'chance', finds: calls('Math', 'random'), rooms: pure, trap: 'export const a = Math.random();', innocent: 'export const a = Math.sqrt(2); /* Math.random() */' },
  { what: 'chance by its name in brackets', finds: calls('Math', 'random'), rooms: pure, trap: "export const a = Math['random']();", innocent: "export const a = ['Math.random'];" },
  { what: 'the net', finds: refersTo('fetch', 'XMLHttpRequest', 'WebSocket'), rooms: pure, trap: "export const a = () => fetch('x');", innocent: 'export const a = { fetch: 1 };' },
  { what: 'the console', finds: refersTo('console'), rooms: pure, trap: 'console.log(1);', innocent: "export const a = 'console.log(1)';" },
  { what: 'the process', finds: refersTo('process', 'Buffer', 'require'), rooms: pure, trap: 'export const a = process.env.A;', innocent: 'export const a = (b: { process: number }) => b.process;' },
  { what: 'a timer', finds: refersTo('setTimeout', 'setInterval', 'queueMicrotask', 'requestAnimationFrame'), rooms: pure, trap: 'setTimeout(() => 1, 1);', innocent: '// setTimeout(1)\nexport const a = 1;' },
  { what: 'secrets', finds: refersTo('crypto'), rooms: pure, trap: 'export const a = crypto.randomUUID();', innocent: "export const a = 'crypto';" },
  { what: 'the page', finds: refersTo('globalThis', 'navigator', 'localStorage', 'sessionStorage', 'HTMLElement', 'customElements'), rooms: pure, trap: 'export const a = globalThis;', innocent: 'export const a = { navigator: 1 };' },
  {
    what: 'the time, outside the relay’s one clock', rooms: ['relay'], but: 'relay/clock.ts', trap: 'export const a = Date.now();', innocent: 'export const a = (now: number) => new Date(now); // Date.now()',
    finds: (sight) => calls('Date', 'now')(sight) || calls('performance', 'now')(sight) || (sight.node.type === 'NewExpression' && isName(sight.node.callee, 'Date') && (sight.node.arguments as unknown[]).length === 0),
  },
  { what: 'code made of text', finds: refersTo('eval', 'Function'), rooms: undefined, trap: "eval('1');", innocent: "export const a = 'eval';" },
  {
    what: 'a function whose last digits differ between engines, outside its module', rooms: pure, but: 'units/transcendental.ts',
    finds: calls('Math', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2', 'sinh', 'cosh', 'tanh', 'exp', 'expm1', 'log', 'log10', 'log2', 'log1p', 'pow', 'cbrt', 'hypot'),
    trap: 'export const a = Math.atan(1);', innocent: 'export const a = Math.sqrt(2) + Math.round(1);',
  },
  {
    // ECMAScript lets each engine approximate `**` as it does Math.pow.
    what: 'a power, outside the same module', rooms: pure, but: 'units/transcendental.ts', finds: hasOperator('**', '**='),
    trap: 'export const a = (b: number) => b ** 2;', innocent: 'export const a = (b: number) => b * b; // b ** 2',
  },
  { what: 'an order that hangs on the language', finds: ({ node }) => isName(node, 'localeCompare'), rooms: pure, trap: "export const a = 'a'.localeCompare('b');", innocent: "export const a = 'localeCompare';" },
  {
    what: 'a nameless export', rooms: undefined, trap: 'export default 1;', innocent: 'export const a = { default: 1 };',
    finds: ({ node }) => node.type === 'ExportDefaultDeclaration' || (node.type === 'ExportSpecifier' && isName(node.exported, 'default')),
  },
  {
    // How much is remembered is a matter of the machine it runs on, and none of the trade.
    what: 'a figure that is in no rule book', rooms: ['needs', 'ranking'], but: 'ranking/memories.ts', trap: 'export const a = (b: number) => b * 0.5;',
    innocent: "export const a = (b: number[]) => b[3]! * -1 + 0 + 1 + 2 + 100 + '7'.length; // 0.5",
    finds: ({ node, parent, field }) => typeof node.value === 'number' && node.type === 'Literal' && ![0, 1, 2, 100].includes(node.value)
      && !(parent.type === 'MemberExpression' && field === 'property'),
  },
];

test.each(absences)('there is no place for $what', ({ finds, rooms, but }) => {
  const files = sources(rooms).filter(({ file }) => file !== but && !file.endsWith('.config.ts'));
  expect(files.length).toBeGreaterThan(0);
  expect(files.flatMap((source) => found(source, finds))).toEqual([]);
});

test.each(absences)('control: $what would be found', ({ finds, trap }) => {
  expect(found({ file: 'trap.ts', text: trap }, finds)).not.toEqual([]);
});

test.each(absences)('control: what only looks like $what would not', ({ finds, innocent }) => {
  expect(found({ file: 'innocent.ts', text: innocent }, finds)).toEqual([]);
});
