/**
 * What a relay takes: requests a second and how long each waits, beside a bare server that inserts the same row; what it does
 * with five times as many, and with thousands of connections held meanwhile; and how fast mails are reckoned.
 */
import { fork, type ChildProcess } from 'node:child_process';
import { createHash, randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { Agent, request as httpRequest } from 'node:http';
import { connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from 'esbuild';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { keyHeader, paths } from '../../src/request/names.ts';
import { aRequest } from '../request/a-request.ts';
import { buyers } from '../handoff/buyers.ts';
import { largeLot } from './large-lot.ts';
import { medianOf, quantile, shown } from './measure.ts';
import type { ServerOrders } from './relay-server.ts';

const token = 'a-device-of-the-bench';
const orders: Omit<ServerOrders, 'kind' | 'folder'> = { device: createHash('sha256').update(token).digest('hex'), dealer: aRequest.dealer, origin: 'https://dealer.example' };
const seconds = Number(process.env.SECONDS ?? 10);
const callers = 32;
const steady = 500;
const held = 3_900;

const folder = mkdtempSync(join(process.cwd(), '.cache', 'bench-relay-'));
const program = join(folder, 'server.mjs');
await build({ entryPoints: ['tests/bench/relay-server.ts'], outfile: program, bundle: true, platform: 'node', format: 'esm', logLevel: 'error', packages: 'external' });

interface Served {
  child: ChildProcess;
  port: number;
  memory(): Promise<number>;
  end(): Promise<void>;
}

async function served(kind: ServerOrders['kind']): Promise<Served> {
  const own = join(folder, `${kind}-${randomUUID()}`);
  mkdirSync(own);
  writeFileSync(join(own, 'catalogue.json'), readFileSync('demo/catalogue.json'));
  const child = fork(program, [JSON.stringify({ ...orders, kind, folder: own })], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  const [{ port }] = await once(child, 'message') as [{ port: number }];
  return {
    child, port,
    async memory() {
      child.send('memory');
      const [{ memory }] = await once(child, 'message') as [{ memory: number }];
      return memory;
    },
    async end() {
      const exit = once(child, 'exit');
      child.disconnect();
      await exit;
    },
  };
}

interface Answer {
  status: number;
  after: string | undefined;
  took: number;
}

let count = 0;
function ask(port: number, agent: Agent, due = performance.now()): Promise<Answer> {
  count += 1;
  const body = JSON.stringify({ ...aRequest, address: `buyer${count}@lane${count}.example` });
  return new Promise((resolve, reject) => {
    const call = httpRequest({
      port, host: '127.0.0.1', path: paths.shortlists, method: 'POST', agent,
      headers: { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body), [keyHeader]: randomUUID(), origin: orders.origin, 'sec-fetch-mode': 'cors', 'sec-fetch-dest': 'empty', authorization: `Bearer ${token}` },
    }, (response) => {
      response.resume();
      response.once('end', () => resolve({ status: response.statusCode!, after: response.headers['retry-after'], took: performance.now() - due }));
    });
    call.once('error', reject);
    call.end(body);
  });
}

const agentOf = (most: number) => new Agent({ keepAlive: true, maxSockets: most });
const accepted = (answers: readonly Answer[]) => answers.filter(({ status }) => status === 202);

/** As many as come through, so many at once. */
async function asFastAsCan(port: number, at: number, forSeconds = seconds): Promise<Answer[]> {
  const agent = agentOf(at);
  const until = performance.now() + forSeconds * 1_000;
  const answers: Answer[] = [];
  await Promise.all(Array.from({ length: at }, async () => {
    while (performance.now() < until) answers.push(await ask(port, agent));
  }));
  agent.destroy();
  return answers;
}

/** So many a second by a timetable, whatever came of those before: waiting counts. */
async function steadily(port: number, perSecond: number, atOnce = 500): Promise<Answer[]> {
  const agent = agentOf(atOnce);
  const begun = performance.now();
  const asked: Promise<Answer>[] = [];
  for (let index = 0; index < perSecond * seconds; index += 1) {
    const due = begun + (index * 1_000) / perSecond;
    if (due > performance.now()) await wait(due - performance.now());
    asked.push(ask(port, agent, due));
  }
  const answers = await Promise.all(asked);
  agent.destroy();
  return answers;
}

const times = (answers: readonly Answer[]) => answers.map(({ took }) => took);
const milliseconds = (answers: readonly Answer[]) => `p50 ${shown(quantile(times(answers), 0.5))}, p99 ${shown(quantile(times(answers), 0.99))} ms`;
const aim = (is: boolean, what: string) => `${is ? 'reached' : 'not reached'}: ${what}`;

async function opened(port: number): Promise<Socket[]> {
  const sockets = Array.from({ length: held }, () => connect(port, '127.0.0.1').on('error', () => {}));
  await Promise.all(sockets.map((socket) => Promise.race([once(socket, 'connect'), once(socket, 'close')])));
  // A head that never ends: slow, not idle.
  for (const socket of sockets) socket.write('POST /v1/shortlists HTTP/1.1\r\nHost: relay.example\r\nX-A: ');
  return sockets;
}

try {
  const bare = await served('bare');
  const ofBare = accepted(await asFastAsCan(bare.port, callers)).length / seconds;
  await bare.end();

  const relay = await served('relay');
  const fast = await asFastAsCan(relay.port, callers);
  const rate = accepted(fast).length / seconds;
  console.log(`accepted, ${callers} at once     ${rate.toFixed(0)}/s, ${milliseconds(accepted(fast))}; the bare server ${ofBare.toFixed(0)}/s; ${aim(rate >= ofBare / 2, 'half of it')} (${(rate / ofBare).toFixed(2)})`);

  const even = await steadily(relay.port, steady);
  const p99 = quantile(times(even), 0.99);
  console.log(`${steady} a second            ${accepted(even).length} of ${even.length} accepted, ${milliseconds(even)}; ${aim(p99 <= 15, 'p99 15 ms')}`);

  const sockets = await opened(relay.port);
  const beside = await steadily(relay.port, steady);
  sockets.forEach((socket) => socket.destroy());
  console.log(`beside ${held} slow ones    ${accepted(beside).length} of ${beside.length} accepted, ${milliseconds(beside)}; ${aim(quantile(times(beside), 0.99) <= 1.2 * p99, 'a p99 within 20 %')}`);

  const five = await steadily(relay.port, Math.round(5 * rate), 3_000);
  const refused = five.filter(({ status }) => status === 503);
  const statuses = [...new Set(five.map(({ status }) => status))].join(', ');
  const since = performance.now();
  const agent = agentOf(1);
  while ((await ask(relay.port, agent)).status !== 202) await wait(100);
  const back = (performance.now() - since) / 1_000;
  agent.destroy();
  const memory = (await relay.memory()) / 2 ** 20;
  console.log(`five times as many       ${accepted(five).length} accepted, ${refused.length} put off, all with Retry-After: ${refused.every(({ after }) => after !== undefined)}; statuses ${statuses}; back after ${back.toFixed(1)} s; ${memory.toFixed(0)} MB; ${aim(back <= 5 && memory <= 200, '5 s and 200 MB')}`);
  await relay.end();

  const lot = largeLot(JSON.parse(readFileSync('demo/catalogue.json', 'utf8')) as CatalogueDocument, 1_000);
  const inSi = catalogueOf(lot);
  let next = 0;
  const each = medianOf(() => shortlist(lot, buyers[next++ % buyers.length]!.answers, [], inSi));
  console.log(`reckoned of 1,000 units  ${(1_000 / each).toFixed(1)} shortlists/s a processor (${shown(each)} ms each)`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
