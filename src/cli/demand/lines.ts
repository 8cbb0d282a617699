import { spawn } from 'node:child_process';
import { createReadStream } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { RequestsUnreadable } from '../../demand/requests.ts';

async function* linesOf(stream: NodeJS.ReadableStream): AsyncGenerator<string> {
  for await (const line of createInterface({ input: stream, crlfDelay: Infinity })) if (line.trim() !== '') yield line;
}

/** What a relay has counted, as its own command prints it: it alone knows its store, and whether it runs. */
async function* ofRelay(program: string, data: string, dealer: string | undefined): AsyncGenerator<string> {
  const relay = spawn(process.execPath, [program, 'relay', 'statistics', ...(dealer === undefined ? [] : [dealer])], { env: { ...process.env, ACRE_DATA: data }, stdio: ['ignore', 'pipe', 'pipe'] });
  let complaint = '';
  relay.stderr.on('data', (part: Buffer) => { complaint += part.toString(); });
  const ended = new Promise<number | null>((resolve) => { relay.once('close', resolve); });
  yield* linesOf(relay.stdout);
  if (await ended !== 0) throw new RequestsUnreadable(complaint.trim().split('\n')[0] || 'the relay doesn’t say what it counted');
}

/** Where a relay keeps what it took: its store's name is its own. */
const isRelays = (names: readonly string[]) => names.includes('relay.sqlite');

async function* ofFolder(folder: string, program: string, dealer: string | undefined): AsyncGenerator<string> {
  const names = await readdir(folder);
  if (isRelays(names)) {
    yield* ofRelay(program, folder, dealer);
    return;
  }
  refuseDealer(dealer);
  // By their names, as files of a day each are named.
  for (const name of names.filter((each) => /\.(nd)?jsonl?$/.test(each)).sort()) yield* linesOf(createReadStream(join(folder, name)));
}

/** Lines by themselves don't say whose they are. */
function refuseDealer(dealer: string | undefined) {
  if (dealer !== undefined) throw new RequestsUnreadable('only a relay’s folder or database tells its dealers apart; leave out --dealer');
}

/**
 * Lines of a file, of standard input for `-`, of all files of a folder, or of what a relay counted, by its data folder.
 * Fails as Node does, or with what the relay said.
 *
 * @param program  this command, to ask a relay with
 * @param dealer  of those a relay serves; all of them where nobody is named
 */
export async function* lines(path: string, program: string, dealer: string | undefined): AsyncGenerator<string> {
  if (path !== '-' && (await stat(path)).isDirectory()) {
    yield* ofFolder(path, program, dealer);
    return;
  }
  refuseDealer(dealer);
  yield* linesOf(path === '-' ? process.stdin : createReadStream(path));
}
