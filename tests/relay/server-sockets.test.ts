import { randomUUID } from 'node:crypto';
import { connect, type Socket } from 'node:net';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { aRelay, browserHeaders, post, requestTo, states, type TestRelay } from './a-relay.ts';

let relay: TestRelay;
let port: number;
const listening = async (wished: Parameters<typeof aRelay>[0] = {}) => {
  relay = await aRelay(wished);
  await relay.app.listen({ host: '127.0.0.1', port: 0 });
  ({ port } = relay.app.server.address() as { port: number });
};
beforeEach(() => listening({ times: { request: 400, handler: 2_000, idle: 800, checked: 50 } }));
afterEach(() => relay.end());

const head = (more: string) => `POST /v1/shortlists HTTP/1.1\r\nHost: relay\r\n${Object.entries(browserHeaders).map(([name, value]) => `${name}: ${value}\r\n`).join('')}Idempotency-Key: ${randomUUID()}\r\n${more}\r\n`;

/** Sends bytes as they are, and waits until the other side has closed. */
function answered(begin: string | Buffer, then?: (socket: Socket) => void): Promise<string> {
  return new Promise((resolve) => {
    const pieces: Buffer[] = [];
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(begin);
      then?.(socket);
    });
    socket.on('data', (piece) => pieces.push(piece));
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(Buffer.concat(pieces).toString('latin1')));
  });
}
/** 0 where the connection was ended without a word. */
const statusOf = (answer: string) => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0);
const nothingStored = async () => expect(Object.values(await states(relay)).every((count) => count === 0)).toBe(true);

describe('fault 39', () => {
  test('a body a byte too long is 413, one that says it is a gigabyte is not waited for', async () => {
    for (const length of [64 * 1024 + 1, 96 * 1024 + 1]) expect((await post(relay, `"${'a'.repeat(length - 2)}"`)).status).toBe(413);
    const claimed = await answered(head(`Content-Length: ${1024 ** 3}\r\n`));
    expect(statusOf(claimed)).toBe(413);
    await nothingStored();
  });

  test('pieces without end are cut at the limit', async () => {
    const piece = `1000\r\n${'a'.repeat(4_096)}\r\n`;
    const answer = await answered(head('Transfer-Encoding: chunked\r\n'), (socket) => {
      const more = () => {
        while (socket.writable && socket.write(piece));
        if (socket.writable) socket.once('drain', more);
      };
      more();
    });
    expect([413, 0]).toContain(statusOf(answer));
    await nothingStored();
  });

  test('a head or a body that comes byte by byte is given up after its time', async () => {
    for (const begin of ['POST /v1/short', head('Content-Length: 1000\r\n')]) {
      const begun = performance.now();
      const answer = await answered(begin, (socket) => {
        const drip = setInterval(() => (socket.writable ? socket.write('{') : clearInterval(drip)), 50);
        socket.on('close', () => clearInterval(drip));
      });
      expect(statusOf(answer)).toBe(408);
      expect(performance.now() - begun).toBeLessThan(3_000);
    }
    await nothingStored();
  });

  test('the event loop goes on meanwhile', async () => {
    const delay = monitorEventLoopDelay({ resolution: 5 });
    delay.enable();
    const body = `{"answers":${'['.repeat(30_000)}`;
    await Promise.all(Array.from({ length: 40 }, () => post(relay, body)));
    delay.disable();
    expect(delay.percentile(99) / 1e6).toBeLessThan(50 + 5);
  });
});

describe('fault 48', () => {
  test.each([
    ['two lengths of the body', 'Content-Length: 4\r\nContent-Length: 6\r\n', 'ab'],
    ['a length and pieces', 'Content-Length: 4\r\nTransfer-Encoding: chunked\r\n', '0\r\n\r\nGET /smuggled HTTP/1.1\r\nHost: relay\r\n\r\n'],
    ['pieces under a name nobody knows', 'Transfer-Encoding: xchunked\r\n', '0\r\n\r\n'],
    ['a header without a colon', 'what is this\r\n', ''],
    ['a header with a NUL in it', 'X-A: \0\r\n', ''],
    ['a header folded over two lines', 'X-A: a\r\n b\r\n', ''],
  ])('%s ends the connection with 4xx', async (_what, more, body) => {
    const answer = await answered(`${head(more)}${body}`);
    expect(statusOf(answer)).toBeGreaterThanOrEqual(400);
    expect(statusOf(answer)).toBeLessThan(500);
    // One answer, and none for what was hidden behind it.
    expect(answer.match(/HTTP\/1\.1/g)).toHaveLength(1);
    await nothingStored();
  });

  test('headers without end, an address without end and no HTTP at all', async () => {
    expect(statusOf(await answered(head(`X-A: ${'a'.repeat(20_000)}\r\n`)))).toBe(431);
    expect(statusOf(await answered(`GET /${'a'.repeat(20_000)} HTTP/1.1\r\nHost: relay\r\n\r\n`))).toBe(431);
    for (const bytes of ['\x16\x03\x01\x02\x00\x01', 'EHLO relay\r\n', '\0\0\0\0\r\n\r\n', 'CONNECT evil.test:25 HTTP/1.1\r\nHost: evil.test\r\n\r\n']) {
      const answer = await answered(bytes);
      expect([400, 0]).toContain(statusOf(answer));
      expect(answer).not.toContain('evil');
    }
  });
});

describe('fault 33', () => {
  const open = (count: number) => Promise.all(Array.from({ length: count }, () => new Promise<Socket>((resolve) => {
    const socket = connect(port, '127.0.0.1', () => resolve(socket));
    socket.on('error', () => resolve(socket));
  })));

  test('one network holds fifty connections, and the next are closed; closed ones count no more', async () => {
    await relay.end();
    await listening({ times: { idle: 60_000, request: 60_000 } });
    const sockets = await open(120);
    const closed = await Promise.all(sockets.map((socket) => new Promise<boolean>((resolve) => {
      socket.on('close', () => resolve(true));
      socket.write('GET /healthz HTTP/1.1\r\nHost: relay\r\n\r\n', (error) => error && resolve(true));
      socket.on('data', () => resolve(false));
    })));
    expect(closed.filter((each) => !each)).toHaveLength(50);
    const left = sockets.filter((_, index) => !closed[index]);
    await Promise.all(left.map((socket) => new Promise((resolve) => {
      socket.on('close', resolve);
      socket.destroy();
    })));
    await expect.poll(async () => (await fetch(`http://127.0.0.1:${port}/healthz`).catch(() => ({ status: 0 }))).status).toBe(200);
  });

  test('a connection serves a hundred requests', async () => {
    const one = 'GET /healthz HTTP/1.1\r\nHost: relay\r\n\r\n';
    const answer = await answered(one.repeat(130));
    expect(answer.match(/HTTP\/1\.1 200/g)).toHaveLength(100);
    expect(answer.match(/HTTP\/1\.1 503/g)!.length).toBeGreaterThan(0);
  });
});

test('a stop is answered by 503 with when to try again, on connections that were open', async () => {
  const socket = await new Promise<Socket>((resolve) => {
    const made = connect(port, '127.0.0.1', () => resolve(made));
  });
  const first = new Promise<string>((resolve) => { socket.once('data', (piece) => resolve(piece.toString())); });
  socket.write('GET /healthz HTTP/1.1\r\nHost: relay\r\n\r\n');
  expect(statusOf(await first)).toBe(200);
  relay.guard.close();
  const body = JSON.stringify(requestTo('ann@buyer.example'));
  const second = new Promise<string>((resolve) => { socket.once('data', (piece) => resolve(piece.toString())); });
  socket.write(`${head(`Content-Length: ${Buffer.byteLength(body)}\r\n`)}${body}`);
  const answer = await second;
  expect(statusOf(answer)).toBe(503);
  expect(answer.toLowerCase()).toContain('retry-after: 15');
  expect(answer.toLowerCase()).toContain('connection: close');
});
