import { commonPractice, figures } from '../record.ts';

const anchor = { kind: 'value-anchor', source: commonPractice } as const;

/** The two points of each value function: where it earns everything, and where it earns nothing. */
export const valueAnchors = figures({
  'lot.told': {
    ...anchor, statement: 'Units of one machine that are told one by one, the best of them', value: 12, unit: 'count', valid: [1, 500],
  },
  'lot.fresh': {
    statement: 'Months for which a dealer’s list is taken to be what stands on his lot', value: 2, unit: 'months', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 24],
  },
  'value.price.best': {
    ...anchor, statement: 'Package price as a share of the limit that earns the full mark', value: 0.5, unit: 'ratio', valid: [0, 1],
  },
  'value.price.worst': {
    ...anchor, statement: 'Package price as a share of the limit that earns nothing', value: 1.1, unit: 'ratio', valid: [1, 2],
  },
  'value.price.best-amount': {
    ...anchor, statement: 'Package price that earns the full mark where no limit is given', value: 8000, unit: 'dealer-currency', valid: [0, 1e6],
  },
  'value.price.worst-amount': {
    ...anchor, statement: 'Package price that earns nothing where no limit is given', value: 60_000, unit: 'dealer-currency', valid: [1, 1e7],
  },
  'value.time.best': {
    ...anchor, statement: 'Hours a mow as a share of the hours the buyer will give that earn the full mark', value: 0.5, unit: 'ratio', valid: [0, 1],
  },
  'value.time.worst': {
    ...anchor, statement: 'Hours a mow as a share of the hours the buyer will give that earn nothing', value: 1.5, unit: 'ratio', valid: [1, 5],
  },
  'value.time.best-hours': {
    ...anchor, statement: 'Hours a mow that earn the full mark where the buyer gave none', value: 0.5, unit: 'h', valid: [0, 10],
  },
  'value.time.worst-hours': {
    ...anchor, statement: 'Hours a mow that earn nothing where the buyer gave none', value: 6, unit: 'h', valid: [1, 40],
  },
  'value.headroom.full': {
    ...anchor, statement: 'Surplus over the hardest need beyond which more earns nothing', value: 0.5, unit: 'ratio', valid: [0.1, 3],
  },
  'value.headroom.none': {
    ...anchor, statement: 'Surplus over the hardest need that earns nothing: below zero, for a wish may be missed by a little', value: -0.5, unit: 'ratio', valid: [-1, 0],
  },
  'value.fit.mass.best': {
    ...anchor, statement: 'Mass with loader and mower that is easy on a lawn', value: 1800, unit: 'lb', valid: [500, 5000],
  },
  'value.fit.mass.worst': {
    ...anchor, statement: 'Mass with loader and mower that marks a lawn', value: 5000, unit: 'lb', valid: [1000, 12_000],
  },
  'value.fit.side.best': {
    ...anchor, statement: 'Room on each side in the narrowest passage that is easy to drive', value: 18, unit: 'in', valid: [6, 60],
  },
  'value.fit.side.worst': {
    ...anchor, statement: 'Room on each side in the narrowest passage that takes care each time', value: 3, unit: 'in', valid: [0, 12],
  },
  'value.fit.turn.best': {
    ...anchor, statement: 'Turning radius that is handy among obstacles', value: 7, unit: 'ft', valid: [4, 20],
  },
  'value.fit.turn.worst': {
    ...anchor, statement: 'Turning radius that is a burden among obstacles', value: 12, unit: 'ft', valid: [5, 30],
  },
  'value.resale.best': {
    ...anchor, statement: 'Share of the price kept over the years of use that earns the full mark', value: 0.85, unit: 'ratio', valid: [0.3, 1],
  },
  'value.resale.worst': {
    ...anchor, statement: 'Share of the price kept over the years of use that earns nothing', value: 0.45, unit: 'ratio', valid: [0, 0.9],
  },
  'trade-off.share': {
    ...anchor, kind: 'rule-of-thumb', statement: 'Share of a criterion’s range by which one machine must beat another for that to be told as a trade', value: 0.1, unit: 'ratio', valid: [0.02, 0.5],
  },
});
