import { html, nothing } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { questionOf, type Field } from '../../answers/questions.ts';
import { chartSvg } from '../../lot/owning/chart-svg.ts';
import { compareOwning, type OwningComparison } from '../../lot/owning/compare.ts';
import { termsOffered } from '../../lot/owning/finance.ts';
import { chartWordsOf, sayComparison, sayLoan, type SaidComparison } from '../../lot/owning/say.ts';
import { loanOn, type LoanTerms } from '../../ranking/price.ts';
import { formatNumber } from '../../units/formats.ts';
import { boxTemplate, listTemplate } from './field.ts';
import { typedIn, type TypedIn } from './typed.ts';
import { candidateOf, keyOf, nameOf, type Named, type UnitView } from './view.ts';

/** CSS pixels a chart takes at most. */
const widest = 560;

const use = questionOf('use');
const fieldAt = (at: string) => use.fields.find((field) => field.at === at) as Extract<Field, { control: 'number' }>;
const fields = { years: fieldAt('budget.keepYears'), hours: fieldAt('budget.hoursPerYear') } as const;

/** What may stand beside a unit: all that stand, but itself; a machine where none of it is on the lot. */
export const besides = ({ shortlist: { shortlist }, key }: Pick<UnitView, 'shortlist' | 'key'>): Named[] =>
  shortlist.flatMap(({ machine, units }): Named[] => (units.length === 0 ? [{ machine }] : units.filter(({ verdict }) => verdict === 'stands').map(({ unit }) => ({ machine, unit }))))
    .filter((each) => keyOf(each) !== key);

export interface BesideView {
  chosen: string | undefined;
  choose(key: string): void;
}

/** Another machine says more than another unit of the same. */
const usual = (others: readonly Named[], own: string) => others.find(({ machine }) => machine !== own) ?? others[0];

function usedIn({ buyer, voice }: UnitView) {
  const labels = voice.words.questions.use.fields;
  return {
    years: typedIn(fields.years, buyer.years ?? '', labels[fields.years.at]!.label, voice),
    hours: typedIn(fields.hours, buyer.hours ?? '', labels[fields.hours.at]!.label, voice),
  };
}

/** How the buyer pays, where he chose it here: at once, or by which of the dealer's terms. */
function payingOf({ buyer: { paying }, inSi: { dealer } }: UnitView): LoanTerms | 'own-money' | undefined {
  return paying === 'own' ? 'own-money' : termsOffered(dealer)[Number(paying)];
}

const numberIn = (typed: TypedIn) => ('value' in typed && typeof typed.value === 'number' ? typed.value : undefined);

/** What was reckoned for a buyer: whatever else changes on the page, it isn't reckoned again. */
const known = new WeakMap<object, Map<string, OwningComparison>>();

/** This one beside another, over the years and hours typed, or those of the answers. */
function comparisonOf(view: UnitView, other: Named | undefined): OwningComparison {
  const { inSi, read, candidate, key, considered } = view;
  const beside = other && candidateOf(other, inSi);
  const typed = usedIn(view);
  const [years, hoursPerYear] = [numberIn(typed.years), numberIn(typed.hours)];
  const kept = known.get(considered) ?? new Map<string, OwningComparison>();
  const finance = payingOf(view);
  const of = JSON.stringify([key, other, years, hoursPerYear, finance]);
  const comparison = kept.get(of) ?? compareOwning({
    catalogue: inSi, answers: read, candidates: [candidate, ...(beside ? [beside] : [])], ...(years !== undefined && { years }), ...(hoursPerYear !== undefined && { hoursPerYear }), ...(finance && { finance }),
  });
  known.set(considered, kept.set(of, comparison));
  return comparison;
}

function usesTemplate(view: UnitView, { years, hoursPerYear }: OwningComparison) {
  const { key, buyer, say, voice } = view;
  const typed = usedIn(view);
  const labels = voice.words.questions.use.fields;
  const number = (value: number) => formatNumber(Math.round(value), voice.reader.locale, { useGrouping: false });
  const box = (which: 'years' | 'hours', usually: number) => boxTemplate({
    id: `${which} ${key}`.replaceAll(' ', '-'), label: labels[fields[which].at]!.label, value: buyer[which] ?? number(usually),
    fault: 'fault' in typed[which] ? typed[which].fault : undefined, typed: (value) => say({ [which]: value }),
  });
  return html`<div class="pair">${box('years', years)}${box('hours', hoursPerYear)}</div>`;
}

/** At once or by which terms: each with all that is told of a loan, on this one's own price; nothing where no loan may be told of. */
function payingTemplate(view: UnitView, { sides: [own], finance, currency }: OwningComparison) {
  const { key, say, voice, words: { lot, costs }, inSi: { dealer }, read: { budget } } = view;
  // Who pays at once is told of no loan.
  if (budget?.pay === 'cash') return nothing;
  const price = own?.price && (own.price.low + own.price.high) / 2;
  const offered = price === undefined ? [] : termsOffered(dealer).map((terms) => ({ terms, loan: loanOn(price, terms) }));
  if (!offered.some(({ loan }) => loan)) return nothing;
  const way = (value: string, checked: boolean, text: string) => html`
    <label class="option"><input type="radio" name="paying ${key}" .checked=${checked} @change=${() => say({ paying: value })} /><span>${text}</span></label>`;
  return html`
    <fieldset><legend>${costs.pay}</legend><div class="options">
      ${way('own', typeof finance !== 'object', costs.ownMoney)}
      ${offered.map(({ terms, loan }, place) => (loan ? way(String(place), finance === terms, sayLoan(loan, { currency }, { voice, lot })) : nothing))}
    </div></fieldset>`;
}

function chartTemplate(comparison: OwningComparison, view: UnitView) {
  const { voice, words: { lot }, key, width } = view;
  if (!comparison.chart) return nothing;
  const drawn = chartSvg(comparison.chart, { words: chartWordsOf(comparison, { voice, lot }), prefix: `cost ${key}`.replaceAll(' ', '-'), width: Math.min(widest, width) });
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${lot.owning.chart.title}>${unsafeSVG(drawn)}</div>`;
}

function tableTemplate({ table: { head, rows } }: SaidComparison, { words: { costs } }: UnitView) {
  return rows.length === 0 ? nothing : html`
    <details><summary>${costs.table}</summary>
      <div class="scroll" tabindex="0" role="group" aria-label=${costs.table}>
        <table class="compared"><thead><tr>${head.map((each) => html`<th scope="col">${each}</th>`)}</tr></thead>
          <tbody>${rows.map(([hours, ...cells]) => html`<tr><th scope="row">${hours}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody></table>
      </div></details>`;
}

const sideTemplate = ({ name, says, parts, causes }: SaidComparison['sides'][number], { words: { costs } }: UnitView, spreadsHeading: string) => html`
  <div class="close">
    ${says.map((each) => html`<p>${each}</p>`)}
    ${parts.length === 0 ? nothing : html`
      <details><summary>${costs.parts(name)}</summary>
        <dl class="facts">${parts.map((part) => html`<dt>${part.name}</dt><dd>${part.amount}</dd>`)}</dl>
        <p>${spreadsHeading}</p>
        <ul class="plain">${causes.map((each) => html`<li>${each}</li>`)}</ul>
      </details>`}
  </div>`;

/** What this one costs to own and run beside another of those that stand, and where the cheaper changes. */
export function compareTemplate(view: UnitView, { chosen, choose }: BesideView) {
  const { key, candidate, inSi, voice, words } = view;
  const others = besides(view);
  const other = others.find((each) => keyOf(each) === chosen) ?? usual(others, candidate.machine.id);
  const comparison = comparisonOf(view, other);
  const own = view.catalogue.dealer.terms?.[words.language]?.finance;
  const said = sayComparison(comparison, { voice, lot: words.lot });
  return html`
    <div class="stack" part="costs">
      <p>${words.costs.explained}</p>
      ${other ? listTemplate({
        id: `beside ${key}`.replaceAll(' ', '-'), label: words.costs.beside, chosen: keyOf(other), choose,
        options: others.map((each) => ({ value: keyOf(each), text: nameOf(candidateOf(each, inSi)!, view) })),
      }) : html`<p>${words.costs.alone}</p>`}
      ${usesTemplate(view, comparison)}
      ${payingTemplate(view, comparison)}
      <div class="close">
        ${said.assumptions.map((each) => html`<p class="lesser">${each}</p>`)}
        ${typeof comparison.finance === 'object' && own ? html`<p class="lesser" dir="auto">${own}</p>` : nothing}
      </div>
      <div role="status" class="close">${said.pairs.map((pair) => html`<ul class="plain">${pair.map((each) => html`<li>${each}</li>`)}</ul>`)}</div>
      ${said.sides.map((side) => sideTemplate(side, view, said.spreadsHeading))}
      ${chartTemplate(comparison, view)}
      ${tableTemplate(said, view)}
      <p><strong>${said.noValuation}</strong></p>
    </div>`;
}
