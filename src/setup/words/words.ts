import type { SheetKind } from '../../sheets/sheets.ts';

/** What one language says on the set-up page. What is missing is a type error. */
export interface SetUpWords {
  language: string;
  title: string;
  lead: string;
  languageLabel: string;
  headings: Readonly<Record<'files' | 'columns' | 'look' | 'dealer' | 'figures' | 'save', string>>;
  sheets: Readonly<Record<SheetKind, string>>;
  files: {
    private: string;
    drop: string;
    choose(sheet: string): string;
    document: string;
    demo: string;
    rows(name: string, rows: number): string;
    none: string;
    progress(done: number, of: number): string;
    stop: string;
    refused: string;
    failed: string;
    addHeading(sheet: string): string;
    addExplained: string;
    add: string;
    template: string;
  };
  columns: {
    explained: string;
    yours: string;
    sample: string;
    takenFor: string;
    leftOut: string;
    sure: Readonly<Record<'exact' | 'same' | 'near' | 'none', string>>;
    settled(count: number): string;
  };
  look: {
    nothing: string;
    counts(faults: number, queries: number, notices: number): string;
    weights: Readonly<Record<'fault' | 'query' | 'notice', string>>;
    found: string;
    expected: string;
    mend: string;
    cells(cells: string, more: number): string;
    instead: string;
    write(count: number): string;
    undo: string;
    shown(from: number, to: number, of: number): string;
    earlier: string;
    later: string;
    unknownHeading: string;
  };
  dealer: {
    explained: string;
    fields: Readonly<Record<'name' | 'phone' | 'email' | 'address' | 'url' | 'currency' | 'units' | 'locale' | 'asOf', string>>;
    us: string;
    metric: string;
    termsHeading: string;
    termsExplained: string;
    terms(language: string): string;
    termsMissing: string;
    wrong: Readonly<Record<'name' | 'currency' | 'url' | 'locale' | 'asOf', string>>;
  };
  figures: {
    explained: string;
    search: string;
    book(value: string): string;
    own: string;
    refused(least: string, most: string, unit: string): string;
    found(shown: number, of: number): string;
  };
  save: {
    notYet: string;
    ready(machines: number, units: number): string;
    withFaults(count: number): string;
    catalogue: string;
    table(sheet: string): string;
    version(version: string): string;
    tryIt: string;
    preview: string;
    snippetHeading: string;
    folder: string;
    where: string;
    copy: string;
    copied: string;
    steps: readonly string[];
    noHash: string;
  };
}
