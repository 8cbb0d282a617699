import { commonPractice, figures } from '../record.ts';

const thumb = { kind: 'rule-of-thumb', source: commonPractice } as const;

/**
 * Between what a figure of a compact tractor mostly lies. Nothing is ruled out by these: a figure beyond them is asked
 * about, for it is mostly a slip of the pen or of the unit.
 */
export const plausible = figures({
  'plausible.power.least': { ...thumb, statement: 'Least engine power that is not asked about', value: 8, unit: 'hp', valid: [1, 30] },
  'plausible.power.most': { ...thumb, statement: 'Greatest engine power that is not asked about', value: 120, unit: 'hp', valid: [50, 1000] },
  'plausible.mass.least': { ...thumb, statement: 'Least mass of a bare machine that is not asked about', value: 500, unit: 'lb', valid: [100, 2000] },
  'plausible.mass.most': { ...thumb, statement: 'Greatest mass of a bare machine that is not asked about', value: 10_000, unit: 'lb', valid: [3000, 40_000] },
  'plausible.wheelbase.least': { ...thumb, statement: 'Least wheelbase that is not asked about', value: 42, unit: 'in', valid: [20, 60] },
  'plausible.wheelbase.most': { ...thumb, statement: 'Greatest wheelbase that is not asked about', value: 100, unit: 'in', valid: [70, 200] },
  'plausible.length.least': { ...thumb, statement: 'Least length of a machine that is not asked about', value: 65, unit: 'in', valid: [30, 100] },
  'plausible.length.most': { ...thumb, statement: 'Greatest length of a machine that is not asked about', value: 220, unit: 'in', valid: [120, 400] },
  'plausible.width.least': { ...thumb, statement: 'Least width over the rear tyres that is not asked about', value: 32, unit: 'in', valid: [20, 50] },
  'plausible.width.most': { ...thumb, statement: 'Greatest width over the rear tyres that is not asked about', value: 110, unit: 'in', valid: [60, 200] },
  'plausible.height.least': { ...thumb, statement: 'Least height of a machine that is not asked about', value: 48, unit: 'in', valid: [30, 80] },
  'plausible.height.most': { ...thumb, statement: 'Greatest height of a machine that is not asked about', value: 130, unit: 'in', valid: [90, 200] },
  'plausible.loader-height.least': { ...thumb, statement: 'Least full height of a loader that is not asked about', value: 55, unit: 'in', valid: [30, 80] },
  'plausible.loader-height.most': { ...thumb, statement: 'Greatest full height of a loader that is not asked about', value: 155, unit: 'in', valid: [100, 250] },
  'plausible.deck-width.least': { ...thumb, statement: 'Least width of a belly deck that is not asked about', value: 36, unit: 'in', valid: [20, 60] },
  'plausible.deck-width.most': { ...thumb, statement: 'Greatest width of a belly deck that is not asked about', value: 90, unit: 'in', valid: [60, 150] },
  'plausible.dig-depth.least': { ...thumb, statement: 'Least dig depth of a backhoe that is not asked about', value: 40, unit: 'in', valid: [10, 80] },
  'plausible.dig-depth.most': { ...thumb, statement: 'Greatest dig depth of a backhoe that is not asked about', value: 150, unit: 'in', valid: [80, 300] },
  'plausible.hours.most': { ...thumb, statement: 'Most hours on a used machine’s meter that are not asked about', value: 15_000, unit: 'hours', valid: [1000, 100_000] },

  'plausible.mass-by-power.least': { ...thumb, statement: 'Mass of a bare machine for each horsepower of its engine below which it is asked about', value: 45, unit: 'lb', valid: [10, 70] },
  'plausible.mass-by-power.most': { ...thumb, statement: 'Mass of a bare machine for each horsepower of its engine above which it is asked about', value: 130, unit: 'lb', valid: [80, 400] },
  'plausible.loader-by-power.least': { ...thumb, statement: 'Loader lift at the pins for each horsepower of the engine below which it is asked about', value: 12, unit: 'lb', valid: [1, 25] },
  'plausible.loader-by-power.most': { ...thumb, statement: 'Loader lift at the pins for each horsepower of the engine above which it is asked about', value: 80, unit: 'lb', valid: [40, 300] },
  'plausible.loader-by-mass.least': { ...thumb, statement: 'Loader lift at the pins as a share of the bare mass below which it is asked about', value: 0.2, unit: 'ratio', valid: [0.05, 0.4] },
  'plausible.loader-by-mass.most': { ...thumb, statement: 'Loader lift at the pins as a share of the bare mass above which it is asked about', value: 0.95, unit: 'ratio', valid: [0.6, 3] },
  'plausible.hitch-by-mass.least': { ...thumb, statement: 'Hitch lift 610 mm behind as a share of the bare mass below which it is asked about', value: 0.25, unit: 'ratio', valid: [0.05, 0.5] },
  'plausible.hitch-by-mass.most': { ...thumb, statement: 'Hitch lift 610 mm behind as a share of the bare mass above which it is asked about', value: 1.15, unit: 'ratio', valid: [0.7, 3] },
  'plausible.pto-by-power.least': { ...thumb, statement: 'PTO power as a share of engine power below which it is asked about', value: 0.6, unit: 'ratio', valid: [0.3, 0.8] },
  'plausible.pto-by-power.most': { ...thumb, statement: 'PTO power as a share of engine power above which it is asked about', value: 0.96, unit: 'ratio', valid: [0.8, 1] },
  'plausible.gross-by-mass.least': { ...thumb, statement: 'Permitted gross mass as a multiple of the bare mass below which it is asked about', value: 1.2, unit: 'ratio', valid: [1, 2] },
  'plausible.gross-by-mass.most': { ...thumb, statement: 'Permitted gross mass as a multiple of the bare mass above which it is asked about', value: 4, unit: 'ratio', valid: [2, 10] },
  'plausible.lift-ahead.least': { ...thumb, statement: 'Loader lift 500 mm ahead as a share of that at the pins below which it is asked about', value: 0.55, unit: 'ratio', valid: [0.2, 0.7] },
  'plausible.lift-ahead.most': { ...thumb, statement: 'Loader lift 500 mm ahead as a share of that at the pins above which it is asked about', value: 0.93, unit: 'ratio', valid: [0.8, 1] },
  'plausible.wheelbase-by-length.least': { ...thumb, statement: 'Wheelbase as a share of the length below which it is asked about', value: 0.4, unit: 'ratio', valid: [0.2, 0.5] },
  'plausible.wheelbase-by-length.most': { ...thumb, statement: 'Wheelbase as a share of the length above which it is asked about', value: 0.75, unit: 'ratio', valid: [0.6, 1] },
  'plausible.track-by-width.least': { ...thumb, statement: 'Rear track as a share of the width over the rear tyres below which it is asked about', value: 0.55, unit: 'ratio', valid: [0.3, 0.7] },
  'plausible.track-by-width.most': { ...thumb, statement: 'Rear track as a share of the width over the rear tyres above which it is asked about', value: 0.95, unit: 'ratio', valid: [0.8, 1] },
  'plausible.price-by-list.least': { ...thumb, statement: 'Price of a used machine as a share of the list price of a new one below which it is asked about', value: 0.15, unit: 'ratio', valid: [0, 0.5] },
  'plausible.price-by-list.most': { ...thumb, statement: 'Price of a used machine as a share of the list price of a new one above which it is asked about', value: 1.3, unit: 'ratio', valid: [0.8, 5] },
});
