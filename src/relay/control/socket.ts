import { createServer, request as ask, type Server } from 'node:http';
import { chmodSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import * as z from '../../zod.ts';
import { sha256 } from '../hashes.ts';
import type { Log } from '../log.ts';
import { runTask, task, type Task, type TaskParts } from './tasks.ts';

/** What a path of a socket may have, on every system we run on (`sun_path` of unix(7) and others: 104 to 108). */
const longestPath = 100;
const mostBytes = 3 * 1024 * 1024;

/** Where a relay that runs on a data folder takes tasks: readable for the user it runs as, and nobody else. */
export function socketAt(data: string): string {
  if (process.platform === 'win32') return `\\\\.\\pipe\\acre-to-axle-${sha256(data).slice(0, 32)}`;
  return join(data, 'relay.sock');
}

export const isTooLong = (data: string) => process.platform !== 'win32' && Buffer.byteLength(socketAt(data)) > longestPath;

/** Takes tasks from commands on this machine, while the relay has the store. The store's own lock has made sure that it is alone. */
export async function listenForTasks(data: string, parts: TaskParts, log: Log): Promise<{ close(): Promise<void> }> {
  const path = socketAt(data);
  if (process.platform !== 'win32') rmSync(path, { force: true });
  const server: Server = createServer((request, response) => {
    const pieces: Buffer[] = [];
    let bytes = 0;
    request.on('data', (piece: Buffer) => {
      bytes += piece.length;
      if (bytes > mostBytes) request.destroy();
      else pieces.push(piece);
    });
    request.on('end', () => {
      void (async () => {
        try {
          const read = z.safeParse(task, JSON.parse(Buffer.concat(pieces).toString('utf8')));
          if (!read.success) {
            response.writeHead(400).end();
            return;
          }
          log.info('task', { task: read.data.task });
          for await (const line of runTask(read.data, parts)) response.write(`${JSON.stringify(line)}\n`);
          response.end();
        } catch (error) {
          log.error('task failed', error);
          response.destroy();
        }
      })();
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(path, resolve);
  });
  if (process.platform !== 'win32') chmodSync(path, 0o600);
  return {
    close: () => new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}

/** Hands a task to the relay that runs on a data folder. @returns undefined where none does */
export async function handToRelay(data: string, asked: Task): Promise<AsyncIterable<string> | undefined> {
  const response = await new Promise<import('node:http').IncomingMessage | undefined>((resolve, reject) => {
    const sent = ask({ socketPath: socketAt(data), method: 'POST', path: '/', headers: { host: 'relay' } }, resolve);
    sent.on('error', (error: NodeJS.ErrnoException) => (['ENOENT', 'ECONNREFUSED'].includes(error.code ?? '') ? resolve(undefined) : reject(error)));
    sent.end(JSON.stringify(asked));
  });
  if (!response) return undefined;
  if (response.statusCode !== 200) throw new Error('The relay doesn’t know this task: it runs in another version.');
  return (async function* lines() {
    for await (const line of createInterface({ input: response, crlfDelay: Infinity })) yield String(JSON.parse(line));
    if (!response.complete) throw new Error('The relay could not do it; its log says why.');
  })();
}
