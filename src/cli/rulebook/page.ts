import { createHash } from 'node:crypto';
import { sayRule } from '../../reasons/say.ts';
import { figureRules, ruleIds, rules, rulesVersion, type FigureId, type RuleId } from '../../trade/book.ts';
import type { FigureRule, Rule } from '../../trade/record.ts';
import { articleOf, trustTag } from './article.ts';
import type { DealersFigures } from './dealers-figures.ts';
import { html, Markup } from './markup.ts';
import { pageScript } from './page-script.ts';
import { showDealers, showRefused, showWritten } from './shown.ts';
import { style } from './style.ts';
import { themeOf, type Theme } from './theme.ts';
import type { Translation } from './translations.ts';
import { trustOf, trusts } from './trust.ts';
import type { Voice } from './voice.ts';

const script = `'use strict';\n(${pageScript.toString()})();`;
const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
/** Nothing but its own style and script: whoever serves the page under a policy of his own takes the hashes from here. */
const policy = `default-src 'none'; style-src ${hashOf(style)}; script-src ${hashOf(script)}; img-src data:; base-uri 'none'; form-action 'none'`;

const rulesByTheme = (titles: Readonly<Record<Theme, string>>, language: string) => {
  const themes = [...new Set(ruleIds.map(themeOf))].sort((a, b) => titles[a].localeCompare(titles[b], language));
  return themes.map((theme) => ({ theme, ids: ruleIds.filter((id) => themeOf(id) === theme) }));
};

const counted = (holds: (rule: Rule) => boolean) => ruleIds.filter((id) => holds(rules[id])).length;

function trustList(voice: Voice): Markup {
  const { own, words } = voice;
  return html`<section aria-labelledby="trust-heading">
<h2 id="trust-heading">${own.trustHeading}</h2>
<dl class="legend">
${trusts.map((trust) => html`<div><dt>${trustTag(trust, voice)}</dt><dd>${own.trust[trust].says}${words.joins.colon}${own.rulesOf(counted(({ source }) => trustOf(source) === trust))}</dd></div>
`)}</dl>
${own.sourcesNote && html`<p class="lesser">${own.sourcesNote}</p>
`}</section>`;
}

function dealersSection({ dealer, own: figures, refused }: DealersFigures, voice: Voice): Markup {
  const { own, words } = voice;
  const { colon } = words.joins;
  const ids = Object.keys(figures) as FigureId[];
  const line = (id: FigureId) => {
    const rule: FigureRule = figureRules[id];
    return html`<li><a href="#${id}">${sayRule(id, words)}</a>${colon}<strong>${showDealers(figures[id]!, rule, voice)}</strong> ${own.inPlaceOf(showWritten(rule, voice))}</li>
`;
  };
  return html`<section class="dealers" aria-labelledby="dealers-heading">
<h2 id="dealers-heading">${own.dealersHeading(dealer)}</h2>
${ids.length === 0 ? html`<p>${own.noDealers}</p>` : html`<p>${own.dealersLead}</p>
<ul>
${ids.map(line)}</ul>`}
${refused.length === 0 ? undefined : html`<h3>${own.refusedHeading}</h3>
<p>${own.refusedLead}</p>
<ul class="refused">
${refused.map((each) => html`<li>${Object.hasOwn(rules, each.id) ? html`<a href="#${each.id}">${each.id}</a>` : html`<code>${each.id}</code>`}${colon}${showRefused(each, voice)}</li>
`)}</ul>`}
</section>`;
}

function searchForm({ own }: Voice): Markup {
  const option = (value: string, name: string) => html`<option value="${value}">${name}</option>`;
  return html`<form hidden role="search" aria-labelledby="search-heading">
<h2 id="search-heading">${own.searchHeading}</h2>
<p><label for="words">${own.search}</label><input id="words" type="search" autocomplete="off" spellcheck="false"></p>
<p><label for="kind">${own.kindFilter}</label><select id="kind">${option('', own.anyKind)}${Object.entries(own.kinds).map(([kind, name]) => option(kind, name))}</select></p>
<p><label for="trust">${own.trustFilter}</label><select id="trust">${option('', own.anyKind)}${trusts.map((trust) => option(trust, own.trust[trust].name))}</select></p>
<p class="end"><button type="reset">${own.clear}</button></p>
<p role="status" data-found="${own.found}" data-none="${own.foundNone}">${own.rulesOf(ruleIds.length)}</p>
</form>`;
}

const languageLinks = (translations: readonly Translation[], { own, words }: Voice) => html`<nav class="languages" aria-label="${words.wizard.languageLabel}">
<ul>
${translations.map(({ language, name, address }) => html`<li><a href="${address}" lang="${language}" hreflang="${language}"${new Markup(language === own.language ? ' aria-current="page"' : '')}>${name}</a></li>
`)}</ul>
</nav>
`;

/**
 * The rule book as one page that asks for nothing else, whole without its script.
 *
 * @param translations  where the page is to be had in each language; it links to nothing where that isn't said
 */
export function pageOf(voice: Voice, dealers: DealersFigures | undefined, translations: readonly Translation[] = []): string {
  const { own, words } = voice;
  const themes = rulesByTheme(own.themes, own.language);
  const title = dealers ? own.titleOf(dealers.dealer) : own.title;
  const articles = (ids: readonly RuleId[]) => ids.map((id) => articleOf(id, voice, dealers));
  return html`<!doctype html>
<html lang="${own.language}" dir="${words.direction}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${new Markup(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
${translations.map(({ language, address }) => html`<link rel="alternate" hreflang="${language}" href="${address}">
`)}<link rel="icon" href="data:,">
<style>${new Markup(style)}</style>
</head>
<body>
<a class="skip" href="#rules">${own.skip}</a>
<header>
${translations.length > 0 ? languageLinks(translations, voice) : undefined}<h1>${title}</h1>
<p class="lesser">${own.version(rulesVersion)}, ${own.rulesOf(ruleIds.length)}</p>
<p>${own.lead}</p>
</header>
${trustList(voice)}
${dealers && dealersSection(dealers, voice)}
${searchForm(voice)}
<nav aria-labelledby="themes-heading">
<h2 id="themes-heading">${own.themesHeading}</h2>
<ul>
${themes.map(({ theme }) => html`<li><a href="#${theme}">${own.themes[theme]}</a></li>
`)}</ul>
</nav>
<main id="rules" tabindex="-1">
${themes.map(({ theme, ids }) => html`<section id="${theme}" aria-labelledby="${theme}-heading">
<h2 id="${theme}-heading">${own.themes[theme]}</h2>
${articles(ids)}</section>
`)}</main>
<footer><p>${own.end}</p></footer>
<script>${new Markup(script)}</script>
</body>
</html>`.text;
}
