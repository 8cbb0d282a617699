/** How much of a shortlist a letter tells. What isn't cleared, cautions and the terms stand in all of them. */
export interface Extent {
  /** Machines told one by one, of those that stand and of those to ask about; the others are named. */
  machines: number;
  /** Reasons for each; those against it, unknown or to mind. */
  reasons: number;
  drawbacks: number;
  /** What must be bought besides, the units on the lot, why not the others, the cautions one by one. */
  details: boolean;
}

export const whole: Extent = { machines: Infinity, reasons: 8, drawbacks: Infinity, details: true };

/** From much to little, for where there is no room for the whole. */
export const shorter: readonly Extent[] = [
  { machines: 3, reasons: 3, drawbacks: 3, details: false },
  { machines: 3, reasons: 2, drawbacks: 2, details: false },
  { machines: 3, reasons: 1, drawbacks: 1, details: false },
  { machines: 2, reasons: 1, drawbacks: 1, details: false },
  { machines: 1, reasons: 1, drawbacks: 1, details: false },
  { machines: 3, reasons: 0, drawbacks: 0, details: false },
  { machines: 1, reasons: 0, drawbacks: 0, details: false },
  { machines: 0, reasons: 0, drawbacks: 0, details: false },
];
