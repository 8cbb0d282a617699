import type { FindingCode, FindingFacts } from '../finding.ts';
import type { Figure } from '../plausible.ts';
import type { UnknownFigure } from '../unknowns.ts';

/** What is said of a finding: what should have stood there, and how to mend it. */
export interface Said {
  expected: string;
  mend: string;
}

/** How a figure is shown in the language, with its unit. */
export type ShowFigure = (figure: Figure) => string;

/** What one language says of a dealer's tables. What is missing is a type error. */
export interface SheetWords {
  /** Its tag, by which numbers are written. */
  language: string;
  nothing: string;
  /** A finding on one line, behind its place. */
  line(read: string, expected: string, mend: string): string;
  /** Behind the line of a fault, for the row goes with it. */
  rowLeftOut: string;
  findings: { [Code in FindingCode]: (facts: FindingFacts[Code], show: ShowFigure) => Said };
  /** How many of how many lack it, and what that costs. */
  unknowns: Readonly<Record<UnknownFigure, (many: number, of: number) => string>>;
}
