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
  /** Opens a page in a browser of its own and waits for the first question. */
  open(options?: BrowserContextOptions, path?: string): Promise<Visit>;
  /**
   * Opens a page and waits for nothing; what breaches a policy is a complaint.
   *
   * @param prepare  what is to be done to the page before it is opened
   */
  visit(path: string, prepare?: (page: Page) => Promise<unknown>, options?: BrowserContextOptions): Promise<Visit>;
  close(): Promise<void>;
}

/** The built demo, served and open to a real browser. */
export async function openDemo(): Promise<Demo> {
  const served = (await serve(0)) as { address: string; close(): Promise<void> };
  const browser: Browser = await chromium.launch({ ...(await findChromium()), ignoreDefaultArgs: ['--disable-back-forward-cache'] });
  const visit: Demo['visit'] = async (path, prepare, options) => {
    const page = await (await browser.newContext(options)).newPage();
    const visited: Visit = { page, requests: [], complaints: [] };
    page.on('request', (request) => visited.requests.push(request.url()));
    page.on('console', (message) => { if (message.type() !== 'log') visited.complaints.push(message.text()); });
    page.on('pageerror', (error) => visited.complaints.push(error.message));
    await page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => console.error(`policy: ${violatedDirective} ${blockedURI}`));
    });
    await prepare?.(page);
    await page.goto(new URL(path, served.address).href);
    return visited;
  };
  return {
    address: served.address,
    visit,
    async open(options, path = '') {
      const visited = await visit(path, undefined, options);
      await visited.page.locator('acre-to-axle').locator('h2').waitFor();
      return visited;
    },
    async close() {
      await browser.close();
      await served.close();
    },
  };
}
