import { siUnitOf, type Kind, type Unit } from '../units/quantity.ts';
import type { FigureId, FormulaId } from './book.ts';
import { plainUnits, type PlainUnit } from './record.ts';

/** One figure of a sum: its value in SI, and the rule it came from if it was not measured or said. */
export interface Term {
  value: number;
  unit: Unit | PlainUnit;
  rule?: FigureId;
}

/** The sum behind a figure: formula, inputs, result. */
export interface Working {
  formula: FormulaId;
  inputs: Record<string, Term>;
  result: Term;
}

/** A formula was asked for something outside its range, and says so instead of guessing. */
export interface Refusal {
  refused: string;
}

export const isRefusal = (outcome: object): outcome is Refusal => 'refused' in outcome;

/** @example term('mass', 360) // { value: 360, unit: 'kg' } */
export const term = (kind: Kind | PlainUnit, value: number, rule?: FigureId): Term => ({
  value,
  unit: plainUnits.some((plain) => plain === kind) ? (kind as PlainUnit) : siUnitOf(kind as Kind),
  ...(rule && { rule }),
});

/** A working whose inputs name the rules they were taken from. */
export function cite(working: Working, rules: Readonly<Record<string, FigureId>>): Working {
  const inputs = { ...working.inputs };
  for (const [name, rule] of Object.entries(rules)) if (inputs[name]) inputs[name] = { ...inputs[name], rule };
  return { ...working, inputs };
}
