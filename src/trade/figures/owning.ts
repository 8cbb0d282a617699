import { commonPractice, figures, seen, seenSecondHand } from '../record.ts';

const d497 = (where: string) => seenSecondHand('ASABE D497, Agricultural Machinery Management Data', where);
const a329 = (where: string) => seenSecondHand('Iowa State Extension A3-29, Estimating Farm Machinery Costs', where);
const farmdoc = (where: string) => seen('University of Illinois farmdoc, Machinery Cost Estimates: Tractors', where);

export const owning = figures({
  'own.repair.rf1': {
    statement: 'Repairs of a tractor: share of its list price over the first thousand hours. The standard has less, 0.003, for tractors on four driven wheels, but means large ones; a driven front axle is counted here with the dearer',
    value: 0.007, unit: 'ratio', kind: 'rule-of-thumb', valid: [0.001, 0.03],
    source: d497('clause 6, RF1; reproduces the table of Iowa State Extension: 25 % at 6,000 h, 70 % at 10,000 h'),
  },
  'own.repair.rf2': {
    statement: 'Repairs of a tractor: power of the hours by which they grow',
    value: 2, unit: 'ratio', kind: 'rule-of-thumb', valid: [1, 3],
    source: d497('clause 6, RF2; reproduces the table of Iowa State Extension'),
  },
  'own.fuel.diesel': {
    statement: 'Diesel fuel over the year, in US gallons for each hour and horsepower the PTO gives at most',
    value: 0.044, unit: 'gal/(hp·h)', kind: 'published-figure', source: a329('average fuel use'), valid: [0.044, 0.044],
  },
  'own.fuel.petrol': {
    statement: 'Petrol over the year, in US gallons for each hour and horsepower the PTO gives at most',
    value: 0.06, unit: 'gal/(hp·h)', kind: 'published-figure', source: a329('average fuel use'), valid: [0.06, 0.06],
  },
  'own.fuel-price': {
    statement: 'Price of a US gallon of fuel, in the dealer’s currency',
    value: 3.5, unit: 'dealer-currency', kind: 'rule-of-thumb', source: commonPractice, valid: [0.1, 10_000],
  },
  'own.wage': {
    statement: 'What an hour of the owner’s own time is counted at, in the dealer’s currency: nothing, unless he says',
    value: 0, unit: 'dealer-currency', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 1000],
  },
  'own.lubricant': {
    statement: 'Oil and filters as a share of the cost of fuel',
    value: 0.15, unit: 'ratio', kind: 'rule-of-thumb', source: a329('lubrication'), valid: [0.05, 0.3],
  },
  'own.housing': {
    statement: 'Taxes, insurance and housing in a year, as a share of the value',
    value: 0.01, unit: 'ratio', kind: 'rule-of-thumb', source: a329('1 % of the mean value; University of Illinois farmdoc takes as much without the taxes'), valid: [0, 0.05],
  },
  'own.repair.least': {
    statement: 'Repairs of a tractor that is well looked after, as a multiple of what the rule book reckons',
    value: 0.5, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 1],
  },
  'own.repair.most': {
    statement: 'Repairs of a tractor with bad luck, as a multiple of what the rule book reckons. In a study of farm records hours explained only 16 % of what repairs cost',
    value: 2, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 10],
  },
  'own.fuel.spread': {
    statement: 'Share by which published values of fuel lie to either side',
    value: 0.35, unit: 'ratio', kind: 'published-figure', source: seen('Iowa State Extension A3-27, Fuel Required for Field Operations', 'values can be off by 35 % either way'), valid: [0.35, 0.35],
  },
  'own.interest': {
    statement: 'Interest in a year on the money that is tied up in the machine',
    value: 0.07, unit: 'ratio', kind: 'rule-of-thumb', source: farmdoc('7.0 percent, May 2008'), valid: [0, 0.3],
  },
});
