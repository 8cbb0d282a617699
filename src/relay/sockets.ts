import type { Server } from 'node:http';
import type { Socket } from 'node:net';
import { networkOf, plainAddress, type Proxies } from './way/client.ts';

/** Most open connections of one network, and of all. */
export const mostSockets = { ofNetwork: 50, ofAll: 6_000 } as const;

/** Holds connections to their number; servers in front of the relay open as many as they need. */
export function limitSockets(server: Server, proxies: Proxies, most: number = mostSockets.ofNetwork): void {
  const open = new Map<string, number>();
  server.maxConnections = mostSockets.ofAll;
  server.on('connection', (socket: Socket) => {
    const address = plainAddress(socket.remoteAddress ?? '');
    if (!address || proxies.has(address)) return;
    const network = networkOf(address);
    const count = (open.get(network) ?? 0) + 1;
    if (count > most) {
      socket.destroy();
      return;
    }
    open.set(network, count);
    socket.once('close', () => {
      const left = open.get(network)! - 1;
      if (left > 0) open.set(network, left);
      else open.delete(network);
    });
  });
}
