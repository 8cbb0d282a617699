import { nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { answersOf } from '../answers/answers.ts';
import { needsOf } from '../needs/all.ts';
import type { Voice } from '../reasons/say.ts';
import { ruleBook } from '../trade/book.ts';
import { foldedLineUpTemplate } from '../widget/line-up.ts';
import { Folds } from '../widget/unit/folds.ts';
import type { Named } from '../widget/unit/view.ts';
import type { Outcome } from './reckoning/reckoning.ts';
import type { StockList } from './stock-list.ts';
import { outcomeTemplate } from './view-of-outcome.ts';
import type { CounterWords } from './words/words.ts';

/** CSS pixels the picture takes at least, and what lies round it. */
const [leastPicture, aroundPicture] = [240, 50];
/** Share of the page that stands beside the sheet, and from what width on [CSS pixels]; as the look has it. */
const [besideShare, besideFrom] = [0.34, 1024];

export interface SideView {
  stock: StockList;
  outcome: Outcome | undefined;
  voice: Voice;
  own: CounterWords;
  /** What comes out of the printer. */
  paper: 'letter' | 'a4';
  whole(): void;
}

/** What stands beside the sheet: the shortlist and the line-up, drawn anew only where what they show has changed. */
export class SidePanel implements ReactiveController {
  private side: 'side' | 'rear' = 'side';
  private pointed: string | undefined;
  private isOpen = false;
  private room = 0;
  /** How often what is unfolded of a unit changed: it is drawn by what it keeps itself. */
  private unfolded = 0;
  private readonly folds: Folds;
  private readonly watch = new ResizeObserver(([entry]) => {
    requestAnimationFrame(() => this.set({ room: Math.floor(entry!.contentRect.width) }));
  });

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
    this.folds = new Folds({
      get shadowRoot() { return host.shadowRoot; },
      requestUpdate: () => {
        this.unfolded += 1;
        host.requestUpdate();
      },
    });
  }

  hostConnected() {
    this.watch.observe(this.host);
  }

  hostDisconnected() {
    this.watch.disconnect();
  }

  /** Whoever comes after this customer finds nothing of his. */
  forget() {
    this.folds.forget();
  }

  private set(changed: { side?: 'side' | 'rear'; pointed?: string; isOpen?: boolean; room?: number }) {
    Object.assign(this, changed);
    this.host.requestUpdate();
  }

  template(view: SideView) {
    const { outcome, voice, own, stock } = view;
    const shown = [outcome?.of, outcome?.standing, outcome?.shortlist, outcome?.isWhole, voice.words, voice.reader.units, stock, this.side, this.pointed, this.isOpen, this.room, this.unfolded];
    return guard(shown, () => outcomeTemplate({ outcome, voice, own, catalogue: stock.document, lineUp: this.lineUp(view), closer: (...unit) => this.closer(view, ...unit), whole: view.whole }));
  }

  /** CSS pixels for a picture. */
  private get width() {
    const width = this.room >= besideFrom ? this.room * besideShare : this.room;
    return Math.max(leastPicture, width - aroundPicture);
  }

  /** One unit, closer, as the wizard has it: its price with all that comes to it, and what to look at, each on paper too. */
  private closer({ stock, outcome, voice, paper }: SideView, named: Named, facts: string, stands: boolean) {
    const { of, shortlist } = outcome!;
    return this.folds.fold(named, facts, stands, { answers: of, shortlist: shortlist!, catalogue: stock.document, inSi: stock.inSi, voice, width: this.width, paper });
  }

  private lineUp({ stock, outcome, voice }: SideView) {
    if (!outcome) return nothing;
    const answers = answersOf(outcome.of);
    const book = ruleBook(stock.document.rules);
    return foldedLineUpTemplate({
      catalogue: stock.inSi, answers, book, needs: needsOf(answers, book), voice, standing: outcome.standing, units: voice.reader.units,
      side: this.side, pointed: this.pointed, width: this.width,
      turn: (side) => this.set({ side }), point: (pointed) => { if (pointed !== this.pointed) this.set({ pointed }); },
    }, voice, this.isOpen, (isOpen) => { if (isOpen !== this.isOpen) this.set({ isOpen }); });
  }
}
