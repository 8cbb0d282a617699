import { afterEach, beforeEach, expect, test } from 'vitest';
import { everyLanguage } from '../support/languages.ts';
import { wordsFor } from '../../src/relay/pages/language.ts';
import { minute } from '../../src/relay/clock.ts';
import type { Claim } from '../../src/relay/store/store.ts';
import { aDealer, aRelay, post, requestTo, states, type TestRelay } from './a-relay.ts';

let relay: TestRelay;
beforeEach(async () => {
  relay = await aRelay({ dealers: [{ ...aDealer, confirmFirst: true }] });
});
afterEach(() => relay.end());

async function asked(): Promise<Claim> {
  await post(relay, requestTo('ann@buyer.example', { consent: { mail: true, dealerCopy: false, statistics: false } }));
  return (await relay.store.claim(1, relay.clock.now(), 3))[0]!;
}
const get = (url: string, headers: Record<string, string> = {}) => relay.app.inject({ url, headers });
/** As a provider's machine sends it (RFC 8058, section 3.2). */
const oneClick = (url: string, remoteAddress = '192.0.2.9') =>
  relay.app.inject({ method: 'POST', url, remoteAddress, headers: { 'content-type': 'application/x-www-form-urlencoded' }, payload: 'List-Unsubscribe=One-Click' });

test('fault 23: a link that is only looked at changes nothing, and its button changes it once for all', async () => {
  const { token, message, fence } = await asked();
  await relay.store.settle({ message, fence }, { state: 'sent', reply: '250' }, relay.clock.now());
  const before = await states(relay);
  for (const link of ['u', 'n', 'c']) {
    for (const method of ['GET', 'HEAD'] as const) expect((await relay.app.inject({ method, url: `/${link}/${token}` })).statusCode).toBe(200);
  }
  expect(await states(relay)).toEqual(before);

  const first = await oneClick(`/u/${token}`);
  expect([first.statusCode, first.headers['set-cookie'], first.headers.location]).toEqual([200, undefined, undefined]);
  expect(await states(relay)).toMatchObject({ unconfirmed: 0, suppressed: 1 });
  const second = await oneClick(`/u/${token}`);
  expect([second.statusCode, second.body]).toEqual([200, first.body]);
  expect((await oneClick(`/u/${token.slice(1)}`)).statusCode).toBe(404);
});

test('fault 23: the provider’s two kinds of form, and one without a body, stop it alike', async () => {
  for (const given of [
    { headers: { 'content-type': 'multipart/form-data; boundary=x' }, payload: '--x\r\nContent-Disposition: form-data; name="List-Unsubscribe"\r\n\r\nOne-Click\r\n--x--\r\n' },
    { headers: { 'content-type': 'application/x-www-form-urlencoded' }, payload: 'List-Unsubscribe=One-Click' },
    {},
  ]) {
    relay.clock.pass(8 * 24 * 60 * minute);
    const { token } = await asked();
    expect((await relay.app.inject({ method: 'POST', url: `/u/${token}`, ...given })).statusCode).toBe(200);
    await relay.end();
    relay = await aRelay({ dealers: [{ ...aDealer, confirmFirst: true }] });
  }
});

test('fault 23: ten thousand wrong tokens are soon no longer looked up, and the right one of another still works', async () => {
  const { token } = await asked();
  const statuses = new Map<number, number>();
  for (let nth = 0; nth < 10_000; nth += 1) {
    const { statusCode } = await oneClick(`/u/${String(nth).padStart(32, 'x')}`, '203.0.113.66');
    statuses.set(statusCode, (statuses.get(statusCode) ?? 0) + 1);
  }
  expect(Object.fromEntries(statuses)).toEqual({ 404: 30, 429: 9_970 });
  // A provider's machines come from few addresses, with many good links: those are never counted.
  for (let nth = 0; nth < 40; nth += 1) expect((await oneClick(`/u/${token}`)).statusCode).toBe(200);
}, 60_000);

test('a buyer who says it was he gets what he asked for, once', async () => {
  const { token } = await asked();
  expect((await oneClick(`/c/${token}`)).statusCode).toBe(200);
  expect((await oneClick(`/c/${token}`)).statusCode).toBe(200);
  expect(await states(relay)).toMatchObject({ queued: 1, unconfirmed: 0 });
});

test('the pages run nothing, load nothing and name no token', async () => {
  const { token } = await asked();
  for (const response of [await get(`/u/${token}`), await oneClick(`/u/${token}`), await oneClick('/u/unknown')]) {
    expect(response.headers['content-security-policy']).toMatch(/^default-src 'none'; style-src 'sha256-[^']+'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'$/);
    expect(response.headers['referrer-policy']).toBe('no-referrer');
    expect(response.body).not.toMatch(/<script|<img|<link|https?:|src=/);
    expect(response.body).not.toContain(token);
  }
  expect((await get('/u/%22%3E%3Cscript%3Ealert(1)%3C%2Fscript%3E')).body).not.toContain('alert');
});

test('fault 23: where the store can’t be had the link stays good, and that is said', async () => {
  const { token } = await asked();
  await relay.end();
  relay = await aRelay({ store: (real) => ({ ...real, stop: () => Promise.reject(new Error('x')) }) });
  const { statusCode, headers } = await oneClick(`/u/${token}`);
  expect([statusCode, headers['retry-after']]).toEqual([503, '60']);
});

test.each([
  ['de-AT,de;q=0.9,en;q=0.8', 'de'], ['ja,fr;q=0.5', 'fr'], ['es', 'es'], ['en-US', 'en'], ['ja', 'en'], [undefined, 'en'], ['', 'en'], ['de;q=0,fr;q=0.1', 'fr'], ['en;q=0.1, ES;q=0.8', 'es'], [';;;q=,,', 'en'],
])('a browser that wants %s is shown %s', (wanted, language) => expect(wordsFor(wanted).language).toBe(language));

test('every language of the wizard has these pages', () => {
  for (const { tag } of everyLanguage) expect(wordsFor(tag).language).toBe(tag);
});
