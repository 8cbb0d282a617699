import { createServer } from 'node:http';
import type { Metrics } from './metrics.ts';
import type { Place } from './settings/variables.ts';

/** Serves the figures apart from the public port, for whoever can reach it there. */
export async function serveMetrics({ registry }: Metrics, { host, port }: Place): Promise<{ port: number; close(): Promise<void> }> {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' || request.url !== '/metrics') {
      response.writeHead(404).end();
      return;
    }
    void registry.metrics().then(
      (text) => response.writeHead(200, { 'content-type': registry.contentType, 'cache-control': 'no-store' }).end(text),
      () => response.writeHead(503).end(),
    );
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });
  return {
    port: (server.address() as { port: number }).port,
    close: () => new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
