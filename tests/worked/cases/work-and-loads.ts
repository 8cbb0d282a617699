import type { WorkedCase } from '../worked-case.ts';

const moments = 'statics, sum of moments';
const statics = 'statics';
const geometry = 'geometry';
const practice = 'common practice, no source';
const arizona = 'University of Arizona Cooperative Extension, Agricultural Machinery Management, shares printed; inputs ours';
const sizing = 'a solved problem in sizing a tractor, author not shown, printed';
const plowLecture = 'Agricultural engineering lectures, Draft of Plows, sample problem 1, printed';
const review = 'a review problem for agricultural engineers, author not shown, printed';
const ballastSheet = 'European ballast sheet for mounted implements, printed in implement manuals, second-hand; the sum of moments agrees';
const d497 = 'ASABE D497, parameters from memory; the sum is beside the row';
const hancock = 'D. Hancock, US Dairy Forage Research Center, in a farms.com news item, second-hand';
const e319 = 'Texas A&M AgriLife Extension E-319 (2012), printed';
const loaderManual = 'operating manual of a small loader, maker not named, printed';
const parkService = 'US National Park Service, Safety for Tree Workers, green-log table as reprinted in an implement manual, second-hand, printed there';
const gravity = '9.80665 m/s2';

const drafts: WorkedCase[] = [
  // 0.7 × (91 + 5.4 × 10) × 45 × 15
  { name: 'a chisel plow of 45 shanks, 15 cm deep at 10 km/h in medium soil', formula: 'draft.tool', given: { soil: 0.7, a: 91, b: 5.4, c: 0, speed: '10 km/h', width: 45, depth: '15 cm' }, expect: '68512.5 N', within: 0.1, source: 'Field and Solie, Introduction to Agricultural Engineering Technology (2007), metric problems, printed; the power it prints does not follow and stays out' },
  // (216 + 11.2 × 6.437376) × 1.8288 × 10.16 = 288.0986 × 18.5806
  { name: 'a 6 ft tandem disk, 4 in deep at 4 mph in clay', formula: 'draft.tool', given: { soil: 1, a: 216, b: 11.2, c: 0, speed: '4 mph', width: 1.8288, depth: '4 in' }, expect: '5353.05 N', within: 0.1, source: d497 },
  // 0.88 of it
  { name: 'the same in loam', formula: 'draft.tool', given: { soil: 0.88, a: 216, b: 11.2, c: 0, speed: '4 mph', width: 1.8288, depth: '4 in' }, expect: '4710.68 N', within: 0.1, source: d497 },
  // 652 × 20 + 5.1 × 36 × 20 = (652 + 183.6) × 20, for each metre
  { name: 'a moldboard plow with its square of the speed, 1 m wide, 20 cm deep at 6 km/h', formula: 'draft.tool', given: { soil: 1, a: 652, b: 0, c: 5.1, speed: '6 km/h', width: 1, depth: '20 cm' }, expect: '16712 N', within: 0.01, source: d497 },
  // Standing still only the part without speed is left: 216 × 2 × 10
  { name: 'a disk 2 m wide and 10 cm deep as it is set in motion', formula: 'draft.tool', given: { soil: 1, a: 216, b: 11.2, c: 0, speed: '0 km/h', width: 2, depth: '10 cm' }, expect: '4320 N', within: 0.001, source: d497 },
  // 24 × 200
  { name: 'a 24 ft tandem disk at 200 lb a foot', formula: 'draft.by-width', given: { width: '24 ft', perWidth: '200 lbf/ft' }, expect: '4800 lbf', within: 0.001, source: 'Iowa State Extension A3-26 (2007), inputs printed' },
  { name: 'a 3 m spike-tooth harrow at 1.75 kN a metre', formula: 'draft.by-width', given: { width: '3 m', perWidth: '1.75 kN/m' }, expect: '5.25 kN', within: 0.001, source: `${sizing} as part of the sum` },
  { name: 'a 5 ft box blade at 200 lb a foot', formula: 'draft.by-width', given: { width: '5 ft', perWidth: '200 lbf/ft' }, expect: '1000 lbf', within: 0.001, source: practice },
  // 4 × 12 × 10 × 8
  { name: 'a disk plow of four bottoms, 12 in cut, 10 in deep at 8 psi', formula: 'draft.by-area', given: { width: '48 in', depth: '10 in', unitDraft: '8 psi' }, expect: '3840 lbf', within: 0.001, source: 'teaching module on farm power, printed' },
  // 4 × 30 × 15 × 10
  { name: 'four disks of 30 cm, 15 cm deep at 10 N a square centimetre', formula: 'draft.by-area', given: { width: '120 cm', depth: '15 cm', unitDraft: '100 kPa' }, expect: '18 kN', within: 0.001, source: `${sizing} as part of the sum` },
  // 0.49 kgf/cm² = 48.052585 kPa; 1,411 kgf = 13.8372 kN
  { name: 'four 36 cm bottoms, 20 cm deep in clay loam of 0.49 kg a square centimetre', formula: 'draft.by-area', given: { width: '144 cm', depth: '20 cm', unitDraft: '48.052585 kPa' }, expect: '13.8372 kN', within: 0.005, source: plowLecture },
  // 4 × 41 × 18 = 2,952 cm²; 15,000 / 2,952 = 5.08
  { name: 'four 41 cm bottoms, 18 cm deep, 5.08 N a square centimetre', formula: 'draft.by-area', given: { width: '164 cm', depth: '18 cm', unitDraft: '50.8 kPa' }, expect: '15 kN', within: 0.01, source: review },
];

const powers: WorkedCase[] = [
  // 3,840 × 3.5 / 375
  { name: '3,840 lb at 3.5 mph', formula: 'power.drawbar', given: { draft: '3840 lbf', speed: '3.5 mph' }, expect: '35.84 hp', within: 0.01, source: 'D·S / 375 as Iowa State Extension A3-26 has it, formula; inputs of a teaching module' },
  // 68.5125 × 10 / 3.6
  { name: 'the chisel plow of 68.5 kN at 10 km/h', formula: 'power.drawbar', given: { draft: '68512.5 N', speed: '10 km/h' }, expect: '190.3125 kW', within: 0.001, source: statics },
  { name: 'the four disks of 18 kN at 5 km/h', formula: 'power.drawbar', given: { draft: '18 kN', speed: '5 km/h' }, expect: '25 kW', within: 0.05, source: sizing },
  { name: 'the harrow of 5.25 kN at 8 km/h', formula: 'power.drawbar', given: { draft: '5.25 kN', speed: '8 km/h' }, expect: '11.67 kW', within: 0.005, source: sizing },
  // 4 × 1.70 = 6.8 kN
  { name: 'four cultivators of 1.70 kN at 7.5 km/h', formula: 'power.drawbar', given: { draft: '6.8 kN', speed: '7.5 km/h' }, expect: '14.17 kW', within: 0.005, source: sizing },
  // 3 × 1.60 = 4.8 kN
  { name: 'three furrowers of 1.60 kN at 8 km/h', formula: 'power.drawbar', given: { draft: '4.8 kN', speed: '8 km/h' }, expect: '10.67 kW', within: 0.005, source: sizing },
  { name: 'the plow of 15 kN at 6 km/h', formula: 'power.drawbar', given: { draft: '15 kN', speed: '6 km/h' }, expect: '25 kW', within: 0.05, source: review },
  // 1,500 × 5.5 / 375
  { name: '1,500 lb at 5.5 mph', formula: 'power.drawbar', given: { draft: '1500 lbf', speed: '5.5 mph' }, expect: '22 hp', within: 0.001, source: 'Field and Solie, Introduction to Agricultural Engineering Technology, problem and formula; the sum is ours' },
  // 24 × 6 × 200 × 1.5 / 375 = 115.2
  // 1,000 × 2.5 × 1.5 / 375
  { name: '30 hp at the flywheel', formula: 'pto.of-flywheel', given: { flywheel: '30 hp', share: 0.9 }, expect: '27 hp', within: 0.005, source: arizona },
  { name: '25 kW wanted, three quarters of the rating used', formula: 'power.wanted', given: { power: '25 kW', share: 0.75 }, expect: '33.33 kW', within: 0.005, source: sizing },
  ...[
    ['four driven wheels on concrete', 0.87, 23.49], ['four driven wheels on firm soil', 0.77, 20.79],
    ['four driven wheels on tilled soil', 0.73, 19.71], ['four driven wheels on soft soil', 0.65, 17.55],
    ['two driven wheels on firm soil', 0.72, 19.44], ['two driven wheels on tilled soil', 0.67, 18.09],
    ['two driven wheels on soft soil', 0.55, 14.85],
  ].map(([name, share, left]) => ({
    name: `27 PTO hp, ${name}`, formula: 'power.drawbar-left' as const, given: { ptoPower: '27 hp', share: share! }, expect: `${left} hp`, within: 0.005, source: arizona,
  })),
];

const pulls: WorkedCase[] = [
  // 1,500 × 0.5 × 9.80665
  { name: '1,500 kg on the driven wheels, half of it as pull', formula: 'traction.pull', given: { massOnDriven: '1500 kg', coefficient: 0.5, gravity }, expect: '7354.99 N', within: 0.01, source: `${statics}; the half is ${practice}` },
  // In pounds the weight is the mass: 2,000 × 0.35
  { name: '2,000 lb on the driven wheels, 35 % of it as pull', formula: 'traction.pull', given: { massOnDriven: '2000 lb', coefficient: 0.35, gravity }, expect: '700 lbf', within: 0.001, source: `${statics}; the share is ${practice}` },
  // 3,000 × 0.08
  { name: 'a wagon of 3,000 lb on a level track', formula: 'tow.pull', given: { towed: '3000 lb', tractor: '3000 lb', rolling: 0.08, grade: 0, gravity }, expect: '240 lbf', within: 0.001, source: statics },
  // 3,000 × (0.08 + 0.1) + 3,000 × 0.1
  { name: 'the same up a grade of 10 %', formula: 'tow.pull', given: { towed: '3000 lb', tractor: '3000 lb', rolling: 0.08, grade: 0.1, gravity }, expect: '840 lbf', within: 0.001, source: statics },
  // 9.80665 × (1,200 × 0.25 + 1,500 × 0.2)
  { name: '1,200 kg behind 1,500 kg up 20 % on a rolling resistance of 5 %', formula: 'tow.pull', given: { towed: '1200 kg', tractor: '1500 kg', rolling: 0.05, grade: 0.2, gravity }, expect: '5883.99 N', within: 0.01, source: statics },
  { name: 'without brakes one and a half times a tractor of 3,000 lb', formula: 'tow.greatest-mass', given: { tractor: '3000 lb', ratio: 1.5 }, expect: '4500 lb', within: 0.001, source: 'operating manuals of farm tractors, ratio printed, second-hand; the tractor is ours' },
  { name: 'with brakes three times it', formula: 'tow.greatest-mass', given: { tractor: '3000 lb', ratio: 3 }, expect: '9000 lb', within: 0.001, source: 'operating manuals of farm tractors, ratio printed, second-hand; the tractor is ours' },
  // 9.80665 × 560 × 1.65 / 0.45
  { name: '560 kg in front on 1.65 m, hitched 0.45 m up', formula: 'overturn.rear-pull', given: { frontLoad: '560 kg', wheelbase: '1.65 m', height: '0.45 m', gravity }, expect: '20136.3 N', within: 0.1, source: moments },
  // 900 × 66 / 33: twice as high, half the pull
  { name: '900 lb in front on 66 in, hitched to a bar at axle height of 33 in', formula: 'overturn.rear-pull', given: { frontLoad: '900 lb', wheelbase: '66 in', height: '33 in', gravity }, expect: '1800 lbf', within: 0.001, source: moments },
  { name: 'the same hitched at 16.5 in', formula: 'overturn.rear-pull', given: { frontLoad: '900 lb', wheelbase: '66 in', height: '16.5 in', gravity }, expect: '3600 lbf', within: 0.001, source: moments },
];

/** Pounds a foot as the table prints them, each to the nearest pound. */
const perFoot = (kind: string, density: number, byDiameter: Record<number, number>): WorkedCase[] =>
  Object.entries(byDiameter).map(([inches, pounds]) => ({
    name: `a foot of ${kind}, ${inches} in through`, formula: 'log.mass', given: { density: `${density} lb/ft3`, diameter: `${inches} in`, length: '1 ft' },
    expect: `${pounds} lb`, within: 0.5, source: parkService,
  }));

const logs: WorkedCase[] = [
  ...perFoot('red oak', 63, { 10: 34, 12: 49, 14: 67, 16: 88, 18: 111, 20: 137 }),
  ...perFoot('hickory', 64, { 10: 35, 12: 50, 14: 68, 16: 89, 18: 113, 20: 140 }),
  ...perFoot('live oak', 76, { 10: 41, 12: 60, 16: 106, 18: 134, 20: 166 }),
  ...perFoot('apple', 55, { 16: 77 }),
  ...perFoot('white oak', 62, { 20: 135 }),
  ...perFoot('yellow poplar', 38, { 18: 67 }),
  // 63 × π/4 × (16/12)² × 8 = 87.965 × 8
  { name: 'eight feet of red oak, 16 in through', formula: 'log.mass', given: { density: '63 lb/ft3', diameter: '16 in', length: '8 ft' }, expect: '703.7 lb', within: 0.1, source: 'the same table, density printed; length ours' },
];

const loose: WorkedCase[] = [
  // π/4 × 5² × 5
  { name: 'a 5 by 5 ft bale', formula: 'bale.volume', given: { diameter: '5 ft', width: '5 ft' }, expect: '98.17 ft3', within: 0.01, source: `${hancock} prints about 98; ${geometry}` },
  // π/4 × 4² × 4
  { name: 'a 4 by 4 ft bale', formula: 'bale.volume', given: { diameter: '4 ft', width: '4 ft' }, expect: '50.27 ft3', within: 0.01, source: geometry },
  // 80 % of the 5 by 5 ft bale: 78.54
  { name: 'a bale 4 ft wide and 5 ft through holds 80 % of a 5 by 5 ft bale', formula: 'bale.volume', given: { diameter: '5 ft', width: '4 ft' }, expect: '78.54 ft3', within: 0.01, source: 'brownwoodnews.com (2023), the 80 % printed' },
  // 64 % of it: 62.83
  { name: 'a bale 5 ft wide and 4 ft through holds 64 % of it', formula: 'bale.volume', given: { diameter: '4 ft', width: '5 ft' }, expect: '62.83 ft3', within: 0.01, source: 'brownwoodnews.com (2023), the 64 % printed' },
  // The news item prints 880 and nearly 1,200
  { name: 'a 5 by 5 ft bale at 9 lb of dry matter a cubic foot', formula: 'mass.of-volume', given: { volume: '98.175 ft3', density: '9 lb/ft3' }, expect: '883.6 lb', within: 0.1, source: hancock },
  { name: 'the same at 12 lb', formula: 'mass.of-volume', given: { volume: '98.175 ft3', density: '12 lb/ft3' }, expect: '1178.1 lb', within: 0.1, source: hancock },
  // 1,100 / 98.175 = 11.2045 lb/ft³; 50.265 × 11.2045
  { name: 'a 4 by 4 ft bale as dense as a 5 by 5 ft bale of 1,100 lb', formula: 'mass.of-volume', given: { volume: '50.2655 ft3', density: '11.2045 lb/ft3' }, expect: '563 lb', within: 1, source: e319 },
  // π/4 × 6² × 5 = 141.372
  { name: 'a bale 5 ft wide and 6 ft through of that density', formula: 'mass.of-volume', given: { volume: '141.372 ft3', density: '11.2045 lb/ft3' }, expect: '1584 lb', within: 1, source: e319 },
  // 9 / 27 × 2,632.5
  { name: 'a 9 ft³ bucket of gravel at 2,632.5 lb a cubic yard', formula: 'mass.of-volume', given: { volume: '9 ft3', density: '2632.5 lb/yd3' }, expect: '877.5 lb', within: 0.1, source: 'a page that credits EPA and NTEA weights, density printed; the bucket is ours' },
  { name: 'a 9.5 ft³ bucket of clay at 100 lb a cubic foot', formula: 'mass.of-volume', given: { volume: '9.5 ft3', density: '100 lb/ft3' }, expect: '950 lb', within: 0.001, source: loaderManual },
  { name: 'a 13.5 ft³ bucket of potash at 68 lb a cubic foot', formula: 'mass.of-volume', given: { volume: '13.5 ft3', density: '68 lb/ft3' }, expect: '918 lb', within: 0.001, source: loaderManual },
  { name: 'the snow of a 200 ft drive at 10 lb a cubic foot', formula: 'mass.of-volume', given: { volume: '1333.333 ft3', density: '10 lb/ft3' }, expect: '13333 lb', within: 1, source: 'density within the range of the American Meteorological Society Glossary; the rest ours' },
  // 883.6 / 0.85 and 1,178.1 / 0.85
  { name: '883.6 lb of dry matter at 15 %', formula: 'mass.at-moisture', given: { dry: '883.6 lb', moisture: 0.15 }, expect: '1039.5 lb', within: 0.1, source: 'moisture as a share of the whole' },
  { name: '1,178.1 lb of dry matter at 15 %', formula: 'mass.at-moisture', given: { dry: '1178.1 lb', moisture: 0.15 }, expect: '1386 lb', within: 0.1, source: 'moisture as a share of the whole' },
  { name: '1,190 lb of dry matter at 15 %', formula: 'mass.at-moisture', given: { dry: '1190 lb', moisture: 0.15 }, expect: '1400 lb', within: 0.001, source: 'a general page on bales, author not shown, printed' },
  // 60 × 24² / 8 − 24³ / 24 = 4,320 − 576 = 3,744 in³
  { name: 'a bucket 60 in wide with an opening of 24 in', formula: 'bucket.heap', given: { width: '60 in', opening: '24 in' }, expect: '2.16667 ft3', within: 0.0001, source: `${geometry}; the slope of 2:1 is that of SAE J742` },
  // As wide as open it is a pyramid on a square of 1 m, 0.25 m high: 1/3 × 0.25
  { name: 'a bucket as wide as its opening heaps to a pyramid', formula: 'bucket.heap', given: { width: '1 m', opening: '1 m' }, expect: '0.0833333 m3', within: 0.000001, source: geometry },
  // 1,333.33 / 9 = 148.15
  { name: '1,333 ft³ by a 9 ft³ bucket', formula: 'loads.count', given: { volume: '1333.333 ft3', perLoad: '9 ft3' }, expect: 149, within: 0, source: 'counting' },
  { name: 'a cubic yard by a third of it', formula: 'loads.count', given: { volume: '1 yd3', perLoad: '9 ft3' }, expect: 3, within: 0, source: 'counting' },
  { name: 'nothing to move', formula: 'loads.count', given: { volume: '0 ft3', perLoad: '9 ft3' }, expect: 0, within: 0.001, source: 'counting' },
  { name: '149 loads of 2 minutes', formula: 'loads.time', given: { loads: 149, cycle: '2 min' }, expect: '298 min', within: 0.001, source: `counting; the cycle is ${practice}` },
  // 200 × 10 × 8/12
  { name: 'a drive of 200 by 10 ft under 8 in of snow', formula: 'snow.volume', given: { length: '200 ft', width: '10 ft', depth: '8 in' }, expect: '1333.3 ft3', within: 0.05, source: geometry },
  // 1,333.33 / 27
  { name: 'the same in cubic yards', formula: 'snow.volume', given: { length: '200 ft', width: '10 ft', depth: '8 in' }, expect: '49.38 yd3', within: 0.01, source: geometry },
];

/** A tractor of 1,400 kg, 560 in front and 840 behind, on a wheelbase of 1.65 m; a hitch load sits 0.75 + 0.50 m behind the axle. */
const axles: WorkedCase[] = [
  // (400 × 1.25 − 560 × 1.65 + 0.2 × 1,400 × 1.65) / (1.20 + 1.65) = 38 / 2.85
  { name: 'front weights for an implement of 400 kg', formula: 'ballast.front', given: { tractor: '1400 kg', bareFront: '560 kg', back: '400 kg', behind: '1.25 m', ahead: '1.2 m', wheelbase: '1.65 m', share: 0.2 }, expect: '13.333 kg', within: 0.001, source: ballastSheet },
  // (600 × 1.25 − 462) / 2.05
  { name: 'the same tractor with 600 kg behind and weights only 0.4 m ahead', formula: 'ballast.front', given: { tractor: '1400 kg', bareFront: '560 kg', back: '600 kg', behind: '1.25 m', ahead: '0.4 m', wheelbase: '1.65 m', share: 0.2 }, expect: '140.488 kg', within: 0.001, source: ballastSheet },
  // 300 × 1.25 = 375 is less than the 462 in hand
  { name: 'none for an implement of 300 kg', formula: 'ballast.front', given: { tractor: '1400 kg', bareFront: '560 kg', back: '300 kg', behind: '1.25 m', ahead: '1.2 m', wheelbase: '1.65 m', share: 0.2 }, expect: '0 kg', within: 0.001, source: ballastSheet },
  // 1,800 − 256.97
  { name: 'with 400 kg behind', formula: 'axle.rear-load', given: { total: '1800 kg', front: '256.97 kg' }, expect: '1543.03 kg', within: 0.001, source: ballastSheet },
  // 840 − 500 × 1.30 / 1.65, 23.48 % of 1,900
  { name: 'with 500 kg on the loader', formula: 'axle.rear-load', given: { total: '1900 kg', front: '1453.94 kg' }, expect: '446.06 kg', within: 0.01, source: moments },
  // 840 − 900 × 1.30 / 1.65, 5.69 % of 2,300
  { name: 'with 900 kg on the loader, hardly any', formula: 'axle.rear-load', given: { total: '2300 kg', front: '2169.09 kg' }, expect: '130.91 kg', within: 0.01, source: moments },
  { name: 'the rear axle gives out before the hydraulics', formula: 'lift.least', given: { hydraulic: '420 kg', rearAxle: '365 kg', tyres: '510 kg' }, expect: '365 kg', within: 0.001, source: 'comparison' },
  { name: 'one limit alone is the least', formula: 'lift.least', given: { hydraulic: '900 lb' }, expect: '900 lb', within: 0.001, source: 'comparison' },
];

const onTheWay: WorkedCase[] = [
  // Printed with it: four tie-downs of 5,000 lb make 20,000
  { name: 'a machine of 12,000 lb', formula: 'haul.tie-downs', given: { mass: '12000 lb', share: 0.5 }, expect: '6000 lb', within: 0.001, source: '49 CFR 393.106(d), second-hand, formula; inputs ours' },
  { name: 'a machine of 4,400 lb', formula: 'haul.tie-downs', given: { mass: '4400 lb', share: 0.5 }, expect: '2200 lb', within: 0.001, source: '49 CFR 393.106(d), second-hand, formula; inputs ours' },
  { name: 'a tenth of a loaded trailer of 6,000 lb', formula: 'haul.tongue', given: { loaded: '6000 lb', share: 0.1 }, expect: '600 lb', within: 0.001, source: "vehicle owner's manuals, makers not named, second-hand; inputs ours" },
  { name: 'fifteen hundredths of it', formula: 'haul.tongue', given: { loaded: '6000 lb', share: 0.15 }, expect: '900 lb', within: 0.001, source: "vehicle owner's manuals, makers not named, second-hand; inputs ours" },
  { name: 'from 3 to 9 mph', formula: 'slope.turn-force', given: { times: 3 }, expect: 9, within: 0, source: 'a farm-safety text, second-hand, printed' },
  { name: 'twice as fast', formula: 'slope.turn-force', given: { times: 2 }, expect: 4, within: 0, source: 'mechanics' },
  { name: '12 psi in the tyre and 2 psi by its carcass', formula: 'ground.pressure', given: { inflation: '12 psi', stiffness: '2 psi' }, expect: '14 psi', within: 0.001, source: 'an engineer of tyres in an owners’ discussion, 1 to 2 psi more, second-hand' },
];

export const workAndLoads: WorkedCase[] = [...drafts, ...powers, ...pulls, ...logs, ...loose, ...axles, ...onTheWay];
