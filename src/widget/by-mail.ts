import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import type { AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Voice } from '../reasons/say.ts';
import type { Shortlist } from '../reasons/schema.ts';
import { seenOf, type RequestFrame } from '../request/form.ts';
import type { RequestKind } from '../request/names.ts';
import { acreEvent } from './events.ts';
import type { LanguageTag } from './languages.ts';
import { Later } from './later.ts';
import { laterParts } from './later-parts.ts';
import { missingTemplate } from './missing.ts';
import type { Mailing } from './mail/mailing.ts';
import type { MailWords } from './mail/words/words.ts';

interface Host extends HTMLElement, ReactiveControllerHost {
  readonly relay: string | undefined;
}

export interface ByMailView {
  answers: AnswersDocument;
  shortlist: Shortlist;
  catalogue: CatalogueDocument;
  voice: Voice;
}

/** Whether a unit that does the work can be had; where none can, word from the dealer is of more use than a list. */
const hasUnit = ({ shortlist }: Shortlist) => shortlist.some(({ units }) => units.some(({ verdict }) => verdict === 'stands'));

/** What a buyer sees of having the shortlist mailed: a button, and below it, once it is pressed and fetched, the form. */
export class ByMail implements ReactiveController {
  private open: RequestKind | undefined;
  /** What makes the form, and its words in the language of the page. */
  private readonly form: Later<LanguageTag, { words: MailWords; made: typeof import('./mail/mail.ts') }>;
  private mailing: Mailing | undefined;
  private view: ByMailView | undefined;
  private focus: string | undefined;

  constructor(private readonly host: Host) {
    host.addController(this);
    this.form = new Later(host, async (language) => {
      const [words, made] = await Promise.all([laterParts[language].mail(), import('./mail/mail.ts')]);
      return { words, made };
    });
  }

  hostDisconnected() {
    this.close();
  }

  hostUpdated() {
    const target = this.focus && this.host.shadowRoot?.querySelector<HTMLElement>(this.focus);
    if (!target) return;
    this.focus = undefined;
    target.focus();
  }

  /** The buttons, or the form; nothing where the page named no relay. */
  fold(view: ByMailView) {
    this.view = view;
    if (!this.host.relay) return nothing;
    const { result: { byMail }, wizard, language } = view.voice.words;
    if (!this.open) {
      const button = (kind: RequestKind, name: string) => html`<button class=${name} type="button" part="by-mail" data-kind=${kind} @click=${() => this.unfold(kind)}>${byMail[kind]}</button>`;
      return html`<div class="actions">${hasUnit(view.shortlist) ? button('shortlist', 'main') : html`${button('notify', 'main')}${button('shortlist', 'text')}`}</div>`;
    }
    this.form.want(language as LanguageTag);
    if (this.form.isMissing) return missingTemplate(byMail.missing, wizard.tryAgain, () => this.form.tryAgain());
    if (!this.form.there) return html`<p role="status">${wizard.loading}</p>`;
    const { words, made } = this.form.there;
    const mailing = this.mailing ??= new made.Mailing(this.host.relay, this.open, () => this.frame(), () => this.told());
    return made.mailFormTemplate({ mailing, words, dealer: view.catalogue.dealer.name, submit: () => this.submit(), close: () => this.closeByHand() });
  }

  private unfold(kind: RequestKind) {
    this.open = kind;
    this.form.tryAgain();
    this.focus = '#mail-heading';
    this.host.requestUpdate();
  }

  private closeByHand() {
    const kind = this.open;
    this.close();
    this.focus = `[part="by-mail"][data-kind="${kind}"]`;
    this.host.requestUpdate();
  }

  private close() {
    this.mailing?.stop();
    this.mailing = undefined;
    this.open = undefined;
  }

  /** What the request says besides what is typed. */
  private frame(): RequestFrame {
    const { answers, shortlist, voice: { words, reader } } = this.view!;
    return { dealer: shortlist.catalogue.id, answers, language: words.language, units: reader.units, seen: seenOf(shortlist) };
  }

  private async submit() {
    const { mailing } = this;
    if (!mailing) return;
    const before = acreEvent('acre-before-submit', { kind: mailing.kind }, true);
    if (!mailing.check() || !this.host.dispatchEvent(before)) {
      this.focus = '[aria-invalid="true"]';
      this.host.requestUpdate();
      return;
    }
    await mailing.send();
  }

  private told() {
    const { mailing } = this;
    if (mailing?.state.at === 'sent') this.host.dispatchEvent(acreEvent('acre-submitted', { kind: mailing.kind }));
    this.host.requestUpdate();
  }
}
