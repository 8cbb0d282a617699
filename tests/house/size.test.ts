import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { build } from 'vite';
import { builtScripts, bytesOf, firstScripts } from '../bench/built-scripts.ts';
import { everyLanguage } from '../support/languages.ts';
import { root } from '../support/sources.ts';

/**
 * Bytes of script, pressed with brotli, that a page may come to. A buyer on a weak signal waits for each of
 * them, and they creep up a sentence at a time. Each is what there was when it was last set and about 3 % more:
 * room for words, not for a library. Lower them when something has gone; raise one only with a reason.
 */
const budgets: Readonly<Record<string, number>> = {
  // All that is fetched before a buyer sees anything.
  'before the first question': 29_600,
  // With the line-up, the result and English: comes while the first question is read.
  'the whole in English': 147_000,
  // The sections by which answers and shortlist are taken along and mailed, and one unit is looked at closer (its costs, prices and
  // papers, with the least squares they need), each with its words: each comes when it is wanted.
  'wanted in English': 50_300,
  // What a page in another language fetches besides, in place of the English.
  'words of de': 25_700,
  'words of es': 24_700,
  'words of fr': 25_800,
};

const folder = mkdtempSync(join(tmpdir(), 'size-'));
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});
// Pressing is slow where the machine is busy, and what is tested isn't the time.
const aMinute = 60_000;
vi.setConfig({ testTimeout: aMinute, hookTimeout: aMinute });

type Texts = Readonly<Record<string, readonly (string | Buffer)[]>>;

async function builtInto(name: string, input?: string): Promise<string> {
  const outDir = join(folder, name);
  await build({ root, logLevel: 'error', configFile: join(root, 'src/widget/vite.config.ts'), build: { outDir, ...(input && { rollupOptions: { input } }) } });
  return outDir;
}

const read = (files: readonly string[]) => files.map((file) => readFileSync(file));

async function textsOf(outDir: string): Promise<Texts> {
  const { first, later, words, wanted } = await builtScripts(outDir);
  const others = [...words].filter(([tag]) => tag !== 'en').map(([tag, files]) => [`words of ${tag}`, read(files)] as const);
  return { 'before the first question': read(first), 'the whole in English': read([...first, ...later, ...words.get('en')!]), 'wanted in English': read(wanted), ...Object.fromEntries(others) };
}

const over = (texts: Texts) => Object.entries(texts).flatMap(([what, each]) => {
  const { brotli } = bytesOf(each);
  return brotli <= budgets[what]! ? [] : [`${what}: ${brotli} bytes, where ${budgets[what]} are allowed`];
});

let texts: Texts;
beforeAll(async () => {
  // Within a test run the libraries would be built with what they check for developers.
  vi.stubEnv('NODE_ENV', 'production');
  texts = await textsOf(await builtInto('as-it-is'));
});

test('a page fetches no more than is allowed for', () => {
  expect(over(texts)).toEqual([]);
});

test('every language has a budget and words of its own', () => {
  expect(Object.keys(texts)).toEqual(Object.keys(budgets));
  expect(Object.keys(texts).length).toBe(3 + everyLanguage.length - 1);
  for (const each of Object.values(texts)) expect(each.length).toBeGreaterThan(0);
});

test('control: what reckons, imported at once, is before the first question and too much there', async () => {
  const input = join(folder, 'eager.ts');
  const from = (file: string) => JSON.stringify(join(root, 'src/widget', file));
  writeFileSync(input, `export * from ${from('define.ts')};\nexport * from ${from('reckoner.ts')};\n`);
  const first = await firstScripts(await builtInto('eager', input));
  expect(over({ 'before the first question': read(first) })).toContainEqual(expect.stringMatching(/^before the first question/));
});

test('control: a tenth more in every file is over each of the budgets', () => {
  // Digests can't be pressed to less than half of what they are in hexadecimal.
  const noise = (length: number) => {
    let text = '';
    for (let part = 0; text.length < length; part++) text += createHash('sha256').update(String(part)).digest('hex');
    return text.slice(0, length);
  };
  const swollen = Object.fromEntries(Object.entries(texts).map(([what, each]) => [what, each.map((text) => `${text.toString()}//${noise(2 * 0.1 * bytesOf([text]).brotli)}`)]));
  expect(over(swollen).map((line) => line.split(':')[0])).toEqual(Object.keys(budgets));
});
