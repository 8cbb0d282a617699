import type { Clock } from '../../src/counter/queue/clock.ts';
import { Database, type Opened } from '../../src/counter/queue/database.ts';
import { Queue } from '../../src/counter/queue/queue.ts';
import type { Waiting } from '../../src/counter/queue/record.ts';
import type { HandedIn } from '../../src/request/hand-in.ts';
import { newRelayKey } from '../../src/request/seal.ts';

/** A clock that stands still until it is moved. */
export class HandClock implements Clock {
  time = 1_770_000_000_000;
  readonly #alarms = new Set<{ at: number; run: () => void }>();

  now = () => this.time;

  after(milliseconds: number, run: () => void) {
    const alarm = { at: this.time + milliseconds, run };
    this.#alarms.add(alarm);
    return () => { this.#alarms.delete(alarm); };
  }

  /** The waits there are [ms]. */
  get waits() {
    return [...this.#alarms].map(({ at }) => at - this.time).sort((a, b) => a - b);
  }

  move(milliseconds: number) {
    this.time += milliseconds;
    for (const alarm of this.#alarms) {
      if (alarm.at > this.time) continue;
      this.#alarms.delete(alarm);
      alarm.run();
    }
  }
}

let made = 0;
/** A database of its own for each test. */
export const nameOfOwn = () => `queue-of-tests-${Date.now()}-${made++}`;

/** A relay inside the page: what it is asked, and what it answers. */
export class PageRelay {
  readonly sent: string[] = [];
  answer: (id: string) => HandedIn | Promise<HandedIn> = (id) => ({ kind: 'accepted', id });
  /** What the short questions are answered with. */
  health: () => Response = () => Response.json({ ok: true });
  keys: unknown[] = [];
  asked: string[] = [];

  handIn = async (_relay: string, _body: unknown, id: string) => {
    this.sent.push(id);
    return this.answer(id);
  };

  fetch = async (address: URL | RequestInfo) => {
    this.asked.push(new URL(String(address)).pathname);
    if (this.asked.at(-1) === '/v1/keys') return Response.json({ keys: this.keys });
    return this.health();
  };
}

export interface Kit {
  queue: Queue;
  database: Database;
  relay: PageRelay;
  clock: HandClock;
  name: string;
}

/** A queue that is set up and not started. */
export async function queueOf({ name = nameOfOwn(), clock = new HandClock(), relay = new PageRelay(), version }: { name?: string; clock?: HandClock; relay?: PageRelay; version?: number } = {}): Promise<Kit> {
  const database = new Database(clock, { name, ...(version !== undefined && { version }) });
  const queue = new Queue({ database, relay: 'https://relay.example/', clock, random: () => 0.5, handIn: relay.handIn, fetch: relay.fetch });
  if (relay.keys.length === 0) relay.keys = [(await newRelayKey('k1')).key];
  await queue.setUp();
  return { queue, database, relay, clock, name };
}

/** The rows as they lie there. */
export const rowsOf = (database: Database) => database.run((opened: Opened) => opened.getAll('waiting')) as Promise<(Waiting & { number: number })[]>;
