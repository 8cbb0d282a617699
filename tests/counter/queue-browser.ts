import { build } from 'esbuild';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type Page } from 'playwright-core';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import type { QueuePage } from './queue-page.ts';

declare global {
  var counter: QueuePage;
}

const root = new URL('../..', import.meta.url).pathname;

/** The page of a counter that has nothing but its queue, on an origin that isn't the relay's, under a strict policy. */
export async function serveQueuePage(): Promise<{ port: number; close(): Promise<void> }> {
  const { outputFiles } = await build({
    stdin: { contents: "import { queuePage } from './tests/counter/queue-page.ts'; globalThis.counter = queuePage();", resolveDir: root, loader: 'ts' },
    bundle: true, write: false, format: 'esm', target: 'es2022', conditions: ['production'], minifySyntax: true, external: ['crypto'],
  });
  const server = createServer((request, response) => {
    const isScript = request.url === '/queue.js';
    response.writeHead(200, { 'content-type': isScript ? 'text/javascript' : 'text/html', 'content-security-policy': "default-src 'none'; script-src 'self'; connect-src http://127.0.0.1:*" });
    response.end(isScript ? outputFiles[0]!.contents : '<!doctype html><html lang="en"><title>counter</title><script type="module" src="/queue.js"></script></html>');
  });
  await new Promise<void>((ready) => { server.listen(0, '127.0.0.1', ready); });
  return {
    port: (server.address() as AddressInfo).port,
    async close() {
      server.closeAllConnections();
      await new Promise((closed) => { server.close(closed); });
    },
  };
}

export interface Device {
  /** Folder of all that the browser keeps. */
  profile: string;
  context: BrowserContext;
  /** Starts the browser anew on the same profile. */
  restart(): Promise<void>;
  close(): Promise<void>;
}

/** A browser with a profile on disk, as a counter's device has. */
export async function openDevice(): Promise<Device> {
  const profile = mkdtempSync(join(tmpdir(), 'counter-'));
  const launch = async () => chromium.launchPersistentContext(profile, { ...(await findChromium()), headless: true });
  const device: Device = {
    profile,
    context: await launch(),
    async restart() {
      await device.context.close();
      device.context = await launch();
    },
    async close() {
      await device.context.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
  return device;
}

/** Kills the renderer of a window, as the system does where memory runs short: nothing in it gets to run any more. */
export async function crash(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}
