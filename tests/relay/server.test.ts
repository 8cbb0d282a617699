import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { newRelayKey, seal } from '../../src/request/seal.ts';
import { paths } from '../../src/request/names.ts';
import { handIn } from '../../src/request/hand-in.ts';
import { minute, second } from '../../src/relay/clock.ts';
import { sha256 } from '../../src/relay/hashes.ts';
import { problems } from '../../src/relay/problems.ts';
import { isWorked } from '../../src/relay/way/ticket.ts';
import { aRequest } from '../request/a-request.ts';
import { aDealer, aRelay, browserHeaders, origin, otherOrigin, post, requestTo, states, ticketFor, type TestRelay } from './a-relay.ts';

let relay: TestRelay;
beforeEach(async () => {
  relay = await aRelay();
});
afterEach(() => relay.end());

/** A request of a form that was open long enough. */
async function honest(change = {}, address = 'ann@buyer.example') {
  const { ticket } = await ticketFor(relay);
  relay.clock.pass(4 * second);
  return requestTo(address, { ticket, ...change });
}

describe('a request', () => {
  test('is stored before it is answered, and its mails are queued', async () => {
    const { status, json, key } = await post(relay, await honest());
    expect([status, json()]).toEqual([202, { id: key }]);
    expect(await states(relay)).toMatchObject({ queued: 2, unconfirmed: 0, held: 0 });
    expect(relay.woken()).toBe(1);
  });

  test('makes no copy for the dealer where the buyer didn’t agree, and his name isn’t kept', async () => {
    await post(relay, await honest({ consent: { mail: true, dealerCopy: false, statistics: false } }));
    const claims = await relay.store.claim(9, relay.clock.now(), 3);
    expect(claims.map(({ role }) => role)).toEqual(['buyer']);
    expect(claims[0]!.document.contact).toBeUndefined();
    expect(claims[0]!.document.ticket).toBeUndefined();
  });

  test('of a stopped person is answered like any other and sends nothing', async () => {
    await post(relay, await honest());
    const { token } = (await relay.store.claim(2, relay.clock.now(), 3)).find(({ role }) => role === 'buyer')!;
    await relay.store.stop(token, 'stop', relay.clock.now());
    relay.clock.pass(11 * minute);
    const { status, json, key } = await post(relay, await honest({ consent: { mail: true, dealerCopy: false, statistics: false } }));
    expect([status, json()]).toEqual([202, { id: key }]);
    expect((await states(relay)).suppressed).toBeGreaterThan(0);
  });

  test('handed in by the page’s own code comes to the same', async () => {
    await relay.app.listen({ host: '127.0.0.1', port: 0 });
    const { port } = relay.app.server.address() as { port: number };
    const key = randomUUID();
    const real = globalThis.fetch;
    // Node sends no Origin of itself; a browser does.
    globalThis.fetch = (address, init) => real(address, { ...init, headers: { ...init?.headers, origin, 'sec-fetch-mode': 'cors', 'sec-fetch-dest': 'empty' } });
    try {
      expect(await handIn(`http://127.0.0.1:${port}`, await honest(), key)).toEqual({ kind: 'accepted', id: key });
      expect(await handIn(`http://127.0.0.1:${port}`, requestTo('bob@buyer.example'), key)).toEqual({ kind: 'refused', status: 422, code: 'other-body' });
    } finally {
      globalThis.fetch = real;
    }
  });

  test('with faults is told where, in names of ours alone', async () => {
    const { status, json, text } = await post(relay, { ...aRequest, answers: { ...aRequest.answers, land: { slope: 'flat', 'buy at cheap.example': 1 } }, 'x.y canary': 1, address: 'canary@@x' });
    expect(status).toBe(400);
    expect(json()).toMatchObject({ code: 'not-a-request', faults: expect.arrayContaining([{ place: 'address', expected: expect.any(String) }]) });
    expect(text).not.toMatch(/canary|cheap/);
  });

  test('of a dealer who isn’t served is refused', async () => {
    expect(await post(relay, requestTo('ann@buyer.example', { dealer: 'nobody' }))).toMatchObject({ status: 404 });
  });
});

test('new, repeated and suppressed are answered in one word and not before one time', async () => {
  const body = await honest();
  const key = randomUUID();
  const timed = async () => {
    const begun = performance.now();
    const { status, text } = await post(relay, body, { key });
    return { status, text, took: performance.now() - begun };
  };
  const [first, second] = [await timed(), await timed()];
  expect(second).toMatchObject({ status: first.status, text: first.text });
  // A timer may fire a millisecond early.
  for (const { took } of [first, second]) expect(took).toBeGreaterThan(9);
});

describe('what speaks for a program', () => {
  test.each([
    ['nothing', {}, {}, { queued: 1, unconfirmed: 0, held: 0 }],
    ['no ticket, in a browser', { ticket: undefined }, {}, { queued: 1, unconfirmed: 0, held: 0 }],
    ['no ticket, and no browser', { ticket: undefined }, { 'sec-fetch-mode': undefined, 'sec-fetch-dest': undefined }, { queued: 1, unconfirmed: 1, held: 0 }],
    ['a ticket nobody gave out, the hidden field, no browser, hence three signs', { ticket: 'a.b.c.0.d', leftEmpty: 'x' }, { 'sec-fetch-mode': undefined, 'sec-fetch-dest': undefined }, { queued: 1, unconfirmed: 1, held: 0 }],
  ])('%s: sent at once, or asked first', async (_what, change, headers, expected) => {
    const body = await honest({ consent: { mail: true, dealerCopy: false, statistics: false }, ...change });
    expect((await post(relay, JSON.parse(JSON.stringify(body)), { headers })).status).toBe(202);
    expect(await states(relay)).toMatchObject(expected);
  });

  test('a ticket is good for one request', async () => {
    const body = await honest({ consent: { mail: true, dealerCopy: false, statistics: false }, leftEmpty: 'x' });
    await post(relay, body);
    await post(relay, { ...body, address: 'bob@buyer.example' }, { remoteAddress: '203.0.113.9' });
    expect(await states(relay)).toMatchObject({ queued: 2, unconfirmed: 1 });
  });

  test('fault 47: whoever fills in by a helper, at once and without a worker, is asked whether it was he, and no more', async () => {
    await relay.end();
    relay = await aRelay({ dealers: [{ ...aDealer, proofOfWork: true }] });
    const { ticket, work } = await ticketFor(relay);
    expect(work).toEqual({ bits: 16 });
    const { status } = await post(relay, requestTo('ann@buyer.example', { ticket, leftEmpty: 'ann@buyer.example', consent: { mail: true, dealerCopy: false, statistics: false } }));
    expect(status).toBe(202);
    expect(await states(relay)).toMatchObject({ queued: 1, unconfirmed: 1, held: 0 });
    const [asked] = await relay.store.claim(1, relay.clock.now(), 3);
    expect(asked!.role).toBe('confirm');
    expect((await relay.app.inject({ method: 'POST', url: `/c/${asked!.token}` })).statusCode).toBe(200);
    expect((await relay.store.claim(1, relay.clock.now(), 3))[0]!.role).toBe('buyer');
  });

  test('work that was asked for and done counts for the buyer', async () => {
    await relay.end();
    relay = await aRelay({ dealers: [{ ...aDealer, proofOfWork: true }] });
    const body = await honest({ consent: { mail: true, dealerCopy: false, statistics: false }, leftEmpty: 'x' });
    let work = 0;
    while (!isWorked(body.ticket!, String(work), 16)) work += 1;
    await post(relay, { ...body, work: String(work) });
    expect(await states(relay)).toMatchObject({ queued: 1, unconfirmed: 0 });
  });

  test('three who say it wasn’t they, and every buyer of the dealer is asked first', async () => {
    for (const name of ['a', 'b', 'c']) {
      await post(relay, await honest({ consent: { mail: true, dealerCopy: false, statistics: false } }, `${name}@buyer.example`), { remoteAddress: `203.0.113.${name.charCodeAt(0)}` });
      const { token } = (await relay.store.claim(1, relay.clock.now(), 3))[0]!;
      expect((await relay.app.inject({ method: 'POST', url: `/n/${token}` })).statusCode).toBe(200);
    }
    await post(relay, await honest({ consent: { mail: true, dealerCopy: false, statistics: false } }, 'd@buyer.example'), { remoteAddress: '203.0.113.1' });
    expect(await states(relay)).toMatchObject({ queued: 1, unconfirmed: 1 });
  });
});

describe('a counter', () => {
  const token = 'a-token-of-a-counter';
  beforeEach(async () => {
    await relay.end();
    relay = await aRelay({ dealers: [{ ...aDealer, devices: [{ id: 'counter-1', hash: sha256(token) }], limits: { devicePerHour: 8 } }, { ...aDealer, id: 'other', origins: [otherOrigin] }] });
  });
  const authorization = `Bearer ${token}`;

  const sealed = async (address: string, key: string) => {
    const { keys } = JSON.parse((await relay.app.inject({ url: paths.keys, headers: { origin } })).body) as { keys: Parameters<typeof seal>[1][] };
    return seal(requestTo(address), keys[0]!, key);
  };

  test('sends sealed what is opened here, with limits of its own and nobody asked first', async () => {
    for (let nth = 0; nth < 8; nth += 1) {
      const key = randomUUID();
      expect((await post(relay, await sealed(`a${nth}@buyer.example`, key), { key, headers: { authorization } })).status).toBe(202);
    }
    const key = randomUUID();
    expect(await post(relay, await sealed('z@buyer.example', key), { key, headers: { authorization } })).toMatchObject({ status: 429 });
    expect(await states(relay)).toMatchObject({ queued: 16, unconfirmed: 0 });
  });

  test('with another’s token, another origin, another key of the request or of the relay is refused', async () => {
    const key = randomUUID();
    const box = await sealed('ann@buyer.example', key);
    const code = async (body: unknown, given: Parameters<typeof post>[2]) => (await post(relay, body, given)).json().code;
    expect(await code(box, { key, headers: { authorization: 'Bearer nothing' } })).toBe('device');
    expect(await code(box, { key, headers: { authorization, origin: otherOrigin } })).toBe('origin');
    expect(await code(box, { headers: { authorization } })).toBe('seal-broken');
    expect(await code({ ...box, dealer: 'other' }, { key, headers: { origin: otherOrigin } })).toBe('seal-broken');
    const strange = await newRelayKey('strange');
    expect(await code(await seal(requestTo('ann@buyer.example'), strange.key, key), { key, headers: { authorization } })).toBe('seal-key');
    expect(await states(relay)).toMatchObject({ queued: 0 });
  });
});

describe('where pages may send from', () => {
  const refusedOrigins = ['null', 'https://dealer.example.evil.test', 'https://DEALER.example', 'https://dealer.example:8443', 'https://dealer.example.', 'http://dealer.example', 'https://evil.test', 'https://dealer.example/', ` https://dealer.example, ${origin}`];

  test('fault 44: no origin but the very one, and none is said again', async () => {
    const body = await honest();
    for (const each of [undefined, ...refusedOrigins]) {
      const { status, headers, json } = await post(relay, body, { headers: { origin: each } });
      expect([each, status, json().code]).toEqual([each, 403, 'origin']);
      expect(headers['access-control-allow-origin']).toBeUndefined();
      expect(headers.vary).toBe('Origin');
    }
    const { status, headers } = await post(relay, body);
    expect([status, headers['access-control-allow-origin'], headers.vary, headers['access-control-allow-credentials']]).toEqual([202, origin, 'Origin', undefined]);
  });

  test('another dealer’s page may not send for this one', async () => {
    await relay.end();
    relay = await aRelay({ dealers: [aDealer, { ...aDealer, id: 'other', origins: [otherOrigin] }] });
    expect((await post(relay, aRequest, { headers: { origin: otherOrigin } })).json().code).toBe('origin');
    expect((await ticketFor(relay, 'other')).status).toBe(403);
    expect((await ticketFor(relay, 'other', { origin: otherOrigin })).status).toBe(200);
  });

  test('a browser that asks first is told what may be sent, and by whom', async () => {
    const ask = (headers: Record<string, string>) => relay.app.inject({ method: 'OPTIONS', url: paths.shortlists, headers });
    const asked = { origin, 'access-control-request-method': 'POST', 'access-control-request-headers': 'content-type,idempotency-key' };
    const { statusCode, headers } = await ask(asked);
    expect([statusCode, headers['access-control-allow-origin'], headers['access-control-allow-methods'], headers['access-control-allow-headers']]).toEqual([204, origin, 'POST', 'content-type, idempotency-key, authorization']);
    for (const change of [{ origin: 'null' }, { 'access-control-request-method': 'DELETE' }, { 'access-control-request-headers': 'x-other' }]) expect((await ask({ ...asked, ...change })).statusCode).toBe(403);
  });

  test('fault 45: a form, a beacon or a picture of another page stores nothing', async () => {
    const body = JSON.stringify(await honest());
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', 'text/plain;charset=UTF-8', undefined]) {
      expect([type, (await post(relay, body, { headers: { 'content-type': type } })).status]).toEqual([type, 415]);
    }
    const picture = await relay.app.inject({ method: 'GET', url: paths.shortlists, headers: { 'sec-fetch-mode': 'no-cors', 'sec-fetch-dest': 'image' } });
    expect([picture.statusCode, picture.headers.allow]).toEqual([405, 'POST, OPTIONS']);
    for (const headers of [{ 'sec-fetch-mode': 'no-cors' }, { 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'document' }, { 'sec-fetch-dest': 'image' }]) expect((await post(relay, body, { headers })).status).toBe(403);
    expect(Object.values(await states(relay)).every((count) => count === 0)).toBe(true);
  });
});

describe('the key of a request', () => {
  test('fault 38: fifty at once are one request; another body is 422; a key that is missing, no UUID or 10 kB long is 400', async () => {
    const body = await honest();
    const key = randomUUID();
    const answers = await Promise.all(Array.from({ length: 50 }, () => post(relay, body, { key })));
    expect(answers.map(({ status, text }) => [status, text])).toEqual(answers.map(() => [202, JSON.stringify({ id: key })]));
    expect(await states(relay)).toMatchObject({ queued: 2 });
    expect(await post(relay, { ...body, address: 'bob@buyer.example' }, { key })).toMatchObject({ status: 422 });
    expect((await post(relay, body, { headers: { 'idempotency-key': undefined } })).json()).toMatchObject({ status: 400, code: 'key-missing' });
    for (const wrong of ['x', `${key}, ${key}`, 'k'.repeat(10_240)]) expect((await post(relay, body, { key: wrong })).json()).toMatchObject({ status: 400, code: 'key-wrong' });
  });

  test('the same with a ticket fetched anew is the same request; alike under another key is one mail', async () => {
    const body = await honest();
    const { key } = await post(relay, body);
    expect((await post(relay, { ...body, ...await honest() }, { key })).status).toBe(202);
    const again = await post(relay, { ...body, address: 'ANN@buyer.example' });
    expect([again.status, again.json()]).toEqual([202, { id: again.key }]);
    expect(await states(relay)).toMatchObject({ queued: 2 });
  });
});

describe('who a client is', () => {
  test('fault 46: a forged X-Forwarded-For is nobody’s, and a proxy’s only as far as it knows', async () => {
    const many = async (forwarded: (nth: number) => string) => {
      const answers = [];
      for (let nth = 0; nth < 8; nth += 1) answers.push((await post(relay, await honest({}, `p${nth}@buyer.example`), { remoteAddress: '192.0.2.1', headers: { 'x-forwarded-for': forwarded(nth) } })).status);
      return answers.filter((status) => status === 202).length;
    };
    expect(await many((nth) => `203.0.113.${nth}`)).toBe(5);
    await relay.end();
    relay = await aRelay({ proxies: ['192.0.2.0/24'] });
    expect(await many((nth) => `203.0.113.${nth}`)).toBe(8);
    await relay.end();
    relay = await aRelay({ proxies: ['192.0.2.0/24'] });
    expect(await many((nth) => [...Array.from({ length: 100 }, (_, index) => `10.${nth}.0.${index}`), '203.0.113.7'].join(', '))).toBe(5);
  });
});

describe('what a page asks first', () => {
  test('is told the key to seal to, the ticket, and that the relay is there; pages of nobody read none of it', async () => {
    const get = (url: string, headers: Record<string, string> = { origin }) => relay.app.inject({ url, headers });
    expect(JSON.parse((await get(paths.keys)).body)).toEqual({ keys: [{ id: expect.any(String), publicKey: expect.any(String) }] });
    expect((await get(paths.keys)).headers['access-control-allow-origin']).toBe(origin);
    expect((await get(paths.keys, { origin: 'https://evil.test' })).headers['access-control-allow-origin']).toBeUndefined();
    expect(JSON.parse((await get(paths.health)).body)).toEqual({ ok: true, minVersion: '0.1.0' });
    expect((await get('/readyz')).statusCode).toBe(200);
    expect((await get(`${paths.ticket}?dealer=demo-lot`, {})).statusCode).toBe(403);
    expect((await get(`${paths.ticket}?dealer=demo-lot`, { 'sec-fetch-site': 'same-origin' })).statusCode).toBe(403);
  });

  test('is not told more than sixty times in ten minutes', async () => {
    const statuses = [];
    for (let nth = 0; nth < 62; nth += 1) statuses.push((await ticketFor(relay)).status);
    expect(statuses.filter((status) => status === 429)).toHaveLength(2);
  });

  test('is described as it is read', async () => {
    const { body, headers } = await relay.app.inject({ url: '/v1/openapi.json' });
    const described = JSON.parse(body);
    expect([headers['content-type'], described.openapi]).toEqual([expect.stringContaining('application/vnd.oai.openapi+json'), '3.1.0']);
    expect(described.components.schemas.request.required).toEqual(expect.arrayContaining(['dealer', 'address', 'consent']));
    expect(described.components.schemas.problem.properties.code.enum).toEqual(Object.keys(problems));
    expect(Object.keys(described.paths)).toEqual(expect.arrayContaining(Object.values(paths)));
  });
});

describe('what can’t be taken', () => {
  test('is refused before it is taken, with when to try again, and taken again once there is room', async () => {
    await relay.end();
    relay = await aRelay({ queueMost: 2 });
    expect((await post(relay, await honest())).status).toBe(202);
    await relay.guard.look(0);
    const { status, headers, json } = await post(relay, await honest({}, 'bob@buyer.example'));
    expect([status, json().code, Number(headers['retry-after'])]).toEqual([503, 'busy', 30]);
    expect((await relay.app.inject({ url: '/readyz' })).statusCode).toBe(503);
    expect(await states(relay)).toMatchObject({ queued: 2 });
    for (const claim of await relay.store.claim(2, relay.clock.now(), 3)) await relay.store.settle(claim, { state: 'sent', reply: '250' }, relay.clock.now());
    await relay.guard.look(0);
    expect((await post(relay, await honest({}, 'bob@buyer.example'))).status).toBe(202);
  });

  test('for want of room on the disk, for an event loop that lags, or while the relay stops', async () => {
    await relay.end();
    relay = await aRelay({ freeLeast: Number.MAX_SAFE_INTEGER });
    expect((await post(relay, aRequest)).json().code).toBe('unavailable');
    await relay.end();
    relay = await aRelay();
    await relay.guard.look(500);
    expect((await post(relay, aRequest)).json().code).toBe('busy');
    relay.guard.close();
    await relay.guard.look(0);
    const { headers, json } = await post(relay, aRequest);
    expect([json().code, headers.connection, headers['retry-after']]).toEqual(['closing', 'close', '15']);
  });

  test('where the store doesn’t answer in time is 503, with when to try again', async () => {
    await relay.end();
    relay = await aRelay({ times: { handler: 100 }, store: (real) => ({ ...real, accept: () => new Promise(() => {}) }) });
    const { status, headers, json } = await post(relay, aRequest);
    expect([status, json().code, headers['retry-after']]).toEqual([503, 'unavailable', '60']);
  });

  test('more than a thousand at once are told so at once, and taken again once there is room', async () => {
    await relay.end();
    let letGo = () => {};
    const waits = new Promise<void>((resolve) => { letGo = resolve; });
    let isFull = () => {};
    const full = new Promise<void>((resolve) => { isFull = resolve; });
    let coming = 0;
    relay = await aRelay({ store: (real) => ({
      ...real,
      async accept() {
        coming += 1;
        if (coming === 1_000) isFull();
        await waits;
        return 'stored';
      },
    }) });
    const all = Array.from({ length: 1_000 }, () => post(relay, aRequest));
    await full;
    const { status, headers, json } = await post(relay, aRequest);
    expect([status, json().code, headers['retry-after']]).toEqual([503, 'busy', '30']);
    letGo();
    expect(new Set((await Promise.all(all)).map((each) => each.status))).toEqual(new Set([202]));
    expect((await post(relay, aRequest)).status).toBe(202);
  });

  test('where the store fails is 503, and nothing more until it has answered again', async () => {
    let fails = true;
    await relay.end();
    relay = await aRelay({ store: (real) => ({ ...real, accept: (...given) => (fails ? Promise.reject(new Error('ann@buyer.example')) : real.accept(...given)) }) });
    const body = await honest();
    expect((await post(relay, body)).json().code).toBe('unavailable');
    fails = false;
    expect((await post(relay, body)).json().code).toBe('unavailable');
    await relay.guard.look(0);
    expect((await post(relay, body)).status).toBe(202);
  });
});

test('fault 48: paths that lead elsewhere, methods nobody uses and addresses without end are refused', async () => {
  for (const url of ['/../../etc/passwd', '//etc/passwd', '/%2e%2e/%2e%2e/etc/passwd', '/v1/../v1/shortlists', '/v1/shortlists/', '/..%2f..%2fetc%2fpasswd', '/v1//shortlists', '/%00', '/%zz', `/${'a'.repeat(4_000)}`]) {
    for (const method of ['GET', 'POST'] as const) {
      const { statusCode, body } = await relay.app.inject({ method, url });
      expect([url, statusCode >= 400 && statusCode < 500]).toEqual([url, true]);
      expect(body).not.toMatch(/etc|passwd|aaaa/);
    }
  }
  for (const method of ['PUT', 'DELETE', 'PATCH', 'TRACE'] as const) {
    const { statusCode, headers } = await relay.app.inject({ method: method as 'PUT', url: paths.shortlists, headers: browserHeaders });
    expect([method, statusCode, headers.allow]).toEqual([method, 405, 'POST, OPTIONS']);
  }
});

test('every answer has the headers that keep it where it belongs', async () => {
  for (const response of [await relay.app.inject({ url: '/nothing' }), await relay.app.inject({ url: paths.health }), await relay.app.inject({ method: 'POST', url: paths.shortlists })]) {
    expect(response.headers).toMatchObject({
      'content-security-policy': expect.stringContaining("default-src 'none'"), 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer', 'cache-control': 'no-store', 'strict-transport-security': expect.stringMatching(/max-age=\d{8}/),
    });
    expect(response.headers['set-cookie']).toBeUndefined();
  }
});

test('nothing of a buyer gets into the log or the figures, whatever he sends', async () => {
  const canary = 'canary7391';
  await post(relay, await honest({ contact: { name: canary } }, `${canary}@buyer.example`), { remoteAddress: '203.0.113.73' });
  await post(relay, { [canary]: canary }, { remoteAddress: '203.0.113.73' });
  await post(relay, `{"${canary}\\n{\\"level\\":\\"error\\"}"`, { headers: { 'user-agent': `${canary}\t{"level":"error"}`, authorization: `Bearer ${canary}` } });
  await relay.app.inject({ url: `/${canary}?${canary}=1`, headers: { referer: `https://${canary}.example` } });
  await relay.app.inject({ method: 'POST', url: `/u/${canary}${canary}${canary}` });
  const all = relay.logged.join('') + await relay.metrics.registry.metrics();
  expect(relay.logged.length).toBeGreaterThan(4);
  expect(all).not.toMatch(/canary|203\.0\.113/);
  for (const line of relay.logged) expect(Object.keys(JSON.parse(line))).toEqual(expect.arrayContaining(['level', 'time', 'msg']));
});
