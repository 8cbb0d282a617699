import { html, nothing } from 'lit';
import { sayTerms } from '../../../reasons/say-terms.ts';
import { sayCaution } from '../../../reasons/say.ts';
import type { Part } from '../paper.ts';
import { checkIds } from '../words/words.ts';
import type { Extent } from './extent.ts';
import type { SheetView } from './view.ts';

/** What to look at on the machine itself, each with a box to tick. */
export const checksPart = ({ own }: SheetView): Part => ({
  id: 'checks',
  floats: true,
  body: html`<h2>${own.checksHeading}</h2><ul class="checks">${checkIds.map((id) => html`<li data-check=${id}><span class="box"></span><span>${own.checks[id]}</span></li>`)}</ul>`,
});

/** The cautions that go with every machine and with this work, the operator's manual first. */
export function cautionsPart({ cautions: told }: Extent, { shortlist: { cautions }, voice, handoff }: SheetView): Part {
  const manual = cautions.find(({ id }) => id === 'manual');
  const rest = cautions.filter((each) => each !== manual);
  return {
    id: 'cautions',
    floats: true,
    body: html`
      <h2>${voice.words.result.cautionsHeading}</h2>
      ${manual ? html`<p><strong>${sayCaution(manual, voice)}</strong></p>` : nothing}
      ${told === 'in-short' ? html`<p>${handoff.cautionsInShort}</p>`
        : html`<ul class="points cautions">${rest.map((each) => html`<li><span class="mark">!</span><span>${sayCaution(each, voice)}</span></li>`)}</ul>`}`,
  };
}

/** Letters that may stand in one piece: a dealer's contract is longer than a page. */
const longestPiece = 1_200;

/** A text in pieces that end where its sentences do. */
function pieces(text: string): string[] {
  const all: string[] = [];
  for (const sentence of text.split(/(?<=[.!?;:])\s+|\n+/u)) {
    const longer = `${all.at(-1) ?? ''} ${sentence}`.trim();
    if (all.length > 0 && longer.length <= longestPiece) all[all.length - 1] = longer;
    else all.push(sentence);
  }
  return all;
}

/** The dealer's own terms in the language of the sheet, or ours. */
export const termsParts = ({ catalogue: { dealer }, voice: { words } }: SheetView): Part[] => pieces(sayTerms(dealer, words)).map((piece, index) => ({
  id: index === 0 ? 'terms' : `terms-${index + 1}`, body: html`${index === 0 ? html`<h2>${words.result.termsHeading}</h2>` : nothing}<p>${piece}</p>`,
}));
