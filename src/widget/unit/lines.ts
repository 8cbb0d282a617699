import { html, nothing } from 'lit';
import type { SaidQuotation } from '../../lot/quotation/say.ts';
import type { UnitView } from './view.ts';

/** Lines under each other with their sum; the same on the page and on paper. */
export function linesTemplate(said: SaidQuotation, { price }: UnitView['words']) {
  const noted = (notes: readonly string[]) => notes.map((note) => html`<span class="lesser note">${note}</span>`);
  return html`
    <table class="lines">
      <thead class="unseen"><tr><th scope="col">${price.columns.what}</th><th scope="col">${price.columns.amount}</th></tr></thead>
      <tbody>${said.lines.map(({ name, amount, notes }) => html`
        <tr><th scope="row">${name}${noted(notes)}</th><td>${amount || html`<em>${price.ask}</em>`}</td></tr>`)}</tbody>
      <tfoot><tr><th scope="row">${said.total.name}${noted(said.total.notes)}</th><td>${said.total.amount || html`<em>${price.ask}</em>`}</td></tr></tfoot>
    </table>`;
}

/** By what instalments, with all that belongs to them and the dealer's own words for it; nothing where none may be told. */
export function loansTemplate({ loans }: SaidQuotation, { catalogue: { dealer }, words: { language } }: UnitView) {
  if (!loans) return nothing;
  const own = dealer.terms?.[language]?.finance;
  return html`
    <div class="close loans">
      <p><strong>${loans.heading}</strong></p>
      <ul class="plain">${loans.says.map((each) => html`<li>${each}</li>`)}</ul>
      ${loans.notes.map((note) => html`<p class="lesser">${note}</p>`)}
      ${own ? html`<p class="lesser" dir="auto">${own}</p>` : nothing}
    </div>`;
}
