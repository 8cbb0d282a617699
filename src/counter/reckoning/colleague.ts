import type { AnswersDocument } from '../../answers/schema.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { afterPaint } from '../../widget/after-paint.ts';
import { whenIdle } from '../../widget/in-slices.ts';
import { scriptAddress } from '../scripts.ts';
import type { Said, Told } from './calls.ts';
import { reckoned } from './steps.ts';

/** Beside the page's own script, as the build names it. */
const file = 'acre-to-axle-counter-reckoning.js';

/** Reckons off the page where there is a worker, and between its frames where there is none. */
export class Colleague {
  private worker: Worker | undefined;
  private last = 0;
  private ended = false;

  constructor(private readonly document: CatalogueDocument, private readonly inSi: Catalogue, private readonly said: (said: Said) => void) {
    // From its sources the page has no such file, and a page may be denied workers.
    if (import.meta.url.endsWith('.ts')) return;
    try {
      this.worker = new Worker(scriptAddress(new URL(file, import.meta.url)), { type: 'module' });
      this.worker.addEventListener('message', ({ data }: MessageEvent<Said>) => this.said(data));
      this.worker.addEventListener('error', () => this.doWithout());
      this.tell({ catalogue: document });
    } catch {
      this.worker = undefined;
    }
  }

  ask(id: number, answers: AnswersDocument) {
    this.last = id;
    this.asked = answers;
    if (this.worker) this.tell({ id, answers });
    else void this.reckon(id, answers);
  }

  end() {
    this.ended = true;
    this.worker?.terminate();
  }

  private asked: AnswersDocument | undefined;

  private tell(told: Told) {
    this.worker!.postMessage(told);
  }

  private doWithout() {
    this.worker?.terminate();
    this.worker = undefined;
    if (this.asked) void this.reckon(this.last, this.asked);
  }

  private async reckon(id: number, answers: AnswersDocument) {
    await afterPaint();
    const steps = reckoned(id, answers, this.document, this.inSi);
    const step = () => {
      if (id !== this.last || this.ended) return;
      const { done, value } = steps.next();
      if (done) return;
      this.said(value);
      whenIdle(step);
    };
    step();
  }
}
