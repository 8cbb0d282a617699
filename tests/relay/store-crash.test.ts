/** Kills and power cuts at every write: what was written is recorded once, and the disk is then put together as it was at each moment. */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';

const compiler = ['gcc', 'cc', 'clang'].find((name) => spawnSync(name, ['--version']).status === 0);
const isWatchable = process.platform === 'linux' && compiler !== undefined;
if (!isWatchable) console.warn('No C compiler on Linux here: kills at every write and power cuts aren’t tried.');

const cache = join(process.cwd(), '.cache');
mkdirSync(cache, { recursive: true });
const built = mkdtempSync(join(cache, 'crash-'));
/** What becomes of a disk is worked out here; in memory that takes less time. */
const folder = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'crash-'));
afterAll(() => {
  rmSync(built, { recursive: true, force: true });
  rmSync(folder, { recursive: true, force: true });
});

const requests = Number(process.env.CRASH_REQUESTS ?? 5);
/** Power cuts tried, of so many writes one; more on demand. */
const everyCut = Number(process.env.EVERY_CUT ?? 3);
const longest = 600_000;

type Files = [store: Buffer, log: Buffer];
interface Write { kind: 'w' | 't' | 's'; file: number; at: number; bytes: Buffer }

const empty = Buffer.alloc(0);
const head = 18;
function recorded(log: Buffer): Write[] {
  const writes: Write[] = [];
  for (let at = 0; at < log.length;) {
    const length = Number(log.readBigInt64LE(at + 10));
    writes.push({ kind: String.fromCharCode(log[at]!) as Write['kind'], file: log[at + 1]!, at: Number(log.readBigInt64LE(at + 2)), bytes: log.subarray(at + head, at + head + length) });
    at += head + length;
  }
  return writes;
}

function done(file: Buffer, { kind, at, bytes }: Write): Buffer {
  if (kind === 't') return Buffer.concat([file.subarray(0, at), Buffer.alloc(Math.max(0, at - file.length))]);
  const grown = file.length < at + bytes.length ? Buffer.concat([file, Buffer.alloc(at + bytes.length - file.length)]) : Buffer.from(file);
  bytes.copy(grown, at);
  return grown;
}

const program = () => join(built, 'child.mjs');
const shim = () => join(built, 'disk.so');
const run = (file: string, task: string, env: Record<string, string>) =>
  spawnSync(process.execPath, [program(), file, task, String(requests)], { env: { ...process.env, LD_PRELOAD: shim(), ACRE_DISK_STORE: file, ...env }, encoding: 'utf8' });

async function emptyStore(file: string): Promise<void> {
  await openSqlite({ file, ballast: 0 }).close();
}

/** What has to be true of a store by what was marked before: nothing that was said is missing, nothing is half there. */
async function faultsOf(files: Files, marks: readonly string[], place: string): Promise<string[]> {
  const file = join(place, 'relay.sqlite');
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place);
  writeFileSync(file, files[0]);
  if (files[1].length > 0) writeFileSync(`${file}-wal`, files[1]);
  const faults: string[] = [];
  try {
    await openSqlite({ file, ballast: 0 }).close();
  } catch (error) {
    return [String(error)];
  }
  const db = new Database(file, { readonly: true });
  const state = new Map((db.prepare('SELECT r.id, group_concat(m.state) AS state FROM requests r LEFT JOIN messages m ON m.request = r.seq GROUP BY r.seq').all() as { id: string; state: string | null }[]).map((row) => [row.id, row.state]));
  const keys = new Set(db.prepare('SELECT id FROM keys').pluck().all());
  db.close();
  for (const mark of marks) {
    const [what, id] = mark.split(' ') as [string, string];
    if (what === 'told' && !state.has(id)) faults.push(`${id} was told to be stored, and isn’t`);
    if (what === 'sent' && state.get(id) !== 'sent') faults.push(`${id} was settled, and is ${state.get(id)}`);
    if (what === 'out' && !state.has(id)) faults.push(`${id} went out, and isn’t there`);
  }
  for (const [id, is] of state) if (is === null || !keys.has(id)) faults.push(`${id} is half there`);
  return faults;
}

describe.runIf(isWatchable)('on a disk that is watched', () => {
  let base: Files;
  let writes: Write[];
  beforeAll(async () => {
    await build({ entryPoints: ['tests/relay/store-crash-child.ts'], outfile: program(), bundle: true, platform: 'node', format: 'esm', external: ['better-sqlite3'], banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" } });
    execFileSync(compiler!, ['-shared', '-fPIC', '-O1', '-o', shim(), 'tests/relay/disk.c', '-ldl', '-lpthread']);
    const file = join(folder, 'relay.sqlite');
    await emptyStore(file);
    base = [readFileSync(file), empty];
    const log = join(folder, 'log');
    const { status, stderr } = run(file, 'work', { ACRE_DISK_LOG: log });
    expect([status, stderr]).toEqual([0, '']);
    writes = recorded(readFileSync(log));
  }, longest);

  const isMark = ({ file }: Write) => file === 3;
  const marksIn = (some: readonly Write[]) => some.filter(isMark).flatMap(({ bytes }) => bytes.toString().trim().split('\n'));

  test('the recording is whole: put together to its end it is what lies on the disk', () => {
    const files: Files = [...base];
    for (const write of writes) if (!isMark(write) && write.kind !== 's') files[write.file - 1] = done(files[write.file - 1]!, write);
    expect(files[0].equals(readFileSync(join(folder, 'relay.sqlite')))).toBe(true);
    expect(files[1].equals(readFileSync(join(folder, 'relay.sqlite-wal')))).toBe(true);
    const marks = marksIn(writes);
    for (const what of ['told', 'out', 'sent']) expect(marks.filter((mark) => mark.startsWith(what))).toHaveLength(requests);
    expect(writes.filter(({ kind, file }) => kind === 's' && file === 2).length).toBeGreaterThanOrEqual(requests);
  });

  test('fault 25: killed at any write, nothing that was said is lost and nothing is half there', async () => {
    const files: Files = [...base];
    const marks: string[] = [];
    let tried = 0;
    for (const write of writes) {
      if (isMark(write)) marks.push(...marksIn([write]));
      else if (write.kind !== 's') files[write.file - 1] = done(files[write.file - 1]!, write);
      else continue;
      expect([tried, await faultsOf(files, marks, join(folder, 'kill'))]).toEqual([tried, []]);
      tried += 1;
    }
    expect(tried).toBeGreaterThan(requests * 10);
  }, longest);

  /** Sectors reach a disk one by one. */
  const sector = 512;
  /** The disk as a power cut may leave it: of what wasn't flushed each sector is there or not. */
  function cut(flushed: Files, since: readonly Write[], random: () => number): Files {
    const files: Files = [...flushed];
    for (const write of since) {
      if (write.kind === 't') {
        if (random() < 0.5) files[write.file - 1] = done(files[write.file - 1]!, write);
        continue;
      }
      for (let from = 0; from < write.bytes.length; from += sector) {
        if (random() < 0.5) files[write.file - 1] = done(files[write.file - 1]!, { ...write, at: write.at + from, bytes: write.bytes.subarray(from, from + sector) });
      }
    }
    return files;
  }

  /** @param flushes  whether flushing does anything */
  async function afterCuts(flushes: boolean, every: number): Promise<{ tried: number; faults: string[] }> {
    let seed = 7;
    const random = () => {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      return seed / 2_147_483_648;
    };
    const flushed: Files = [...base];
    let since: Write[] = [];
    const marks: string[] = [];
    const faults: string[] = [];
    let tried = 0;
    for (const [index, write] of writes.entries()) {
      if (isMark(write)) marks.push(...marksIn([write]));
      else if (write.kind !== 's') since.push(write);
      else if (flushes) {
        for (const each of since.filter(({ file }) => file === write.file)) flushed[each.file - 1] = done(flushed[each.file - 1]!, each);
        since = since.filter(({ file }) => file !== write.file);
      }
      if (index % every !== 0) continue;
      faults.push(...await faultsOf(cut(flushed, since, random), marks, join(folder, 'cut')));
      tried += 1;
    }
    return { tried, faults };
  }

  test('fault 26: whatever a power cut leaves of what wasn’t flushed, nothing that was said is lost', async () => {
    const { tried, faults } = await afterCuts(true, everyCut);
    expect(faults).toEqual([]);
    expect(tried).toBeGreaterThan(requests);
  }, longest);

  test('control: on a disk that flushes nothing it is', async () => {
    const { faults } = await afterCuts(false, 7);
    expect(faults.some((fault) => fault.includes('was told to be stored, and isn’t') || fault.includes('StoreUnusable'))).toBe(true);
  }, longest);

  test('fault 27: with no space left nothing is taken, and when there is some it is again', async () => {
    const file = join(folder, 'space.sqlite');
    await emptyStore(file);
    const { status, stderr } = run(file, 'space', { ACRE_DISK_FAIL: join(folder, 'fail') });
    expect([status, stderr]).toEqual([0, '']);
    expect(readFileSync(`${file}-marks`, 'utf8').trim().split('\n')).toEqual(['stored', 'StoreFull', 'stored', 'broken undefined']);
  });

  test('fault 28: where flushing fails nothing is taken any more, also when it would succeed again', async () => {
    const file = join(folder, 'sync.sqlite');
    await emptyStore(file);
    const { status, stderr } = run(file, 'sync', { ACRE_DISK_FAIL: join(folder, 'fail') });
    expect([status, stderr]).toEqual([0, '']);
    expect(readFileSync(`${file}-marks`, 'utf8').trim().split('\n')).toEqual(['stored', 'StoreBroken', 'StoreBroken', 'broken StoreBroken']);
  });
});
