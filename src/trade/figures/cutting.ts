import { commonPractice, figures, fromMemory } from '../record.ts';

export const cutting = figures({
  'cut.speed': {
    statement: 'Ground speed while cutting rough ground with a rotary cutter',
    value: 3, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 6],
  },
  'cut.efficiency': {
    statement: 'Share of the time spent cutting on rough ground',
    value: 0.8, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 0.95],
  },
  'cut.power.grass': {
    statement: 'PTO power a rotary cutter takes for each foot of its width in grass and light weeds',
    value: 5, unit: 'hp/ft', kind: 'rule-of-thumb', source: commonPractice, valid: [2, 10],
  },
  'cut.power.brush': {
    statement: 'PTO power a rotary cutter takes for each foot of its width in brush',
    value: 7, unit: 'hp/ft', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 12],
  },
  'cut.power.flail': {
    statement: 'PTO power a flail mower takes for each metre of its width',
    value: 10, unit: 'kW/m', kind: 'published-figure', valid: [10, 10],
    source: fromMemory('ASABE D497.7, Agricultural Machinery Management Data', 'rotary power, flail mower'),
  },
  'snow.blade-deepest': {
    statement: 'Deepest fall of snow that a small tractor moves with a blade: beyond it a blower is wanted',
    value: 12, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [4, 36],
  },
  'pto.altitude.natural': {
    statement: 'Share of engine power lost for each 1,000 ft of altitude, without a turbocharger',
    value: 0.03, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 0.05],
  },
  'pto.altitude.turbo': {
    statement: 'Share of engine power lost for each 1,000 ft above the free altitude, with a turbocharger',
    value: 0.01, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 0.05],
  },
  'pto.altitude.turbo-free': {
    statement: 'Altitude up to which a turbocharged engine loses little',
    value: 5000, unit: 'ft', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 10_000],
  },
  'pto.altitude.step': {
    statement: 'Step of altitude for which the losses are given',
    value: 1000, unit: 'ft', kind: 'definition', source: commonPractice, valid: [1000, 1000],
  },
});
