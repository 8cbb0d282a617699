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

/** How closely a machine is told, and the line-up drawn, from much to little. */
const rich = { reasons: 6, drawbacks: 6, sums: 3, units: 4, drawing: 75, figures: true };
const good = { reasons: 4, drawbacks: 4, sums: 2, units: 3, drawing: 70, figures: true };
const plain = { reasons: 3, drawbacks: 3, sums: 1, units: 2, drawing: 66, figures: false };
const brief = { reasons: 3, drawbacks: 2, sums: 1, units: 1, drawing: 58, figures: false };
const lean = { reasons: 2, drawbacks: 2, sums: 1, units: 1, drawing: 58, figures: false };

/** From much to little. Three machines are kept as long as there is any room for them. */
const less: readonly Partial<Extent>[] = [
  { ...rich, machines: 8, reasons: 8, drawbacks: 8, ways: 8 },
  { ...rich, machines: 6 },
  { ...rich, machines: 5, answers: 'labels' },
  { ...rich, machines: 4, ways: 6 },
  { ...good, asides: false },
  { whyNot: 'names' },
  { ...rich, machines: 3 },
  { ...plain, machines: 4, ways: 5 },
  { ...good, machines: 3 },
  { ...plain, ways: 4 },
  { ...brief },
  { ...lean },
  { ...good, machines: 2 },
  { ...plain, ways: 3 },
  { ...brief },
  { ...lean },
  { whyNot: 'untold', ways: 2 },
  { ...good, machines: 1 },
  { ...lean, ways: 1 },
  { reasons: 1, drawbacks: 1, sums: 0, cautions: 'in-short' },
  { machines: 0 },
];

/** Every extent a sheet is tried at, the whole first. */
export const extents: readonly Extent[] = [whole, ...less.map((_, step) => Object.assign({}, whole, ...less.slice(0, step + 1)) as Extent)];
