import { commonPractice, figures, seen } from '../record.ts';

const niosh = (where: string) => seen('NIOSH, recommended exposure limit for noise (criteria document 98-126), as its own page on noise gives it', where);
const osha = (where: string) => seen('29 CFR 1910.95, Occupational noise exposure, in the United States', where);
const directive = (where: string) => seen('Directive 2002/44/EC of the European Union, exposure to vibration', where);

export const operator = figures({
  'operator.day-hours': {
    statement: 'Hours on the machine in one day, where the buyer did not say',
    value: 3, unit: 'h', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 14],
  },
  'noise.day': {
    statement: 'Length of the working day that limits of noise refer to',
    value: 8, unit: 'h', kind: 'definition', source: niosh('8-hour average'), valid: [8, 8],
  },
  'noise.action': {
    statement: 'Level of noise at the ear from which hearing is to be protected, over eight hours',
    value: 85, unit: 'dB(A)', kind: 'published-figure', source: niosh('85 dB(A)'), valid: [85, 85],
  },
  'noise.exchange': {
    statement: 'Rise of the level for which the time in it is to be halved, to spare the hearing',
    value: 3, unit: 'dB(A)', kind: 'published-figure', source: niosh('3 dB exchange rate'), valid: [3, 3],
  },
  'noise.osha-limit': {
    statement: 'Level of noise that employees in the United States may not exceed over eight hours',
    value: 90, unit: 'dB(A)', kind: 'published-figure', source: osha('appendix A, table G-16A'), valid: [90, 90],
  },
  'noise.osha-exchange': {
    statement: 'Rise of the level for which the law of the United States halves the time of employees in it',
    value: 5, unit: 'dB(A)', kind: 'published-figure', source: osha('appendix A, table G-16A: 90 for 8 hours, 95 for 4'), valid: [5, 5],
  },
  'vibration.day': {
    statement: 'Length of the working day that limits of vibration refer to',
    value: 8, unit: 'h', kind: 'definition', source: directive('article 3, eight-hour reference period'), valid: [8, 8],
  },
  'vibration.action': {
    statement: 'Vibration of the whole body over eight hours from which an employer in the European Union must act',
    value: 0.5, unit: 'm/s2', kind: 'published-figure', source: directive('article 3(2)'), valid: [0.5, 0.5],
  },
  'vibration.limit': {
    statement: 'Vibration of the whole body over eight hours that no worker in the European Union may exceed',
    value: 1.15, unit: 'm/s2', kind: 'published-figure', source: directive('article 3(2)'), valid: [1.15, 1.15],
  },
});
