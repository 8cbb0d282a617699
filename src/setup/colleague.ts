import type { Answer, Asked, Call, Stopped } from './calls.ts';
import type { Finding, Progress } from '../sheets/sheets.ts';
import type { View } from './view.ts';
import { workerAddress } from './worker-address.ts';

export type Outcome = { view: View; refused: readonly Finding[] } | { text: string } | { stopped: true };

/** The worker that keeps the desk, as a page speaks with it. */
export class Colleague {
  private readonly worker: Worker;
  private asked = 0;
  private readonly waiting = new Map<number, { resolve(outcome: Outcome): void; reject(trouble: Error): void; told(progress: Progress): void }>();

  constructor(asOf: string, languages: readonly string[]) {
    this.worker = new Worker(workerAddress({ asOf, languages: languages.join(',') }), { type: 'module' });
    this.worker.onmessage = ({ data }: MessageEvent<Answer>) => this.hear(data);
    this.worker.onerror = ({ message }) => {
      for (const each of this.waiting.values()) each.reject(new Error(message));
      this.waiting.clear();
    };
  }

  /** @param told  how far it is, every now and then */
  ask(call: Call, told: (progress: Progress) => void): Promise<Outcome> {
    const id = ++this.asked;
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve, reject, told });
      this.worker.postMessage({ id, call } satisfies Asked);
    });
  }

  /** Breaks off all that was asked and isn't answered. */
  stop() {
    for (const stop of this.waiting.keys()) this.worker.postMessage({ stop } satisfies Stopped);
  }

  private hear(answer: Answer) {
    const waiting = this.waiting.get(answer.id);
    if (!waiting) return;
    if ('done' in answer) {
      waiting.told(answer);
      return;
    }
    this.waiting.delete(answer.id);
    if ('failed' in answer) waiting.reject(new Error(answer.failed));
    else waiting.resolve(answer);
  }

  end() {
    this.worker.terminate();
  }
}
