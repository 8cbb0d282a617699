import { commonPractice, figures } from '../record.ts';

const thumb = { kind: 'rule-of-thumb', source: commonPractice } as const;

/** What machines set beside each other, and asking prices, are looked at by. */
export const lot = figures({
  'lot.compare.hours-least': {
    ...thumb, statement: 'Fewest hours a year for which two machines are compared', value: 10, unit: 'per-year', valid: [1, 100],
  },
  'lot.compare.hours-most': {
    ...thumb, statement: 'Most hours a year for which two machines are compared: few compact tractors run more', value: 600, unit: 'per-year', valid: [100, 3000],
  },
  'lot.asking.units-least': {
    ...thumb, statement: 'Fewest asking prices from which a trend with age and hours is drawn: five for each of its three figures',
    value: 15, unit: 'count', valid: [8, 1000],
  },
  'lot.asking.share': {
    ...thumb, statement: 'Share of asking prices that a range of them is to hold', value: 0.8, unit: 'ratio', valid: [0.5, 0.99],
  },
  'lot.inspect.hours-most': {
    ...thumb, statement: 'Hours a year above which a tractor has been worked harder than owners on smallholdings mostly work theirs',
    value: 250, unit: 'per-year', valid: [50, 2000],
  },
  'lot.inspect.hours-least': {
    ...thumb, statement: 'Hours a year below which a tractor has stood so much that seals, tyres and battery age before they wear',
    value: 20, unit: 'per-year', valid: [0, 50],
  },
  'lot.inspect.tyre-wear': {
    ...thumb, statement: 'Share of the tread worn off above which new tyres belong in the reckoning', value: 0.6, unit: 'ratio', valid: [0.2, 0.9],
  },
});
