import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { sha256 } from '../../src/relay/hashes.ts';
import { digestOf } from '../../src/relay/store/rows.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import { newRequest, noon } from './store-requests.ts';

/** Mails that wait; a million on demand. */
const rows = Number(process.env.ROWS ?? 20_000);
const folder = mkdtempSync(join(tmpdir(), 'large-'));
afterAll(() => rmSync(folder, { recursive: true }));

const timed = async <T>(what: () => T | Promise<T>): Promise<[number, T]> => {
  const begun = performance.now();
  const result = await what();
  return [performance.now() - begun, result];
};

test(`fault 35: with ${rows} waiting a store opens soon, holds little in memory, and a new request and a claim take no longer`, async () => {
  const file = join(folder, 'relay.sqlite');
  await openSqlite({ file, ballast: 0 }).close();
  const db = new Database(file);
  db.pragma('synchronous = OFF');
  const { request } = newRequest({ name: 'x' });
  const body = JSON.stringify(request);
  const [putRequest, putMessage] = [
    db.prepare("INSERT INTO requests (id, dealer, likeness, body, accepted) VALUES (?, 'demo-lot', ?, ?, ?)"),
    db.prepare(`INSERT INTO messages (request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, accepted, due, changed)
      VALUES (?, 'buyer', 'demo-lot', ?, ?, ?, ?, ?, ?, 'queued', ?, ?, ?)`),
  ];
  db.transaction(() => {
    for (let index = 0; index < rows; index++) {
      const message = { role: 'buyer' as const, recipient: `r${index}`, messageId: `<${index}@relay.example>`, token: `token-${index}` };
      const { lastInsertRowid } = putRequest.run(`id ${index}`, `like ${index}`, body, noon + index);
      // Each other waits for a later time, as after an outage.
      const due = index % 2 === 0 ? noon + index : noon + 3_600_000 + index;
      putMessage.run(lastInsertRowid, `d${index % 500}.example`, message.recipient, message.messageId, message.token, sha256(message.token), digestOf(body, message), noon + index, due, noon + index);
    }
  })();
  db.close();

  const before = process.memoryUsage().rss;
  const processor = process.cpuUsage();
  const [opening, store] = await timed(() => openSqlite({ file, ballast: 0 }));
  const { user, system } = process.cpuUsage(processor);
  const accepting: number[] = [];
  const claiming: number[] = [];
  const now = noon + rows;
  for (let index = 0; index < 200; index++) {
    accepting.push((await timed(() => store.accept(newRequest({ name: `new ${index}` }), [], now, now)))[0]);
    const [took, claims] = await timed(() => store.claim(1, now, 3, { destinations: ['busy.example'] }));
    claiming.push(took);
    expect(claims).toHaveLength(1);
  }
  const [looking, depth] = await timed(() => store.depth(now));
  const median = (times: number[]) => times.sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
  const megabytes = (process.memoryUsage().rss - before) / 1_048_576;
  console.log(`${rows} rows: opened in ${Math.round(opening)} ms (${Math.round((user + system) / 1_000)} ms of a processor), accepted in ${median(accepting).toFixed(1)} ms, claimed in ${median(claiming).toFixed(1)} ms, counted in ${Math.round(looking)} ms, ${Math.round(megabytes)} MB more`);
  expect(depth.byState.queued + depth.byState.sending).toBe(rows + 200);
  // On a machine that has nothing else to do; here others may be at work.
  expect((user + system) / 1_000).toBeLessThan(5_000);
  expect(megabytes).toBeLessThan(200);
  expect(median(accepting)).toBeLessThan(50);
  expect(median(claiming)).toBeLessThan(50);
  await store.close();
}, 600_000);
