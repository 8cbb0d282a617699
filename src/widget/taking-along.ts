import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import type { AnswersDocument } from '../answers/schema.ts';
import { ours } from '../handoff/in-fragment.ts';
import type { Unpacked } from '../handoff/pack.ts';
import { sayRefusal, type Refusal, type RefusalCode } from '../handoff/refusal.ts';
import { acreEvent } from './events.ts';
import type { HandOn, HandOnView } from './hand-on.ts';
import type { HandOnWords } from './hand-on/words/words.ts';
import type { LanguageTag } from './languages.ts';
import { Later } from './later.ts';
import { laterParts } from './later-parts.ts';
import { missingTemplate } from './missing.ts';

interface Host extends EventTarget, ReactiveControllerHost {
  readonly linkPage: string | undefined;
  readonly fromLink: boolean;
}

/** What a buyer can do about a link; of the others nothing but to answer here. */
const mendOf: Partial<Record<RefusalCode, 'again' | 'newer'>> = { damaged: 'again', 'too-long': 'again', newer: 'newer' };

/**
 * Both ends of a link with answers: the folded section in which one is made, and what came of one that led here. Of
 * either nothing is fetched before it is wanted.
 */
export class TakingAlong implements ReactiveController {
  /** Resolves once the answers of the page's address, where there are any, are taken over or refused. */
  opened: Promise<void> | undefined;
  /** Whether that is so. */
  isRead = false;
  private isOpen = false;
  private readonly words: Later<LanguageTag, HandOnWords>;
  private readonly section: Later<'section', HandOn>;
  private outcome: 'taken-over' | Refusal | undefined;

  private fragment: string | undefined;

  /** @param takeOver  is handed the answers of a link that led here */
  constructor(private readonly host: Host, private readonly takeOver: (answers: AnswersDocument) => void) {
    host.addController(this);
    this.words = new Later(host, (language) => laterParts[language].handOn());
    this.section = new Later(host, async () => {
      const { HandOn: Section } = await import('./hand-on.ts');
      return new Section(() => host.requestUpdate(), (how) => host.dispatchEvent(acreEvent('acre-handed-on', { how })));
    });
  }

  hostConnected() {
    window.addEventListener('hashchange', this.heed);
    this.heed();
  }

  hostDisconnected() {
    window.removeEventListener('hashchange', this.heed);
  }

  /** A host may be told only later that it is to begin from links. */
  hostUpdate() {
    if (this.host.fromLink) this.heed();
  }

  /** Reads a fragment once: what the buyer changes after it counts, wherever on the page the element is put. */
  private readonly heed = () => {
    const { hash } = location;
    if (!this.host.fromLink || this.fragment === hash) return;
    this.fragment = hash;
    this.isRead = false;
    this.opened = this.open(hash);
  };

  /** The section, folded until the buyer unfolds it. */
  fold(view: Omit<HandOnView, 'words' | 'page'>) {
    const { voice: { words: { language, result, wizard } } } = view;
    const again = () => {
      this.words.tryAgain();
      this.section.tryAgain();
    };
    const toggled = ({ target }: Event) => {
      this.isOpen = (target as HTMLDetailsElement).open;
      again();
    };
    if (this.isOpen) {
      this.words.want(language as LanguageTag);
      this.section.want('section');
    }
    const { section, words, host } = this;
    const inside = () => {
      if (section.isMissing || words.isMissing) return missingTemplate(result.takeAlong.missing, wizard.tryAgain, again);
      return section.there && words.there ? section.there.template({ ...view, words: words.there, page: host.linkPage }) : html`<p role="status">${wizard.loading}</p>`;
    };
    return html`
      <details part="hand-on" class="along" .open=${this.isOpen} @toggle=${toggled}>
        <summary><h3>${result.takeAlong.open}</h3></summary>
        ${this.isOpen ? inside() : nothing}
      </details>`;
  }

  /** Takes over what a fragment holds; what is the matter with it is told above what is shown then. */
  private async open(fragment: string) {
    const read = ours.test(fragment) ? await this.read(fragment) : undefined;
    if (this.fragment !== fragment) return;
    this.isRead = true;
    this.host.requestUpdate();
    if (!read) return;
    this.outcome = 'refused' in read ? read.refused : 'taken-over';
    if ('answers' in read) this.takeOver(read.answers);
    this.host.dispatchEvent(acreEvent('acre-opened', { outcome: 'refused' in read ? read.refused.code : 'taken-over' }));
  }

  private async read(fragment: string): Promise<Unpacked | undefined> {
    try {
      return (await import('./hand-on.ts')).readFragment(fragment);
    } catch (trouble) {
      console.warn(`acre-to-axle: script.missing\n${String(trouble)}`);
      this.host.dispatchEvent(acreEvent('acre-error', { code: 'script.missing' }));
      return undefined;
    }
  }

  /** The buyer goes on: what came of a link has been read. */
  goOn() {
    this.outcome = undefined;
  }

  /** What came of the link that led here. */
  notice(language: string) {
    const { outcome } = this;
    if (!outcome) return nothing;
    this.words.want(language as LanguageTag);
    const words = this.words.there;
    if (!words) return nothing;
    if (outcome === 'taken-over') return html`<p class="opened" part="opened" role="status">${words.opened}</p>`;
    const { what, ...mends } = words.notOpened;
    return html`<div class="notice" part="opened" role="alert"><p><strong>${what}</strong></p><p>${sayRefusal(outcome, words.handoff).why}</p><p>${mends[mendOf[outcome.code] ?? 'other']}</p></div>`;
  }
}
