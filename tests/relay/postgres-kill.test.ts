import { afterAll, beforeAll, test } from 'vitest';
import { postgresServer, type TestServer } from '../support/postgres.ts';
import { killRun, mailsLeft, mailsThere, told, type KillPlace } from './kill-run.ts';
import { expectKeptWord } from './kept-word.ts';

/** Kills of one run; more on demand. */
const kills = Number(process.env.KILLS ?? 50);
/** Longer than one on a file, as two at once have less of the machine each [ms]. */
const longestLife = 1_500;
const longest = 120_000 + kills * 2_000;

let server: TestServer;
beforeAll(async () => {
  server = await postgresServer();
}, 60_000);
afterAll(() => server?.end());

const inSchema = (text: string) => text.replace(/\b(messages|requests)\b(?= |$)(?! =)/g, 'acre.$1');

test(`goal 27: ${kills} kills of two relays on one database lose nothing that was accepted, and send nothing twice but where a process was killed`, async () => {
  const database = await server.database();
  const place: KillPlace = {
    database: server.address(database),
    left: async () => Number((await server.ask<{ count: string }>(inSchema(mailsLeft), database))[0]!.count),
    rows: () => server.ask(inSchema(mailsThere), database),
    // Each mail belongs to a request with a key, what is counted is there, and nobody has what has ended.
    async integrity() {
      const wrong = await server.ask<{ what: string }>(`
        SELECT 'a request without a key' AS what FROM acre.requests r LEFT JOIN acre.keys k USING (id) WHERE k.id IS NULL
        UNION ALL SELECT 'a request without a mail' FROM acre.requests r LEFT JOIN acre.messages m ON m.request = r.seq WHERE m.seq IS NULL
        UNION ALL SELECT 'counted wrong' FROM (SELECT state, count(*) FROM acre.messages GROUP BY state) a FULL JOIN (SELECT state, sum(count) AS count FROM acre.counts GROUP BY state HAVING sum(count) <> 0) b USING (state) WHERE a.count IS DISTINCT FROM b.count
        UNION ALL SELECT 'claimed at its end' FROM acre.messages WHERE worker IS NOT NULL AND state <> 'sending'`, database);
      return wrong.length === 0 ? 'ok' : wrong.map(({ what }) => what).join(', ');
    },
  };
  const report = await killRun({ kills, relays: 2, place, longestLife });
  console.log(told(report));
  expectKeptWord(report, kills);
}, longest);
