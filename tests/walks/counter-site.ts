import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
// @ts-expect-error: plain module without types, shared with the start command
import { headersOf } from '../../demo/embed/policies.mjs';
import { readRequest } from '../../src/request/read-request.ts';
import type { RequestDocument, SealedRequest } from '../../src/request/schema.ts';
import { newRelayKey, open } from '../../src/request/seal.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css', '.json': 'application/json', '.png': 'image/png', '.svg': 'image/svg+xml', '.webmanifest': 'application/manifest+json',
};

const builtAt = new URL('../../dist/counter/', import.meta.url);
export const catalogueText = readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8');

const hashOf = (bytes: Buffer | string) => `sha256-${createHash('sha256').update(bytes).digest('base64')}`;

/** A dealer's site with the built counter on it and a relay behind it, of which a test may cut and change anything. */
export interface CounterSite {
  address: string;
  files: Map<string, Buffer | string>;
  /** What was asked for, by path. */
  asked: string[];
  /** What the relay took, opened. */
  taken: RequestDocument[];
  /** Nothing answers any more, or all of it does again. */
  cut(isCut: boolean): void;
  settings(changed: Readonly<Record<string, unknown>>): void;
  /** Another version of the counter is put up: one of its files differs, and the worker that lists them. */
  deploy(mark: string): void;
  /** The oldest page that the relay takes anything from. */
  wants(version: string): void;
  close(): Promise<void>;
}

async function textOf(request: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

export async function counterSite(): Promise<CounterSite> {
  const files = new Map<string, Buffer | string>(readdirSync(builtAt).map((name) => [`/counter/${name}`, readFileSync(new URL(name, builtAt))] as const));
  files.set('/catalogue.json', catalogueText);
  const { key, privateKey } = await newRelayKey('k1');
  const [asked, taken]: [string[], RequestDocument[]] = [[], []];
  let isCut = false;
  let minVersion = '0.1.0';

  async function relay(request: IncomingMessage, response: ServerResponse, path: string) {
    const say = (status: number, body: unknown) => response.writeHead(status, { 'content-type': 'application/json', 'cache-control': 'no-store' }).end(JSON.stringify(body));
    if (path === '/relay/healthz') return say(200, { ok: true, minVersion });
    if (path === '/relay/v1/keys') return say(200, { keys: [key] });
    if (path !== '/relay/v1/shortlists' || request.method !== 'POST') return say(404, {});
    const id = String(request.headers['idempotency-key']);
    const { value, faults } = readRequest(await open(JSON.parse(await textOf(request)) as SealedRequest, privateKey, id));
    if (!value) return say(400, { code: 'not-a-request', faults });
    taken.push(value);
    return say(202, { id });
  }

  const server = createServer((request, response) => {
    if (isCut) {
      request.socket.destroy();
      return;
    }
    const { pathname } = new URL(request.url ?? '/', 'http://site');
    asked.push(pathname);
    if (pathname.startsWith('/relay/')) {
      void relay(request, response, pathname);
      return;
    }
    const body = files.get(pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    if (body === undefined) response.writeHead(404).end();
    else response.writeHead(200, { 'content-type': types[extname(pathname)] ?? types['.html']!, 'cache-control': 'no-cache', ...(headersOf as Record<string, object>)[pathname] }).end(body);
  });
  await new Promise<void>((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const own = { catalogue: '../catalogue.json', relay: '../relay/', page: 'https://dealer.example/find', idle: 90 };
  const settings = (changed: Readonly<Record<string, unknown>>) => { files.set('/counter/settings.json', JSON.stringify({ ...own, ...changed })); };
  settings({});
  const at = (name: string) => files.get(`/counter/${name}`)!.toString();

  return {
    address, files, asked, taken, settings,
    cut(to) {
      isCut = to;
      if (to) server.closeAllConnections();
    },
    deploy(mark) {
      const before = at('counter.css');
      const after = `${before}/* ${mark} */\n`;
      const worker = at('worker.js');
      const stamp = /\b[0-9a-f]{16}\b/.exec(worker)![0];
      const next = createHash('sha256').update(mark).digest('hex').slice(0, 16);
      files.set('/counter/counter.css', after);
      files.set('/counter/worker.js', worker.replace(hashOf(before), hashOf(after)).replaceAll(stamp, next));
    },
    wants(version) { minVersion = version; },
    close: () => new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
