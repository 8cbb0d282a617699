import { html, nothing } from 'lit';
import type { AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { linkTo } from '../handoff/link.ts';
import { pack } from '../handoff/pack.ts';
import type { Voice } from '../reasons/say.ts';
import type { Shortlist } from '../reasons/schema.ts';
import { mailsOf, mailsTemplate } from '../widget/hand-on/mails.ts';
import type { Spoken } from './languages.ts';
import { buyerCodeTemplate } from './opening/buyer-code.ts';

export interface TakingView {
  spoken: Spoken;
  voice: Voice;
  answers: AnswersDocument;
  catalogue: CatalogueDocument;
  /** Once it is there for the answers as they stand. */
  shortlist: Shortlist | undefined;
  /** The page on the dealer's site whose wizard begins from links. */
  page: string | undefined;
  said: 'printed' | 'not-fits' | 'mail' | undefined;
  print(): void;
  mailSaved(): void;
}

/** The shortlist as a mail of the customer's own, which nobody sends for him. */
function mailTemplate({ spoken: { handOn }, voice, answers, catalogue, shortlist, page, mailSaved }: TakingView) {
  if (!shortlist) return nothing;
  const link = page === undefined ? undefined : linkTo(page, pack(answers));
  const mails = mailsOf({ shortlist, catalogue, voice, own: handOn.handoff, ...(link !== undefined && { link }) });
  return html`
    <section class="close" aria-labelledby="own-mail-heading">
      <h2 id="own-mail-heading">${handOn.mail.heading}</h2>
      ${mailsTemplate(mails, handOn, { saved: mailSaved })}
    </section>`;
}

/** What the customer takes along: the sheet, the code, the shortlist as a mail of his own. */
export function takingTemplate(view: TakingView) {
  const { spoken: { own, opening, handOn }, voice, answers, shortlist, page, said, print } = view;
  const { take } = own;
  return html`
    <section class="taking stack" aria-labelledby="taking-heading">
      <h2 id="taking-heading" tabindex="-1">${take.heading}</h2>
      <div class="close">
        <p>${take.printHint}</p>
        <div class="actions"><button class="main" type="button" data-print ?disabled=${!shortlist} @click=${print}>${take.print}</button></div>
        <p role="status">${said === 'printed' ? take.printed : said === 'not-fits' ? take.notFits : said === 'mail' ? handOn.mail.saved(`${handOn.mail.file}.eml`) : ''}</p>
      </div>
      ${page === undefined ? html`<p class="lesser">${take.noPage}</p>` : buyerCodeTemplate({ answers, page, words: opening, voice })}
      ${mailTemplate(view)}
    </section>`;
}
