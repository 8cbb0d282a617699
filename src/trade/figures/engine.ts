import { figures, fromMemory } from '../record.ts';

const tier4 = (where: string) => fromMemory('40 CFR 1039, emissions of nonroad diesel engines in the United States', where);

export const engine = figures({
  'exhaust.filter.power-least': {
    statement: 'Engine power from which the particulate limit of 2013 is met by most engines with a filter: below it none is usual',
    value: 19, unit: 'kW', kind: 'published-figure', source: tier4('19 to 56 kW'), valid: [19, 19],
  },
  'exhaust.filter.power-most': {
    statement: 'Engine power up to which that particulate limit holds',
    value: 56, unit: 'kW', kind: 'published-figure', source: tier4('19 to 56 kW'), valid: [56, 56],
  },
  'exhaust.filter.year': {
    statement: 'Model year from which that particulate limit holds',
    value: 2013, unit: 'count', kind: 'published-figure', source: tier4('model year 2013'), valid: [2013, 2013],
  },
});
