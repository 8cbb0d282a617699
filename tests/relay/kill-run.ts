/**
 * A relay that is killed again and again under load, and what came of all it had said yes to: judged from outside, by what
 * clients were told, what the mail server got and what stands in the file.
 */
import { fork, spawnSync, type ChildProcess } from 'node:child_process';
import { createHash, randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { Agent, request as httpRequest } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { build } from 'esbuild';
import { makeKeys } from '../../src/relay/settings/keys.ts';
import { keyHeader, paths } from '../../src/request/names.ts';
import { aRequest } from '../request/a-request.ts';
import { FakeSmtp } from './fake-smtp.ts';

export interface ChildOrders {
  folder: string;
  smtpPort: number;
  /** SHA-256 of the device's token. */
  device: string;
  dealer: string;
  origin: string;
  /** Whether mail that was set aside is to be sent. */
  redrive: boolean;
  database?: string | undefined;
  /** Whether it says when all of its code is loaded, and starts only when it is told to. */
  waits?: boolean;
}

/** Where what is taken is kept, looked into from outside. */
export interface KillPlace {
  /** Address of a database; a file in the relay's folder where it isn't said. */
  database?: string;
  /** Mails that haven't come to an end. */
  left(): Promise<number>;
  rows(): Promise<{ request: string; messageId: string; state: string }[]>;
  /** Whether it is whole, by its own word: `ok`. */
  integrity(): Promise<string>;
}

export const mailsLeft = "SELECT count(*) AS count FROM messages WHERE state IN ('queued', 'sending', 'unsure', 'held')";
export const mailsThere = 'SELECT r.id AS request, m.message_id AS "messageId", m.state FROM requests r JOIN messages m ON m.request = r.seq';

function inFile(file: string): KillPlace {
  const ask = <T>(job: (db: Database.Database) => T): T => {
    const db = new Database(file, { readonly: true });
    try {
      return job(db);
    } finally {
      db.close();
    }
  };
  return {
    left: async () => ask((db) => db.prepare(mailsLeft).pluck().get() as number),
    rows: async () => ask((db) => db.prepare(mailsThere).all() as { request: string; messageId: string; state: string }[]),
    integrity: async () => ask((db) => String(db.pragma('integrity_check', { simple: true }))),
  };
}

export interface KillReport {
  kills: number;
  accepted: number;
  /** Accepted and received by the mail server. */
  delivered: number;
  /** Accepted and not received, or not in the file, or received with another content. */
  lost: string[];
  /** Copies beyond the first. */
  duplicates: number;
  /** Copies no kill explains. */
  unexplained: string[];
  /** Requests in the file whose client was never told. */
  untold: number;
  /** From a start to the first mail after it [ms], of all that were left alive until there was one, in order of size. */
  recoveries: number[];
  /** Whether the store is whole, by its own word. */
  integrity: string;
  /** What the last child ended with when it was asked to. */
  exitCode: number | null;
  seconds: number;
}

const token = 'a-device-of-the-bench';
const device = createHash('sha256').update(token).digest('hex');
const origin = 'https://dealer.example';
const clients = 8;
/** Between a client's requests, so that what waits at the end is soon sent, and some always waits [ms]. */
const pause = 40;
/** From a start to the kill, at most [ms]; half are killed within a sixteenth of it, where a store is opened and what was left is looked through. */
const usualLife = 500;
const lifeTime = (longest: number) => longest * Math.random() ** 4;
/** Of all starts: those killed before it listens, and those left alive until there is a mail, however long that takes. */
const [shareAtStart, shareMeasured] = [0.1, 0.1];
/** From a start to the kill of one that needn't listen yet, at most [ms]. */
const longestStart = 60;
/** Before it can send anything a process takes longer than this; what was on its way from the one before is read by then [ms]. */
const soonest = 20;
const domains = 60;

/**
 * Builds the child once, with nothing loaded that isn't asked for, as in the relay itself.
 *
 * @returns its file; another that runs it from what was compiled beforehand, for a Node without options; and what takes both away
 */
export async function builtChild(): Promise<{ file: string; compiled: string; end: () => void }> {
  const root = process.cwd();
  const cache = join(root, '.cache');
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'kill-'));
  await build({
    absWorkingDir: root, entryPoints: { loader: 'tests/relay/kill-loader.ts', code: 'tests/relay/kill-child.ts' }, outdir: folder, outExtension: { '.js': '.cjs' },
    bundle: true, platform: 'node', format: 'cjs', logLevel: 'error', minify: true, external: ['better-sqlite3', 'pg', 'pg-boss'],
  });
  const compiled = join(folder, 'loader.cjs');
  const nothing: ChildOrders = { folder, smtpPort: 0, device: '', dealer: aRequest.dealer, origin, redrive: false, waits: true };
  const { status, stderr } = spawnSync(process.execPath, [compiled, JSON.stringify(nothing)], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`The child can’t be loaded: ${stderr}`);
  return { file: join(folder, 'code.cjs'), compiled, end: () => rmSync(folder, { recursive: true, force: true }) };
}

interface Relay { child: ChildProcess; port?: number; loaded: Promise<unknown>; exit: Promise<[number | null]> }

class Bench {
  readonly acknowledged = new Set<string>();
  readonly starts: number[] = [];
  readonly recoveries: number[] = [];
  kills = 0;
  readonly #agent = new Agent({ keepAlive: true });
  readonly #ports: number[] = [];
  #up: (() => void)[] = [];
  #count = 0;
  readonly #run: string;
  stopped = false;

  constructor(run: string) {
    this.#run = run;
  }

  /** Clients wait where none is up. */
  down(port: number | undefined): void {
    const place = this.#ports.indexOf(port ?? 0);
    if (place >= 0) this.#ports.splice(place, 1);
  }

  up(port: number): void {
    this.#ports.push(port);
    for (const go of this.#up.splice(0)) go();
  }

  async #port(): Promise<number> {
    while (this.#ports.length === 0) await new Promise<void>((resolve) => { this.#up.push(resolve); });
    return this.#ports[Math.floor(Math.random() * this.#ports.length)]!;
  }

  #post(port: number, key: string, body: string): Promise<number> {
    return new Promise((resolve) => {
      const request = httpRequest({
        port, host: '127.0.0.1', path: paths.shortlists, method: 'POST', agent: this.#agent,
        headers: { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body), [keyHeader]: key, origin, authorization: `Bearer ${token}`, 'sec-fetch-mode': 'cors', 'sec-fetch-dest': 'empty', 'sec-fetch-site': 'cross-site' },
      }, (response) => {
        // Only what was wholly read counts as told.
        let text = '';
        response.setEncoding('utf8').on('data', (piece: string) => { text += piece; }).on('error', () => resolve(0)).on('close', () => resolve(0)).on('end', () => resolve(response.complete && text.includes(key) ? response.statusCode! : -response.statusCode!));
      });
      request.on('error', () => resolve(0)).end(body);
    });
  }

  /** Hands in one request after the other, each with one key until it is taken. */
  async client(): Promise<void> {
    while (!this.stopped) {
      const number = this.#count;
      this.#count += 1;
      const key = randomUUID();
      const body = JSON.stringify({ ...aRequest, contact: undefined, consent: { mail: true, dealerCopy: number % 10 === 0, statistics: false }, address: `p${this.#run}.${number}@d${number % domains}.example` });
      for (;;) {
        const status = await this.#post(await this.#port(), key, body);
        if (status === 202) {
          this.acknowledged.add(key);
          break;
        }
        // A fault of the bench, no loss: it must not look like one.
        if (status < 0 && ![-503, -429, -408].includes(status)) throw new Error(`The relay answered ${-status}.`);
        if (this.stopped) break;
        await wait(pause);
      }
      await wait(pause);
    }
  }
}

function grouped<T>(all: readonly T[], by: (each: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const each of all) groups.set(by(each), [...groups.get(by(each)) ?? [], each]);
  return groups;
}

async function judged(place: KillPlace, bench: Bench, smtp: FakeSmtp): Promise<Pick<KillReport, 'accepted' | 'delivered' | 'lost' | 'duplicates' | 'unexplained' | 'untold' | 'integrity'>> {
  const integrity = await place.integrity();
  const rows = await place.rows();
  const received = grouped(smtp.ledger, ({ messageId }) => messageId);
  const byRequest = grouped(rows, ({ request }) => request);
  const lost: string[] = [];
  for (const key of bench.acknowledged) {
    const mails = byRequest.get(key) ?? [];
    if (mails.length === 0) lost.push(`${key} is not in the store`);
    for (const { messageId, state } of mails) if (state !== 'sent' || !received.has(messageId)) lost.push(`${key} is ${state}, received ${received.get(messageId)?.length ?? 0} times`);
  }
  const unexplained: string[] = [];
  let duplicates = 0;
  for (const [messageId, copies] of received) {
    duplicates += copies.length - 1;
    for (const [index, copy] of copies.slice(1).entries()) {
      // The copy before and this one must be of two processes, one killed and the next, and both have to be the same to the letter.
      if (!bench.starts.some((at) => copies[index]!.at <= at + soonest && copy.at >= at)) unexplained.push(messageId);
      if (copy.raw.replace(/boundary=.*|--_.*|----.*/g, '') !== copies[0]!.raw.replace(/boundary=.*|--_.*|----.*/g, '')) lost.push(`${messageId} isn’t the same again`);
    }
  }
  const untold = [...byRequest.keys()].filter((key) => !bench.acknowledged.has(key)).length;
  return { accepted: bench.acknowledged.size, delivered: bench.acknowledged.size - lost.length, lost, duplicates, unexplained, untold, integrity };
}

const unlessEnded = <T>(what: Promise<T>, exit: Relay['exit']): Promise<T> => Promise.race([what, exit.then(([code]) => { throw new Error(`The relay ended by itself with ${code}.`); })]);

export interface KillWishes {
  kills?: number;
  seconds?: number;
  /** Hears how many were killed so far. */
  progress?: (kills: number) => void;
  place?: KillPlace;
  /** How many at once, each in a folder of its own; more than one only on a database. */
  relays?: number;
  /** From a start to the kill, at most [ms]. */
  longestLife?: number;
}

/** Runs it: so many kills, or for so long. All kills share one store, which gets larger and older. */
export async function killRun({ kills = Infinity, seconds = Infinity, progress = () => {}, place: given, relays = 1, longestLife = usualLife }: KillWishes): Promise<KillReport> {
  const begun = performance.now();
  const folder = mkdtempSync(join(tmpdir(), 'killed-'));
  const folders = Array.from({ length: relays }, (_, index) => join(folder, String(index)));
  const place = given ?? inFile(join(folders[0]!, 'relay.sqlite'));
  for (const each of folders) mkdirSync(each);
  await makeKeys(join(folders[0]!, 'keys.json'), Date.now());
  for (const each of folders.slice(1)) copyFileSync(join(folders[0]!, 'keys.json'), join(each, 'keys.json'));
  const smtp = await FakeSmtp.listening();
  const built = await builtChild();
  const bench = new Bench(randomUUID().slice(0, 8));
  const orders = { smtpPort: smtp.port, device, dealer: aRequest.dealer, origin, database: place.database };

  const forked: ChildProcess[] = [];
  /** Forks one that loads its code and waits for the word to start. */
  const ready = (its: string, redrive = false): Relay => {
    const child = fork(built.compiled, [JSON.stringify({ ...orders, folder: its, redrive, waits: true } satisfies ChildOrders)], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
    forked.push(child);
    return { child, loaded: once(child, 'message'), exit: once(child, 'exit') as Promise<[number | null]> };
  };
  const start = async ({ child, loaded, exit }: Relay): Promise<void> => {
    await unlessEnded(loaded, exit);
    bench.starts.push(performance.now());
    child.send('start');
  };
  const listening = async (relay: Relay): Promise<void> => {
    const [said] = await unlessEnded(once(relay.child, 'message'), relay.exit) as [{ port: number }];
    relay.port = said.port;
    bench.up(said.port);
  };
  const kill = async ({ child, port, exit }: Relay): Promise<void> => {
    bench.down(port);
    bench.kills += 1;
    child.kill('SIGKILL');
    await exit;
  };
  /** Time from the start to the first mail after it. */
  const measured = async (started: number): Promise<void> => {
    while ((smtp.ledger.at(-1)?.at ?? 0) < started + soonest) await once(smtp, 'received');
    bench.recoveries.push(smtp.ledger.find(({ at }) => at >= started + soonest)!.at - started);
  };
  const killAgainAndAgain = async (its: string): Promise<void> => {
    let next = ready(its);
    while (bench.kills < kills && performance.now() - begun < seconds * 1_000) {
      const relay = next;
      const first = Math.random();
      await start(relay);
      const mail = first >= 1 - shareMeasured ? measured(performance.now()) : undefined;
      // The next one loads while this one works.
      next = ready(its);
      if (first < shareAtStart) await wait(Math.random() * longestStart);
      else {
        await listening(relay);
        await mail;
        await wait(lifeTime(longestLife));
      }
      await kill(relay);
      progress(bench.kills);
    }
    next.child.kill('SIGKILL');
    await next.exit;
  };

  try {
    const working = Array.from({ length: clients }, () => bench.client());
    await Promise.all(folders.map(killAgainAndAgain));
    const last = folders.map((its, index) => ready(its, index === 0));
    await Promise.all(last.map(async (relay) => {
      await start(relay);
      await listening(relay);
    }));
    bench.stopped = true;
    await Promise.all(working);
    while (await place.left() > 0) await wait(50);
    const codes = await Promise.all(last.map(async ({ child, exit }) => {
      child.kill('SIGTERM');
      return (await exit)[0];
    }));
    return { kills: bench.kills, ...await judged(place, bench, smtp), recoveries: bench.recoveries.sort((a, b) => a - b), exitCode: codes.find((code) => code !== 0) ?? codes[0]!, seconds: (performance.now() - begun) / 1_000 };
  } finally {
    for (const child of forked) child.kill('SIGKILL');
    await smtp.close();
    built.end();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One line a figure, for whoever looks on. */
export function told({ kills, accepted, delivered, duplicates, lost, unexplained, untold, recoveries, integrity, exitCode, seconds }: KillReport): string {
  const at = (share: number) => `${Math.round(recoveries[Math.min(recoveries.length - 1, Math.floor(share * recoveries.length))] ?? NaN)} ms`;
  return [
    `${kills} kills in ${Math.round(seconds)} s`, `accepted ${accepted}`, `delivered ${delivered}`, `duplicates ${duplicates}${unexplained.length > 0 ? `, ${unexplained.length} of them without a kill between` : ', each with a kill between'}`, `lost ${lost.length}`,
    `stored, and the client never told: ${untold}`, `first mail after a start: half within ${at(0.5)}, 95 of 100 within ${at(0.95)}`, `store: ${integrity}; ended when asked to with ${exitCode}`, ...lost.slice(0, 10),
  ].join('\n');
}
