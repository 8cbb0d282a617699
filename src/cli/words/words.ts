/** What only the sheet of the command line says. What a buyer reads elsewhere too stands in `reasons/words`. */
export interface CliWords {
  demandsHeading: string;
  atLeast(amount: string): string;
  atMost(amount: string): string;
  safety: string;
  modelYears(from: number, to: number | undefined): string;
  builtIn(from: number, to: number | undefined): string;
  reckonedFor(unit: string): string;
  reckonedTypical: string;
  alsoMet(needs: string): string;
  mind: string;
  fittingHours(hours: string): string;
  askPrice: string;
  notCounted: string;
  includes(things: string): string;
  included: Readonly<Record<'implements' | 'delivery' | 'tax', string>>;
  total: string;
  notKnown(specs: string): string;
  working: string;
  gives(result: string): string;
  formulasHeading: string;
  figuresHeading: string;
  source(source: string): string;
  /** Before a line on a table that is no fault. */
  weights: Readonly<Record<'query' | 'notice', string>>;
  rowsRead(done: number, of: number): string;
  imported(file: string, machines: number, units: number, faults: number): string;
}
