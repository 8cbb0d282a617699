import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { compile } from 'svelte/compiler';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { build, type Plugin } from 'vite';
import { compileScript, parse } from 'vue/compiler-sfc';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { root } from '../support/sources.ts';
import { openDemo, type Demo } from './browser.ts';
import { walk, wizardOn } from './buyer.ts';

// Hosts made with each of the libraries, built as their owners would and walked to a shortlist.

/** What the plug-in of each library does at its least: from a component to a module. */
const components: Plugin = {
  name: 'components',
  enforce: 'pre',
  transform(code, id) {
    if (id.endsWith('.svelte')) return { code: compile(code, { filename: id, generate: 'client' }).js.code, map: null };
    if (!id.endsWith('.vue')) return undefined;
    const isCustomElement = (tag: string) => tag.includes('-');
    const { content } = compileScript(parse(code, { filename: id }).descriptor, { id: 'host', inlineTemplate: true, templateOptions: { compilerOptions: { isCustomElement } } });
    return { code: content, map: null };
  },
};

const hosts = { react: 'host.jsx', vue: 'host.js', svelte: 'host.js' } as const;
const folder = mkdtempSync(join(tmpdir(), 'hosts-'));
const buyer = JSON.parse(readFileSync(join(root, 'demo/answers/first-acre.json'), 'utf8')) as AnswersDocument;

let demo: Demo;
beforeAll(async () => {
  vi.stubEnv('NODE_ENV', 'production');
  for (const [host, entry] of Object.entries(hosts)) {
    await build({
      root, configFile: false, logLevel: 'error', plugins: [components],
      build: {
        outDir: join(folder, host), target: 'es2022', minify: false, copyPublicDir: false,
        rollupOptions: { input: join(root, 'demo/hosts', host, entry), external: ['acre-to-axle/define'], output: { entryFileNames: 'host.js' } },
      },
    });
  }
  vi.unstubAllEnvs();
  demo = await openDemo();
});
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await demo?.close();
});

const page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A host</title><link rel="icon" href="data:,">
  <script type="importmap">{ "imports": { "acre-to-axle/define": "/widget/acre-to-axle.js" } }</script>
  <script type="module" src="./host.js"></script></head><body><div id="host"></div></body></html>`;

test.each(Object.keys(hosts))('a host made with %s hands its catalogue in, is walked to a shortlist and hears of it', async (host) => {
  const { page: on, complaints } = await demo.visit(`hosts/${host}/`, async (opened) => {
    await opened.route(`**/hosts/${host}/`, (route) => route.fulfill({ contentType: 'text/html', body: page }));
    await opened.route('**/host.js', (route) => route.fulfill({ contentType: 'text/javascript', path: join(folder, host, 'host.js') }));
  });
  const wizard = wizardOn(on);
  await walk(wizard, buyer);
  const standing = await wizard.evaluate((element) => (element as AcreToAxle).shortlist!.shortlist.length);
  expect(standing).toBeGreaterThan(0);
  await expect.poll(() => on.locator('output').textContent(), { message: 'what the host heard' }).toBe(`${standing} machines fit`);
  expect(complaints).toEqual([]);
});
