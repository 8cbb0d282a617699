import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Clock } from '../../src/relay/clock.ts';
import type { Log } from '../../src/relay/log.ts';
import type { Composed, Composing } from '../../src/relay/sender/composed.ts';
import { createSender, type Sender, type SenderParts } from '../../src/relay/sender/sender.ts';
import type { OutgoingMail, Transport } from '../../src/relay/sender/transport.ts';
import type { Verdict } from '../../src/relay/sender/verdict.ts';
import type { Timers } from '../../src/relay/sender/timers.ts';
import { dealerOf, type Dealer } from '../../src/relay/settings/dealer.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import type { Store } from '../../src/relay/store/store.ts';
import { newRequest, noon } from './store-requests.ts';

/** Time that passes when it is told to: what waits for it then runs, in order. */
export class FakeTime implements Clock, Timers {
  #elapsed = 0;
  /** By how much the clock on the wall is off. */
  offset = 0;
  #waiting: { at: number; run: () => void }[] = [];

  now = () => noon + this.#elapsed + this.offset;
  elapsed = () => this.#elapsed;

  after(wait: number, run: () => void): () => void {
    const each = { at: this.#elapsed + wait, run };
    this.#waiting.push(each);
    return () => { this.#waiting = this.#waiting.filter((other) => other !== each); };
  }

  /** How much is waited for. */
  get waiting(): number {
    return this.#waiting.length;
  }

  /** When the next of it runs [ms from now]. */
  get next(): number | undefined {
    return this.#waiting.length === 0 ? undefined : Math.max(0, Math.min(...this.#waiting.map(({ at }) => at)) - this.#elapsed);
  }

  advance(by: number): void {
    const until = this.#elapsed + by;
    for (;;) {
      const due = this.#waiting.filter(({ at }) => at <= until).sort((a, b) => a.at - b.at)[0];
      if (!due) break;
      this.#elapsed = Math.max(this.#elapsed, due.at);
      this.#waiting = this.#waiting.filter((each) => each !== due);
      due.run();
    }
    this.#elapsed = until;
  }
}

export const aDealer = (id: string): Dealer => dealerOf({
  id, catalogue: 'catalogue.json', origins: ['https://dealer.example'], mail: `sales@${id}.example`, senderName: 'A Dealer', postalAddress: '1 Road, 12345 Town',
});

export const plainMail = async ({ role, document, token }: Composing): Promise<Composed> => ({
  fromName: 'A Dealer', replyTo: 'sales@dealer.example', subject: 'Your shortlist', text: `${role}: ${document.answers.tasks?.map(({ task }) => task).join(', ')}\n`,
  headers: { 'List-Unsubscribe': `<https://relay.example/u/${token}>`, 'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click', 'Auto-Submitted': 'auto-generated' },
});

/** A way out that keeps what it was given, and says what it is told to. */
export class FakeTransport implements Transport {
  readonly mails: OutgoingMail[] = [];
  says: (mail: OutgoingMail, count: number) => Verdict | Promise<Verdict> = () => ({ kind: 'sent', reply: '250 taken' });
  aborted = false;
  onAbort = () => {};
  busy = 0;
  readonly mostTo = new Map<string, number>();
  readonly #busyTo = new Map<string, number>();

  async send(mail: OutgoingMail): Promise<Verdict> {
    this.mails.push(mail);
    const domain = mail.envelope.to.split('@')[1]!;
    this.busy += 1;
    this.#busyTo.set(domain, (this.#busyTo.get(domain) ?? 0) + 1);
    this.mostTo.set(domain, Math.max(this.mostTo.get(domain) ?? 0, this.#busyTo.get(domain)!));
    try {
      return await this.says(mail, this.mails.length);
    } finally {
      this.busy -= 1;
      this.#busyTo.set(domain, this.#busyTo.get(domain)! - 1);
    }
  }

  abort(): void {
    this.aborted = true;
    this.onAbort();
  }

  async close(): Promise<void> { /* Nothing is open. */ }
}

export interface Line { level: string; event: string; fields: unknown }

export interface Bench {
  time: FakeTime;
  store: Store;
  transport: FakeTransport;
  sender: Sender;
  lines: Line[];
  settled: string[];
  paused: string[];
  accept(wanted: Parameters<typeof newRequest>[0]): Promise<void>;
  states(): Promise<Record<string, number>>;
  /** Lets all that can happen now happen. */
  quiet(): Promise<void>;
  /** Lets so much time pass, with everything that happens meanwhile. */
  pass(by: number): Promise<void>;
  end(): Promise<void>;
}

/** A sender on a real store, with time, chance and a way out that are told what to do. */
export function bench(given: Partial<SenderParts> & { dealers?: readonly string[] } = {}): Bench {
  // What becomes of a disk isn't looked at here: in memory it takes no time.
  const folder = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'sender-'));
  const time = new FakeTime();
  const store = openSqlite({ file: join(folder, 'relay.db'), ballast: 0, clock: time });
  const transport = new FakeTransport();
  const lines: Line[] = [];
  const settled: string[] = [];
  const paused: string[] = [];
  const say = (level: string) => (event: string, fields: unknown) => void lines.push({ level, event, fields });
  const log: Log = { debug: say('debug'), info: say('info'), warn: say('warn'), error: (event, thrown, fields) => void lines.push({ level: 'error', event, fields: { ...fields, thrown } }) };
  let asked = 0;
  // Whatever asks the store is counted, so that it is known when nothing is under way.
  const counted = new Proxy(store, {
    get: (target, name) => {
      const of = Reflect.get(target, name) as (...values: unknown[]) => unknown;
      return async (...values: unknown[]) => {
        asked += 1;
        try {
          return await of.apply(target, values);
        } finally {
          asked -= 1;
        }
      };
    },
  });
  let composing = 0;
  const compose = given.compose ?? plainMail;
  const sender = createSender({
    transport, clock: time, timers: time, chance: () => 0.5, log,
    metrics: { settled: (_role, state) => void settled.push(state), paused: (what, reason) => void paused.push(`${what} ${reason}`), busy: () => undefined },
    settings: { dealers: new Map((given.dealers ?? ['demo-lot']).map((id) => [id, aDealer(id)])), sender: 'shortlist@relay.example', bounces: 'bounce.relay.example' },
    ...given,
    store: counted,
    async compose(what) {
      composing += 1;
      try {
        return await compose(what);
      } finally {
        composing -= 1;
      }
    },
  });

  async function quiet(): Promise<void> {
    // Making a mail takes turns of its own: it is quiet once nothing was under way for some of them.
    for (let still = 0; still < 6;) {
      await new Promise((resolve) => setImmediate(resolve));
      still = asked === 0 && composing === 0 ? still + 1 : 0;
    }
  }

  return {
    time, store, transport, sender, lines, settled, paused, quiet,
    async accept(wanted) {
      await store.accept(newRequest(wanted), [], time.now(), time.now());
      sender.wake();
    },
    states: async () => Object.fromEntries(Object.entries((await store.depth(time.now())).byState).filter(([, count]) => count > 0)),
    async pass(by) {
      await quiet();
      const until = time.elapsed() + by;
      for (let next = time.next; next !== undefined && time.elapsed() + next <= until; next = time.next) {
        time.advance(next);
        await quiet();
      }
      time.advance(until - time.elapsed());
      await quiet();
    },
    async end() {
      const stopping = sender.stop(0);
      await quiet();
      time.advance(60_000);
      await stopping;
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
}
