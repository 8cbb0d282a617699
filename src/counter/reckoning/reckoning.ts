import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { noAnswers } from '../../answers/names.ts';
import type { AnswersDocument } from '../../answers/schema.ts';
import type { Shortlist } from '../../reasons/schema.ts';
import type { StandingSoFar } from '../../reasons/standing-so-far.ts';
import type { StockList } from '../stock-list.ts';
import type { Said } from './calls.ts';
import { Colleague } from './colleague.ts';

/** How the machines stand for some answers; the shortlist comes a moment later, and until then it is that of before. */
export interface Outcome {
  of: AnswersDocument;
  standing: StandingSoFar;
  shortlist: Shortlist | undefined;
  isWhole: boolean;
}

/** Follows the answers: each change is reckoned apart from the page, and what has been typed over is dropped. */
export class Reckoning implements ReactiveController {
  outcome: Outcome | undefined;
  private colleague: Colleague | undefined;
  private stock: StockList | undefined;
  private asked: AnswersDocument | undefined;
  private id = 0;
  private waiting: ((shortlist: Shortlist) => void)[] = [];

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected() {}

  hostDisconnected() {
    this.colleague?.end();
    this.colleague = undefined;
    this.stock = undefined;
    this.forget();
  }

  /** Nothing that was reckoned for one customer is there for the next. */
  forget() {
    this.id += 1;
    this.asked = undefined;
    this.outcome = undefined;
    this.waiting = [];
    // What reckons has the last answers in its hands: it is given others.
    this.colleague?.ask(this.id, noAnswers);
  }

  follow(answers: AnswersDocument, stock: StockList) {
    if (stock !== this.stock) {
      this.colleague?.end();
      this.colleague = new Colleague(stock.document, stock.inSi, (said) => this.heard(said));
      this.stock = stock;
      this.asked = undefined;
    }
    if (answers === this.asked) return;
    this.asked = answers;
    this.id += 1;
    if (this.outcome?.isWhole) {
      this.outcome = { ...this.outcome, isWhole: false };
      this.host.requestUpdate();
    }
    this.colleague!.ask(this.id, answers);
  }

  /** The shortlist of the answers as they stand, once it is there. */
  get whole(): Promise<Shortlist> {
    const { outcome } = this;
    if (outcome?.isWhole && outcome.of === this.asked) return Promise.resolve(outcome.shortlist!);
    return new Promise((resolve) => { this.waiting.push(resolve); });
  }

  private heard(said: Said) {
    if (said.id !== this.id || !this.asked) return;
    if ('standing' in said) this.outcome = { of: this.asked, standing: said.standing, shortlist: this.outcome?.shortlist, isWhole: false };
    else if (this.outcome) {
      this.outcome = { ...this.outcome, shortlist: said.shortlist, isWhole: true };
      for (const tell of this.waiting.splice(0)) tell(said.shortlist);
    }
    this.host.requestUpdate();
  }
}
