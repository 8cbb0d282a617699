import { sayFormula } from '../../reasons/say-formula.ts';
import { sayRule, saySource } from '../../reasons/say.ts';
import { en as words } from '../../reasons/words/en.ts';
import { ruleIds, rules, rulesVersion, type RuleId } from '../../trade/book.ts';
import type { FigureRule, FormulaRule } from '../../trade/record.ts';
import type { Command } from '../command.ts';
import { inOrder, readDocumentFile } from '../read-document.ts';
import { dealersFiguresOf, type DealersFigures } from '../rulebook/dealers-figures.ts';
import { modulesOf } from '../rulebook/module.ts';
import { pageOf } from '../rulebook/page.ts';
import { showDealers, showRefused, showWritten } from '../rulebook/shown.ts';
import { en as own } from '../rulebook/words/en.ts';
import { item, paragraph } from '../sheet/layout.ts';

function valueOf(rule: FigureRule): string {
  const { kind, valid: [least, most], safer } = rule;
  const fixed = kind === 'definition' || kind === 'published-figure';
  return [
    `${showWritten(rule, own)}: ${own.kinds[kind]}`,
    ...(fixed ? [] : [`, ${own.rangeOf(String(least), String(most))}`]),
    ...(safer ? [`; ${own.safer[safer]}`] : []),
  ].join('');
}

const dealersLines = (id: RuleId, { own: figures, refused }: DealersFigures) => [
  ...(figures[id] ? [showDealers(figures[id], rules[id] as FigureRule, own)] : []),
  ...refused.filter((each) => each.id === id).map((each) => showRefused(each, own)),
].flatMap((said) => paragraph(`${own.dealers}: ${said}`, 4));

function recordOf(id: RuleId, dealers: DealersFigures | undefined): string[] {
  const rule: FigureRule | FormulaRule = rules[id];
  const places = [...new Set(modulesOf(id).map((module) => own.places[module]))];
  return [
    '',
    id,
    ...paragraph(sayRule(id, words), 4),
    ...(rule.kind === 'formula' ? rule.formula.split('; ').flatMap((line) => item('', sayFormula(line, words), 3)) : paragraph(valueOf(rule), 4)),
    ...(dealers ? dealersLines(id, dealers) : []),
    ...paragraph(`${own.source}: ${saySource(rule.source, words)}`, 4),
    ...paragraph(`${own.uses}: ${places.length > 0 ? places.join('; ') : own.noUses}`, 4),
  ];
}

/** A dealer's values for rules that aren't in the book have no record to stand at. */
const strangers = ({ refused }: DealersFigures) =>
  refused.filter(({ id }) => !Object.hasOwn(rules, id)).flatMap((each) => paragraph(`${each.id}: ${showRefused(each, own)}`));

const textOf = (dealers: DealersFigures | undefined) => [
  ...paragraph(`${dealers ? own.titleOf(dealers.dealer) : own.title}, ${own.version(rulesVersion)}`),
  ...(dealers ? strangers(dealers) : []),
  ...ruleIds.flatMap((id) => recordOf(id, dealers)),
];

const jsonOf = (dealers: DealersFigures | undefined) => JSON.stringify({
  version: rulesVersion,
  ...(dealers && { dealer: dealers.dealer, refused: dealers.refused }),
  rules: ruleIds.map((id) => ({ id, ...rules[id], ...(dealers?.own[id] && { dealers: dealers.own[id] }) })),
});

const formats = ['text', 'json', 'html'];

export const rulebook: Command = {
  name: 'rulebook',
  summary: 'every figure and formula the tool goes by, with its source',
  options: [
    { name: 'format', takes: formats.join('|'), choices: formats, says: 'How to print it: as text, as JSON, or as one page for a browser; text if not said.' },
    { name: 'catalogue', takes: 'FILE', says: 'A dealer’s line-up and lot, to show his own figures beside the book’s; - for standard input.' },
  ],
  details: [
    'Prints every record of the rule book: id, statement, value and unit or formula, kind, source, and where it is used. A dealer’s own values, by the same ids, belong under "rules" in his catalogue.',
    'With a catalogue each of his values shows as this dealer’s figure; one that is refused is named, and why. Faults of the catalogue are listed as check lists them, and the book is printed all the same where his rules can be read.',
  ],
  async run({ options: { format, catalogue } }, io) {
    const reading = catalogue === undefined ? undefined : await readDocumentFile(catalogue, ['catalogue'], io);
    inOrder(reading?.faults ?? []).forEach(io.err);
    const dealers = reading && dealersFiguresOf(reading.parsed);
    if (reading && !dealers) return 1;
    inOrder(reading?.unknown ?? []).forEach((line) => io.err(`${line}; went on without it`));
    if (format === 'json') io.out(jsonOf(dealers));
    else if (format === 'html') io.out(pageOf({ words, own }, dealers));
    else textOf(dealers).forEach(io.out);
    return reading && reading.faults.length > 0 ? 1 : 0;
  },
};
