import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runWith } from '../cli/fake-io.ts';

const root = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, root), 'utf8');
const guides = readdirSync(new URL('demo/docs', root)).filter((file) => file.endsWith('.md'));
const scripts = (JSON.parse(read('package.json')) as { scripts: Record<string, string> }).scripts;

/** Fenced blocks: what language they are in, the file they are from, and their text. */
const blocksOf = (text: string) =>
  [...text.matchAll(/^```(\w+)(?: (\S+))?\n([\s\S]*?)^```$/gm)].map(([, language, file, code]) => ({ language: language!, file, code: code! }));

/** Files and folders a guide names; one of each language stands for all of them. */
const pathsIn = (text: string) => [...text.matchAll(/`((?:src|tests|demo|dist)\/[^`\s]*)`/g)].map(([, path]) => path!.replaceAll('<language>', 'de').replace(/\*.*$/, ''));

const isThere = (path: string) => {
  const folder = path.slice(0, path.lastIndexOf('/'));
  return existsSync(new URL(path, root)) || (existsSync(new URL(folder, root)) && readdirSync(new URL(folder, root)).some((name) => `${folder}/${name}`.startsWith(path)));
};

/** Commands a guide gives that aren't there: scripts of the package, and test folders they are given. */
const missing = (command: string): string[] => [
  ...[...command.matchAll(/npm (?:run )?([\w:-]+)/g)].map(([, script]) => script!).filter((script) => !scripts[script] && script !== 'install'),
  ...[...command.matchAll(/(?:tests|src|demo)\/[\w./-]+/g)].map(([path]) => path).filter((path) => !isThere(path)),
];

describe.each(guides)('%s', (guide) => {
  const text = read(`demo/docs/${guide}`);

  test('shows the code as it is', () => {
    for (const { file, code } of blocksOf(text).filter((block) => block.file)) expect(read(file!), file).toContain(code);
  });

  test('names no file and gives no command that isn’t there', () => {
    expect(pathsIn(text).filter((path) => !path.startsWith('dist/') && !isThere(path))).toEqual([]);
    const commands = [...blocksOf(text).filter(({ language }) => language === 'sh').map(({ code }) => code), ...[...text.matchAll(/`(npm [^`]+|npx [^`]+)`/g)].map(([, command]) => command!)];
    expect(commands.flatMap(missing)).toEqual([]);
  });

  test('leads nowhere that isn’t there', () => {
    const links = [...text.matchAll(/\]\(([^)#:]+)\)/g)].map(([, link]) => link!);
    expect(links.filter((link) => !existsSync(new URL(link, new URL('demo/docs/', root))))).toEqual([]);
  });
});

describe('commands of our own', () => {
  const commands = guides.flatMap((guide) => blocksOf(read(`demo/docs/${guide}`)).filter(({ language }) => language === 'sh')
    .flatMap(({ code }) => code.split('\n').filter((line) => line.startsWith('acre-to-axle '))));
  const inDemo = (command: string) => command.split(' ').filter((word) => word.startsWith('demo/')).map((path) => [path, read(path)] as const);

  test('run one after the other, each with what those before it wrote', async () => {
    const files: Record<string, string> = {};
    for (const command of commands) {
      Object.assign(files, Object.fromEntries(inDemo(command)));
      const { code, err, written } = await runWith(files, ...command.split(' ').slice(1));
      expect(code, `${command}\n${err.join('\n')}`).toBe(0);
      Object.assign(files, written);
    }
  });

  test('are more than none', () => expect(commands.length).toBeGreaterThan(1));
});

test('control: what isn’t there is found', () => {
  expect(missing('npm run dance tests/nowhere')).toEqual(['dance', 'tests/nowhere']);
  expect(isThere('src/trade/figures/nothing.ts')).toBe(false);
  expect(isThere('src/trade/figures/formulas')).toBe(true);
});
