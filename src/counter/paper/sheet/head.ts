import { html, nothing } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { linkTo } from '../../../handoff/link.ts';
import type { Packed } from '../../../handoff/pack.ts';
import { qrSvg } from '../../../handoff/qr.ts';
import { typedForm } from '../../../handoff/typed-form.ts';
import { dayIn } from '../../../units/day.ts';
import type { Part } from '../paper.ts';
import type { SheetView } from './view.ts';

/** The code with the answers, and the same to be typed: nothing of who the buyer is. */
function codeTemplate(packed: Packed, { page, own, handoff }: SheetView) {
  const link = page === undefined ? undefined : linkTo(page, packed);
  const code = link && qrSvg(link, handoff.codeTitle);
  if (!code) return nothing;
  const typed = typedForm(packed);
  return html`
    <div class="code" data-link=${link!}>
      <div>
        <p>${own.scan}</p>
        ${'text' in typed ? html`<p>${own.type}<br /><span class="typed">${typed.text}</span></p>` : html`<p>${handoff.tooLongToType(typed.tooLong.length, typed.tooLong.most)}</p>`}
      </div>
      <div class="qr">${unsafeSVG(code)}</div>
    </div>`;
}

/** Who hands it over, what it is, of which day, and the code to go on with. */
export function headPart(packed: Packed, cut: boolean, view: SheetView): Part {
  const { catalogue: { dealer, asOf }, voice: { words, reader }, own, page } = view;
  const reach = [dealer.phone, dealer.email, dealer.address, dealer.url].filter((each) => each !== undefined);
  return {
    id: 'head',
    body: html`
      <div class="head">
        <div>
          <p class="dealer"><strong><bdi>${dealer.name}</bdi></strong>${reach.map((each) => html`<br /><bdi>${each}</bdi>`)}</p>
          <h1>${words.result.title}</h1>
          <p>${words.result.asOf(dayIn(reader.locale, asOf))}</p>
        </div>
        ${codeTemplate(packed, view)}
      </div>
      ${cut ? html`<p class="cut">${own.onlyNamed.sheet[page === undefined ? 'alone' : 'withCode']}</p>` : nothing}`,
  };
}
