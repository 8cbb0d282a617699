import { sayFormula, sayToken } from '../../reasons/say-formula.ts';
import { sayRule } from '../../reasons/say.ts';
import { rules, type RuleId } from '../../trade/book.ts';
import type { FigureRule, Rule, Source } from '../../trade/record.ts';
import type { DealersFigures } from './dealers-figures.ts';
import { html, Markup } from './markup.ts';
import { mathOf } from './mathml.ts';
import { modulesOf } from './module.ts';
import { showDealers, showPercent, showRange, showRefused, showWritten } from './shown.ts';
import { isWeak, trustOf, type Trust } from './trust.ts';
import type { Voice } from './voice.ts';

const sourcesLanguage = 'en';

export const trustTag = (trust: Trust, { own }: Voice) =>
  html`<span class="tag${isWeak(trust) ? ' weak' : ''}">${own.trust[trust].name}</span>`;

/** A source without how far it can be trusted, which its tag says; its name and place stay in the language they were found in. */
function sourceText(source: Source, { own, words }: Voice): Markup | string {
  if (source.basis === 'common-practice') return '';
  if (source.basis === 'derived') return own.derived(words.laws[source.from]);
  const named = source.where === undefined ? source.title : `${source.title} (${source.where})`;
  return own.language === sourcesLanguage ? named : html`<span lang="${sourcesLanguage}">${named}</span>`;
}

const row = (name: string, what: Markup | undefined, kind = '') => what && html`<div${new Markup(kind && ` class="${kind}"`)}><dt>${name}</dt><dd>${what}</dd></div>
`;

function valueRows(rule: FigureRule, dealers: DealersFigures | undefined, id: RuleId, voice: Voice) {
  const { own, words: { joins } } = voice;
  const percent = showPercent(rule, voice);
  const range = showRange(rule, voice);
  const dealersValue = dealers?.own[id];
  const refused = dealers?.refused.filter((each) => each.id === id) ?? [];
  return [
    row(own.value, html`<strong>${showWritten(rule, voice)}</strong>${percent && html` <span class="lesser">= ${percent}</span>`}`, 'value'),
    row(own.dealers, dealersValue && html`<strong>${showDealers(dealersValue, rule, voice)}</strong>`, 'dealers'),
    refused.map((each) => row(own.dealers, html`${showRefused(each, voice)}`, 'refused')),
    row(own.kind, html`${own.kinds[rule.kind]}`),
    row(own.range, range === undefined ? undefined : html`${range}${rule.safer && html`${joins.semicolon}${own.safer[rule.safer]}`}`),
  ];
}

/** The sum as mathematics, and as text: for a page too narrow for it, and to be copied. */
const formulaRows = (formula: string, { own, words }: Voice) => [
  row(own.formula, html`${mathOf(formula, (token) => sayToken(token, words)).map((math) => html`<div class="sum" role="group" aria-label="${own.formula}">${new Markup(math)}</div>`)}<code class="lesser">${sayFormula(formula, words)}</code>`, 'formula'),
  row(own.kind, html`${own.kinds.formula}`),
];

/** One record of the rule book. */
export function articleOf(id: RuleId, voice: Voice, dealers: DealersFigures | undefined): Markup {
  const { words, own } = voice;
  const rule: Rule = rules[id];
  const trust = trustOf(rule.source);
  const source = sourceText(rule.source, voice);
  const places = [...new Set(modulesOf(id).map((module) => own.places[module]))];
  return html`<article id="${id}" data-kind="${rule.kind}" data-trust="${trust}">
<h3 data-searched>${sayRule(id, words)}</h3>
<p class="id"><a href="#${id}" data-searched>${id}</a></p>
<dl>
${rule.kind === 'formula' ? formulaRows(rule.formula, voice) : valueRows(rule, dealers, id, voice)}${row(own.source, html`<span data-searched>${source}</span> ${trustTag(trust, voice)}`)}${row(own.uses, html`${places.length > 0 ? places.join(words.joins.semicolon) : own.noUses}`)}</dl>
</article>
`;
}
