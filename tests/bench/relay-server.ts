/** One server in a process of its own: the relay as it is but for sending, or a bare one that inserts the same row. */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fastify from 'fastify';
import { logTo } from '../../src/relay/log.ts';
import { dealerOf } from '../../src/relay/settings/dealer.ts';
import type { Settings } from '../../src/relay/settings/read-settings.ts';
import { startRelay } from '../../src/relay/start.ts';
import { paths } from '../../src/request/names.ts';

export interface ServerOrders {
  kind: 'relay' | 'bare';
  folder: string;
  /** SHA-256 of the device's token. */
  device: string;
  dealer: string;
  origin: string;
}

const { kind, folder, device, dealer, origin } = JSON.parse(process.argv[2]!) as ServerOrders;
const many = 100_000;

async function relay(): Promise<number> {
  const settings: Settings = {
    data: folder, listen: { host: '127.0.0.1', port: 0 }, address: 'https://relay.example/', proxies: ['127.0.0.1'], mail: { kind: 'folder', folder }, sender: 'shortlist@relay.example', bounces: 'relay.example',
    mailsPerDay: 10_000_000, mailsPerMinute: 1_000_000, queueMost: 10_000_000, freeLeast: 0, oldestPage: '0.1.0', metrics: undefined, pages: undefined, log: 'error',
    dealers: new Map([[dealer, dealerOf({
      id: dealer, catalogue: join(folder, 'catalogue.json'), origins: [origin], mail: 'yard@dealer.example', senderName: 'Demo Lot', postalAddress: '41 Quarry Lane, Sallow County',
      limits: { perHour: many, perDay: many, devicePerHour: many }, devices: [{ id: 'counter', hash: device }],
    })]]),
  };
  const running = await startRelay(settings, logTo('error', { write: () => {} }), () => ({ start: async () => {}, stop: async () => {}, wake: () => {} }));
  return running.port;
}

/** A framework, its parser, and one row a request on disk before the answer: what there is no way below. */
async function bare(): Promise<number> {
  const file = new Database(join(folder, 'bare.sqlite'));
  file.pragma('journal_mode = WAL');
  file.pragma('synchronous = FULL');
  file.exec('CREATE TABLE requests (id TEXT PRIMARY KEY, at INTEGER, body TEXT)');
  const insert = file.prepare('INSERT INTO requests VALUES (?, ?, ?)');
  const app = fastify();
  app.post(paths.shortlists, async (request, reply) => {
    const id = String(request.headers['idempotency-key']);
    insert.run(id, Date.now(), JSON.stringify(request.body));
    return reply.code(202).send({ id });
  });
  await app.listen({ host: '127.0.0.1', port: 0 });
  return (app.server.address() as { port: number }).port;
}

process.send!({ port: kind === 'relay' ? await relay() : await bare() });
process.on('message', () => {
  const { user, system } = process.cpuUsage();
  process.send!({ memory: process.memoryUsage().rss, processor: (user + system) / 1_000 });
});
process.once('disconnect', () => process.exit());
