import { commonPractice, figures } from '../record.ts';

const ours = { kind: 'rule-of-thumb', source: commonPractice } as const;

/** What is told when little or nothing fits: how near is near, and how finely a bound is searched. */
export const waysOut = figures({
  'near-miss.share': {
    ...ours, statement: 'Share of a bound that is no must by which a machine may miss it and still be told as a near miss', value: 0.1, unit: 'ratio', valid: [0, 0.5],
  },
  'relax.most': {
    ...ours, statement: 'How many times a bound is moved at the most before it is told as given up', value: 2, unit: 'count', valid: [1, 10],
  },
  'relax.step.length': { ...ours, statement: 'Step to which a relaxed length is found', value: 1, unit: 'mm', valid: [1, 50] },
  'relax.step.mass': { ...ours, statement: 'Step to which a relaxed load is found', value: 0.1, unit: 'kg', valid: [0.1, 10] },
  'relax.step.time': { ...ours, statement: 'Step to which a relaxed time is found', value: 1, unit: 'min', valid: [1, 30] },
  'relax.step.money': { ...ours, statement: 'Step to which a relaxed price is found', value: 1, unit: 'dealer-currency', valid: [1, 1000] },
  'relax.conflicts': {
    ...ours, statement: 'Needs in conflict up to which all their conflicts are found', value: 12, unit: 'count', valid: [1, 12],
  },
});
