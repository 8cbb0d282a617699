import type { Finding } from './finding.ts';
import type { Unknown } from './unknowns.ts';
import type { SheetWords } from './words/words.ts';

/** A finding in words: where it stands, what was read, what was expected, how to mend it. */
export interface SaidFinding {
  where: string;
  read: string;
  expected: string;
  mend: string;
}

export function sayFinding(finding: Finding, _words: SheetWords): SaidFinding {
  return { where: finding.place ?? '', read: finding.read ?? '', expected: '', mend: '' };
}

/** The same on one line. */
export const lineOfFinding = (finding: Finding, words: SheetWords): string => Object.values(sayFinding(finding, words)).join('; ');

/** What is missing and what it costs, as a sentence. */
export const sayUnknown = ({ figure }: Unknown, _words: SheetWords): string => figure;
