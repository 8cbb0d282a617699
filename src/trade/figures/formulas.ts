import { moneyFormulas } from './formulas-of-money.ts';
import { workFormulas } from './formulas-of-work.ts';
import { commonPractice, formulas, fromMemory, seen, seenSecondHand } from '../record.ts';

const statics = { basis: 'derived', from: 'statics, sum of moments' } as const;
const geometry = { basis: 'derived', from: 'geometry' } as const;
const ballastSheet = seenSecondHand('European ballast sheet for mounted implements, printed in implement manuals, makers not named');

/** Every formula a working may name; its function stands in `trade/formulas` under the same name. */
export const formulaRules = {
  ...workFormulas,
  ...moneyFormulas,
  ...formulas({
  'mow.rate': {
    kind: 'formula', statement: 'Area worked in an hour', formula: 'rate = speed × width × (1 − overlap) × efficiency',
    source: seen('University of Kentucky AEN-73, Farm Machinery Field Capacities; Iowa State Extension PM 696', 'EFC = S·W·e / 8.25'),
  },
  'mow.hours': {
    kind: 'formula', statement: 'Hours a person spends on one mow', formula: 'hours = area / rate × labour',
    source: seen('Iowa State Extension PM 696; University of Illinois farmdoc', 'hours = area / EFC; labour × 1.1'),
  },
  'pto.power-for-width': {
    kind: 'formula', statement: 'PTO power an implement takes by its width', formula: 'power = width × power by width', source: commonPractice,
  },
  'pto.at-altitude': {
    kind: 'formula', statement: 'Power left at altitude', formula: 'power = rated × (1 − loss × (altitude − free) / step)', source: commonPractice,
  },
  'loader.two-ratings': {
    kind: 'formula', statement: 'Arm of the loader behind its pins, from two published ratings',
    formula: 'arm = (far lift × far ahead − near lift × near ahead) / (near lift − far lift)', source: statics,
  },
  'loader.one-rating': {
    kind: 'formula', statement: 'Arm of the loader behind its pins, from one rating and the typical loss',
    formula: 'arm = by × share / (1 − share); lift at the pins = near lift × (arm + near ahead) / arm', source: statics,
  },
  'loader.lift-at': {
    kind: 'formula', statement: 'Lift at a distance ahead of the pins',
    formula: 'lift = lift at the pins × arm / (arm + distance)', source: statics,
  },
  'loader.greatest-load': {
    kind: 'formula', statement: 'Greatest load after the attachment and the margin have had their share of the moment',
    formula: 'load = (lift at the pins × arm / (1 + margin) − attachment × (arm + attachment ahead)) / (arm + load ahead)', source: statics,
  },
  'ballast.rear': {
    kind: 'formula', statement: 'Rear ballast that keeps the rear axle its share with the loader loaded',
    formula: 'ballast = (share × (tractor + front) − rear + front × ahead / wheelbase) / ((wheelbase + behind) / wheelbase − share)',
    source: statics,
  },
  'axle.front-load': {
    kind: 'formula', statement: 'Load on the front axle with loads ahead of it and behind the rear axle',
    formula: 'front axle = (front load × (ahead + wheelbase) + bare front × wheelbase − rear load × behind) / wheelbase', source: ballastSheet,
  },
  'hitch.lift-at': {
    kind: 'formula', statement: 'Hitch lift at a distance behind the ball ends', formula: 'lift = rated × (link + rated at) / (link + behind the ball ends), never above rated', source: statics,
  },
  'slope.tip-angle': {
    kind: 'formula', statement: 'Angle at which a standing machine with a pivoted front axle tips about the line from rear tyre to pivot',
    formula: 'tan angle = (rear track / 2) × rear share / (height − pivot × (1 − rear share))', source: statics,
  },
  'slope.from-percent': {
    kind: 'formula', statement: 'Angle of a slope given in percent', formula: 'angle = atan(percent / 100)', source: geometry,
  },
  'bale.size': {
    kind: 'formula', statement: 'Size of a round bale as wide as it is high, from its weight', formula: 'size = ∛(4 × mass / (π × density))', source: geometry,
  },
  'area.strip': {
    kind: 'formula', statement: 'Area of a strip such as a drive', formula: 'area = length × width', source: geometry,
  },
  'place.passage': {
    kind: 'formula', statement: 'Width wanted to pass', formula: 'wanted = width + 2 × room on each side', source: geometry,
  },
  'place.headroom': {
    kind: 'formula', statement: 'Height wanted to pass under', formula: 'wanted = height + room above', source: geometry,
  },
  'place.length': {
    kind: 'formula', statement: 'Depth wanted to park', formula: 'wanted = length + room to walk', source: geometry,
  },
  'mass.aboard': {
    kind: 'formula', statement: 'Mass of machine, loader, mower, implements and what travels along', formula: 'mass = sum of the parts', source: statics,
  },
  'haul.behind': {
    kind: 'formula', statement: 'Mass behind the towing vehicle', formula: 'mass = empty trailer + load', source: statics,
  },
  'resale.remaining': {
    kind: 'formula', statement: 'Share of the list price a tractor still brings', formula: 'share = (C1 − C2 × √age − C3 × √hours a year)²',
    source: seenSecondHand('ASABE D497.7, Agricultural Machinery Management Data', 'clause 6'),
  },
  'weights.rank-order-centroid': {
    kind: 'formula', statement: 'Weight of a criterion from its rank alone', formula: 'weight of rank i = (1/n) × Σ from k = i to n of 1/k',
    source: fromMemory('Barron and Barrett, Decision quality using ranked attribute weights, Management Science 42 (1996)'),
  },
}),
};
