/** A relay that runs short of something: handles, sockets, memory. It runs in a process of its own, and is looked at from outside. */
import { spawn, type ChildProcess } from 'node:child_process';
import { createHash, randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { makeKeys } from '../../src/relay/settings/keys.ts';
import { mostSockets } from '../../src/relay/sockets.ts';
import { keyHeader, paths } from '../../src/request/names.ts';
import { demoCatalogue } from '../cli/fake-io.ts';
import { browserHeaders, requestTo } from './a-relay.ts';
import { builtChild, type ChildOrders } from './kill-run.ts';

/** Only there is every address that begins with 127 this machine's own, and memory told by a file. */
const isLinux = process.platform === 'linux';
const token = 'a-counter-of-the-test';
const megabyte = 1_024;

let built: Awaited<ReturnType<typeof builtChild>>;
let folder: string;
let child: ChildProcess;
let port: number;

async function started(limit: string, ...options: readonly string[]): Promise<void> {
  folder = mkdtempSync(join(tmpdir(), 'short-'));
  writeFileSync(join(folder, 'catalogue.json'), demoCatalogue);
  await makeKeys(join(folder, 'keys.json'), Date.now());
  const orders: ChildOrders = { folder, smtpPort: 9, device: createHash('sha256').update(token).digest('hex'), dealer: requestTo('').dealer, origin: browserHeaders.origin, redrive: false };
  child = spawn('sh', ['-c', `${limit} && exec "$0" "$@"`, process.execPath, ...options, built.file, JSON.stringify(orders)], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
  [{ port }] = await once(child, 'message') as [{ port: number }];
}

/** Bytes of memory the process holds, in kilobytes: now, or at most so far (proc(5)). */
const held = (which: 'VmRSS' | 'VmHWM') => Number(new RegExp(`${which}:\\s+(\\d+)`).exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))![1]);

/** From an address of this machine, of which each is a network of its own. @returns 0 where the connection was ended without an answer */
const post = (body: string, localAddress = '127.0.0.1') => new Promise<number>((resolve) => {
  const asked = request({
    port, host: '127.0.0.1', localAddress, path: paths.shortlists, method: 'POST', agent: false,
    headers: { ...browserHeaders, authorization: `Bearer ${token}`, 'content-length': Buffer.byteLength(body), [keyHeader]: randomUUID() },
  }, (response) => response.resume().on('end', () => resolve(response.statusCode!)));
  asked.on('error', () => resolve(0)).end(body);
});
let count = 0;
const aBody = () => JSON.stringify(requestTo(`buyer${count += 1}@buyer.example`));

/** Connections that say nothing, forty of each network. @param first  number of the first network */
const silent = (first: number, networks: number) => Promise.all(Array.from({ length: networks * 40 }, (_, index) => new Promise<Socket>((resolve) => {
  const network = first + Math.floor(index / 40);
  const socket = connect({ port, host: '127.0.0.1', localAddress: `127.1.${network >> 8}.${(network & 255) + 1}` }, () => resolve(socket));
  socket.resume().on('error', () => resolve(socket));
})));
const areClosed = (sockets: readonly Socket[]) => Promise.all(sockets.map((socket) => new Promise<void>((resolve) => {
  if (socket.destroyed) resolve();
  else socket.once('close', () => resolve()).destroy();
})));
const isBack = () => expect.poll(() => post(aBody()), { timeout: 10_000, interval: 50 }).toBe(202);

describe.runIf(isLinux)('fault 33: a relay that runs short', () => {
  beforeAll(async () => { built = await builtChild(); }, 60_000);
  afterAll(() => built.end());
  afterEach(async () => {
    const gone = once(child, 'exit');
    child.kill('SIGKILL');
    await gone;
    rmSync(folder, { recursive: true, force: true });
  });

  test('of file handles closes what it has none for, lives, and takes requests again once there are some', async () => {
    await started('ulimit -n 128');
    expect(await post(aBody())).toBe(202);
    const sockets = await silent(0, 8);
    await expect.poll(() => sockets.filter(({ destroyed, readableEnded }) => destroyed || readableEnded).length, { timeout: 10_000 }).toBeGreaterThan(150);
    expect([0, 503]).toContain(await post(aBody()));
    await areClosed(sockets);
    await isBack();
    expect(child.exitCode).toBeNull();
  }, 30_000);

  test('of room for connections holds six thousand of ten, serves those it has, and holds no more memory the second time', async () => {
    await started('ulimit -n $(ulimit -Hn)');
    const memory: number[] = [];
    for (let round = 0; round < 2; round++) {
      const served = connect({ port, host: '127.0.0.1' });
      const asked = async () => {
        served.write('GET /healthz HTTP/1.1\r\nHost: relay\r\n\r\n');
        return String((await once(served, 'data'))[0]);
      };
      const sockets: Socket[] = [];
      for (let first = 0; first < 250; first += 25) {
        sockets.push(...await silent(first, 25));
        expect(await asked()).toMatch(/^HTTP\/1\.1 200/);
      }
      const open = () => sockets.filter(({ destroyed, readableEnded }) => !destroyed && !readableEnded);
      await expect.poll(() => open().length, { timeout: 10_000 }).toBeLessThanOrEqual(mostSockets.ofAll);
      // Whoever says nothing for ten seconds is let go of, which on a busy machine some are by now.
      expect(open().length).toBeGreaterThan(mostSockets.ofAll / 4);
      memory.push(held('VmRSS'));
      await areClosed([served, ...sockets]);
      await isBack();
    }
    expect(memory[1]! - memory[0]!).toBeLessThan(60 * megabyte);
  }, 120_000);

  test('of memory stays below a quarter of a gigabyte under large bodies from everywhere, and every answer is one of ours', async () => {
    await started('true', '--max-old-space-size=96');
    const large = JSON.stringify({ ...requestTo('ann@buyer.example'), more: 'x'.repeat(60_000) });
    const statuses = new Set<number>();
    for (let round = 0; round < 4; round++) {
      const bodies = Array.from({ length: 200 }, (_, index) => post(index % 8 === 0 ? aBody() : large, `127.2.0.${(index % 16) + 1}`));
      for (const status of await Promise.all(bodies)) statuses.add(status);
    }
    expect([...statuses].filter((status) => ![0, 202, 400, 408, 413, 503].includes(status))).toEqual([]);
    expect(statuses).toContain(202);
    expect(held('VmHWM')).toBeLessThan(256 * megabyte);
    await isBack();
  }, 60_000);
});
