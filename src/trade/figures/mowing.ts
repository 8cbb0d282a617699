import { commonPractice, figures, seen } from '../record.ts';

export const mowing = figures({
  'mow.speed': {
    statement: 'Ground speed while mowing a lawn with a belly or rear deck',
    value: 4, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 8],
  },
  'mow.overlap': {
    statement: 'Share of the deck width lost where one pass overlaps the next',
    value: 0.08, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 0.3],
  },
  'mow.efficiency.open': {
    statement: 'Share of the time spent cutting on an open lawn',
    value: 0.85, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 0.95],
  },
  'mow.efficiency.some': {
    statement: 'Share of the time spent cutting on a lawn with some trees and beds',
    value: 0.8, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 0.95],
  },
  'mow.efficiency.many': {
    statement: 'Share of the time spent cutting on a lawn with many trees and beds',
    value: 0.7, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.4, 0.95],
  },
  'mow.labour': {
    statement: 'Hours a person spends for each hour of work in the field: fuelling, greasing, getting there',
    value: 1.1, unit: 'ratio', kind: 'published-figure', valid: [1, 1.5],
    source: seen('University of Illinois farmdoc, Machinery Cost Estimates: Tractors', 'labour at 1.1 times machine hours'),
  },
  'mow.per-year': {
    statement: 'Mows in a year, where the buyer did not say',
    value: 25, unit: 'count', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 80],
  },
  'mow.power': {
    statement: 'PTO power a finish mower takes for each foot of its width',
    value: 4, unit: 'hp/ft', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 8],
  },
});
