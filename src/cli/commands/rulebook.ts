import { saySource } from '../../reasons/say.ts';
import { en } from '../../reasons/words/en.ts';
import { ruleIds, rules, rulesVersion, type RuleId } from '../../trade/book.ts';
import type { FigureRule, FormulaRule } from '../../trade/record.ts';
import type { Command } from '../command.ts';
import { item, paragraph } from '../sheet/layout.ts';

const kinds: Readonly<Record<FigureRule['kind'], string>> = {
  'definition': 'a definition, the same for everyone',
  'published-figure': 'a published figure, the same for everyone',
  'rule-of-thumb': 'a rule of thumb, a dealer’s to change',
  'safety-floor': 'a safety floor, a dealer’s to change to the safe side only',
  'value-anchor': 'what earns how much in the ranking, a dealer’s to change',
};

const isFormula = (rule: FigureRule | FormulaRule): rule is FormulaRule => rule.kind === 'formula';
const units: Readonly<Record<string, string>> = { 'ratio': '', 'dealer-currency': ' in the dealer’s currency', 'per-year': ' hours a year' };
const unitOf = (unit: string) => units[unit] ?? ` ${unit}`;

function valueOf({ value, unit, kind, valid: [least, most], safer }: FigureRule): string {
  const fixed = kind === 'definition' || kind === 'published-figure';
  const range = fixed ? '' : `, from ${least} to ${most}`;
  return `${value}${unitOf(unit)}: ${kinds[kind]}${range}${safer ? `; ${safer} is safer` : ''}`;
}

function recordOf(id: RuleId): string[] {
  const rule = rules[id] as FigureRule | FormulaRule;
  return [
    '',
    id,
    ...paragraph(rule.statement, 4),
    ...(isFormula(rule) ? rule.formula.split('; ').flatMap((line) => item('', line, 3)) : paragraph(valueOf(rule), 4)),
    ...paragraph(`Source: ${saySource(rule.source, en)}`, 4),
  ];
}

export const rulebook: Command = {
  name: 'rulebook',
  summary: 'every figure and formula the tool goes by, with its source',
  options: [{ name: 'format', takes: 'text|json', choices: ['text', 'json'], says: 'How to print it; text if not said.' }],
  details: [
    'Prints every record of the rule book: id, statement, value and unit or formula, kind, source. A dealer’s own values, by the same ids, belong under "rules" in his catalogue.',
  ],
  async run({ options: { format } }, io) {
    if (format === 'json') {
      io.out(JSON.stringify({ version: rulesVersion, rules: ruleIds.map((id) => ({ id, ...rules[id] })) }));
      return 0;
    }
    io.out(`Rule book ${rulesVersion}`);
    ruleIds.flatMap(recordOf).forEach(io.out);
    return 0;
  },
};
