/** A way to a server that can stop passing anything on without telling either side, as a cable that is pulled does. */
import { once } from 'node:events';
import { connect, createServer, type Socket } from 'node:net';

export interface Way {
  port: number;
  /** From here on nothing gets through, in connections there are and in new ones, and none is closed. */
  swallow(): void;
  /** What has these letters in it still gets to the server, the next time, and nothing comes back on that connection. */
  loseAnswerTo(letters: string): void;
  /** New connections get through again; those from before stay dead. */
  pass(): void;
  /** How many connections were begun. */
  begun(): number;
  end(): Promise<void>;
}

export async function wayTo(port: number): Promise<Way> {
  const sockets = new Set<Socket>();
  const pairs = new Set<{ isDead: boolean }>();
  let isDead = false;
  let losing: string | undefined;
  let count = 0;
  const server = createServer((inward) => {
    count += 1;
    const outward = connect(port, '127.0.0.1');
    const pair = { isDead };
    pairs.add(pair);
    for (const [from, to] of [[inward, outward], [outward, inward]] as const) {
      sockets.add(from);
      from.on('data', (piece: Buffer) => {
        if (pair.isDead) return;
        to.write(piece);
        if (losing === undefined || from !== inward || !piece.includes(losing)) return;
        losing = undefined;
        pair.isDead = true;
      });
      from.on('error', () => {}).on('close', () => {
        sockets.delete(from);
        if (!pair.isDead) to.destroy();
      });
    }
  }).listen(0, '127.0.0.1');
  await once(server, 'listening');
  return {
    port: (server.address() as { port: number }).port,
    swallow() {
      isDead = true;
      for (const pair of pairs) pair.isDead = true;
    },
    loseAnswerTo: (letters) => { losing = letters; },
    pass: () => { isDead = false; },
    begun: () => count,
    async end() {
      for (const socket of sockets) socket.destroy();
      server.close();
      await once(server, 'close');
    },
  };
}
