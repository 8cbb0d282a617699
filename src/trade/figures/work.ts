import { commonPractice, figures, fromMemory, seen, seenSecondHand } from '../record.ts';

const d497 = (where: string) => fromMemory('ASABE D497, Agricultural Machinery Management Data', where);
const arizona = (where: string) => seen('University of Arizona Cooperative Extension, Agricultural Machinery Management', `drawbar to PTO power, ${where}`);
const towingManuals = (where: string) => seenSecondHand('Operating manuals of farm tractors, makers not named, after ASAE S365', where);

export const work = figures({
  'gravity.standard': {
    statement: 'Standard gravity: what a kilogram weighs, in newtons',
    value: 9.80665, unit: 'm/s2', kind: 'definition', valid: [9.80665, 9.80665],
    source: fromMemory('NIST SP 811 (2008), Guide for the Use of the International System of Units', 'appendix B.8'),
  },
  'till.speed': {
    statement: 'Ground speed with a rotary tiller in a garden',
    value: 1.5, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 4.5],
  },
  'till.efficiency': {
    statement: 'Share of the time spent tilling in a garden, where much of it goes into turning',
    value: 0.75, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.4, 0.9],
  },
  'till.power': {
    statement: 'PTO power a rotary tiller takes for each foot of its width',
    value: 6, unit: 'hp/ft', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 10],
  },
  'grade.speed': {
    statement: 'Ground speed with a box blade on a drive',
    value: 2.5, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 5],
  },
  'grade.efficiency': {
    statement: 'Share of the time spent grading a drive, the rest being turns and looking back',
    value: 0.7, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.4, 0.95],
  },
  'grade.passes': {
    statement: 'Times each strip of a drive is graded, until it is in shape',
    value: 4, unit: 'count', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 12],
  },
  'grade.draft': {
    statement: 'Pull a full box blade takes for each foot of its width, its scarifiers just touching',
    value: 200, unit: 'lbf/ft', kind: 'rule-of-thumb', source: commonPractice, valid: [80, 500],
  },
  'drive.width': {
    statement: 'Width of a drive, where the buyer did not say',
    value: 10, unit: 'ft', kind: 'rule-of-thumb', source: commonPractice, valid: [7, 30],
  },
  'snow.speed': {
    statement: 'Ground speed while pushing snow with a blade or a bucket',
    value: 3, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 8],
  },
  'snow.efficiency': {
    statement: 'Share of the time spent clearing snow, the rest being backing up and piling',
    value: 0.6, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.3, 0.9],
  },
  'snow.blower-speed': {
    statement: 'Ground speed with a snow blower in a deep fall',
    value: 1.5, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [0.3, 4],
  },
  'snow.blower-power': {
    statement: 'PTO power a snow blower takes for each foot of its width',
    value: 5, unit: 'hp/ft', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 10],
  },
  'drag.speed': {
    statement: 'Ground speed with a drag on an arena',
    value: 5, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [2, 10],
  },
  'drag.efficiency': {
    statement: 'Share of the time spent dragging an arena',
    value: 0.8, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 0.95],
  },
  'drag.draft': {
    statement: 'Pull a drag takes for each metre of its width, taken as a spike-tooth harrow',
    value: 600, unit: 'N/m', kind: 'published-figure', source: d497('draft, spike-tooth harrow'), valid: [600, 600],
  },
  'field.speed': {
    statement: 'Ground speed with a disk harrow behind a compact tractor',
    value: 4, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [2, 7],
  },
  'field.efficiency': {
    statement: 'Share of the time spent harrowing a small field',
    value: 0.8, unit: 'ratio', kind: 'rule-of-thumb', source: d497('field efficiency, tandem disk, 70 to 90 %'), valid: [0.5, 0.9],
  },
  'field.depth': {
    statement: 'Depth to which a disk harrow works ground that was loosened before',
    value: 4, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [1, 10],
  },
  'disk.a': {
    statement: 'Draft of a tandem disk harrow in loosened soil, part without speed: A, in the units of the standard (N, m, cm, km/h)',
    value: 216, unit: 'ratio', kind: 'published-figure', source: d497('draft, tandem disk, secondary tillage'), valid: [216, 216],
  },
  'disk.b': {
    statement: 'Draft of a tandem disk harrow in loosened soil, part with speed: B, in the units of the standard (N, m, cm, km/h)',
    value: 11.2, unit: 'ratio', kind: 'published-figure', source: d497('draft, tandem disk, secondary tillage'), valid: [11.2, 11.2],
  },
  'disk.c': {
    statement: 'Draft of a tandem disk harrow in loosened soil, part with the square of speed: C, in the units of the standard (N, m, cm, km/h)',
    value: 0, unit: 'ratio', kind: 'published-figure', source: d497('draft, tandem disk, secondary tillage'), valid: [0, 0],
  },
  'soil.clay': {
    statement: 'Soil factor of a disk harrow in fine soil such as clay: its draft as a share of that in the heaviest soil',
    value: 1, unit: 'ratio', kind: 'published-figure', source: d497('soil factor F1 of disks'), valid: [1, 1],
  },
  'soil.loam': {
    statement: 'Soil factor of a disk harrow in medium soil such as loam: its draft as a share of that in the heaviest soil',
    value: 0.88, unit: 'ratio', kind: 'published-figure', source: d497('soil factor F2 of disks'), valid: [0.88, 0.88],
  },
  'soil.sand': {
    statement: 'Soil factor of a disk harrow in coarse soil such as sand: its draft as a share of that in the heaviest soil',
    value: 0.78, unit: 'ratio', kind: 'published-figure', source: d497('soil factor F3 of disks'), valid: [0.78, 0.78],
  },
  'hole.power': {
    statement: 'PTO power for a post-hole digger with a 9 to 12 in auger',
    value: 20, unit: 'hp', kind: 'rule-of-thumb', source: commonPractice, valid: [12, 40],
  },
  'chip.power': {
    statement: 'PTO power a chipper takes for each inch of the branch it must swallow',
    value: 5.2, unit: 'hp/in', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 10],
  },
  'hay.mower-power': {
    statement: 'PTO power a disk mower takes for each metre of its width',
    value: 5, unit: 'kW/m', kind: 'published-figure', source: d497('rotary power, disk mower'), valid: [5, 5],
  },
  'hay.baler-power': {
    statement: 'Least PTO power for a common small square baler; the smallest take less',
    value: 35, unit: 'hp', kind: 'rule-of-thumb', valid: [16, 60],
    source: seenSecondHand('A general page on tractors for baling, maker not named', 'around 35 hp at the PTO for most square balers'),
  },
  'hay.baler-mass': {
    statement: 'Mass of a small square baler',
    value: 3000, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [1000, 5000],
  },
  'hay.speed': {
    statement: 'Ground speed in making hay, taken for mowing, raking and baling alike',
    value: 4, unit: 'mph', kind: 'rule-of-thumb', source: d497('field speed, small square baler, 2.5 to 6 mph'), valid: [2, 7],
  },
  'hay.efficiency': {
    statement: 'Share of the time spent working in making hay',
    value: 0.75, unit: 'ratio', kind: 'rule-of-thumb', source: d497('field efficiency, small square baler, 60 to 85 %'), valid: [0.5, 0.9],
  },
  'spread.speed': {
    statement: 'Ground speed with a spreader or a sprayer on pasture',
    value: 4, unit: 'mph', kind: 'rule-of-thumb', source: commonPractice, valid: [2, 8],
  },
  'spread.efficiency': {
    statement: 'Share of the time a fertilizer spreader spreads, the rest being filling and turning',
    value: 0.7, unit: 'ratio', kind: 'published-figure', valid: [0.7, 0.7],
    source: seen('Iowa State Extension PM 696, Estimating Field Capacity of Farm Machines (2001)', 'fertilizer spreader, 70 %'),
  },
  'spread.swath': {
    statement: 'Width a small broadcast spreader covers in one pass',
    value: 20, unit: 'ft', kind: 'rule-of-thumb', source: commonPractice, valid: [6, 50],
  },
  'tow.ratio.unbraked': {
    statement: 'Greatest mass towed without brakes of its own, in terms of the tractor as it stands: manuals of farm tractors print 1.5 up to 20 mph, and less is kept here, for slopes and light tractors',
    value: 1, unit: 'ratio', kind: 'safety-floor', safer: 'less', valid: [0.2, 1],
    source: towingManuals('printed: below 1.5 without brakes, up to 20 mph'),
  },
  'tow.ratio.braked': {
    statement: 'Greatest mass towed with brakes of its own, in terms of the tractor as it stands: manuals of farm tractors print 4.5 up to 25 mph and 3 above that, and the lesser is kept here',
    value: 3, unit: 'ratio', kind: 'safety-floor', safer: 'less', valid: [0.5, 3],
    source: towingManuals('printed: below 4.5 up to 25 mph with brakes, below 3 up to 31 mph'),
  },
  'tow.rolling': {
    statement: 'Rolling resistance of a loaded wagon on a farm track, as a share of its weight',
    value: 0.08, unit: 'ratio', kind: 'rule-of-thumb', valid: [0.02, 0.3],
    source: seenSecondHand('Lecture slides on road loads, author not shown', 'medium hard ground: 0.04 tractors, 0.06 trucks, 0.08 cars'),
  },
  'tow.drawbar-height': {
    statement: 'Height of the drawbar above ground, where nobody gave it: the higher it pulls, the sooner a tractor rears',
    value: 0.45, unit: 'm', kind: 'safety-floor', safer: 'more', source: commonPractice, valid: [0.45, 1],
  },
  'tow.pull-margin': {
    statement: 'Pull as a share of the pull that would lift the front axle: at most this much',
    value: 0.5, unit: 'ratio', kind: 'safety-floor', safer: 'less', source: commonPractice, valid: [0.2, 0.5],
  },
  'traction.firm': {
    statement: 'Pull the tyres find hold for on firm ground, as a share of the weight on the driven wheels',
    value: 0.5, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.2, 0.9],
  },
  'traction.soft': {
    statement: 'Pull the tyres find hold for on soft ground, as a share of the weight on the driven wheels',
    value: 0.35, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.1, 0.6],
  },
  'traction.wet': {
    statement: 'Pull the tyres find hold for on wet ground, as a share of the weight on the driven wheels',
    value: 0.25, unit: 'ratio', kind: 'rule-of-thumb', source: commonPractice, valid: [0.05, 0.5],
  },
  'drawbar.four-wheel.firm': {
    statement: 'Power left at the drawbar of the PTO power, four driven wheels on firm ground (the row “firm”, front-wheel assist)',
    value: 0.77, unit: 'ratio', kind: 'published-figure', source: arizona('front-wheel assist, firm'), valid: [0.77, 0.77],
  },
  'drawbar.four-wheel.soft': {
    statement: 'Power left at the drawbar of the PTO power, four driven wheels on soft ground (the row “tilled”, front-wheel assist)',
    value: 0.73, unit: 'ratio', kind: 'published-figure', source: arizona('front-wheel assist, tilled'), valid: [0.73, 0.73],
  },
  'drawbar.four-wheel.wet': {
    statement: 'Power left at the drawbar of the PTO power, four driven wheels on wet ground (the row “soft”, front-wheel assist)',
    value: 0.65, unit: 'ratio', kind: 'published-figure', source: arizona('front-wheel assist, soft'), valid: [0.65, 0.65],
  },
  'drawbar.two-wheel.firm': {
    statement: 'Power left at the drawbar of the PTO power, two driven wheels on firm ground (the row “firm”)',
    value: 0.72, unit: 'ratio', kind: 'published-figure', source: arizona('two-wheel drive, firm'), valid: [0.72, 0.72],
  },
  'drawbar.two-wheel.soft': {
    statement: 'Power left at the drawbar of the PTO power, two driven wheels on soft ground (the row “tilled”)',
    value: 0.67, unit: 'ratio', kind: 'published-figure', source: arizona('two-wheel drive, tilled'), valid: [0.67, 0.67],
  },
  'drawbar.two-wheel.wet': {
    statement: 'Power left at the drawbar of the PTO power, two driven wheels on wet ground (the row “soft”)',
    value: 0.55, unit: 'ratio', kind: 'published-figure', source: arizona('two-wheel drive, soft'), valid: [0.55, 0.55],
  },
  'pto.from-flywheel': {
    statement: 'PTO power as a share of engine power, where only that is known: 0.90 by an extension sheet for farm tractors, but a small hydrostatic one may leave less than 0.75',
    value: 0.7, unit: 'ratio', kind: 'safety-floor', safer: 'less', valid: [0.5, 0.7],
    source: commonPractice,
  },
  'plough.unit-draft': {
    statement: 'Resistance of the soil to a plough, for each square inch it turns',
    value: 14.5, unit: 'psi', kind: 'rule-of-thumb', valid: [5, 25],
    source: seenSecondHand('A solved tractor-sizing problem, author not shown', '10 N/cm²; a teaching module takes 8 psi for a disk plough'),
  },
  'plough.depth': {
    statement: 'Depth a small plough turns',
    value: 6, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 14],
  },
  'power.in-hand': {
    statement: 'Share of its rated power that a tractor gives in a steady job',
    value: 0.75, unit: 'ratio', kind: 'rule-of-thumb', valid: [0.5, 1],
    source: seenSecondHand('A solved problem in sizing a tractor, author not shown', 'loaded to 75 % of its rated drawbar power'),
  },
  'ground.pressure.turf': {
    statement: 'Pressure of a tyre that a lawn bears without marks when it is dry',
    value: 20, unit: 'psi', kind: 'rule-of-thumb', source: commonPractice, valid: [5, 40],
  },
  'ground.pressure.soft': {
    statement: 'Pressure of a tyre that soft ground bears without ruts',
    value: 15, unit: 'psi', kind: 'rule-of-thumb', source: commonPractice, valid: [4, 30],
  },
  'ground.pressure.wet': {
    statement: 'Pressure of a tyre that wet ground bears without ruts',
    value: 10, unit: 'psi', kind: 'rule-of-thumb', source: commonPractice, valid: [3, 20],
  },
  'tyre.stiffness': {
    statement: 'Pressure on the ground that the carcass of a tyre adds to the air in it',
    value: 2, unit: 'psi', kind: 'rule-of-thumb', valid: [0, 10],
    source: seenSecondHand('An engineer of tyres in an owners’ discussion', '1 to 2 psi'),
  },
  'bucket.load-centre': {
    statement: 'Centre of a bucketful ahead of the pins',
    value: 15, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [6, 30],
  },
  'bucket.cycle': {
    statement: 'Time to fill a bucket, drive, dump it and come back, on a short way',
    value: 2, unit: 'min', kind: 'rule-of-thumb', source: commonPractice, valid: [0.5, 15],
  },
  'grapple.mass': {
    statement: 'Mass of a grapple for a compact tractor, where none is chosen yet',
    value: 400, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [150, 1200],
  },
  'grapple.own-centre': {
    statement: 'Centre of mass of a grapple ahead of the pins',
    value: 16, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [6, 30],
  },
  'grapple.load-centre': {
    statement: 'Centre of a log or of brush in a grapple, ahead of the pins',
    value: 24, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [10, 40],
  },
  'rear-spear.mass': {
    statement: 'Mass of a bale spear for the hitch, where none is chosen yet',
    value: 150, unit: 'lb', kind: 'rule-of-thumb', source: commonPractice, valid: [50, 400],
  },
  'rear-spear.face': {
    statement: 'Front of the bale on a rear spear, behind the ball ends',
    value: 6, unit: 'in', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 18],
  },
  'front-weights.ahead': {
    statement: 'Centre of front weights ahead of the front axle, where nobody gave it: the nearer, the less they help',
    value: 0.4, unit: 'm', kind: 'safety-floor', safer: 'less', source: commonPractice, valid: [0.1, 0.4],
  },
  'hire.rare-per-year': {
    statement: 'A job done at most so often in a year may be cheaper hired out',
    value: 2, unit: 'count', kind: 'rule-of-thumb', source: commonPractice, valid: [0, 12],
  },
});
