/**
 * Worked examples a practitioner can check with pencil and paper, and add to: one row a case.
 *
 * `formula` is an id of the rule book (or `units` for a plain conversion), `given` its inputs by name as
 * in `calls.ts`, each with its unit; a bare number is a ratio. `expect` is the printed or reckoned
 * result and `within` how far off it may be, both in the unit shown. `source` says where the result
 * comes from and how far it can be trusted:
 *   printed       inputs and result both stand in the source, which was read in a stored public copy
 *   formula       the formula stands in the source, the inputs are ours
 *   second-hand   read in a page that restates the source
 *   from memory   recalled, not confirmed
 *   statics, geometry   anyone can check it: the sum is beside the row
 *   common practice, no source
 */
import type { FormulaId } from '../../src/trade/book.ts';
import type { InputName } from './given.ts';

export interface WorkedCase {
  name: string;
  formula: FormulaId | 'units';
  given: Partial<Record<InputName, string | number>>;
  expect: string | number;
  within: number;
  source: string;
}
