import { afterEach, describe, expect, test, vi } from 'vitest';
import { waitAfter } from '../../src/relay/sender/schedule.ts';
import type { Verdict } from '../../src/relay/sender/verdict.ts';
import { bench, plainMail, type Bench } from './sender-bench.ts';

const second = 1_000;
const minute = 60_000;
const hour = 60 * minute;

const later = (reason = 'rcpt 450', more: object = {}): Verdict => ({ kind: 'later', reason, unreached: false, slower: false, ...more });
const unreached = later('not reached', { unreached: true });
const sent: Verdict = { kind: 'sent', reply: '250 taken' };
const refused = (more: object = {}): Verdict => ({ kind: 'refused', reason: 'envelope 550', noSuchAddress: false, ours: false, ...more });

// Days go by here, a minute at a time.
vi.setConfig({ testTimeout: 60_000 });

let b: Bench;
afterEach(() => b.end());

describe('one mail', () => {
  test('is sent once, to its buyer alone, and no more after that', async () => {
    b = bench();
    await b.sender.start();
    await b.accept({ name: 'a', address: 'ann@buyer.example' });
    await b.pass(6 * hour);
    expect(b.transport.mails.map(({ envelope }) => envelope)).toEqual([{ from: 'b+token-a-buyer@bounce.relay.example', to: 'ann@buyer.example' }]);
    expect(await b.states()).toEqual({ sent: 1 });
  });

  test('a copy goes to the dealer’s own address, the question first to the buyer', async () => {
    b = bench();
    await b.sender.start();
    await b.accept({ name: 'a', roles: ['buyer', 'dealer', 'confirm'] });
    await b.pass(second);
    expect(b.transport.mails.map(({ envelope }) => envelope.to).sort()).toEqual(['ann@buyer.example', 'ann@buyer.example', 'sales@demo-lot.example']);
  });

  test('fault 12: a passing refusal is tried again after 1, 5 and 30 min, 2 h and every 4 h, under the same Message-ID, and given up after 72 h', async () => {
    b = bench();
    await b.sender.start();
    await b.accept({ name: 'a' });
    const at: number[] = [];
    b.transport.says = () => {
      at.push(b.time.elapsed());
      return later();
    };
    await b.pass(80 * hour);
    const gaps = at.slice(1).map((time, index) => time - at[index]!);
    // The brake tries it when its pause is over, where that is later.
    expect(gaps.slice(0, 4)).toEqual([minute, 5 * minute, 30 * minute, 2 * hour]);
    expect(new Set(gaps.slice(4))).toEqual(new Set([4 * hour]));
    expect(at.at(-1)).toBeGreaterThanOrEqual(72 * hour);
    expect(at.at(-1)).toBeLessThan(77 * hour);
    expect(await b.states()).toEqual({ expired: 1 });
    expect(new Set(b.transport.mails.map(({ name }) => name)).size).toBe(1);
    expect(new Set(b.transport.mails.map(({ raw }) => /^Date: .*$/m.exec(Buffer.from(raw).toString())![0])).size).toBe(1);
    expect(b.lines.filter(({ event }) => event === 'mail not sent')).toHaveLength(1);
  });

  test('waits differ by up to half', () => {
    expect(waitAfter(1, false, 0)).toBe(30 * second);
    expect(waitAfter(1, false, 1)).toBe(90 * second);
    expect(waitAfter(99, false, 0.5)).toBe(4 * hour);
    expect(waitAfter(99, true, 0.5)).toBe(5 * minute);
    b = bench();
  });

  test('fault 13: who isn’t there is refused once, and no more is sent to him for that dealer', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = () => refused({ noSuchAddress: true });
    await b.accept({ name: 'a' });
    await b.pass(6 * hour);
    await b.accept({ name: 'b' });
    await b.pass(hour);
    expect(b.transport.mails).toHaveLength(1);
    expect(await b.states()).toEqual({ refused: 1, suppressed: 1 });
    expect(await b.store.isStopped('hash of ann@buyer.example', 'other', b.time.now())).toBe(false);
  });

  describe('that ends without its buyer is told to the dealer, once', () => {
    const toDealer = () => b.transport.mails.filter(({ envelope }) => envelope.to === 'sales@demo-lot.example');

    test.each([['refused', refused({ noSuchAddress: true })], ['given up', later()]])('where it is %s', async (_what, says) => {
      b = bench();
      await b.sender.start();
      b.transport.says = ({ envelope }) => (envelope.to === 'ann@buyer.example' ? says : sent);
      await b.accept({ name: 'a', roles: ['buyer', 'dealer'] });
      await b.pass(100 * hour);
      expect(toDealer()).toHaveLength(2);
      expect(new Set(toDealer().map(({ name }) => name)).size).toBe(2);
      expect((await b.store.undelivered()).map(({ told }) => told)).toEqual(['sent']);
    });

    test('and isn’t where he was let have no copy, or where the person wants no mail', async () => {
      b = bench();
      await b.sender.start();
      b.transport.says = ({ envelope }) => (envelope.to === 'ann@buyer.example' ? refused({ noSuchAddress: true }) : sent);
      await b.accept({ name: 'a' });
      await b.pass(minute);
      await b.store.suppress('hash of bob@buyer.example', { all: true }, 'stop', b.time.now());
      await b.accept({ name: 'b', address: 'bob@buyer.example', roles: ['buyer', 'dealer'] });
      await b.pass(minute);
      expect(toDealer()).toHaveLength(1);
      expect(await b.states()).toEqual({ refused: 1, suppressed: 1, sent: 1 });
    });

    test('also where he can’t be reached at first', async () => {
      b = bench();
      await b.sender.start();
      let isUp = false;
      b.transport.says = ({ envelope }) => (envelope.to === 'ann@buyer.example' ? refused({ noSuchAddress: true }) : isUp ? sent : unreached);
      await b.accept({ name: 'a', roles: ['buyer', 'dealer'] });
      await b.pass(hour);
      isUp = true;
      await b.pass(5 * hour);
      expect((await b.store.undelivered()).map(({ told }) => told)).toEqual(['sent']);
    });
  });

  test('fault 14: what is refused for our sake is no fault of the person, and somebody is called', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = () => refused({ reason: 'policy', ours: true });
    await b.accept({ name: 'a' });
    await b.pass(hour);
    expect(await b.states()).toEqual({ refused: 1 });
    expect(await b.store.isStopped('hash of ann@buyer.example', 'demo-lot', b.time.now())).toBe(false);
    expect(b.lines.filter(({ level }) => level === 'error')).toHaveLength(1);
  });

  test('fault 14: where policy refuses one after the other it is us, and the rest waits', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = () => refused({ reason: 'policy', ours: true });
    for (let index = 0; index < 20; index++) await b.accept({ name: `m${index}`, address: `p${index}@d${index}.example` });
    await b.pass(30 * second);
    expect((await b.states()).refused).toBe(2);
    expect((await b.states()).queued).toBe(18);
    expect(b.paused).toEqual(['all policy']);
    b.transport.says = () => sent;
    await b.pass(10 * minute);
    expect(await b.states()).toEqual({ refused: 2, sent: 18 });
  });

  test('fault 15: a wrong password refuses nothing; all is sent once it is mended', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = () => ({ kind: 'closed', reason: 'login', reply: '535 no' });
    for (let index = 0; index < 30; index++) await b.accept({ name: `m${index}`, address: `p${index}@d${index}.example` });
    await b.pass(hour);
    expect(await b.states()).toEqual({ queued: 30 });
    expect(b.transport.mails.length).toBeLessThan(30);
    expect(b.lines.some(({ level, event }) => level === 'error' && event === 'the way out is closed')).toBe(true);
    b.transport.says = () => sent;
    await b.pass(10 * minute);
    expect(await b.states()).toEqual({ sent: 30 });
  });

  test('fault 16: what was never answered goes out once more, after a quarter of an hour, under the same Message-ID and Date', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = (_mail, count) => (count === 1 ? { kind: 'unsure', reason: 'no answer' } : sent);
    await b.accept({ name: 'a' });
    await b.pass(15 * minute - second);
    expect(b.transport.mails).toHaveLength(1);
    expect(await b.states()).toEqual({ unsure: 1 });
    await b.pass(2 * second);
    expect(b.transport.mails).toHaveLength(2);
    const heads = b.transport.mails.map(({ raw }) => /^(?:Date|Message-ID): .*$/gim.exec(Buffer.from(raw).toString())![0]);
    expect(heads[0]).toBe(heads[1]);
    expect(await b.states()).toEqual({ sent: 1 });
  });

  test('fault 16: twice without an answer waits for a person, and goes out no third time', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = () => ({ kind: 'unsure', reason: 'no answer' });
    await b.accept({ name: 'a' });
    await b.pass(6 * hour);
    expect(b.transport.mails).toHaveLength(2);
    expect(await b.states()).toEqual({ held: 1 });
  });

  test('fault 34: what can’t be made is held at once, and others flow', async () => {
    b = bench({ compose: async (what) => {
      if (what.document.address.startsWith('poison')) throw new Error('no');
      return plainMail(what);
    } });
    await b.sender.start();
    await b.accept({ name: 'a', address: 'poison@buyer.example' });
    await b.accept({ name: 'b' });
    await b.pass(6 * hour);
    expect(await b.states()).toEqual({ held: 1, sent: 1 });
    expect((await b.store.held()).map(({ reason }) => reason)).toEqual(['can’t be made']);
    expect(await b.store.sendAgain('all', b.time.now())).toBe(1);
  });

  test('a dealer who isn’t served any more has his mail held', async () => {
    b = bench();
    await b.sender.start();
    await b.accept({ name: 'a', dealer: 'gone' });
    await b.pass(second);
    expect((await b.store.held()).map(({ reason }) => reason)).toEqual(['no such dealer']);
  });

  test('goal 13: who stops it while his mail is made gets none', async () => {
    let made = () => {};
    const ready = new Promise<void>((resolve) => { made = resolve; });
    let begun = () => {};
    const asked = new Promise<void>((resolve) => { begun = resolve; });
    b = bench({ compose: async (what) => {
      begun();
      await ready;
      return plainMail(what);
    } });
    await b.sender.start();
    await b.accept({ name: 'a' });
    await asked;
    await b.store.stop('token-a-buyer', 'stop', b.time.now());
    made();
    await b.quiet();
    expect(b.transport.mails).toEqual([]);
    expect(await b.states()).toEqual({ suppressed: 1 });
  });
});

describe('a queue', () => {
  test('fault 10: refused for an hour, then up: all sent soon, none twice, new before old', async () => {
    b = bench({ most: 8 });
    await b.sender.start();
    b.transport.says = () => unreached;
    const count = Number(process.env.OUTAGE ?? 300);
    for (let index = 0; index < count; index++) await b.accept({ name: `m${index}`, address: `p${index}@d${index % 40}.example` });
    await b.pass(hour);
    expect(await b.states()).toEqual({ queued: count });
    // The brake has kept attempts few.
    expect(b.transport.mails.length).toBeLessThan(100);
    b.transport.mails.length = 0;
    b.transport.says = async () => {
      await new Promise<void>((resolve) => void b.time.after(100, resolve));
      return sent;
    };
    const up = b.time.elapsed();
    await b.pass(5 * minute);
    await b.accept({ name: 'new', address: 'new@buyer.example' });
    await b.pass(5 * second);
    expect(b.transport.mails.some(({ envelope }) => envelope.to === 'new@buyer.example')).toBe(true);
    await b.pass(15 * minute - (b.time.elapsed() - up));
    expect(await b.states()).toEqual({ sent: count + 1 });
    expect(b.transport.mails).toHaveLength(count + 1);
    expect(new Set(b.transport.mails.map(({ name }) => name)).size).toBe(count + 1);
  }, 600_000);

  test('a new one overtakes a backlog', async () => {
    b = bench({ most: 2 });
    for (let index = 0; index < 100; index++) await b.accept({ name: `m${index}`, address: `p${index}@d${index}.example` });
    b.time.advance(minute);
    b.transport.says = async () => {
      await new Promise<void>((resolve) => void b.time.after(second, resolve));
      return sent;
    };
    await b.sender.start();
    await b.pass(3 * second);
    await b.accept({ name: 'new', address: 'new@buyer.example' });
    await b.pass(5 * second);
    expect(b.transport.mails.some(({ envelope }) => envelope.to === 'new@buyer.example')).toBe(true);
    // What waited longest goes on too.
    expect(b.transport.mails.some(({ envelope }) => envelope.to === 'p3@d3.example')).toBe(true);
  });

  test('no domain gets more than two at once to begin with, and never more than all there is', async () => {
    b = bench({ most: 6 });
    for (let index = 0; index < 40; index++) await b.accept({ name: `m${index}`, address: `p${index}@one.example` });
    await b.accept({ name: 'other', address: 'x@two.example' });
    const open: (() => void)[] = [];
    b.transport.says = () => new Promise<Verdict>((resolve) => { open.push(() => resolve(sent)); });
    await b.sender.start();
    await b.quiet();
    expect(b.transport.mails.map(({ envelope }) => envelope.to.split('@')[1]).sort()).toEqual(['one.example', 'one.example', 'two.example']);
    while (open.length > 0) {
      open.shift()!();
      await b.quiet();
    }
    expect(await b.states()).toEqual({ sent: 41 });
    expect(b.transport.mostTo.get('one.example')).toBeGreaterThan(2);
    expect(b.transport.mostTo.get('one.example')).toBeLessThanOrEqual(6);
  });

  test('fault 12: what says 421 gets half as much at once', async () => {
    b = bench({ most: 6 });
    for (let index = 0; index < 30; index++) await b.accept({ name: `m${index}`, address: `p${index}@one.example` });
    const open: (() => void)[] = [];
    b.transport.says = async (_mail, count) => (count <= 2 ? later('421', { slower: true }) : new Promise<Verdict>((resolve) => { open.push(() => resolve(sent)); }));
    b.transport.onAbort = () => { for (const end of open) end(); };
    await b.sender.start();
    await b.quiet();
    expect(b.transport.busy).toBe(1);
  });

  test('what a provider takes in a second, a minute and a day isn’t exceeded', async () => {
    b = bench({ rates: { perSecond: 3, perMinute: 20, perDay: 50 } });
    const at: number[] = [];
    b.transport.says = () => {
      at.push(b.time.elapsed());
      return sent;
    };
    for (let index = 0; index < 70; index++) await b.accept({ name: `m${index}`, address: `p${index}@d${index}.example` });
    await b.sender.start();
    await b.pass(23 * hour);
    expect(at).toHaveLength(50);
    const mostIn = (length: number) => Math.max(...at.map((from) => at.filter((time) => time >= from && time < from + length).length));
    expect([mostIn(second), mostIn(minute)]).toEqual([3, 20]);
    await b.pass(2 * hour);
    expect(at).toHaveLength(70);
  });

  test('twenty failures one after the other hold a dealer back, and no other', async () => {
    b = bench({ dealers: ['bad', 'good'], most: 1 });
    b.transport.says = ({ envelope }) => (envelope.to.startsWith('bad') ? refused() : sent);
    for (let index = 0; index < 40; index++) {
      await b.accept({ name: `b${index}`, dealer: 'bad', address: `bad${index}@d${index}.example` });
      await b.accept({ name: `g${index}`, dealer: 'good', address: `good${index}@d${index}.example` });
    }
    await b.sender.start();
    await b.pass(minute);
    expect(await b.states()).toEqual({ refused: 20, sent: 40, queued: 20 });
    expect(b.paused).toEqual(['dealer failures']);
    // Half an hour later one is tried.
    await b.pass(30 * minute);
    expect(await b.states()).toEqual({ refused: 21, sent: 40, queued: 19 });
  });

  test('fifty failures one after the other hold all back, and one that gets through lets all go on', async () => {
    const dealers = Array.from({ length: 100 }, (_, index) => `d${index}`);
    b = bench({ dealers, most: 1 });
    b.transport.says = () => later();
    for (const dealer of dealers) await b.accept({ name: dealer, dealer, address: `${dealer}@${dealer}.example` });
    await b.sender.start();
    await b.pass(30 * second);
    expect(b.transport.mails).toHaveLength(50);
    expect(b.paused).toEqual(['all failures']);
    b.transport.says = () => sent;
    await b.pass(10 * minute);
    expect(await b.states()).toEqual({ sent: 100 });
  });

  test('fault 31: clocks that jump send nothing early, in no flood, and give nothing up', async () => {
    b = bench();
    await b.sender.start();
    b.transport.says = () => later();
    await b.accept({ name: 'a' });
    await b.pass(second);
    b.time.offset = -10 * 365 * 24 * hour;
    await b.pass(2 * minute);
    // Put off for years by what the clock said before, it is due now and no sooner than it would have been.
    expect(b.transport.mails.length).toBeGreaterThanOrEqual(2);
    expect(b.transport.mails.length).toBeLessThan(5);
    b.time.offset = 10 * 365 * 24 * hour;
    await b.pass(minute);
    expect(b.transport.mails.length).toBeLessThan(7);
    expect((await b.states()).expired).toBeUndefined();
    b.transport.says = () => sent;
    await b.pass(5 * hour);
    expect(await b.states()).toEqual({ sent: 1 });
  });
});

describe('stopping', () => {
  test('fault 32: what is on its way ends first, and nothing new is begun', async () => {
    b = bench({ most: 1 });
    let end = (_verdict: Verdict) => {};
    b.transport.says = () => new Promise<Verdict>((resolve) => { end = resolve; });
    await b.accept({ name: 'a' });
    await b.accept({ name: 'b' });
    await b.sender.start();
    await b.quiet();
    const stopping = b.sender.stop();
    await b.quiet();
    expect(b.transport.aborted).toBe(false);
    end(sent);
    await stopping;
    expect(await b.states()).toEqual({ sent: 1, queued: 1 });
    expect(b.transport.mails).toHaveLength(1);
  });

  test('fault 32: after 25 s it is broken off, and how far it had come is written', async () => {
    b = bench({ most: 2 });
    const ends: ((verdict: Verdict) => void)[] = [];
    b.transport.says = () => new Promise<Verdict>((resolve) => { ends.push(resolve); });
    b.transport.onAbort = () => {
      ends[0]?.(later('broken off', { unreached: true }));
      ends[1]?.({ kind: 'unsure', reason: 'no answer' });
    };
    await b.accept({ name: 'a', address: 'a@one.example' });
    await b.accept({ name: 'b', address: 'b@two.example' });
    await b.sender.start();
    await b.quiet();
    const stopping = b.sender.stop();
    await b.pass(25 * second - 1);
    expect(b.transport.aborted).toBe(false);
    await b.pass(1);
    await stopping;
    expect(await b.states()).toEqual({ queued: 1, unsure: 1 });
  });
});
