/** What a real network does to a buyer who wants his shortlist by mail; the numbers are those of our list of faults. */
import { createServer, type RequestListener, type Server, type ServerResponse } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import type { Locator } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { paths } from '../../src/request/names.ts';
import { certificate } from '../relay/certificate.ts';
import { goToResult } from './at-result.ts';
import { openDemo, type Demo, type Visit } from './browser.ts';

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

const address = 'ann@buyer.example';
const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) {
    server.closeAllConnections();
    server.close();
  }
});

async function listening(server: Server): Promise<string> {
  servers.push(server);
  await new Promise<void>((ready) => { server.listen(0, '127.0.0.1', ready); });
  return `127.0.0.1:${(server.address() as AddressInfo).port}/`;
}

/** A relay behind a real connection. @param answer  what is done with a request; it is taken where none is given */
function relayThat(answer?: (key: string, response: ServerResponse) => void): { listener: RequestListener; keys: string[] } {
  const keys: string[] = [];
  return { keys, listener: (request, response) => {
    const allow = { 'access-control-allow-origin': '*', 'access-control-allow-headers': '*', 'content-type': 'application/json' };
    if (request.method === 'OPTIONS') return void response.writeHead(204, allow).end();
    if (request.url?.startsWith(paths.ticket)) return void response.writeHead(200, allow).end('{"ticket":"given.out"}');
    const key = String(request.headers['idempotency-key']);
    request.resume().on('end', () => {
      keys.push(key);
      if (answer) answer(key, response);
      else response.writeHead(202, allow).end(JSON.stringify({ id: key }));
    });
  } };
}

const visit = (path = '', deadline?: number) => demo.visit(path, async (page) => {
  if (deadline === undefined) return;
  // What takes ten seconds of a buyer's takes less of ours; that it is ten is asserted where requests are handed in.
  await page.addInitScript((most) => {
    const real = AbortSignal.timeout.bind(AbortSignal);
    AbortSignal.timeout = (milliseconds) => real(Math.min(milliseconds, most));
  }, deadline);
});

async function send(wizard: Locator): Promise<void> {
  await wizard.locator('[part="by-mail"]').click();
  await wizard.getByLabel('Your mail address').fill(address);
  await wizard.locator('[part="send-mail"]').click();
}

async function fallsBack(wizard: Locator): Promise<void> {
  await wizard.getByText('can’t be reached').waitFor();
  await wizard.getByText('Nothing is lost: you can also print').waitFor();
  expect(await wizard.locator('[part="result"]').count()).toBe(1);
}

test('fault 2: a relay that takes the connection and never answers is given up, and asked again under the same key', async () => {
  let isAnswering = false;
  const { listener, keys } = relayThat((key, response) => {
    if (isAnswering) response.writeHead(202, { 'access-control-allow-origin': '*' }).end(JSON.stringify({ id: key }));
  });
  const relay = `http://${await listening(createServer(listener))}`;
  const { page } = await visit('', 300);
  const wizard = await goToResult(page, relay);
  await send(wizard);
  await fallsBack(wizard);
  isAnswering = true;
  await wizard.getByRole('button', { name: 'Try again' }).click();
  await wizard.getByText('on its way').waitFor();
  expect(keys.length).toBeGreaterThan(1);
  expect(new Set(keys).size).toBe(1);
});

test('fault 5: on a kilobyte a second and two seconds behind, where a third of the connections is lost, no step asks for anything and one request is sent', async () => {
  let connections = 0;
  const { listener, keys } = relayThat();
  const server = createServer(listener);
  // What is lost below a page it sees as a connection that dies.
  server.on('connection', (socket) => {
    connections += 1;
    if (connections % 3 === 1) socket.destroy();
  });
  const relay = `http://${await listening(server)}`;
  const { page } = await visit();
  const wizard = await goToResult(page, relay);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Network.enable');
  await devtools.send('Network.emulateNetworkConditions', { offline: false, latency: 2_000, downloadThroughput: 1_024, uploadThroughput: 1_024 });
  // To an answer and back again: nothing there waits for the network, for nothing is asked of it.
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await wizard.getByRole('button', { name: 'Change' }).first().click();
  await wizard.locator('[part="result"]').waitFor({ state: 'detached' });
  await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="result"]').waitFor();
  expect(asked).toEqual([]);
  await send(wizard);
  await wizard.locator('[part="send-mail"]').click({ timeout: 500 }).catch(() => 'it can’t be pressed twice');
  await wizard.getByText('on its way').waitFor({ timeout: 50_000 });
  expect(keys).toHaveLength(1);
});

test('fault 6: offline in the middle of a step nothing is said until something is sent, and back again it goes', async () => {
  const { listener, keys } = relayThat();
  const relay = `http://${await listening(createServer(listener))}`;
  const { page, complaints } = await visit();
  const wizard = await goToResult(page, relay);
  // What a page has once fetched it needs no network for.
  await wizard.locator('[part="by-mail"]').click();
  await wizard.locator('[part="mail"]').getByRole('button', { name: 'Close' }).click();
  await page.context().setOffline(true);
  await wizard.getByRole('button', { name: 'Change' }).first().click();
  await wizard.locator('[part="result"]').waitFor({ state: 'detached' });
  await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="result"]').waitFor();
  expect(complaints).toEqual([]);
  expect(await wizard.getByRole('alert').count()).toBe(0);
  await send(wizard);
  await fallsBack(wizard);
  await page.context().setOffline(false);
  await wizard.getByRole('button', { name: 'Try again' }).click();
  await wizard.getByText('on its way').waitFor();
  expect(keys).toHaveLength(1);
});

test('a form that couldn’t be fetched is fetched when that is asked for', async () => {
  const { listener, keys } = relayThat();
  const relay = `http://${await listening(createServer(listener))}`;
  const { page } = await visit();
  const wizard = await goToResult(page, relay);
  await page.context().setOffline(true);
  await wizard.locator('[part="by-mail"]').click();
  await wizard.getByRole('alert').waitFor();
  await page.context().setOffline(false);
  await wizard.locator('[part="try-again"]').click();
  await wizard.getByLabel('Your mail address').fill(address);
  await wizard.locator('[part="send-mail"]').click();
  await wizard.getByText('on its way').waitFor();
  expect(keys).toHaveLength(1);
});

/** What the browser itself told of a request it refused. */
const toldOf = ({ complaints }: Visit, what: RegExp) => expect.poll(() => complaints.some((each) => what.test(each))).toBe(true);

test('fault 8: a relay whose certificate nobody vouches for is one that isn’t there, and the console says why', async () => {
  const day = 86_400_000;
  const { listener, keys } = relayThat();
  const sheet = certificate('localhost', { from: new Date(Date.now() - day), until: new Date(Date.now() + day) });
  const visited = await visit();
  const wizard = await goToResult(visited.page, `https://${await listening(createSecureServer(sheet, listener) as unknown as Server)}`);
  await send(wizard);
  await fallsBack(wizard);
  await toldOf(visited, /ERR_CERT_/);
  expect(keys).toEqual([]);
});

test('fault 8: a relay without TLS is refused by a page that has it, and the console says why', async () => {
  const visited = await demo.visit('https://dealer.example/', (page) => page.route('https://dealer.example/**', async (route) => {
    const { pathname } = new URL(route.request().url());
    await route.fulfill({ response: await route.fetch({ url: new URL(pathname.slice(1), demo.address).href }) });
  }));
  const wizard = await goToResult(visited.page, 'http://mail.relay.example/');
  await send(wizard);
  await fallsBack(wizard);
  await toldOf(visited, /Mixed Content/);
});
