import { commonPractice, figures, seenSecondHand } from '../record.ts';

export const place = figures({
  'place.side-clearance': {
    statement: 'Room left on each side when driving through a gate or a door',
    value: 6, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 24],
  },
  'place.height-clearance': {
    statement: 'Room left above when driving into storage',
    value: 6, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 24],
  },
  'place.depth-clearance': {
    statement: 'Room left to walk round and to close the door',
    value: 18, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 72],
  },
  'overhead.clearance': {
    statement: 'Room left under the lowest thing one drives under at work, with the ROPS standing',
    value: 12, unit: 'in', kind: 'safety-floor', safer: 'more', source: commonPractice, valid: [12, 60],
  },
  'haul.reserve': {
    statement: 'Fuel, chains, tools and mud that travel along',
    value: 150, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 1000],
  },
  'haul.deck-side': {
    statement: 'Width of trailer deck left on each side of the tyres',
    value: 2, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 12],
  },
  'haul.tongue.least': {
    statement: 'Least share of the loaded trailer that should rest on the tow ball',
    value: 0.1, unit: 'ratio', kind: 'published-figure', valid: [0.09, 0.15],
    source: seenSecondHand("Vehicle owner's manuals, makers not named", 'tongue weight 10 to 15 %'),
  },
  'haul.tongue.most': {
    statement: 'Greatest share of the loaded trailer that should rest on the tow ball',
    value: 0.15, unit: 'ratio', kind: 'published-figure', valid: [0.1, 0.2],
    source: seenSecondHand("Vehicle owner's manuals, makers not named", 'tongue weight 10 to 15 %'),
  },
  'haul.brakes-above': {
    statement: 'Mass of a loaded trailer above which most states of the US ask for brakes of its own',
    value: 3000, unit: 'lb', kind: 'safety-floor', safer: 'less', source: commonPractice, valid: [1000, 3000],
  },
  'haul.tie-down-share': {
    statement: 'Working load limit of all tie-downs together, as a share of the load',
    value: 0.5, unit: 'ratio', kind: 'safety-floor', safer: 'more', valid: [0.5, 2],
    source: seenSecondHand('49 CFR 393.106(d)', 'aggregate working load limit at least half of the weight'),
  },
});
