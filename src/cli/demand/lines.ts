import { createReadStream } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

async function* linesOf(stream: NodeJS.ReadableStream): AsyncGenerator<string> {
  for await (const line of createInterface({ input: stream, crlfDelay: Infinity })) if (line.trim() !== '') yield line;
}

/** A folder's files by their names, as a relay or a till writes one a day. */
async function filesIn(folder: string): Promise<string[]> {
  const names = await readdir(folder);
  return names.filter((name) => /\.(nd)?jsonl?$/.test(name)).sort().map((name) => join(folder, name));
}

/** Lines of a file, of standard input for `-`, or of all files of a folder. Fails as Node does. */
export async function* lines(path: string): AsyncGenerator<string> {
  if (path === '-') {
    yield* linesOf(process.stdin);
    return;
  }
  const files = (await stat(path)).isDirectory() ? await filesIn(path) : [path];
  for (const file of files) yield* linesOf(createReadStream(file));
}
