import { html, nothing } from 'lit';
import { letterOf } from '../../handoff/letter/letter.ts';
import type { Telling } from '../../handoff/letter/telling.ts';
import { eml } from '../../handoff/mail/eml.ts';
import { mailto, type Mailto } from '../../handoff/mail/mailto.ts';
import { saveMail } from './taking.ts';
import type { HandOnWords } from './words/words.ts';

/** The shortlist as a mail in both ways there are without anybody who sends it for the buyer. */
export interface Mails {
  link: Mailto;
  /** Made when it is asked for: it is long. */
  file(): string;
}

export const mailsOf = (telling: Telling): Mails => ({
  link: mailto(telling),
  file: () => eml(letterOf(telling), { language: telling.voice.words.language }),
});

/** Both ways to a mail of one's own, below a heading of the caller's. */
export function mailsTemplate({ link, file }: Mails, { mail }: HandOnWords, { saved, opened }: { saved(): void; opened?(): void }) {
  const save = () => {
    saveMail(`${mail.file}.eml`, file());
    saved();
  };
  const note = link === 'no-room' ? mail.noRoom : link.isShortened ? mail.shortened : undefined;
  return html`
    <p>${mail.explained}</p>
    <div class="actions">
      <button type="button" data-save-mail @click=${save}>${mail.save}</button>
      ${link === 'no-room' ? nothing : html`<a class="button" href=${link.href} @click=${opened}>${mail.write}</a>`}
    </div>
    ${note ? html`<p class="lesser">${note}</p>` : nothing}`;
}
