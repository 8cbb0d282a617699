import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { emptyTally, merge } from '../../demand/tally.ts';
import { tallyLines, type Tallied } from '../../demand/tally-lines.ts';

interface Task {
  catalogue: CatalogueDocument;
  lines: readonly string[];
}

type Told = { done: number } | { tallied: Tallied };

/** Requests between two signs of how far it is, and from how many on others help. */
const [tellEvery, worthHelp] = [50, 200];

/** Memory of a colleague: what was judged before is remembered as long as there is room. */
const resourceLimits = { maxOldGenerationSizeMb: 200, maxYoungGenerationSizeMb: 32 };

/** What a colleague does: this program again, in a thread of its own. */
export function workAsColleague() {
  const { catalogue, lines } = workerData as Task;
  const work = tallyLines(catalogue, lines);
  for (;;) {
    const { done, value } = work.next();
    if (done) {
      parentPort!.postMessage({ tallied: value } satisfies Told, []);
      return;
    }
    if (value % tellEvery === 0) parentPort!.postMessage({ done: value } satisfies Told, []);
  }
}

function colleague(program: URL, task: Task, progress: (done: number) => void): Promise<Tallied> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(program, { workerData: task, resourceLimits });
    worker.on('message', (told: Told) => ('done' in told ? progress(told.done) : resolve(told.tallied)));
    worker.on('error', reject);
  });
}

/** Judges requests on all processors. */
export async function tally(program: URL, catalogue: CatalogueDocument, lines: readonly string[], progress: (done: number) => void): Promise<Tallied> {
  const many = Math.max(1, Math.min(availableParallelism(), Math.ceil(lines.length / worthHelp)));
  const far = Array.from({ length: many }, () => 0);
  const parts = await Promise.all(far.map((_, part) => colleague(program, { catalogue, lines: lines.filter((_line, index) => index % many === part) }, (done) => {
    far[part] = done;
    progress(far.reduce((sum, each) => sum + each, 0));
  })));
  const whole: Tallied = { tally: emptyTally(), unreadable: 0 };
  for (const part of parts) {
    merge(whole.tally, part.tally);
    whole.unreadable += part.unreadable;
  }
  return whole;
}
