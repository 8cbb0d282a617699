import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
// @ts-expect-error: plain module without types, shared with the start command
import { serve } from '../../demo/serve.mjs';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';

export interface Visit {
  page: Page;
  /** Everything the page asked for over the network. */
  requests: string[];
  /** Errors and warnings of the console, and what was thrown. */
  complaints: string[];
}

export interface Demo {
  address: string;
  open(options?: BrowserContextOptions, path?: string): Promise<Visit>;
  close(): Promise<void>;
}

/** The built demo, served and open to a real browser. */
export async function openDemo(): Promise<Demo> {
  const served = (await serve(0)) as { address: string; close(): Promise<void> };
  const browser: Browser = await chromium.launch(await findChromium());
  return {
    address: served.address,
    async open(options = {}, path = '') {
      const page = await (await browser.newContext(options)).newPage();
      const visit: Visit = { page, requests: [], complaints: [] };
      page.on('request', (request) => visit.requests.push(request.url()));
      page.on('console', (message) => { if (message.type() !== 'log') visit.complaints.push(message.text()); });
      page.on('pageerror', (error) => visit.complaints.push(error.message));
      await page.goto(served.address + path);
      await page.locator('acre-to-axle').locator('h2').waitFor();
      return visit;
    },
    async close() {
      await browser.close();
      await served.close();
    },
  };
}
