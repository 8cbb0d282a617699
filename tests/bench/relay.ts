/**
 * What a relay takes: requests a second and how long each waits, beside a bare server that inserts the same row; what it does
 * with five times as many, and with thousands of connections held meanwhile; and how fast mails are reckoned.
 */
import { createHash, randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from 'esbuild';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aRequest } from '../request/a-request.ts';
import { buyers } from '../handoff/buyers.ts';
import { largeLot } from './large-lot.ts';
import { medianOf, quantile, shown } from './measure.ts';
import { accepted, agentOf, asFastAsCan, ask, helper, origin, slowOnes, steadily, token, type Answer } from './relay-load.ts';
import type { ServerOrders } from './relay-server.ts';

const orders: Omit<ServerOrders, 'kind' | 'folder'> = { device: createHash('sha256').update(token).digest('hex'), dealer: aRequest.dealer, origin };
const seconds = Number(process.env.SECONDS ?? 10);
/** The two servers take turns, so that whatever else the machine does meets both. */
const rounds = 4;
const callers = 32;
const steady = 500;
const held = 5_000;
const many = 5;
const [megabyte, mostMegabytes, backWithin, mostP99] = [2 ** 20, 200, 5, 15];

const folder = mkdtempSync(join(process.cwd(), '.cache', 'bench-relay-'));
const built = async (name: string) => {
  const outfile = join(folder, `${name}.mjs`);
  await build({ entryPoints: [`tests/bench/${name}.ts`], outfile, bundle: true, platform: 'node', format: 'esm', logLevel: 'error', packages: 'external' });
  return outfile;
};
const [program, slow] = await Promise.all([built('relay-server'), built('relay-slow')]);

/** Of the process of a server: bytes it holds, processor time it took so far [ms]. */
interface Usage {
  memory: number;
  processor: number;
}

async function served(kind: ServerOrders['kind']) {
  const own = join(folder, `${kind}-${randomUUID()}`);
  mkdirSync(own);
  writeFileSync(join(own, 'catalogue.json'), readFileSync('demo/catalogue.json'));
  const { said: { port }, ask: asked, end } = await helper<{ port: number }>(program, [JSON.stringify({ ...orders, kind, folder: own })]);
  return { port, usage: () => asked<Usage>('usage'), end };
}
type Served = Awaited<ReturnType<typeof served>>;

interface Round {
  answers: Answer[];
  /** Accepted a second. */
  rate: number;
  /** Processor time an accepted request took [ms]. */
  processor: number;
}

async function round(server: Served): Promise<Round> {
  const before = await server.usage();
  const begun = performance.now();
  const answers = accepted(await asFastAsCan(server.port, callers, seconds / rounds));
  const took = (performance.now() - begun) / 1_000;
  return { answers, rate: answers.length / took, processor: ((await server.usage()).processor - before.processor) / answers.length };
}

const times = (answers: readonly Answer[]) => answers.map(({ took }) => took);
const p99Of = (answers: readonly Answer[]) => quantile(times(answers), 0.99);
const milliseconds = (answers: readonly Answer[]) => `p50 ${shown(quantile(times(answers), 0.5))}, p99 ${shown(p99Of(answers))} ms`;
const isWhole = (answers: readonly Answer[]) => accepted(answers).length === answers.length;
const middle = (figures: readonly number[]) => quantile(figures, 0.5);
const aim = (is: boolean, what: string) => `${is ? 'reached' : 'not reached'}: ${what}`;
const line = (what: string, ...told: string[]) => console.log(`${what.padEnd(24)} ${told.join('; ')}`);

async function besideBare(relay: Served): Promise<number> {
  const bare = await served('bare');
  const [ofRelay, ofBare]: [Round[], Round[]] = [[], []];
  // The first of each is for the code to warm up.
  for (let turn = 0; turn <= rounds; turn += 1) {
    ofBare.push(await round(bare));
    ofRelay.push(await round(relay));
  }
  await bare.end();
  const [warm, warmBare] = [ofRelay.slice(1), ofBare.slice(1)];
  const rate = middle(warm.map((each) => each.rate));
  const share = middle(warm.map((each, turn) => each.rate / warmBare[turn]!.rate));
  const processor = (of: readonly Round[]) => `${middle(of.map((each) => each.processor)).toFixed(2)} ms of a processor each`;
  const told = (of: readonly Round[]) => `${middle(of.map((each) => each.rate)).toFixed(0)}/s, ${milliseconds(of.flatMap(({ answers }) => answers))}, ${processor(of)}`;
  line(`bare, ${callers} at once`, told(warmBare));
  line(`accepted, ${callers} at once`, told(warm), `${aim(share >= 0.5, 'half of the bare server')} (${share.toFixed(2)})`);
  return rate;
}

async function evenly(relay: Served): Promise<number> {
  const even = await steadily(relay.port, steady, seconds);
  const p99 = p99Of(even);
  line(`${steady} a second`, `${accepted(even).length} of ${even.length} accepted, ${milliseconds(even)}`, aim(isWhole(even) && p99 <= mostP99, `all of them, p99 ${mostP99} ms`));
  return p99;
}

async function besideSlow(relay: Served, alone: number): Promise<void> {
  const slowly = await slowOnes(slow, relay.port, held);
  const before = await slowly.open();
  const beside = await steadily(relay.port, steady, seconds);
  const after = await slowly.open();
  await slowly.end();
  // Until the relay has seen that they are gone.
  await wait(1_000);
  line(`beside ${held} slow ones`, `${accepted(beside).length} of ${beside.length} accepted, ${milliseconds(beside)}`, `${Math.min(before, after)} held`, aim(isWhole(beside) && p99Of(beside) <= 1.2 * alone, 'all of them, a p99 within 20 %'));
}

/** The most memory that was seen, looked at until told to end. */
function watch(relay: Served) {
  const watching = new AbortController();
  const all = (async () => {
    let most = 0;
    while (!watching.signal.aborted) {
      most = Math.max(most, (await relay.usage()).memory);
      await wait(100);
    }
    return most;
  })();
  return {
    end() {
      watching.abort();
      return all;
    },
  };
}

async function tooMuch(relay: Served, rate: number): Promise<void> {
  const watched = watch(relay);
  const five = await steadily(relay.port, Math.round(many * rate), seconds, 3_000);
  const since = performance.now();
  const agent = agentOf(1);
  for (let calm = 0; calm < 10;) {
    const { status, took } = await ask(relay.port, agent);
    calm = status === 202 && took <= mostP99 * 2 ? calm + 1 : 0;
    await wait(10);
  }
  const back = (performance.now() - since) / 1_000;
  agent.destroy();
  const memory = (await watched.end()) / megabyte;
  const refused = five.filter(({ status }) => status === 503);
  const others = [...new Set(five.map(({ status }) => status))].filter((status) => status !== 202 && status !== 503);
  const isClean = refused.every(({ after }) => after !== undefined) && others.length === 0;
  line(`${many} times as many`, `${accepted(five).length} accepted (${milliseconds(accepted(five))}), ${refused.length} put off${refused.length > 0 ? ` (${milliseconds(refused)})` : ''}`, `${five.length - accepted(five).length - refused.length} otherwise${others.length > 0 ? ` (${others.join(', ')})` : ''}`, aim(isClean, 'all others 503 with Retry-After'));
  line('', `back after ${back.toFixed(1)} s, at most ${memory.toFixed(0)} MB`, aim(back <= backWithin && memory <= mostMegabytes, `${backWithin} s and ${mostMegabytes} MB`));
}

function reckoned(): void {
  const lot = largeLot(JSON.parse(readFileSync('demo/catalogue.json', 'utf8')) as CatalogueDocument, 1_000);
  const inSi = catalogueOf(lot);
  let next = 0;
  const each = medianOf(() => shortlist(lot, buyers[next++ % buyers.length]!.answers, [], inSi));
  line('reckoned of 1,000 units', `${(1_000 / each).toFixed(1)} shortlists/s a processor (${shown(each)} ms each)`);
}

try {
  const relay = await served('relay');
  const rate = await besideBare(relay);
  const alone = await evenly(relay);
  await besideSlow(relay, alone);
  await tooMuch(relay, rate);
  await relay.end();
  reckoned();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
