import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { root } from '../support/sources.ts';
import { demoAnswers, demoCatalogue } from './fake-io.ts';

const folder = mkdtempSync(join(tmpdir(), 'acre-cli-'));
const command = join(folder, 'dist', 'acre-to-axle.js');
const aMinute = 60_000;

const good = 'good.json';
const answers = (rest: string) => `{"format": "acre-to-axle/answers/1", ${rest}}`;
const deep = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);

const files: Readonly<Record<string, string | Uint8Array>> = {
  'lot.json': demoCatalogue,
  [good]: demoAnswers('first-acre'),
  'empty.json': '',
  'blank.json': ' \n\t\n',
  'list.json': '[]',
  'null.json': 'null',
  'number.json': '7',
  'cut.json': demoAnswers('first-acre').slice(0, 200),
  'twice.json': answers('"land": {}, "land": {"slope": "flat"}'),
  'other-format.json': '{"format": "somebody/else/1"}',
  'v2.json': '{"format": "acre-to-axle/answers/2"}',
  'no-format.json': '{"land": {}}',
  'task.json': answers('"tasks": [{"task": "mow-lwn"}]'),
  'task-number.json': answers('"tasks": [{"task": 7}, null, []]'),
  'word.json': answers('"land": {"ground": "soggy"}'),
  'unit.json': answers('"land": {"mown": {"value": 2, "unit": "acers"}}'),
  'negative.json': answers('"land": {"mown": {"value": -2, "unit": "acre"}}'),
  'huge-number.json': answers('"land": {"mown": {"value": 1e999, "unit": "acre"}}'),
  'nested.json': deep(300_000),
  'nested-in-key.json': answers(`"x-mine": ${deep(50_000)}`),
  'unclosed.json': '{"a":'.repeat(100_000),
  'prototype.json': answers('"__proto__": {"tasks": []}, "constructor": 1, "land": {"__proto__": 2}'),
  'controls.json': answers('"a\\u0000\\n\\u001b[2J": 1'),
  'surrogate.json': answers('"\\ud800": "\\udfff"'),
  'bytes.json': Uint8Array.from({ length: 4000 }, (_, index) => (index * 151) % 256),
  'mark.json': Uint8Array.from([0xef, 0xbb, 0xbf, 0x7b, 0x7d]),
  'utf16.json': Uint8Array.from([0xff, 0xfe, 0x7b, 0, 0x7d, 0]),
  'comment.json': '// answers\n{"format": "acre-to-axle/answers/1"}',
  'trailing.json': '{"format": "acre-to-axle/answers/1",}',
  'locale.json': demoCatalogue.replace('"locale": "en-US"', '"locale": "en-!!"'),
};

beforeAll(async () => {
  await build({ configFile: join(root, 'src/cli/vite.config.ts'), build: { outDir: join(folder, 'dist') } });
  writeFileSync(join(folder, 'package.json'), '{"type": "module"}');
  mkdirSync(join(folder, 'a-folder'));
  for (const [name, holding] of Object.entries(files)) writeFileSync(join(folder, name), holding);
}, aMinute);
afterAll(() => rmSync(folder, { recursive: true }));

const node = (argv: readonly string[], input?: string) =>
  spawnSync(process.execPath, [command, ...argv], { cwd: folder, encoding: 'utf8', ...(input !== undefined && { input }), maxBuffer: 1e8 });

/** A line of a stack trace, or the name of a thing only a programmer knows. */
const inner = /^\s*at .*:\d+:\d+|\bat \S+:\d+:\d+|TypeError|RangeError|SyntaxError|node:internal|\[object |undefined|UnhandledPromise/m;

const bad: [string[], number][] = [
  ...Object.keys(files).filter((name) => name !== 'lot.json' && name !== good).map((name): [string[], number] => [['check', name], 1]),
  [['check', 'nowhere.json'], 1],
  [['check', 'a-folder'], 1],
  [['check', 'lot.json/inside'], 1],
  [['check', 'x'.repeat(5000)], 1],
  [['shortlist', '--catalogue', 'nowhere.json', '--answers', good], 1],
  [['shortlist', '--catalogue', 'lot.json', '--answers', 'a-folder'], 1],
  [['shortlist', '--catalogue', good, '--answers', 'lot.json'], 1],
  [['shortlist', '--catalogue', 'locale.json', '--answers', good], 1],
  [['shortlist', '--catalogue', 'lot.json', '--answers', 'negative.json'], 1],
  [['shortlist', '--catalogue', 'lot.json', '--answers', 'nested-in-key.json'], 1],
  [['shortlist', '--catalogue', '-', '--answers', '-'], 2],
  [['shortlist', '--catalogue', 'lot.json'], 2],
  [['shortlist', '--catalogue', 'lot.json', '--answers', good, '--format', 'xml'], 2],
  [['shortlist', '--formt', 'json'], 2],
  [['shrtlist'], 2],
  [['--formt'], 2],
  [[], 2],
  [['check', '--'], 2],
];

test.each(bad)('%j ends with %i and plain words', (argv, code) => {
  const ran = node(argv);
  expect(ran.status, ran.stderr).toBe(code);
  expect(ran.stdout).toBe('');
  expect(ran.stderr).not.toBe('');
  expect(ran.stderr).not.toMatch(inner);
});

test('control: a stack trace would be seen', () => {
  const { stderr } = spawnSync(process.execPath, ['-e', 'null.x'], { encoding: 'utf8' });
  expect(stderr).toMatch(inner);
});

test.each<[string[]]>([
  [['check', 'lot.json', good]],
  [['shortlist', '--catalogue', 'lot.json', '--answers', good]],
  [['rulebook']],
  [['rulebook', '--format', 'json']],
  [['help']],
])('%j ends with 0 and says nothing on standard error', (argv) => {
  const ran = node(argv);
  expect(ran.status).toBe(0);
  expect(ran.stderr).toBe('');
  expect(ran.stdout).not.toMatch(inner);
});

test('the file runs by itself: no package lies near it, and its version is that of the project', () => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const alone = mkdtempSync(join(tmpdir(), 'acre-alone-'));
  cpSync(command, join(alone, 'tool.mjs'));
  const ran = spawnSync(process.execPath, ['tool.mjs', '--version'], { cwd: alone, encoding: 'utf8' });
  rmSync(alone, { recursive: true });
  expect(ran.stdout).toBe(`acre-to-axle ${version}\n`);
  expect(readFileSync(command, 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/);
});

test('standard input serves as either file', () => {
  const straight = node(['shortlist', '--catalogue', 'lot.json', '--answers', good, '--format', 'json']);
  expect(straight.status).toBe(0);
  expect(node(['shortlist', '--catalogue', 'lot.json', '--answers', '-', '--format', 'json'], demoAnswers('first-acre')).stdout).toBe(straight.stdout);
  expect(node(['shortlist', '--catalogue', '-', '--answers', good, '--format', 'json'], demoCatalogue).stdout).toBe(straight.stdout);
  expect(node(['check', '-'], '').stderr).toBe('(standard input): the file is empty\n');
});

const withoutReader = async (stream: 'stdout' | 'stderr', argv: readonly string[]) => {
  const child = spawn(process.execPath, [command, ...argv], { cwd: folder });
  child[stream].destroy();
  const said: Buffer[] = [];
  child.stderr.on('data', (chunk: Buffer) => said.push(chunk));
  const code = await new Promise((done) => child.on('close', done));
  return { code, said: Buffer.concat(said).toString() };
};

test.each<[string[]]>([
  [['shortlist', '--catalogue', 'lot.json', '--answers', good, '--format', 'json']],
  [['shortlist', '--catalogue', 'lot.json', '--answers', good]],
  [['rulebook']],
])('nobody reads what %j prints, and that is no fault', async (argv) => {
  expect(await withoutReader('stdout', argv)).toEqual({ code: 0, said: '' });
});

test('how a check ends doesn’t hang on who reads it', async () => {
  const { code, said } = await withoutReader('stdout', ['check', good, 'list.json', good]);
  expect({ code, said }).toEqual({ code: 1, said: expect.stringContaining('list.json:1:1') });
  expect(await withoutReader('stderr', ['check', 'list.json', good])).toMatchObject({ code: 1 });
});

test.runIf(process.platform === 'linux')('a device that never ends is refused, a full one is told', () => {
  const endless = node(['check', '/dev/zero']);
  expect({ code: endless.status, said: endless.stderr }).toEqual({ code: 1, said: expect.stringContaining('too large') });
  const full = spawnSync('sh', ['-c', `"${process.execPath}" "${command}" rulebook > /dev/full`], { encoding: 'utf8' });
  expect({ code: full.status, said: full.stderr }).toEqual({ code: 70, said: expect.stringContaining('ENOSPC') });
});
