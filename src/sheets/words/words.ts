import type { FindingCode, FindingFacts } from '../finding.ts';

/** What one language says of a dealer's tables. */
export interface SheetWords {
  findings: { [Code in FindingCode]: (facts: FindingFacts[Code]) => { expected: string; mend: string } };
}
