import type { FindingCode, FindingFacts, Weight } from '../finding.ts';
import type { Dialect } from '../table.ts';

/** What is said of one cell; its place is added by whoever knows it. */
export type Told = { [C in FindingCode]: { code: C; weight: Weight; facts: FindingFacts[C] } }[FindingCode];

/** What a cell holds: a value, something to say, both, or (blank) neither. */
export interface CellReading {
  value?: unknown;
  told?: Told;
}

/** What a bare cell goes by. */
export interface CellContext {
  dialect: Pick<Dialect, 'decimalMark' | 'decimalMarkFrom'>;
  /** What the heading of its column says of bare numbers: a unit, a currency, `%`. */
  unit: string | undefined;
  currency: string;
  units: 'us' | 'metric';
  locale: string;
}

export const fault = <C extends FindingCode>(code: C, facts: FindingFacts[C]): CellReading => ({ told: { code, weight: 'fault', facts } as Told });

/** A value that is kept, with how it was taken. */
export const kept = <C extends FindingCode>(value: unknown, code: C, facts: FindingFacts[C], weight: Weight = 'notice'): CellReading =>
  ({ value, told: { code, weight, facts } as Told });
