import { build } from 'esbuild';
import { chromium, type Browser, type Page } from 'playwright-core';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import type { PaperPage } from './paper-page.ts';

declare global {
  var papers: PaperPage;
}

const root = new URL('../..', import.meta.url).pathname;
const address = 'https://counter.example/';
/** As strict as a page of ours is: no style or script but from files, and no text that becomes markup but through Lit's own policy. */
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html";
const types = { html: 'text/html', js: 'text/javascript', css: 'text/css' } as const;

export interface PaperBrowser {
  browser: Browser;
  page: Page;
  /** Errors and warnings of the console, breaches of the policy among them, and what was thrown. */
  complaints: string[];
  close(): Promise<void>;
}

/** A real browser with a page that has a look of its own, dark and large, on which papers can be laid. */
export async function openPaperBrowser(): Promise<PaperBrowser> {
  const { outputFiles } = await build({
    stdin: { contents: "import { paperPage } from './tests/counter/paper-page.ts'; globalThis.papers = paperPage();", resolveDir: root, loader: 'ts' },
    bundle: true, write: false, format: 'esm', target: 'es2022', conditions: ['production'], minifySyntax: true,
  });
  const files: Readonly<Record<string, { type: keyof typeof types; body: string }>> = {
    '/': { type: 'html', body: '<!doctype html><html lang="en"><head><link rel="stylesheet" href="/dark.css"></head><body><main><h1>Counter</h1><p>Staff notes</p></main><script type="module" src="/papers.js"></script></body></html>' },
    '/papers.js': { type: 'js', body: outputFiles[0]!.text },
    '/dark.css': { type: 'css', body: ':root { color-scheme: dark; } body { background: #111; color: #eee; font: 20px serif; letter-spacing: 2px; padding: 3rem; } svg { width: 3rem; } p { margin: 2em; }' },
  };
  const browser: Browser = await chromium.launch(await findChromium());
  const page = await (await browser.newContext({ colorScheme: 'dark' })).newPage();
  const complaints: string[] = [];
  page.on('console', (message) => { if (message.type() !== 'log') complaints.push(message.text()); });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.route('**/*', async (route) => {
    const file = files[new URL(route.request().url()).pathname];
    await route.fulfill(file ? { body: file.body, headers: { 'content-type': types[file.type], 'content-security-policy': policy } } : { status: 204 });
  });
  await page.goto(address);
  await page.waitForFunction(() => 'papers' in globalThis);
  return { browser, page, complaints, close: () => browser.close() };
}

/** Pages of a PDF (ISO 32000-2, 7.7.3.3). */
export const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page(?![a-zA-Z])/g)?.length ?? 0;

/** Width and height of a PDF's pages in points, a seventy-second of an inch each (ISO 32000-2, 14.11.2). */
export const sizesOf = (pdf: Buffer) => [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map(([, width, height]) => [Number(width), Number(height)] as const);

/** What a camera would see of a picture: its pixels, read by a browser. */
export async function pixelsOf(browser: Browser, png: Buffer): Promise<{ pixels: Uint8ClampedArray; width: number; height: number }> {
  const page = await browser.newPage();
  const read = await page.evaluate(async (base64) => {
    const image = await createImageBitmap(new Blob([Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0))]));
    const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    let bytes = '';
    for (const byte of data) bytes += String.fromCharCode(byte);
    return { bytes: btoa(bytes), width: image.width, height: image.height };
  }, png.toString('base64'));
  await page.close();
  return { pixels: new Uint8ClampedArray(Buffer.from(read.bytes, 'base64')), width: read.width, height: read.height };
}
