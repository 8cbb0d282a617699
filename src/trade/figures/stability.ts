import { commonPractice, figures, seen, seenSecondHand } from '../record.ts';

export const stability = figures({
  'slope.flat': {
    statement: 'What a buyer means by flat: at most this steep',
    value: 5, unit: 'deg', kind: 'definition', source: commonPractice, valid: [5, 5],
  },
  'slope.rolling': {
    statement: 'What a buyer means by rolling: at most this steep',
    value: 10, unit: 'deg', kind: 'definition', source: commonPractice, valid: [10, 10],
  },
  'slope.limit': {
    statement: 'Slope beyond which no mowing and no loader work counts as cleared, whatever the machine',
    value: 15, unit: 'deg', kind: 'safety-floor', safer: 'less', valid: [5, 15],
    source: seenSecondHand('Ride-on mower safety sheets, makers not named', 'do not mow over 15 degrees'),
  },
  'slope.margin': {
    statement: 'Slope as a share of the angle at which the standing machine would tip: at most this much',
    value: 0.5, unit: 'ratio', kind: 'safety-floor', safer: 'less', source: commonPractice, valid: [0.2, 0.5],
  },
  'slope.carried-load': {
    statement: 'Height above the ground at which a load is carried on the move, in the comparison of machines on a slope',
    value: 0.5, unit: 'm', kind: 'safety-floor', safer: 'more', source: commonPractice, valid: [0.5, 3],
  },
  'rops.power': {
    statement: 'Engine power above which an employer in the United States must provide a ROPS and a belt',
    value: 20, unit: 'hp', kind: 'published-figure', valid: [20, 20],
    source: seen('29 CFR 1928.51 as adopted in Oregon OAR 437-004-3600', 'agricultural tractor: more than 20 engine horsepower'),
  },
});
