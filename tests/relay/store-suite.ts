import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { sha256 } from '../../src/relay/hashes.ts';
import type { Claim, Store } from '../../src/relay/store/store.ts';
import { newRequest, noon, take } from './store-requests.ts';

/** A store that can be opened again on what it kept, as after a kill or a restart. */
export interface Kept {
  store: Store;
  reopen(): Promise<Store>;
  /** Takes all of it away. */
  end(): Promise<void>;
}

const minute = 60_000;
const day = 86_400_000;
const never = 3;

/** What every store has to do, whatever it keeps things on. */
export function storeSuite(name: string, open: () => Promise<Kept>): void {
  describe(name, () => {
    let kept: Kept;
    let store: Store;
    beforeEach(async () => {
      kept = await open();
      store = kept.store;
    });
    afterEach(() => kept.end());

    const accept = (wanted: Parameters<typeof newRequest>[0], now = noon) => store.accept(newRequest(wanted), [], now, now - 10 * minute);
    const claimOne = async (now = noon): Promise<Claim> => {
      const [claim] = await store.claim(1, now, never);
      return claim!;
    };
    const states = async (now = noon) => Object.fromEntries(Object.entries((await store.depth(now)).byState).filter(([, count]) => count > 0));

    describe('accepting', () => {
      test('a request is there after the store was opened again, as it was handed in', async () => {
        const handedIn = newRequest({ name: 'a', roles: ['buyer', 'dealer'] });
        expect(await store.accept(handedIn, [], noon, noon)).toBe('stored');
        store = await kept.reopen();
        const claims = await store.claim(9, noon, never);
        expect(claims.map(({ role, request, messageId, token, document, dealer, acceptedAt, attempt, crashes, wasUnsure }) => ({ role, request, messageId, token, document, dealer, acceptedAt, attempt, crashes, wasUnsure }))
          .sort((a, b) => (a.role < b.role ? -1 : 1)))
          .toEqual(['buyer', 'dealer'].map((role) => ({
            role, request: 'a', messageId: `<a.${role}@relay.example>`, token: `token-a-${role}`, document: handedIn.request, dealer: 'demo-lot', acceptedAt: noon, attempt: 1, crashes: 0, wasUnsure: false,
          })));
      });

      test('the same key with the same body is the same request, with another body another', async () => {
        await accept({ name: 'a' });
        expect(await accept({ name: 'a' })).toBe('repeated');
        expect(await store.accept({ ...newRequest({ name: 'a' }), fingerprint: 'other' }, [], noon, noon)).toBe('other-body');
        expect(await states()).toEqual({ queued: 1 });
      });

      test('one alike a little earlier is the same request under any key, and stays so for that key', async () => {
        await accept({ name: 'a', likeness: 'same' });
        expect(await accept({ name: 'b', likeness: 'same' }, noon + 9 * minute)).toBe('repeated');
        expect(await accept({ name: 'b', likeness: 'same' }, noon + 60 * minute)).toBe('repeated');
        expect(await accept({ name: 'c', likeness: 'same' }, noon + 11 * minute)).toBe('stored');
      });

      test('fifty handed in at once with one key are stored once', async () => {
        const answers = await Promise.all(Array.from({ length: 50 }, () => accept({ name: 'a' })));
        expect(answers.filter((answer) => answer === 'stored')).toHaveLength(1);
        expect(answers.filter((answer) => answer === 'repeated')).toHaveLength(49);
        expect(await states()).toEqual({ queued: 1 });
      });

      test('limits are taken with the request or not at all, and fill up again', async () => {
        const takes = [take('narrow', 2, 60 * minute), take('wide', 100, 60 * minute)];
        const withLimits = (name: string, now: number) => store.accept(newRequest({ name }), takes, now, now);
        expect(await withLimits('a', noon)).toBe('stored');
        expect(await withLimits('b', noon)).toBe('stored');
        expect(await withLimits('c', noon)).toEqual({ limited: true, after: 30 * minute });
        expect(await states()).toEqual({ queued: 2 });
        // A repeated one takes nothing.
        expect(await withLimits('a', noon)).toBe('repeated');
        expect(await withLimits('c', noon + 30 * minute)).toBe('stored');
        // Of what was refused nothing was taken: 97 are left of the wide one.
        const rest = Array.from({ length: 98 }, () => take('wide', 100, 60 * minute));
        expect(await store.accept(newRequest({ name: 'd' }), rest, noon + 30 * minute, noon)).toBe('stored');
      });

      test('a bucket that is taken from twice at once has to hold both', async () => {
        const twice = [take('day', 3, day), take('day', 3, day)];
        expect(await store.accept(newRequest({ name: 'a' }), twice, noon, noon)).toBe('stored');
        expect(await store.accept(newRequest({ name: 'b' }), twice, noon, noon)).toEqual({ limited: true, after: day / 3 });
        expect(await store.accept(newRequest({ name: 'c' }), [take('day', 3, day)], noon, noon)).toBe('stored');
      });

      test('fault 31: a clock put back fills no bucket and empties none', async () => {
        const one = [take('one', 1, 60 * minute)];
        expect(await store.accept(newRequest({ name: 'a' }), one, noon, noon)).toBe('stored');
        expect(await store.accept(newRequest({ name: 'b' }), one, noon - 10 * 365 * day, noon)).toEqual({ limited: true, after: 60 * minute });
        expect(await store.accept(newRequest({ name: 'c' }), one, noon + 60 * minute, noon)).toBe('stored');
      });

      test('in any stretch of time no more comes out of a bucket than it holds and what flowed in', async () => {
        await fc.assert(fc.asyncProperty(fc.integer({ min: 1, max: 5 }), fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 25 }), fc.uuid(), async (most, steps, bucket) => {
          const fills = 100;
          const taken: number[] = [];
          let now = noon;
          for (const [index, step] of steps.entries()) {
            now += step;
            if (await store.accept(newRequest({ name: `${bucket} ${index}` }), [take(bucket, most, fills)], now, now) === 'stored') taken.push(now);
          }
          for (const [index, from] of taken.entries()) {
            for (const [more, to] of taken.slice(index).entries()) expect(more + 1).toBeLessThanOrEqual(most + Math.floor((to - from) * most / fills + 1e-9));
          }
        }), { numRuns: 20 });
      });
    });

    describe('claiming', () => {
      test('what became due last and what waited longest go by turns', async () => {
        for (let index = 0; index < 6; index++) await accept({ name: `m${index}` }, noon + index);
        const order: string[] = [];
        for (let index = 0; index < 6; index++) order.push((await claimOne(noon + 10)).request);
        expect(order.slice(0, 2).sort()).toEqual(['m0', 'm5']);
        expect(order.slice(2, 4).sort()).toEqual(['m1', 'm4']);
        const both = await store.claim(9, noon + 10, never);
        expect(both).toEqual([]);
      });

      test('fault 10: half of a claim is the newest, half what waits longest', async () => {
        for (let index = 0; index < 100; index++) await accept({ name: `m${index}` }, noon + index);
        const claims = await store.claim(10, noon + 1_000, never);
        expect(claims.map(({ request }) => request).sort()).toEqual(['m0', 'm1', 'm2', 'm3', 'm4', 'm95', 'm96', 'm97', 'm98', 'm99']);
      });

      test('nothing is claimed twice, however many ask at once', async () => {
        for (let index = 0; index < 20; index++) await accept({ name: `m${index}` });
        const claims = (await Promise.all(Array.from({ length: 15 }, () => store.claim(2, noon, never)))).flat();
        expect(new Set(claims.map(({ message }) => message)).size).toBe(20);
        expect(claims).toHaveLength(20);
      });

      test('nothing is given out before its time, and the store says when that is', async () => {
        await accept({ name: 'a' });
        expect(await store.settle(await claimOne(), { state: 'queued', at: noon + 5 * minute, reason: 'later' }, noon)).toBe(true);
        expect(await store.nextDue()).toBe(noon + 5 * minute);
        expect(await store.claim(1, noon + 5 * minute - 1, never)).toEqual([]);
        expect(await claimOne(noon + 5 * minute)).toMatchObject({ request: 'a', attempt: 2, messageId: '<a.buyer@relay.example>', acceptedAt: noon });
        expect(await store.nextDue()).toBeUndefined();
      });

      test('dealers and domains can be left out', async () => {
        await accept({ name: 'a', dealer: 'one', address: 'x@busy.example' });
        await accept({ name: 'b', dealer: 'two', address: 'x@free.example', roles: ['dealer'] });
        expect(await store.claim(9, noon, never, { dealers: ['one'], destinations: ['dealer:two'] })).toEqual([]);
        expect(await store.claim(9, noon, never, { destinations: ['busy.example', 'dealer:two'] })).toEqual([]);
        expect((await store.claim(9, noon, never, { dealers: ['three'], destinations: ['busy.example'] })).map(({ request }) => request)).toEqual(['b']);
        expect((await store.claim(9, noon, never)).map(({ request }) => request)).toEqual(['a']);
      });

      test('a fence that is no longer the message’s writes nothing', async () => {
        await accept({ name: 'a' });
        const late = await claimOne();
        await store.release(noon + minute);
        const next = await claimOne(noon + minute);
        expect(next.fence).toBeGreaterThan(late.fence);
        expect(await store.settle(late, { state: 'refused', reason: 'late' }, noon + 2 * minute)).toBe(false);
        expect(await states()).toEqual({ sending: 1 });
        expect(await store.settle(next, { state: 'sent', reply: '250' }, noon + 2 * minute)).toBe(true);
        expect(await store.settle(next, { state: 'refused', reason: 'again' }, noon + 3 * minute)).toBe(false);
        expect(await states()).toEqual({ sent: 1 });
      });

      test('fault 34: a mail claimed three times without an outcome is held, and others flow', async () => {
        await accept({ name: 'poison' });
        for (const crashes of [0, 1, 2]) {
          expect(await claimOne()).toMatchObject({ request: 'poison', crashes, attempt: crashes + 1 });
          store = await kept.reopen();
          expect(await store.release(noon)).toBe(1);
        }
        await accept({ name: 'other' });
        expect((await store.claim(9, noon, never)).map(({ request }) => request)).toEqual(['other']);
        expect(await store.held()).toEqual([{ message: expect.any(String), request: 'poison', dealer: 'demo-lot', role: 'buyer', reason: 'crashes', since: noon }]);
      });

      test('an outcome sets the count of crashes back', async () => {
        await accept({ name: 'a' });
        await claimOne();
        await store.release(noon);
        const claim = await claimOne();
        expect(claim.crashes).toBe(1);
        await store.settle(claim, { state: 'queued', at: noon, reason: 'later' }, noon);
        expect((await claimOne()).crashes).toBe(0);
      });

      test('a claim knows that an earlier one wasn’t answered, over kills', async () => {
        await accept({ name: 'a' });
        await store.settle(await claimOne(), { state: 'unsure', at: noon + 15 * minute, reason: 'no answer' }, noon);
        expect(await states()).toEqual({ unsure: 1 });
        expect(await store.claim(1, noon + 14 * minute, never)).toEqual([]);
        expect((await claimOne(noon + 15 * minute)).wasUnsure).toBe(true);
        store = await kept.reopen();
        await store.release(noon + 16 * minute);
        expect((await claimOne(noon + 16 * minute)).wasUnsure).toBe(true);
      });

      test('claims whose worker gives no sign are freed, those of a live one are not', async () => {
        await accept({ name: 'a' });
        const claim = await claimOne();
        await store.beat(noon + 50_000);
        expect(await store.release(noon + 90_000, 60_000)).toBe(0);
        expect(await store.release(noon + 120_000, 60_000)).toBe(1);
        expect(await store.settle(claim, { state: 'sent', reply: '250' }, noon + 120_000)).toBe(false);
      });

      test('held mail is queued again with the same Message-ID, one by one or all', async () => {
        for (const name of ['a', 'b', 'c']) {
          await accept({ name });
          await store.settle(await claimOne(), { state: 'held', reason: 'can’t be made' }, noon);
        }
        const [first] = await store.held();
        expect(await store.sendAgain([first!.message], noon + minute)).toBe(1);
        expect(await claimOne(noon + minute)).toMatchObject({ message: first!.message, messageId: `<${first!.request}.buyer@relay.example>`, crashes: 0 });
        expect(await store.sendAgain('all', noon + minute)).toBe(2);
        expect(await store.sendAgain('all', noon + minute)).toBe(0);
        expect(await store.held()).toEqual([]);
      });

      test('fault 31: what a wrong clock put off for years is due now', async () => {
        await accept({ name: 'a' }, noon + 10 * 365 * day);
        expect(await claimOne(noon)).toMatchObject({ request: 'a' });
      });

      test('how much waits is told by state and age', async () => {
        await accept({ name: 'old' }, noon - 10 * minute);
        await accept({ name: 'new' }, noon - 1_000);
        await accept({ name: 'question', state: 'unconfirmed' });
        const { byAge, oldest } = await store.depth(noon);
        expect(oldest).toBe(10 * minute);
        expect(byAge.map(({ upTo, count }) => [upTo / minute, count])).toEqual([[1, 1], [5, 1], [20, 2], [80, 2], [320, 2], [1_280, 2]]);
        expect(await states()).toEqual({ queued: 2, unconfirmed: 1 });
      });

      test('what is to go out is counted, and nothing else', async () => {
        expect(await store.waiting()).toBe(0);
        for (const [name, state] of [['a', 'queued'], ['b', 'queued'], ['c', 'queued'], ['question', 'unconfirmed'], ['aside', 'held']] as const) await accept({ name, state });
        const [one, another] = await store.claim(2, noon, never);
        await store.settle(one!, { state: 'sent', reply: '250' }, noon);
        await store.settle(another!, { state: 'unsure', at: noon + minute, reason: 'no answer' }, noon);
        await claimOne();
        expect(await states()).toEqual({ sending: 1, unsure: 1, sent: 1, unconfirmed: 1, held: 1 });
        expect(await store.waiting()).toBe(2);
      });
    });

    describe('word to the dealer', () => {
      const word = (name: string) => ({ messageId: `<word-${name}@relay.example>`, token: `token-word-${name}` });
      const buyers = async (now = noon) => (await store.claim(9, now, never)).find(({ role }) => role === 'buyer')!;

      test('is queued with the outcome, once, as a mail of its own that knows what it is', async () => {
        await accept({ name: 'a', roles: ['buyer', 'dealer'] });
        const claims = await store.claim(9, noon, never);
        expect(claims.map(({ role, isWord }) => [role, isWord]).sort()).toEqual([['buyer', false], ['dealer', false]]);
        const buyer = claims.find(({ role }) => role === 'buyer')!;
        expect(await store.settle(buyer, { state: 'refused', reason: 'rcpt 550' }, noon + minute, word('a'))).toBe(true);
        expect(await store.settle(buyer, { state: 'refused', reason: 'rcpt 550' }, noon + minute, word('b'))).toBe(false);
        expect(await store.tell('a', word('c'), noon + minute)).toBe(false);
        expect(await store.undelivered()).toEqual([{ message: buyer.message, request: 'a', dealer: 'demo-lot', state: 'refused', reason: 'rcpt 550', since: noon + minute, told: 'queued' }]);
        const [told, ...more] = await store.claim(9, noon + minute, never);
        expect(more).toEqual([]);
        expect(told).toMatchObject({ ...word('a'), request: 'a', role: 'dealer', isWord: true, recipient: 'hash of demo-lot', acceptedAt: noon + minute, attempt: 1, document: buyer.document });
        await store.settle(told!, { state: 'sent', reply: '250' }, noon + 2 * minute);
        expect((await store.undelivered())[0]).toMatchObject({ told: 'sent' });
      });

      test('is none where the buyer let him have no copy, where the request was erased, and where there was no such request', async () => {
        await accept({ name: 'a' });
        await store.settle(await buyers(), { state: 'expired', reason: 'rcpt 450' }, noon, word('a'));
        await accept({ name: 'b', roles: ['buyer', 'dealer'] });
        await store.erase('hash of ann@buyer.example', 'ann@buyer.example', noon);
        expect([await store.tell('a', word('a'), noon), await store.tell('b', word('b'), noon), await store.tell('c', word('c'), noon)]).toEqual([false, false, false]);
        expect(await store.claim(9, noon, never)).toEqual([]);
        expect((await store.undelivered()).map(({ request, state, told }) => [request, state, told])).toEqual([['a', 'expired', undefined]]);
      });

      test('is told by many at once, and queued once', async () => {
        await accept({ name: 'a', roles: ['buyer', 'dealer'] });
        const told = await Promise.all(Array.from({ length: 8 }, (_, index) => store.tell('a', word(String(index)), noon)));
        expect(told.filter(Boolean)).toHaveLength(1);
        expect(await states()).toEqual({ queued: 3 });
      });

      test('of a mail somebody else has is not stored', async () => {
        await accept({ name: 'a', roles: ['buyer', 'dealer'] });
        const late = await buyers();
        await store.release(noon);
        expect(await store.settle(late, { state: 'expired', reason: 'late' }, noon, word('a'))).toBe(false);
        expect(await states()).toEqual({ queued: 2 });
      });
    });

    describe('stopping', () => {
      test('a stopped person’s mail is stored as suppressed and never given out', async () => {
        await accept({ name: 'a' });
        expect(await store.stop('token-a-buyer', 'stop', noon)).toEqual({ recipient: 'hash of ann@buyer.example', dealer: 'demo-lot' });
        expect(await store.stop('token-a-buyer', 'stop', noon)).toEqual({ recipient: 'hash of ann@buyer.example', dealer: 'demo-lot' });
        expect(await accept({ name: 'b', dealer: 'elsewhere', roles: ['buyer', 'dealer'] })).toBe('stored');
        expect((await store.claim(9, noon, never)).map(({ role }) => role)).toEqual(['dealer']);
        expect(await states()).toEqual({ suppressed: 2, sending: 1 });
      });

      test('an unknown token stops and confirms nothing', async () => {
        await accept({ name: 'a' });
        expect(await store.stop('token', 'stop', noon)).toBeUndefined();
        expect(await store.confirm('', noon)).toBe(false);
        expect(await states()).toEqual({ queued: 1 });
      });

      test('whoever is stopped while a mail waits for its next try gets no more', async () => {
        await accept({ name: 'a' });
        const claim = await claimOne();
        await store.stop(claim.token, 'not-asked', noon);
        expect(await store.isStopped(claim.recipient, 'any', noon)).toBe(true);
        await store.settle(claim, { state: 'queued', at: noon, reason: 'later' }, noon);
        expect(await store.claim(9, noon, never)).toEqual([]);
        expect(await states()).toEqual({ suppressed: 1 });
      });

      test('a bounce counts for its dealer, and for so long; a person’s word has no end', async () => {
        await store.suppress('someone', { dealer: 'one' }, 'bounce', noon, noon + day);
        expect(await store.isStopped('someone', 'one', noon)).toBe(true);
        expect(await store.isStopped('someone', 'two', noon)).toBe(false);
        expect(await store.isStopped('someone', 'one', noon + day)).toBe(false);
        await store.suppress('someone', { all: true }, 'stop', noon);
        await store.suppress('someone', { all: true }, 'import', noon, noon + day);
        expect(await store.isStopped('someone', 'two', noon + 1_000 * day)).toBe(true);
      });

      test('what waits for a yes is sent after it, once', async () => {
        await accept({ name: 'a', state: 'unconfirmed', roles: ['buyer', 'dealer'] });
        expect(await store.claim(9, noon, never)).toEqual([]);
        expect(await store.confirm('token-a-buyer', noon + minute)).toBe(true);
        expect(await store.claim(9, noon + minute, never)).toHaveLength(2);
        expect(await store.confirm('token-a-buyer', noon + minute)).toBe(true);
        expect(await states()).toEqual({ sending: 2 });
      });
    });

    /** What goes on at once: each is begun, and all are waited for at the end, so that stops fall between claims and outcomes. */
    test('goal 13: a stopped person is never given out, however stops and claims fall', async () => {
      const runs = Number(process.env.STOPS ?? 150);
      const people = ['ann', 'bob', 'cy'];
      const person = fc.constantFrom(...people);
      const step = fc.oneof(
        fc.record({ do: fc.constant('accept' as const), person }), fc.record({ do: fc.constant('stop' as const), person }),
        fc.record({ do: fc.constant('claim' as const), most: fc.integer({ min: 1, max: 3 }) }), fc.record({ do: fc.constant('later' as const) }), fc.record({ do: fc.constant('kill' as const) }),
      );
      let run = 0;
      /** Over all runs, for what is left of one is given out in the next. */
      const stopped = new Set<string>();
      await fc.assert(fc.asyncProperty(fc.array(fc.tuple(step, fc.boolean()), { maxLength: 30 }), async (steps) => {
        run += 1;
        const claims: Claim[] = [];
        const wrong: string[] = [];
        const underWay: Promise<unknown>[] = [];
        for (const [index, [each, waits]] of steps.entries()) {
          const doing = (async () => {
            if (each.do === 'accept') await accept({ name: `${run} ${index}`, recipient: `${run} ${each.person}` });
            if (each.do === 'stop') {
              await store.suppress(`${run} ${each.person}`, { all: true }, 'stop', noon);
              stopped.add(`${run} ${each.person}`);
            }
            if (each.do === 'claim') {
              // Whoever's stop was answered before this was asked must not be in it.
              const before = new Set(stopped);
              const given = await store.claim(each.most, noon, Infinity);
              wrong.push(...given.filter(({ recipient }) => before.has(recipient)).map(({ request }) => request));
              claims.push(...given);
            }
            if (each.do === 'later') for (const claim of claims.splice(0)) await store.settle(claim, { state: 'queued', at: noon, reason: 'later' }, noon);
            if (each.do === 'kill') await store.release(noon);
          })();
          underWay.push(doing);
          if (waits) await doing;
        }
        await Promise.all(underWay);
        expect(wrong).toEqual([]);
        await store.release(noon);
        for (const claim of await store.claim(1_000, noon, Infinity)) expect(stopped).not.toContain(claim.recipient);
      }), { numRuns: runs });
    }, 120_000);

    describe('catalogues', () => {
      const catalogue = (hash: string, version: string | undefined, text = hash) => ({ dealer: 'demo-lot', hash, version, asOf: '2026-05-12', text });
      test('a version a buyer saw is found, and the newest where none is named', async () => {
        await store.keepCatalogue(catalogue('h1', 'v1'), noon);
        await store.keepCatalogue(catalogue('h2', 'v2'), noon + 1);
        expect(await store.catalogueOf('demo-lot', 'v1')).toEqual(catalogue('h1', 'v1'));
        expect(await store.catalogueOf('demo-lot', undefined)).toEqual(catalogue('h2', 'v2'));
        expect(await store.catalogueOf('demo-lot', 'v3')).toBeUndefined();
        expect(await store.catalogueOf('other', undefined)).toBeUndefined();
        // Seen again it is the newest again.
        await store.keepCatalogue(catalogue('h1', 'v1'), noon + 2);
        expect((await store.catalogueOf('demo-lot', undefined))?.hash).toBe('h1');
      });

      test('old ones go, but never the newest', async () => {
        for (const [index, hash] of ['h1', 'h2', 'h3'].entries()) await store.keepCatalogue(catalogue(hash, hash), noon + index * day);
        await store.tidy(noon + 100 * day, { bodies: day, rows: 30 * day, catalogues: 30 * day, expiresAfter: 30 * day });
        expect(await store.catalogueOf('demo-lot', 'h1')).toBeUndefined();
        expect((await store.catalogueOf('demo-lot', undefined))?.hash).toBe('h3');
      });
    });

    describe('keeping and forgetting', () => {
      const keep = { bodies: 7 * day, rows: 30 * day, catalogues: 30 * day, expiresAfter: 3 * day };

      test('a body goes after its end, the key and the state later, and nothing before an end', async () => {
        await accept({ name: 'done' });
        await store.settle(await claimOne(), { state: 'sent', reply: '250' }, noon);
        await accept({ name: 'waiting' });
        await accept({ name: 'aside' });
        const aside = (await store.claim(9, noon, never)).find(({ request }) => request === 'aside')!;
        await store.settle(aside, { state: 'held', reason: 'can’t be made' }, noon);
        const about = () => store.exportOf('hash of ann@buyer.example', 'ann@buyer.example') as Promise<{ request: string; document: unknown }[]>;

        await store.tidy(noon + 8 * day, keep);
        expect((await about()).map(({ request, document }) => [request, document !== null]).sort()).toEqual([['aside', true], ['done', false], ['waiting', true]]);
        expect(await accept({ name: 'done' }, noon + 8 * day)).toBe('repeated');
        await store.tidy(noon + 40 * day, keep);
        expect((await about()).map(({ request }) => request).sort()).toEqual(['aside', 'waiting']);
        expect(await states()).toEqual({ held: 1, sending: 1 });
      });

      test('what nobody confirmed ends', async () => {
        await accept({ name: 'a', state: 'unconfirmed' });
        await store.tidy(noon + 2 * day, keep);
        expect(await states()).toEqual({ unconfirmed: 1 });
        await store.tidy(noon + 4 * day, keep);
        expect(await states()).toEqual({ expired: 1 });
      });

      test('all that is held about one address is handed out: what was sent, and that it was stopped', async () => {
        await accept({ name: 'a', roles: ['buyer', 'dealer'] });
        await accept({ name: 'b', address: 'bob@buyer.example' });
        await store.stop('token-a-buyer', 'stop', noon);
        const all = await store.exportOf('hash of ann@buyer.example', 'Ann@Buyer.example');
        expect(JSON.stringify(all)).toContain('ann@buyer.example');
        expect(JSON.stringify(all)).not.toContain('bob@buyer.example');
        expect(JSON.stringify(all)).toContain('"stop"');
        // A dealer gets what is about him, not what is about his buyers.
        expect(await store.exportOf('hash of demo-lot', 'sales@dealer.example')).toEqual([]);
      });

      test('what is erased is sent to nobody and stands nowhere, and the stop stays', async () => {
        await accept({ name: 'a', roles: ['buyer', 'dealer'] });
        await accept({ name: 'b', address: 'bob@buyer.example' });
        const [claim] = await store.claim(1, noon, never, { dealers: [], destinations: ['dealer:demo-lot'] });
        await store.suppress('hash of ann@buyer.example', { all: true }, 'stop', noon);
        expect(await store.erase('hash of ann@buyer.example', 'ann@buyer.example', noon)).toBe(1);
        if (claim?.request === 'a') expect(await store.settle(claim, { state: 'sent', reply: '250' }, noon)).toBe(false);
        expect((await store.claim(9, noon, never)).filter(({ request }) => request === 'a')).toEqual([]);
        expect(JSON.stringify(await store.exportOf('hash of ann@buyer.example', 'ann@buyer.example'))).not.toContain('ann@buyer');
        expect(await store.isStopped('hash of ann@buyer.example', 'demo-lot', noon)).toBe(true);
        // Handed in again by a page that never heard of it, it is still the same request.
        expect(await accept({ name: 'a' })).toBe('repeated');
        expect(await store.erase('hash of ann@buyer.example', 'ann@buyer.example', noon)).toBe(0);
      });

      test('answers are kept for statistics with consent alone, in order and without an address', async () => {
        await Promise.all(Array.from({ length: 1_203 }, (_, index) => accept({ name: `m${index}`, dealer: index % 2 === 0 ? 'even' : 'odd', statistics: index % 3 === 0 })));
        const all = [];
        for await (const each of store.statistics()) all.push(each);
        expect(all).toHaveLength(401);
        expect(all.slice(0, 2).map(({ dealer }) => dealer)).toEqual(['even', 'odd']);
        expect(all[0]).toEqual({ dealer: 'even', day: '2026-05-12', kind: 'shortlist', answers: newRequest({ name: 'm' }).request.answers });
        expect(JSON.stringify(all)).not.toContain('@');
        let odd = 0;
        for await (const { dealer } of store.statistics('odd')) odd += dealer === 'odd' ? 1 : 1_000;
        expect(odd).toBe(200);
      });

      test('a word is spent once, until its time is over', async () => {
        const spent = await Promise.all(Array.from({ length: 5 }, () => store.spend('ticket', noon + minute, noon)));
        expect(spent.filter(Boolean)).toHaveLength(1);
        store = await kept.reopen();
        expect(await store.spend('ticket', noon + minute, noon)).toBe(false);
        expect(await store.spend('other', noon + minute, noon)).toBe(true);
      });
    });

    test('a store says of itself whether what it confirms is on disk, also after writing and when opened again', async () => {
      await accept({ name: 'a' });
      expect(await store.health()).toMatchObject({ durable: true });
      store = await kept.reopen();
      await accept({ name: 'b' });
      expect(await store.health()).toMatchObject({ durable: true, version: expect.stringMatching(/^\d/) });
    });

    test('counts of states agree with what is there after anything that was done', async () => {
      for (let index = 0; index < 12; index++) await accept({ name: `m${index}`, state: index < 3 ? 'unconfirmed' : 'queued', recipient: sha256(String(index % 5)) });
      await store.suppress(sha256('4'), { all: true }, 'stop', noon);
      const claims = await store.claim(4, noon, never);
      await store.settle(claims[0]!, { state: 'sent', reply: '250' }, noon);
      await store.settle(claims[1]!, { state: 'refused', reason: 'no' }, noon);
      await store.release(noon);
      // Numbers 4 and 9 are stopped, 0 to 2 unconfirmed.
      expect(await states()).toEqual({ unconfirmed: 3, suppressed: 2, sent: 1, refused: 1, queued: 5 });
      const left = await store.claim(99, noon, never);
      expect(left).toHaveLength(5);
    });
  });
}
