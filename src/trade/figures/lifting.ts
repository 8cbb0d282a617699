import { commonPractice, figures, fromMemory, seenSecondHand } from '../record.ts';

const manual = 'Front-loader operating manual, maker not named';

export const lifting = figures({
  'loader.margin': {
    statement: 'Lift kept in hand beyond the heaviest regular load and what holds it',
    value: 0.25, unit: 'ratio', kind: 'safety-floor', safer: 'more', source: commonPractice, valid: [0.25, 1],
  },
  'loader.rated-ahead': {
    statement: 'Distance ahead of the bucket pins of the second published lift figure',
    value: 500, unit: 'mm', kind: 'definition', valid: [500, 500],
    source: fromMemory('SAE J732 and ASABE S301, loader lift at the pins and 500 mm ahead'),
  },
  'loader.one-rating-share': {
    statement: 'Lift 500 mm ahead of the pins as a share of lift at the pins, where only one of them is published',
    value: 0.7, unit: 'ratio', kind: 'safety-floor', safer: 'less', source: commonPractice, valid: [0.5, 0.7],
  },
  'loader.rear-share': {
    statement: 'Share of the whole mass that stays on the rear axle with the loader loaded and furthest forward',
    value: 0.2, unit: 'ratio', kind: 'safety-floor', safer: 'more', valid: [0.2, 0.5],
    source: seenSecondHand(manual, 'rear axle at least 20 % of the total'),
  },
  'forks.load-centre': {
    statement: 'Centre of a 48-in pallet load ahead of the fork face',
    value: 24, unit: 'in', kind: 'published-figure', valid: [24, 24],
    source: fromMemory('ITSDF B56 practice for pallet forks'),
  },
  'forks.mass': {
    statement: 'Mass of a set of pallet forks with its frame, where none is chosen yet',
    value: 240, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [80, 600],
  },
  'forks.own-centre': {
    statement: 'Centre of mass of pallet forks ahead of the pins',
    value: 14, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [4, 24],
  },
  'forks.face': {
    statement: 'Fork face ahead of the pins',
    value: 4, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 12],
  },
  'spear.mass': {
    statement: 'Mass of a loader bale spear, where none is chosen yet',
    value: 160, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [60, 500],
  },
  'spear.own-centre': {
    statement: 'Centre of mass of a bale spear ahead of the pins',
    value: 12, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [2, 30],
  },
  'spear.face': {
    statement: 'Back of the bale on a spear, ahead of the pins',
    value: 5, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 12],
  },
  'bucket.mass': {
    statement: 'Mass of a loader bucket, where nobody gave it',
    value: 250, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [80, 800],
  },
  'bale.density': {
    statement: 'Density of a dry round bale as it is weighed, from a 5 by 5 ft bale of 1,100 lb',
    value: 11.2, unit: 'lb/ft3', kind: 'published-figure', valid: [8, 16],
    source: seenSecondHand('Texas A&M AgriLife Extension E-319 (2012)', '1,100 lb at 5 by 5 ft'),
  },
  'bale.dry-density': {
    statement: 'Dry hay in each cubic foot of a firm round bale: solid, but it dents',
    value: 11, unit: 'lb/ft3', kind: 'rule-of-thumb', valid: [8, 14],
    source: seenSecondHand('D. Hancock, US Dairy Forage Research Center, in a farms.com news item', 'loose 9, solid but dents 11, tight 12'),
  },
  'bale.moisture.wrapped': {
    statement: 'Water in a wrapped bale, as a share of its weight',
    value: 0.55, unit: 'ratio', kind: 'rule-of-thumb', valid: [0.4, 0.7],
    source: fromMemory('Extension sheets on baleage', '50 to 60 % moisture'),
  },
  'backhoe.centre-behind': {
    statement: 'Centre of mass of a backhoe behind the rear axle, folded for the road, where nobody gave it: the farther, the lighter the front',
    value: 1.1, unit: 'm', kind: 'safety-floor', safer: 'more', source: commonPractice, valid: [1.1, 2],
  },
  'hitch.rated-behind': {
    statement: 'Distance behind the ball ends at which hitch lift is published',
    value: 610, unit: 'mm', kind: 'definition', valid: [610, 610],
    source: fromMemory('ISO 730, lift capacity 610 mm behind the ball ends'),
  },
  'hitch.link-length': {
    statement: 'Length of the lower links of a compact tractor: the shorter, the more a far load counts',
    value: 0.7, unit: 'm', kind: 'safety-floor', safer: 'less', source: commonPractice, valid: [0.3, 0.7],
  },
  'hitch.ball-ends-behind-axle': {
    statement: 'Ball ends of the lower links behind the rear axle, on a compact tractor',
    value: 0.65, unit: 'm', kind: 'rule-of-thumb', source: commonPractice, valid: [0.4, 1],
  },
  'hitch.front-share': {
    statement: 'Load that stays on the front axle to steer with, as a share of the unladen mass',
    value: 0.2, unit: 'ratio', kind: 'safety-floor', safer: 'more', valid: [0.2, 0.5],
    source: seenSecondHand('European ballast sheet for mounted implements, printed in implement manuals, makers not named', 'front axle at least 20 % of the unladen mass'),
  },
  'ballast.behind-ball-ends': {
    statement: 'Centre of mass of a ballast box behind the ball ends, where none is chosen yet',
    value: 0.45, unit: 'm', kind: 'rule-of-thumb', source: commonPractice, valid: [0.2, 0.8],
  },
});
