import type { FormulaId } from '../../../trade/book.ts';
import { formulaRules } from '../../../trade/figures/formulas.ts';
import { namesOf, type FormulaName } from '../../../trade/read-formula.ts';
import type { FormulaRule, Law } from '../../../trade/record.ts';

// The rule book is written in English: its texts and its names are its own words.
const records = Object.entries(formulaRules) as [FormulaId, FormulaRule][];

/** What the formulas reckon, as a working says it. */
export const formulas = Object.fromEntries(records.map(([id, { statement }]) => [id, statement])) as Record<FormulaId, string>;

export const formulaNames = Object.fromEntries(
  records.flatMap(([, { formula }]) => namesOf(formula).map((name) => [name, name])),
) as Record<FormulaName, string>;

export const laws = Object.fromEntries(
  records.flatMap(([, { source }]) => (source.basis === 'derived' ? [[source.from, source.from]] : [])),
) as Record<Law, string>;
