import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { minute } from '../../src/relay/clock.ts';
import { problems, Refusal } from '../../src/relay/problems.ts';
import { dealerOf } from '../../src/relay/settings/dealer.ts';
import { Intake } from '../../src/relay/way/intake.ts';
import { isAddress } from '../../src/documents/mail-address.ts';
import { isName, isPhone } from '../../src/request/typed.ts';
import { readRequest } from '../../src/request/read-request.ts';
import { aRequest } from '../request/a-request.ts';
import { sequence } from '../../src/units/sequence.ts';
import { aDealer, aRelay, origin, post, requestTo, states, type TestRelay } from './a-relay.ts';

let relay: TestRelay;
beforeAll(async () => {
  relay = await aRelay({ dealers: [{ ...aDealer, limits: { perHour: 100_000, perDay: 100_000 } }] });
});
afterAll(() => relay.end());

const text = JSON.stringify(aRequest);
const withField = (place: string, json: string) => {
  const document = JSON.parse(text) as Record<string, unknown>;
  const parts = place.split('.');
  const holder = parts.slice(0, -1).reduce<Record<string, unknown>>((at, key) => (at[key] ??= {}) as Record<string, unknown>, document);
  holder[parts.at(-1)!] = '%here%';
  return JSON.stringify(document).replace('"%here%"', () => json);
};
const stored = async () => Object.values(await states(relay)).reduce((sum, count) => sum + count, 0);

describe('fault 40', () => {
  const nested = (depth: number, [begin, end]: readonly [string, string]) => begin.repeat(depth) + '1' + end.repeat(depth);
  const bodies: Readonly<Record<string, string | Buffer>> = {
    'lists half a million deep, as far as a body goes': withField('answers.tasks', nested(31_000, ['[', ']'])),
    'objects as deep': withField('answers.land', nested(10_000, ['{"a":', '}'])),
    'keys by the thousand': withField('answers.land', `{${Array.from({ length: 5_000 }, (_, nth) => `"k${nth}":1`).join()}}`),
    'entries by the thousand': withField('answers.tasks', `[${Array.from({ length: 20_000 }, () => '0').join()}]`),
    'a key twice': text.replace('"kind":', '"kind":"notify","kind":'),
    'a key twice, one of them written otherwise': text.replace('"kind":', '"k\\u0069nd":"notify","kind":'),
    'a mark of byte order': Buffer.concat([Buffer.from([0xEF, 0xBB, 0xBF]), Buffer.from(text)]),
    'bad UTF-8': Buffer.concat([Buffer.from(text.slice(0, -1)), Buffer.from(',"x":"'), Buffer.from([0xC3, 0x28]), Buffer.from('"}')]),
    'UTF-16': Buffer.from(text, 'utf16le'),
    'half a pair of surrogates': withField('language', '"\\ud800"'),
    'half a pair in a key': withField('contact.x\ud800', '1'),
    'a number without end': withField('answers.land.area', '{"value":1e999,"unit":"acre"}'),
    'a negative one': withField('answers.land.area', '{"value":-1,"unit":"acre"}'),
    '__proto__': withField('answers', '{"format":"acre-to-axle/answers/1","__proto__":{"a":1}}'),
    '__proto__, escaped': withField('answers', '{"format":"acre-to-axle/answers/1","__pr\\u006fto__":{"a":1}}'),
    'constructor.prototype': withField('answers', '{"format":"acre-to-axle/answers/1","constructor":{"prototype":{"a":1}}}'),
    'half a document': text.slice(0, -20),
    'two documents': text + text,
    'nothing': '',
    'blanks': ' \n ',
    'a word': 'null',
  };

  test.each(Object.keys(bodies))('%s is 400 in a short text, and at once', async (what) => {
    await post(relay, bodies[what]);
    const begun = performance.now();
    const { status, text: said } = await post(relay, bodies[what]);
    expect(status).toBe(400);
    expect(performance.now() - begun).toBeLessThan(200);
    expect(said.length).toBeLessThan(3_000);
    expect(Object.prototype).not.toHaveProperty('a');
  });

  test('of all of them nothing is stored', async () => expect(await stored()).toBe(0));
  // JSON knows it and it equals 0 (IEEE 754): it is read as that.
  test('a negative zero is a zero', async () => expect((await post(relay, withField('answers.land.area', '{"value":-0,"unit":"acre"}'))).status).toBe(202));
});

const hostile = ['\r\nBcc: zqcanary@evil.test', '\nzqcanary', '\0zqcanary', '\u2028zqcanary', '\u0085zqcanary', '=?utf-8?Q?zqcanary=0D=0A?=', '%0d%0azqcanary', '<script>zqcanary</script>', '\u202Ezqcanary', '{{zqcanary}}', '${zqcanary}', '"zqcanary"', 'https://zqcanary.example', "'; DROP TABLE requests; --zqcanary", '../../zqcanary', '\uFEFFzqcanary', 'ｚｑcanary@evil.test', 'zqcanary'.repeat(40)];

test('fault 41: what breaks lines or hides is in no field that a mail shows', async () => {
  let nth = 0;
  for (const place of ['address', 'contact.name', 'contact.phone', 'contact.goodTime', 'kind', 'language', 'units', 'dealer', 'seen.catalogue.id', 'answers.format', 'format', 'consent.mail']) {
    for (const payload of hostile) {
      for (const written of [payload, `ann@buyer.example${payload}`, `Ann${payload}`, `${payload}5550100`]) {
        nth += 1;
        const { status, text: said } = await post(relay, withField(place, JSON.stringify(written)), { remoteAddress: `203.0.${nth >> 8}.${nth & 255}` });
        expect(said).not.toMatch(/canary/);
        if (status !== 202) continue;
        expect([place, /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}<>"{}@]/u.test(place === 'address' ? written.replace('@', '') : written)]).toEqual([place, place === 'address' && /[{}]/.test(written)]);
      }
    }
  }
}, 60_000);

test.each([
  `${'a'.repeat(243)}@buyer.example`, '"ann lee"@buyer.example', 'ann(comment)@buyer.example', 'ann@[192.0.2.1]', 'ann@[IPv6:2001:db8::1]', 'ann@büyer.example', 'änn@buyer.example', 'ann@b@buyer.example', 'ann@buyer.example.', 'ann@buyer.example, bob@buyer.example',
  'ann@buyer.example;bob@buyer.example', '"a"@buyer.example', 'Ann <ann@buyer.example>', '<ann@buyer.example>', 'ann@buyer', '@buyer.example', 'ann@', 'ann..lee@buyer.example', '.ann@buyer.example', ' ann@buyer.example', 'ann@buyer.example\n', 'ann@-buyer.example', `ann@${'b'.repeat(64)}.example`, `${'a'.repeat(65)}@buyer.example`, 'ann@buyer.example?cc=bob@buyer.example', 'group:ann@buyer.example;', 'ann@buyer.example%0abob@buyer.example',
])('fault 42: %s is refused', async (address) => {
  expect((await post(relay, requestTo(address))).json()).toMatchObject({ status: 400, faults: [expect.objectContaining({ place: 'address' })] });
});

test('fault 42: what is one address is that one recipient', async () => {
  for (const address of ['o\'neill+lot@buyer.example', 'a@b.example', 'ANN@BUYER.EXAMPLE', 'ann@xn--byer-0ra.example', `${'a'.repeat(64)}@buyer.example`, '!#$%&*/=?^_`{|}~-@buyer.example']) {
    relay.clock.pass(8 * 24 * 60 * minute);
    const before = await stored();
    expect([address, (await post(relay, requestTo(address, { consent: { mail: true, dealerCopy: false, statistics: false } }), { remoteAddress: `192.0.2.${address.length}` })).status]).toEqual([address, 202]);
    expect(await stored()).toBeLessThanOrEqual(before + 2);
  }
});

/** How many, and from where to begin: FUZZ=1000000 SEED=7 for another million. */
const [requests, seed] = [Number(process.env.FUZZ ?? 100_000), Number(process.env.SEED ?? 1)];
/** Of so many one goes through the whole server. */
const throughServer = 10;
/** What comes in together shares one wait for the disk. */
const together = 100;

describe('hostile requests', () => {
  const chance = sequence(seed);
  const pick = <T>(all: readonly T[]) => all[Math.floor(chance() * all.length)]!;
  const values = [...hostile.map((each) => JSON.stringify(each)), 'null', '[]', '{}', '1e999', '-1', '0', 'true', '"__proto__"', '[[[[[[[[[[[[1]]]]]]]]]]]]', '{"__proto__":{"zqcanary":1}}', '"\\ud800"', '{"zqcanary":{"zqcanary":"zqcanary"}}', JSON.stringify(Array.from({ length: 60 }, () => 'zqcanary'))];
  const places = ['address', 'contact', 'contact.name', 'contact.phone', 'contact.zqcanary', 'kind', 'dealer', 'answers', 'answers.land', 'answers.land.slope', 'answers.land.area', 'answers.tasks', 'answers.zqcanary', 'answers.haul.delivery', 'answers.unsure', 'consent', 'consent.mail', 'language', 'units', 'seen', 'seen.catalogue', 'seen.catalogue.version', 'ticket', 'leftEmpty', 'work', 'format', 'zqcanary', 'x-zqcanary', 'constructor', 'prototype'];

  function body(nth: number): Buffer {
    let made = JSON.stringify(requestTo(`buyer${nth}@mail.example`, { consent: { mail: true, dealerCopy: false, statistics: false } }));
    const changes = 1 + Math.floor(chance() * 3);
    for (let change = 0; change < changes; change += 1) {
      const way = chance();
      if (way < 0.75) {
        const document = JSON.parse(made) as Record<string, unknown>;
        const parts = pick(places).split('.');
        let holder: Record<string, unknown> = document;
        for (const key of parts.slice(0, -1)) {
          if (typeof holder[key] !== 'object' || holder[key] === null) holder[key] = {};
          holder = holder[key] as Record<string, unknown>;
        }
        holder[parts.at(-1)!] = '%here%';
        const value = pick(values);
        made = JSON.stringify(document).replace('"%here%"', () => value);
        // What can't be parsed any more can't be changed by its places.
        if (value === '1e999' || value.includes('__proto__')) break;
      } else {
        const at = Math.floor(chance() * made.length);
        const bytes = Buffer.from(made);
        if (way < 0.85) bytes[at % bytes.length] = Math.floor(chance() * 256);
        return way < 0.95 ? bytes : bytes.subarray(0, at);
      }
    }
    return Buffer.from(made);
  }

  const headersOf = (): Record<string, string | undefined> => (chance() < 0.6 ? {} : {
    [pick(['origin', 'idempotency-key', 'content-type', 'authorization', 'sec-fetch-mode', 'x-forwarded-for', 'content-encoding', 'accept-language'])]: pick(['zqcanary', '', 'null', 'https://zqcanary.evil.test', 'Bearer zqcanary', 'gzip', 'application/json; charset=zqcanary', 'a'.repeat(5_000), undefined]),
  });

  test('are refused by a code of the list, are never said again, and store nothing but what is valid', async () => {
    const intake = new Intake({ store: relay.store, clock: relay.clock, keys: relay.keys, dealers: new Map([[aDealer.id, dealerOf({ ...aDealer, limits: { perHour: 100_000, perDay: 100_000 } })]]), mailsPerDay: 1e9, domain: 'relay.example' });
    const met = new Map<string, number>();
    const before = await stored();
    let taken = 0;
    async function one(nth: number): Promise<void> {
      const bytes = body(nth);
      const remoteAddress = `10.${(nth >> 16) & 255}.${(nth >> 8) & 255}.${nth & 255}`;
      let code: string;
      if (nth % throughServer === 0) {
        const { status, text: said } = await post(relay, bytes, { headers: headersOf(), remoteAddress });
        if (/canary/.test(said)) throw new Error(`said again: ${said}\nto ${bytes.toString()}`);
        code = status === 202 ? 'taken' : String((JSON.parse(said) as { code: string }).code);
        if (status >= 500 && status !== 503) throw new Error(`${status} to ${bytes.toString()}`);
      } else {
        code = await intake.take({ body: bytes, origin, idempotencyKey: randomUUID(), token: undefined, network: remoteAddress, fetchMetadata: true }).then(() => 'taken', (error: unknown) => {
          if (!(error instanceof Refusal)) throw error;
          if (/canary/.test(JSON.stringify(error.body))) throw new Error(`said again: ${JSON.stringify(error.body)}`);
          return error.code;
        });
      }
      if (code === 'taken') taken += 1;
      met.set(code, (met.get(code) ?? 0) + 1);
    }
    for (let nth = 0; nth < requests; nth += together) {
      await Promise.all(Array.from({ length: together }, (_, index) => one(nth + index)));
      relay.clock.pass(11 * minute);
    }
    expect([...met.keys()].filter((code) => code !== 'taken' && !(code in problems))).toEqual([]);
    expect([...met.keys()]).not.toContain('unavailable');
    expect(met.size).toBeGreaterThan(5);
    // A confirmation beside the mail it asks about, at most.
    expect(await stored() - before).toBeLessThanOrEqual(2 * taken);
    for (;;) {
      const claims = await relay.store.claim(200, relay.clock.now(), 3);
      if (claims.length === 0) break;
      for (const claim of claims) {
        const { document } = claim;
        expect(readRequest(document).value).toEqual(document);
        if (!isAddress(document.address) || (document.contact?.name !== undefined && !isName(document.contact.name)) || (document.contact?.phone !== undefined && !isPhone(document.contact.phone))) throw new Error(JSON.stringify(document));
        await relay.store.settle(claim, { state: 'sent', reply: '250' }, relay.clock.now());
      }
    }
  }, 3_600_000);

  test('leave no word of theirs in the log or the figures', async () => {
    expect(relay.logged.filter((line) => /canary|mail\.example|buyer\.example/.test(line))).toEqual([]);
    expect(await relay.metrics.registry.metrics()).not.toMatch(/canary/);
  });
});
