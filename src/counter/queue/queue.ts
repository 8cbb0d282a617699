import { handIn } from '../../request/hand-in.ts';
import { seal } from '../../request/seal.ts';
import type { RequestDocument } from '../../request/schema.ts';
import { pageClock, type Clock } from './clock.ts';
import type { Database } from './database.ts';
import { KeyRing } from './key-ring.ts';
import { Pacemaker } from './pacemaker.ts';
import { isInitials, recordVersion, type Waiting } from './record.ts';
import { Rounds } from './rounds.ts';
import { StatusBoard, type QueueStatus } from './status.ts';
import { troubleOf, type StorageWhy } from './storage-trouble.ts';
import { StaffDesk } from './staff-desk.ts';
import { WaitingStore } from './waiting-store.ts';

export interface QueueParts {
  database: Database;
  /** The relay's address, such as `https://mail.example/`. */
  relay: string;
  /** Of this counter, where the relay gave it one. */
  deviceToken?: string;
  clock?: Clock;
  random?: () => number;
  handIn?: typeof handIn;
  fetch?: typeof globalThis.fetch;
}

/** What became of an intake that was to be kept. */
export type Put =
  /** It is on this device's disk, and goes as soon as it can. */
  | { kind: 'saved'; waiting: Waiting }
  /** It is sealed, and nowhere but in the page: try again, or offer it as a file. */
  | { kind: 'not-saved'; why: StorageWhy; waiting: Waiting }
  /** There is nothing to seal to: this counter was never set up, or its storage can't be read. */
  | { kind: 'no-key'; why?: StorageWhy };

/**
 * The intakes of a counter that wait to be sent. What is put in is sealed to the relay before it is written anywhere;
 * `saved` is said once it is on disk, and a record goes only once the relay said it has it. Events: `change` (of
 * {@link status}), `accepted` and `refused` (their `detail` is the record).
 */
export class Queue extends EventTarget {
  readonly keyRing: KeyRing;
  readonly desk: StaffDesk;
  readonly #store: WaitingStore;
  readonly #board: StatusBoard;
  readonly #pacemaker: Pacemaker;
  readonly #rounds: Rounds;
  readonly #database: Database;
  readonly #clock: Clock;
  readonly #stopped = new AbortController();

  constructor({ clock = pageClock, random = Math.random, handIn: send = handIn, fetch = globalThis.fetch.bind(globalThis), deviceToken, database, relay }: QueueParts) {
    super();
    this.#database = database;
    this.#clock = clock;
    this.keyRing = new KeyRing(database);
    this.#store = new WaitingStore(database);
    this.#board = new StatusBoard(this.#store, database.name);
    this.#board.addEventListener('change', () => this.dispatchEvent(new Event('change')));
    this.#rounds = new Rounds({
      store: this.#store, board: this.#board, keyRing: this.keyRing, relay, deviceToken, clock, random, handIn: send, fetch, signal: this.#stopped.signal,
      tell: (event, waiting) => this.dispatchEvent(new CustomEvent(event, { detail: waiting })),
    });
    this.#pacemaker = new Pacemaker({ clock, lock: `${database.name} drain`, round: () => this.#rounds.round() });
    this.desk = new StaffDesk({ database, store: this.#store, changed: () => this.#changed(), stop: () => this.stop() });
  }

  get status(): QueueStatus {
    return this.#board.status;
  }

  /**
   * Proves that something can be kept here, and begins to send.
   *
   * @throws StorageTrouble  the counter can't be used, and `why`
   */
  async start(): Promise<void> {
    await this.#database.keep('started', this.#clock.now());
    await this.#store.setDamagedAside();
    this.#board.persisted(await storage()?.persisted());
    await this.#board.read();
    this.#pacemaker.start();
  }

  /** Ends for this page; what waits is there for the next. */
  stop() {
    this.#stopped.abort();
    this.#pacemaker.stop();
    this.#board.close();
  }

  /**
   * For staff, online: gets the relay's keys and asks the browser to keep what is kept.
   *
   * @returns whether there is a key now
   * @throws StorageTrouble
   */
  async setUp(): Promise<boolean> {
    this.#board.persisted(await storage()?.persist());
    await this.#rounds.refreshKeys();
    return await this.keyRing.current() !== undefined;
  }

  /**
   * Seals an intake and keeps it until it is sent.
   *
   * @param id        made once for what the buyer wants sent; the same again is the same intake
   * @param initials  where the buyer agreed that they are shown to staff; what is none is left out
   */
  async put(request: RequestDocument, { id = crypto.randomUUID(), initials }: { id?: string; initials?: string } = {}): Promise<Put> {
    let key;
    try {
      key = await this.keyRing.current();
    } catch (thrown) {
      return { kind: 'no-key', why: troubleOf(thrown).why };
    }
    if (!key) return { kind: 'no-key' };
    const sealed = await seal(request, key, id);
    const label = initials !== undefined && isInitials(initials) ? { label: initials } : {};
    return this.putSealed({ id, v: recordVersion, createdAt: this.#clock.now(), dealer: request.dealer, sealed, tries: 0, nextAt: 0, state: 'queued', ...label });
  }

  /** Tries once more to keep what {@link put} couldn't. */
  async putSealed(waiting: Waiting): Promise<Put> {
    try {
      await this.#store.add([waiting]);
    } catch (thrown) {
      const { why } = troubleOf(thrown);
      this.#board.storage(why);
      return { kind: 'not-saved', why, waiting };
    }
    this.#board.storage(undefined);
    await this.#changed();
    return { kind: 'saved', waiting };
  }

  /** Sends what can be sent. @returns when that is over; it never rejects */
  sendNow(): Promise<void> {
    return this.#pacemaker.kick();
  }

  async #changed() {
    await this.#board.changed();
    void this.#pacemaker.kick();
  }
}

/** Older browsers, and addresses that aren't secure, lack it or some of it. */
const storage = () => navigator.storage as StorageManager | undefined;
