import type { AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Ranking } from '../ranking/rank.ts';
import { afterPaint } from './after-paint.ts';
import type { Ready } from './ready.ts';

/** How the machines stood when it was reckoned last. */
export interface Counted {
  of: AnswersDocument;
  for: CatalogueDocument;
  ranking: Ranking;
}

/** How the machines stand: reckoned once for each change of the answers, and not before the next question is seen. */
export class Counting {
  private counted: Counted | undefined;
  private later: Promise<void> | undefined;
  private readonly again: () => Promise<void>;

  /** @param again  shows the page anew, should it still be there */
  constructor(again: () => Promise<void>) {
    this.again = again;
  }

  /** At once, for whoever can't do without. */
  now({ document, reckoner, inSi }: Ready, answers: AnswersDocument): Counted {
    if (!this.isOf(document, answers)) {
      this.counted = { of: answers, for: document, ranking: reckoner.rank(inSi, reckoner.answersOf(answers)) };
    }
    return this.counted!;
  }

  /** How they stood last, where that is of this line-up; the next frame shows how they stand now. */
  last({ document }: Ready, answers: AnswersDocument): Counted | undefined {
    if (!this.isOf(document, answers)) this.later ??= this.inNextFrame();
    return this.counted?.for === document ? this.counted : undefined;
  }

  /** Resolves once the page shows how they stand. */
  get shown(): Promise<void> | undefined {
    return this.later;
  }

  private isOf(document: CatalogueDocument, answers: AnswersDocument) {
    return this.counted?.of === answers && this.counted.for === document;
  }

  private async inNextFrame() {
    await afterPaint();
    this.later = undefined;
    await this.again();
  }
}
