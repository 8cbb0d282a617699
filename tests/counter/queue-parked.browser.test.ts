/// <reference types="mocha" />
import { assert } from 'chai';
import { Database } from '../../src/counter/queue/database.ts';
import { ParkedStore } from '../../src/counter/queue/parked-store.ts';
import { isPin, StaffLock } from '../../src/counter/queue/staff-lock.ts';
import { aRequest } from '../request/a-request.ts';
import { HandClock, nameOfOwn } from './queue-kit.ts';

const pin = '314159';
const draft = { answers: aRequest.answers, contact: aRequest.contact };

/** A device with a PIN, which hashes fast for the test. */
async function device({ name = nameOfOwn(), clock = new HandClock() } = {}) {
  const database = new Database(clock, { name });
  const lock = new StaffLock(database, clock, { iterations: 1_000 });
  await lock.setUp(pin);
  return { name, clock, database, lock, parked: new ParkedStore(database, lock, clock) };
}
type Device = Awaited<ReturnType<typeof device>>;

async function parkedIn({ parked }: Device, label: string) {
  const put = await parked.park(label, draft);
  if (put.kind !== 'parked') throw new Error(put.kind);
  return put.id;
}

/** Everything that lies in the database, bytes as text. */
const dumpOf = ({ database }: Device) => database.run(async (opened) => JSON.stringify(
  await Promise.all((['waiting', 'parked', 'kept'] as const).map((table) => opened.getAll(table))),
  (_key, value: unknown) => (value instanceof Uint8Array ? String.fromCharCode(...value) : value),
));

describe('a parked intake', () => {
  it('is put aside without a PIN, and with it is listed and comes back as it was, on another page too', async () => {
    const first = await device();
    const old = await parkedIn(first, 'Ann, blue truck');
    first.clock.move(1);
    const next = await device(first);
    await parkedIn(next, '17');
    assert.equal(await next.parked.count(), 2);
    assert.isUndefined(await next.parked.list());
    assert.isUndefined(await next.parked.open(old));
    assert.deepEqual(await next.lock.unlock(pin), { kind: 'open' });
    assert.deepEqual((await next.parked.list())!.map(({ label, is }) => [label, is]), [['17', 'sound'], ['Ann, blue truck', 'sound']]);
    assert.deepEqual(await next.parked.open(old), { label: 'Ann, blue truck', draft });
    next.lock.lock();
    assert.isUndefined(await next.parked.list());
    assert.isFalse(await next.parked.remove(old));
    assert.equal(await next.parked.count(), 2);
  });

  it('lies sealed, its label too, and its length tells nothing', async () => {
    const kept = await device();
    await parkedIn(kept, 'Ann, blue truck');
    await kept.parked.park('Bo', {});
    const dump = await dumpOf(kept);
    for (const word of ['Ann', 'truck', 'Neill', '0199', 'mow-lawn', pin]) assert.notInclude(dump, word);
    const boxes = await kept.database.run((opened) => opened.getAll('parked')) as { box: Uint8Array }[];
    assert.equal(boxes[0]!.box.length, boxes[1]!.box.length);
  });

  it('takes its own place again, and goes when it is removed', async () => {
    const kept = await device();
    const id = await parkedIn(kept, 'Ann');
    await kept.parked.park('Ann, later', draft, id);
    await kept.lock.unlock(pin);
    assert.deepEqual((await kept.parked.list())!.map(({ label }) => label), ['Ann, later']);
    assert.isTrue(await kept.parked.remove(id));
    assert.deepEqual(await kept.parked.list(), []);
  });

  it('that is damaged, put under another id or newer is told and stays', async () => {
    const kept = await device();
    const id = await parkedIn(kept, 'Ann');
    await kept.database.run(async (opened) => {
      const row = await opened.get('parked', id) as { box: Uint8Array };
      await opened.put('parked', { ...row, id: 'moved', parkedAt: 2 });
      await opened.put('parked', { id: 'later', v: 2, parkedAt: 1 });
      await opened.put('parked', { ...row, id, parkedAt: 3, box: row.box.with(5, row.box[5]! ^ 1) });
    });
    await kept.lock.unlock(pin);
    assert.deepEqual((await kept.parked.list())!.map(({ id: each, is, label }) => [each, is, label]), [[id, 'damaged', undefined], ['moved', 'damaged', undefined], ['later', 'newer', undefined]]);
    assert.equal(await kept.parked.count(), 3);
  });

  it('is thrown away once it has lain too long, without a PIN; what a later page wrote is left to it', async () => {
    const kept = await device();
    const longest = 12 * 3_600_000;
    const start = kept.clock.time;
    await parkedIn(kept, 'Ann');
    kept.clock.move(3_600_000);
    const second = await parkedIn(kept, 'Bo');
    await kept.database.run((opened) => opened.put('parked', { id: 'later', v: 2, parkedAt: 1 }));
    assert.deepEqual(await kept.parked.expire(longest), { gone: 0, ends: [start + longest, start + longest + 3_600_000] });
    kept.clock.time = start + longest - 1;
    assert.equal((await kept.parked.expire(longest)).gone, 0);
    kept.clock.time = start + longest;
    assert.deepEqual(await kept.parked.expire(longest), { gone: 1, ends: [start + longest + 3_600_000] });
    await kept.lock.unlock(pin);
    assert.deepEqual((await kept.parked.list())!.map(({ id }) => id), [second, 'later']);
    // Parked anew it lies from then on.
    await kept.parked.park('Bo', draft, second);
    assert.deepEqual((await kept.parked.expire(longest)).ends, [kept.clock.time + longest]);
  });

  it('without a time, or from before the clock was put back, lies for as long as any and no longer', async () => {
    const kept = await device();
    const id = await parkedIn(kept, 'Ann');
    await kept.database.run((opened) => opened.put('parked', { id: 'broken', v: 1 }));
    kept.clock.time -= 365 * 86_400_000;
    const ends = [kept.clock.time + 1_000, kept.clock.time + 1_000];
    assert.deepEqual(await kept.parked.expire(1_000), { gone: 0, ends });
    assert.deepEqual(await kept.parked.expire(1_000), { gone: 0, ends });
    await kept.lock.unlock(pin);
    assert.deepEqual(await kept.parked.open(id), { label: 'Ann', draft });
    kept.clock.move(1_000);
    assert.deepEqual(await kept.parked.expire(1_000), { gone: 2, ends: [] });
  });

  it('isn’t confirmed where there is no PIN yet, or no room', async () => {
    const kept = await device();
    const bare = new Database(kept.clock, { name: nameOfOwn() });
    assert.deepEqual(await new ParkedStore(bare, new StaffLock(bare, kept.clock), kept.clock).park('Ann', draft), { kind: 'no-lock' });
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = () => { throw new DOMException('of the test', 'QuotaExceededError'); };
    const outcome = await kept.parked.park('Ann', draft).finally(() => { IDBObjectStore.prototype.put = put; });
    assert.deepEqual(outcome, { kind: 'not-saved', why: 'full' });
  });
});

describe('the staff’s PIN', () => {
  it('after five wrong ones nothing opens for five minutes, the right one neither, on any page; then five more', async () => {
    const first = await device();
    for (const left of [4, 3]) assert.deepEqual(await first.lock.unlock('000000'), { kind: 'wrong', left });
    const next = await device(first);
    for (const left of [2, 1]) assert.deepEqual(await next.lock.unlock('000000'), { kind: 'wrong', left });
    const until = first.clock.time + 300_000;
    assert.deepEqual(await next.lock.unlock('000000'), { kind: 'locked', until });
    first.clock.move(299_999);
    assert.deepEqual(await first.lock.unlock(pin), { kind: 'locked', until });
    first.clock.move(1);
    assert.deepEqual(await first.lock.unlock('000000'), { kind: 'wrong', left: 4 });
    assert.deepEqual(await first.lock.unlock(pin), { kind: 'open' });
    assert.deepEqual(await first.lock.unlock('000000'), { kind: 'wrong', left: 4 });
  });

  it('a try counts before it is made: pages that are closed in between give none away', async () => {
    const kept = await device();
    const tried = await Promise.all(Array.from({ length: 8 }, () => kept.lock.unlock('000000')));
    assert.deepEqual(tried.map(({ kind }) => kind).toSorted(), ['locked', 'locked', 'locked', 'locked', 'wrong', 'wrong', 'wrong', 'wrong']);
  });

  it('a clock that is put back locks for no longer than five minutes more', async () => {
    const kept = await device();
    for (let i = 0; i < 5; i += 1) await kept.lock.unlock('000000');
    kept.clock.time -= 86_400_000;
    assert.equal((await kept.lock.unlock(pin)).kind, 'locked');
    kept.clock.move(300_000);
    assert.equal((await kept.lock.unlock(pin)).kind, 'open');
  });

  it('is changed by who knows it, and what is parked stays', async () => {
    const kept = await device();
    const id = await parkedIn(kept, 'Ann');
    assert.deepEqual(await kept.lock.change('000000', '271828'), { kind: 'wrong', left: 4 });
    assert.deepEqual(await kept.lock.change(pin, '271828'), { kind: 'open' });
    assert.equal((await kept.lock.unlock(pin)).kind, 'wrong');
    assert.equal((await kept.lock.unlock('271828')).kind, 'open');
    assert.deepEqual(await kept.parked.open(id), { label: 'Ann', draft });
  });

  it('that is forgotten is made anew, and what was parked goes', async () => {
    const kept = await device();
    await parkedIn(kept, 'Ann');
    assert.isFalse(await kept.lock.setUp('271828'));
    await kept.lock.makeAnew('271828');
    assert.equal(await kept.parked.count(), 0);
    assert.equal((await kept.lock.unlock('271828')).kind, 'open');
  });

  it('has six signs at least, in whatever digits they are typed', async () => {
    assert.deepEqual(['12345', '     1', '123456', 'a long one'].map(isPin), [false, false, true, true]);
    const kept = await device();
    assert.equal((await kept.lock.unlock('３１４１５９')).kind, 'open');
    for (const work of [kept.lock.setUp('1'), kept.lock.change(pin, '1'), kept.lock.makeAnew('1')]) {
      assert.instanceOf(await work.then(() => undefined, (thrown: unknown) => thrown), RangeError);
    }
  });

  // OWASP, Password Storage Cheat Sheet: 600,000 iterations of PBKDF2-HMAC-SHA256.
  it('is hashed as slowly as is asked for, and its key can’t be had out of the browser', async () => {
    const database = new Database(new HandClock(), { name: nameOfOwn() });
    const lock = new StaffLock(database, new HandClock());
    await lock.setUp(pin);
    const kept = await database.kept('staff-lock') as { key: { iterations: number } };
    assert.isAtLeast(kept.key.iterations, 600_000);
    assert.equal((await lock.unlock(pin)).kind, 'open');
    assert.isFalse(lock.privateKey!.extractable);
    assert.instanceOf(await crypto.subtle.exportKey('pkcs8', lock.privateKey!).then(() => undefined, (thrown: unknown) => thrown), DOMException);
  });
});
