/**
 * The shortlist: what the tool says. The single definition of `acre-to-axle/shortlist/1`. It holds ids
 * and figures in SI (money in the dealer's currency), never words and never formatted numbers.
 */
import { criteria, taskIds } from '../answers/schema.ts';
import * as z from '../zod.ts';

export const shortlistFormat = 'acre-to-axle/shortlist/1';

const optional = z.optional;
const unit = z.string();
const term = z.strictObject({ value: z.number(), unit, rule: optional(z.string()) });
const figure = z.strictObject({ value: z.number(), unit });
const working = z.strictObject({
  formula: z.string(),
  inputs: z.record(z.string(), term),
  result: term,
});

const need = z.strictObject({
  id: z.string(),
  capability: z.string(),
  must: z.boolean(),
  safety: z.boolean(),
  task: optional(z.enum(taskIds)),
  from: z.array(z.string()),
  rule: optional(z.string()),
  bound: optional(z.strictObject({ is: z.enum(['at-least', 'at-most']), value: z.number(), unit })),
  working: z.array(working),
});

export const reasonKinds = ['for', 'against', 'unknown', 'caution'] as const;

const reason = z.strictObject({
  id: z.string(),
  kind: z.enum(reasonKinds),
  need: optional(z.string()),
  criterion: optional(z.enum(criteria)),
  /** How much it decides: the greater, the earlier it is told. */
  weight: z.number(),
  figures: z.record(z.string(), figure),
  /** Ids or plain values the words speak of, such as a loader or a year. */
  about: optional(z.record(z.string(), z.string())),
  working: optional(z.array(working)),
  missing: optional(z.array(z.string())),
});

const addition = z.strictObject({
  what: z.string(),
  id: optional(z.string()),
  price: optional(z.number()),
  labourHours: optional(z.number()),
  labourAsked: optional(z.literal(true)),
  mass: optional(z.number()),
  for: z.array(z.string()),
});

const packaged = z.strictObject({
  price: optional(z.strictObject({
    low: z.number(), high: z.number(), currency: z.string(), machineLow: z.number(), machineHigh: z.number(),
  })),
  additions: z.array(addition),
  /** Additions whose price must be asked: the package costs more than `price` says. */
  unpriced: z.array(addition),
});

const because = z.strictObject({
  need: z.string(),
  capability: z.string(),
  has: optional(z.number()),
  wants: optional(z.number()),
  unit: optional(unit),
  bound: optional(z.enum(['at-least', 'at-most'])),
  /** What would carry the load, where it isn't the loader; or what is in the way of it. */
  by: optional(z.enum(['hitch', 'coupling'])),
  rule: optional(z.string()),
  missing: optional(z.array(z.string())),
});

/** A bound moved just as far as it takes, in SI on the safe side; or a price. */
const relaxed = z.strictObject({ is: z.enum(['at-least', 'at-most']), from: z.number(), to: z.number(), unit });

const verdict = z.enum(['stands', 'ask', 'ruled-out']);

const needState = z.strictObject({
  outcome: z.enum(['met', 'failed', 'unknown']),
  figures: z.record(z.string(), figure),
  about: optional(z.record(z.string(), z.string())),
  missing: optional(z.array(z.string())),
  /** There is nothing to judge. */
  moot: optional(z.boolean()),
});
const criterionState = z.strictObject({
  points: z.number(),
  value: optional(z.number()),
  figure: optional(z.number()),
  unit: optional(unit),
  anchors: optional(z.tuple([z.number(), z.number()])),
  missing: optional(z.array(z.string())),
});
const comparedSide = z.strictObject({ id: z.string(), standing: verdict, score: z.number(), price: optional(z.strictObject({ low: z.number(), high: z.number() })) });
const comparedNeed = { need: z.string(), capability: z.string(), of: z.tuple([needState, needState]) };

/** Why one of two stands above the other: each pair in the order of the sides. */
const contrast = z.strictObject({
  sides: z.tuple([comparedSide, comparedSide]),
  above: z.string(),
  /** The step of the order that decides. */
  by: z.enum(['standing', 'score', 'price', 'id']),
  gates: z.array(z.strictObject({ ...comparedNeed, favours: z.string() })),
  criteria: z.array(z.strictObject({
    criterion: z.enum(criteria), favours: z.string(), points: z.number(), of: z.tuple([criterionState, criterionState]),
  })),
  /** What neither of them has, or is known to have. */
  lacking: z.strictObject({ needs: z.array(z.strictObject(comparedNeed)), criteria: z.array(z.enum(criteria)) }),
  /** What would have to go for the lower to come level: needs it fails or leaves open, differences of criteria. */
  lift: z.strictObject({ gates: z.array(z.string()), criteria: z.array(z.enum(criteria)) }),
});

/** Machines that beat and trail another by a clear share of the same criteria. */
const tradeOff = z.strictObject({
  machines: z.array(z.string()), than: z.string(), gains: z.array(z.enum(criteria)), losses: z.array(z.enum(criteria)),
});

const unitEntry = z.strictObject({
  unit: z.string(),
  verdict,
  score: z.number(),
  package: packaged,
  reasons: z.array(reason),
  because: z.array(because),
});

const entry = z.strictObject({
  machine: z.string(),
  rank: z.int(),
  score: z.number(),
  contributions: z.partialRecord(z.enum(criteria), z.strictObject({
    weight: z.number(),
    value: optional(z.number()),
    points: z.number(),
    figure: optional(z.number()),
    unit: optional(unit),
    anchors: optional(z.tuple([z.number(), z.number()])),
    missing: optional(z.array(z.string())),
    working: optional(z.array(working)),
  })),
  /** How often it comes first over all weightings that agree with the buyer's order; absent where it doesn't stand. */
  firstShare: optional(z.number()),
  /** The same for one of the first three places; those that tie share the places they take. */
  topThreeShare: optional(z.number()),
  /** Machines that stand with the same score, to the millionth. */
  tiedWith: optional(z.array(z.string())),
  /** On the second: the weights nearest to the buyer's that agree with his order and put it first; absent where none do. */
  overtakes: optional(z.partialRecord(z.enum(criteria), z.number())),
  /** Why it stands below the first; absent of the first. */
  behind: optional(contrast),
  /** The unit on the lot the entry speaks of; absent where it goes by the typical price. */
  unit: optional(z.string()),
  package: packaged,
  /** What it costs to own and run, in the dealer's currency; or the figures that are missing to say so. */
  owning: z.union([
    z.strictObject({
      years: z.number(), hoursPerYear: z.number(), perYear: z.number(), perHour: z.number(),
      parts: z.record(z.string(), z.number()), working: z.array(working),
    }),
    z.strictObject({ missing: z.array(z.string()) }),
  ]),
  reasons: z.array(reason),
  because: z.array(because),
  units: z.array(unitEntry),
});

export const shortlistSchema = z.strictObject({
  format: z.literal(shortlistFormat),
  catalogue: z.strictObject({ id: z.string(), version: optional(z.string()), asOf: z.string() }),
  rules: z.strictObject({ version: z.string(), dealers: z.array(z.string()) }),
  needs: z.array(need),
  /** Tasks that don't count as cleared, and why: heads every result. */
  notCleared: z.array(z.strictObject({
    id: z.string(), tasks: z.array(z.enum(taskIds)), from: z.array(z.string()), rule: optional(z.string()),
  })),
  shortlist: z.array(entry),
  /** What the first few give up for what, against the first; the first itself against the second. */
  tradeOffs: z.array(tradeOff),
  askDealer: z.array(entry),
  ruledOut: z.array(z.strictObject({ machine: z.string(), because: z.array(because), units: z.array(unitEntry) })),
  /** What comes back without a need, with its bound relaxed, or without a whole task. */
  changes: z.array(z.strictObject({
    need: optional(z.string()), task: optional(z.enum(taskIds)), relaxed: optional(relaxed),
    stands: z.array(z.string()), asks: z.array(z.string()),
    /** How much less what comes back costs than the first that stands. */
    saves: optional(z.number()),
  })),
  /** Where nothing stands and there is nothing to ask: every smallest set of needs that nothing meets together. */
  conflicts: z.strictObject({ sets: z.array(z.array(z.string())), complete: z.boolean() }),
  /** Where nothing stands and there is nothing to ask: what to give up for something to come back, the least first. */
  waysOut: z.array(z.strictObject({
    give: z.array(z.strictObject({
      need: optional(z.string()), task: optional(z.enum(taskIds)), relaxed: optional(relaxed),
      /** The job may be hired out: it is rare, or nobody said how rare. */
      hire: optional(z.enum(['rare', 'unsaid'])),
    })),
    stands: z.array(z.string()), asks: z.array(z.string()),
    /** Lowest price of a package that comes back. */
    price: optional(z.number()),
  })),
  cautions: z.array(z.strictObject({ id: z.string(), about: optional(z.string()), figures: optional(z.record(z.string(), figure)) })),
  unknowns: z.array(z.strictObject({ machine: z.string(), unit: optional(z.string()), need: z.string(), missing: z.array(z.string()) })),
});

export type Shortlist = z.infer<typeof shortlistSchema>;
export type Entry = Shortlist['shortlist'][number];
export type UnitEntry = z.infer<typeof unitEntry>;
export type Contrast = z.infer<typeof contrast>;
export type TradeOff = z.infer<typeof tradeOff>;
export type NeedState = z.infer<typeof needState>;
export type CriterionState = z.infer<typeof criterionState>;
export type Reason = z.infer<typeof reason>;
export type WorkingEntry = z.infer<typeof working>;
export type CautionEntry = Shortlist['cautions'][number];
export type RelaxedEntry = z.infer<typeof relaxed>;
export type WayOutEntry = Shortlist['waysOut'][number];
export type Because = z.infer<typeof because>;
export type PackageEntry = z.infer<typeof packaged>;
export type AdditionEntry = z.infer<typeof addition>;
