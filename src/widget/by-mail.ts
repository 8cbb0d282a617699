import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import type { AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Voice } from '../reasons/say.ts';
import type { Shortlist } from '../reasons/schema.ts';
import type { RequestKind } from '../request/names.ts';
import { acreEvent } from './events.ts';
import type { LanguageTag } from './languages.ts';
import { laterParts } from './later-parts.ts';
import type { MailFrame, Mailing } from './mail/mailing.ts';
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

type Made = typeof import('./mail/mail.ts');

/** Whether a unit that does the work can be had; where none can, word from the dealer is of more use than a list. */
const hasUnit = ({ shortlist }: Shortlist) => shortlist.some(({ units }) => units.some(({ verdict }) => verdict === 'stands'));

/** What a buyer sees of having the shortlist mailed: a button, and below it, once it is pressed and fetched, the form. */
export class ByMail implements ReactiveController {
  private open: RequestKind | undefined;
  private made: Made | undefined;
  private words: MailWords | undefined;
  private fetching: LanguageTag | undefined;
  private isMissing = false;
  private mailing: Mailing | undefined;
  private view: ByMailView | undefined;
  private focus: string | undefined;

  constructor(private readonly host: Host) {
    host.addController(this);
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
    this.fetch(language as LanguageTag);
    if (this.isMissing) return html`<p role="alert">${byMail.missing}</p>`;
    const { made, words, mailing } = this;
    if (!made || !words || !mailing) return html`<p role="status">${wizard.loading}</p>`;
    return made.mailFormTemplate({ mailing, words, dealer: view.catalogue.dealer.name, submit: () => this.submit(), close: () => this.closeByHand() });
  }

  private unfold(kind: RequestKind) {
    this.open = kind;
    this.isMissing = false;
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
  private frame(): MailFrame {
    const { answers, shortlist: { catalogue, rules }, voice: { words, reader } } = this.view!;
    return { dealer: catalogue.id, answers, language: words.language, units: reader.units, seen: { catalogue: { id: catalogue.id, asOf: catalogue.asOf, ...(catalogue.version !== undefined && { version: catalogue.version }) }, rules: { version: rules.version } } };
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

  /** What makes the form, and its words in the language of the page. */
  private async fetch(language: LanguageTag) {
    if ((this.words?.language === language && this.made) || this.fetching === language || this.isMissing) return;
    this.fetching = language;
    try {
      const [words, made] = await Promise.all([laterParts[language].mail(), import('./mail/mail.ts')]);
      if (this.fetching !== language) return;
      this.words = words;
      this.made = made;
      const { relay } = this.host;
      if (this.open && relay) this.mailing ??= new made.Mailing(relay, this.open, () => this.frame(), () => this.told());
    } catch (trouble) {
      console.warn(`acre-to-axle: ${String(trouble)}`);
      this.isMissing = true;
    }
    if (this.fetching === language) this.fetching = undefined;
    this.host.requestUpdate();
  }
}
