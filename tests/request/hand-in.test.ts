import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, expect, test, vi } from 'vitest';
import { handIn } from '../../src/request/hand-in.ts';
import { aRequest } from './a-request.ts';

const key = '5f0c9f0e-5a3b-4c1d-9a86-2f4a1f0f7e01';
let server: Server | undefined;

async function relay(answer: RequestListener) {
  server = createServer(answer);
  await new Promise<void>((ready) => { server!.listen(0, '127.0.0.1', ready); });
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/relay`;
}

afterEach(() => {
  server?.closeAllConnections();
  server?.close();
});

const answering = (status: number, body: string, headers: Record<string, string> = {}): RequestListener =>
  (_request, response) => { response.writeHead(status, { 'content-type': 'application/json', ...headers }).end(body); };

test('only the relay’s own 202 with the same key counts as taken', async () => {
  expect(await handIn(await relay(answering(202, JSON.stringify({ id: key }))), aRequest, key)).toEqual({ kind: 'accepted', id: key });
});

test.each([
  ['a page to log in with', 200, '<html>', { kind: 'later', why: 'not-a-relay' }],
  ['a 202 of something else', 202, '{"id":"other"}', { kind: 'later', why: 'not-a-relay' }],
  ['a 202 that breaks off', 202, '{"id":"5f0', { kind: 'later', why: 'not-a-relay' }],
  ['a redirect', 302, '', { kind: 'later', why: 'unreachable' }],
  ['a refusal by a proxy', 403, '<html>', { kind: 'later', why: 'not-a-relay' }],
  ['a refusal by the relay', 422, '{"code":"request.faulty"}', { kind: 'refused', status: 422, code: 'request.faulty' }],
  ['one that is under way', 409, '{"code":"key.in-progress"}', { kind: 'later', why: 'busy' }],
  ['a fault of the server', 500, '', { kind: 'later', why: 'busy' }],
])('%s', async (_what, status, body, outcome) => {
  expect(await handIn(await relay(answering(status, body, { location: '/elsewhere' })), aRequest, key)).toEqual(outcome);
});

test('when to come again is passed on', async () => {
  expect(await handIn(await relay(answering(503, '', { 'retry-after': '30' })), aRequest, key)).toEqual({ kind: 'later', why: 'busy', after: 30 });
  server!.close();
  expect(await handIn(await relay(answering(429, '', { 'retry-after': 'soon' })), aRequest, key)).toEqual({ kind: 'later', why: 'busy' });
});

test('the key, the token and no cookie go along, below the relay’s own path', async () => {
  const heard: Record<string, unknown> = {};
  const address = await relay((request, response) => {
    Object.assign(heard, { path: request.url, key: request.headers['idempotency-key'], token: request.headers.authorization, type: request.headers['content-type'], cookie: request.headers.cookie });
    response.writeHead(202).end(JSON.stringify({ id: key }));
  });
  await handIn(address, aRequest, key, { deviceToken: 'till' });
  expect(heard).toEqual({ path: '/relay/v1/shortlists', key, token: 'Bearer till', type: 'application/json', cookie: undefined });
});

test('a connection that is cut, and one nobody takes', async () => {
  const address = await relay((request) => request.socket.destroy());
  expect(await handIn(address, aRequest, key)).toEqual({ kind: 'later', why: 'unreachable' });
  server!.closeAllConnections();
  await new Promise((closed) => { server!.close(closed); });
  expect(await handIn(address, aRequest, key)).toEqual({ kind: 'later', why: 'unreachable' });
});

test.each([
  ['never answers', () => {}],
  ['begins an answer and never ends it', (_request, response) => { response.writeHead(202, { 'content-type': 'application/json' }).write('{"id":'); }],
] as readonly (readonly [string, RequestListener])[])('fault 2: a relay that %s is given up after ten seconds, and to be asked again', async (_what, answer) => {
  const address = await relay(answer);
  const real = AbortSignal.timeout.bind(AbortSignal);
  const deadline = vi.spyOn(AbortSignal, 'timeout').mockImplementation((milliseconds) => real(milliseconds / 100));
  const begun = performance.now();
  expect(await handIn(address, aRequest, key)).toEqual({ kind: 'later', why: 'slow' });
  expect(performance.now() - begun).toBeLessThan(5_000);
  expect(deadline.mock.calls).toEqual([[10_000]]);
  deadline.mockRestore();
});
