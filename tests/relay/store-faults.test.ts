import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { StoreBroken, StoreFull, StoreUnusable } from '../../src/relay/store/failures.ts';
import { checkVersion } from '../../src/relay/store/sqlite/opening.ts';
import { migrate, migrations } from '../../src/relay/store/sqlite/schema.ts';
import { Space } from '../../src/relay/store/sqlite/space.ts';
import { openSqlite, type SqliteOptions } from '../../src/relay/store/sqlite/sqlite-store.ts';
import { Writer } from '../../src/relay/store/sqlite/writer.ts';
import type { Store } from '../../src/relay/store/store.ts';
import { newRequest, noon } from './store-requests.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-faults-'));
  file = join(folder, 'relay.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const opened = (more: Partial<SqliteOptions> = {}): Store => openSqlite({ file, ballast: 0, ...more });
/** What it is refused with: one line. */
function refusal(open: () => unknown): string {
  try {
    open();
  } catch (error) {
    expect(error).toBeInstanceOf(StoreUnusable);
    const { message } = error as Error;
    expect(message.split('\n')).toHaveLength(1);
    return message;
  }
  throw new Error('It was opened.');
}
const accept = (store: Store, name: string) => store.accept(newRequest({ name }), [], noon, noon);

/** A store with something in it, closed. @returns the ids in it */
async function filled(count = 50): Promise<string[]> {
  const store = opened();
  const names = Array.from({ length: count }, (_, index) => `m${index}`);
  await Promise.all(names.map((name) => accept(store, name)));
  await store.close();
  return names;
}

describe('fault 29: what can’t be opened is refused with one line that says what to do', () => {
  test('the folder isn’t there', () => {
    file = join(folder, 'nowhere', 'relay.sqlite');
    expect(refusal(opened)).toContain(join(folder, 'nowhere'));
    writeFileSync(join(folder, 'plain'), '');
    file = join(folder, 'plain', 'relay.sqlite');
    expect(refusal(opened)).toContain('folder');
  });

  test('it can only be read', async () => {
    await filled(1);
    const other = 65_534;
    const isRoot = process.getuid?.() === 0;
    spawnSync('chmod', ['a-w,a+rx', folder, file]);
    if (isRoot) process.seteuid!(other);
    try {
      expect(refusal(opened)).toMatch(/written to/);
    } finally {
      if (isRoot) process.seteuid!(0);
      spawnSync('chmod', ['u+w', folder]);
    }
  });

  test.each([
    ['has no bytes', () => writeFileSync(file, '')],
    ['is another kind of file', () => writeFileSync(file, 'Dear diary, '.repeat(1_000))],
    ['is cut off', () => truncateSync(file, 8_192)],
    ['is cut off within a page', () => truncateSync(file, readFileSync(file).length - 1_000)],
    ['has lost its head', () => writeFileSync(file, Buffer.concat([Buffer.alloc(100), readFileSync(file).subarray(100)]))],
  ])('it %s: it is set aside, never deleted, and nothing is begun in its place unasked', async (_what, spoil) => {
    await filled();
    spoil();
    const spoilt = readFileSync(file);
    const message = refusal(opened);
    expect(message).toContain(file);
    const aside = readdirSync(folder).find((name) => name.includes('.damaged-'))!;
    expect(message).toContain(aside);
    expect(readFileSync(join(folder, aside))).toEqual(spoilt);
    expect(existsSync(file)).toBe(false);
    // A service that starts it again and again gets no empty store.
    expect(refusal(opened)).toContain(aside);
    expect(existsSync(file)).toBe(false);
    // What it says to do helps.
    mkdirSync(join(folder, 'elsewhere'));
    copyFileSync(join(folder, aside), join(folder, 'elsewhere', aside));
    rmSync(join(folder, aside));
    await opened().close();
  });

  test('it belongs to another program', () => {
    const other = new Database(file);
    other.exec('CREATE TABLE diary (day TEXT)');
    other.close();
    const before = readFileSync(file);
    expect(refusal(opened)).toContain('another program');
    expect(readFileSync(file)).toEqual(before);
    expect(readdirSync(folder).some((name) => name.includes('.damaged'))).toBe(false);
  });

  const copies = Number(process.env.DAMAGED ?? 100);
  test(`of ${copies} copies with flipped bits each is refused, or gives out what was stored and nothing else`, async () => {
    const names = await filled(40);
    const whole = readFileSync(file);
    // Told apart by what any of them would send: address, text and all.
    const asStored = new Map(names.map((name) => [name, newRequest({ name })]));
    let refused = 0;
    let held = 0;
    let seed = 12_345;
    const random = (below: number) => {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      return seed % below;
    };
    for (let copy = 0; copy < copies; copy++) {
      const name = join(folder, `copy-${copy}`);
      mkdirSync(name);
      const bytes = Buffer.from(whole);
      for (let flip = 0; flip <= random(20); flip++) {
        const at = random(bytes.length);
        bytes[at] = bytes[at]! ^ (1 << random(8));
      }
      writeFileSync(join(name, 'relay.sqlite'), bytes);
      let store: Store;
      try {
        store = openSqlite({ file: join(name, 'relay.sqlite'), ballast: 0 });
      } catch (error) {
        expect(error).toBeInstanceOf(StoreUnusable);
        refused += 1;
        continue;
      }
      try {
        for (const { request, document, messageId, token } of await store.claim(1_000, noon, 3)) {
          const stored = asStored.get(request);
          // An id that fell over itself belongs to nobody, and is only told.
          if (stored) expect({ document, messageId, token }).toEqual({ document: stored.request, messageId: stored.messages[0]!.messageId, token: stored.messages[0]!.token });
          else expect([...asStored.values()].map(({ request }) => request)).toContainEqual(document);
        }
        held += (await store.held()).length;
      } catch (error) {
        expect(error).toBeInstanceOf(StoreBroken);
      }
      await store.close();
      rmSync(name, { recursive: true });
    }
    expect(refused).toBeGreaterThan(copies / 20);
    expect(held).toBeGreaterThan(0);
  }, 120_000);
});

test('whoever is killed while a new file is made leaves none that looks damaged', async () => {
  writeFileSync(`${file}.new`, 'half of a fi');
  writeFileSync(`${file}.new-journal`, 'undo');
  const store = opened();
  expect(await accept(store, 'a')).toBe('stored');
  await store.close();
  expect(readdirSync(folder).sort()).toEqual(['relay.sqlite', 'relay.sqlite.lock']);
});

describe('versions', () => {
  const tables = (db: Database.Database) => db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").pluck().all();

  test('fault 36: a file of a newer release is refused and left as it is', async () => {
    await filled(1);
    const db = new Database(file);
    db.pragma(`user_version = ${migrations.length + 1}`);
    db.close();
    const before = readFileSync(file);
    expect(refusal(opened)).toMatch(/newer release/);
    expect(readFileSync(file)).toEqual(before);
  });

  test('fault 36: an older one is brought up step by step, or not at all', () => {
    const steps = ['CREATE TABLE a (x)', 'CREATE TABLE b (x); INSERT INTO a VALUES (1)', 'CREATE TABLE c (x)'];
    for (const from of [0, 1, 2, 3]) {
      const db = new Database(join(folder, `from-${from}`));
      migrate(db, file, steps.slice(0, from));
      migrate(db, file, steps);
      expect(tables(db)).toEqual(['a', 'b', 'c']);
      expect(db.prepare('SELECT count(*) FROM a').pluck().get()).toBe(1);
      expect(() => migrate(db, file, [...steps, 'CREATE TABLE d (x)', 'no such thing'])).toThrow();
      expect([tables(db), db.pragma('user_version', { simple: true })]).toEqual([['a', 'b', 'c'], 3]);
      db.close();
    }
  });

  test('a SQLite that can lose what it confirmed is refused', () => {
    for (const old of ['3.51.2', '3.7.0', '3.51', '2.99.99']) expect(refusal(() => checkVersion(old))).toContain(old);
    for (const sound of ['3.51.3', '3.53.2', '3.52.0', '4.0.0']) expect(() => checkVersion(sound)).not.toThrow();
  });
});

test('fault 30: a second relay on one file is refused while the first lives, in this process or another', async () => {
  const first = opened();
  expect(refusal(opened)).toContain('Another relay');
  const script = `const D=require('better-sqlite3');const d=new D(${JSON.stringify(`${file}.lock`)},{timeout:0});try{d.exec('BEGIN EXCLUSIVE');console.log('free')}catch(e){console.log(e.code)}`;
  const inAnother = () => spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' }).stdout.trim();
  expect(inAnother()).toBe('SQLITE_BUSY');
  await first.close();
  expect(inAnother()).toBe('free');
  await opened().close();
});

test('what is erased stands in no file any more', async () => {
  const store = opened();
  await store.accept(newRequest({ name: 'a', address: 'erased@buyer.example', recipient: 'a hash' }), [], noon, noon);
  const isThere = () => readdirSync(folder).some((name) => readFileSync(join(folder, name), 'latin1').includes('erased@buyer'));
  expect(isThere()).toBe(true);
  expect(await store.erase('a hash', 'erased@buyer.example', noon)).toBe(1);
  expect(isThere()).toBe(false);
  await store.close();
});

describe('fault 27: a full disk', () => {
  test('nothing new is taken below the line, and all else goes on; when there is room again it is taken again', async () => {
    const ballast = 65_536;
    let free = 10_000_000;
    const store = opened({ ballast, freeBytes: () => free });
    expect(readFileSync(`${file}.ballast`)).toHaveLength(ballast);
    expect(await accept(store, 'a')).toBe('stored');
    free = ballast - 1;
    await expect(accept(store, 'b')).rejects.toThrow(StoreFull);
    const [claim] = await store.claim(9, noon, 3);
    expect(claim?.request).toBe('a');
    expect(await store.settle(claim!, { state: 'sent', reply: '250' }, noon)).toBe(true);
    free = 10_000_000;
    expect(await accept(store, 'b')).toBe('stored');
    await store.close();
  });

  test('the ballast is let go of once, and laid down again when there is room for it and what is new', () => {
    let free = 1_000_000;
    const space = new Space(file, 50_000, () => free);
    space.lay();
    expect(readFileSync(`${file}.ballast`)).toHaveLength(50_000);
    expect(space.letGo()).toBe(true);
    expect(space.letGo()).toBe(false);
    // What was let go of has to fit before anything new does.
    free = 99_999;
    expect(space.roomForNew()).toBe(false);
    expect(existsSync(`${file}.ballast`)).toBe(false);
    free = 100_000;
    expect(space.roomForNew()).toBe(true);
    expect(existsSync(`${file}.ballast`)).toBe(true);
  });

  /** SQLite says SQLITE_FULL for a page limit as it does for a disk. */
  function onSmallDisk(pages: number) {
    const db = new Database(file);
    db.pragma('journal_mode = WAL');
    db.exec('CREATE TABLE kept (name TEXT PRIMARY KEY, body TEXT)');
    db.pragma(`max_page_count = ${pages}`);
    const put = db.prepare('INSERT INTO kept VALUES (?, ?)');
    let ballast = 1;
    const writer = new Writer(db, () => {
      if (ballast === 0) return false;
      ballast = 0;
      db.pragma(`max_page_count = ${pages + 50}`);
      return true;
    }, () => { throw new Error('broken'); });
    const write = (name: string, needed: boolean) => writer.write(() => put.run(name, 'x'.repeat(3_000)).changes, { needed });
    return { db, writer, write, isThere: (name: string) => db.prepare('SELECT 1 FROM kept WHERE name = ?').get(name) !== undefined };
  }

  async function untilRefused(write: (index: number) => Promise<unknown>): Promise<{ stored: number; refused: unknown }> {
    for (let stored = 0; ; stored++) {
      try {
        await write(stored);
      } catch (refused) {
        return { stored, refused };
      }
    }
  }

  test('what is new is refused and not half there; what has to end gets the ballast', async () => {
    const { db, write, isThere } = onSmallDisk(20);
    const { stored, refused } = await untilRefused((index) => write(`new ${index}`, false));
    expect(refused).toBeInstanceOf(StoreFull);
    expect(stored).toBeGreaterThan(5);
    for (let index = 0; index < stored; index++) expect(isThere(`new ${index}`)).toBe(true);
    expect(isThere(`new ${stored}`)).toBe(false);
    // Together with others, each is told for itself.
    const together = await Promise.allSettled([write('new', false), write('needed', true), write('needed too', true)]);
    expect(together.map(({ status }) => status)).toEqual(['rejected', 'fulfilled', 'fulfilled']);
    expect(['new', 'needed', 'needed too'].map(isThere)).toEqual([false, true, true]);
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    db.close();
  });

  test('with the ballast gone too, what has to end is refused as well, and kept for later', async () => {
    const { db, write } = onSmallDisk(10);
    const { refused } = await untilRefused((index) => write(`n ${index}`, true));
    expect(refused).toBeInstanceOf(StoreFull);
    db.pragma('max_page_count = 1000');
    expect(await write('later', true)).toBe(1);
    db.close();
  });
});

describe('fault 28: the disk fails', () => {
  test('all of the commit is told so, it is said once to whoever has to end the process, and nothing is taken any more', async () => {
    const db = new Database(file);
    db.exec('CREATE TABLE kept (name TEXT)');
    let broken = 0;
    const writer = new Writer(db, () => true, () => { broken += 1; });
    const fails = () => { throw Object.assign(new Error('disk I/O error'), { code: 'SQLITE_IOERR_FSYNC' }); };
    const told = await Promise.allSettled([writer.write(() => db.exec("INSERT INTO kept VALUES ('a')")), writer.write(fails), writer.write(() => 1)]);
    for (const each of told) expect(each).toMatchObject({ status: 'rejected', reason: expect.any(StoreBroken) });
    await expect(writer.write(() => 1)).rejects.toThrow(StoreBroken);
    expect(() => writer.read(() => 1)).toThrow(StoreBroken);
    expect(broken).toBe(1);
    expect(db.prepare('SELECT count(*) FROM kept').pluck().get()).toBe(0);
    db.close();
  });

  test('a fault of one job is its own', async () => {
    const db = new Database(file);
    db.exec('CREATE TABLE kept (name TEXT PRIMARY KEY)');
    const writer = new Writer(db, () => true, () => { throw new Error('broken'); });
    const put = (name: string) => writer.write(() => db.prepare('INSERT INTO kept VALUES (?)').run(name).changes);
    const told = await Promise.allSettled([put('a'), put('a'), put('b')]);
    expect(told.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(db.prepare('SELECT name FROM kept').pluck().all()).toEqual(['a', 'b']);
    db.close();
  });

  test('a job that throws half-way leaves nothing, and what was written beside it stays, once', async () => {
    const db = new Database(file);
    db.exec('CREATE TABLE kept (name TEXT)');
    const writer = new Writer(db, () => true, () => { throw new Error('broken'); });
    const insert = db.prepare('INSERT INTO kept VALUES (?)');
    const put = (name: string) => writer.write(() => insert.run(name).changes, { mayWait: true });
    const halfWay = writer.write(() => {
      insert.run('half');
      throw new TypeError('not foreseen');
    });
    const told = await Promise.allSettled([put('a'), halfWay, put('b')]);
    expect(told.map((each) => (each.status === 'fulfilled' ? each.value : (each.reason as Error).message))).toEqual([1, 'not foreseen', 1]);
    expect(db.prepare('SELECT name FROM kept ORDER BY rowid').pluck().all()).toEqual(['a', 'b']);
    db.close();
  });

  test('what can wait goes with the next that can’t, in one commit, and by itself where none comes', async () => {
    const db = new Database(file);
    db.pragma('journal_mode = WAL');
    db.exec('CREATE TABLE kept (name TEXT)');
    const other = new Database(file, { readonly: true });
    // Moves with every commit of another connection (sqlite.org/pragma.html#pragma_data_version).
    const seen = () => other.pragma('data_version', { simple: true });
    const seenAfter = new Set([seen()]);
    const writer = new Writer(db, () => true, () => { throw new Error('broken'); });
    const put = (name: string, mayWait: boolean) => writer.write(() => db.prepare('INSERT INTO kept VALUES (?)').run(name), { mayWait }).then(() => seenAfter.add(seen()));
    await Promise.all([put('a', true), put('b', true), put('c', false)]);
    expect(seenAfter.size).toBe(2);
    await put('alone', true);
    expect(seenAfter.size).toBe(3);
    expect(other.prepare('SELECT name FROM kept').pluck().all()).toEqual(['a', 'b', 'c', 'alone']);
    other.close();
    db.close();
  });
});

test('the log stays small under load', async () => {
  const store = opened();
  for (let round = 0; round < 40; round++) await Promise.all(Array.from({ length: 50 }, (_, index) => accept(store, `m${round} ${index}`)));
  expect(readFileSync(`${file}-wal`).length).toBeLessThan(8_388_608);
  await store.close();
  expect(existsSync(`${file}-wal`)).toBe(false);
  expect(basename(file) in Object.fromEntries(readdirSync(folder).map((name) => [name, 1]))).toBe(true);
});
