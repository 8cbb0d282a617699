import { parentPort, Worker } from 'node:worker_threads';
import { second } from '../clock.ts';
import type { Compose, Composed, Composing } from './composed.ts';

interface Task {
  composing: Composing;
  address: string;
}
type Told = { composed: Composed } | { fault: string };

/** Longest a mail may take to be made [ms], and memory it may take: one that needs more harms no other. */
const longest = 20 * second;
const resourceLimits = { maxOldGenerationSizeMb: 256, maxYoungGenerationSizeMb: 32 };

/** What the thread does: makes mails, one after the other. */
export function makeMails(make: (what: Composing, address: string) => Composed): void {
  parentPort!.on('message', ({ composing, address }: Task) => {
    let told: Told;
    try {
      told = { composed: make(composing, address) };
    } catch (error) {
      told = { fault: error instanceof Error ? error.stack ?? error.message : String(error) };
    }
    parentPort!.postMessage(told, []);
  });
}

/** A thread of its own for reckoning: what takes long there, or ends it, leaves answers and mail on their way alone. */
class MailThread {
  readonly #worker: Worker;
  #over: ((error: Error) => void) | undefined;
  isAlive = true;

  constructor(program: URL) {
    this.#worker = new Worker(program, { resourceLimits });
    // What waits for a mail keeps the process alive by itself.
    this.#worker.unref();
    this.#worker.on('error', (error) => this.#end(error));
    this.#worker.on('exit', () => this.#end(new Error('The thread ended.')));
  }

  #end(error: Error): void {
    this.isAlive = false;
    this.#over?.(error);
  }

  async make(task: Task, wait: number): Promise<Composed> {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const told = new Promise<Told>((resolve, reject) => {
      this.#over = reject;
      this.#worker.once('message', resolve);
      this.#worker.postMessage(task, []);
      timer = setTimeout(() => {
        this.#end(new Error('The mail took too long to make.'));
        void this.#worker.terminate();
      }, wait);
    });
    try {
      const answer = await told;
      if ('fault' in answer) throw new Error(answer.fault);
      return answer.composed;
    } finally {
      clearTimeout(timer);
      this.#over = undefined;
    }
  }
}

/**
 * Makes mails in a thread of its own, one after the other, so that what ends the thread is known to be the one it was at.
 *
 * @param program  a script that calls {@link makeMails}
 * @param address  of the relay: what links begin with
 */
export function composeInThread(program: URL, address: string, wait = longest): Compose {
  let thread: MailThread | undefined;
  let before: Promise<unknown> = Promise.resolve();
  const next = (composing: Composing) => {
    if (!thread?.isAlive) thread = new MailThread(program);
    return thread.make({ composing, address }, wait);
  };
  return async (composing) => {
    const after = before;
    const made = (async () => {
      await after;
      return next(composing);
    })();
    before = made.catch(() => undefined);
    return made;
  };
}
