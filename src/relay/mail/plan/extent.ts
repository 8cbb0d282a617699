/** How much a mail tells. What isn't cleared, cautions, terms and how to stop it stand in all of them. */
export interface Extent {
  /** Machines told one by one, of those that stand and of those to ask about. */
  machines: number;
  /** Of those behind them, how many are named; and how many of those ruled out, each with why. */
  others: number;
  /** Reasons for each; those against it, unknown or to mind. */
  reasons: number;
  drawbacks: number;
  units: boolean;
}

/** From all to little, for where a mail would be cut off by who shows it. */
export const extents: readonly Extent[] = [
  { machines: Infinity, others: Infinity, reasons: 8, drawbacks: Infinity, units: true },
  { machines: 6, others: 40, reasons: 5, drawbacks: 5, units: true },
  { machines: 3, others: 20, reasons: 4, drawbacks: 4, units: true },
  { machines: 3, others: 10, reasons: 3, drawbacks: 3, units: false },
  { machines: 1, others: 5, reasons: 1, drawbacks: 1, units: false },
];
export const whole = extents[0]!;
