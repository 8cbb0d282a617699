import { boundsOf, isName, tokensOf, type FormulaName, type FormulaToken } from '../trade/read-formula.ts';
import type { Words } from './words/words.ts';

/** A part of a formula in the reader's language; marks and symbols of one letter are the same in all. */
export function sayToken(token: FormulaToken, { decimalMark, formulaNames, formulaSum }: Words): string {
  const { kind, text } = token;
  if (isName(token)) return formulaNames[text as FormulaName] ?? text;
  if (kind === 'number') return text.replace('.', decimalMark);
  if (kind === 'sum') {
    const { from, to } = boundsOf(text);
    return formulaSum(from, to);
  }
  return text;
}

/** One formula of the rule book, or several parted by semicolons, in the reader's language. */
export const sayFormula = (formula: string, words: Words): string =>
  formula.split('; ').map((one) => tokensOf(one).map((token) => token.blank + sayToken(token, words)).join('')).join(words.joins.semicolon);
