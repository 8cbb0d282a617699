import { commonPractice, figures, fromMemory, seenSecondHand } from '../record.ts';

/** What a drawing takes where the catalogue or the buyer is silent. Whatever rests on one of these is drawn dashed. */
export const drawing = figures({
  'drawing.wheelbase': {
    statement: 'Wheelbase of a compact tractor, where neither it nor the length is given',
    value: 64, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [50, 90],
  },
  'drawing.wheelbase-of-length': {
    statement: 'Wheelbase as a share of the length without loader, where only one of them is given',
    value: 0.56, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.45, 0.7],
  },
  'drawing.loader-length': {
    statement: 'Length with a loader, bucket on the ground, over length without, where only one of them is given',
    value: 1.3, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [1.1, 1.6],
  },
  'drawing.width-of-wheelbase': {
    statement: 'Width over the rear tyres as a share of the wheelbase, where it isn’t given',
    value: 0.88, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.7, 1.1],
  },
  'drawing.height-of-wheelbase': {
    statement: 'Height over the ROPS or the cab as a share of the wheelbase, where it isn’t given',
    value: 1.42, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [1.2, 1.7],
  },
  'drawing.bonnet-of-height': {
    statement: 'Height of the bonnet as a share of the height over the ROPS or the cab',
    value: 0.56, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.4, 0.7],
  },
  'drawing.rear-tyre-of-wheelbase': {
    statement: 'Diameter of the rear tyres as a share of the wheelbase, where their size isn’t given',
    value: 0.6, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.4, 0.8],
  },
  'drawing.front-tyre-of-rear': {
    statement: 'Diameter of the front tyres as a share of that of the rear ones, where their size isn’t given',
    value: 0.63, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 0.8],
  },
  'drawing.tyre-width-of-diameter': {
    statement: 'Width of a rear tyre as a share of its diameter, where its size isn’t given',
    value: 0.3, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.2, 0.5],
  },
  'drawing.tyre-section': {
    statement: 'Height of a tyre’s section as a share of its width, where the size names none, as in 11.2-24',
    value: 0.85, unit: 'ratio', kind: 'rule-of-thumb', valid: [0.75, 0.95],
    source: seenSecondHand('Conversion tables of tyre dealers, not named', 'standard profile 85: 11.2R24 replaced by 280/85R24'),
  },
  'drawing.tyre-section-low': {
    statement: 'The same of a tyre with a reduced section: an L behind the width, or a rim to the half inch',
    value: 0.7, unit: 'ratio', kind: 'rule-of-thumb', valid: [0.6, 0.8],
    source: fromMemory('Tire and Rim Association yearbook', '17.5L-24, 12-16.5'),
  },
  'drawing.clearance-of-tyre': {
    statement: 'Ground clearance as a share of the diameter of the rear tyres, where it isn’t given',
    value: 0.28, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.15, 0.4],
  },
  'drawing.bale-diameter': {
    statement: 'Diameter of a round bale nobody measured or weighed',
    value: 48, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [36, 72],
  },
  'drawing.pallet-length': {
    statement: 'Length of a pallet along the forks',
    value: 48, unit: 'in', kind: 'published-figure', valid: [48, 48],
    source: fromMemory('ISO 6780, pallet of 1219 by 1016 mm'),
  },
  'drawing.log-diameter': {
    statement: 'Diameter of a log nobody measured',
    value: 16, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [4, 40],
  },
  'drawing.gate-height': {
    statement: 'Height of a gate’s posts: nobody is asked for it',
    value: 50, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [30, 80],
  },
  'drawing.door-width': {
    statement: 'Width of a door of which only the height is given',
    value: 8, unit: 'ft', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 16],
  },
  'drawing.door-height': {
    statement: 'Height of a door of which only the width is given',
    value: 7, unit: 'ft', kind: 'rule-of-thumb', source: commonPractice, valid: [6, 14],
  },
  'drawing.trailer-deck-height': {
    statement: 'Height of a trailer’s deck: nobody is asked for it',
    value: 24, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [10, 40],
  },
});
