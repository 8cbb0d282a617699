import type { WorkingEntry } from '../../reasons/schema.ts';
import { sayFormula } from '../../reasons/say-formula.ts';
import { sayRule, saySource, saySourceOfRule, sayWorking, type Voice } from '../../reasons/say.ts';
import type { PrintedWords } from '../../reasons/words/words.ts';
import { isFigureId, siUnitOfRule, type FigureId, type FormulaId, type RuleBook } from '../../trade/book.ts';
import { formulaRules } from '../../trade/figures/formulas.ts';
import { showAmount } from '../../units/show.ts';
import type { CliWords } from '../words/words.ts';
import { heading, item } from './layout.ts';

/** Gathers the sums a sheet shows, so that formulas, figures and their sources are told once, at its end. */
export interface Notes {
  /** A sum in one paragraph, its formula by a number. */
  say(working: WorkingEntry): string;
  /** Has a figure of the rule book told with the others. */
  use(rule: string | undefined): void;
  /** The formulas by their numbers, and the figures of the rule book in the sums. */
  lines(): string[];
}

/** A slope in figures reads like a slope that is allowed. */
const isTold = (rule: string | undefined): rule is FigureId => rule !== undefined && isFigureId(rule) && !rule.startsWith('slope.');

export function notesOf(voice: Voice & { words: PrintedWords }, own: CliWords, book: RuleBook): Notes {
  const { words, reader } = voice;
  const { joins } = words;
  const formulas: FormulaId[] = [];
  const figures = new Set<FigureId>();
  const numberOf = (formula: FormulaId) => {
    if (!formulas.includes(formula)) formulas.push(formula);
    return formulas.indexOf(formula) + 1;
  };
  const dealers = (id: FigureId) => (book.isDealers(id) ? ` (${words.result.dealersFigure})` : '');
  const formulaNote = (id: FormulaId, index: number) =>
    item(`[${index + 1}]`, `${sayFormula(formulaRules[id].formula, words)}. ${own.source(saySource(formulaRules[id].source, words))}`);
  const figureNote = (id: FigureId) =>
    item('-', `${sayRule(id, words)}${joins.colon}${showAmount(book.value(id), siUnitOfRule(id), reader)}${dealers(id)}. ${own.source(saySourceOfRule(id, words))}`);

  const use = (rule: string | undefined) => {
    if (isTold(rule)) figures.add(rule);
  };

  return {
    use,
    say(working) {
      const { statement, terms, result } = sayWorking(working, voice);
      for (const { rule } of Object.values(working.inputs)) use(rule);
      const sum = terms.map(({ name, value }) => `${name} ${value}`).join(', ');
      return `${statement} [${numberOf(working.formula as FormulaId)}]${joins.colon}${sum}${joins.semicolon}${own.gives(result)}`;
    },
    lines: () => [
      ...(formulas.length > 0 ? [...heading(own.formulasHeading), ...formulas.flatMap(formulaNote)] : []),
      ...(figures.size > 0 ? [...heading(own.figuresHeading), ...[...figures].flatMap(figureNote)] : []),
    ],
  };
}
