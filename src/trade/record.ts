import type { Unit } from '../units/quantity.ts';

/** What a derived figure follows from; a language says each in its own words. */
export type Law =
  | 'arithmetic of annuities: each instalment is worth less today, the later it comes'
  | 'counting'
  | 'geometry'
  | 'geometry of a heap with slopes of 2:1, which SAE J742 and ISO 7546 take for loader buckets'
  | 'mechanics, power is force times speed'
  | 'mechanics, speed squared over radius'
  | 'moisture as a share of the whole'
  | 'no limit may be passed'
  | 'statics, sum of moments'
  | 'statics, weight is mass times gravity'
  | 'the daily exposure, solved for the time'
  | 'the definition of density'
  | 'units: an hour is 3,600 s, a US gallon 231 cubic inches';

/** Where a figure comes from, said the same way to everyone who asks. */
export type Source =
  | {
      basis: 'published';
      /** Author or body, and title as printed. */
      title: string;
      where?: string;
      /** `second-hand`: read in a page that restates the source, not in the source itself. */
      read: 'source' | 'second-hand';
    }
  /** Follows from a law anyone can check, such as the sum of moments. */
  | { basis: 'derived'; from: Law }
  | { basis: 'common-practice' }
  | { basis: 'memory'; title: string; where?: string };

export type RuleUnit = Unit | PlainUnit;

/** What is counted and not measured: it has no SI unit to be turned into. */
export const plainUnits = ['ratio', 'years', 'months', 'hours', 'per-year', 'count', 'dealer-currency', 'dB(A)'] as const;
export type PlainUnit = (typeof plainUnits)[number];

/**
 * What a dealer may do with a figure: a rule of thumb and a value anchor are his to change; a safety
 * floor only to the safe side; a definition and a published figure not at all.
 */
export type RuleKind = 'definition' | 'published-figure' | 'rule-of-thumb' | 'safety-floor' | 'value-anchor';

export interface FigureRule {
  statement: string;
  value: number;
  unit: RuleUnit;
  kind: RuleKind;
  source: Source;
  /** Lowest and highest value that makes sense, in the same unit. */
  valid: readonly [number, number];
  /** For a safety floor: which direction is safer. */
  safer?: 'more' | 'less';
}

export interface FormulaRule {
  statement: string;
  kind: 'formula';
  /** As plain text, symbols named as in the working. */
  formula: string;
  source: Source;
}

export type Rule = FigureRule | FormulaRule;

/** Keeps the ids as types while each record is checked. */
export const figures = <const T extends Record<string, FigureRule>>(records: T) => records;
export const formulas = <const T extends Record<string, FormulaRule>>(records: T) => records;

export const commonPractice = { basis: 'common-practice' } as const satisfies Source;
export const seen = (title: string, where?: string) =>
  ({ basis: 'published', title, ...(where && { where }), read: 'source' }) as const satisfies Source;
export const seenSecondHand = (title: string, where?: string) =>
  ({ basis: 'published', title, ...(where && { where }), read: 'second-hand' }) as const satisfies Source;
export const fromMemory = (title: string, where?: string) =>
  ({ basis: 'memory', title, ...(where && { where }) }) as const satisfies Source;
