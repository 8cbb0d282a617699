import { adoptStyles, html, nothing, supportsAdoptingStyleSheets, type CSSResult, type ReactiveControllerHost } from 'lit';
import type { LanguageTag } from '../languages.ts';
import { Later } from '../later.ts';
import { laterParts } from '../later-parts.ts';
import { missingTemplate } from '../missing.ts';
import type { Closer } from './unit.ts';
import type { CloserView, Named } from './view.ts';
import type { UnitWords } from './words/words.ts';

type Host = Pick<HTMLElement, 'shadowRoot'> & Pick<ReactiveControllerHost, 'requestUpdate'>;

const keyOf = ({ machine, unit }: Named) => `${machine}/${unit ?? ''}`;

/** One fold for each unit told: what is within, with its words, is fetched once one of them is unfolded. */
export class Folds {
  private open = new Set<string>();
  /** What makes what is within; a buyer's ticks are in the closer, which goes on in another language. */
  private readonly within: Later<LanguageTag, { words: UnitWords; made: typeof import('./unit.ts') }>;
  private closer: Closer | undefined;
  private isWorn = false;

  constructor(private readonly host: Host) {
    this.within = new Later(host, async (language) => {
      const [words, made] = await Promise.all([laterParts[language].unit(), import('./unit.ts')]);
      this.wear(made.unitLook);
      return { words, made };
    });
  }

  /** Whoever comes after this buyer finds nothing of his. */
  forget() {
    this.open = new Set();
    this.closer = undefined;
  }

  /**
   * @param facts   which unit it is, for who hears a list of folds read out; '' for a machine of which none is on the lot
   * @param stands  whether it meets the buyer's musts
   */
  fold(named: Named, facts: string, stands: boolean, view: CloserView) {
    const { words: { language, result, wizard } } = view.voice;
    const key = keyOf(named);
    const isOpen = this.open.has(key);
    const toggled = ({ target, currentTarget }: Event) => {
      if (target !== currentTarget) return;
      this.open[(target as HTMLDetailsElement).open ? 'add' : 'delete'](key);
      this.within.tryAgain();
    };
    if (isOpen) this.within.want(language as LanguageTag);
    const inside = () => {
      const { isMissing, there } = this.within;
      if (isMissing) return missingTemplate(result.takeAlong.missing, wizard.tryAgain, () => this.within.tryAgain());
      if (!there) return html`<p role="status">${wizard.loading}</p>`;
      this.closer ??= new there.made.Closer(() => this.host.requestUpdate());
      return html`<div class="closer">${this.closer.template(named, stands, there.words, view)}</div>`;
    };
    return html`
      <details part="closer" class="fold" data-of=${key} .open=${isOpen} @toggle=${toggled}>
        <summary>${facts ? result.closer.unit : result.closer.machine}${facts ? html`<span class="unseen">: ${facts}</span>` : nothing}</summary>
        ${isOpen ? inside() : nothing}
      </details>`;
  }

  private wear(look: CSSResult) {
    const root = this.host.shadowRoot!;
    if (this.isWorn) return;
    this.isWorn = true;
    // Lit puts sheets in the place of those that are there, but style elements behind them.
    if (supportsAdoptingStyleSheets) root.adoptedStyleSheets = [...root.adoptedStyleSheets, look.styleSheet!];
    else adoptStyles(root, [look]);
  }
}
