import { commonPractice, figures, seenSecondHand } from '../record.ts';

const d497 = seenSecondHand('ASABE D497.7, Agricultural Machinery Management Data', 'clause 6, tractors under 80 hp');

export const money = figures({
  'resale.c1': {
    statement: 'Remaining value: share of the list price at the start',
    value: 0.981, unit: 'ratio', kind: 'rule-of-thumb', source: d497, valid: [0.5, 1],
  },
  'resale.c2': {
    statement: 'Remaining value: loss with the square root of age',
    value: 0.093, unit: 'ratio', kind: 'rule-of-thumb', source: d497, valid: [0, 0.3],
  },
  'resale.c3': {
    statement: 'Remaining value: loss with the square root of hours a year',
    value: 0.0058, unit: 'ratio', kind: 'rule-of-thumb', source: d497, valid: [0, 0.05],
  },
  'resale.spread': {
    statement: 'Share by which used prices of machines alike in age and hours lie to either side',
    value: 0.15, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 0.5],
  },
  'keep.years': {
    statement: 'Years a buyer keeps a used tractor, where he did not say',
    value: 7, unit: 'years', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 30],
  },
  'keep.hours-per-year': {
    statement: 'Hours an owner on a smallholding runs his tractor in a year, where he did not say',
    value: 100, unit: 'per-year', kind: 'rule-of-thumb', source: commonPractice, valid: [10, 1000],
  },
});
