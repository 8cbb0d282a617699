import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { sha256 } from '../../src/relay/hashes.ts';
import { digestOf } from '../../src/relay/store/rows.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import { newRequest, noon } from './store-requests.ts';

/** Mails that wait; a million on demand. */
const rows = Number(process.env.ROWS ?? 100_000);
const folder = mkdtempSync(join(rows <= 100_000 && existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'large-'));
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
  db.function('sha', (text) => sha256(String(text)));
  db.function('digest', (recipient, messageId, token) => digestOf(body, { role: 'buyer', recipient: String(recipient), messageId: String(messageId), token: String(token) }));
  // Filled without indexes and triggers, which are then made again to the letter: one by one a million rows take a quarter of an hour.
  const around = db.prepare("SELECT type, name, sql FROM sqlite_schema WHERE type IN ('index', 'trigger') AND sql IS NOT NULL ORDER BY type").all() as { type: string; name: string; sql: string }[];
  for (const { type, name } of around) db.exec(`DROP ${type} ${name}`);
  db.transaction(() => {
    const numbers = 'WITH RECURSIVE numbers (n) AS (SELECT 0 UNION ALL SELECT n + 1 FROM numbers WHERE n + 1 < @rows)';
    db.prepare(`INSERT INTO requests (seq, id, dealer, likeness, body, accepted) ${numbers} SELECT n + 1, 'id ' || n, 'demo-lot', 'like ' || n, @body, @noon + n FROM numbers`).run({ rows, body, noon });
    // Each other waits for a later time, as after an outage.
    db.prepare(`
      INSERT INTO messages (request, role, dealer, destination, recipient, message_id, token, token_hash, digest, state, accepted, due, changed) ${numbers}
      SELECT n + 1, 'buyer', 'demo-lot', 'd' || (n % 500) || '.example', 'r' || n, '<' || n || '@relay.example>', 'token-' || n, sha('token-' || n),
        digest('r' || n, '<' || n || '@relay.example>', 'token-' || n), 'queued', @noon + n, @noon + n + (n % 2) * 3600000, @noon + n FROM numbers`).run({ rows, noon });
    db.exec("INSERT INTO changes SELECT seq, changed, state, reason FROM messages; INSERT INTO counts SELECT state, count(*) FROM messages GROUP BY state");
    for (const { sql } of around) db.exec(sql);
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
