import { html, nothing } from 'lit';
import type { SaidQuotation } from '../../lot/quotation/say.ts';
import type { UnitView } from './view.ts';

/** Lines under each other with their sum; the same on the page and on paper. */
export function linesTemplate(said: SaidQuotation, { price }: UnitView['words']) {
  const noted = (notes: readonly string[]) => notes.map((note) => html`<span class="lesser note">${note}</span>`);
  // On a narrow page its rows are laid out as a grid, which takes away what they are unless it is said.
  const row = ({ name, amount, notes }: SaidQuotation['total']) => html`
    <tr role="row"><th scope="row" role="rowheader">${name}${noted(notes)}</th><td role="cell">${amount || html`<em>${price.ask}</em>`}</td></tr>`;
  return html`
    <table class="lines" role="table">
      <thead class="unseen" role="rowgroup"><tr role="row"><th scope="col" role="columnheader">${price.columns.what}</th><th scope="col" role="columnheader">${price.columns.amount}</th></tr></thead>
      <tbody role="rowgroup">${said.lines.map(row)}</tbody>
      <tfoot role="rowgroup">${row(said.total)}</tfoot>
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
