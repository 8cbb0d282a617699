/** Damaged stores, and what of them is saved by doing what the relay says to do. */
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../src/relay/main.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import { newRequest, noon } from './store-requests.ts';

const folder = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'salvage-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const count = 250;
const copies = Number(process.env.DAMAGED ?? 100);
const page = 4_096;
const names = Array.from({ length: count }, (_, index) => `m${index}`);
const asStored = new Map(names.map((name) => [name, newRequest({ name })]));
const pattern = join(folder, 'whole.sqlite');
let whole: Buffer;
beforeAll(async () => {
  const store = openSqlite({ file: pattern, ballast: 0 });
  await Promise.all(names.map((name) => store.accept(asStored.get(name)!, [], noon, noon)));
  for (const name of names.slice(0, 50)) await store.suppress(`stopped ${name}`, { all: true }, 'stop', noon);
  await store.close();
  whole = readFileSync(pattern);
});

let nth = 0;
/** A folder with a store that is spoilt. */
function spoilt(spoil: (file: string) => void): string {
  const place = join(folder, `d${nth += 1}`);
  mkdirSync(place);
  const file = join(place, 'relay.sqlite');
  copyFileSync(pattern, file);
  spoil(file);
  return file;
}

/** Does to the letter what the relay says to do. @returns what it told, a line a table */
async function asToldTo(file: string): Promise<string[]> {
  let refusal = '';
  try {
    await openSqlite({ file, ballast: 0 }).close();
  } catch (error) {
    refusal = (error as Error).message;
  }
  const [, from, into] = /"acre-to-axle relay salvage (\S+) (\S+)"/.exec(refusal) ?? [];
  if (from === undefined) return [];
  const before = readFileSync(from);
  const told: string[] = [];
  expect([await run({ task: 'salvage', from, into: into! }, undefined, { out: (line) => void told.push(line), err: (line) => void told.push(line) }), told]).toEqual([0, expect.any(Array)]);
  expect(readFileSync(from).equals(before)).toBe(true);
  expect(into).toBe(file);
  return told;
}

/** Opens what was saved as a relay does. @returns whose mails it gives out, each held against what was stored */
async function givenOut(file: string): Promise<string[]> {
  const store = openSqlite({ file, ballast: 0 });
  const given: string[] = [];
  for (const { request, document, messageId, token } of await store.claim(count, noon, 3)) {
    const stored = asStored.get(request);
    if (!stored) continue;
    expect({ document, messageId, token }).toEqual({ document: stored.request, messageId: stored.messages[0]!.messageId, token: stored.messages[0]!.token });
    given.push(request);
  }
  await store.close();
  return given;
}

/** Spoils pages, as a disk does that reads back nothing of them. */
const withoutPages = (pages: readonly number[]) => (file: string) => {
  const bytes = Buffer.from(whole);
  for (const each of pages) bytes.fill(0, each * page, (each + 1) * page);
  writeFileSync(file, bytes);
};
/** The pages a table itself lies on, from the second on, by SQLite's own account (sqlite.org/dbstat.html), where it gives one. */
const pagesOf = (table: string): number[] => {
  const db = new Database(pattern, { readonly: true });
  try {
    return (db.prepare("SELECT pageno - 1 FROM dbstat WHERE name = ? AND pagetype = 'leaf' ORDER BY pageno").pluck().all(table) as number[]);
  } finally {
    db.close();
  }
};

describe('fault 29: of a damaged store what can be read is saved by the command the relay names', () => {
  test.each([
    ['has lost its head', (file: string) => writeFileSync(file, Buffer.concat([Buffer.alloc(100), whole.subarray(100)])), count],
    ['has lost its first page', withoutPages([0]), count],
  ])('one that %s loses nothing', async (_what, spoil, expected) => {
    const file = spoilt(spoil);
    const told = await asToldTo(file);
    expect(told.slice(0, 3)).toEqual([`requests: ${count} copied`, `keys: ${count} copied`, `messages: ${count} copied`]);
    expect(await givenOut(file)).toHaveLength(expected);
  });

  test('one of which pages can’t be read loses what stood on them, says how much, and has all else', async () => {
    const [first, second] = [pagesOf('requests').at(3)!, pagesOf('messages').at(-3)!];
    const file = spoilt(withoutPages([first, second]));
    const told = await asToldTo(file);
    const copied = Number(/^requests: (\d+) copied, (\d+) not readable$/.exec(told[0]!)![1]);
    expect(told[0]).toBe(`requests: ${copied} copied, ${count - copied} not readable`);
    expect(copied).toBeGreaterThan(count - 20);
    expect(copied).toBeLessThan(count);
    expect(told[2]).toMatch(/^messages: \d+ copied, \d+ not readable, \d+ readable and damaged$/);
    expect((await givenOut(file)).length).toBeGreaterThan(count - 40);
    expect(told).toContain('stops: 50 copied');
  });

  test('one that was cut off has what stood before that', async () => {
    const file = spoilt((each) => truncateSync(each, Math.floor(whole.length * 0.7)));
    expect((await asToldTo(file))[0]).toMatch(/^requests: \d+ copied, .*not readable/);
    expect((await givenOut(file)).length).toBeGreaterThan(count / 4);
  });

  test(`of ${copies} copies with lost pages and flipped bits each is opened again or said to hold nothing, and gives out what was stored and nothing else`, async () => {
    let seed = 4_711;
    const random = (below: number) => {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      return seed % below;
    };
    let saved = 0;
    let salvaged = 0;
    for (let copy = 0; copy < copies; copy++) {
      const file = spoilt((each) => {
        withoutPages(Array.from({ length: 1 + random(3) }, () => random(whole.length / page)))(each);
        const bytes = readFileSync(each);
        for (let flip = 0; flip <= random(10); flip++) {
          const at = random(bytes.length);
          bytes[at] = bytes[at]! ^ (1 << random(8));
        }
        writeFileSync(each, bytes);
      });
      if ((await asToldTo(file)).length > 0) salvaged += 1;
      saved += (await givenOut(file)).length;
      rmSync(join(file, '..'), { recursive: true });
    }
    expect(salvaged).toBeGreaterThan(copies / 2);
    expect(saved / (copies * count)).toBeGreaterThan(0.8);
  }, 120_000);

  test('what is no store, what isn’t there and a place that is taken are told in a line', async () => {
    const told: string[] = [];
    const tried = (from: string, into: string) => run({ task: 'salvage', from, into }, undefined, { out: () => {}, err: (line) => void told.push(line) });
    writeFileSync(join(folder, 'empty'), '');
    expect(await tried(join(folder, 'nowhere'), join(folder, 'new'))).toBe(1);
    expect(await tried(join(folder, 'empty'), join(folder, 'new'))).toBe(1);
    expect(await tried(pattern, pattern)).toBe(1);
    expect(told).toEqual([expect.stringMatching(/isn’t there/), expect.stringMatching(/nothing in the file/), expect.stringMatching(/is there already/)]);
    expect(existsSync(join(folder, 'new'))).toBe(false);
  });
});
