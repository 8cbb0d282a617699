import { sayFormula } from '../../reasons/say-formula.ts';
import { sayRule, saySource } from '../../reasons/say.ts';
import { ruleIds, rules, rulesVersion, type RuleId } from '../../trade/book.ts';
import type { FigureRule, FormulaRule } from '../../trade/record.ts';
import { item, paragraph } from '../sheet/layout.ts';
import type { DealersFigures } from './dealers-figures.ts';
import { modulesOf } from './module.ts';
import { showDealers, showRange, showRefused, showWritten } from './shown.ts';
import type { Voice } from './voice.ts';

function valueOf(rule: FigureRule, voice: Voice): string {
  const { own, words: { joins } } = voice;
  const range = showRange(rule, voice);
  return [
    `${showWritten(rule, voice)}${joins.colon}${own.kinds[rule.kind]}`,
    ...(range === undefined ? [] : [`, ${range}`]),
    ...(rule.safer ? [`${joins.semicolon}${own.safer[rule.safer]}`] : []),
  ].join('');
}

const dealersLines = (id: RuleId, { own: figures, refused }: DealersFigures, voice: Voice) => [
  ...(figures[id] ? [showDealers(figures[id], rules[id] as FigureRule, voice)] : []),
  ...refused.filter((each) => each.id === id).map((each) => showRefused(each, voice)),
].flatMap((said) => paragraph(`${voice.own.dealers}${voice.words.joins.colon}${said}`, 4));

function recordOf(id: RuleId, dealers: DealersFigures | undefined, voice: Voice): string[] {
  const { words, own } = voice;
  const { colon, semicolon } = words.joins;
  const rule: FigureRule | FormulaRule = rules[id];
  const places = [...new Set(modulesOf(id).map((module) => own.places[module]))];
  return [
    '',
    id,
    ...paragraph(sayRule(id, words), 4),
    ...(rule.kind === 'formula' ? rule.formula.split('; ').flatMap((line) => item('', sayFormula(line, words), 3)) : paragraph(valueOf(rule, voice), 4)),
    ...(dealers ? dealersLines(id, dealers, voice) : []),
    ...paragraph(`${own.source}${colon}${saySource(rule.source, words)}`, 4),
    ...paragraph(`${own.uses}${colon}${places.length > 0 ? places.join(semicolon) : own.noUses}`, 4),
  ];
}

/** A dealer's values for rules that aren't in the book have no record to stand at. */
const strangers = ({ refused }: DealersFigures, voice: Voice) =>
  refused.filter(({ id }) => !Object.hasOwn(rules, id)).flatMap((each) => paragraph(`${each.id}${voice.words.joins.colon}${showRefused(each, voice)}`));

/** The rule book as lines of a terminal. */
export const textOf = (voice: Voice, dealers: DealersFigures | undefined): string[] => [
  ...paragraph(`${dealers ? voice.own.titleOf(dealers.dealer) : voice.own.title}, ${voice.own.version(rulesVersion)}`),
  ...(dealers ? strangers(dealers, voice) : []),
  ...ruleIds.flatMap((id) => recordOf(id, dealers, voice)),
];
