import { cpSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { build } from 'esbuild';
import { rooms } from './rooms.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const silent = { debug() {}, info() {}, isDebugEnabled: () => false };
// Ids and words; and an object without its fields is noticed by anyone who reads it.
const options = { plugins: null, ignorers: [], excludedMutations: ['StringLiteral', 'ObjectLiteral'] };

const testsOf = (room, tests) => rooms[room].folders.flatMap((each) => readdirSync(join(tests, each))
  .filter((file) => file.endsWith('.test.ts') && !rooms[room].without.includes(file.slice(0, -'.test.ts'.length)))
  .map((file) => join(tests, each, file)));

/**
 * A copy of code and tests in which every mutant of the room lies dormant, bundled test file by test file.
 * The records (`trade/figures`) are data: statements and values, not code.
 */
export async function prepare(room) {
  const folder = join(root, '.cache', 'mutation', room);
  rmSync(folder, { recursive: true, force: true });
  for (const part of ['src', 'tests']) cpSync(join(root, part), join(folder, part), { recursive: true });
  const files = readdirSync(join(folder, 'src', room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !file.startsWith(`figures${sep}`)).sort()
    .map((file) => ({ name: join(folder, 'src', room, file), mutate: true }))
    .map((file) => ({ ...file, content: readFileSync(file.name, 'utf8') }));
  const lines = new Map(files.map(({ name, content }) => [name, content.split('\n')]));
  const { files: mutated, mutants } = await new Instrumenter(silent).instrument(files, options);
  for (const { name, content } of mutated) writeFileSync(name, content);

  await build({
    entryPoints: testsOf(room, join(folder, 'tests')),
    outdir: join(folder, 'bundle'), outExtension: { '.js': '.mjs' }, bundle: true, format: 'esm', platform: 'node', logLevel: 'error',
    packages: 'external',
    // One `expect` for all of them, so not into the bundles.
    plugins: [{ name: 'vitest', setup: ({ onResolve }) => onResolve({ filter: /^vitest$/ }, () => ({ path: join(root, 'tests', 'mutation', 'vitest-in-brief.mjs'), external: true })) }],
  });
  return {
    bundles: join(folder, 'bundle'),
    mutants: mutants.filter(({ status }) => status !== 'Ignored').map(({ id, fileName, mutatorName, replacement, location: { start, end } }) => ({
      id, mutator: mutatorName, replacement: replacement.replace(/\s+/g, ' '),
      file: fileName.slice(join(folder, 'src', room).length + 1).split(sep).join('/'), line: start.line + 1,
      original: lines.get(fileName)[start.line].slice(start.column, start.line === end.line ? end.column : undefined),
    })),
  };
}
