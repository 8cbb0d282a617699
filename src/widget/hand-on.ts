/** What is in the folded section by which a buyer takes his answers and the shortlist along, and what reads a link: fetched once either is wanted. */
import { html, nothing, type TemplateResult } from 'lit';
import { linkTo } from '../handoff/link.ts';
import { pack, type Packed } from '../handoff/pack.ts';
import { typedForm } from '../handoff/typed-form.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Voice } from '../reasons/say.ts';
import type { Shortlist } from '../reasons/schema.ts';
import type { AcreEventDetails } from './events.ts';
import { codeTemplate } from './hand-on/code.ts';
import { mailsOf, mailsTemplate, type Mails } from './hand-on/mails.ts';
import { pageAddress } from './hand-on/page-address.ts';
import { sayLeftOut } from './hand-on/say-left-out.ts';
import { canShare, copied, shared } from './hand-on/taking.ts';
import type { HandOnWords } from './hand-on/words/words.ts';

export { readFragment } from '../handoff/link.ts';

export interface HandOnView {
  answers: AnswersDocument;
  shortlist: Shortlist;
  catalogue: CatalogueDocument;
  voice: Voice;
  words: HandOnWords;
  /** The page links lead to, as the host names it. */
  page: string | undefined;
}

type How = AcreEventDetails['acre-handed-on']['how'];
type Outcome = 'copied' | 'marked' | 'not-shared' | 'saved';
type Place = 'link' | 'typed' | 'mail';

/** All that is made of a result to be taken along. */
interface Made {
  packed: Packed;
  link: string | undefined;
  mails: Mails;
}

/** The section's state: what was made of the result it was last shown for, and how what the buyer did last went. */
export class HandOn {
  private made: Made | undefined;
  private of: readonly unknown[] = [];
  private outcome: { at: Place; is: Outcome } | undefined;

  /**
   * @param changed  shows the page anew
   * @param tell     hears of what was taken along
   */
  constructor(private readonly changed: () => void, private readonly tell: (how: How) => void) {}

  template(view: HandOnView): TemplateResult {
    const { packed, link, mails } = this.makeOf(view);
    const { words } = view;
    const leftOut = sayLeftOut(packed.leftOut, view.answers, view.voice, words);
    return html`
      <div class="stack">
        <p>${words.explained}</p>
        ${link === undefined ? html`<p>${words.noLink}</p>` : this.answersTemplate(link, packed, words)}
        ${leftOut ? html`<p>${leftOut}</p>` : nothing}
        <div class="close"><h4>${words.mail.heading}</h4>${mailsTemplate(mails, words, { saved: () => this.went('mail', 'saved', 'mail-saved'), opened: () => this.tell('mail-opened') })}</div>
        ${this.outcomeTemplate('mail', words)}
      </div>`;
  }

  private makeOf({ answers, shortlist, catalogue, voice, words, page }: HandOnView): Made {
    const of = [answers, shortlist, catalogue, words, voice.reader.units, page];
    if (!this.made || of.some((each, index) => each !== this.of[index])) {
      const packed = pack(answers);
      const link = linkTo(pageAddress(page), packed);
      this.made = { packed, link, mails: mailsOf({ shortlist, catalogue, voice, own: words.handoff, ...(link !== undefined && { link }) }) };
      this.of = of;
      this.outcome = undefined;
    }
    return this.made;
  }

  private answersTemplate(link: string, packed: Packed, words: HandOnWords) {
    const typed = typedForm(packed);
    const data = { title: words.shareTitle, url: link };
    return html`
      <div class="taken">
        <div class="close">${codeTemplate(link, words.handoff.codeTitle)}<p class="lesser">${words.code}</p></div>
        <div class="stack">
          ${this.fieldTemplate('link', link, words, canShare(data) ? html`<button type="button" @click=${() => this.share(data)}>${words.share}</button>` : nothing)}
          ${'text' in typed ? this.fieldTemplate('typed', typed.text, words)
            : html`<p>${words.handoff.tooLongToType(typed.tooLong.length, typed.tooLong.most)}</p>`}
        </div>
      </div>`;
  }

  /** What can be copied, at the press of a button or by hand. */
  private fieldTemplate(place: 'link' | 'typed', text: string, words: HandOnWords, besides: unknown = nothing) {
    const { label, copy } = words[place];
    const id = `hand-on-${place}`;
    const how = `${place}-copied` as const;
    const press = async ({ currentTarget }: Event) => {
      const field = (currentTarget as Element).closest('.field')!.querySelector('textarea')!;
      const outcome = await copied(field);
      this.went(place, outcome, outcome === 'copied' ? how : undefined);
    };
    return html`
      <div class="close field">
        <label for=${id}>${label}</label>
        <textarea id=${id} rows="2" readonly spellcheck="false" dir="ltr" .value=${text} @copy=${() => this.tell(how)}></textarea>
        <div class="actions"><button type="button" @click=${press}>${copy}</button>${besides}${this.outcomeTemplate(place, words)}</div>
      </div>`;
  }

  private async share(data: ShareData) {
    const outcome = await shared(data);
    if (outcome === 'shared') this.went('link', undefined, outcome);
    else if (outcome) this.went('link', outcome, undefined);
  }

  private went(at: Place, is: Outcome | undefined, how: How | undefined) {
    this.outcome = is && { at, is };
    if (how) this.tell(how);
    this.changed();
  }

  /** How it went, said beside what was pressed. */
  private outcomeTemplate(place: Place, words: HandOnWords) {
    const said = { copied: words.copied, marked: words.marked, 'not-shared': words.notShared, saved: words.mail.saved(`${words.mail.file}.eml`) };
    return html`<p class="lesser" role="status">${this.outcome?.at === place ? said[this.outcome.is] : ''}</p>`;
  }
}
