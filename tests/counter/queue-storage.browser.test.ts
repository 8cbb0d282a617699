/// <reference types="mocha" />
import { assert } from 'chai';
import { Database } from '../../src/counter/queue/database.ts';
import { ParkedStore } from '../../src/counter/queue/parked-store.ts';
import { StaffLock } from '../../src/counter/queue/staff-lock.ts';
import { StorageTrouble, type StorageWhy } from '../../src/counter/queue/storage-trouble.ts';
import { writeWaitingFile } from '../../src/counter/queue/waiting-file.ts';
import { aRequest } from '../request/a-request.ts';
import { HandClock, nameOfOwn, queueOf, rowsOf, type Kit } from './queue-kit.ts';

/** Puts something in a method's place as long as the work goes on. */
async function during<T extends object, K extends keyof T, R>(holder: T, method: K, instead: (before: T[K]) => T[K], work: () => Promise<R>): Promise<R> {
  const before = holder[method];
  holder[method] = instead(before);
  return work().finally(() => { holder[method] = before; });
}
const throwing = (name: string, times = Infinity) => {
  let left = times;
  return <F extends (...given: never[]) => unknown>(before: F) => function (this: unknown, ...given: never[]) {
    if (left-- > 0) throw new DOMException('of the test', name);
    return before.apply(this, given);
  } as F;
};

const whyOf = async (work: Promise<unknown>): Promise<StorageWhy | 'nothing'> => {
  try {
    await work;
    return 'nothing';
  } catch (thrown) {
    if (thrown instanceof StorageTrouble) return thrown.why;
    throw thrown;
  }
};

/** Opened past our code, as a page of another release would. */
const openedRaw = (name: string, version?: number) => new Promise<IDBDatabase>((resolve, reject) => {
  const opening = indexedDB.open(name, version);
  opening.addEventListener('success', () => resolve(opening.result));
  opening.addEventListener('error', () => reject(opening.error!));
});

const names = async () => (await indexedDB.databases()).map(({ name }) => name);
const put = ({ queue }: Kit) => queue.put(aRequest);

describe('storage that fails', () => {
  it('full: it is said so, the sealed intake is handed back, and goes in once there is room', async () => {
    const kit = await queueOf();
    const full = await during(IDBObjectStore.prototype, 'add', throwing('QuotaExceededError'), () => put(kit));
    if (full.kind !== 'not-saved') throw new Error(full.kind);
    assert.equal(full.why, 'full');
    assert.deepEqual(kit.queue.status.trouble, { of: 'storage', why: 'full' });
    assert.notInclude(JSON.stringify(full.waiting), 'buyer.example');
    assert.deepEqual(await rowsOf(kit.database), []);
    assert.equal((await kit.queue.putSealed(full.waiting)).kind, 'saved');
    assert.isUndefined(kit.queue.status.trouble);
    assert.equal((await rowsOf(kit.database))[0]!.id, full.waiting.id);
  });

  for (const name of ['UnknownError', 'InvalidStateError', 'AbortError']) {
    it(`${name}: it is opened once more, and then not confirmed`, async () => {
      const kit = await queueOf();
      const once = await during(IDBDatabase.prototype, 'transaction', throwing(name, 1), () => put(kit));
      assert.equal(once.kind, 'saved');
      const twice = await during(IDBDatabase.prototype, 'transaction', throwing(name), () => put(kit));
      assert.deepInclude(twice, { kind: 'not-saved', why: 'lost' });
      assert.lengthOf(await rowsOf(kit.database), 1);
    });
  }

  it('a fault of ours is no fault of the storage, and isn’t hidden as one', async () => {
    const kit = await queueOf();
    await during(IDBObjectStore.prototype, 'add', () => () => { throw new RangeError('ours'); }, () => put(kit))
      .then(() => assert.fail('told as if it were saved'), (thrown: Error) => assert.equal(thrown.message, 'ours'));
  });

  it('no answer: after ten seconds it is said that there is none', async () => {
    const clock = new HandClock();
    const database = new Database(clock, { name: nameOfOwn() });
    const request = Object.create(IDBOpenDBRequest.prototype, { addEventListener: { value: () => undefined }, removeEventListener: { value: () => undefined } }) as IDBOpenDBRequest;
    const asking = during(IDBFactory.prototype, 'open', () => () => request, () => whyOf(database.kept('x')));
    clock.move(9_999);
    clock.move(1);
    assert.equal(await asking, 'silent');
  });

  for (const what of ['throws', 'is missing']) {
    it(`where storage ${what}, the counter refuses, and says why`, async () => {
      const kit = await queueOf();
      kit.database.close();
      const before = Object.getOwnPropertyDescriptor(globalThis, 'indexedDB')!;
      Object.defineProperty(globalThis, 'indexedDB', { configurable: true, get() { if (what === 'throws') throw new DOMException('shut off', 'SecurityError'); return undefined; } });
      const why = await whyOf(kit.queue.start()).finally(() => { Object.defineProperty(globalThis, 'indexedDB', before); });
      assert.equal(why, 'refused');
    });
  }

  it('a lost storage keeps nobody from sealing: the intake comes back sealed, and its file is read elsewhere', async () => {
    const [kit, other] = [await queueOf(), await queueOf()];
    const lost = await during(IDBDatabase.prototype, 'transaction', throwing('UnknownError'), () => put(kit));
    if (lost.kind !== 'not-saved') throw new Error(lost.kind);
    assert.deepEqual(await other.queue.desk.fromFile(writeWaitingFile([lost.waiting])), { taken: 1, already: 0, faults: [] });
  });
});

describe('pages of other releases', () => {
  it('an older window that doesn’t go is told to be in the way, and nothing is confirmed before it is closed', async () => {
    const old = await queueOf();
    assert.equal((await put(old)).kind, 'saved');
    const stubborn = await openedRaw(old.name);
    const database = new Database(new HandClock(), { name: old.name, version: 2 });
    assert.equal(await whyOf(database.keep('x', 1)), 'blocked');
    assert.equal(await whyOf(database.keep('x', 1)), 'blocked');
    stubborn.close();
    while (await whyOf(database.keep('x', 1)) === 'blocked') await new Promise((later) => { setTimeout(later); });
    assert.lengthOf(await rowsOf(database), 1);
  });

  it('an older page of ours goes out of the way of a newer one, and confirms nothing any more', async () => {
    const old = await queueOf();
    (await openedRaw(old.name, 2)).close();
    assert.deepInclude(await put(old), { kind: 'not-saved', why: 'newer-page' });
    assert.equal(await whyOf(old.queue.start()), 'newer-page');
  });

  it('an older page that is opened after a newer one refuses', async () => {
    const name = nameOfOwn();
    (await openedRaw(name, 2)).close();
    assert.equal(await whyOf(new Database(new HandClock(), { name }).keep('x', 1)), 'newer-page');
  });
});

describe('retiring a device', () => {
  it('needs what waits to be sent or saved to a file; then nothing is left', async () => {
    const kit = await queueOf();
    await put(kit);
    const saved = await kit.queue.desk.toFile();
    await put(kit);
    assert.deepEqual(await kit.queue.desk.retire(), { kind: 'waiting', count: 2 });
    assert.deepEqual(await kit.queue.desk.retire({ saved }), { kind: 'waiting', count: 1 });
    assert.lengthOf(await rowsOf(kit.database), 2);
    assert.deepEqual(await kit.queue.desk.retire({ saved: await kit.queue.desk.toFile() }), { kind: 'retired' });
    assert.notInclude(await names(), kit.name);
    assert.deepInclude(await put(kit), { kind: 'not-saved', why: 'retired' });
    assert.notInclude(await names(), kit.name);
  });

  it('parked intakes go only where staff say so', async () => {
    const kit = await queueOf();
    await kit.database.run(async (opened) => { await opened.add('parked', { id: 'p' }); });
    assert.deepEqual(await kit.queue.desk.retire(), { kind: 'parked', count: 1 });
    assert.deepEqual(await kit.queue.desk.retire({ dropParked: true }), { kind: 'retired' });
  });

  it('other windows of ours let go, and neither keep nor bring back anything', async () => {
    const kit = await queueOf();
    const elsewhere = await queueOf({ ...kit, name: kit.name });
    assert.deepEqual(await kit.queue.desk.retire(), { kind: 'retired' });
    assert.deepInclude(await put(elsewhere), { kind: 'not-saved', why: 'retired' });
    assert.notInclude(await names(), kit.name);
  });

  it('from the moment it is decided nothing new is kept, not by a window that hasn’t heard of it either', async () => {
    const kit = await queueOf();
    const lock = new StaffLock(kit.database, kit.clock, { iterations: 1_000 });
    await lock.setUp('314159');
    await kit.database.keep('retired', true);
    assert.deepInclude(await put(kit), { kind: 'not-saved', why: 'retired' });
    assert.deepEqual(await new ParkedStore(kit.database, lock, kit.clock).park('Ann', {}), { kind: 'not-saved', why: 'retired' });
    assert.deepEqual(await rowsOf(kit.database), []);
  });

  it('a window that doesn’t let go is told; meanwhile nothing new comes in', async () => {
    const kit = await queueOf();
    const elsewhere = new Database(kit.clock, { name: kit.name });
    const stubborn = await openedRaw(kit.name);
    assert.deepEqual(await kit.queue.desk.retire(), { kind: 'other-window' });
    stubborn.close();
    assert.include(['retired', 'nothing'], await whyOf(elsewhere.kept('x')));
  });
});
