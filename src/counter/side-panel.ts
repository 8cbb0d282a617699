import { nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { answersOf } from '../answers/answers.ts';
import { needsOf } from '../needs/all.ts';
import type { Voice } from '../reasons/say.ts';
import { ruleBook } from '../trade/book.ts';
import { foldedLineUpTemplate } from '../widget/line-up.ts';
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
  whole(): void;
}

/** What stands beside the sheet: the shortlist and the line-up, drawn anew only where what they show has changed. */
export class SidePanel implements ReactiveController {
  private side: 'side' | 'rear' = 'side';
  private pointed: string | undefined;
  private isOpen = false;
  private room = 0;
  private readonly watch = new ResizeObserver(([entry]) => {
    requestAnimationFrame(() => this.set({ room: Math.floor(entry!.contentRect.width) }));
  });

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  hostConnected() {
    this.watch.observe(this.host);
  }

  hostDisconnected() {
    this.watch.disconnect();
  }

  private set(changed: { side?: 'side' | 'rear'; pointed?: string; isOpen?: boolean; room?: number }) {
    Object.assign(this, changed);
    this.host.requestUpdate();
  }

  template(view: SideView) {
    const { outcome, voice, own, stock } = view;
    const shown = [outcome?.of, outcome?.standing, outcome?.shortlist, outcome?.isWhole, voice.words, voice.reader.units, stock, this.side, this.pointed, this.isOpen, this.room];
    return guard(shown, () => outcomeTemplate({ outcome, voice, own, catalogue: stock.document, lineUp: this.lineUp(view), whole: view.whole }));
  }

  private lineUp({ stock, outcome, voice }: SideView) {
    if (!outcome) return nothing;
    const answers = answersOf(outcome.of);
    const book = ruleBook(stock.document.rules);
    const width = this.room >= besideFrom ? this.room * besideShare : this.room;
    return foldedLineUpTemplate({
      catalogue: stock.inSi, answers, book, needs: needsOf(answers, book), voice, standing: outcome.standing, units: voice.reader.units,
      side: this.side, pointed: this.pointed, width: Math.max(leastPicture, width - aroundPicture),
      turn: (side) => this.set({ side }), point: (pointed) => { if (pointed !== this.pointed) this.set({ pointed }); },
    }, voice, this.isOpen, (isOpen) => { if (isOpen !== this.isOpen) this.set({ isOpen }); });
  }
}
