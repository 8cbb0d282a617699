/// <reference types="mocha" />
import { assert } from 'chai';
import { readWaitingFile } from '../../src/counter/queue/waiting-file.ts';
import type { Queue } from '../../src/counter/queue/queue.ts';
import type { Waiting } from '../../src/counter/queue/record.ts';
import { newRelayKey, open } from '../../src/request/seal.ts';
import { aRequest } from '../request/a-request.ts';
import { queueOf, rowsOf, type Kit } from './queue-kit.ts';

const busy = (after?: number) => ({ kind: 'later', why: 'busy', ...(after !== undefined && { after }) }) as const;
const refused = (code: string) => ({ kind: 'refused', status: 422, code }) as const;

async function saved(queue: Queue, more: Parameters<Queue['put']>[1] = {}): Promise<Waiting> {
  const put = await queue.put(aRequest, more);
  if (put.kind !== 'saved') throw new Error(put.kind);
  return put.waiting;
}

/** A queue with so many intakes in it, not started. */
async function filled(many: number): Promise<Kit & { ids: string[] }> {
  const kit = await queueOf();
  const ids: string[] = [];
  for (let i = 0; i < many; i += 1) ids.push((await saved(kit.queue)).id);
  return { ...kit, ids };
}

/** Moves the clock on, half a minute at a time, until nothing is left to be sent. */
async function drained({ queue, clock }: Kit, mostRounds = 500) {
  await queue.start();
  for (let round = 0; round < mostRounds; round += 1) {
    await queue.sendNow();
    if (queue.status.count === queue.status.needsStaff) return;
    clock.move(30_000);
  }
  throw new Error('it never ended');
}

describe('what is kept', () => {
  it('is sealed, in the order it came, and asked to be on disk before it counts', async () => {
    const { queue, database } = await queueOf();
    const asked: (string | undefined)[] = [];
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given: Parameters<typeof transaction>) {
      if (given[1] === 'readwrite') asked.push(given[2]?.durability);
      return transaction.apply(this, given);
    };
    const first = await saved(queue, { initials: 'A. O.' }).finally(() => { IDBDatabase.prototype.transaction = transaction; });
    const second = await saved(queue, { initials: 'Ann O’Neill' });
    assert.deepEqual(asked, ['strict']);
    const rows = await rowsOf(database);
    assert.deepEqual(rows.map(({ id }) => id), [first.id, second.id]);
    assert.deepEqual(rows.map(({ label }) => label), ['A. O.', undefined]);
    for (const word of ['ann@', 'buyer.example', 'Neill', '0199', 'mow-lawn']) assert.notInclude(JSON.stringify(rows), word);
    assert.equal(queue.status.count, 2);
    assert.equal(queue.status.oldest, first.createdAt);
  });

  it('counts only after the transaction is complete', async () => {
    const { queue } = await queueOf();
    const order: string[] = [];
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...given: Parameters<typeof add>) {
      this.transaction.addEventListener('complete', () => order.push('complete'));
      return add.apply(this, given);
    };
    await saved(queue).then(() => order.push('saved')).finally(() => { IDBObjectStore.prototype.add = add; });
    assert.deepEqual(order, ['complete', 'saved']);
  });

  it('the same intake put twice is one', async () => {
    const { queue } = await queueOf();
    const { id } = await saved(queue);
    await saved(queue, { id });
    assert.equal(queue.status.count, 1);
  });

  it('nothing is written of an intake before there is a key to seal to', async () => {
    const { queue, relay } = await queueOf();
    relay.keys = [];
    const bare = await queueOf({ relay: Object.assign(relay, { keys: [{ id: 'k1', publicKey: 'AAAA' }] }) });
    assert.isFalse(await bare.queue.setUp());
    assert.deepEqual(await bare.queue.put(aRequest), { kind: 'no-key' });
    assert.deepEqual(await rowsOf(bare.database), []);
    queue.stop();
  });
});

describe('sending', () => {
  it('goes in order; a record goes when the relay has it, and each is told', async () => {
    const kit = await filled(3);
    const told: string[] = [];
    kit.queue.addEventListener('accepted', (event) => { told.push((event as CustomEvent<Waiting>).detail.id); });
    await drained(kit);
    assert.deepEqual(kit.relay.sent, kit.ids);
    assert.deepEqual(told, kit.ids);
    assert.deepEqual(await rowsOf(kit.database), []);
    assert.deepEqual(kit.queue.status, { count: 0, oldest: undefined, needsStaff: 0, persisted: kit.queue.status.persisted, trouble: undefined });
    assert.isBoolean(kit.queue.status.persisted);
    assert.deepEqual(kit.clock.waits, []);
  });

  it('a refused one stays with its code, holds up nobody, and isn’t tried again by itself; staff may send it again, or throw it away', async () => {
    const kit = await filled(3);
    kit.relay.answer = (id) => (id === kit.ids[1] ? refused('seal-key') : { kind: 'accepted', id });
    await drained(kit);
    await kit.queue.sendNow();
    assert.deepEqual(kit.relay.sent, kit.ids);
    const [{ place, ...listed }] = await kit.queue.desk.list() as [Awaited<ReturnType<Queue['desk']['list']>>[number]];
    assert.deepEqual(listed, { id: kit.ids[1], is: 'needs-staff', createdAt: kit.clock.time, code: 'seal-key' });
    await kit.queue.desk.again();
    await kit.queue.sendNow();
    assert.equal(kit.relay.sent.length, 4);
    assert.isTrue(await kit.queue.desk.remove(place));
    assert.equal(kit.queue.status.count, 0);
  });

  it('what doesn’t need staff can’t be thrown away', async () => {
    const { queue, database } = await filled(1);
    assert.isFalse(await queue.desk.remove((await queue.desk.list())[0]!.place));
    assert.lengthOf(await rowsOf(database), 1);
  });

  it('a busy relay is waited for, longer each time, with those behind in their order', async () => {
    const kit = await filled(2);
    const answers = [busy(), busy()];
    kit.relay.answer = (id) => answers.shift() ?? { kind: 'accepted', id };
    await kit.queue.start();
    await kit.queue.sendNow();
    assert.deepEqual(kit.queue.status.trouble, { of: 'relay', why: 'busy' });
    assert.deepEqual(kit.clock.waits, [2_000]);
    kit.clock.move(1_999);
    await kit.queue.sendNow();
    assert.lengthOf(kit.relay.sent, 1);
    kit.clock.move(1);
    await kit.queue.sendNow();
    assert.deepEqual(kit.clock.waits, [4_000]);
    kit.clock.move(4_000);
    await kit.queue.sendNow();
    assert.deepEqual(kit.relay.sent, [kit.ids[0], kit.ids[0], kit.ids[0], kit.ids[1]]);
    assert.isUndefined(kit.queue.status.trouble);
  });

  it('what the relay asks to wait is waited, through a reload too', async () => {
    const kit = await filled(1);
    kit.relay.answer = () => busy(100);
    await kit.queue.start();
    await kit.queue.sendNow();
    kit.queue.stop();
    kit.clock.move(99_000);
    const next = await queueOf(kit);
    await next.queue.start();
    await next.queue.sendNow();
    assert.lengthOf(kit.relay.sent, 1);
    kit.clock.move(6_000);
    await next.queue.sendNow();
    assert.lengthOf(kit.relay.sent, 2);
  });

  it('a clock that is put back keeps nothing waiting', async () => {
    const kit = await filled(1);
    kit.relay.answer = () => busy(1_000);
    await kit.queue.start();
    await kit.queue.sendNow();
    kit.clock.time -= 400 * 86_400_000;
    kit.relay.answer = (id) => ({ kind: 'accepted', id });
    await kit.queue.sendNow();
    assert.equal(kit.queue.status.count, 0);
  });

  it('one that the relay breaks on lets the others go first, and is never lost', async () => {
    const kit = await filled(5);
    kit.relay.answer = (id) => (id === kit.ids[0] && kit.relay.sent.length < 40 ? busy() : { kind: 'accepted', id });
    await drained(kit);
    assert.deepEqual([...new Set(kit.relay.sent)], kit.ids);
    assert.deepEqual(kit.relay.sent.filter((id) => id !== kit.ids[0]), kit.ids.slice(1));
    assert.equal(kit.relay.sent.at(-1), kit.ids[0]);
  });

  const notThere: [string, () => Response, string][] = [
    ['a page to log in with', () => new Response('<html>'), 'not-a-relay'],
    ['something that isn’t well', () => Response.json({ ok: false }), 'not-a-relay'],
    ['a fault of a server', () => new Response('', { status: 502 }), 'unreachable'],
    ['nothing', () => { throw new TypeError('Failed to fetch'); }, 'unreachable'],
  ];
  for (const [what, health, why] of notThere) {
    it(`behind ${what} nothing is sent, whatever the browser believes; half a minute later it is asked again`, async () => {
      const kit = await filled(1);
      kit.relay.health = health;
      await kit.queue.start();
      await kit.queue.sendNow();
      assert.deepEqual(kit.relay.sent, []);
      assert.deepEqual(kit.queue.status.trouble, { of: 'relay', why });
      assert.deepEqual(kit.clock.waits, [30_000]);
      kit.relay.health = () => Response.json({ ok: true });
      kit.clock.move(30_000);
      await kit.queue.sendNow();
      assert.equal(kit.queue.status.count, 0);
    });
  }

  for (const [event, dispatch] of [['online', () => dispatchEvent(new Event('online'))], ['visibilitychange', () => document.dispatchEvent(new Event('visibilitychange'))]] as const) {
    it(`on “${event}” it is tried at once`, async () => {
      const kit = await filled(1);
      kit.relay.health = () => new Response('', { status: 502 });
      await kit.queue.start();
      await kit.queue.sendNow();
      kit.relay.health = () => Response.json({ ok: true });
      const gone = new Promise((done) => { kit.queue.addEventListener('accepted', done); });
      dispatch();
      await gone;
      kit.queue.stop();
    });
  }

  it('a send that never gets through doesn’t count against the intake', async () => {
    const kit = await filled(1);
    kit.relay.answer = () => ({ kind: 'later', why: 'unreachable' });
    await kit.queue.start();
    await kit.queue.sendNow();
    const [row] = await rowsOf(kit.database);
    assert.deepInclude(row, { tries: 0, nextAt: 0, state: 'queued' });
  });

  it('one left in the middle of sending is sent by the next page', async () => {
    const kit = await filled(1);
    let left = () => {};
    const reached = new Promise<void>((done) => { left = done; });
    kit.relay.answer = () => { left(); return new Promise<never>(() => undefined); };
    await kit.queue.start();
    await reached;
    assert.equal((await rowsOf(kit.database))[0]!.state, 'sending');
    // A page that is killed leaves its lock; one that hangs doesn’t, so this one is looked at without.
    const next = await queueOf({ ...kit, name: kit.name });
    assert.equal((await next.queue.desk.list())[0]!.is, 'sending');
    await withoutLocks(async () => {
      kit.relay.answer = (id) => ({ kind: 'accepted', id });
      await next.queue.start();
      await next.queue.sendNow();
    });
    assert.equal(next.queue.status.count, 0);
  });

  it('without locks two windows send all of it, and the key of each makes twice harmless', async () => {
    const kit = await filled(5);
    await withoutLocks(async () => {
      const other = await queueOf(kit);
      await Promise.all([kit.queue.start(), other.queue.start()]);
      await Promise.all([kit.queue.sendNow(), other.queue.sendNow()]);
      assert.equal(other.queue.status.count, 0);
    });
    assert.deepEqual([...new Set(kit.relay.sent)].toSorted(), kit.ids.toSorted());
  });

  it('with locks one window sends, and the other sees what became of it', async () => {
    const kit = await filled(5);
    const other = await queueOf({ ...kit, name: kit.name });
    await Promise.all([kit.queue.start(), other.queue.start()]);
    await Promise.all([kit.queue.sendNow(), other.queue.sendNow()]);
    assert.deepEqual(kit.relay.sent, kit.ids);
    while (other.queue.status.count > 0) await new Promise((seen) => { other.queue.addEventListener('change', seen, { once: true }); });
  });
});

async function withoutLocks(work: () => Promise<void>) {
  Object.defineProperty(navigator, 'locks', { configurable: true, value: undefined });
  await work().finally(() => { Reflect.deleteProperty(navigator, 'locks'); });
}

describe('the relay’s keys', () => {
  it('are kept on the device, asked for anew each hour, and a broken answer changes nothing', async () => {
    const kit = await queueOf();
    const [old, next] = [kit.relay.keys[0] as { id: string }, await newRelayKey('k2')];
    kit.relay.keys = [next.key];
    await saved(kit.queue);
    await drained(kit);
    assert.equal((await kit.queue.keyRing.current())!.id, old.id);
    kit.clock.move(3_600_001);
    const waiting = await saved(kit.queue);
    assert.equal(waiting.sealed.key, old.id);
    await kit.queue.sendNow();
    assert.deepEqual(await kit.queue.keyRing.current(), next.key);
    kit.relay.keys = [{ id: 'k3', publicKey: next.key.publicKey.slice(0, -4) }];
    await kit.queue.setUp();
    assert.deepEqual(await kit.queue.keyRing.current(), next.key);
    const sealed = await saved(kit.queue);
    assert.deepEqual(await open(sealed.sealed, next.privateKey, sealed.id), aRequest);
  });
});

describe('records of other pages', () => {
  const putRaw = ({ database }: Kit, value: object) => database.run(async (opened) => { await opened.add('waiting', value); });

  it('what a later page wrote is left alone, counted and handed on', async () => {
    const kit = await filled(1);
    const later = { id: 'x', v: 2, createdAt: 1, other: { deep: true } };
    await putRaw(kit, later);
    await kit.queue.start();
    await kit.queue.sendNow();
    assert.deepEqual(kit.relay.sent, kit.ids);
    assert.equal(kit.queue.status.count, 1);
    assert.deepEqual((await kit.queue.desk.list()).map(({ is }) => is), ['newer']);
    const { text } = await kit.queue.desk.toFile();
    assert.deepEqual(JSON.parse(text).records, [later]);
    assert.deepEqual((await rowsOf(kit.database)).map(({ number: _number, ...row }) => row as object), [later]);
  });

  it('what is damaged is never sent and never thrown away, but handed to staff', async () => {
    const kit = await filled(2);
    await kit.database.run(async (opened) => { await opened.put('waiting', { ...(await rowsOf(kit.database))[0], sealed: 'torn' }); });
    await drained(kit);
    assert.deepEqual(kit.relay.sent, [kit.ids[1]]);
    assert.deepInclude(kit.queue.status, { count: 1, needsStaff: 1 });
    assert.deepInclude((await rowsOf(kit.database))[0], { id: kit.ids[0], state: 'needs-staff', code: 'damaged' });
    await kit.queue.desk.again();
    assert.equal((await rowsOf(kit.database))[0]!.state, 'needs-staff');
  });
});

describe('a file', () => {
  it('goes to another device, which takes each once and sends it', async () => {
    const [kit, other] = [await filled(3), await queueOf()];
    const { text } = await kit.queue.desk.toFile();
    assert.lengthOf(readWaitingFile(text).records, 3);
    assert.deepEqual(await other.queue.desk.fromFile(text), { taken: 3, already: 0, faults: [] });
    assert.deepEqual(await other.queue.desk.fromFile(text), { taken: 0, already: 3, faults: [] });
    await drained(other);
    assert.deepEqual(other.relay.sent, kit.ids);
  });

  it('with a fault in it is taken but for that, and the fault is told', async () => {
    const [kit, other] = [await filled(2), await queueOf()];
    const { text } = await kit.queue.desk.toFile();
    const { taken, faults } = await other.queue.desk.fromFile(text.replace(kit.ids[0]!, 'five'));
    assert.equal(taken, 1);
    assert.deepEqual(faults.map(({ place }) => place), ['records[0].id']);
  });
});
