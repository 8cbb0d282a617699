import { openDB } from 'idb';
import { pageClock, type Clock } from '../../src/counter/queue/clock.ts';
import { Database } from '../../src/counter/queue/database.ts';
import { ParkedStore } from '../../src/counter/queue/parked-store.ts';
import { Queue, type Put } from '../../src/counter/queue/queue.ts';
import { StaffLock } from '../../src/counter/queue/staff-lock.ts';
import { StorageTrouble } from '../../src/counter/queue/storage-trouble.ts';
import { aRequest } from '../request/a-request.ts';

/** Long enough for whoever shares the machine [ms]. */
const shortest = 20;

/** Every pause is over almost at once, and counted. */
class LeapingClock implements Clock {
  leapt = 0;
  now = () => Date.now() + this.leapt;

  after(milliseconds: number, run: () => void) {
    return pageClock.after(shortest, () => {
      this.leapt += milliseconds;
      run();
    });
  }
}

/** What a walk can do with a page that has nothing but a queue. */
export function queuePage() {
  const clock = new LeapingClock();
  let database = new Database(pageClock);
  let queue: Queue;
  const lock = () => new StaffLock(database, pageClock, { iterations: 1_000 });
  return {
    /** @param leaps  whether pauses between tries are leapt over */
    open(relay: string, { leaps = false, version }: { leaps?: boolean; version?: number } = {}) {
      if (version !== undefined) database = new Database(pageClock, { version });
      queue = new Queue({ database, relay, ...(leaps && { clock }), deviceToken: 'till-1' });
      for (const event of ['accepted', 'refused']) queue.addEventListener(event, ({ type }) => { document.title = type; });
    },
    setUp: () => queue.setUp(),
    start: () => queue.start().then(() => 'started', (thrown: unknown) => (thrown as StorageTrouble).why),
    sendNow: () => queue.sendNow(),
    put: (id: string, name = 'ann', address = `${name}@buyer.example`): Promise<Put> => queue.put({ ...aRequest, address, contact: { name: `${name} O’Neill` } }, { id, initials: 'A. O.' }),
    putAgain: (waiting: Extract<Put, { kind: 'saved' }>['waiting']) => queue.putSealed(waiting),
    status: () => queue.status,
    leapt: () => clock.leapt,
    /** When nothing is left that can be sent. */
    drained: () => new Promise<void>((done) => {
      const look = () => { if (queue.status.count === queue.status.needsStaff) done(); };
      queue.addEventListener('change', look);
      look();
    }),
    list: () => queue.desk.list(),
    toFile: () => queue.desk.toFile(),
    again: () => queue.desk.again(),
    async park(label: string) {
      const staff = lock();
      await staff.setUp('314159');
      return new ParkedStore(database, staff, pageClock).park(label, { label });
    },
    async unparked() {
      const staff = lock();
      await staff.unlock('314159');
      return new ParkedStore(database, staff, pageClock).list();
    },
    /** As a page that knows of no other release would hold it. */
    async hold() {
      await openDB(database.name);
    },
    /** A page that keeps what it should not. */
    async keepPlain(text: string) {
      const plain = await openDB('plain', 1, { upgrade(opened) { opened.createObjectStore('texts', { autoIncrement: true }); } });
      const writing = plain.transaction('texts', 'readwrite', { durability: 'strict' });
      await Promise.all([writing.store.add({ text }), writing.done]);
    },
  };
}

export type QueuePage = ReturnType<typeof queuePage>;
