import PgBoss from 'pg-boss';
import { second } from '../../clock.ts';
import type { Instant } from '../store.ts';
import type { Connections, Link } from './connections.ts';

const schema = 'acre_jobs';
const queue = 'mail-is-due';
/** How often it is asked for jobs, and how many are taken at once: one says as much as a thousand. */
const [every, atOnce] = [500, 1_000];
/** A job whose taker died is handed to the next one [s]; one nobody takes for a day says nothing any more. */
const settings = { policy: 'standard', expireInSeconds: 30, retryLimit: 3, retentionMinutes: 1_440 } as const;
const supervisedEvery = 30;
/** For whoever waits for the one that makes the queue [ms]. */
const longestMaking = 60 * second;

const through = (link: Link): PgBoss.Db => ({ executeSql: async (text, values) => ({ rows: await link.rows(text, values) }) });

/**
 * Jobs that say that mail is due, written in the transaction that makes it due, and handed by pg-boss to one of all senders:
 * so none has to look every moment whether another has taken something in. What is sent, by whom and when, is in the messages
 * alone. A job that is lost or comes twice costs a look.
 */
export class WakeUps {
  readonly #connections: Connections;
  readonly #boss: PgBoss;
  readonly #onTrouble: (error: unknown) => void;
  #timer: NodeJS.Timeout | undefined;
  #asking: Promise<void> | undefined;
  #stopped = false;

  /** @param listens  whether jobs are taken here too, and the queue looked after */
  constructor(connections: Connections, listens: boolean, onTrouble: (error: unknown) => void) {
    this.#connections = connections;
    this.#onTrouble = onTrouble;
    this.#boss = new PgBoss({
      schema, schedule: false, supervise: listens, maintenanceIntervalSeconds: supervisedEvery,
      db: { executeSql: (text, values) => connections.read(async (link) => ({ rows: await link.rows(text, values) })) },
    });
    this.#boss.on('error', onTrouble);
  }

  /** Makes the queue where it isn't there: one relay does, for pg-boss stumbles where two begin at once. */
  async prepare(): Promise<void> {
    await this.#connections.write(async (link) => {
      await link.rows(`SELECT pg_advisory_xact_lock(hashtextextended('acre jobs', 0))`);
      await this.#boss.start();
      await this.#boss.createQueue(queue, { name: queue, ...settings });
    }, { longest: longestMaking });
  }

  /** @param at  when it is due; now where it isn't said */
  async send(link: Link, at?: Instant): Promise<void> {
    await this.#boss.send(queue, {}, { db: through(link), ...(at !== undefined && { startAfter: new Date(at) }) });
  }

  /** Calls back whenever something is due that was stored anywhere. */
  listen(onDue: () => void): void {
    const ask = async () => {
      try {
        const jobs = await this.#boss.fetch(queue, { batchSize: atOnce, priority: false });
        if (jobs.length === 0) return;
        onDue();
        await this.#boss.deleteJob(queue, jobs.map(({ id }) => id));
      } catch (error) {
        this.#onTrouble(error);
      }
    };
    const next = () => {
      this.#timer = setTimeout(() => {
        this.#asking = ask().finally(() => {
          if (!this.#stopped) next();
        });
      }, every);
      this.#timer.unref();
    };
    next();
  }

  async stop(): Promise<void> {
    this.#stopped = true;
    clearTimeout(this.#timer);
    await this.#asking;
    await this.#boss.stop({ graceful: false, close: false });
  }
}
