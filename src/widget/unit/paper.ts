import { html, nothing, type TemplateResult } from 'lit';
import type { SaidQuotation } from '../../lot/quotation/say.ts';
import { sayTerms } from '../../reasons/say-terms.ts';
import { dayOf } from '../dealer.ts';
import type { SaidList } from './list.ts';
import { linesTemplate, loansTemplate } from './lines.ts';
import { nameOf, type UnitView } from './view.ts';

/** Lines on paper to write notes on. */
const noteLines = 4;

function headTemplate(title: string, view: UnitView) {
  const { catalogue: { dealer }, candidate } = view;
  const reach = [dealer.phone, dealer.email, dealer.address].filter((each) => each !== undefined);
  return html`
    <header>
      <h1>${title}</h1>
      <p><strong><bdi>${nameOf(candidate, view)}</bdi></strong></p>
      <p class="lesser"><bdi>${dealer.name}</bdi>${reach.map((each) => html` · <bdi>${each}</bdi>`)}</p>
    </header>`;
}

function termsTemplate({ catalogue, voice, voice: { words } }: UnitView) {
  return html`
    <section class="terms close"><h2>${words.result.termsHeading}</h2><p dir="auto">${sayTerms(catalogue.dealer, words)}</p><p class="lesser">${words.result.asOf(dayOf(catalogue, voice))}</p></section>`;
}

/** A delivered price on paper: that it is no offer stands before the first figure. */
export const quotationPaper = (view: UnitView, said: SaidQuotation): TemplateResult => html`
  ${headTemplate(said.title, view)}
  <p class="offer">${said.noOffer}</p>
  ${view.candidate.unit ? nothing : html`<p>${view.words.price.typical}</p>`}
  ${linesTemplate(said, view.words)}
  ${loansTemplate(said, view)}
  ${termsTemplate(view)}`;

/** What to look at on paper: two boxes each, for a pen. */
export function inspectionPaper(view: UnitView, list: SaidList): TemplateResult {
  const { paper } = view.words.look;
  const toWrite = (what: string) => html`<p class="line">${what}: <span></span></p>`;
  return html`
    ${headTemplate(list.title, view)}
    <section class="close"><h2>${list.cautionsHeading}</h2><ul class="plain">${list.cautions.map((each) => html`<li>${each}</li>`)}</ul></section>
    <section>${toWrite(paper.day)}${toWrite(paper.serial)}</section>
    <p><strong>${paper.howTo}</strong> ${list.explained}</p>
    <ol class="looks">${list.items.map(({ name, when, why, how, notes }) => html`
      <li><span class="box"></span><span class="box"></span><div><h2>${name}</h2> <span class="lesser">${when}</span><p>${how}</p><p class="lesser">${[why, ...notes].join(' ')}</p></div></li>`)}</ol>
    <section class="write"><h2>${paper.notes}</h2>${Array.from({ length: noteLines }, () => html`<span></span>`)}</section>
    ${termsTemplate(view)}`;
}
