import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { everyLanguage } from '../support/languages.ts';

/** The files of a built widget, by what a page fetches them for. */
export interface BuiltScripts {
  /** What must be there before the first question is: the entry, and all it imports at once. */
  first: readonly string[];
  /** What is fetched later whatever the language. */
  later: readonly string[];
  /** What is fetched for a language besides. */
  words: ReadonlyMap<string, readonly string[]>;
  /** What only somebody fetches who unfolds it or comes by a link, whatever the language, and in English besides. */
  wanted: readonly string[];
}

/** The files reached from some of them over imports of a kind, those themselves among them. */
function reached(from: readonly string[], importsOf: (file: string) => readonly string[]): string[] {
  const files = new Set(from);
  for (const file of files) for (const next of importsOf(file)) files.add(next);
  return [...files];
}

/**
 * Minified names tell nothing, and neither do those of the files: the words themselves say whose they are.
 * A build may leave some of them out, so it is the language that has most of them as they are.
 */
async function languageOf(file: string): Promise<string | undefined> {
  if (!/export\{\w+ as (?:asking|telling|handOn|mail|unit)\};\s*$/.test(readFileSync(file, 'utf8'))) return undefined;
  const { asking, telling, handOn, mail, unit } = (await import(pathToFileURL(file).href)) as Partial<Record<'asking' | 'telling' | 'handOn' | 'mail' | 'unit', Record<string, unknown>>>;
  if (handOn) return (handOn['handoff'] as { language: string }).language;
  if (mail ?? unit) return (mail ?? unit)!['language'] as string;
  const part = Object.entries(asking ?? telling!);
  const alike = everyLanguage.map(({ words }) => part.filter(([key, said]) => JSON.stringify(words[key as keyof typeof words]) === JSON.stringify(said)).length);
  return everyLanguage[alike.indexOf(Math.max(...alike))]!.tag;
}

/** Reads from a build what imports what; nothing is taken from how files are called, but for the entry. */
async function filesOf(folder: string) {
  const entry = join(folder, 'acre-to-axle.js');
  const { metafile } = await build({ absWorkingDir: folder, entryPoints: [entry], bundle: true, format: 'esm', metafile: true, write: false, logLevel: 'error' });
  const name = Object.values(metafile.outputs)[0]!.entryPoint!;
  const at = (files: readonly string[], kind: string) => files.flatMap((file) => metafile.inputs[file]!.imports.filter((each) => each.kind === kind).map(({ path }) => path));
  const first = reached([name], (file) => at([file], 'import-statement'));
  const soon = reached([...first, ...at(first, 'dynamic-import')], (file) => at([file], 'import-statement'));
  const placed = (files: readonly string[]) => files.map((file) => join(folder, file));
  return { first: placed(first), soon: placed(soon), whole: placed(reached([name], (file) => [...at([file], 'import-statement'), ...at([file], 'dynamic-import')])) };
}

/** What must be there before the first question is. */
export const firstScripts = async (folder: string): Promise<readonly string[]> => (await filesOf(folder)).first;

export async function builtScripts(folder: string): Promise<BuiltScripts> {
  const { first, soon, whole } = await filesOf(folder);
  const told = (files: readonly string[]) => Promise.all(files.map(async (file) => ({ file, tag: await languageOf(file) })));
  const later = await told(soon.filter((file) => !first.includes(file)));
  const wanted = await told(whole.filter((file) => !soon.includes(file)));
  const of = (tag: string | undefined) => later.filter((each) => each.tag === tag).map(({ file }) => file);
  return {
    first, later: of(undefined), words: new Map(everyLanguage.map(({ tag }) => [tag, of(tag)])),
    wanted: wanted.filter(({ tag }) => tag === undefined || tag === 'en').map(({ file }) => file),
  };
}

export interface Bytes {
  raw: number;
  gzip: number;
  brotli: number;
}

/** Each file is sent by itself, so each is pressed by itself. */
export const bytesOf = (texts: readonly (string | Buffer)[]): Bytes => {
  const sum = (size: (text: string | Buffer) => number) => texts.reduce((all, text) => all + size(text), 0);
  return { raw: sum((text) => Buffer.byteLength(text)), gzip: sum((text) => gzipSync(text, { level: 9 }).length), brotli: sum((text) => brotliCompressSync(text).length) };
};
