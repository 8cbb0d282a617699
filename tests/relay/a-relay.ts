import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { logTo } from '../../src/relay/log.ts';
import { Metrics } from '../../src/relay/metrics.ts';
import { serverOf, usualTimes } from '../../src/relay/server.ts';
import { dealerOf, settingsFormat, type Dealer, type DealerDocument } from '../../src/relay/settings/dealer.ts';
import { makeKeys, type Keys } from '../../src/relay/settings/keys.ts';
import type { Settings } from '../../src/relay/settings/read-settings.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import type { Store } from '../../src/relay/store/store.ts';
import { Guard } from '../../src/relay/way/guard.ts';
import { Intake } from '../../src/relay/way/intake.ts';
import { paths } from '../../src/request/names.ts';
import type { RequestDocument } from '../../src/request/schema.ts';
import { aRequest } from '../request/a-request.ts';

export const origin = 'https://dealer.example';
export const otherOrigin = 'https://other.example';

export const aDealer: DealerDocument = {
  id: aRequest.dealer, catalogue: 'catalogue.json', origins: [origin], mail: 'yard@dealer.example', senderName: 'Demo Lot', postalAddress: '41 Quarry Lane, Sallow County',
};
export const settingsWith = (...dealers: DealerDocument[]) => ({ format: settingsFormat, dealers });

/** A clock that goes only as it is told to. */
export const fakeClock = (start = Date.UTC(2026, 10, 20)) => {
  let now = start;
  return { now: () => now, elapsed: () => now - start, pass: (milliseconds: number) => { now += milliseconds; } };
};
export type FakeClock = ReturnType<typeof fakeClock>;

export interface TestRelay {
  app: FastifyInstance;
  store: Store;
  keys: Keys;
  clock: FakeClock;
  domain: string;
  guard: Guard;
  settings: Settings;
  /** Every line that was logged. */
  logged: string[];
  metrics: Metrics;
  woken(): number;
  end(): Promise<void>;
}

interface Wished {
  dealers?: readonly DealerDocument[];
  proxies?: readonly string[];
  pages?: string;
  times?: Partial<typeof usualTimes>;
  store?: (real: Store) => Store;
  queueMost?: number;
  freeLeast?: number;
  mostSockets?: number;
  mailsPerDay?: number;
}

export async function aRelay({ dealers = [aDealer], proxies = [], pages, times, store: wrapped = (real) => real, queueMost = 50_000, freeLeast = 0, mostSockets, mailsPerDay = 1_000_000 }: Wished = {}): Promise<TestRelay> {
  const folder = mkdtempSync(join(tmpdir(), 'acre-relay-'));
  const clock = fakeClock();
  const keys = await makeKeys(join(folder, 'keys.json'), clock.now());
  const real = openSqlite({ file: join(folder, 'relay.sqlite'), clock, ballast: 0 });
  const store = wrapped(real);
  const logged: string[] = [];
  const log = logTo('debug', { write: (line: string) => { logged.push(line); } });
  const byId: ReadonlyMap<string, Dealer> = new Map(dealers.map((each) => [each.id, dealerOf(each)]));
  const settings: Settings = {
    data: folder, listen: { host: '127.0.0.1', port: 0 }, address: 'https://relay.example/', proxies, mail: { kind: 'folder', folder }, sender: 'shortlist@relay.example', bounces: 'relay.example',
    mailsPerDay, mailsPerMinute: 1_000_000, queueMost, freeLeast, oldestPage: '0.1.0', metrics: undefined, pages, log: 'debug', dealers: byId,
  };
  const guard = new Guard(store, settings);
  await guard.look(0);
  const metrics = new Metrics(store, clock, () => guard.closed === undefined);
  const intake = new Intake({ store, clock, keys, dealers: byId, mailsPerDay, domain: 'relay.example' });
  let woken = 0;
  const app = serverOf({ settings, address: settings.address!, store, keys, clock, log, metrics, guard, intake, wake: () => { woken += 1; } }, { ...usualTimes, ...times }, mostSockets);
  await app.ready();
  return {
    app, store, keys, clock, domain: 'relay.example', guard, settings, logged, metrics, woken: () => woken,
    async end() {
      await app.close();
      await real.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** What a browser sends with a script's request. */
export const browserHeaders = { origin, 'sec-fetch-mode': 'cors', 'sec-fetch-dest': 'empty', 'sec-fetch-site': 'cross-site', 'content-type': 'application/json' };

export const requestTo = (address: string, change: Partial<RequestDocument> = {}): RequestDocument => ({ ...aRequest, address, ...change });

interface Posted {
  key?: string | undefined;
  headers?: Record<string, string | undefined>;
  remoteAddress?: string;
}

/** Hands a body in as a browser would; headers given as undefined are left out. */
export async function post({ app }: Pick<TestRelay, 'app'>, body: unknown, { key = randomUUID(), headers = {}, remoteAddress = '198.51.100.7' }: Posted = {}) {
  const all = { ...browserHeaders, 'idempotency-key': key, ...headers };
  const response = await app.inject({
    method: 'POST', url: paths.shortlists, remoteAddress,
    headers: Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Record<string, string>,
    payload: typeof body === 'string' || Buffer.isBuffer(body) ? body : JSON.stringify(body),
  });
  return { status: response.statusCode, headers: response.headers, text: response.body, json: () => JSON.parse(response.body) as Record<string, unknown>, key };
}

/** A ticket as a page fetches it. */
export async function ticketFor({ app }: Pick<TestRelay, 'app'>, dealer = aDealer.id, headers: Record<string, string> = { origin }, remoteAddress = '198.51.100.7') {
  const response = await app.inject({ method: 'GET', url: `${paths.ticket}?dealer=${dealer}`, headers, remoteAddress });
  return { status: response.statusCode, ...(JSON.parse(response.body) as { ticket: string; work?: { bits: number } }) };
}

/** How many mails are in which state. */
export const states = async ({ store, clock }: Pick<TestRelay, 'store' | 'clock'>) => (await store.depth(clock.now())).byState;
