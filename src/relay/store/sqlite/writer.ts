import type { Database } from 'better-sqlite3';
import { StoreBroken, StoreFull } from '../failures.ts';

/** What SQLite says where the disk, and not the question, is at fault (result codes, sqlite.org/rescode.html). */
const codeOf = (error: unknown) => String((error as { code?: unknown } | undefined)?.code ?? '');
const isFull = (error: unknown) => codeOf(error) === 'SQLITE_FULL';
export const isBroken = (error: unknown) => /^SQLITE_(IOERR|CORRUPT|NOTADB|READONLY|CANTOPEN)/.test(codeOf(error));

interface Waiting {
  job: () => unknown;
  /** Whether it is worth the last of the disk: what is stored has to end, what is new has not to begin. */
  needed: boolean;
  resolve: (value: never) => void;
  reject: (error: unknown) => void;
}

type Outcome = { value: unknown } | { error: unknown };
/** Most that share one commit, and with it one wait for the disk. */
const mostTogether = 256;
/** How long what is new waits for company [ms]: well within the time every answer takes at least. */
const gathers = 2;

interface Wish {
  /** As in {@link Waiting}. */
  needed?: boolean;
  /** Whether it can wait a moment for others to share its commit. */
  mayWait?: boolean;
}

/**
 * The one way to write. What comes in together is committed together, each for itself all or nothing, and is told only once
 * it is on disk.
 */
export class Writer {
  readonly #db: Database;
  readonly #makeRoom: () => boolean;
  readonly #onBroken: (error: StoreBroken) => void;
  readonly #together: (waiting: readonly Waiting[]) => Outcome[];
  readonly #eachForItself: (waiting: readonly Waiting[]) => Outcome[];
  #waiting: Waiting[] = [];
  #isSoon = false;
  #broken: StoreBroken | undefined;
  #closed = false;

  /**
   * @param makeRoom  frees what is kept for need; false where there is nothing more
   * @param onBroken  hears once that the disk failed
   */
  constructor(db: Database, makeRoom: () => boolean, onBroken: (error: StoreBroken) => void) {
    this.#db = db;
    this.#makeRoom = makeRoom;
    this.#onBroken = onBroken;
    this.#together = db.transaction((waiting: readonly Waiting[]) => waiting.map(({ job }) => ({ value: job() }))).immediate;
    const alone = db.transaction((job: () => unknown) => job());
    this.#eachForItself = db.transaction((waiting: readonly Waiting[]) => waiting.map(({ job }): Outcome => {
      try {
        return { value: alone(job) };
      } catch (error) {
        if (this.#endsAll(error)) throw error;
        return { error };
      }
    })).immediate;
  }

  /** Whether nothing waits to be written. */
  get isIdle(): boolean {
    return this.#waiting.length === 0;
  }

  /**
   * @param job  may be run again, where what it was to share a commit with failed
   * @throws StoreFull, StoreBroken (it rejects with them), or whatever the job throws
   */
  write<T>(job: () => T, { needed = true, mayWait = false }: Wish = {}): Promise<T> {
    return new Promise<T>((resolve, reject) => {
      if (this.#broken || this.#closed) {
        reject(this.#broken ?? new StoreBroken('The store was closed.'));
        return;
      }
      this.#plan(mayWait);
      this.#waiting.push({ job, needed, resolve, reject });
    });
  }

  #plan(mayWait: boolean): void {
    if (mayWait) {
      if (this.isIdle) setTimeout(() => this.flush(), gathers);
      return;
    }
    if (!this.#isSoon) setImmediate(() => this.flush());
    this.#isSoon = true;
  }

  /** Reads between writes. @throws StoreBroken */
  read<T>(job: () => T): T {
    if (this.#broken) throw this.#broken;
    try {
      return job();
    } catch (error) {
      throw this.#told(error);
    }
  }

  /** Writes what waits, at once. */
  flush(): void {
    this.#isSoon = false;
    while (this.#waiting.length > 0) this.#commit(this.#waiting.splice(0, mostTogether));
  }

  /** Nothing is taken from here on. */
  close(): void {
    this.flush();
    this.#closed = true;
  }

  #told(error: unknown): unknown {
    if (isFull(error)) return new StoreFull('The disk is full.', { cause: error });
    if (!isBroken(error)) return error;
    if (!this.#broken) {
      this.#broken = new StoreBroken(`The disk failed under the store (${codeOf(error)}).`, { cause: error });
      this.#onBroken(this.#broken);
    }
    return this.#broken;
  }

  /** SQLite takes the whole transaction back by itself where the disk is at fault. */
  #endsAll(error: unknown): boolean {
    return !this.#db.inTransaction || isFull(error) || isBroken(error);
  }

  /**
   * A savepoint for each would have every page it touches written once more (sqlite.org/tempfiles.html, statement journal), so
   * they are tried together first: hardly ever does one throw.
   */
  #run(waiting: readonly Waiting[]): Outcome[] {
    try {
      return this.#together(waiting);
    } catch (error) {
      if (isFull(error) || isBroken(error)) throw error;
      return this.#eachForItself(waiting);
    }
  }

  #commit(waiting: readonly Waiting[]): void {
    try {
      const outcomes = this.#run(waiting);
      waiting.forEach(({ resolve, reject }, place) => {
        const outcome = outcomes[place]!;
        if ('error' in outcome) reject(outcome.error);
        else resolve(outcome.value as never);
      });
    } catch (error) {
      const told = this.#told(error);
      const again = told instanceof StoreFull ? waiting.filter(({ needed }) => needed) : [];
      const retry = again.length > 0 && this.#makeRoom();
      for (const each of waiting) if (!retry || !each.needed) each.reject(told);
      if (retry) this.#commit(again);
    }
  }
}
