import type { FigureRule, FormulaRule, PlainUnit } from '../../../trade/record.ts';
import type { Module } from '../module.ts';
import type { Theme } from '../theme.ts';
import type { Trust } from '../trust.ts';

type Safer = NonNullable<FigureRule['safer']>;

/**
 * Everything the printed rule book says that is no part of a record. What a rule says and where it comes from is
 * in `reasons/words`. Texts are plain text; what is handed in is shown already.
 */
export interface RuleBookWords {
  /** Its tag in the page and in addresses. */
  language: string;
  /** Its name in itself. */
  name: string;
  /** By which numbers are written: the marks of the language's own formulas and statements. */
  locale: string;
  title: string;
  titleOf(dealer: string): string;
  version(version: string): string;
  lead: string;
  skip: string;
  trustHeading: string;
  /** What to know of sources that are named in another language; nothing where they are in this one. */
  sourcesNote: string | undefined;
  rulesOf(many: number): string;
  dealersHeading(dealer: string): string;
  dealersLead: string;
  noDealers: string;
  inPlaceOf(own: string): string;
  refusedHeading: string;
  refusedLead: string;
  /** What was read, and one of `refusals`. */
  refused(read: string, expected: string): string;
  /** What would have been taken. */
  refusals: {
    'no-figure': string;
    /** By one of `kinds`. */
    'not-to-change'(kind: string): string;
    /** By the word for a unit; '' where the rule has none. */
    'other-unit'(unit: string): string;
    'unsafe': Readonly<Record<Safer, (bound: string) => string>>;
    'out-of-range'(range: string): string;
  };
  searchHeading: string;
  search: string;
  anyKind: string;
  kindFilter: string;
  trustFilter: string;
  clear: string;
  /** `{shown}` and `{all}` are filled in by the page's script. */
  found: string;
  foundNone: string;
  themesHeading: string;
  value: string;
  formula: string;
  dealers: string;
  kind: string;
  range: string;
  rangeOf(least: string, most: string): string;
  safer: Readonly<Record<Safer, string>>;
  source: string;
  uses: string;
  noUses: string;
  derived(from: string): string;
  end: string;
  kinds: Readonly<Record<FigureRule['kind'] | FormulaRule['kind'], string>>;
  trust: Readonly<Record<Trust, { name: string; says: string }>>;
  /** Words behind a number that `reasons/words` has none for; '' where the number stands alone. */
  units: Readonly<Record<Extract<PlainUnit, 'ratio' | 'dealer-currency'>, string>>;
  /** Headings of the groups, by the first word of their rules' ids. */
  themes: Readonly<Record<Theme, string>>;
  /** Where a rule is used, behind `uses`, by the module that reads it. */
  places: Readonly<Record<Module, string>>;
}
