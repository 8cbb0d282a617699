import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const types: Readonly<Record<string, string>> = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json' };

/** Serves files from memory, each pressed once beforehand, so that nothing but the page itself takes time. */
export async function serveFiles(files: ReadonlyMap<string, string | Buffer>) {
  const pressed = new Map([...files].map(([path, text]) => [path, brotliCompressSync(text)]));
  const server = createServer((request, response) => {
    const body = pressed.get(request.url ?? '');
    if (!body) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': types[extname(request.url!)]!, 'content-encoding': 'br', 'content-length': body.length, 'cache-control': 'no-store' }).end(body);
  });
  await new Promise<void>((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
