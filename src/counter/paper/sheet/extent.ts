/** How much of a shortlist a sheet tells. What isn't cleared, answers, checks, cautions and terms stand in all of them. */
export interface Extent {
  /** Machines told one by one, of those that stand and of those to ask about together; the others are named. */
  machines: number;
  /** For each of them; of drawbacks one is always told. */
  reasons: number;
  drawbacks: number;
  sums: number;
  units: number;
  /** Ways out where nothing fits, and what stands in their way. */
  ways: number;
  whyNot: 'because' | 'names' | 'untold';
  /** What the machines trade against each other, and what would change the answer. */
  asides: boolean;
  answers: 'questions' | 'labels';
  cautions: 'each' | 'in-short';
  /** Height the line-up may take [mm], and whether figures stand in it. */
  drawing: number;
  figures: boolean;
}

const whole: Extent = {
  machines: Infinity, reasons: Infinity, drawbacks: Infinity, sums: Infinity, units: Infinity, ways: Infinity, whyNot: 'because', asides: true,
  answers: 'questions', cautions: 'each', drawing: 90, figures: true,
};

/** From much to little; fewer machines, then more of each. Three of them, with reasons and sums, are kept as long as there is room. */
const less: readonly Partial<Extent>[] = [
  { machines: 8, reasons: 8, drawbacks: 8, sums: 4, units: 6, ways: 8, drawing: 75 },
  { machines: 6, reasons: 6, drawbacks: 6, sums: 3, units: 5 },
  { machines: 5, reasons: 5, drawbacks: 5, units: 4, answers: 'labels' },
  { machines: 4, reasons: 5, drawbacks: 5, asides: false },
  { reasons: 4, drawbacks: 4, units: 3, drawing: 68 },
  { whyNot: 'names', ways: 6 },
  { reasons: 3, drawbacks: 3, sums: 2, units: 2 },
  { machines: 3, reasons: 6, drawbacks: 6, sums: 3, units: 3 },
  { reasons: 5, drawbacks: 5, ways: 5 },
  { reasons: 4, drawbacks: 4, sums: 2 },
  { reasons: 3, drawbacks: 3, units: 2 },
  { figures: false, drawing: 62, ways: 4 },
  { sums: 1 },
  { reasons: 2, drawbacks: 2, units: 1, ways: 3 },
  { machines: 2, reasons: 4, drawbacks: 4, sums: 2, units: 2 },
  { reasons: 3, drawbacks: 3, sums: 1, ways: 2 },
  { reasons: 2, drawbacks: 2, units: 1, whyNot: 'untold' },
  { machines: 1, reasons: 4, drawbacks: 4, sums: 2, units: 2, drawing: 55, ways: 1 },
  { reasons: 2, drawbacks: 2, sums: 1, units: 1 },
  { reasons: 1, drawbacks: 1, sums: 0, cautions: 'in-short' },
  { machines: 0 },
];

/** Every extent a sheet is tried at, the whole first. */
export const extents: readonly Extent[] = [whole, ...less.map((_, step) => Object.assign({}, whole, ...less.slice(0, step + 1)) as Extent)];
