import pg from 'pg';
import { second } from '../../clock.ts';
import { StoreAway, StoreBroken } from '../failures.ts';
import { watch } from './still-there.ts';
import { isWorthAnotherTry, codeOf, told } from './trouble.ts';

/** How long a connection and a statement may take [ms]: a form waits five seconds for its answer. */
const [longestConnect, usualLongest] = [3 * second, 4 * second];
/** Of that, how long a lock, and a silence between two statements. */
const [lockShare, idleShare] = [0.75, 1.25];
/** The server is given its time to say that a statement took too long; one that says nothing at all is gone [ms]. */
const untilGone = second;
const most = 10;
const mostTries = 5;
const mostWaitForEnd = 2 * second;
const keepAliveAfter = 10 * second;
const int8 = 20;

export type Row = object;

/** One connection, for as long as it is held. */
export interface Link {
  /** @throws StoreAway, StoreFull, StoreBroken, or what the server said */
  rows<T extends Row = Row>(text: string, values?: readonly unknown[]): Promise<T[]>;
  /** @returns how many rows were written */
  count(text: string, values?: readonly unknown[]): Promise<number>;
}

export interface Cursor {
  /** @returns the next rows; none at the end */
  next<T extends Row = Row>(): Promise<T[]>;
  close(): Promise<void>;
}

interface Wish {
  /** How long a statement may take [ms]. */
  longest?: number;
}

/** Numbers of eight bytes come as numbers: times and counts are far below 2^53. */
const types: pg.CustomTypesConfig = { getTypeParser: ((oid: number, format?: 'text' | 'binary') => (oid === int8 ? Number : pg.types.getTypeParser(oid, format as 'text'))) as typeof pg.types.getTypeParser };
const deaf = () => {};
const streamOf = (client: pg.ClientBase) => (client as unknown as { connection: { stream: { destroy(): void } } }).connection.stream;

type Ask = (text: string, values?: readonly unknown[]) => Promise<pg.QueryResult>;

const linkBy = (ask: Ask): Link => ({
  rows: async <T extends Row = Row>(text: string, values?: readonly unknown[]) => (await ask(text, values)).rows as T[],
  count: async (text, values) => (await ask(text, values)).rowCount ?? 0,
});

async function inTransaction<T>(ask: Ask, job: (link: Link) => Promise<T>, longest: number): Promise<T> {
  const limits = { statement_timeout: longest, lock_timeout: lockShare * longest, idle_in_transaction_session_timeout: idleShare * longest };
  await ask(`BEGIN; SET LOCAL synchronous_commit = on; ${Object.entries(limits).map(([name, value]) => `SET LOCAL ${name} = ${value}`).join('; ')}`);
  let value: T;
  try {
    value = await job(linkBy(ask));
  } catch (error) {
    await ask('ROLLBACK').catch(deaf);
    throw error;
  }
  const { command } = await ask('COMMIT');
  // Where a statement failed and nobody looked, the server takes all of it back without a word.
  if (command !== 'COMMIT') throw new Error('A failed statement was passed over.');
  return value;
}

export interface ConnectionOptions {
  /** `postgres://…`; with a password in it, so never told. */
  address: string;
  /** Shown in the server's list of connections. */
  name: string;
  /** How long a statement may take, where it isn't said otherwise [ms]. */
  longest?: number;
  /** Hears of every connection that was lost. */
  onLost?: (error: unknown) => void;
  onBroken?: (error: StoreBroken) => void;
}

/**
 * The connections to a server, a few, that are made anew when they are lost. What the server doesn't answer in time is given
 * up and its connection with it, for one that swallows what is sent never says so.
 */
export class Connections {
  readonly #pool: pg.Pool;
  readonly #clients = new Set<pg.ClientBase>();
  readonly #address: string;
  readonly #longest: number;
  readonly #onBroken: (error: StoreBroken) => void;
  #closed = false;

  constructor({ address, name, longest = usualLongest, onLost = deaf, onBroken = deaf }: ConnectionOptions) {
    this.#onBroken = onBroken;
    this.#address = address;
    this.#longest = longest;
    this.#pool = new pg.Pool({
      connectionString: address, application_name: name, max: most, types, keepAlive: true, keepAliveInitialDelayMillis: keepAliveAfter,
      connectionTimeoutMillis: longestConnect, statement_timeout: longest, idle_in_transaction_session_timeout: idleShare * longest, allowExitOnIdle: true,
    });
    this.#pool.on('error', onLost);
    this.#pool.on('connect', (client) => {
      this.#clients.add(client);
      // Told by the statement that fails; without a listener it would end the process.
      client.on('error', deaf);
    });
    this.#pool.on('remove', (client) => this.#clients.delete(client));
  }

  get isClosed(): boolean {
    return this.#closed;
  }

  #told(error: unknown): unknown {
    const meant = told(error);
    if (meant instanceof StoreBroken) this.#onBroken(meant);
    return meant;
  }

  /** Holds a connection while a job goes on; one that was lost on the way isn't used again. */
  async #held<T>(longest: number, job: (ask: Ask) => Promise<T>): Promise<T> {
    if (this.#closed) throw new StoreAway('The store was closed.');
    const client = await this.#pool.connect().catch((error: unknown) => { throw this.#told(error); });
    let lost: Error | undefined;
    const ask: Ask = async (text, values) => {
      if (lost) throw this.#told(lost);
      try {
        return await client.query({ text, ...(values && { values: [...values] }), query_timeout: longest + untilGone } as pg.QueryConfig);
      } catch (error) {
        // A server that goes down says so first, and then hangs up.
        if (/^57P|^undefined$/.test(String(codeOf(error)))) lost = error as Error;
        throw this.#told(error);
      }
    };
    const unwatch = longest > this.#longest ? watch(this.#address, this.#longest, () => streamOf(client).destroy()) : deaf;
    try {
      return await job(ask);
    } finally {
      unwatch();
      if (lost) streamOf(client).destroy();
      client.release(lost);
    }
  }

  /** Reads, or writes by one statement what may as well be lost. */
  read<T>(job: (link: Link) => Promise<T>): Promise<T> {
    return this.#held(this.#longest, (ask) => job(linkBy(ask)));
  }

  /**
   * All or nothing, and on the server's disk before it resolves, whatever the server or the role would have. Where two
   * stood in each other's way it is done again, so a job has to bear being begun anew.
   *
   * @throws StoreAway also where the server went away before it said whether all is written
   */
  async write<T>(job: (link: Link) => Promise<T>, { longest = this.#longest }: Wish = {}): Promise<T> {
    for (let tries = 1; ; tries++) {
      try {
        return await this.#held(longest, (ask) => inTransaction(ask, job, longest));
      } catch (error) {
        if (tries >= mostTries || !isWorthAnotherTry((error as Error).cause)) throw error;
      }
    }
  }

  /** Reads by a cursor what may be long, on a connection of its own, until it is closed. */
  async opened(text: string, values: readonly unknown[], { atOnce, longest }: { atOnce: number; longest: number }): Promise<Cursor> {
    let close = deaf;
    const closed = new Promise<void>((resolve) => { close = resolve; });
    let ended: Promise<unknown> = Promise.resolve();
    const link = await new Promise<Link>((resolve, reject) => {
      ended = this.write(async (each) => {
        await each.rows(`DECLARE pieces NO SCROLL CURSOR FOR ${text}`, values);
        resolve(each);
        await closed;
      }, { longest }).catch(reject);
    });
    return {
      next: <T extends Row = Row>() => link.rows<T>(`FETCH ${atOnce} FROM pieces`),
      async close() {
        close();
        await ended;
      },
    };
  }

  /** What is on its way is given a moment. */
  async close(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    let timer: NodeJS.Timeout | undefined;
    const ending = this.#pool.end();
    await Promise.race([ending, new Promise<void>((resolve) => { timer = setTimeout(resolve, mostWaitForEnd); })]);
    clearTimeout(timer);
    for (const client of this.#clients) streamOf(client).destroy();
  }
}
