import { html, nothing } from 'lit';
import type { AnswersDocument } from '../../answers/schema.ts';
import { linkTo } from '../../handoff/link.ts';
import { pack } from '../../handoff/pack.ts';
import { typedForm } from '../../handoff/typed-form.ts';
import type { Voice } from '../../reasons/say.ts';
import { codeTemplate } from '../../widget/hand-on/code.ts';
import { sayLeftOut } from '../../widget/hand-on/say-left-out.ts';
import type { OpeningWords } from './words/words.ts';

export interface BuyerCodeView {
  answers: AnswersDocument;
  /** Address of the page on the dealer's site whose wizard begins from links. */
  page: string;
  words: OpeningWords;
  /** In the buyer's language, as the words are. */
  voice: Voice;
}

/** What the buyer takes along from the counter: his answers as a code to scan, as a link and as a line to type, with what doesn't go along. */
export function buyerCodeTemplate({ answers, page, words, voice }: BuyerCodeView) {
  const packed = pack(answers);
  const link = linkTo(page, packed);
  const typed = typedForm(packed);
  const leftOut = sayLeftOut(packed.leftOut, answers, voice, words);
  const { takeAlong, handoff } = words;
  const whole = (url: string) => html`
    <div class="taken">
      <div class="close">${codeTemplate(url, handoff.codeTitle)}</div>
      <div class="stack">
        <p>${takeAlong.scan}</p>
        <dl class="close">
          <dt>${takeAlong.link}</dt><dd class="line" dir="ltr">${url}</dd>
          <dt>${takeAlong.typed}</dt>
          ${'text' in typed ? html`<dd class="line typed" dir="ltr">${typed.text}</dd>` : html`<dd>${handoff.tooLongToType(typed.tooLong.length, typed.tooLong.most)}</dd>`}
        </dl>
      </div>
    </div>`;
  return html`
    <section class="buyer-code stack" aria-labelledby="buyer-code-heading">
      <h2 id="buyer-code-heading" tabindex="-1">${takeAlong.heading}</h2>
      ${link === undefined ? html`<p>${takeAlong.noLink}</p>` : whole(link)}
      ${leftOut ? html`<p>${leftOut}</p>` : nothing}
    </section>`;
}
