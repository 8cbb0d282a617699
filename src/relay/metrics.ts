import { Counter, Gauge, Histogram, Registry, collectDefaultMetrics } from 'prom-client';
import type { Clock } from './clock.ts';
import type { Store } from './store/store.ts';

const inSecond = 1_000;
const answerSeconds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 1, 5];

/** Figures for whoever runs the relay, in the text format that is customary for them. */
export class Metrics {
  readonly registry = new Registry();
  readonly #answers = new Counter({ name: 'acre_answers_total', help: 'Answers by route, status and code.', labelNames: ['route', 'status', 'code'] as const, registers: [this.registry] });
  readonly #seconds = new Histogram({ name: 'acre_answer_seconds', help: 'Time to an answer, by route.', labelNames: ['route'] as const, buckets: answerSeconds, registers: [this.registry] });
  readonly #taken = new Counter({ name: 'acre_requests_taken_total', help: 'Requests taken, by dealer, by what is done with them, and by whether they came from a counter.', labelNames: ['dealer', 'standing', 'counter'] as const, registers: [this.registry] });
  readonly #links = new Counter({ name: 'acre_links_total', help: 'Links of mails that were used.', labelNames: ['link'] as const, registers: [this.registry] });

  constructor(store: Store, clock: Clock, isOpen: () => boolean) {
    collectDefaultMetrics({ register: this.registry });
    const gauge = (name: string, help: string, read: () => number | undefined | Promise<number | undefined>) => this.registry.registerMetric(new Gauge({
      name, help, registers: [],
      async collect() {
        const value = await read();
        // What isn't known is left out: 0 would call somebody.
        if (value === undefined) this.remove();
        else this.set(value);
      },
    }));
    gauge('acre_open', 'Whether requests are taken.', () => Number(isOpen()));
    gauge('acre_disk_free_bytes', 'Room on the disk.', async () => (await store.health()).freeBytes);
    gauge('acre_store_durable', 'Whether what is taken is on disk before it is answered.', async () => Number((await store.health()).durable));
    gauge('acre_waiting_oldest_seconds', 'Age of the oldest mail that waits.', async () => ((await store.depth(clock.now())).oldest ?? 0) / inSecond);
    this.registry.registerMetric(new Gauge({
      name: 'acre_messages', help: 'Mails by state.', labelNames: ['state'] as const, registers: [],
      async collect() {
        for (const [state, count] of Object.entries((await store.depth(clock.now())).byState)) this.set({ state }, count);
      },
    }));
    this.registry.registerMetric(new Gauge({
      name: 'acre_waiting', help: 'Mails that wait, by the age they have at most, in minutes.', labelNames: ['minutes'] as const, registers: [],
      async collect() {
        for (const { upTo, count } of (await store.depth(clock.now())).byAge) this.set({ minutes: Number.isFinite(upTo) ? String(upTo / (60 * inSecond)) : 'more' }, count);
      },
    }));
  }

  answered(route: string, status: number, code: string, milliseconds: number): void {
    this.#answers.inc({ route, status: String(status), code });
    this.#seconds.observe({ route }, milliseconds / inSecond);
  }

  taken(dealer: string, standing: string, counter: boolean): void {
    this.#taken.inc({ dealer, standing, counter: String(counter) });
  }

  linkUsed(link: string): void {
    this.#links.inc({ link });
  }
}
