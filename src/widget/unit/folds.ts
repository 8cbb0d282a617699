import { adoptStyles, html, nothing, supportsAdoptingStyleSheets, type CSSResult, type ReactiveControllerHost } from 'lit';
import type { LanguageTag } from '../languages.ts';
import { laterParts } from '../later-parts.ts';
import type { Closer } from './unit.ts';
import type { CloserView, Named } from './view.ts';
import type { UnitWords } from './words/words.ts';

interface Host extends HTMLElement, ReactiveControllerHost {}

const keyOf = ({ machine, unit }: Named) => `${machine}/${unit ?? ''}`;

/** One fold for each unit told: what is within, with its words, is fetched once one of them is unfolded. */
export class Folds {
  private open = new Set<string>();
  private made: Closer | undefined;
  private words: UnitWords | undefined;
  private fetching: LanguageTag | undefined;
  private isMissing = false;
  private isWorn = false;

  constructor(private readonly host: Host) {}

  /** Whoever comes after this buyer finds nothing of his. */
  forget() {
    this.open = new Set();
    this.made = undefined;
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
      this.isMissing = false;
      this.host.requestUpdate();
    };
    if (isOpen) this.fetch(language as LanguageTag);
    const inside = () => {
      if (this.isMissing) return html`<p role="alert">${result.takeAlong.missing}</p>`;
      const { made, words } = this;
      return made && words ? html`<div class="closer">${made.template(named, stands, words, view)}</div>` : html`<p role="status">${wizard.loading}</p>`;
    };
    return html`
      <details part="closer" class="fold" data-of=${key} .open=${isOpen} @toggle=${toggled}>
        <summary>${facts ? result.closer.unit : result.closer.machine}${facts ? html`<span class="unseen">: ${facts}</span>` : nothing}</summary>
        ${isOpen ? inside() : nothing}
      </details>`;
  }

  private async fetch(language: LanguageTag) {
    if ((this.words?.language === language && this.made) || this.fetching === language || this.isMissing) return;
    this.fetching = language;
    try {
      const [words, made] = await Promise.all([laterParts[language].unit(), import('./unit.ts')]);
      if (this.fetching !== language) return;
      this.words = words;
      this.made ??= new made.Closer(() => this.host.requestUpdate());
      this.wear(made.unitLook);
    } catch (trouble) {
      console.warn(`acre-to-axle: ${String(trouble)}`);
      this.isMissing = true;
    }
    if (this.fetching === language) this.fetching = undefined;
    this.host.requestUpdate();
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
