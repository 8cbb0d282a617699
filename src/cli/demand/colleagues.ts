import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { judgeOf } from '../../demand/judge-text.ts';
import type { Outcome } from '../../demand/outcome.ts';
import type { Judges } from '../io.ts';

/** What a colleague is handed at a time: enough that asking for more costs nothing, few enough that all end together. */
const atOnce = 100;

/** Memory of a colleague: what was judged before is remembered as long as there is room. */
const resourceLimits = { maxOldGenerationSizeMb: 300, maxYoungGenerationSizeMb: 32 };

/** What a colleague does: this program again, in a thread of its own. */
export function workAsColleague() {
  const judge = judgeOf(workerData as CatalogueDocument);
  parentPort!.on('message', (texts: readonly string[]) => parentPort!.postMessage(texts.map(judge), []));
}

/** One thread, which is begun when it first has something to do. */
class Colleague {
  readonly #begin: () => Worker;
  #worker: Worker | undefined;

  constructor(begin: () => Worker) {
    this.#begin = begin;
  }

  judge(texts: readonly string[]): Promise<(Outcome | undefined)[]> {
    const worker = this.#worker ??= this.#begin();
    return new Promise((resolve, reject) => {
      worker.removeAllListeners().once('message', resolve).once('error', reject);
      worker.postMessage(texts, []);
    });
  }

  async end() {
    await this.#worker?.terminate();
  }
}

/** Judges on all processors, a thread each; whoever is ready takes the next in line, so that like follows like. */
export function colleagues(program: URL, catalogue: CatalogueDocument): Judges {
  const all = Array.from({ length: availableParallelism() }, () => new Colleague(() => new Worker(program, { workerData: catalogue, resourceLimits })));
  return {
    async judge(texts, progress) {
      const outcomes: (Outcome | undefined)[] = [];
      // Far from each other at first, so that each goes on where it remembers what came before.
      const shares = all.map((_, share) => ({ next: Math.floor((texts.length * share) / all.length), end: Math.floor((texts.length * (share + 1)) / all.length) }));
      let done = 0;
      await Promise.all(all.map(async (colleague, own) => {
        for (;;) {
          const share = shares[own]!.next < shares[own]!.end ? shares[own]! : shares.reduce((most, each) => (each.end - each.next > most.end - most.next ? each : most));
          if (share.next >= share.end) return;
          const from = share.next;
          share.next = Math.min(share.end, from + atOnce);
          const told = await colleague.judge(texts.slice(from, share.next));
          told.forEach((outcome, index) => { outcomes[from + index] = outcome; });
          progress(done += told.length);
        }
      }));
      return outcomes;
    },
    async end() {
      await Promise.all(all.map((colleague) => colleague.end()));
    },
  };
}
