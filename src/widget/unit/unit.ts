import { html, nothing, type TemplateResult } from 'lit';
import { answersOf, type Answers } from '../../answers/answers.ts';
import { considered, type Considered } from '../../lot/considered.ts';
import { shownToBuyers } from '../../lot/shows.ts';
import { buyerOf, type Buyer } from './buyer.ts';
import { inspectTemplate, type Looked } from './inspect.ts';
import { priceTemplate } from './price.ts';
import { candidateOf, keyOf, type CloserView, type Named, type UnitView } from './view.ts';
import type { UnitWords } from './words/words.ts';

export { unitLook } from './look.ts';

/** What is kept of one unit as long as the page is open. */
interface Kept extends Looked {
  beside: string | undefined;
  open: Set<string>;
}

/** All that is told of one unit once a buyer unfolds it: fetched then, and not before. */
export class Closer {
  private buyer: Buyer | undefined;
  private readonly kept = new Map<string, Kept>();
  private of: readonly unknown[] = [];
  private made: { read: Answers; considered: Considered } | undefined;
  private costs: typeof import('./compare.ts') | undefined;
  private asking: typeof import('./asking.ts') | undefined;
  private missing: unknown;

  /** @param changed  shows the page anew */
  constructor(private readonly changed: () => void) {}

  /** @param stands  whether it meets the buyer's musts: only such ones are set beside each other */
  template(named: Named, stands: boolean, words: UnitWords, view: CloserView): TemplateResult | typeof nothing {
    const candidate = candidateOf(named, view.inSi);
    if (!candidate) return nothing;
    const key = keyOf(named);
    const kept = this.keptOf(key);
    const own: UnitView = {
      ...view, voice: { ...view.voice, machine: named.machine }, key, words, candidate, ...this.before(view), buyer: (this.buyer ??= buyerOf(view.answers)),
      say: (what) => { this.buyer = { ...this.buyer!, ...what }; this.changed(); },
    };
    const { unit } = candidate;
    const { dealer } = view.inSi;
    const part = (id: string, name: string, inside: () => unknown) => {
      const toggled = ({ target }: Event) => {
        kept.open[(target as HTMLDetailsElement).open ? 'add' : 'delete'](id);
        this.missing = undefined;
        this.changed();
      };
      return html`<details data-closer=${id} .open=${kept.open.has(id)} @toggle=${toggled}><summary>${name}</summary>${kept.open.has(id) ? inside() : nothing}</details>`;
    };
    return html`
      ${part('price', words.price.open, () => priceTemplate(own))}
      ${unit ? part('look', words.look.open, () => inspectTemplate(own, unit, { looked: kept, changed: this.changed })) : nothing}
      ${stands && shownToBuyers(dealer, 'owningComparison') ? part('costs', words.costs.open, () => this.once(own, this.costs, async () => { this.costs = await import('./compare.ts'); })
        ?? this.costs!.compareTemplate(own, { chosen: kept.beside, choose: (beside) => { kept.beside = beside; this.changed(); } })) : nothing}
      ${unit && shownToBuyers(dealer, 'askingContext') ? part('asking', words.asking.open, () => this.once(own, this.asking, async () => { this.asking = await import('./asking.ts'); })
        ?? this.asking!.askingTemplate(own, unit, this.changed)) : nothing}`;
  }

  /** What stands there until a part that few unfold has come, or where it can't be had; undefined once it is there. */
  private once({ voice: { words: { result, wizard } } }: UnitView, there: unknown, fetch: () => Promise<void>) {
    if (there) return undefined;
    if (this.missing) return html`<p role="alert">${result.takeAlong.missing}</p>`;
    this.fetched(fetch);
    return html`<p role="status">${wizard.loading}</p>`;
  }

  private async fetched(fetch: () => Promise<void>) {
    try {
      await fetch();
    } catch (trouble) {
      console.warn(`acre-to-axle: ${String(trouble)}`);
      this.missing = trouble;
    }
    this.changed();
  }

  private keptOf(key: string): Kept {
    const kept = this.kept.get(key) ?? { done: new Set(), bad: new Set(), beside: undefined, open: new Set() };
    this.kept.set(key, kept);
    return kept;
  }

  private before({ answers, inSi }: CloserView) {
    if (!this.made || this.of[0] !== answers || this.of[1] !== inSi) {
      const read = answersOf(answers);
      this.made = { read, considered: considered(inSi, read) };
      this.of = [answers, inSi];
    }
    return this.made;
  }
}
