import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';

const types: Readonly<Record<string, string>> = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css', '.json': 'application/json', '.png': 'image/png' };

export interface Served {
  /** Without a slash at its end. */
  address: string;
  put(path: string, body: string | Buffer): void;
  close(): Promise<void>;
}

/** Serves what is put into it, with headers of a host's own; what isn't there is a 404. */
export async function servePaths(headers: Readonly<Record<string, string>> = {}): Promise<Served> {
  const bodies = new Map<string, string | Buffer>();
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://host').pathname;
    const body = bodies.get(path);
    if (body === undefined) response.writeHead(404).end();
    else response.writeHead(200, { 'content-type': types[extname(path)] ?? 'application/octet-stream', 'cache-control': 'no-store', ...headers }).end(body);
  });
  await new Promise<void>((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    put: (path, body) => { bodies.set(path, body); },
    close: () => new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
